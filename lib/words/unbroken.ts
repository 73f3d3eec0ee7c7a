/** Word joiner: nothing to see, and no line ends at it. And the space at which no line ends. */
const JOINER = "\u2060";
const NBSP = "\u00a0";

const FIGURE = String.raw`\p{Nd}[\p{Nd}.,½]*`;
/** A range of figures and the space before its unit, whatever language that is in: "25–50 %", "3–6 years". A range of money has its unit before it. */
const RANGE = new RegExp(String.raw`(?<=(?<![€£$\p{Nd}.,])${FIGURE}–${FIGURE}) (?=[\p{L}%])`, "gu");
/** A figure before the sign of a unit. */
const UNIT = /(?<=[\p{Nd}½]) (?=(?:%|°C|m²|cm²|cm|mm|km|m|ft|sq (?:ft|in))(?![\p{L}\p{Nd}]))/gu;
/** What belongs together beside: "170 × 240", "17.1 ± 2.1", "7 in" of feet and inches, "sq ft", "70 in 100", the day of a month before its year: "29 November 2026", "November 29, 2026". */
const BESIDE = /(?<=[\p{Nd}½]) (?=[×±]\s\p{Nd})|(?<=[\p{Nd}½]\s[×±]) (?=\p{Nd})|(?<=ft) (?=\p{Nd}{1,2}\sin\b)|(?<=\bft\s\p{Nd}{1,2}) (?=in\b)|(?<=\p{Nd}\ssq) (?=(?:ft|in)\b)|(?<=\p{Nd}) (?=in 100\b)|(?<=\p{Nd}\sin) (?=100\b)|(?<=(?<!\p{Nd})\p{Nd}{1,2}) (?=\p{Lu}\p{L}+ \p{Nd}{4}\b)|(?<=\p{Lu}\p{L}+) (?=\p{Nd}{1,2}, \p{Nd}{4}\b)/gu;

/** A telephone number: groups of figures after a plus, a nought or a code in brackets ("+44 1632 960 200", "(020) 7946 0123"); as ITU-T E.123 has them, from memory. */
const TELEPHONE = /(?<![\p{L}\p{Nd}.,])(?:\+\p{Nd}{1,4}|0\p{Nd}{1,5}|\(\p{Nd}{2,5}\))(?:[ -]\(?\p{Nd}{1,6}\)?){1,5}(?!\p{Nd})/gu;

/** A text whose figures keep their units beside them at the end of a line, and whose telephone numbers stay whole. Reads the same. */
export const tied = (text: string): string => text.replace(RANGE, NBSP).replace(UNIT, NBSP).replace(BESIDE, NBSP).replace(TELEPHONE, (number) => number.replaceAll(" ", NBSP));

/** The same, and no line ends at the dash of a range. */
export const unbroken = (text: string): string => tied(text).replace(new RegExp(String.raw`(?<=${FIGURE})–(?=[€£$]?\p{Nd})`, "gu"), `–${JOINER}`);

/** A text as it was before: for where it is drawn, copied and searched, once its lines are broken. */
export const asTyped = (text: string): string => text.replaceAll(JOINER, "").replaceAll(NBSP, " ");
