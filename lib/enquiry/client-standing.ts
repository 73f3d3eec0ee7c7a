import type { EnquiryStateId } from "./views";

const ENDED: readonly EnquiryStateId[] = ["finished", "declined", "withdrawn", "closed_unanswered"];
/** Nothing more is awaited from either side. */
export const isEnded = (state: EnquiryStateId): boolean => ENDED.includes(state);

const LATER: Partial<Record<EnquiryStateId, string>> = {
  waiting_elsewhere: "We are waiting for somebody else and write as soon as we know more.",
  quoted: "You have our offer. Tell us whether you agree.",
  agreed: "It is agreed. We arrange when the rug comes in.",
  coming_in: "We expect your rug in the workshop.",
  in_workshop: "Your rug is in the workshop.",
  ready: "Your rug is ready.",
  finished: "This is finished. You can still write to us.",
  declined: "This is closed. You can still write to us.",
  withdrawn: "You have withdrawn this. You can still write to us.",
  closed_unanswered: "We closed this because we heard no more. Write to us, and it is open again.",
};

/** Where it stands, in a sentence for the client. `lastLetter`: the newest letter from a person that has gone out. */
export function clientStanding(state: EnquiryStateId, lastLetter: "reply" | "question" | "acknowledgement" | null): string {
  const later = LATER[state];
  if (later) return later;
  if (state === "new" || lastLetter === null) return "It is with us. A person here reads it, what is most urgent first.";
  if (state === "our_turn") return "What you wrote is with us. A person here reads it.";
  return lastLetter === "question" ? "We have asked you something. Your answer helps us on." : "A person here has answered you.";
}
