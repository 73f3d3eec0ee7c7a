import type { Words } from "../words/words";
import type { EnquiryStateId } from "./views";

const ENDED: readonly EnquiryStateId[] = ["finished", "declined", "withdrawn", "closed_unanswered"];
/** Nothing more is awaited from either side. */
export const isEnded = (state: EnquiryStateId): boolean => ENDED.includes(state);

const LATER = ["waiting_elsewhere", "quoted", "agreed", "coming_in", "in_workshop", "ready", "finished", "declined", "withdrawn", "closed_unanswered"] as const satisfies readonly EnquiryStateId[];
const isLater = (state: EnquiryStateId): state is (typeof LATER)[number] => (LATER as readonly EnquiryStateId[]).includes(state);

/** Where it stands, in a sentence for the client. `lastLetter`: the newest letter from a person that has gone out. */
export function clientStanding(state: EnquiryStateId, lastLetter: "reply" | "question" | "acknowledgement" | null, { say }: Words): string {
  if (isLater(state)) return say(`standing.${state}`);
  if (state === "new" || lastLetter === null) return say("standing.new");
  if (state === "our_turn") return say("standing.our-turn");
  return say(lastLetter === "question" ? "standing.asked" : "standing.answered");
}
