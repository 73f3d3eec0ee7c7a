import type { EnquiryAnswers } from "../trade/questions";
import type { UrgencyLevel } from "../trade/urgency";
import type { Assessment, Range } from "../triage/assessment";
import { asksAtDesk, asksOf } from "./asks";
import { holds, type Facts } from "./condition";
import { isOnlySmellTold, isWorthAsked } from "./damage-told";
import type { Inspected } from "./inspected";
import { factsOf, givesYears, isFibreOpen, likelyMechanisms, treatedIn, type RugForDraft } from "./facts";
import { mendedIn } from "./mended";
import { PARAGRAPHS, PLACES } from "./paragraphs";
import { OPEN_UNTIL_TESTED } from "./paragraphs/care";
import type { Against, ParagraphRow, PlaceId } from "./paragraphs/row";
import { improvementTells } from "./phrases";
import type { SlotName } from "./slot-words";
import { BY_FIRM, ONCE_TREATED, TREATED, treatedFirst, type Treated } from "./treated-first";

/**
 * What a letter of this assessment says of one rug, for whoever reads the judgement beside it. `comesBackOpen` and `lifeOpen`:
 * why the letter gives no range, in a few words; null where it gives one, or there is none to give. `lifeOnce`: what has to hold before
 * the years that it gives count; null where nothing has to, or it gives none. `isHeldBack`: of gain, harm, worth and
 * years nothing of the program’s is told, since flood or waste water got into it, or before it is known whether it is wet. `isWorthTold`: the letter says of worth what there is to say. `against`: what the letter says that speaks against the work; null where it says nothing. `setsNoTime`: waiting costs something, and the letter hurries nobody all the same: haste would gain too little, or the work is likely not worth its cost, which is `untold` where the letter says nothing of worth; null too once an inspection has told them how soon. `isCleaningOpen`: it offers no way of cleaning before a test. `hasClaim`: it speaks of a claim. `firstTo`: what it names a firm for, which sees to it before us. `inspection`: what stands in place of its chance of being beyond repair. `asks`: what to ask, the
 * letter's own first ask first. `ask`: that first ask; null where the letter has nothing to ask. `isSoilTold`: it speaks of soil, as what is seen or as what would come out.
 */
export interface ToldByLetter {
  readonly comesBackOpen: string | null;
  readonly lifeOpen: string | null;
  readonly lifeOnce: string | null;
  readonly isHeldBack: "flood" | "wet" | null;
  readonly isWorthTold: boolean;
  readonly against: Against | null;
  readonly setsNoTime: "little" | "worth" | "untold" | null;
  readonly isCleaningOpen: boolean;
  readonly hasClaim: boolean;
  readonly firstTo: readonly Treated[];
  readonly isSoilTold: boolean;
  readonly inspection: Inspected | null;
  readonly asks: Assessment["nextQuestions"];
  readonly ask: Assessment["nextQuestions"][number] | null;
}

/** In which place a figure stands, and how it is left open there. */
const COMES_BACK = { place: "outlook", slots: ["improvement", "mends"] } as const satisfies Figure;
const LIFE = { place: "life", slots: ["life", "lifeLow", "lifeHigh"] } as const satisfies Figure;
interface Figure { readonly place: PlaceId; readonly slots: readonly SlotName[] }

/** The paragraph that stands in a place of the letter; undefined where none does. */
function standsIn(place: PlaceId, facts: Facts): ParagraphRow | undefined {
  const when = PLACES.find((p) => p.id === place)?.when;
  return when && !holds(when, facts) ? undefined : PARAGRAPHS.find((r) => r.place === place && holds(r.when, facts));
}
/** Whether it tells its figure. */
const tells = ({ place, slots }: Figure, facts: Facts): boolean => slots.some((slot) => standsIn(place, facts)?.text.includes(`{${slot}}`));

/** Where a letter says what speaks against the work: with its verdict, else beside its doubt. */
const AGAINST = ["worth", "beyond"] as const satisfies readonly PlaceId[];
const againstIn = (facts: Facts): Against | null => AGAINST.flatMap((place) => standsIn(place, facts)?.against ?? [])[0] ?? null;

/** Where a letter names who sees to what lives in the rug. */
const FIRST_SEEN = ["haste", "care"] as const satisfies readonly PlaceId[];

