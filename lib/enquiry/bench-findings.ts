import "server-only";
import type { BenchTest } from "../store/database";
import type { Finding, Sample } from "../triage/finding";
import { isTestId, readingsOf, readingsSchema, type Readings } from "./bench-test-schema";
import type { RugFile } from "./enquiry-file";
import { LABORATORY, type Percents } from "./laboratory-schema";
import { isSampleId, SAMPLES } from "./samples";
import { laboratoryReportSchema, type LaboratoryReport } from "./weighings-schema";

type Row = Pick<BenchTest, "id" | "test" | "yarn" | "response" | "withdrawnAt">;

/** What was found on the bench, as triage takes it; `id` tells one test from another. */
export const benchFinding = ({ id, test, of, readings }: { id: string; test: string; of: Sample; readings: Readings }): Finding =>
  ({ what: `test:${test}`, value: readings, strength: "bench", from: `bench:${id}`, of });

/** What a laboratory reported, as triage takes it. */
export const laboratoryFinding = ({ laboratory, percents, of }: { laboratory: string; percents: Percents; of: Sample }): Finding =>
  ({ what: LABORATORY, value: percents as Record<string, number>, strength: "laboratory", from: `laboratory:${laboratory}`, of });

/** The readings of a row as the tables know them today; null where they no longer do. */
export function readingsIn(row: Pick<Row, "test" | "response">): Readings | null {
  const parsed = isTestId(row.test) ? readingsSchema(row.test).safeParse(row.response) : null;
  return parsed?.success ? readingsOf(parsed.data) : null;
}
/** The report of a row; null where it is none. */
export function reportIn(row: Pick<Row, "test" | "response">): LaboratoryReport | null {
  const parsed = row.test === LABORATORY ? laboratoryReportSchema.safeParse(row.response) : null;
  return parsed?.success ? parsed.data : null;
}

function findingOf(row: Row): Finding[] {
  const of = isSampleId(row.yarn) ? SAMPLES[row.yarn].of : null;
  if (row.withdrawnAt !== null || of === null) return [];
  const report = reportIn(row);
  if (report) return [laboratoryFinding({ ...report, of })];
  const readings = readingsIn(row);
  return readings ? [benchFinding({ id: row.id, test: row.test, of, readings })] : [];
}

/** The findings of the tests and reports that stand; what was withdrawn, or is no longer understood, says nothing. */
export const findingsOfTests = (rows: readonly Row[]): Finding[] => rows.flatMap(findingOf);

const WHOLE_PILE: Sample = SAMPLES["pile:whole"].of;

/** The same of a rug in a file, where tests are told apart by their place in it. */
export function findingsOfFile({ benchTests = [], laboratory }: Pick<RugFile, "benchTests" | "laboratory">): Finding[] {
  const tests = benchTests.map(({ test, of = WHOLE_PILE, readings }, at) => benchFinding({ id: String(at + 1), test, of, readings: readingsOf(readings) }));
  const reports = laboratory ? [laboratoryFinding({ laboratory: laboratory.name, percents: laboratory.percents, of: laboratory.of ?? WHOLE_PILE })] : [];
  return [...tests, ...reports];
}
