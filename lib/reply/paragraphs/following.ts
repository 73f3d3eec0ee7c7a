import type { ParagraphRow } from "./row";
import { OURS } from "./sources";

/** What a letter begins with that follows one of ours. */
export const FOLLOWING: readonly ParagraphRow[] = [
  { ...OURS, id: "thanks", version: 1, place: "thanks", when: { is: { has: ["came"] } }, text: "Thank you for {came}.", tones: { warm: "Thank you very much for {came}." } },

  { ...OURS, id: "since-tested", version: 1, place: "since", when: { is: { has: ["tested"] } }, text: "Since our last letter there is a test to go by, and our answer has changed." },
  { ...OURS, id: "since-came", version: 1, place: "since", when: { is: { has: ["came"] } }, text: "With what you have sent us since, our answer has changed." },
  { ...OURS, id: "since", version: 1, place: "since", when: {}, text: "Since our last letter, our answer has changed." },
];
