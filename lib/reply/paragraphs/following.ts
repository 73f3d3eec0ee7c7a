import type { ParagraphRow } from "./row";
import { OURS } from "./sources";

/** Nothing of the last letter changed: there is more to say, or some of it waits, or neither. */
const NO_CHANGE = ["only-more", "only-waits", "unchanged"];

/** What a letter begins with that follows one of ours. */
export const FOLLOWING: readonly ParagraphRow[] = [
  { ...OURS, id: "thanks", version: 1, place: "thanks", when: { is: { has: ["came"] } }, text: "Thank you for {came}.", tones: { warm: "Thank you very much for {came}." } },

  { ...OURS, id: "since-unchanged", version: 1, place: "since", when: { is: { has: ["unchanged"] } }, text: "What we wrote to you before still stands." },
  { ...OURS, id: "since-inspected-more", version: 1, place: "since", when: { is: { has: ["inspected-more"] } }, text: "Since {inspector}’s inspection on {inspectedOn} we can say more." },
  { ...OURS, id: "since-more", version: 2, place: "since", when: { is: { has: ["only-more"] }, not: { has: ["inspected-more"] } }, text: "Since our last letter we can say more." },
  { ...OURS, id: "since-inspected", version: 1, place: "since", when: { is: { has: ["inspected-otherwise"] } }, text: "Since {inspector}’s inspection on {inspectedOn}, our answer has changed." },
  { ...OURS, id: "since-tested", version: 3, place: "since", when: { is: { has: ["tested"] }, not: { has: ["inspected-otherwise", ...NO_CHANGE] } }, text: "Since our last letter there is a test to go by, and our answer has changed." },
  { ...OURS, id: "since-came", version: 3, place: "since", when: { is: { has: ["came"] }, not: { has: ["inspected-otherwise", "tested", ...NO_CHANGE] } }, text: "With what you have sent us since, our answer has changed." },
  { ...OURS, id: "since", version: 3, place: "since", when: { not: { has: ["inspected-otherwise", "came", "tested", ...NO_CHANGE] } }, text: "Since our last letter, our answer has changed." },
  { ...OURS, id: "since-changed", version: 1, place: "since", when: { is: { has: ["changed"] } }, text: "This replaces what we wrote before about {changed}." },
  { ...OURS, id: "since-gone", version: 1, place: "since", when: { is: { has: ["gone"] } }, text: "What we wrote before about {gone} no longer holds." },
  { ...OURS, id: "since-waits", version: 1, place: "since", when: { is: { has: ["waits"] } }, text: "What we wrote before about {waits} was about a dry rug; should it be wet again, we judge it anew once we know." },
];
