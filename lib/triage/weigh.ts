import { CAPS, OLD_AGES, OLD_CEILING, SHORT_LIVED, SILK_CEILING, STRENGTHS } from "../trade/evidence-caps";
import { CLASSES, OTHER, weightedMean, type ClassVector } from "./classes";
import type { EvidenceItem } from "./evidence";

/** Words and photos are one block that can be wholly misleading; labels and tests are not in it. */
const inBlock = (item: EvidenceItem) => item.strength === "told" || item.strength === "photo";

/** Found in the fibre itself: what is no test is capped before these speak. */
export const isTest = (item: EvidenceItem): boolean => item.strength === "bench" || item.strength === "laboratory";

/** One set of tables to weigh with: the tables themselves, or one draw of them. `at` is where an item's vector begins in its logs. */
export interface Tables {
  readonly prior: ArrayLike<number>;
  readonly priorAt: number;
  /** Log-likelihoods of each item, in the order of the items. */
  readonly logs: readonly Float64Array[];
  readonly at: number;
  /** ε, 0–1 */
  readonly misleading: number;
  /** The caps of the evidence that is no test, each row beside its prior; none are kept where left out. */
  readonly untestedCaps?: ArrayLike<number>;
}

const WIDTH = CLASSES.length;
const scores = new Float64Array(WIDTH);

/** Log-likelihood of `other` after tempering: the prior-weighted mean of the named classes, unless the item gives its own. */
function otherLog(item: EvidenceItem, logs: Float64Array, t: Tables): number {
  if (item.other !== null) return Math.log(item.other) * item.power;
  let [sum, weight] = [0, 0];
  for (let i = 0; i < OTHER; i += 1) {
    const share = t.prior[t.priorAt + i] as number;
    sum += share * Math.exp(item.power * (logs[t.at + i] as number));
    weight += share;
  }
  return Math.log(sum / weight);
}

/** Adds an item's tempered log-likelihoods to the scores. */
function add(item: EvidenceItem, logs: Float64Array, t: Tables): void {
  const { power } = item;
  for (let i = 0; i < OTHER; i += 1) scores[i] = (scores[i] as number) + power * (logs[t.at + i] as number);
  scores[OTHER] = (scores[OTHER] as number) + otherLog(item, logs, t);
}

/** Scores to probabilities, in `out`: in logarithms up to here, so that nothing under- or overflows. */
function normalise(out: Float64Array): void {
  let top = -Infinity;
  for (let i = 0; i < WIDTH; i += 1) if ((scores[i] as number) > top) top = scores[i] as number;
  let total = 0;
  for (let i = 0; i < WIDTH; i += 1) total += out[i] = Math.exp((scores[i] as number) - top);
  for (let i = 0; i < WIDTH; i += 1) out[i] = (out[i] as number) / total;
}

/** Adds the items of one kind to the scores; how many there were. */
function addThose(items: readonly EvidenceItem[], t: Tables, are: (item: EvidenceItem) => boolean): number {
  let count = 0;
  for (let k = 0; k < items.length; k += 1) if (are(items[k] as EvidenceItem)) { add(items[k] as EvidenceItem, t.logs[k] as Float64Array, t); count += 1; }
  return count;
}
const isLabel = (item: EvidenceItem) => !inBlock(item) && !isTest(item);
const scoresOf = (probabilities: Float64Array): void => { for (let i = 0; i < WIDTH; i += 1) scores[i] = Math.log(probabilities[i] as number); };

/**
 * Bayes before the last cap, into `out`, the weaker evidence first: words and photos as a block, damped as
 * L′ = (1−ε)·L + ε·Σπ·L, which is the same as mixing its posterior with the prior at share ε; then labels; then tests. What
 * is no test is capped before the tests speak, so that no pile of words and a label outweighs what was found in the fibre.
 */
export function weighInto(out: Float64Array, items: readonly EvidenceItem[], t: Tables): void {
  for (let i = 0; i < WIDTH; i += 1) out[i] = t.prior[t.priorAt + i] as number;
  scoresOf(out);
  const block = addThose(items, t, inBlock);
  if (block > 0) {
    normalise(out);
    for (let i = 0; i < WIDTH; i += 1) out[i] = (1 - t.misleading) * (out[i] as number) + t.misleading * (t.prior[t.priorAt + i] as number);
    scoresOf(out);
  }
  const labels = addThose(items, t, isLabel);
  if (labels > 0) normalise(out);
  if (block + labels === items.length) return;
  if (t.untestedCaps) {
    capInto(out, t, t.untestedCaps, t.priorAt);
    scoresOf(out);
  }
  addThose(items, t, isTest);
  normalise(out);
}

/** Keeps the rounding of the mixture from lifting a class back over its cap. */
const HAIR = 1 + 1e-9;

/**
 * Where a class passes its cap, mixes in just so much of the untouched prior that it does not, in place. Continuous:
 * evidence that stays under the cap is left alone.
 */
export function capInto(out: Float64Array, { prior, priorAt }: Pick<Tables, "prior" | "priorAt">, caps: ArrayLike<number>, capsAt: number): void {
  let most = 0;
  for (let i = 0; i < WIDTH; i += 1) {
    const before = prior[priorAt + i] as number;
    const x = out[i] as number;
    const cap = Math.max(caps[capsAt + i] as number, before);
    if (x > cap) most = Math.max(most, Math.min(1, ((x - cap) / (x - before)) * HAIR));
  }
  if (most > 0) for (let i = 0; i < WIDTH; i += 1) out[i] = (1 - most) * (out[i] as number) + most * (prior[priorAt + i] as number);
}

/** What an item supports: the classes it makes more likely than the mean of all. */
const supports = (item: EvidenceItem, i: number, mean: number) => (i === OTHER ? item.other !== null && item.other > mean : (item.likelihood[i] as number) > mean);

const isOld = (items: readonly EvidenceItem[]) => items.some((i) => i.what === "age" && i.findings.every((f) => OLD_AGES.includes(String(f.value))));

/**
 * The greatest probability each class may reach: by the strongest evidence that supports it; words and photos at least.
 * Silk has a ceiling of its own until a bench test or a laboratory supports it, a short-lived fibre in an old rug until a
 * label does.
 */
export function capsFor(items: readonly EvidenceItem[], prior: ClassVector): number[] {
  const strengths = items.map((item) => ({ item, mean: weightedMean(item.likelihood, prior), rank: STRENGTHS.indexOf(item.strength) }));
  const old = isOld(items);
  return CLASSES.map((fibre, i) => {
    let best = 0;
    for (const { item, mean, rank } of strengths) if (rank > best && supports(item, i, mean)) best = rank;
    const strength = STRENGTHS[best] as (typeof STRENGTHS)[number];
    const tested = strength === "bench" || strength === "laboratory";
    const ceiling = fibre === "silk" && !tested ? SILK_CEILING : old && SHORT_LIVED.includes(fibre) && (strength === "told" || strength === "photo") ? OLD_CEILING : 1;
    return Math.min(CAPS[strength], ceiling);
  });
}

/** Weight of one item for a class against another (indices into CLASSES), in decibans, tempering included, damping not. */
export function decibansOf(item: EvidenceItem, pair: { leading: number; rival: number }, prior: ClassVector): number {
  const t: Tables = { prior: Float64Array.from(prior), priorAt: 0, logs: [item.logs], at: 0, misleading: 0 };
  const log = (i: number) => (i === OTHER ? otherLog(item, item.logs, t) : item.power * (item.logs[i] as number));
  return (10 / Math.LN10) * (log(pair.leading) - log(pair.rival));
}
