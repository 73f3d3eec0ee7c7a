import { CAPS, SILK_CEILING, STRENGTHS } from "../trade/evidence-caps";
import { CLASSES, OTHER, weightedMean, type ClassVector, type NamedVector } from "./classes";
import type { EvidenceItem } from "./evidence";

/** The numbers of one evidence item that Bayes needs: the table's, or drawn ones. */
export interface Weighed { readonly item: EvidenceItem; readonly likelihood: NamedVector }

/** Words and photos are one block that can be wholly misleading; labels and tests are not in it. */
const inBlock = (item: EvidenceItem) => item.strength === "told" || item.strength === "photo";

/** Log-likelihood of every class after tempering. `other` has the prior-weighted mean unless the item gives its own. */
function logLikelihood({ item, likelihood }: Weighed, prior: ClassVector): number[] {
  const tempered = item.power === 1 ? likelihood : likelihood.map((l) => l ** item.power);
  const logs = tempered.map(Math.log);
  logs.push(item.other === null ? Math.log(weightedMean(tempered, prior)) : Math.log(item.other) * item.power);
  return logs;
}

/** Bayes: from a distribution and evidence to a distribution, in logarithms so that nothing under- or overflows. */
function updated(start: ClassVector, evidence: readonly Weighed[], prior: ClassVector): number[] {
  const score = start.map(Math.log);
  for (const e of evidence) logLikelihood(e, prior).forEach((l, i) => { score[i] = (score[i] as number) + l; });
  const top = Math.max(...score);
  const odds = score.map((s) => Math.exp(s - top));
  const total = odds.reduce((a, b) => a + b, 0);
  return odds.map((o) => o / total);
}

const mixed = (p: ClassVector, prior: ClassVector, share: number): number[] => p.map((x, i) => (1 - share) * x + share * (prior[i] as number));

/** Keeps the rounding of the mixture from lifting a class back over its cap. */
const HAIR = 1 + 1e-9;

/**
 * Where a class passes its cap, mixes in just so much of the untouched prior that it does not. Continuous: evidence
 * that stays under the cap is left alone.
 */
function capped(p: ClassVector, prior: ClassVector, caps: ClassVector): ClassVector {
  const share = p.map((x, i) => {
    const before = prior[i] as number;
    const cap = Math.max(caps[i] as number, before);
    return x > cap ? Math.min(1, ((x - cap) / (x - before)) * HAIR) : 0;
  });
  const most = Math.max(...share);
  return most > 0 ? mixed(p, prior, most) : p;
}

/** What an item supports: the classes it makes more likely than the mean of all. */
const supports = (item: EvidenceItem, i: number, prior: ClassVector) =>
  i === OTHER ? item.other !== null : (item.likelihood[i] as number) > weightedMean(item.likelihood, prior);

/**
 * The greatest probability each class may reach: by the strongest evidence that supports it; words and photos at least.
 * Silk has a ceiling of its own until a bench test or a laboratory supports it.
 */
export function capsFor(items: readonly EvidenceItem[], prior: ClassVector): number[] {
  return CLASSES.map((fibre, i) => {
    const best = Math.max(0, ...items.filter((item) => supports(item, i, prior)).map((item) => STRENGTHS.indexOf(item.strength)));
    const strength = STRENGTHS[best] as (typeof STRENGTHS)[number];
    const tested = strength === "bench" || strength === "laboratory";
    return fibre === "silk" && !tested ? Math.min(CAPS[strength], SILK_CEILING) : CAPS[strength];
  });
}

/**
 * The belief after all evidence. The block of words and photos is damped as
 * L′ = (1−ε)·L + ε·Σπ·L, which is the same as mixing its posterior with the prior at share ε.
 */
export function posterior(model: { prior: ClassVector; evidence: readonly Weighed[]; misleading: number; caps: ClassVector }): ClassVector {
  const { prior, evidence } = model;
  const block = evidence.filter((e) => inBlock(e.item));
  const words = block.length > 0 ? mixed(updated(prior, block, prior), prior, model.misleading) : prior;
  return capped(updated(words, evidence.filter((e) => !inBlock(e.item)), prior), prior, model.caps);
}

/** Weight of one item for a class against another (indices into CLASSES), in decibans, tempering included, damping not. */
export function decibansOf(item: EvidenceItem, pair: { leading: number; rival: number }, prior: ClassVector): number {
  const log = logLikelihood({ item, likelihood: item.likelihood }, prior);
  return (10 / Math.LN10) * ((log[pair.leading] as number) - (log[pair.rival] as number));
}
