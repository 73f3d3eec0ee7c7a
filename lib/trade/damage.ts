import type { Column } from "./columns";
import type { Source } from "./fibres";

/**
 * What can have happened to a rug. Each mechanism has
 *  - `leak`: its chance where the client told what happened and nothing of it points here;
 *  - `unasked`: its chance where nobody has said what happened (the share among rugs people write in about);
 *  - `hits`: how readily it marks each kind of pile, 0–1, multiplied into every chance. A class without a column takes the highest of its components;
 * `soil-only` is the empty set and has no row: it is what remains.
 */
export interface MechanismRow extends Source {
  readonly name: string;
  readonly leak: number;
  readonly unasked: number;
  readonly hits: Readonly<Record<Column, number>>;
}

const hits = (wool: number, silk: number, viscose: number, woolViscose: number, cotton: number, olefin: number, polyamide: number): Record<Column, number> =>
  ({ wool, silk, viscose, "wool-viscose": woolViscose, cotton, olefin, polyamide });
const elicited = (about: string): Source => ({ how: "elicited", source: `Elicited for this project: ${about}` });

export const MECHANISMS = {
  "browning-cleaning": { name: "browning from cleaning", leak: 0.005, unasked: 0.08, hits: hits(0.35, 0.3, 1, 0.6, 0.8, 0.1, 0.15),
    ...elicited("order of the fibres after Dupont, Restaurator 17 (1996) 1–21 (any wet–dry edge on cellulose); on wool and synthetics it wicks up from jute or cotton") },
  "browning-use": { name: "browning from damp or spills in use", leak: 0.01, unasked: 0.06, hits: hits(0.15, 0.15, 1, 0.5, 0.5, 0.05, 0.05),
    ...elicited("as browning from cleaning; slow drying after Hutchins, JAIC 22 (1983) 57–61") },
  "water-mark": { name: "a water mark", leak: 0.01, unasked: 0.06, hits: hits(0.4, 0.8, 1, 0.7, 0.6, 0.2, 0.2), ...elicited("tide lines show most on shiny and cellulosic pile") },
  "pile-distortion": { name: "distorted pile", leak: 0.01, unasked: 0.06, hits: hits(0.15, 0.5, 1, 0.6, 0.35, 0.15, 0.2), ...elicited("viscose is weak and swells most when wet (Morton and Hearle, from memory)") },
  bleaching: { name: "bleaching", leak: 0.005, unasked: 0.03, hits: hits(1, 1, 1, 1, 1, 0.2, 0.8), ...elicited("polypropylene is mostly dyed in the melt") },
  "dye-bleed": { name: "a colour that ran", leak: 0.005, unasked: 0.04, hits: hits(0.8, 1, 1, 0.9, 0.8, 0.1, 0.5), ...elicited("frequency of bleeding dyes in rugs is not published") },
  "urine-old": { name: "old urine", leak: 0.01, unasked: 0.09, hits: hits(1, 1, 1, 1, 1, 0.7, 0.8), ...elicited("share among enquiries") },
  "food-old": { name: "an old stain of something spilled", leak: 0.01, unasked: 0.1, hits: hits(1, 1, 1, 1, 1, 0.7, 1), ...elicited("share among enquiries") },
  matting: { name: "matting from traffic or furniture", leak: 0.05, unasked: 0.2, hits: hits(0.5, 0.6, 1, 0.8, 0.7, 0.9, 0.5), ...elicited("order of thickness loss in carpet-loading tests, from memory") },
  fading: { name: "fading", leak: 0.03, unasked: 0.08, hits: hits(0.8, 1, 0.9, 0.9, 0.9, 0.4, 0.7), ...elicited("share among enquiries") },
  insects: { name: "insect damage", leak: 0.01, unasked: 0.04, hits: hits(1, 0.3, 0.02, 0.7, 0.02, 0.01, 0.01), ...elicited("moths eat keratin: grazed pile about 100 : 20 : 1 for wool, silk, cellulose and synthetics") },
  mould: { name: "mould", leak: 0.004, unasked: 0.02, hits: hits(0.5, 0.5, 1, 0.7, 1, 0.3, 0.3), ...elicited("order of the fibres after CCI Notes 13/15: cotton, linen and rayon particularly vulnerable, wool and silk less") },
  "backing-failure": { name: "a failing back", leak: 0.01, unasked: 0.04, hits: hits(1, 1, 1, 1, 1, 1, 1), ...elicited("a matter of latex, not of pile") },
  shrinkage: { name: "shrinkage", leak: 0.005, unasked: 0.02, hits: hits(0.5, 0.6, 1, 0.7, 0.8, 0.1, 0.1), ...elicited("order of fabric shrinkage: synthetics, wool, cotton, silk, viscose (trade page on ISO 5077)") },
} as const satisfies Record<string, MechanismRow>;

