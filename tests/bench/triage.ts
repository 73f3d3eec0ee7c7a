import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { enquiryFileSchema } from "../../lib/enquiry/enquiry-file";
import { FIBRE_IDS } from "../../lib/trade/fibres";
import { DAMAGE_IDS } from "../../lib/trade/damage";
import { improvementCell, ROW_IDS } from "../../lib/trade/improvement";
import { LIKELIHOODS } from "../../lib/trade/likelihoods";
import { assess, defaultSettings, prospectsOf } from "../../lib/triage/assess";
import { believe } from "../../lib/triage/belief";
import { NAMED } from "../../lib/triage/classes";
import { findingsFromAnswers } from "../../lib/triage/findings-from-answers";
import { chanceAtMost, quantilePoints } from "../../lib/triage/improvement-quantiles";
import { KIND_OF, KINDS } from "../../lib/triage/kinds";
import { mechanismPriors } from "../../lib/triage/mechanism-priors";
import { chanceOfFailing, improvementRange } from "../../lib/triage/prospects";
import { readTold } from "../../lib/triage/told";
import { whatHappened } from "../../lib/triage/what-happened";
import { sideBySide, type BenchRow } from "./measure";

const CASES = path.join(import.meta.dirname, "../cases");
const AS_OF = "2026-03-01T09:00:00Z";

/** The findings of the case files. */
const cases = () => readdirSync(CASES).map((name) => {
  const { rugs, wetNow, reason } = enquiryFileSchema.parse(JSON.parse(readFileSync(path.join(CASES, name), "utf8")));
  const { photos: _, ...answers } = rugs[0] ?? {};
  return findingsFromAnswers(answers, { wetNow, reason });
});

/**
 * The tables that one case is answered from, as one dense matrix with a column a fibre: a row for every answer of every
 * likelihood table, every set of mechanisms that can hold (components multiplied out to no more than they are: the sum of
 * their sets), every mechanism, and every row of improvement at every quarter of a per cent that the three percentiles look at.
 */
function denseOf(findings: ReturnType<typeof cases>[number]): Float64Array {
  const answers = LIKELIHOODS.flatMap((t) => t.answers.map((_, a) => [...NAMED.map((f) => t.rows[f][a] as number), 1 / t.answers.length]));
  const { components } = whatHappened(readTold(findings));
  const sets = components.flatMap((c) => Array.from(c.masks, (_, i) => FIBRE_IDS.map((f) => c.chances[i * KINDS.length + KIND_OF[f]] as number)));
  const priors = DAMAGE_IDS.map((m) => FIBRE_IDS.map((f) => mechanismPriors(readTold(findings), f)[m]));
  const looks = Array.from({ length: LOOKS }, (_, step) => ROW_IDS.map((r) => FIBRE_IDS.map((f) => chanceAtMost(quantilePoints(improvementCell(r, f)), (100 * step) / LOOKS)))).flat();
  return Float64Array.from([...answers, ...sets, ...priors, ...looks].flat());
}
/** Three percentiles of at most nine halvings each, and the chance of failing. */
const LOOKS = 28;

function multiply(matrix: Float64Array, vector: Float64Array, out: Float64Array): void {
  const width = vector.length;
  for (let i = 0, at = 0; at < matrix.length; i += 1) {
    let sum = 0;
    for (let k = 0; k < width; k += 1, at += 1) sum += (matrix[at] as number) * (vector[k] as number);
    out[i] = sum;
  }
}

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** Each case is timed by itself and the mean of the cases taken. */
function beliefAndProspects(): { ms: number; floorMs: number } {
  const settings = defaultSettings();
  const vector = Float64Array.from(FIBRE_IDS, () => 1 / FIBRE_IDS.length);
  const each = cases().map((findings) => {
    const again = believe(findings, settings, AS_OF).hypothetical;
    const matrix = denseOf(findings);
    const out = new Float64Array(matrix.length / vector.length);
    return sideBySide(() => {
      const fibres = again([]);
      const { rows } = prospectsOf(findings);
      return [improvementRange(fibres, rows), chanceOfFailing(fibres, rows)];
    }, () => multiply(matrix, vector, out));
  });
  return { ms: mean(each.map(([ms = NaN]) => ms)), floorMs: mean(each.map(([, floor = NaN]) => floor)) };
}

function wholeAssessment(): { ms: number; floorMs: null } {
  const settings = defaultSettings();
  return { ms: mean(cases().map((f) => sideBySide(() => assess(f, settings, AS_OF))[0] as number)), floorMs: null };
}

export const rows: BenchRow[] = [
  { name: "belief and prospects of one rug, no interval, no words", floor: "a plain matrix–vector product of the same tables: likelihoods, mechanisms and their sets, improvement", limit: 20, measure: beliefAndProspects },
  { name: "a whole assessment of one rug, with interval and words", floor: null, limit: null, measure: wholeAssessment },
];
