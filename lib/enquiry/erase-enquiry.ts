import "server-only";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { isRefusal, removeEnquiry, removeLeftover, type Leftover } from "./remove-enquiry";
import { STATE_NAMES } from "./states";
import type { EnquiryStateId } from "./views";
import { wrong } from "./wrong";

/** A rug that stands with us is not forgotten, whoever asks. */
const RUG_IS_HERE: readonly EnquiryStateId[] = ["in_workshop", "ready"];
/** What belongs to an order is kept on the basis of the contract: a client asks the workshop, which decides as local law asks. */
const ORDERED: readonly EnquiryStateId[] = ["agreed", "coming_in", "in_workshop", "ready", "finished"];

/** Whether a client may erase their enquiry without asking anybody. */
export const mayEraseAlone = (state: EnquiryStateId): boolean => !ORDERED.includes(state);

/**
 * Erases an enquiry for good. Staff type its reference, so that the wrong one does not go by a slip; a client erases their own, once
 * they are sure, as long as nothing was ordered.
 */
export async function eraseEnquiry(caller: Caller, { enquiryId, typed }: { enquiryId: string; typed: string }, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "erase-enquiry", { enquiryId, intakeId: null });
  if (no) return no;
  const done = await inOneStep<Leftover>(async (tx) => {
    const enquiry = await tx.enquiry.findUnique({ where: { id: enquiryId }, select: { state: true, reference: true } });
    if (!enquiry) return NOT_THERE;
    if (caller.kind === "client" && !mayEraseAlone(enquiry.state)) return refuse("not-allowed", wrong("refusal.ordered"));
    if (caller.kind === "staff" && RUG_IS_HERE.includes(enquiry.state)) return refuse("not-allowed", `It stands at “${STATE_NAMES[enquiry.state]}”. Move it on first: a rug that is here must be known of.`);
    if (caller.kind === "staff" && plain(typed) !== plain(enquiry.reference)) {
      const say = typed.trim() === "" ? `Type ${enquiry.reference} to erase it.` : `“${typed.trim()}” is not its reference. Type ${enquiry.reference} to erase it.`;
      return refuse("invalid", say, { typed: say });
    }
    const removed = await removeEnquiry(tx, caller, enquiryId, now);
    if (removed === null) return NOT_THERE;
    return isRefusal(removed) ? removed : ok(removed);
  });
  if (!done.ok) return done;
  await removeLeftover(done.value);
  return ok(null);
}

const plain = (reference: string): string => reference.replace(/[\s‐-―-]/g, "").toUpperCase();
