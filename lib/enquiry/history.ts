import "server-only";
import * as z from "zod/mini";
import { listed } from "../reply/phrases";
import type { Audit } from "../store/database";
import { HISTORY } from "../words/en/history";
import { longDate } from "../words/measures";
import type { Words } from "../words/words";
import type { AuditAction } from "./audit";
import { isTestId } from "./bench-test-schema";
import { documentKindSchema } from "./document-view";
import { peopleNames } from "./people-names";
import { allowedIn } from "./promises";
import { STATE_NAMES } from "./states";
import { isCorrectable } from "./step-schemas";
import { stepRow } from "./steps";
import type { EnquiryStateId, EnquiryView } from "./views";
import { dayAndHour } from "./workshop-day";

const movedSchema = z.object({ from: z.string(), to: z.string() });
const testedSchema = z.object({ test: z.string() });
const documentSchema = z.object({ document: documentKindSchema, version: z.number() });
const stepSchema = z.object({ step: z.string() });
const reasonedSchema = z.object({ reason: z.string() });
const longSchema = z.object({ words: z.number(), longReason: z.optional(z.string()) });
const outdatedSchema = z.object({ outdated: z.array(documentSchema) });
const askedSchema = z.object({ asked: z.number() });
const text = z.optional(z.nullable(z.string()));
const correctedSchema = z.object({ nameWas: text, nameIs: text, emailWas: text, emailIs: text, telephoneWas: text, telephoneIs: text, areLinksEnded: z.optional(z.number()) });
const saidSchema = z.object({ sendAt: z.optional(z.string()), read: z.optional(z.string()) });
type Clock = Parameters<typeof longDate>[1];
const isState = (id: string): id is EnquiryStateId => Object.hasOwn(STATE_NAMES, id);
const isAction = (action: string): action is AuditAction => Object.hasOwn(HISTORY, `did.${action}`);

/** Deeds done to a document. */
const OF_DOCUMENTS: readonly string[] = ["document-made", "document-enclosed", "document-taken-out"] satisfies AuditAction[];
/** Deeds that let a letter go. */
const SENT = /-(?:approved|waits|seconded)$|^question-asked$/u;

/** What was said beside approving a letter: when it is to leave, and that the client's words were read. */
function approved(did: string, detail: Audit["detail"], { say }: Words, clock: Clock): string {
  const { sendAt, read } = saidSchema.safeParse(detail).data ?? {};
  const at = sendAt ? new Date(sendAt) : null;
  const then = at ? say("history.to-leave", { did, day: longDate(at, clock), hour: dayAndHour(at, clock.timeZone).hour }) : did;
  return read ? say("history.having-read", { did: then }) : then;
}

/** What stood against a letter that went all the same, with the reasons that were given. */
function sentAllTheSame(did: string, detail: Audit["detail"], words: Words): string {
  const { say } = words;
  const [reasoned, long] = [reasonedSchema.safeParse(detail), longSchema.safeParse(detail)];
  const asked = askedSchema.safeParse(detail);
  const overtaken = outdatedSchema.safeParse(detail).data?.outdated.map(({ document, version }) => say("history.which-version", { which: say(`made.${document}`), n: version }));
  const withThose = overtaken ? say("history.outdated", { did, documents: listed(overtaken, "and", words) }) : did;
  const looked = asked.success ? say("history.asked", { did: withThose, n: asked.data.asked }) : withThose;
  const though = reasoned.success ? say("history.though", { did: looked, reason: reasoned.data.reason }) : looked;
  if (!long.success) return though;
  const { words: count, longReason } = long.data;
  return longReason ? say("history.long-because", { did: though, words: count, reason: longReason }) : say("history.long", { did: though, words: count });
}

/** What a correction of contact details changed, from what to what; an erased client's is without details. */
function corrected(did: string, detail: Audit["detail"], { say }: Words): string {
  const { data } = correctedSchema.safeParse(detail);
  const changes = (["name", "email", "telephone"] as const).flatMap((of) => {
    const [was, is] = [data?.[`${of}Was`] ?? null, data?.[`${of}Is`] ?? null];
    if (was === is) return [];
    const change = was === null ? say("history.added", { is: is ?? "" }) : is === null ? say("history.removed", { was }) : say("history.from-to", { was, is });
    return say(`history.${of}-changed`, { change });
  });
  if (data?.areLinksEnded) changes.push(say("history.links-ended"));
  return changes.length > 0 ? say("history.corrected", { did, changes: changes.join("; ") }) : did;
}

