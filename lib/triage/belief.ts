import { UNTESTED_MOST, WHOLLY_MISLEADING } from "../trade/evidence-caps";
import type { FibreId } from "../trade/fibres";
import { priorFor } from "../trade/priors";
import type { Assessment, FibreBelief, TriageSettings, WeighedFinding, WeightBalance } from "./assessment";
import { CLASSES, OTHER, classIndex, recordOf, vectorOf, weightedMean, type ClassVector } from "./classes";
import { findConflicts } from "./conflicts";
import { distinctFindings, findingKey } from "./distinct-findings";
import { collectEvidence, possibleFindings, type EvidenceContext, type EvidenceItem } from "./evidence";
import { isGift, type Finding } from "./finding";
import { intervals } from "./interval";
import { sayFinding } from "./say-finding";
import { capInto, capsFor, decibansOf, isTest, weighInto } from "./weigh";
import { wordsForChance } from "./words";

/** An answer somebody might give, and how likely it is by what is believed now. */
export interface PossibleAnswer { readonly finding: Finding; readonly probability: number }

export interface Belief {
  /** All classes, most probable first. */
  readonly fibres: FibreBelief[];
  readonly probabilities: Record<FibreId, number>;
  readonly balance: WeightBalance;
  /** Every distinct finding, the weightiest first; the decibans add up to `balance.findings`. */
  readonly findings: WeighedFinding[];
  readonly conflicts: Assessment["conflicts"];
  /** The probabilities if these were found as well. Quick: no interval, no words. */
  readonly hypothetical: (extra: readonly Finding[]) => Record<FibreId, number>;
  /** What could be answered to a question (or `label`, `price-per-m2`, `test:<id>`), summing to 1; empty where it says nothing on the fibre. */
  readonly answerDistribution: (what: string) => PossibleAnswer[];
}

/** Two classes by their place in CLASSES. */
interface Pair { readonly leading: number; readonly rival: number }

/** `uncapped` is the belief without any cap, `point` with them; `untestedCaps` bound what is no test before the tests speak. */
interface Model { readonly prior: ClassVector; readonly items: EvidenceItem[]; readonly caps: ClassVector; readonly untestedCaps: ClassVector; readonly uncapped: ClassVector; readonly point: ClassVector }

const yearOf = (asOf: string): number => Number(asOf.slice(0, 4));

function modelOf(findings: readonly Finding[], prior: ClassVector, context: EvidenceContext): Model {
  const items = collectEvidence(findings, context);
  const caps = capsFor(items, prior);
  const untestedCaps = capsFor(items.filter((i) => !isTest(i)), prior).map((cap) => Math.min(cap, UNTESTED_MOST));
  const out = new Float64Array(CLASSES.length);
  const tables = { prior: Float64Array.from(prior), priorAt: 0, logs: items.map((i) => i.logs), at: 0, misleading: WHOLLY_MISLEADING };
  weighInto(out, items, tables);
  const uncapped = CLASSES.map((_, i) => out[i] as number);
  if (items.some(isTest)) weighInto(out, items, { ...tables, untestedCaps });
  capInto(out, tables, Float64Array.from(caps), 0);
  return { prior, items, caps, untestedCaps, uncapped, point: CLASSES.map((_, i) => out[i] as number) };
}

const decibans = (p: ClassVector, { leading, rival }: Pair) => 10 * Math.log10((p[leading] as number) / (p[rival] as number));

/** The leading class and its rival, the most probable named class beside it; equal ones in the order of FIBRES. */
function pairOf(point: ClassVector): Pair {
  const ranked = point.map((_, i) => i).sort((a, b) => (point[b] as number) - (point[a] as number));
  const leading = ranked[0] as number;
  return { leading, rival: ranked.find((i) => i !== leading && i !== OTHER) as number };
}

function balanceOf({ prior, items, uncapped, point }: Model, pair: Pair): WeightBalance {
  const before = decibans(prior, pair);
  const found = items.reduce((sum, i) => sum + decibansOf(i, pair, prior), 0);
  const [held, total] = [decibans(uncapped, pair), decibans(point, pair)];
  const [leading, rival] = [CLASSES[pair.leading] as FibreId, CLASSES[pair.rival] as FibreId];
  return { leading, rival, prior: before, findings: found, damping: held - before - found, cap: total - held, total };
}

/** Each finding with its weight: an item's decibans shared among the findings that bear it. */
function weighed(findings: readonly Finding[], model: Model, { balance, yearNow }: { balance: WeightBalance; yearNow: number }): WeighedFinding[] {
  const pair = { leading: classIndex(balance.leading), rival: classIndex(balance.rival) };
  const share = new Map<string, number>();
  for (const item of model.items) {
    const db = decibansOf(item, pair, model.prior) / item.findings.length;
    for (const f of item.findings) share.set(findingKey(f), db);
  }
  return distinctFindings(findings)
    .map((f) => ({ f, db: share.get(findingKey(f)) }))
    .map(({ f, db }) => ({ what: f.what, value: f.value, strength: f.strength, from: f.from, decibans: db ?? 0, ...sayFinding(f, { decibans: db ?? null, yearNow, isGift: isGift(findings) }, balance) }))
    .sort((a, b) => Math.abs(b.decibans) - Math.abs(a.decibans));
}

/** A class's chance of each answer, with `other` answering like the mean of all. */
function answerChances(what: string, model: Model): PossibleAnswer[] {
  const rows = possibleFindings(what);
  const chances = rows.map(({ finding, column }) => ({
    finding,
    probability: column.reduce((sum, p, i) => sum + (model.point[i] as number) * p, (model.point[OTHER] as number) * weightedMean(column, model.prior)),
  }));
  const total = chances.reduce((sum, c) => sum + c.probability, 0);
  return chances.map((c) => ({ ...c, probability: c.probability / total }));
}

/**
 * What the pile is probably made of: Bayes over the fibre classes. Pure; doubled findings and their order change nothing.
 * `asOf` is an ISO 8601 instant; prices without a year count as of its year.
 */
export function believe(findings: readonly Finding[], settings: TriageSettings, asOf: string): Belief {
  const prior = vectorOf(priorFor(settings));
  const context = { currency: settings.currency, year: yearOf(asOf) };
  const model = modelOf(findings, prior, context);
  const balance = balanceOf(model, pairOf(model.point));
  const bounds = intervals({ ...model, seed: settings.seed });
  const fibres = CLASSES
    .map((fibre, i) => ({ fibre, probability: model.point[i] as number, ...(bounds[i] as { low: number; high: number }) }))
    .map((chance) => ({ ...chance, words: wordsForChance(chance) }))
    .sort((a, b) => b.probability - a.probability);
  return {
    fibres, probabilities: recordOf(model.point), balance,
    findings: weighed(findings, model, { balance, yearNow: context.year }),
    conflicts: findConflicts(model.items, isGift(findings)),
    hypothetical: (extra) => recordOf(modelOf([...findings, ...extra], prior, context).point),
    answerDistribution: (what) => answerChances(what, model),
  };
}
