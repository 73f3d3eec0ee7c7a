import { SURENESS_MARKS } from "./sureness-marks";

/** What a sentence shows of how surely it speaks: its marks by their ids, its words, each two that stand together, and each two with one between. */
export function signsOf(plain: string): string[] {
  const words = plain.replace(/\d+/gu, "0").match(WORD) ?? [];
  const inPlace = [BEGINS, ...words, ENDS];
  const pairs = inPlace.slice(1).map((word, at) => `${inPlace[at] as string} ${word}`);
  const apart = inPlace.slice(2).map((word, at) => `${inPlace[at] as string}${APART}${word}`);
  return [...new Set([...SURENESS_MARKS.filter((mark) => mark.holds(plain)).map(signOf), ...words, ...pairs, ...apart])];
}
/** Words, figures as 0, and the signs that mean something by themselves. */
const WORD = /[a-z0%£$€?!]+(?:'[a-z]+)?/gu;
const BEGINS = "^", ENDS = "$";
/** One word left out. */
const APART = " … ";
/** A mark's name among the signs; no word begins so. */
const signOf = ({ id }: { readonly id: string }): string => `#${id}`;

const BY_SIGN = new Map(SURENESS_MARKS.map((mark) => [signOf(mark), mark]));
/** The words of a sentence that a sign is shown by, for whoever asks why; null where it is no word. */
export const shownBy = (sign: string, plain: string): string | null => (BY_SIGN.has(sign) ? (BY_SIGN.get(sign)?.shows(plain) ?? null) : sign.replace(/^\^ (?:… )?|(?: …)? \$$/gu, ""));
