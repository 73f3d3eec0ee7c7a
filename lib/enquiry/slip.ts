import "server-only";
import { sentenceOf } from "../reply/describe";
import { labelTextOf } from "../reply/facts";
import type { Inspected } from "../reply/inspected";
import { toldByLetter, type ToldByLetter } from "../reply/told-by-letter";
import { isTradeAsking } from "../reply/who-asks";
import type { Assessment } from "../triage/assessment";
import type { Prisma } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { fibreName } from "../trade/fibres";
import type { AuditAction } from "./audit";
import { isFromPost } from "./messages";
import { facePhoto, rugColours } from "./photo-view";
import { isToBeReadOut } from "./to-be-read-out";
import { isWaitingForUs, STATE_NAMES } from "./states";
import { assessmentOf, enquiryAnswersOf, messagesOf, rugAnswersOf } from "./stored";
import { urgenciesOfWords, WORDS_PARTS, type Words } from "./unread-letters";
import { urgencyId, urgencyRank } from "./urgency";
import { urgencyWhyTold } from "./urgency-why";
import type { Slip, UrgencyId } from "./views";
import { wetByWords } from "./wet-by-words";

/** Why a letter came to nothing, or no longer holds, as the slip says it. */
const UNHEARD: Partial<Record<AuditAction, string>> = {
  "letter-failed": "our letter could not be delivered",
  "letter-came-back": "our letter came back",
  "letter-in-doubt": "our letter may not have arrived",
  "letter-given-up": "our letter did not get through",
  "letter-held-back": "the client wrote before our letter left",
  "letter-overtaken": "the rug was judged anew before our letter left",
  "letter-outdated": "our letter no longer holds",
  "acknowledgement-failed": "our acknowledgement could not be delivered",
};

/** From then on nothing that failed before is what it waits for. */
const CORRECTED = "address-corrected" satisfies AuditAction;

/** What a slip is made from. */
export const SLIP_PARTS = {
  audit: { where: { action: { in: [...Object.keys(UNHEARD), CORRECTED] } }, orderBy: NEWEST_FIRST.at, take: 1, select: { action: true, at: true } },
  client: { select: { isTrade: true } },
  letters: { where: WORDS_PARTS.letters.where, orderBy: NEWEST_FIRST.createdAt, select: { automatic: true, toAddress: true, state: true, notBefore: true, createdAt: true } },
  draft: { select: { number: true, approvedNumber: true, waitingNumber: true, revisions: { orderBy: { number: "desc" }, take: 1, select: { createdAt: true, author: { select: { name: true } } } } } },
  rugs: {
    orderBy: { position: "asc" },
    include: { answers: true, photos: { orderBy: { position: "asc" } }, assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1 } },
  },
} as const satisfies Prisma.EnquiryInclude;
export type SlipRow = Prisma.EnquiryGetPayload<{ include: typeof SLIP_PARTS }>;

/** A cleaner with somebody else's wet rug under his hands is called back before anybody else. */
const isCallBack = ({ urgency, client }: Waiting): boolean => urgency === "hours" && client.isTrade;

/** The worst first, and a colleague first among those; of those as bad, who has waited longest. */
export const byNeed = (a: Waiting, b: Waiting): number =>
  urgencyRank(a.urgency) - urgencyRank(b.urgency) ||
  Number(isCallBack(b)) - Number(isCallBack(a)) || a.stateSince.getTime() - b.stateSince.getTime() || (a.id < b.id ? -1 : 1);
export interface Waiting {
  id: string;
  urgency: UrgencyId;
  stateSince: Date;
  client: { isTrade: boolean };
}