/** What is fresh of a kind, and the old one whose chance it shares: one event seen at two ages, so that they exclude each other. */
export const FRESH_OF = {
  "urine-fresh": { name: "fresh urine", old: "urine-old" }, "food-fresh": { name: "a fresh stain of something spilled", old: "food-old" },
} as const satisfies Record<string, { name: string; old: keyof typeof MECHANISMS }>;
type FreshId = keyof typeof FRESH_OF;
const FRESH_IDS = Object.keys(FRESH_OF) as readonly FreshId[];
const isFresh = (id: DamageId): id is FreshId => Object.hasOwn(FRESH_OF, id);

/** A mechanism that can hold; several may hold at once. */
export type DamageId = keyof typeof MECHANISMS | FreshId;
export type MechanismId = DamageId | "soil-only";
/** In the order of the table, what is fresh before what is old. */
export const DAMAGE_IDS: readonly DamageId[] = (Object.keys(MECHANISMS) as (keyof typeof MECHANISMS)[]).flatMap((id) => [...FRESH_IDS.filter((f) => FRESH_OF[f].old === id), id]);
/** A mechanism is spoken of, and warned of, from here on. Source: elicited; the lower end of "about as likely as not" (IPCC). */
export const WORTH_SAYING = 0.33;

export const mechanismName = (id: MechanismId): string => (id === "soil-only" ? "soil only" : isFresh(id) ? FRESH_OF[id].name : MECHANISMS[id].name);
/** Where the chance of a mechanism stands: of a fresh one under the old of its kind, and freshness splits it. */
export const standsUnder = (id: DamageId): keyof typeof MECHANISMS => (isFresh(id) ? FRESH_OF[id].old : id);
export const mechanismRow = (id: DamageId): MechanismRow => MECHANISMS[standsUnder(id)];
export const FAMILIES: readonly (readonly [fresh: DamageId, old: DamageId])[] = FRESH_IDS.map((f) => [f, FRESH_OF[f].old]);

/**
 * How likely each change is reported where a mechanism holds, and (`none`) where nothing that explains it holds.
 * Several causes of one change act as leaky alternatives, so that one explains another away. Elicited; reporting by
 * laypeople is built into the figures. Silence about a change counts half (`SILENCE_COUNTS`): people name what bothers them.
 */
