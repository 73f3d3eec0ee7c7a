import type { FibreId } from "./fibres";

/**
 * The columns in which the trade keeps its experience of damage and improvement. A class that blends, or has no
 * column of its own, takes the worst cell of its components. Elicited; the rule is stated with each table that uses it.
 */
export const COLUMNS = ["wool", "silk", "viscose", "wool-viscose", "cotton", "olefin", "polyamide"] as const;
export type Column = (typeof COLUMNS)[number];

/** Elicited: lyocell, modal and acetate behave wet much as viscose does; jute and sisal are judged as the weaker of cotton and viscose. */
export const COLUMNS_OF: Readonly<Record<FibreId, readonly Column[]>> = {
  silk: ["silk"],
  wool: ["wool"],
  "wool-silk": ["wool", "silk"],
  viscose: ["viscose"],
  "wool-viscose": ["wool-viscose"],
  "silk-viscose": ["silk", "viscose"],
  "cotton-viscose": ["cotton", "viscose"],
  lyocell: ["viscose"],
  acetate: ["viscose"],
  cotton: ["cotton"],
  "mercerised-cotton": ["cotton"],
  bast: ["cotton"],
  "hard-fibre": ["cotton", "viscose"],
  polyamide: ["polyamide"],
  polyester: ["olefin"],
  polypropylene: ["olefin"],
  acrylic: ["olefin", "polyamide"],
  other: COLUMNS,
};
