import type { UrgencyLevel } from "../../trade/urgency";
import type { Condition } from "../condition";
import type { ParagraphRow } from "./row";
import { firmsFor, TREATED, type Treated } from "../treated-first";
import { MOULD_SOON, OURS, TRADE } from "./sources";
import { INSPECTED } from "./troubles";

/** What waits for nobody, whatever the rug is worth and however little comes back: it harms people, or spreads. The firm that the caution names sees to it. */
const INSECTS: Condition["is"] = { mechanisms: ["insects"] };
const MOULD: Condition["is"] = { treated: ["mould"] };
const BOTH: Condition["is"] = { has: ["mould-and-insects"] };
const FLOODED: Condition["is"] = { incidents: ["flood"] };
const within = (urgency: UrgencyLevel, is: Condition["is"]): Condition => ({ is: { urgency: [urgency], ...is }, not: { who: ["trade"], inspection: INSPECTED } });
/** Nobody is hurried where haste gains nothing. */
const GAINS = (urgency: UrgencyLevel): Condition => ({ is: { urgency: [urgency] }, not: { who: ["trade"], inspection: INSPECTED, has: ["no-haste", "little-hope"] } });

const DAY_OR_TWO = "Please have {rug} seen to within a day or two, if you can.";
const A_WEEK = "Please have {rug} seen to within a week, if you can.";
/** Haste has its own reason there, whatever the letter says of worth. */
const BEFORE_IT_SPREADS = (within: string, by: readonly Treated[]) => `Whatever you decide about it, please have {rug} seen to within ${within}, if you can: what is in it can spread. This is for ${firmsFor(by)}.`;
/** Who inspected it has told them how soon; what lives in it is not theirs to leave there. */
const seenWith = (is: Condition["is"]): Condition => ({ is: { inspection: INSPECTED, ...is }, not: { who: ["trade"] } });
const TREATED_FIRST = (by: readonly Treated[]) => `Whatever you decide about it, what is in it can spread and has to be treated first. This is for ${firmsFor(by)}.`;
const TODAY = "Please have the firm in today, if you can: mould can start within two days.";

/** How soon, in the words of the queue. Where it is hours, first aid says so; another cleaner is asked to ring. */
export const HASTE: readonly ParagraphRow[] = [
  { ...MOULD_SOON, id: "haste-flood", version: 1, place: "haste", when: { is: { urgency: ["hours"], ...FLOODED }, not: { who: ["trade"], inspection: INSPECTED, has: ["first-aid", "aid-known"] } }, text: TODAY },
  { ...TRADE, id: "haste-day-flood", version: 1, place: "haste", when: within("two-days", FLOODED), text: DAY_OR_TWO },
  { ...TRADE, id: "haste-day-both", version: 1, place: "haste", when: within("two-days", BOTH), text: BEFORE_IT_SPREADS("a day or two", TREATED) },
  { ...TRADE, id: "haste-day-mould", version: 1, place: "haste", when: within("two-days", MOULD), text: BEFORE_IT_SPREADS("a day or two", ["mould"]) },
  { ...TRADE, id: "haste-day-spreads", version: 2, place: "haste", when: within("two-days", INSECTS), text: BEFORE_IT_SPREADS("a day or two", ["insects"]) },
  { ...OURS, id: "haste-day", version: 1, place: "haste", when: GAINS("two-days"), text: DAY_OR_TWO },
  { ...TRADE, id: "haste-week-flood", version: 1, place: "haste", when: within("a-week", FLOODED), text: A_WEEK },
  { ...TRADE, id: "haste-week-both", version: 1, place: "haste", when: within("a-week", BOTH), text: BEFORE_IT_SPREADS("a week", TREATED) },
  { ...TRADE, id: "haste-week-mould", version: 1, place: "haste", when: within("a-week", MOULD), text: BEFORE_IT_SPREADS("a week", ["mould"]) },
  { ...TRADE, id: "haste-week-spreads", version: 2, place: "haste", when: within("a-week", INSECTS), text: BEFORE_IT_SPREADS("a week", ["insects"]) },
  { ...OURS, id: "haste-week", version: 1, place: "haste", when: GAINS("a-week"), text: A_WEEK },
  { ...TRADE, id: "haste-seen-both", version: 1, place: "haste", when: seenWith(BOTH), text: TREATED_FIRST(TREATED) },
  { ...TRADE, id: "haste-seen-mould", version: 1, place: "haste", when: seenWith(MOULD), text: TREATED_FIRST(["mould"]) },
  { ...TRADE, id: "haste-seen-spreads", version: 1, place: "haste", when: seenWith(INSECTS), text: TREATED_FIRST(["insects"]) },
];