/** Pages that ask no question of the table, by what heads them. */
const TITLED = ["label", "price", "size"] as const;
const isTitled = (step: string): step is (typeof TITLED)[number] => TITLED.some((t) => t === step);

/** What the page of the questionnaire asks, in its own words; null of a step that is no longer one of its pages. */
function askedOn(step: string, words: Words): string | null {
  if (!isCorrectable(step)) return null;
  const { question } = stepRow(step);
  if (question) return words.table(`question.${question}.ask`);
  return isTitled(step) ? words.say(`step.${step}`) : null;
}

/** Which of the many things of its kind it was done to; null where that is not kept. */
function doneTo({ action, detail }: Pick<Audit, "action" | "detail">, words: Words): string | null {
  if (action === "test-recorded") {
    const { data } = testedSchema.safeParse(detail);
    return data && isTestId(data.test) ? words.table(`test.${data.test}`) : null;
  }
  if (action === "answer-corrected") {
    const { data } = stepSchema.safeParse(detail);
    return data ? askedOn(data.step, words) : null;
  }
  if (!OF_DOCUMENTS.includes(action)) return null;
  const { data } = documentSchema.safeParse(detail);
  const which = data ? words.say(`made.${data.document}`) : null;
  return data && which && data.version > 1 ? words.say("history.which-version", { which, n: data.version }) : which;
}

function wordsOf({ action, detail }: Audit, words: Words, clock: Clock): string {
  const { say } = words;
  const stateName = (id: string) => (isState(id) ? say(`state.${id}`) : id);
  const did = isAction(action) ? say(`did.${action}`) : action;
  const which = doneTo({ action, detail }, words);
  if (which !== null) return say("history.which", { did, which });
  if (SENT.test(action)) return sentAllTheSame(approved(did, detail, words, clock), detail, words);
  if (action === "client-corrected" || action === "address-corrected") return corrected(did, detail, words);
  const lifted = action === "address-lifted" ? reasonedSchema.safeParse(detail) : null;
  if (lifted?.success) return say("history.because", { did, reason: lifted.data.reason });
  const moved = action === "moved" ? movedSchema.safeParse(detail) : null;
  return moved?.success ? say("history.moved", { did, from: stateName(moved.data.from), to: stateName(moved.data.to) }) : did;
}

/** Edits of one person that are no further apart are one sitting: a draft is kept at every pause. Elicited. */
const SITTING_MS = 60 * 60_000;

/** Without the edits that the same person went on with: of each sitting the last. */
export const withoutGoneOnWith = <E extends Pick<Audit, "action" | "actorId" | "at">>(entries: readonly E[]): E[] =>
  entries.filter((entry, i) => {
    const next = entries[i + 1];
    return !(entry.action === "draft-saved" && next?.action === "draft-saved" && next.actorId === entry.actorId && next.at.getTime() - entry.at.getTime() <= SITTING_MS);
  });

/** Who did what, oldest first, with names instead of ids. `clock`: the workshop's, on which a chosen time is said. */
export async function historyOf({ audit, client }: { audit: readonly Audit[]; client: { name: string } }, words: Words, clock: Clock): Promise<EnquiryView["history"]> {
  const ids = audit.flatMap((a) => (a.actorKind === "staff" && a.actorId ? [a.actorId] : []));
  const staffName = await peopleNames(ids);
  const nameOf = (a: Audit) => {
    if (a.actorKind === "staff") return staffName(a.actorId);
    return a.actorKind === "system" ? words.say("history.program") : client.name;
  };
  return withoutGoneOnWith(audit).map((a) => ({ at: a.at.toISOString(), who: nameOf(a), what: wordsOf(a, words, clock), sentences: SENT.test(a.action) ? allowedIn(a.detail).map(({ sentence, why }) => ({ sentence, why })) : [] }));
}
