import type { Finding, FindingValue, Sample } from "./finding";

/** A test or report without a sample speaks for the pile as a whole. */
export const WHOLE_PILE: Sample = { part: "pile", yarn: "whole" };
export const sampleOf = (finding: Finding): Sample => finding.of ?? WHOLE_PILE;
export const sampleKey = ({ part, yarn }: Sample): string => `${part}:${yarn}`;

const inOrder = (value: FindingValue): string =>
  typeof value === "object" && !Array.isArray(value) ? JSON.stringify(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) : JSON.stringify(value);
/** Equal for equal findings, whatever the order of their fields; two of different samples are two. */
export const findingKey = (f: Finding): string => [f.what, f.strength, f.from, sampleKey(sampleOf(f)), inOrder(f.value)].join("\u0000");

/** Each finding once, whatever the order it came in. */
export const distinctFindings = (findings: readonly Finding[]): readonly Finding[] =>
  [...new Map(findings.map((f) => [findingKey(f), f]))].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, f]) => f);
