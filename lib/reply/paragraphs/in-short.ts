import { TREATED } from "../treated-first";
import type { ParagraphRow } from "./row";
import { OURS, TRADE } from "./sources";
import { CLEANING, HARDLY_WORTH, PERHAPS_NOT_WORTH, REPAIRS } from "./troubles";
import { LIKELY_WORTH } from "./worth";

const MORE_FIRST = "Of rug {number} we need to know more first.";

/** The answer of each of several rugs in one sentence, before any of them is spoken of at length: who writes about two rugs reads of both at once. In the order of what comes first. */
export const IN_SHORT: readonly ParagraphRow[] = [
  { ...OURS, id: "in-short-wet-several", version: 1, place: "in-short", when: { is: { has: ["first-aid", "aid-known"] } }, text: "For each of {sharers} what stands above comes first." },
  { ...OURS, id: "in-short-wet", version: 1, place: "in-short", when: { is: { has: ["first-aid", "aid-known"] } }, text: "For rug {number} what stands above comes first." },
  { ...OURS, id: "in-short-said-wet", version: 1, place: "in-short", when: { is: { has: ["said-wet"] } }, text: "Of rug {number} we first need to know whether it is wet." },
  { ...OURS, id: "in-short-seen-beyond", version: 1, place: "in-short", when: { is: { inspection: ["beyond"] } }, text: "Rug {number} was judged beyond economic repair when it was inspected." },
  { ...OURS, id: "in-short-flood", version: 1, place: "in-short", when: { is: { incidents: ["flood"] } }, text: "Rug {number} had flood or waste water: please let nobody touch it yet." },
  { ...OURS, id: "in-short-cut-down-seen", version: 1, place: "in-short", when: { is: { advice: ["advise-cut-down"], inspection: ["not-beyond"] } }, text: "Rug {number} might be cut down." },
  { ...OURS, id: "in-short-cut-down", version: 1, place: "in-short", when: { is: { advice: ["advise-cut-down"] } }, text: "Rug {number} might be cut down, if an inspection finds sound ground." },
  { ...OURS, id: "in-short-not-worth", version: 1, place: "in-short", when: { not: { age: ["antique"] }, atLeast: HARDLY_WORTH }, text: "Rug {number} is {beyond} not worth the cost of cleaning." },
  { ...OURS, id: "in-short-refer", version: 1, place: "in-short", when: { is: { advice: ["refer"] } }, text: "Rug {number} belongs first in other hands than ours." },
  { ...OURS, id: "in-short-not-ours", version: 1, place: "in-short", when: { is: { advice: ["not-our-work"] } }, text: "Rug {number} is no work for us." },
  { ...OURS, id: "in-short-asks", version: 2, place: "in-short", when: { is: { advice: ["ask-for-more"], has: ["needs-more"] } }, text: MORE_FIRST },
  { ...OURS, id: "in-short-unknown", version: 2, place: "in-short", when: { is: { certainty: ["unknown"], has: ["needs-more"] } }, text: MORE_FIRST },
  { ...OURS, id: "in-short-worth", version: 1, place: "in-short", when: LIKELY_WORTH, text: "Rug {number} is likely worth cleaning." },
  { ...OURS, id: "in-short-leave", version: 1, place: "in-short", when: { is: { advice: ["leave-alone"] } }, text: "Rug {number} can stay as it is." },
  { ...OURS, id: "in-short-even", version: 1, place: "in-short", when: { not: { age: ["antique"] }, atLeast: PERHAPS_NOT_WORTH }, text: "Whether rug {number} is worth cleaning is open from here." },
  { ...TRADE, id: "in-short-repair", version: 1, place: "in-short", when: { is: { top: REPAIRS }, not: { age: ["antique"] } }, text: "Rug {number} calls for {repair}, more than for cleaning." },
  { ...TRADE, id: "in-short-treated-first", version: 1, place: "in-short", when: { is: { offered: CLEANING, treated: TREATED }, not: { age: ["antique"] } }, text: "Whether and how rug {number} could be cleaned is a matter for later." },
  { ...OURS, id: "in-short-cleans", version: 2, place: "in-short", when: { is: { offered: CLEANING }, not: { age: ["antique"], advice: ["advise-claim-or-replacement"] } }, text: "Rug {number} we would clean, within the limits below." },
  { ...OURS, id: "in-short-seen", version: 1, place: "in-short", when: { is: { inspection: ["not-beyond"] } }, text: "Rug {number} was inspected, and is not judged beyond economic repair." },
  { ...OURS, id: "in-short", version: 1, place: "in-short", when: {}, text: "Rug {number} should be seen before anybody decides." },
];
