import type { Construction } from "./care";
import type { FibreId, Source } from "./fibres";

/**
 * Published useful lives of floor coverings, for the value of a rug today: a straight line from its price new to nothing at
 * the end of its life. The tables contradict each other; every row of a class counts alike, so that the range is as wide
 * as they are apart. Which pile falls in which class is elicited.
 */
export type DepreciationClass = "hand-knotted" | "carpet" | "light" | "plant-fibre" | "short-lived";
export interface UsefulLifeRow extends Source { readonly of: DepreciationClass; readonly years: number }
const row = (of: DepreciationClass, years: number, source: string): UsefulLifeRow => ({ of, years, how: "read", source });
const NJC = "National Joint Council of the Public Service of Canada, relocation directive: depreciation of";
const UP = "United Policyholders depreciation guide (a copy that has lost its decimal points):";
const UK = "SafeDeposits Scotland and TDS, February 2021, product lifespans:";
const SWISS = "Swiss parity table of landlords and tenants (wehrlipartner.ch; HEV):";
const GERMAN = "German tenancy case law (wohnung.net):";

export const USEFUL_LIVES: readonly UsefulLifeRow[] = [
  row("hand-knotted", 25, `${NJC} genuine Orientals, 4 % a year`),
  row("hand-knotted", 25, `${UP} genuine Orientals`),
  { of: "hand-knotted", years: 15, how: "computed", source: "The same rug where it is taken for a carpet of the dearest class of the Canadian table" },
  row("carpet", 15, `${NJC} carpets and rugs over CAD 20/m²`),
  row("carpet", 15, `${UP} the last class but one`),
  row("carpet", 10, `${SWISS} medium fitted carpet`),
  row("carpet", 10, `${GERMAN} medium quality`),
  row("carpet", 8, `${UK} top quality from 8 to 15 years, at its least`),
  row("light", 10, `${NJC} carpets and rugs of CAD 10–20/m²`),
  row("light", 7, `${UP} the cheapest class`),
  row("light", 10, `${SWISS} medium fitted carpet`),
  row("light", 8, `${UK} medium quality 5 to 8 years, at its most`),
  row("light", 5, `${UK} medium quality 5 to 8 years, at its least`),
  row("plant-fibre", 8, `${UK} jute, seagrass, sisal and coir up to 8 years`),
  row("plant-fibre", 5, `${UK} traffic areas at the minimum of medium quality`),
  row("short-lived", 7, `${UP} the cheapest class`),
  row("short-lived", 5, `${NJC} carpets and rugs under CAD 10/m²`),
  row("short-lived", 4, `${UK} low quality 2 to 4 years, at its most`),
];

/** The class of a pile; by make where that decides. Elicited. */
export const DEPRECIATION_CLASS: Readonly<Record<FibreId, DepreciationClass | Readonly<Record<Construction, DepreciationClass>>>> = {
  wool: { knotted: "hand-knotted", tufted: "carpet", machine: "carpet" },
  silk: "hand-knotted", "wool-silk": "hand-knotted", "silk-viscose": "carpet", "wool-viscose": "light",
  viscose: "short-lived", "cotton-viscose": "short-lived", lyocell: "short-lived", acetate: "short-lived",
  cotton: "light", "mercerised-cotton": "light", bast: "light", "hard-fibre": "plant-fibre",
  polyamide: "carpet", polyester: "light", polypropylene: "light", acrylic: "light", other: "light",
};

/** Heavy wear counts as more years of use: the Canadian table asks for it to be adjusted and gives no figure. */
export const HEAVY_WEAR = {
  changes: ["flat", "bare", "crumbles"], times: 1.5,
  how: "elicited", source: "Elicited for this project; that depreciation is adjusted for light to heavy wear: National Joint Council of the Public Service of Canada",
} as const satisfies Source & { changes: readonly string[]; times: number };

/** Past this age a hand-knotted rug has no published depreciation left: a valuer says what it is worth. */
export const TABLES_END = { years: 25, how: "read", source: "Both North American tables end at 25 years for genuine Orientals" } as const satisfies Source & { years: number };
