import "server-only";
import type { BenchTest } from "../store/database";
import type { Reading } from "../trade/bench-tests";
import { percent } from "../reply/phrases";
import type { Assessment } from "../triage/assessment";
import { wordsIn, type Words } from "../words/words";
import { readingsIn, reportIn } from "./bench-findings";
import { isTestId, testRow, type Readings } from "./bench-test-schema";
import { LABORATORY, REPORTED_FIBRES } from "./laboratory-schema";
import { isSampleId, SAMPLES } from "./samples";
import type { BenchTestView } from "./views";
import type { LaboratoryReport } from "./weighings-schema";

type NameOf = (staffId: string | null) => string;

const DESK = wordsIn("en-GB");
const sayReading = (key: string, reading: Reading, value: string | number, words: Words): string => {
  if (reading.kind === "choice") return reading.answers[value] ? words.table(`test.${key}.${value}`) : String(value);
  return reading.kind === "number" && reading.unit ? `${value} ${reading.unit}` : String(value);
};

/** What was read, in the words of the form, in its order. `words`: of the answers; what was asked is the desk's. */
export function sayReadings(test: string, readings: Readings | null, words = DESK): BenchTestView["readings"] {
  if (!readings || !isTestId(test)) return [];
  return Object.entries(testRow(test).readings).flatMap(([id, reading]) => {
    const value = readings[id];
    return value === undefined ? [] : [{ ask: reading.ask, says: sayReading(`${test}.${id}`, reading, value, words) }];
  });
}

export function sayReport({ laboratory, reportedOn, reference, percents, weighings }: LaboratoryReport, words = DESK): BenchTestView["readings"] {
  const found = REPORTED_FIBRES.map((f) => [f, percents[f] ?? 0] as const).filter(([, p]) => p > 0).sort(([, a], [, b]) => b - a);
  return [
    { ask: "Laboratory", says: laboratory },
    { ask: "Dated", says: reportedOn },
    ...(reference ? [{ ask: "Reference", says: reference }] : []),
    { ask: weighings ? "From its weighings, with agreed allowances" : "Found, by mass", says: found.map(([fibre, p]) => `${percent(p)} ${words.table(`fibre.${fibre}.name`)}`).join(", ") },
  ];
}

const inOrder = (value: object): string => JSON.stringify(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));

/** The sentences that the assessment has for what this row found. */
function meaningOf(row: BenchTest, report: LaboratoryReport | null, assessment: Assessment | null): string[] {
  const isIts = report
    ? (f: Assessment["findings"][number]) => f.what === LABORATORY && typeof f.value === "object" && inOrder(f.value) === inOrder(report.percents)
    : (f: Assessment["findings"][number]) => f.from === `bench:${row.id}`;
  return (assessment?.findings ?? []).filter(isIts).map((f) => f.staff);
}

/** A test or a report as the enquiry's page shows it. */
export function benchTestView(row: BenchTest, assessment: Assessment | null, nameOf: NameOf): BenchTestView {
  const report = reportIn(row);
  const { withdrawnAt, withdrawnById, withdrawnWhy } = row;
  return {
    id: row.id,
    name: row.test === LABORATORY ? "laboratory report" : isTestId(row.test) ? testRow(row.test).name : row.test,
    of: isSampleId(row.yarn) ? SAMPLES[row.yarn].name : row.yarn,
    by: nameOf(row.staffId),
    at: row.at.toISOString(),
    readings: report ? sayReport(report) : sayReadings(row.test, readingsIn(row)),
    says: withdrawnAt ? [] : meaningOf(row, report, assessment),
    withdrawn: withdrawnAt && { by: nameOf(withdrawnById), at: withdrawnAt.toISOString(), why: withdrawnWhy ?? "" },
  };
}
