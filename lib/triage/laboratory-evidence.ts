import type { FibreId, Source } from "../trade/fibres";
import { BLENDS, BLEND_PERCENT, LEADING_PERCENT, WEAKEST_RULES_PERCENT } from "../trade/label-fibres";
import { strengthBy, SMALLEST_CELL } from "../trade/likelihood-table";
import { SINGLE_FIBRES, type SingleFibre } from "../trade/single-fibres";
import { COMPOSITION_TOLERANCE_PERCENT, LABORATORY_RIGHT } from "../trade/yarns";
import { CLASSES, type ClassVector } from "./classes";
import { drawCell } from "./dirichlet";
import { distinctFindings, sampleKey, sampleOf } from "./distinct-findings";
import type { Finding, FindingValue, Sample } from "./finding";
import type { Random } from "./random";

export const LABORATORY_SOURCE: Source = { how: "elicited", source: "How often a report is of the sample it is filed under, and right: a judgement of this project" };

type Reported = SingleFibre | "other";
const isReported = (name: string): name is Reported => name === "other" || (SINGLE_FIBRES as readonly string[]).includes(name);

/** The composition in per cent by mass; null where it is no composition: unknown names, negative or odd numbers, a sum that is not 100. */
export function readComposition(value: FindingValue): ReadonlyMap<Reported, number> | null {
  if (typeof value !== "object" || Array.isArray(value)) return null;
  const entries = Object.entries(value);
  if (!entries.every((e): e is [Reported, number] => isReported(e[0]) && typeof e[1] === "number" && e[1] >= 0)) return null;
  const sum = entries.reduce((total, [, percent]) => total + percent, 0);
  return Math.abs(sum - 100) <= COMPOSITION_TOLERANCE_PERCENT ? new Map(entries) : null;
}

/**
 * The class a composition belongs to: fibres under a tenth make no blend. A mixture without a class of its own counts as
 * a label's does: as viscose where that is a good part of it, as its main fibre where that is most of it, else `other`.
 */
export function classOfComposition(composition: ReadonlyMap<Reported, number>): FibreId {
  const parts = [...composition].filter(([, percent]) => percent >= BLEND_PERCENT).sort(([a, p], [b, q]) => q - p || (a < b ? -1 : 1));
  const names = parts.map(([fibre]) => fibre);
  if (names.length === 1) return names[0] as Reported;
  const blend = BLENDS[[...names].sort().join("+")];
  if (blend !== undefined) return blend as FibreId;
  if ((composition.get("viscose") ?? 0) >= WEAKEST_RULES_PERCENT) return "viscose";
  const [main, share] = parts[0] as [Reported, number];
  return share >= LEADING_PERCENT ? main : "other";
}

/** What a laboratory found in one sample. */
export interface LaboratoryEvidence {
  readonly sample: Sample;
  readonly findings: readonly Finding[];
  /** P(report | what the sample is), up to a common factor: the named classes and, last, `other`. */
  readonly likelihood: ClassVector;
  readonly draw: (random: Random) => ClassVector;
}

const wrong = (1 - LABORATORY_RIGHT) / (CLASSES.length - 1);
const cell = (is: boolean) => (is ? LABORATORY_RIGHT : wrong);

/** One piece of evidence a sample. Reports of one sample that disagree count as either being right; one that repeats another adds nothing. */
export function laboratoryEvidence(findings: readonly Finding[]): LaboratoryEvidence[] {
  const read = distinctFindings(findings.filter((f) => f.what === "laboratory")).flatMap((finding) => {
    const composition = readComposition(finding.value);
    return composition ? [{ finding, sample: sampleOf(finding), says: classOfComposition(composition) }] : [];
  });
  return [...new Set(read.map((r) => sampleKey(r.sample)))].map((key) => {
    const of = read.filter((r) => sampleKey(r.sample) === key);
    const said = new Set(of.map((r) => r.says));
    const likelihood = CLASSES.map((c) => CLASSES.filter((s) => said.has(s)).reduce((sum, s) => sum + cell(s === c), 0) / said.size);
    return {
      sample: (of[0] as (typeof of)[number]).sample, findings: of.map((r) => r.finding), likelihood,
      draw: (random) => likelihood.map((p) => Math.max(SMALLEST_CELL, drawCell(random, p, strengthBy(LABORATORY_SOURCE.how)))),
    };
  });
}
