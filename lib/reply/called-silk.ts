import type { RugAnswers } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import { questionsAsked } from "./questions-asked";

/** What a seller called it, or a label calls it, that has silk in its name. “Silk look” names a shine, and asks no seller for proof. */
const CALLED_SILK: readonly unknown[] = ["silk", "wool-and-silk", "art-silk"];
const LABEL_WITH_SILK: readonly unknown[] = ["silk", "wool-silk", "silk-viscose", "art-silk"];

/** Whether there is something to ask the seller in writing, in a letter of the client's own or by our advice: the seller or a label spoke of silk. */
export const wasCalledSilk = ({ findings }: Pick<Assessment, "findings">): boolean =>
  findings.some(({ what, value }) => (what === "sellerSaid" && CALLED_SILK.includes(value)) || (what === "label" && typeof value === "object" && "says" in value && LABEL_WITH_SILK.includes(value["says"])));

/** Whether they ask, in their own words, about silk. */
export const isSilkAsked = ({ answers: { story }, messages = [] }: { answers: RugAnswers; messages?: readonly string[] }): boolean =>
  questionsAsked([story, ...messages]).some((question) => /\bsilk\b/iu.test(question));