export function slipOf(row: SlipRow): Slip {
  const judged = row.rugs.map((rug) => ({ rug, assessment: rug.assessments[0] ? assessmentOf(rug.assessments[0].result) : null }));
  const rank = (a: (typeof judged)[number]) => (a.assessment ? urgencyRank(urgencyId(a.assessment.urgency.level)) : Infinity);
  const worst = [...judged].sort((a, b) => rank(a) - rank(b))[0];
  const face = worst && facePhoto(worst.rug.photos);
  const leading = worst?.assessment?.fibres[0];
  const comesBackOpen = (worst?.assessment && toldOf(row, { ...worst.rug, assessment: worst.assessment }).comesBackOpen) ?? null;
  return {
    enquiryId: row.id,
    reference: row.reference,
    title: row.title,
    sentence: sentenceFor(row),
    state: row.state,
    standing: standingOf(row),
    heldUntil: heldUntilOf(row)?.toISOString() ?? null,
    urgency: row.urgency,
    urgencyWhy: urgencyWhyTold(row),
    submittedAt: row.submittedAt.toISOString(),
    photoId: face?.id ?? null,
    colours: worst ? rugColours(worst.rug.photos) : [],
    rugs: row.rugs.length,
    fibre: leading
      ? { name: fibreName(leading.fibre), words: leading.words, low: leading.low, probability: leading.probability, high: leading.high }
      : null,
    improvement: comesBackOpen === null ? (worst?.assessment?.improvement ?? null) : null,
    comesBackOpen,
  };
}

type Judged = Omit<Words, "rugs"> & { client: { isTrade: boolean }; rugs: readonly (Words["rugs"][number] & { assessments: readonly { result: unknown }[] })[] };

/** What the letter of a rug's assessment tells, by everything that was answered and by words nobody has read yet. */
export function toldOf(row: Judged, rug: Pick<SlipRow["rugs"][number], "title" | "answers"> & { assessment: Assessment; inspection?: Inspected | null }): ToldByLetter {
  const enquiry = enquiryAnswersOf(row.answers).answers;
  const among = row.rugs.flatMap((r) => (r.assessments[0] ? [{ answers: rugAnswersOf(r.answers), assessment: assessmentOf(r.assessments[0].result) }] : []));
  const told = { title: rug.title, assessment: rug.assessment, answers: rugAnswersOf(rug.answers), inspection: rug.inspection ?? null, among, wetByWords: wetByWords(among.map((r) => r.assessment), urgenciesOfWords(row)) };
  return toldByLetter(told, { enquiry, isTrade: isTradeAsking(row.client, enquiry) });
}

/** One sentence of what it is, from the first rug. */
export function sentenceFor(row: Pick<SlipRow, "answers" | "rugs">): string {
  const [rug] = row.rugs;
  const answers = rugAnswersOf(rug?.answers ?? []);
  const labelText = (rug?.assessments[0] && labelTextOf(assessmentOf(rug.assessments[0].result))) ?? answers.labelText;
  return sentenceOf({ answers: { ...answers, labelText }, enquiry: enquiryAnswersOf(row.answers).answers });
}

/** Whether the client wrote since they asked; where we have answered already, since somebody here began to write. */
function hasWrittenAgain({ state, draft, rugs }: SlipRow): boolean {
  const [newest] = draft?.revisions ?? [];
  const messages = messagesOf(rugs.flatMap((r) => r.answers));
  return messages.some((m) => state === "new" || (newest?.author && m.at > newest.createdAt));
}

/** What came from an address we do not know is not the client's word. */
function byOther({ stateSince, rugs }: SlipRow): string | null {
  const isOpen = rugs.flatMap((r) => r.answers).some((a) => isFromPost(a.from) && a.at >= stateSince);
  return isOpen ? "somebody wrote from an address we do not know" : null;
}

/** Until when our letter to a client whose turn comes with it is held; null where none is. */
const heldUntilOf = ({ state, letters }: SlipRow): Date | null =>
  (state === "their_turn" ? letters.find((l) => l.state === "held")?.notBefore : undefined) ?? null;

function standingOf(row: SlipRow): string {
  const { state, stateSince, draft, audit: [unheard] } = row;
  if (draft?.waitingNumber != null) return "waiting for a second person";
  if (!isWaitingForUs(state)) return STATE_NAMES[state];
  const author = draft?.revisions[0]?.author?.name;
  const ring = row.letters.some(isToBeReadOut) && draft?.approvedNumber === draft?.number ? "ring them: our letter is to be read out" : null;
  // What failed before it was our turn, or before a letter that is to be read out, is not what it waits for.
  const why = unheard && unheard.at >= stateSince && ring === null ? UNHEARD[unheard.action as AuditAction] : undefined;
  const again = hasWrittenAgain(row) ? "the client wrote again" : null;
  const turn = byOther(row) ?? why ?? again ?? ring ?? (state === "our_turn" ? "our turn again" : author ? null : "new");
  return [turn, author && !ring && `draft edited by ${author}`].filter(Boolean).join(", ");
}
