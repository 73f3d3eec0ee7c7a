import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { enquiryFileSchema } from "../../lib/enquiry/enquiry-file";
import { BENCH_TESTS } from "../../lib/trade/bench-tests";
import { FIBRE_IDS } from "../../lib/trade/fibres";
import { LIKELIHOODS } from "../../lib/trade/likelihoods";
import { decisionOf, defaultSettings } from "../../lib/triage/assess";
import { believe } from "../../lib/triage/belief";
import { NAMED } from "../../lib/triage/classes";
import { findingsFromAnswers } from "../../lib/triage/findings-from-answers";
import { nextQuestions } from "../../lib/triage/next-question";
import { sideBySide, type BenchRow } from "./measure";

const AS_OF = "2026-03-01T09:00:00Z";
const CASES = path.join(import.meta.dirname, "../cases");
const cases = () => readdirSync(CASES).map((name) => {
  const { rugs, wetNow, reason } = enquiryFileSchema.parse(JSON.parse(readFileSync(path.join(CASES, name), "utf8")));
  const { photos: _photos, benchTests: _tests, laboratory: _laboratory, ...answers } = rugs[0] ?? {};
  return findingsFromAnswers(answers, { wetNow, reason });
});
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** Every likelihood table as one dense matrix: a row an answer, a column a class. */
function floor(): () => number {
  const rows = LIKELIHOODS.flatMap((t) => t.answers.map((_, a) => [...NAMED.map((f) => t.rows[f][a] as number), 1 / t.answers.length]));
  const matrix = Float64Array.from(rows.flat());
  const vector = Float64Array.from(FIBRE_IDS, () => 1 / FIBRE_IDS.length);
  return () => {
    let total = 0;
    for (let at = 0; at < matrix.length; at += vector.length) {
      let sum = 0;
      for (let k = 0; k < vector.length; k += 1) sum += (matrix[at + k] as number) * (vector[k] as number);
      total += sum;
    }
    return total;
  };
}

function withoutInterval(): { ms: number; floorMs: number } {
  const product = floor();
  const each = cases().map((findings) => {
    const again = believe(findings, defaultSettings(), AS_OF).hypothetical;
    return sideBySide(() => again([]), product);
  });
  return { ms: mean(each.map(([ms = NaN]) => ms)), floorMs: mean(each.map(([, f = NaN]) => f)) };
}
const absolute = (work: (findings: ReturnType<typeof cases>[number]) => unknown) => () => ({ ms: mean(cases().map((f) => sideBySide(() => work(f))[0] as number)), floorMs: null });

function nextQuestion(): { ms: number; floorMs: null } {
  const settings = defaultSettings({ benchTests: Object.keys(BENCH_TESTS) });
  const each = cases().map((findings) => {
    const belief = believe(findings, settings, AS_OF);
    const { told, decision } = decisionOf(findings, settings, AS_OF);
    return sideBySide(() => nextQuestions(told, decision, { ...belief, benchTests: settings.benchTests }))[0] as number;
  });
  return { ms: mean(each), floorMs: null };
}

export const rows: BenchRow[] = [
  { name: "belief of one rug, no interval, no words", floor: "a plain matrix–vector product of the likelihood tables", limit: 40, measure: withoutInterval },
  { name: "belief with its 80 % interval and sentences (aim 2 ms)", floor: null, limit: null, measure: absolute((f) => believe(f, defaultSettings(), AS_OF)) },
  { name: "the next question of one rug, every test open (aim 20 ms)", floor: null, limit: null, measure: nextQuestion },
];
