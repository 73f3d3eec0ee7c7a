import "server-only";
import { NO_MAIL, READ_OUT } from "../mail/last-word";
import type { Letter, Prisma, Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { WAITING_FOR_US } from "./states";

/** A letter that a person approved for a client without an address, and that nobody has told them yet. */
export const TO_BE_READ_OUT = { automatic: false, toAddress: NO_MAIL, state: { in: ["held", "waiting"] } } satisfies Prisma.LetterWhereInput;
/** The same of a letter that was read. */
export const isToBeReadOut = ({ automatic, toAddress, state }: Pick<Letter, "automatic" | "toAddress" | "state">): boolean =>
  !automatic && toAddress === NO_MAIL && (state === "held" || state === "waiting");

/** Records that somebody rang a client without an address and read our letter out. From then on it counts as told, and it is their turn. */
export async function recordReadOut(caller: Caller, letterId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "record-read-out");
  if (no) return no;
  return inOneStep(async (tx) => {
    const letter = await tx.letter.findUnique({ where: { id: letterId }, select: { enquiryId: true, automatic: true, toAddress: true } });
    if (!letter || letter.automatic || letter.toAddress !== NO_MAIL) return NOT_THERE;
    const told = await tx.letter.updateMany({ where: { id: letterId, ...TO_BE_READ_OUT }, data: { state: "sent", sentAt: now, lastResponse: READ_OUT } });
    if (told.count !== 1) return refuse("changed-meanwhile", "Somebody has said so already, or took the letter back.");
    const { enquiryId } = letter;
    if (await isNewest(tx, { enquiryId, letterId })) {
      await tx.enquiry.updateMany({ where: { id: enquiryId, state: { in: [...WAITING_FOR_US] } }, data: { state: "their_turn", stateSince: now } });
    }
    await audit(tx, caller, { action: "letter-read-out", enquiryId, at: now, detail: { letterId } });
    return ok(null);
  });
}

async function isNewest(tx: Tx, { enquiryId, letterId }: { enquiryId: string; letterId: string }): Promise<boolean> {
  const newest = await tx.letter.findFirst({ where: { enquiryId, automatic: false, state: { not: "taken_back" } }, orderBy: NEWEST_FIRST.createdAt, select: { id: true } });
  return newest?.id === letterId;
}
