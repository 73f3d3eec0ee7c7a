import { WORTH_SAYING } from "./damage";
import type { Source } from "./fibres";

/**
 * What is lost by waiting, not how angry the message is. The first row that holds rules; `why` is the sentence shown.
 * `when`: answers (`question:answer`), all of which must hold, or the chance of a mechanism from `from` on.
 */
export type UrgencyLevel = "hours" | "two-days" | "a-week" | "can-wait";
export interface UrgencyRow extends Source {
  readonly level: UrgencyLevel;
  readonly all?: readonly string[];
  /** Questions nobody has answered, or only with "not sure". */
  readonly unanswered?: readonly string[];
  readonly likely?: { readonly mechanism: string; readonly from: number };
  /** Only while it may be wet, so that first aid is due. */
  readonly mayBeWet?: true;
  /** Only while first aid is due for bleach and something that it can give off gas with. */
  readonly mayBeGas?: true;
  readonly why: string;
}
/** Where nobody was asked whether it is wet. */
export const WET_UNASKED = "Nobody has said whether it is wet; nothing else in it is lost by waiting.";
/** Said instead where the client's own words tell that it is dry: they judge nothing, and nobody has asked. */
export const SAID_DRY = "By their own words it is dry; nothing in it is lost by waiting.";

const practice: Source = { how: "common practice", source: "Common practice, no published source" };
const FRESH_LINES: Source = { how: "read", source: "Dupont, Restaurator 17 (1996) 1–21, and CRC-MNHN project page: brown lines form within hours; ageing makes them insoluble" };
const DRY_SOON: Source = { how: "memory", source: "EPA and FEMA flood guidance: dry within 24 to 48 hours" };

