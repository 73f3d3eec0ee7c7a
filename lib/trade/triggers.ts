import type { DamageId } from "./damage";
import type { Source } from "./fibres";

/**
 * What makes each mechanism happen. A telling without the method never weighs more than the mildest wet method it may mean. Triggers of one `event` are tellings of the same thing and only the strongest
 * counts; different events act as independent leaky causes. `unless`: not counted where something more exact is told.
 * `when` and `unless` name answers as `question:answer`.
 */
export interface TriggerRow extends Source {
  readonly mechanism: DamageId;
  readonly event: string;
  readonly when: string;
  readonly unless?: readonly string[];
  readonly chance: number;
}
const HOW_IT_WAS_WASHED = ["treatments:professional-wet", "treatments:professional-dry", "treatments:machine", "treatments:solvent", "incidents:washed-home"];
const WITH_WHAT_SPOTTED = ["treatments:plain-water", "treatments:household-cleaner", "treatments:soap", "treatments:vinegar-soda", "treatments:bleach", "treatments:steam-heat", "treatments:solvent"];
const LESS_EXACT: Readonly<Record<string, readonly string[]>> = {
  "incidents:washed-professional": HOW_IT_WAS_WASHED,
  "reason:after-cleaning": [...HOW_IT_WAS_WASHED, "incidents:washed-professional"],
  "incidents:spotted": WITH_WHAT_SPOTTED,
};

const rows = (mechanism: DamageId, event: string, chances: Readonly<Record<string, number>>, source: Source): TriggerRow[] =>
  Object.entries(chances).map(([when, chance]) => {
    const unless = LESS_EXACT[when] ?? (when === "incidents:spill" && mechanism.startsWith("food") ? ["liquid:water"] : undefined);
    return { mechanism, event, when, chance, ...(unless ? { unless } : {}), ...source };
  });
const elicited = (about: string): Source => ({ how: "elicited", source: `Elicited for this project: ${about}` });

const WET = elicited("chances for the pile that takes it worst; more water and slower drying always weigh more (Hutchins, JAIC 22 (1983) 57–61; Dupont, Restaurator 17 (1996) 1–21)");
const TELLS = elicited("the client names it; a few are mistaken");
const SIDE = elicited("a side effect some of the time");

