import { wordsIn } from "./reading";

/** A letter about one rug is this long at most, and this much longer for each further rug. Words; elicited: what people read to the end. */
const MOST_WORDS = { oneRug: 350, eachFurther: 175 } as const;
export const mostWords = (rugs: number): number => MOST_WORDS.oneRug + MOST_WORDS.eachFurther * (rugs - 1);

/** A letter with more words than people read to the end; null where it has not. `rugs`: how many it is about, at least one. */
export function overlong(text: string, rugs: number): { readonly words: number; readonly most: number } | null {
  const most = mostWords(Math.max(1, rugs));
  const words = wordsIn(text).length;
  return words > most ? { words, most } : null;
}

interface Counted { text: string }
interface Spared<P> extends Counted { spare: number | null; least?: P | null }
const wordsApart = (pieces: readonly Counted[]): number => pieces.reduce((sum, p) => sum + wordsIn(p.text).length, 0);

/**
 * Leaves out what can wait, the least needed first and of that the last first, until the letter is short enough or nothing
 * in it can wait. `spare`: 1 goes first; null stays. `least`: what stands in its stead once its turn has come; absent or null: nothing.
 * `wordsOf`: how many words they make in the letter.
 */
export function shortened<P extends Spared<P>>(pieces: readonly P[], most: number, wordsOf: (kept: readonly P[]) => number = wordsApart): P[] {
  const kept = [...pieces];
  const order = pieces.filter((p) => p.spare !== null).reverse().sort((a, b) => (a.spare as number) - (b.spare as number));
  for (const piece of order) {
    if (wordsOf(kept) <= most) break;
    kept.splice(kept.indexOf(piece), 1, ...(piece.least ? [piece.least] : []));
  }
  return kept;
}
