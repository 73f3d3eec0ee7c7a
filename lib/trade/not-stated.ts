/** Why an assessment states no figure, or no first aid: the sentence that stands in its place. */
export const NOT_STATED = {
  "no-damage": "No mark or damage was described, so there is nothing to bring back.",
  repair: "What was described is mended, not cleaned: insects, a failing back and shrinkage are repairs.",
  "antique-life": "An antique gets no figure: how long it lasts hangs on how it is kept. A conservator can say more.",
  size: "The size of the rug is not known, and every price goes by its area.",
  antique: "An antique is valued by a valuer, never from photos.",
  currency: "Prices new are known in pounds, euros and dollars only, so neither replacement nor value is stated.",
  "first-aid": "Nothing is wet or fresh by what we were told.",
  old: "A hand-knotted rug of this age is past every published table of depreciation: a valuer says what it is worth.",
} as const;