export const URGENCY: readonly UrgencyRow[] = [
  { level: "hours", mayBeGas: true, why: "Bleach was put on it beside something that it can give off a harmful gas with; people come first.", ...practice },
  { level: "hours", all: ["wetNow:wet", "incidents:flood"], why: "It is wet with flood or waste water: mould starts within two days, and it should not be touched.", ...DRY_SOON },
  { level: "hours", all: ["wetNow:wet", "changes:ran"], why: "It is wet and a colour is moving.", ...practice },
  { level: "hours", all: ["wetNow:damp", "changes:ran"], why: "It is still damp and a colour is moving.", ...practice },
  { level: "hours", all: ["wetNow:wet", "changes:browner"], why: "It is wet and turning brown; what browns while it dries can settle within hours.", ...FRESH_LINES },
  { level: "hours", all: ["wetNow:damp", "changes:browner"], why: "It is still damp and turning brown; what browns while it dries can settle within hours.", ...FRESH_LINES },
  { level: "hours", all: ["wetNow:wet"], why: "It is wet now. Rings and browning form while it dries, within hours.", ...FRESH_LINES },
  { level: "hours", all: ["wetNow:damp"], why: "It is still damp. Rings and browning form while it dries, within hours.", ...FRESH_LINES },
  { level: "hours", all: ["sign:still-wet"], why: "The meter shows that it is still wet inside. Rings and browning form while it dries, within hours.", ...FRESH_LINES },
  { level: "hours", all: ["incidents:flood", "since:hour"], why: "Flood or waste water, just now.", ...DRY_SOON },
  { level: "hours", all: ["incidents:flood", "since:day"], why: "Flood or waste water, today.", ...DRY_SOON },
  { level: "hours", all: ["since:hour", "spilt:yes"], mayBeWet: true, why: "Something got on it within the hour before we were told, and it may still be wet.", ...FRESH_LINES },
  { level: "two-days", all: ["today:yes", "spilt:yes"], why: "Something got on it today; marks set with time.", ...FRESH_LINES },
  { level: "two-days", all: ["fresh-wash:yes", "changes:browner"], why: "It turned brown after cleaning a short while ago; browning sets with time.", ...FRESH_LINES },
  { level: "two-days", all: ["incidents:pet-urine", "recent:yes"], why: "Urine sets and turns alkaline within days.", ...practice },
  { level: "two-days", all: ["liquid:urine", "recent:yes"], why: "Urine sets and turns alkaline within days.", ...practice },
  { level: "two-days", all: ["incidents:vomit", "recent:yes"], why: "What was brought up is acid and sets within days.", ...practice },
  { level: "two-days", all: ["liquid:milk", "recent:yes"], why: "Milk turns and smells within days.", ...practice },
  { level: "two-days", likely: { mechanism: "urine-fresh", from: 0.5 }, why: "It is probably fresh urine, which sets and turns alkaline within days.", how: "read", source: "Udert et al., Water Research 37 (2003) 2571–2582: a few days are needed for complete urea breakdown" },
  { level: "two-days", likely: { mechanism: "mould", from: 0.5 }, why: "It may be growing mould; keep off it and keep it apart.", ...DRY_SOON },
  { level: "a-week", likely: { mechanism: "mould", from: WORTH_SAYING }, why: "Mould may be growing in it; keep off it until somebody has looked.", how: "elicited", source: "Elicited for this project: from where a letter speaks of mould, as of insects" },
  { level: "a-week", all: ["changes:spots"], why: "Furry or black spots were told of, which may be mould; keep off it until somebody has looked.", how: "elicited", source: "Elicited for this project: a letter warns of them as of mould" },
  { level: "a-week", likely: { mechanism: "insects", from: WORTH_SAYING }, why: "Insects go on eating, and spread to anything made of wool.", ...practice },
  { level: "a-week", all: ["spilt:yes", "recent:yes"], why: "Something got on it only days ago; marks set with time.", ...practice },
  { level: "a-week", all: ["spilt:yes", "since:week"], why: "Something got on it only days ago; marks set with time.", ...practice },
  { level: "a-week", all: ["fresh-wash:yes"], why: "It was cleaned a short while ago, and what that left behind is new.", ...practice },
  { level: "a-week", all: ["spilt:yes"], unanswered: ["since"], why: "Something got on it and nobody has said when: it may still be fresh.", how: "elicited", source: "Elicited for this project: a mark of unknown age is treated as a recent one until it is asked" },
  { level: "a-week", all: ["washed:yes"], unanswered: ["since"], why: "It was cleaned and nobody has said when; what that left behind may still be new.", how: "elicited", source: "Elicited for this project: a wash of unknown age is treated as a recent one until it is asked, as a mark is" },
  { level: "can-wait", unanswered: ["wetNow"], why: WET_UNASKED, how: "elicited", source: "Elicited for this project: what nobody was asked is not said to be well" },
  { level: "can-wait", why: "Nothing is lost by waiting.", ...practice },
];

const WASHED = ["treatments:professional-wet", "treatments:machine", "incidents:washed-professional", "incidents:washed-home", "reason:after-cleaning"] as const;

/** What the named conditions of the rows above mean, in answers. */
export const CONDITIONS: Readonly<Record<string, { readonly anyOf: readonly string[]; readonly andAnyOf?: readonly string[] }>> = {
  "today:yes": { anyOf: ["since:hour", "since:day"] },
  "recent:yes": { anyOf: ["since:hour", "since:day", "since:two-days", "reason:just-happened"] },
  "spilt:yes": { anyOf: ["incidents:spill", "incidents:pet-urine", "incidents:vomit", "incidents:water", "liquid:water", "liquid:wine", "liquid:coffee-tea", "liquid:juice", "liquid:milk", "liquid:grease", "liquid:ink", "liquid:urine", "liquid:vomit", "liquid:cleaner", "liquid:other"] },
  "washed:yes": { anyOf: WASHED },
  "fresh-wash:yes": {
    anyOf: WASHED,
    andAnyOf: ["since:hour", "since:day", "since:two-days", "since:week"],
  },
};
