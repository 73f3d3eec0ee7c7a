import { CLASS_OF_FINE, type FineFibre } from "../trade/label-fibres";
import { COMPONENT_LABEL_RIGHT, FRINGE_FEELS, GROUNDS, GROUND_UNDER_SILK, SEWN_FRINGE, type ComponentRow, type GroundKey } from "../trade/ground-fringe";
import { SINGLE_FIBRES, type SingleFibre } from "../trade/single-fibres";
import { product, yarnEvidence, type Samples, type YarnEvidence } from "./bench-evidence";
import { NAMED } from "./classes";
import type { Finding } from "./finding";
import type { Told } from "./told";

/** What a component may be: single fibres and, last, `other`. Vectors run in this order. */
export type Content = SingleFibre | "other";
export const CONTENTS: readonly Content[] = [...SINGLE_FIBRES, "other"];
type Vector = readonly number[];

/** The chances of a component's contents (summing to 1), and what they rest on in words. */
export interface Judged { readonly chances: Vector; readonly by: readonly string[] }

export const scaled = (v: Vector): number[] => {
  const sum = v.reduce((a, b) => a + b, 0);
  return v.map((p) => p / sum);
};

/** What kind of evidence speaks for a sample, in words. */
export const kindsOf = (evidence: readonly Pick<YarnEvidence, "strength">[]): string[] => [
  ...(evidence.some((e) => e.strength === "bench") ? ["bench tests of it"] : []), ...(evidence.some((e) => e.strength === "laboratory") ? ["a laboratory’s report"] : []),
];

function spread(row: ComponentRow): number[] {
  const left = 1 - Object.values(row).reduce((a, b) => a + b, 0);
  return CONTENTS.map((c) => (c === "other" ? undefined : row[c]) ?? left / (CONTENTS.length - Object.keys(row).length));
}
const blended = (a: Vector, b: Vector, share: number): number[] => a.map((p, i) => (1 - share) * p + share * (b[i] as number));

/** The ground’s prior by construction; as far as the pile is silk (`silkPile`, 0–1), that of silk rugs. */
export function groundPrior(told: Told, silkPile: number): number[] {
  const back = told.one("back");
  const key: GroundKey = back !== null && Object.hasOwn(GROUNDS, back) ? (back as GroundKey) : "unknown";
  return key === "knots" ? blended(spread(GROUNDS.knots), spread(GROUND_UNDER_SILK), silkPile) : spread(GROUNDS[key]);
}

/** A fringe that is part of the rug is its warp; where that is not told, it may be either. */
export function fringePrior(told: Told, ground: Vector): number[] {
  const sewn = spread(SEWN_FRINGE);
  const fringe = told.one("fringe");
  return fringe === "part-of-rug" ? [...ground] : fringe === "sewn-on" ? sewn : blended(ground, sewn, 0.5);
}

/** The shares of the fibres in a label's wording of a component ("80 % cotton, 20 % polyester"), as classes; null where it names none. */
function labelled(findings: readonly Finding[], part: "ground" | "fringe"): ReadonlyMap<string, number> | null {
  const labels = findings.filter((f) => f.what === "label" && typeof f.value === "object" && !Array.isArray(f.value));
  const best = labels.find((f) => f.strength === "label-photo") ?? labels[0];
  const text = best ? (best.value as Readonly<Record<string, unknown>>)[part] : null;
  const named = (typeof text === "string" ? text : "").split(", ").flatMap((words): [string, number][] => {
    const [, percent, fine] = /^(?:([\d.]+) % )?([a-z-]+)$/.exec(words) ?? [];
    const fibre = fine !== undefined && Object.hasOwn(CLASS_OF_FINE, fine) ? CLASS_OF_FINE[fine as FineFibre] : null;
    return fibre === null ? [] : [[fibre === "art-silk" ? "viscose" : fibre, percent === undefined ? 100 : Number(percent)]];
  });
  const total = named.reduce((sum, [, share]) => sum + share, 0);
  return total > 0 ? new Map(named.map(([fibre, share]) => [fibre, share / total])) : null;
}

const labelLikelihood = (shares: ReadonlyMap<string, number>): number[] => {
  const wrong = (1 - COMPONENT_LABEL_RIGHT) / (CONTENTS.length - 1);
  return CONTENTS.map((c) => [...shares].reduce((sum, [fibre, share]) => sum + share * (fibre === c ? COMPONENT_LABEL_RIGHT : wrong), 0));
};

const isFeel = (feel: string | null): feel is "cottony" | "shiny" | "woolly" => feel === "cottony" || feel === "shiny" || feel === "woolly";
/** P(how the fringe feels | its fibre); `other` as the mean of what it was taken for. */
function feelLikelihood(feel: "cottony" | "shiny" | "woolly", prior: Vector): number[] {
  const named = SINGLE_FIBRES.map((f) => FRINGE_FEELS[f][feel]);
  return [...named, meanOf(named, prior)];
}
const meanOf = (named: Vector, prior: Vector): number => {
  const weights = prior.slice(0, SINGLE_FIBRES.length);
  return named.reduce((sum, p, i) => sum + p * (weights[i] as number), 0) / weights.reduce((a, b) => a + b, 0);
};

/** Ground or fringe from its prior, the label, how it feels, and the tests of it; null where nothing speaks for it. `made`: the prior rests on how the rug is made. */
export function foundation(part: "ground" | "fringe", prior: Vector, rug: { findings: readonly Finding[]; samples: Samples; told: Told; made: boolean }): Judged | null {
  const { findings, told, made } = rug;
  const shares = labelled(findings, part);
  const feel = part === "fringe" ? told.one("fringeKind") : null;
  const evidence = yarnEvidence(rug.samples, `${part}:whole`);
  const likelihood = product(evidence);
  const tested = SINGLE_FIBRES.map((f) => likelihood[NAMED.indexOf(f)] as number);
  const terms: Vector[] = [
    ...(shares ? [labelLikelihood(shares)] : []), ...(isFeel(feel) ? [feelLikelihood(feel, prior)] : []),
    ...(evidence.length > 0 ? [[...tested, evidence.find((e) => e.other !== null)?.other ?? meanOf(tested, prior)]] : []),
  ];
  const by = [...(made ? ["how the rug is made"] : []), ...(shares ? ["its label"] : []), ...(isFeel(feel) ? ["how it feels"] : []), ...kindsOf(evidence)];
  return by.length === 0 ? null : { chances: scaled(prior.map((p, i) => terms.reduce((product, t) => product * (t[i] as number), p))), by };
}
