import type { Source } from "./fibres";
import type { NamedFibre } from "./likelihood-table";

/** Where in the pile a sample was taken. `whole`: a sample that may hold more than one yarn. */
export type YarnId = "whole" | "field" | "accent";
export const YARN_IDS = ["whole", "field", "accent"] as const satisfies readonly YarnId[];

export const YARNS_SOURCE: Source = {
  how: "elicited",
  source: "How piles of each class are put together, and how often a sample is not what it was taken for (a repair, a stray tuft, the wrong yarn): judged for this project",
};

/** Most of a row; what is left is spread evenly over everything else a sample might turn out to be. */
type Row = Readonly<Partial<Record<NamedFibre, number>>>;
export type YarnRows = Readonly<Record<YarnId, Row>>;

/**
 * A pile of one fibre: an accent under a tenth of the pile may still be another fibre. The blends: silk or viscose is the
 * shiny accent of a wool field more often than spun in with it.
 */
const alone = (fibre: NamedFibre): YarnRows => ({ whole: { [fibre]: 0.96 }, field: { [fibre]: 0.97 }, accent: { [fibre]: 0.9 } });

/** P(what the sample is | class of the pile), by yarn. A blend as the content of a sample means both fibres in it. */
export const YARNS: Readonly<Record<NamedFibre, YarnRows>> = {
  silk: alone("silk"),
  wool: { ...alone("wool"), accent: { wool: 0.78, viscose: 0.09, silk: 0.06, cotton: 0.03 } },
  "wool-silk": {
    whole: { "wool-silk": 0.62, wool: 0.22, silk: 0.12 }, field: { wool: 0.74, "wool-silk": 0.15, silk: 0.08 }, accent: { silk: 0.78, "wool-silk": 0.12, wool: 0.06 },
  },
  viscose: alone("viscose"),
  "wool-viscose": {
    whole: { "wool-viscose": 0.62, wool: 0.2, viscose: 0.14 }, field: { wool: 0.72, "wool-viscose": 0.16, viscose: 0.09 },
    accent: { viscose: 0.8, "wool-viscose": 0.11, wool: 0.05 },
  },
  "silk-viscose": {
    whole: { "silk-viscose": 0.64, silk: 0.16, viscose: 0.16 }, field: { silk: 0.38, viscose: 0.32, "silk-viscose": 0.27 },
    accent: { viscose: 0.38, silk: 0.36, "silk-viscose": 0.22 },
  },
  "cotton-viscose": {
    whole: { "cotton-viscose": 0.62, viscose: 0.2, cotton: 0.14 }, field: { "cotton-viscose": 0.36, viscose: 0.34, cotton: 0.27 },
    accent: { viscose: 0.58, "cotton-viscose": 0.22, cotton: 0.16 },
  },
  lyocell: alone("lyocell"), acetate: alone("acetate"), cotton: alone("cotton"), "mercerised-cotton": alone("mercerised-cotton"),
  bast: alone("bast"), "hard-fibre": alone("hard-fibre"),
  polyamide: alone("polyamide"), polyester: alone("polyester"), polypropylene: alone("polypropylene"), acrylic: alone("acrylic"),
};

/** P(the yarn is something not named | class of the pile): a metal thread in a wool pile; and where the pile itself is `other`. Elicited. */
export const OTHER_YARN = {
  field: { ofNamed: 0.01, ofOther: 0.9 },
  accent: { ofNamed: 0.04, ofOther: 0.5 },
} as const;

/**
 * How often a laboratory's report is of the sample it is filed under, and right; the rest (another rug, another yarn, a
 * slip of the pen) may say anything. Elicited.
 */
export const LABORATORY_RIGHT = 0.97;
/** A composition is read where its per cents add up to 100 within this. Methods report to a whole per cent. Elicited. */
export const COMPOSITION_TOLERANCE_PERCENT = 1;