export type ChangeId = "browner" | "ring" | "paler" | "faded" | "ran" | "stiff" | "rough" | "shaded" | "smell" | "spots" | "bare" | "flat" | "wavy" | "crumbles" | "dirty";
export interface ChangeRow extends Source {
  readonly none: number;
  readonly by: Readonly<Partial<Record<DamageId, number>>>;
}
const seen = (none: number, by: Partial<Record<DamageId, number>>, about: string): ChangeRow => ({ none, by, ...elicited(about) });
export const CHANGES: Readonly<Record<ChangeId, ChangeRow>> = {
  browner: seen(0.03, { "browning-cleaning": 0.85, "browning-use": 0.8, "water-mark": 0.2, "urine-fresh": 0.2, "urine-old": 0.45, "food-fresh": 0.2, "food-old": 0.35 }, "browning is what people see first"),
  ring: seen(0.02, { "browning-cleaning": 0.25, "browning-use": 0.3, "water-mark": 0.75, "urine-fresh": 0.3, "urine-old": 0.4, "food-fresh": 0.3, "food-old": 0.35 }, "an edge forms where wet met dry"),
  paler: seen(0.02, { bleaching: 0.85, "urine-old": 0.12, fading: 0.25 }, "loss of dye"),
  faded: seen(0.02, { fading: 0.75, bleaching: 0.08 }, "loss of dye by light"),
  ran: seen(0.01, { "dye-bleed": 0.85 }, "hardly anything else looks like it"),
  stiff: seen(0.04, { "browning-cleaning": 0.25, "pile-distortion": 0.6, "urine-old": 0.2, "food-old": 0.1, matting: 0.1 }, "wetted viscose sticks together and dries matted"),
  rough: seen(0.03, { "pile-distortion": 0.5, matting: 0.15 }, "burst pile"),
  shaded: seen(0.08, { "pile-distortion": 0.45, "water-mark": 0.2, matting: 0.3 }, "reversed pile"),
  smell: seen(0.04, { "urine-fresh": 0.5, "urine-old": 0.65, mould: 0.6, "food-old": 0.08 }, "odour"),
  spots: seen(0.005, { mould: 0.7 }, "growth that can be seen"),
  bare: seen(0.01, { insects: 0.75, matting: 0.06 }, "grazed or worn pile"),
  flat: seen(0.08, { matting: 0.75, "pile-distortion": 0.2 }, "pressed pile"),
  wavy: seen(0.03, { shrinkage: 0.8, "backing-failure": 0.25 }, "loss of shape"),
  crumbles: seen(0.01, { "backing-failure": 0.75 }, "old latex sheds dust"),
  dirty: seen(0.35, { matting: 0.2, "food-fresh": 0.2, "food-old": 0.25 }, "soil needs no other cause"),
};
export const CHANGE_IDS = Object.keys(CHANGES) as readonly ChangeId[];
/** What a change that was told is handled as, however likely that is: water or a solvent on such a rug may not be undone. Common practice, no published source. */
export const HANDLED_AS: Readonly<Partial<Record<ChangeId, DamageId>>> = { spots: "mould", crumbles: "backing-failure", ran: "dye-bleed", wavy: "shrinkage" };
export const SILENCE_COUNTS = { value: 0.5, ...elicited("half weight for a change that was not named") };

/**
 * A measured colour change {deltaE, direction, uncertainty} counts as the change it shows in the degree to which it is sure
 * that ΔE00 is over the middle: a normal curve about `middleDeltaE`, its spread the uncertainty with `pileNoise` (both ΔE00).
 */
export const MEASURED_CHANGE = {
  middleDeltaE: 3.4, pileNoise: 1.5,
  shows: { "yellower-darker": "browner", yellower: "browner", "lighter-paler": "paler" } as Readonly<Record<string, ChangeId>>,
  how: "memory",
  source: "Grey scale for change in colour, grade 3 is about 3.4 units (ISO 105-A02, from memory); one cloth measured again scatters by several units (Mecklenburg and del Hoyo, Smithsonian; 1.5 elicited)",
} as const satisfies Source & { middleDeltaE: number; pileNoise: number; shows: Readonly<Record<string, ChangeId>> };

/**
 * How the make of a rug bears on what happens to it: the chance is multiplied by the share-weighted factor.
 * `wicking`: browning on a pile that does not brown itself comes up from a jute or cotton ground.
 */
export interface MakeRow extends Source { readonly knotted: number; readonly tufted: number; readonly machine: number }
export const BY_MAKE: Readonly<Record<"backing-failure" | "shrinkage" | "wicking", MakeRow>> = {
  "backing-failure": { knotted: 0.1, tufted: 1, machine: 0.4, ...elicited("only a glued back comes away; a knotted rug has none") },
  shrinkage: { knotted: 0.8, tufted: 1, machine: 0.7, ...elicited("the backing decides, not the face; jute-backed tufted carpets are the least stable to humidity (abstract on carpets in installations)") },
  wicking: { knotted: 0.9, tufted: 0.8, machine: 1, ...elicited("cotton warps, canvas under latex, jute grids") },
};
/** The same by a ground that a label names, in place of the make. */
export const WICKING_BY_GROUND: readonly (Source & { readonly named: RegExp; readonly times: number })[] = [
  { named: /\bjute\b|\bhemp\b/i, times: 1, ...elicited("jute browns most") },
  { named: /\bcotton\b|\blinen\b/i, times: 0.85, ...elicited("cotton browns at any wet and dry edge (Dupont, Restaurator 17 (1996) 1–21)") },
  { named: /\bpoly|\bacrylic\b|\bwool\b/i, times: 0.3, ...elicited("little to wick up from") },
];
/** The columns whose own pile does not brown: on them browning comes from below. Elicited, after Dupont as above. */
export const BROWNS_FROM_BELOW: readonly Column[] = ["wool", "silk", "olefin", "polyamide"];