export const TRIGGERS: readonly TriggerRow[] = [
  ...rows("browning-cleaning", "wash", {
    "treatments:professional-wet": 0.55, "treatments:machine": 0.5, "incidents:washed-home": 0.5, "incidents:washed-professional": 0.35,
    "reason:after-cleaning": 0.35, "treatments:professional-dry": 0.1, "treatments:solvent": 0.03,
  }, WET),
  ...rows("browning-cleaning", "spotting", {
    "treatments:household-cleaner": 0.35, "treatments:steam-heat": 0.35, "treatments:soap": 0.3, "treatments:plain-water": 0.25,
    "treatments:vinegar-soda": 0.25, "treatments:bleach": 0.25, "incidents:spotted": 0.25,
  }, WET),
  ...rows("browning-use", "damp", { "incidents:damp": 0.35, "household:pots": 0.2, "household:humid": 0.12, "household:pets": 0.05, "incidents:stored": 0.05 }, WET),
  ...rows("browning-use", "spill", { "incidents:flood": 0.3, "incidents:pet-urine": 0.3, "liquid:urine": 0.3, "incidents:water": 0.15, "liquid:water": 0.15, "incidents:spill": 0.12 }, WET),
  ...rows("water-mark", "spill", { "incidents:water": 0.55, "liquid:water": 0.55, "incidents:flood": 0.5, "incidents:spill": 0.15, "incidents:pet-urine": 0.1 }, WET),
  ...rows("water-mark", "spotting", {
    "treatments:plain-water": 0.35, "treatments:soap": 0.2, "treatments:household-cleaner": 0.2, "treatments:vinegar-soda": 0.2, "treatments:bleach": 0.2, "treatments:steam-heat": 0.2, "incidents:spotted": 0.2,
  }, WET),
  ...rows("water-mark", "wash", { "treatments:professional-wet": 0.08, "treatments:machine": 0.1 }, WET),
  ...rows("pile-distortion", "wash", {
    "treatments:machine": 0.6, "incidents:washed-home": 0.55, "treatments:professional-wet": 0.5, "incidents:washed-professional": 0.3, "reason:after-cleaning": 0.3, "treatments:professional-dry": 0.12,
  }, WET),
  ...rows("pile-distortion", "spotting", {
    "treatments:steam-heat": 0.5, "treatments:rubbed": 0.45, "treatments:household-cleaner": 0.3, "treatments:soap": 0.3, "treatments:plain-water": 0.25,
    "treatments:vinegar-soda": 0.25, "treatments:bleach": 0.25, "incidents:spotted": 0.25, "treatments:blotted": 0.02,
  }, WET),
  ...rows("pile-distortion", "spill", { "incidents:flood": 0.5, "incidents:water": 0.35, "incidents:pet-urine": 0.3, "incidents:spill": 0.15 }, WET),
  ...rows("bleaching", "agent", { "treatments:bleach": 0.65, "liquid:cleaner": 0.2, "treatments:household-cleaner": 0.12, "treatments:vinegar-soda": 0.05, "treatments:solvent": 0.03 }, SIDE),
  ...rows("bleaching", "spill", { "incidents:pet-urine": 0.08, "liquid:urine": 0.08, "incidents:vomit": 0.06 }, elicited("urine turns alkaline with age and changes dyes")),
  ...rows("dye-bleed", "wash", { "incidents:washed-home": 0.18, "treatments:machine": 0.15, "treatments:professional-wet": 0.12, "incidents:washed-professional": 0.08, "reason:after-cleaning": 0.08 }, SIDE),
  ...rows("dye-bleed", "spotting", { "treatments:household-cleaner": 0.12, "treatments:soap": 0.1, "treatments:steam-heat": 0.1, "treatments:plain-water": 0.08, "treatments:solvent": 0.08 }, SIDE),
  ...rows("dye-bleed", "spill", { "incidents:flood": 0.45, "incidents:water": 0.12, "incidents:pet-urine": 0.12, "liquid:urine": 0.12 }, SIDE),
  ...rows("urine-old", "urine", { "incidents:pet-urine": 0.97, "liquid:urine": 0.97, "household:pets": 0.04 }, TELLS),
  ...rows("food-old", "food", {
    "incidents:spill": 0.95, "incidents:vomit": 0.9, "liquid:wine": 0.95, "liquid:coffee-tea": 0.95, "liquid:juice": 0.95, "liquid:milk": 0.95, "liquid:grease": 0.95,
    "liquid:ink": 0.95, "liquid:vomit": 0.9, "liquid:other": 0.8,
  }, TELLS),
  ...rows("matting", "wear", { "incidents:wear": 0.85, "room:busy": 0.25, "incidents:stored": 0.15 }, TELLS),
  ...rows("fading", "sun", { "incidents:sun": 0.8 }, TELLS),
  ...rows("insects", "insects", { "incidents:insects": 0.95, "household:moths": 0.5, "incidents:stored": 0.1 }, TELLS),
  ...rows("mould", "damp", { "incidents:flood": 0.35, "incidents:damp": 0.15, "household:pots": 0.1, "incidents:stored": 0.08, "household:humid": 0.06, "incidents:water": 0.05 },
    elicited("visible growth takes days of damp (CCI, from memory); chances judged")),
  ...rows("backing-failure", "back", { "back:cloth": 0.1, "back:felt": 0.08 }, elicited("latex ages")),
  ...rows("backing-failure", "age", { "age:25-80": 0.08, "age:10-25": 0.06 }, elicited("latex ages")),
  ...rows("backing-failure", "wash", { "incidents:flood": 0.15, "treatments:solvent": 0.1, "incidents:washed-professional": 0.05, "incidents:pet-urine": 0.05 }, SIDE),
  ...rows("shrinkage", "wash", { "incidents:flood": 0.25, "incidents:washed-home": 0.2, "treatments:professional-wet": 0.1, "treatments:machine": 0.08, "incidents:water": 0.05 },
    elicited("about 2 % on a first thorough wetting is common, up to 10 %; trouble from it is rarer")),
];

