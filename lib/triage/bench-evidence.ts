import { BENCH_RESPONSES, READING_POWERS } from "../trade/bench-responses";
import type { ResponseTable } from "../trade/bench-responses-rule";
import type { Source } from "../trade/fibres";
import { SMALLEST_CELL, strengthOfRow } from "../trade/likelihood-table";
import { OTHER_YARN, YARN_IDS, type YarnId } from "../trade/yarns";
import { NAMED, OTHER, type NamedVector } from "./classes";
import { drawCell } from "./dirichlet";
import { distinctFindings, sampleKey, sampleOf } from "./distinct-findings";
import type { Finding, Sample, Strength } from "./finding";
import { laboratoryEvidence, type LaboratoryEvidence } from "./laboratory-evidence";
import type { Random } from "./random";
import { drawStateRows, likelihoodByClass, stateRows } from "./yarn-states";

/** One reading of one test of one sample. Dye, pH, moisture and lamp speak of places, not of fibres, and give none. */
export interface SampleEvidence {
  /** `test:<id>.<reading>` */
  readonly what: string;
  readonly test: string;
  readonly strength: "bench";
  readonly sample: Sample;
  readonly findings: readonly Finding[];
  /** P(reading | what the sample is): single fibres and intimate mixtures, in the order of the named classes. */
  readonly likelihood: NamedVector;
  /** The same drawn anew from its table. */
  readonly draw: (random: Random) => NamedVector;
  /** The power on the likelihood, 0–1: readings of one test go wrong together. */
  readonly power: number;
  readonly source: Source;
}

const answerIn = (finding: Finding, table: ResponseTable): string | null => {
  const given = typeof finding.value === "object" && !Array.isArray(finding.value) ? (finding.value as Record<string, unknown>)[table.reading] : null;
  return typeof given === "string" && table.answers.includes(given) ? given : null;
};
const mean = (table: ResponseTable, columns: readonly number[], at: (p: number, fibre: (typeof NAMED)[number]) => number): number[] =>
  NAMED.map((f) => columns.reduce((sum, c) => sum + at(table.rows[f][c] as number, f), 0) / columns.length);

/** A reading made twice on one sample with different answers counts as either being right; made twice alike it adds nothing. */
function readingEvidence(table: ResponseTable, tests: readonly Finding[], power: number): SampleEvidence | null {
  const findings = tests.filter((f) => answerIn(f, table) !== null);
  const columns = [...new Set(findings.map((f) => table.answers.indexOf(answerIn(f, table) as string)))].sort((a, b) => a - b);
  if (columns.length === 0) return null;
  return {
    what: table.what, test: table.test, strength: "bench", sample: sampleOf(findings[0] as Finding), findings, power, source: table.source,
    likelihood: mean(table, columns, (p) => p),
    draw: (random) => mean(table, columns, (p, f) => Math.max(SMALLEST_CELL, drawCell(random, p, strengthOfRow(table, f)))),
  };
}

/** Every reading that speaks of a fibre, by sample and test. Order and doubles change nothing. */
export function benchEvidence(findings: readonly Finding[]): SampleEvidence[] {
  const bench = distinctFindings(findings.filter((f) => f.strength === "bench"));
  const keys = [...new Set(bench.map((f) => `${sampleKey(sampleOf(f))} ${f.what}`))].sort();
  return keys.flatMap((key) => {
    const tests = bench.filter((f) => `${sampleKey(sampleOf(f))} ${f.what}` === key);
    const given = BENCH_RESPONSES.filter((t) => `test:${t.test}` === tests[0]?.what && tests.some((f) => answerIn(f, t) !== null));
    const power = READING_POWERS[given.length - 1] ?? 1;
    return given.map((t) => readingEvidence(t, tests, power)).filter((e): e is SampleEvidence => e !== null);
  });
}

/**
 * The likelihood of several readings of one sample together. Tests that work by different means are taken as independent
 * given the fibre; that a whole sample may be the wrong one stands in the yarn table. Elicited.
 */
export const together = (readings: readonly { readonly likelihood: NamedVector; readonly power: number }[]): NamedVector =>
  NAMED.map((_, s) => readings.reduce((product, r) => product * (r.likelihood[s] as number) ** r.power, 1));

