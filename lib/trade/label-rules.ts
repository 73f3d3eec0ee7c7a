import type { Source } from "./fibres";

/** Limits of the rules, per cent of the part's weight. */
export const OTHER_FIBRES_MOST_PERCENT = 15;
export const VIRGIN_WOOL_LEAST_PERCENT = 25;
export const US_NAMED_LEAST_PERCENT = 5;

export type LabelRuleId =
  | "pure" | "virgin-wool" | "order" | "each-percent" | "other-fibres" | "mixed-fibres" | "cotton-linen" | "silk-word" | "implied-fibre" | "bamboo"
  | "bamboo-us" | "rayon" | "abbreviation" | "pile-only" | "pile-unsaid" | "face-us" | "under-five-us" | "unknown-us";

/** A rule of law for labels, in general terms; "{part}" is the part of the rug it is said of. `note` when it applies, `broken` when the label departs from it. */
export interface LabelRule { readonly article: string; readonly note: string | null; readonly broken: string | null; readonly source: Source }

const EU = "Regulation (EU) No 1007/2011 (original 2011 text, OJ L 272, 18.10.2011)";
const read = (source: string): Source => ({ how: "read", source });
const eu = (article: string, words: Partial<Pick<LabelRule, "note" | "broken">>, how: Source["how"] = "read"): LabelRule =>
  ({ article: `EU 1007/2011, ${article}`, note: null, broken: null, ...words, source: { how, source: `${EU}, ${article}` } });
const us = (article: string, words: Partial<Pick<LabelRule, "note" | "broken">>, source: Source = read(article)): LabelRule =>
  ({ article, note: null, broken: null, ...words, source });

/** What the EU's and the US's rules say of a label's wording. Which of them binds a seller, local law decides. */
export const LABEL_RULES: Readonly<Record<LabelRuleId, LabelRule>> = {
  pure: eu("Art. 7(1)-(2)", {
    note: "“100 %”, “pure” and “all” are only for one fibre alone; up to 2 % of other fibres (5 % if carded) is tolerated where good practice cannot avoid it.",
    broken: "“Pure”, “all” or “100 %” stands beside another fibre of the {part}.",
  }),
  "virgin-wool": eu("Art. 8(1)-(3)", {
    note: "“Virgin wool” is only for wool that was in no product before, with at most 0.3 % of other fibres got in by chance; in a mixture it is 25 % or more, and each fibre has its per cent.",
    broken: "“Virgin wool” in a mixture must be 25 % or more of the {part}, and each fibre must have its per cent.",
  }),
  order: eu("Art. 9(1)", { broken: "The fibres of the {part} do not stand in falling order of weight." }),
  "each-percent": eu("Art. 9(1)", { broken: "Several fibres are named for the {part}, and not each has its per cent." }),
  "other-fibres": eu("Art. 9(2)", {
    note: "“Other fibres” may stand for what is hard to state when it is made: up to 5 % for one fibre and 15 % together.",
    broken: "“Other fibres” of the {part} stands without its per cent or for more than 15 %.",
  }),
  "mixed-fibres": eu("Art. 9(4)", { note: "“Mixed fibres” is allowed only where the composition is hard to state when it is made; it names no fibre." }),
  "cotton-linen": eu("Art. 9(3)", { note: "“Cotton linen union” is a pure cotton warp and a pure linen weft, with 40 % linen or more, and the label says so." }, "memory"),
  "silk-word": eu("Art. 5(2)", { broken: "A trade word for imitation silk stands where the law wants a fibre’s name; “silk” is only for what silk-spinning insects make." }),
  "implied-fibre": us("16 CFR 303.18", { note: "Words that suggest a fibre that is not there may not be used so that people believe it is." }),
  bamboo: eu("Art. 5(1)", { broken: "Bamboo is a plant and no fibre name of the law; the fibre made of it is nearly always viscose." }),
  "bamboo-us": us("FTC bamboo guidance (ftc.gov/bamboo-textiles)", { note: "A textile may be called bamboo only if it is made directly of bamboo fibre; otherwise “rayon (or viscose) made from bamboo”." }),
  rayon: us("FTC, Threading Your Way Through the Labeling Requirements", { note: "“Rayon” is the US name for viscose, and either is accepted there; the EU’s name is “viscose”." }),
  abbreviation: eu("Art. 14(3)", { note: "Abbreviations are for codes of standards that are explained in the same document; a label gives the names." }),
  "pile-only": eu("Annex IV, item 8", { note: "A carpet’s label may give the pile alone if it says so; this one says nothing of the back, which may be of anything." }),
  "pile-unsaid": eu("Annex IV, item 8; Annex VII(b)", { note: "For a carpet only the pile counts, and a label for the pile alone must say so; this one does not say which part it means." }),
  "face-us": us("16 CFR 303.11", { note: "Where backing, filling or padding is left out, the label must say that it speaks only of the face or pile." }),
  "under-five-us": us("16 CFR 303.3", { note: "In the US a fibre under 5 % is “other fiber” unless it has a definite function." }),
  "unknown-us": us("16 CFR 303.14", { note: "“Unknown fibers” is for goods of waste or rags whose fibres cannot be told." }, { how: "memory", source: "16 CFR 303.14" }),
};
