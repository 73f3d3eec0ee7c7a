import "server-only";
import * as z from "zod/mini";
import { openPlacesSay } from "../reply/open-places";
import { checkLetter, checkSentences, knownOf, type Known, type Overpromise } from "../reply/promises/check";
import { notesOf } from "../reply/promises/notes";
import type { Db, Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { newestOf, STANDING_INSPECTIONS } from "./inspections";
import { ok, refuse, type Result } from "./caller";
import type { AsItIs } from "./outdated";
import { textsTold } from "./last-letter";
import { sendingReasonSchema } from "./sending-reason";
import { assessmentOf } from "./stored";

/** What stands in the audit beside a letter that went out all the same: the rules it broke, the reason given, and each sentence that it was given for, with its rule and what was said of it. Of something left out the sentence is empty. */
export interface Allowed { readonly promises: string | null; readonly reason: string | null; readonly allowed?: readonly AllowedSentence[] }
const allowedSchema = z.object({ rule: z.string(), sentence: z.string(), why: z.string() });
export type AllowedSentence = z.infer<typeof allowedSchema>;
/** As they were kept; none where none were. */
export const allowedIn = (detail: unknown): AllowedSentence[] => z.object({ allowed: z.array(allowedSchema) }).safeParse(detail).data?.allowed ?? [];

/**
 * Lets a letter go that says no more than is known; one that says more only with a reason, and one with an open place not at all.
 */
export async function holdToPromises(tx: Tx, { enquiryId, kind, text, reason }: { enquiryId: string; kind: "reply" | "question"; text: string; reason: string | null }): Promise<Result<Allowed>> {
  const open = openPlacesSay(text);
  if (open) return refuse("invalid", open, { text: open });
  const known = await knownIn(tx, enquiryId);
  const found = kind === "reply" ? checkLetter(text, known, await textsTold(tx, enquiryId)) : checkSentences(text, known);
  if (found.length === 0) return ok({ promises: null, reason: null });
  const parsed = sendingReasonSchema.safeParse(reason ?? "");
  if (!parsed.success) return refuse("promises-too-much", reason ? (parsed.error.issues[0]?.message ?? "") : sayPromises(found), { reason: parsed.error.issues[0]?.message ?? "" });
  return ok({ promises: [...new Set(found.map((f) => f.rule))].join(", "), reason: parsed.data, allowed: found.map(({ rule, sentence, why }) => ({ rule, sentence, why })) });
}

async function knownIn(tx: Tx, enquiryId: string): Promise<Known> {
  const rugs = await tx.rug.findMany({ where: { enquiryId }, select: { answers: true, inspections: { ...STANDING_INSPECTIONS, take: 1, select: { day: true, at: true, isBeyondRepair: true } }, assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1, select: { result: true } } } });
  return knownOf(rugs.map((r) => ({ assessment: r.assessments[0] ? assessmentOf(r.assessments[0].result) : null, inspection: newestOf(r).counts })));
}

/** The first of them, in one sentence. */
function sayPromises(found: readonly Overpromise[]): string {
  const [first, ...more] = notesOf(found);
  const why = first?.reasons.map((reason) => reason.why).join(" ") ?? "";
  const others = more.length > 0 ? ` There ${more.length === 1 ? "is one more" : `are ${more.length} more`}.` : "";
  return first?.sentence ? `This letter says more than we know: “${first.sentence}” ${why}${others} Change it, or give a reason.` : `${why}${others} Change the letter, or give a reason.`;
}

const GIVEN = z.object({
  number: z.number(), reason: z.nullish(z.string()), longReason: z.nullish(z.string()), asked: z.nullish(z.number()),
  outdated: z.nullish(z.array(z.object({ documentId: z.string(), judgedAt: z.string() }))),
});

/** What a first person said of the same revision: why it says more than is known, why it is long, how many open questions they had read, and which documents go as they are. */
export async function reasonsGiven(db: Db | Tx, { enquiryId, number }: { enquiryId: string; number: number }): Promise<{ reason: string | null; longReason: string | null; asked: number; asItIs: AsItIs[] }> {
  const waits = await db.audit.findMany({ where: { enquiryId, action: { in: ["reply-waits", "question-waits"] } }, orderBy: NEWEST_FIRST.at, select: { detail: true } });
  const given = waits.map((w) => GIVEN.safeParse(w.detail).data).find((said) => said?.number === number);
  return { reason: given?.reason ?? null, longReason: given?.longReason ?? null, asked: given?.asked ?? 0, asItIs: given?.outdated ?? [] };
}
