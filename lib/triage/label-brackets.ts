import { REGENERATED } from "../trade/label-fibres";
import { labelTokens } from "./label-tokens";

/** A label has a bracket or two; more are not looked into. Elicited. */
const MOST_BRACKETS = 20;
const BRACKET = /(?<word>\p{L}{2,20})(?<after>["'”’»]?\s{0,2})\((?<inside>[^()]{2,40})\)/gu;

const onlyFibre = (text: string) => {
  const { tokens } = labelTokens(text);
  const [only, ...more] = tokens.filter((t) => t.kind === "fibre" || t.kind === "percent");
  return only?.kind === "fibre" && more.length === 0 ? only.fibre : null;
};

/**
 * "Silk (viscose)": the bracket says what the silk is, and it is read so, with a doubt. Takes and gives normal text; other
 * brackets stay as they are.
 */
export function explainedSilk(normal: string): { readonly text: string; readonly doubts: readonly string[] } {
  const doubts: string[] = [];
  let left = MOST_BRACKETS;
  const text = normal.replace(BRACKET, (all, word: string, after: string, inside: string) => {
    if ((left -= 1) < 0) return all;
    const fibre = onlyFibre(inside);
    if (fibre === null || !REGENERATED.includes(fibre) || onlyFibre(word) !== "silk") return all;
    doubts.push(`“${word}” is explained in brackets as “${inside.trim()}”, and was read so.`);
    return `${inside}${after}`;
  });
  return { text, doubts };
}
