import { BENCH_TESTS, type BenchTestRow, type Reading } from "../trade/bench-tests";
import { fibreName } from "../trade/fibres";
import { sampleOf } from "./distinct-findings";
import type { Finding, Sample } from "./finding";
import { readComposition } from "./laboratory-evidence";

const placeOf = ({ part, yarn }: Sample): string => (part !== "pile" ? `the ${part}` : yarn === "whole" ? "the pile" : `the ${yarn} of the pile`);

const rowOf = (what: string): BenchTestRow | null => {
  const id = what.startsWith("test:") ? what.slice("test:".length) : "";
  return Object.hasOwn(BENCH_TESTS, id) ? BENCH_TESTS[id as keyof typeof BENCH_TESTS] : null;
};

function sayReading(reading: Reading, given: unknown): string | null {
  if (reading.kind === "choice") return typeof given === "string" && Object.hasOwn(reading.answers, given) ? `“${reading.answers[given]?.label}”` : null;
  if (reading.kind === "number") return typeof given === "number" && Number.isFinite(given) ? `${given}${reading.unit ? ` ${reading.unit}` : ""}` : null;
  return typeof given === "string" ? `“${given}”` : null;
}

/**
 * A test or a laboratory's report as a clause for staff and one for a client, without capital or full stop; null where the
 * finding is neither. A client hears that it was tested, not with what, nor any pH.
 */
export function tellTest(finding: Finding): { readonly staff: string; readonly client: string } | null {
  const place = placeOf(sampleOf(finding));
  if (finding.what === "laboratory") {
    const found = [...(readComposition(finding.value) ?? [])].filter(([, p]) => p > 0).sort(([, a], [, b]) => b - a).map(([fibre, p]) => `${p} % ${fibreName(fibre)}`).join(", ");
    const says = found === "" ? `a laboratory’s report on ${place} gives no composition that adds up` : `a laboratory found ${place} to be ${found}`;
    return { staff: says, client: says };
  }
  const row = rowOf(finding.what);
  if (row === null || typeof finding.value !== "object" || Array.isArray(finding.value)) return null;
  const given = finding.value as Readonly<Record<string, unknown>>;
  const said = Object.entries(row.readings).flatMap(([id, reading]) => sayReading(reading, given[id]) ?? []);
  const name = `the test “${row.name}”`;
  return {
    staff: row.speaksFor === "yarn" ? `${name} of ${place} gave ${said.join(", ")}` : `${name} gave ${said.join(", ")}`,
    client: row.speaksFor === "yarn" ? `we tested a few fibres of ${place}` : "we made a test on the rug in the workshop",
  };
}
