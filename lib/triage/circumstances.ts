import { PICTURE } from "../trade/questions-value";
import type { Circumstances } from "./advice";
import { isPlanned, sizeOf } from "./money";
import { saysNothingIsWrong, type Told } from "./told";

const any = (told: Told, answers: readonly string[]): boolean => answers.some((a) => told.has(a));

const IN_ONE_PLACE = ["incidents:spill", "incidents:pet-urine", "incidents:vomit", "incidents:spotted", "incidents:water", "changes:ring", "liquid:urine"];
const ALL_OVER = ["incidents:flood", "incidents:washed-professional", "incidents:washed-home", "treatments:professional-wet", "treatments:machine", "changes:dirty", "changes:wavy"];
const CLAIMS = ["matters:claim", "reason:mis-sold"];
const SOMEBODY_CLEANED_IT = ["reason:after-cleaning", "treatedBy:cleaner", "treatedBy:rug-cleaner", "treatedBy:me-trade"];
/** Where a claim is not asked for: chance that a replacement or somebody's responsibility is a way forward all the same. Elicited. */
const GROUNDS = { cleaned: 0.9, otherwise: 0.5 } as const;
/** Chance that the trouble is in one place where nothing is said either way. Elicited. */
const LOCAL_UNKNOWN = 0.5;

function localChance(told: Told): number {
  if (isPlanned(told)) return 1;
  if (any(told, ALL_OVER)) return any(told, IN_ONE_PLACE) ? LOCAL_UNKNOWN : 0;
  return any(told, IN_ONE_PLACE) ? 1 : LOCAL_UNKNOWN;
}

/** Whether the trouble is known to be in one place, and the size of the rug: what a cut-down is measured from. */
const isPlaced = (told: Told): boolean => sizeOf(told) !== null && (isPlanned(told) || (any(told, IN_ONE_PLACE) && !any(told, ALL_OVER)));

const isGiven = (told: Told, what: string): boolean =>
  told.answered(what) || (what === "label" && (told.value("label") !== undefined || told.has("labelFound:none")));

/** Share of the picture that nobody has given yet, 0–1. "Not sure" leaves it open. */
export function openShare(told: Told): number {
  const given = Object.entries(PICTURE).reduce((sum, [what, share]) => (isGiven(told, what) ? sum + share : sum), 0);
  return Math.max(0, 1 - given);
}

/** What goes to a specialist, each as a chance 0–1. */
export function specialistChances(told: Told, chance: (mechanism: string) => number): Record<"antique" | "flood" | "mould" | "insects", number> {
  return { antique: told.has("age:antique") ? 1 : 0, flood: told.has("incidents:flood") ? 1 : 0, mould: chance("mould"), insects: chance("insects") };
}

/** The circumstances of a decision from what was told. `chance` gives the marginal chance of a mechanism, `cheap` that cleaning costs more than the rug is worth, `needsAid` whether first aid is due. */
export function circumstancesOf(told: Told, { chance, cheap, needsAid }: { chance: (mechanism: string) => number; cheap: number; needsAid: boolean }): Circumstances {
  const claims = any(told, CLAIMS);
  return {
    sound: saysNothingIsWrong(told) ? 1 : 0,
    wet: needsAid ? 1 : 0,
    specialist: Math.max(...Object.values(specialistChances(told, chance))),
    local: localChance(told),
    placed: isPlaced(told),
    antique: told.has("age:antique"),
    cheap,
    grounds: claims ? 1 : any(told, SOMEBODY_CLEANED_IT) ? GROUNDS.cleaned : GROUNDS.otherwise,
    asksName: any(told, ["reason:what-is-it", "reason:mis-sold", "matters:know", "matters:claim"]) ? 1 : 0,
    soldAsSilk: claims && any(told, ["sellerSaid:silk", "sellerSaid:wool-and-silk"]),
    open: openShare(told),
  };
}
