import type { Source } from "./fibres";
import type { FineFibre } from "./label-fibres";
import codeGroups from "./label-codes.json";
import nameGroups from "./label-names.json";

/** A part of a rug a label may speak of; `whole` where it does not say. */
export type LabelPart = "pile" | "ground" | "fringe" | "whole";
/** Words that hold a fibre's name without naming a fibre: "silk touch"; "no wool", "pile height". */
export type LabelLook = "silk-look" | "no-fibre";
export type LabelMeaning = FineFibre | Exclude<LabelPart, "whole"> | LabelLook;

/** A word or phrase of a label, what it means, in which language (ISO 639-1, with region where it matters), and who says so. */
export interface LabelName { readonly name: string; readonly language: string; readonly meaning: LabelMeaning; readonly source: Source }
/** A code of two or three letters, good only beside a percentage. Codes that two systems read differently are left out (CA, HA). */
export interface LabelCode { readonly code: string; readonly meaning: FineFibre; readonly source: Source }

type Groups<K extends string> = ({ how: string; source: string } & Record<K, Record<string, string[]>>)[];
const sourceOf = (group: { how: string; source: string }): Source => ({ how: group.how as Source["how"], source: group.source });

/** The tables are kept as `"language name"` grouped by source and meaning; names cannot be told from their spelling alone. */
export const LABEL_NAMES: readonly LabelName[] = (nameGroups as unknown as Groups<"names">).flatMap((group) =>
  Object.entries(group.names).flatMap(([meaning, entries]) => entries.map((entry): LabelName => {
    const space = entry.indexOf(" ");
    return { language: entry.slice(0, space), name: entry.slice(space + 1), meaning: meaning as LabelMeaning, source: sourceOf(group) };
  })));

export const LABEL_CODES: readonly LabelCode[] = (codeGroups as unknown as Groups<"codes">).flatMap((group) =>
  Object.entries(group.codes).flatMap(([meaning, codes]) => codes.map((code): LabelCode => ({ code, meaning: meaning as FineFibre, source: sourceOf(group) }))));

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
/** Words for per cent. From memory. */
export const PERCENT_WORDS: readonly string[] = ["percent", "pct", "prozent", "procent", "prosent", "pourcent", "percento", "procento", "yüzde"];