/**
 * The chance that a trouble still counts as fresh, by when it happened. `unknown` where nobody said.
 * Urine: under two days; food and drink: under three days; browning and water marks: days; dye: while still damp.
 */
export type FreshKind = "urine" | "food" | "browning" | "dye";
export interface FreshRow extends Source {
  readonly by: Readonly<Record<"hour" | "day" | "two-days" | "week" | "month" | "longer" | "unknown", number>>;
}
export const FRESH: Readonly<Record<FreshKind, FreshRow>> = {
  urine: { by: { hour: 1, day: 1, "two-days": 1, week: 0.15, month: 0, longer: 0, unknown: 0.25 }, ...elicited("where the answer straddles the two days") },
  food: { by: { hour: 1, day: 1, "two-days": 1, week: 0.5, month: 0.1, longer: 0, unknown: 0.3 }, ...elicited("where the answer straddles the three days") },
  browning: { by: { hour: 1, day: 1, "two-days": 1, week: 0.8, month: 0.1, longer: 0, unknown: 0.25 },
    ...elicited("fresh lines respond, aged ones hardly (Dupont, Restaurator 17 (1996) 1–21)") },
  dye: { by: { hour: 0.9, day: 0.6, "two-days": 0.2, week: 0.02, month: 0, longer: 0, unknown: 0.08 }, ...elicited("drying time of a rug; still wet or damp by the client's word: .9") },
};
export const STILL_DAMP = { chance: 0.9, ...elicited("the client says it is wet or damp now") };
/** Ink, paint and make-up set at once: they count as old from the start. */
export const NEVER_FRESH = { liquids: ["ink"] as readonly string[], ...elicited("pigment and binder") };

/**
 * Who did it: chances of the harm that washing and spotting do are raised to this strength, 1 − (1 − chance)^strength.
 * Where nobody said who, 1.
 */
export interface WhoRow extends Source { readonly when: string; readonly strength: number }
export const WHO: readonly WhoRow[] = [
  { when: "treatedBy:rug-cleaner", strength: 0.6, ...elicited("a cleaner of rugs alone tests first and dries fast, mostly") },
  { when: "treatedBy:cleaner", strength: 1.1, ...elicited("wall-to-wall habits and machines on a loose rug") },
  { when: "treatedBy:owner", strength: 1.2, ...elicited("more water and more rubbing than a spot needs") },
];
/** The events, and the harm, that who did it bears on. */
export const WHO_BEARS_ON = { events: ["wash", "spotting", "agent"], mechanisms: ["browning-cleaning", "water-mark", "pile-distortion", "bleaching", "dye-bleed", "shrinkage"] } as const satisfies { events: readonly string[]; mechanisms: readonly DamageId[] };

/** What takes time: the chance so soon after, as a share of the full one. */
export interface TakesTimeRow extends Source { readonly mechanism: DamageId; readonly event: string; readonly by: Readonly<Record<string, number>> }
export const TAKES_TIME: readonly TakesTimeRow[] = [
  { mechanism: "mould", event: "damp", by: { hour: 0.02, day: 0.05, "two-days": 0.4 }, how: "memory", source: "CCI mould chart (Michalski, from memory): visible growth after two to three days at 90–100 % humidity; shares elicited" },
  { mechanism: "bleaching", event: "spill", by: { hour: 0.2, day: 0.4, "two-days": 0.7 }, ...elicited("urine attacks dyes as it turns alkaline, within days (Udert et al., Water Research 37 (2003) 2571–2582)") },
];
