import { FIBRE_IDS, type FibreId, type Source } from "./fibres";
import { SMALLEST_CELL, type LikelihoodTable, type NamedFibre } from "./likelihood-table";

/**
 * P(what the label says | fibre of the pile). Labels lie upward: every named error of the surveys claimed more silk than
 * there was. So "viscose" on a label is believed almost wholly and "silk" much less.
 * The surveys (garments, none of rugs) give P(not silk | labelled silk), about 15 of 117; that is the other direction and
 * is not transposed: the cells below are judged so that, with ordinary priors, it comes out near it or worse.
 */
const SOURCE: Source = {
  how: "elicited",
  source: "Judged beside surveys of garment labels (pooled: 15 of 117 silk goods failed; direction of error upward); no survey of rug labels was found",
};

/** What a label can say: a class, a fibre outside the classes (`other`), or a trade word such as "art silk" that is no legal name. */
export type LabelSays = FibreId | "art-silk";
export const LABEL_SAYS: readonly LabelSays[] = [...FIBRE_IDS, "art-silk"];
export const isLabelSays = (s: string): s is LabelSays => (LABEL_SAYS as readonly string[]).includes(s);

/**
 * A label that names the class it is made of. Silk and viscose .90; the rest, which nobody gains by misnaming, .94; mercerised
 * cotton is by law just cotton, and seldom called otherwise.
 */
const RIGHT = 0.94;
const RIGHT_OF: Readonly<Partial<Record<NamedFibre, number>>> = { silk: 0.9, viscose: 0.9, "wool-silk": 0.9, "wool-viscose": 0.88, "silk-viscose": 0.88, "cotton-viscose": 0.88, lyocell: 0.9, acetate: 0.88, "mercerised-cotton": 0.06 };
/** Any error not listed below. */
const RARE = 0.0015;

/**
 * P(the label names a fibre outside the classes | the pile is outside them). The one cell of `other` that is not the mean
 * of the named classes: a label that says kapok is evidence for kapok. Elicited.
 */
export const OTHER_LABELLED_OTHER = 0.7;
/** The chance of each single class on its label: what is left, spread evenly. */
export const OTHER_LABELLED_CLASS = (1 - OTHER_LABELLED_OTHER) / (LABEL_SAYS.length - 1);

/** The errors that are not rare, by true fibre. */
const ERRORS: Readonly<Record<NamedFibre, Readonly<Partial<Record<LabelSays, number>>>>> = {
  silk: { "wool-silk": 0.01, "silk-viscose": 0.005, "art-silk": SMALLEST_CELL },
  wool: { "wool-silk": 0.004, "wool-viscose": 0.004, acrylic: 0.004 },
  "wool-silk": { silk: 0.015, wool: 0.04, "wool-viscose": 0.004 },
  viscose: { silk: 0.03, "silk-viscose": 0.006, lyocell: 0.006, "art-silk": 0.03, cotton: 0.003 },
  "wool-viscose": { "wool-silk": 0.035, wool: 0.03, viscose: 0.006 },
  "silk-viscose": { silk: 0.04, viscose: 0.012, "art-silk": 0.012 },
  "cotton-viscose": { cotton: 0.03, viscose: 0.015, "art-silk": 0.012 },
  lyocell: { viscose: 0.03, silk: 0.005, "art-silk": 0.02 },
  acetate: { silk: 0.02, viscose: 0.015, "art-silk": 0.02 },
  cotton: { "mercerised-cotton": 0.005, viscose: 0.003, bast: 0.004 },
  "mercerised-cotton": { cotton: 0.84, silk: 0.03, "art-silk": 0.004 },
  bast: { cotton: 0.01, "hard-fibre": 0.01 },
  "hard-fibre": { bast: 0.015, polypropylene: 0.005 },
  polyamide: { polyester: 0.01, polypropylene: 0.01, wool: 0.004 },
  polyester: { silk: 0.005, polypropylene: 0.006, viscose: 0.003, acrylic: 0.004, "art-silk": 0.008 },
  polypropylene: { polyester: 0.01, "hard-fibre": 0.004, wool: 0.003, acrylic: 0.004 },
  acrylic: { wool: 0.012, polyester: 0.008, polypropylene: 0.004 },
};

/** A right label, the listed errors, rare errors elsewhere; what is left names a fibre outside the classes. */
function labelRow(fibre: NamedFibre): number[] {
  const cells = LABEL_SAYS.map((says) => (says === fibre ? RIGHT_OF[fibre] ?? RIGHT : says === "other" ? 0 : ERRORS[fibre][says] ?? RARE));
  cells[LABEL_SAYS.indexOf("other")] = 1 - cells.reduce((a, b) => a + b, 0);
  return cells;
}

/**
 * Diagonal rows (fibre against what the label says). `other` is not a row here, as everywhere.
 * The finding `label` carries `says`; a label without a fibre name says nothing.
 */
export const LABEL: LikelihoodTable = {
  what: "label", group: "claim", source: SOURCE, answers: LABEL_SAYS,
  rows: Object.fromEntries((Object.keys(ERRORS) as NamedFibre[]).map((f) => [f, labelRow(f)])) as Record<NamedFibre, number[]>,
};