/** Where waiting costs days, a letter to an owner says how soon, or sets no time since nothing would be gained by it. Who inspected it has told them. */
const DAYS: readonly UrgencyLevel[] = ["two-days", "a-week"];
const isUnhurried = ({ assessment: a, inspection }: RugForDraft, facts: Facts, isTrade: boolean): boolean => DAYS.includes(a.urgency.level) && a.firstAid === null && !isTrade && !inspection && standsIn("haste", facts) === undefined;
/** What keeps a paragraph of haste away: by how much comes back, else by what the work is worth. */
const whyNoTime = (facts: Facts, isWorthTold: boolean): ToldByLetter["setsNoTime"] => (facts.words.has.includes("little-hope") ? "little" : isWorthTold ? "worth" : "untold");

/** What comes before anything is said of it; null where nothing does. */
export const heldBackBy = ({ answers, wetByWords }: RugForDraft): ToldByLetter["isHeldBack"] => (wetByWords ? "wet" : answers.incidents?.includes("flood") ? "flood" : null);
const OPEN = { wet: "open until we know whether it is wet", flood: "open until the flood firm has seen it", "flood-seen": "open after flood or waste water" } as const;
const heldBack = (rug: RugForDraft): string | null => { const by = heldBackBy(rug); return by && OPEN[by === "flood" && rug.inspection ? "flood-seen" : by]; };
const onceTreated = (rug: RugForDraft): string | null => { const first = treatedFirst(treatedIn(rug)); return first && ONCE_TREATED[first]; };
const untilTreated = (rug: RugForDraft): string | null => { const once = onceTreated(rug); return once && `open until ${once}`; };

/** Once somebody here has had it in hand, nothing is told "from here". */
const cannotTell = ({ inspection }: RugForDraft): string => `cannot be told${inspection ? "" : " from here"}`;
const whyNoRange = (rug: RugForDraft, range: Range): string =>
  heldBack(rug) ?? (improvementTells(range) ? untilTreated(rug) : null) ?? `${isOnlySmellTold(rug.assessment) ? "how far the smell goes" : "how much comes back"} ${cannotTell(rug)}`;
const whyNoYears = (rug: RugForDraft): string =>
  heldBack(rug) ?? (givesYears(rug.assessment) ? untilTreated(rug) : isFibreOpen(rug.assessment) ? "open until we know the fibre" : null) ?? `few years or many: ${cannotTell(rug)}`;

/** The paragraph that says that what is seen is soil. */
const SOIL = PARAGRAPHS.filter(({ place, about }) => place === "cause" && about === "soil-only");

/** `isTrade`: another cleaner asks. By the paragraphs that are shipped. */
export function toldByLetter(rug: RugForDraft, { enquiry, isTrade }: { enquiry: EnquiryAnswers; isTrade: boolean }): ToldByLetter {
  const a = rug.assessment;
  const facts = factsOf({ rug, enquiry, isTrade, rugs: 1, hasTelephone: true, hasName: true, hasPage: true, came: null });
  const isWorthTold = heldBackBy(rug) === null && rug.answers.age !== "antique" && isWorthAsked(a);
  const givesLife = a.lifeYears !== null && tells(LIFE, facts);
  return {
    comesBackOpen: a.improvement && !tells(COMES_BACK, facts) ? whyNoRange(rug, a.improvement) : null,
    lifeOpen: a.lifeYears && !givesLife ? whyNoYears(rug) : null,
    lifeOnce: givesLife ? onceTreated(rug) : null,
    isHeldBack: heldBackBy(rug),
    isWorthTold,
    against: againstIn(facts),
    setsNoTime: isUnhurried(rug, facts, isTrade) ? whyNoTime(facts, isWorthTold) : null,
    isCleaningOpen: standsIn("care", facts)?.text === OPEN_UNTIL_TESTED,
    hasClaim: standsIn("claim", facts) !== undefined,
    firstTo: TREATED.filter((what) => FIRST_SEEN.some((place) => standsIn(place, facts)?.text.includes(BY_FIRM[what]))),
    isSoilTold: SOIL.some(({ when }) => holds(when, facts)) || (a.improvement !== null && tells(COMES_BACK, facts) && mendedIn(a) === "soil"),
    inspection: rug.inspection ?? null,
    asks: asksAtDesk(rug, likelyMechanisms(a)),
    ask: asksOf(rug, likelyMechanisms(a)).one,
  };
}
