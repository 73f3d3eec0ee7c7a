/** A pair of straight double marks around words, not the sign of inches: 5" has a figure before it and nothing that it opens. */
const STRAIGHT = /(?<![^\s([{«‘])"(?=\S)([^"\n]*\S)"(?![\p{L}\p{Nd}])/gu;
/** A pair that opens low, as German has it. */
const LOW = /„([^„“”\n]*)[“”]/gu;

/** Somebody's words, to stand inside “double marks”: the double marks in them become single ones. Every other sign stays. */
export const quotedInside = (text: string): string =>
  text.replace(LOW, "‚$1‘").replace(STRAIGHT, "‘$1’").replaceAll("“", "‘").replaceAll("”", "’");