/** What the bench and the laboratory say of the pile, as the belief takes it. */
export interface PileEvidence {
  readonly what: string;
  readonly strength: Strength;
  /** One test or report of one sample, e.g. `test:burn/pile:field`. */
  readonly group: string;
  /** P(evidence | class, earlier evidence of the same yarn), up to a common factor. */
  readonly likelihood: NamedVector;
  readonly draw: (random: Random) => NamedVector;
  /** Set where the class `other` has a likelihood of its own; null: the prior-weighted mean. */
  readonly other: number | null;
  readonly power: number;
  readonly findings: readonly Finding[];
}

/** One test or report of one yarn: P(it | what the yarn is). */
export interface YarnEvidence extends Pick<PileEvidence, "what" | "strength" | "findings" | "other" | "draw"> { readonly likelihood: NamedVector }

/** Everything the bench and the laboratory found, of every sample. */
export interface Samples { readonly readings: readonly SampleEvidence[]; readonly reports: readonly LaboratoryEvidence[] }
export const readSamples = (findings: readonly Finding[]): Samples => ({ readings: benchEvidence(findings), reports: laboratoryEvidence(findings) });

/** What was found in one sample (`of` as `sampleKey` has it): tests in the order of their names, then the laboratory; the readings of one test together. */
export function yarnEvidence(samples: Samples, of: string): YarnEvidence[] {
  const isOf = ({ sample }: { sample: Sample }) => sampleKey(sample) === of;
  const readings = samples.readings.filter(isOf);
  const tests = [...new Set(readings.map((r) => r.test))].map((test): YarnEvidence => {
    const ofTest = readings.filter((r) => r.test === test);
    return {
      what: `test:${test}`, strength: "bench", other: null, likelihood: together(ofTest), findings: [...new Set(ofTest.flatMap((r) => r.findings))],
      draw: (random) => together(ofTest.map((r) => ({ power: r.power, likelihood: r.draw(random) }))),
    };
  });
  const reports = samples.reports.filter(isOf).map((report): YarnEvidence => ({
    what: "laboratory", strength: "laboratory", findings: report.findings, other: report.likelihood[OTHER] as number,
    likelihood: report.likelihood.slice(0, OTHER), draw: (random) => report.draw(random).slice(0, OTHER),
  }));
  return [...tests, ...reports];
}

/** The joint likelihood of tests and reports of one sample, over what it may be; 1 throughout for none. */
export const product = (evidence: readonly YarnEvidence[]): NamedVector => together(evidence.map(({ likelihood }) => ({ likelihood, power: 1 })));
const average = (v: NamedVector): number => v.reduce((a, b) => a + b, 0) / v.length;

/** A laboratory may find a yarn to be something not named, in a pile of a named class: P(report | class) with that way of coming about. */
const withOther = (byClass: NamedVector, other: number, share: number): NamedVector => byClass.map((p) => share * other + (1 - share) * p);

/** A report of the pile as a whole names its class; everything else speaks for a sample, and through the yarn table for the class. */
function ofYarn(samples: Samples, yarn: YarnId): PileEvidence[] {
  const all = yarnEvidence(samples, `pile:${yarn}`);
  return all.map((e, k): PileEvidence => {
    const shared = { what: e.what, strength: e.strength, group: `${e.what}/pile:${yarn}`, power: 1, findings: e.findings };
    const before = product(all.slice(0, k));
    const through = (rows: readonly NamedVector[], now: NamedVector) => likelihoodByClass(rows, before, now);
    const likelihood = through(stateRows(yarn), e.likelihood);
    const draw = (random: Random) => through(drawStateRows(yarn, random), e.draw(random));
    if (e.other === null) return { ...shared, other: null, likelihood, draw };
    if (yarn === "whole") return { ...shared, other: e.other, likelihood: e.likelihood, draw: e.draw };
    const { other } = e;
    const { ofNamed, ofOther } = OTHER_YARN[yarn];
    return {
      ...shared, other: ofOther * other + (1 - ofOther) * average(e.likelihood),
      likelihood: withOther(likelihood, other, ofNamed), draw: (random) => withOther(draw(random), other, ofNamed),
    };
  });
}

/** Every test and report that speaks for the pile. Ground and fringe say nothing of it. Order and doubles change nothing. */
export function pileEvidence(findings: readonly Finding[]): readonly PileEvidence[] {
  const spoken = findings.filter((f) => f.strength === "bench" || f.strength === "laboratory");
  if (spoken.length === 0) return [];
  const samples = readSamples(spoken);
  return YARN_IDS.flatMap((yarn) => ofYarn(samples, yarn));
}
