import { plainOf } from "../../../../lib/reply/promises/sentences";
import { signsOf } from "../../../../lib/reply/promises/sureness-signs";

/** A sentence that promises too much, or an honest one, by the signs it shows. */
export interface Row { readonly signs: readonly string[]; readonly over: boolean }
export const rowOf = (sentence: string, over: boolean): Row => ({ over, signs: signsOf(plainOf(sentence)) });

/** In whole decibans; a sign that weighs nothing is left out. */
export interface Fit { readonly start: number; readonly weights: ReadonlyMap<string, number> }
/** Signs of fewer sentences are left out: what one or two people once wrote says little of others. *elicited* */
const LEAST_SENTENCES = 4;
/** Chosen by leaving tables out in turn, as the ridge. */
const ROUNDS = 150, ROUNDS_WITHOUT_SMALL = 60, STEP = 0.3, RIDGE = 0.0003;
/** Weights of less, in decibans, are taken out before the last rounds: half of the signs, and nothing is told worse without them. */
const SMALL = 0.7;
const DECIBANS = 10 / Math.LN10;

/** The signs of rows by number, so that a fit only adds. */
interface Numbered { readonly signs: readonly string[]; readonly rows: readonly { readonly at: Int32Array; readonly over: number }[] }

function numbered(rows: readonly Row[]): Numbered {
  const seen = new Map<string, number>();
  for (const { signs } of rows) for (const sign of signs) seen.set(sign, (seen.get(sign) ?? 0) + 1);
  const signs = [...seen].filter(([, times]) => times >= LEAST_SENTENCES).map(([sign]) => sign).sort();
  const numbers = new Map(signs.map((sign, n) => [sign, n]));
  return { signs, rows: rows.map((row) => ({ over: Number(row.over), at: Int32Array.from(row.signs.flatMap((sign) => numbers.get(sign) ?? [])) })) };
}

/** Gradient descent, each weight in steps of its own (AdaGrad: Duchi, Hazan & Singer 2011, from memory). The last weight is the start. */
function descend({ signs, rows }: Numbered, weights: Float64Array, rounds: number, held: (n: number) => boolean, pace: Float64Array): void {
  const start = signs.length;
  for (let round = 0; round < rounds; round += 1) {
    const slope = weights.map((w, n) => (n === start ? 0 : RIDGE * w));
    const add = (n: number, by: number) => { slope[n] = (slope[n] as number) + by; };
    for (const { at, over } of rows) {
      const odds = at.reduce((sum, n) => sum + (weights[n] as number), weights[start] as number);
      const off = (1 / (1 + Math.exp(-odds)) - over) / rows.length;
      for (const n of at) add(n, off);
      add(start, off);
    }
    for (const [n, by] of slope.entries()) {
      if (held(n)) continue;
      pace[n] = (pace[n] as number) + by * by;
      weights[n] = (weights[n] as number) - (STEP * by) / Math.sqrt(pace[n] as number);
    }
  }
}

/** Logistic regression with a ridge: the same rows give the same weights. */
export function fit(rows: readonly Row[]): Fit {
  const data = numbered(rows);
  const weights = new Float64Array(data.signs.length + 1), pace = weights.map(() => 1e-8);
  descend(data, weights, ROUNDS, () => false, pace);
  const small = weights.map((w, n) => Number(n < data.signs.length && Math.abs(w) * DECIBANS < SMALL));
  for (const n of weights.keys()) if (small[n] === 1) weights[n] = 0;
  descend(data, weights, ROUNDS_WITHOUT_SMALL, (n) => small[n] === 1, pace);
  const whole = (n: number) => Math.round((weights[n] as number) * DECIBANS);
  return { start: whole(data.signs.length), weights: new Map(data.signs.flatMap((sign, n) => (whole(n) === 0 ? [] : [[sign, whole(n)] as const]))) };
}

export const scoreOf = ({ start, weights }: Fit, { signs }: Pick<Row, "signs">): number => signs.reduce((sum, sign) => sum + (weights.get(sign) ?? 0), start);
