import { HISTORY } from "../words/en/history";
import type { EnquiryStateId } from "./views";

/**
 * The life of an enquiry: which state may follow which, and by whose doing. `letter`: a letter of ours was approved, or read out to a client without an address;
 * `client`: they wrote or sent a photo; `taken-back`: a held letter was taken back; `undelivered`: a letter of ours did not reach
 * them; `outdated`: what it said no longer holds, since a rug was judged anew after it left; `staff`: somebody moved it by hand.
 * Common practice of the trade put in order: elicited.
 */
export type Mover = "letter" | "client" | "taken-back" | "undelivered" | "outdated" | "staff";

export const STATE_NAMES: Record<EnquiryStateId, string> = {
  new: HISTORY["state.new"],
  our_turn: HISTORY["state.our_turn"],
  their_turn: HISTORY["state.their_turn"],
  waiting_elsewhere: HISTORY["state.waiting_elsewhere"],
  quoted: HISTORY["state.quoted"],
  agreed: HISTORY["state.agreed"],
  coming_in: HISTORY["state.coming_in"],
  in_workshop: HISTORY["state.in_workshop"],
  ready: HISTORY["state.ready"],
  finished: HISTORY["state.finished"],
  declined: HISTORY["state.declined"],
  withdrawn: HISTORY["state.withdrawn"],
  closed_unanswered: HISTORY["state.closed_unanswered"],
};
export const STATES = Object.keys(STATE_NAMES) as EnquiryStateId[];

/** The states that stand in the queue. */
export const WAITING_FOR_US = ["new", "our_turn"] as const satisfies readonly EnquiryStateId[];

const ENDS = ["declined", "withdrawn", "closed_unanswered"] as const;

/** Whether the matter has ended; whoever takes it up again is our turn. */
export const isOver = (state: EnquiryStateId): boolean => state === "finished" || ENDS.some((end) => end === state);

/** By hand. What a client or a letter does stands below. */
const BY_STAFF: Record<EnquiryStateId, readonly EnquiryStateId[]> = {
  new: ["their_turn", "waiting_elsewhere", "coming_in", ...ENDS],
  our_turn: ["their_turn", "waiting_elsewhere", "quoted", "coming_in", ...ENDS],
  their_turn: ["our_turn", "waiting_elsewhere", "quoted", "agreed", "coming_in", ...ENDS],
  waiting_elsewhere: ["our_turn", "their_turn", ...ENDS],
  quoted: ["our_turn", "agreed", ...ENDS],
  agreed: ["our_turn", "coming_in", "in_workshop", ...ENDS],
  coming_in: ["our_turn", "in_workshop", ...ENDS],
  in_workshop: ["our_turn", "ready", "withdrawn"],
  ready: ["in_workshop", "finished"],
  finished: ["our_turn"],
  declined: ["our_turn"],
  withdrawn: ["our_turn"],
  closed_unanswered: ["our_turn"],
};

/** Where somebody else is awaited who cannot know it while our letter has not come, or goes by what no longer holds. What has ended, or is agreed, nobody waits for. */
const UNHEARD: readonly EnquiryStateId[] = ["their_turn", "waiting_elsewhere", "quoted"];

/** Where an enquiry may go from `from` by `mover`, in the order offered. Empty: nowhere. */
export function nextStates(from: EnquiryStateId, mover: Mover): readonly EnquiryStateId[] {
  if (mover === "staff") return BY_STAFF[from];
  if (mover === "letter") return isWaitingForUs(from) ? ["their_turn"] : [];
  if (mover === "undelivered" || mover === "outdated") return UNHEARD.includes(from) ? ["our_turn"] : [];
  if (mover === "taken-back") return from === "their_turn" ? ["our_turn", "new"] : [];
  // A client who writes is always heard. What is new stays new: nobody has read it yet. A rug in our hands stays where it is.
  return from === "new" || from === "coming_in" || from === "in_workshop" || from === "ready" ? [from] : ["our_turn"];
}

export const mayMove = (from: EnquiryStateId, to: EnquiryStateId, mover: Mover): boolean => nextStates(from, mover).includes(to);

export const isWaitingForUs = (state: EnquiryStateId): boolean => (WAITING_FOR_US as readonly EnquiryStateId[]).includes(state);
