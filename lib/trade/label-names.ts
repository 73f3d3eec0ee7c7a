import type { Source } from "./fibres";
import type { FineFibre } from "./label-fibres";
import codeGroups from "./label-codes.json";
import nameGroups from "./label-names.json";

/** A part of a rug a label may speak of; `whole` where it does not say. */
export type LabelPart = "pile" | "ground" | "fringe" | "whole";
/** Words that hold a fibre's name without naming a fibre: "silk touch", "satin"; `no-fibre` is "no wool", "pile height". */
export type LabelLook = "silk-look" | "wool-look" | "cotton-look" | "linen-look" | "jute-look" | "sisal-look" | "viscose-look" | "no-fibre";
/** Names that say more than a fibre, each with a rule of its own. */
export type LabelClaim = "virgin-wool" | "mixed-fibres" | "unknown-fibres" | "cotton-linen" | "rayon";
/** What fibre each of them stands for; cotton-linen union is two fibres with no shares, so only general. */
export const CLAIM_FIBRE: Readonly<Record<LabelClaim, FineFibre>> = {
  "virgin-wool": "wool", "mixed-fibres": "other-fibres", "unknown-fibres": "other-fibres", "cotton-linen": "other-fibres", rayon: "viscose",
};
/** `pure` is a word beside a name: "pure", "rein", "tutto". */
export type LabelMeaning = FineFibre | LabelClaim | "pure" | LabelPart | LabelLook;

/** A word or phrase of a label, what it means, in which language (ISO 639-1, with region where it matters), and who says so. */
export interface LabelName { readonly name: string; readonly language: string; readonly meaning: LabelMeaning; readonly source: Source }
/** A code of one to four letters, good only beside a percentage. A code that two systems read differently (CA, HA) has a row for each and is not decoded. */
export interface LabelCode { readonly code: string; readonly meaning: FineFibre | LabelClaim; readonly source: Source }

type Groups<K extends string> = ({ how: string; source: string } & Record<K, Record<string, string[]>>)[];
const sourceOf = (group: { how: string; source: string }): Source => ({ how: group.how as Source["how"], source: group.source });

/** The tables are kept as `"language name"` grouped by source and meaning; names cannot be told from their spelling alone. */
export const LABEL_NAMES: readonly LabelName[] = (nameGroups as unknown as Groups<"names">).flatMap((group) =>
  Object.entries(group.names).flatMap(([meaning, entries]) => entries.map((entry): LabelName => {
    const space = entry.indexOf(" ");
    return { language: entry.slice(0, space), name: entry.slice(space + 1), meaning: meaning as LabelMeaning, source: sourceOf(group) };
  })));

export const LABEL_CODES: readonly LabelCode[] = (codeGroups as unknown as Groups<"codes">).flatMap((group) =>
  Object.entries(group.codes).flatMap(([meaning, codes]) => codes.map((code): LabelCode => ({ code, meaning: meaning as LabelCode["meaning"], source: sourceOf(group) }))));

/** Endings that join a fibre's name into one word with a part of the rug (German, Dutch, Scandinavian). Null: no part. From memory. */
export const COMPOUND_ENDINGS: Readonly<Record<string, Exclude<LabelPart, "whole"> | null>> = {
  flor: "pile", pol: "pile", pool: "pile", lugg: "pile",
  rücken: "ground", kette: "ground", schuss: "ground", grund: "ground", gewebe: "ground",
  fransen: "fringe", garn: null, faser: null, fasern: null, teppich: null, anteil: null, mischung: null,
};

/** "Wool on cotton": what follows is the ground. From memory. */
export const ON_WORDS: readonly string[] = ["on", "auf", "sur", "su", "sobre", "op", "på", "na"];
/** "Wool with cotton back": what follows belongs to the part that ends it. From memory. */
export const WITH_WORDS: readonly string[] = ["with", "mit", "avec", "con", "com", "met", "med", "ile"];
/** Words before a figure that make it a rough one. From memory. */
export const ROUGH_WORDS: readonly string[] = ["about", "approx", "approximately", "circa", "min", "max", "minimum", "maximum", "mind", "mindestens", "etwa", "env", "environ", "aprox", "cerca", "least"];
/** Words for per cent. From memory. */
export const PERCENT_WORDS: readonly string[] = ["percent", "pct", "prozent", "procent", "prosent", "pourcent", "percento", "procento", "yüzde"];
