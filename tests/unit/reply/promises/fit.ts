import { plainOf } from "../../../../lib/reply/promises/sentences";
import { surenessOf } from "../../../../lib/reply/promises/sureness";
import { SURENESS_MARKS } from "../../../../lib/reply/promises/sureness-marks";

/** A sentence that promises too much, or an honest one, by the marks it shows. */
export interface Row { readonly marks: readonly number[]; readonly over: boolean; readonly advises: boolean }
export const rowOf = (sentence: string, over: boolean): Row => {
  const plain = plainOf(sentence);
  return { over, advises: surenessOf(sentence).advises, marks: SURENESS_MARKS.flatMap((m, at) => (m.holds(plain) ? [at] : [])) };
};

export interface Fit { readonly start: number; readonly weights: readonly number[] }
const ROUNDS = 400, STEP = 0.5, RIDGE = 0.002, TO_DECIBANS = 10 / Math.LN10;

/**
 * Logistic regression with a ridge by plain gradient descent over all rows at once: the same rows give the same weights.
 * Natural logarithms of odds.
 */
export function fit(rows: readonly Row[]): Fit {
  const weights = SURENESS_MARKS.map(() => 0);
  let start = 0;
  for (let round = 0; round < ROUNDS; round += 1) {
    const slope = weights.map((w) => RIDGE * w);
    let slopeOfStart = 0;
    for (const { marks, over } of rows) {
      const off = (1 / (1 + Math.exp(-marks.reduce((sum, at) => sum + (weights[at] as number), start))) - Number(over)) / rows.length;
      slopeOfStart += off;
      for (const at of marks) slope[at] = (slope[at] as number) + off;
    }
    start -= STEP * slopeOfStart;
    for (const [at, s] of slope.entries()) weights[at] = (weights[at] as number) - STEP * s;
  }
  return { start, weights };
}

/** The same in decibans, to the nearest whole one. */
export const inDecibans = ({ start, weights }: Fit): Fit => ({ start: Math.round(start * TO_DECIBANS), weights: weights.map((w) => Math.round(w * TO_DECIBANS) || 0) });
export const scoreOf = ({ start, weights }: Fit, { marks }: Row): number => marks.reduce((sum, at) => sum + (weights[at] as number), start);
