import { CLASS_OF_FINE } from "../trade/label-fibres";
import { pileOf } from "./label-class";
import { readLabel } from "./read-label";

/** Per cents that differ by no more were rounded. Elicited. */
const ROUNDED = 1;

/** What a label says that the pile is of; null per cent where it gives none. */
const pileIn = (text: string): ReadonlyMap<string, number | null> =>
  new Map((pileOf(readLabel(text))?.fibres ?? []).map(({ fibre, percent }) => [CLASS_OF_FINE[fibre] ?? fibre, percent]));

/** Whether two texts say different things of what a rug is made of: of its pile, or of its fibres' shares. A text that names none, or leaves shares out, contradicts nothing there. */
export function labelsDiffer(a: string, b: string): boolean {
  const [one, other] = [pileIn(a), pileIn(b)];
  if (one.size === 0 || other.size === 0) return false;
  return [...new Set([...one.keys(), ...other.keys()])].some((fibre) => {
    const [x, y] = [one.get(fibre), other.get(fibre)];
    return x === undefined || y === undefined || (x !== null && y !== null && Math.abs(x - y) > ROUNDED);
  });
}

/** Whether two texts both name what the pile is of, and say the same of it. */
export const labelsAgree = (a: string, b: string): boolean => [a, b].every((text) => pileIn(text).size > 0) && !labelsDiffer(a, b);
