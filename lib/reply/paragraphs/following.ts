import type { ParagraphRow } from "./row";
import { OURS } from "./sources";

/** What a letter begins with that follows one of ours. */
export const FOLLOWING: readonly ParagraphRow[] = [
  { ...OURS, id: "thanks", version: 1, place: "thanks", when: { is: { has: ["came"] } }, text: "Thank you for {came}.", tones: { warm: "Thank you very much for {came}." } },

  { ...OURS, id: "since-more", version: 1, place: "since", when: { is: { has: ["only-more"] } }, text: "Since our last letter we can say more." },
  { ...OURS, id: "since-tested", version: 2, place: "since", when: { is: { has: ["tested"] }, not: { has: ["only-more", "only-waits"] } }, text: "Since our last letter there is a test to go by, and our answer has changed." },
  { ...OURS, id: "since-came", version: 2, place: "since", when: { is: { has: ["came"] }, not: { has: ["tested", "only-more", "only-waits"] } }, text: "With what you have sent us since, our answer has changed." },
  { ...OURS, id: "since", version: 2, place: "since", when: { not: { has: ["came", "tested", "only-more", "only-waits"] } }, text: "Since our last letter, our answer has changed." },
  { ...OURS, id: "since-changed", version: 1, place: "since", when: { is: { has: ["changed"] } }, text: "This replaces what we wrote before about {changed}." },
  { ...OURS, id: "since-gone", version: 1, place: "since", when: { is: { has: ["gone"] } }, text: "What we wrote before about {gone} no longer holds." },
  { ...OURS, id: "since-waits", version: 1, place: "since", when: { is: { has: ["waits"] } }, text: "What we wrote before about {waits} was about a dry rug; should it be wet again, we judge it anew once we know." },
];
