import type { Finding } from "./finding";

/**
 * The findings about what happened, read once. `has("treatments:bleach")` asks for one answer of one question;
 * `answered` is false where the question was never answered or only with "not sure".
 */
export interface Told {
  has(answer: string): boolean;
  answered(question: string): boolean;
  /** The one answer to a question of one answer; null where not answered. */
  one(question: string): string | null;
  /** The newest finding of a kind, with any value. */
  value(what: string): Finding["value"] | undefined;
}

const UNSURE = "unsure";

export function readTold(findings: readonly Finding[]): Told {
  const answers = new Set<string>();
  const questions = new Map<string, string[]>();
  const values = new Map<string, Finding["value"]>();
  for (const f of findings) {
    values.set(f.what, f.value);
    const given = typeof f.value === "string" ? [f.value] : Array.isArray(f.value) ? (f.value as readonly string[]) : [];
    const sure = given.filter((a) => a !== UNSURE);
    if (sure.length === 0) continue;
    questions.set(f.what, [...(questions.get(f.what) ?? []), ...sure]);
    for (const a of sure) answers.add(`${f.what}:${a}`);
  }
  return {
    has: (answer) => answers.has(answer),
    answered: (question) => questions.has(question),
    one: (question) => questions.get(question)?.[0] ?? null,
    value: (what) => values.get(what),
  };
}

/** Nobody has told what happened, or nobody knows. */
export const knowsNothingOfIncident = (told: Told): boolean =>
  (!told.answered("incidents") || told.has("incidents:unknown")) && !told.answered("liquid") && !told.answered("treatments") && !told.has("reason:after-cleaning");

/** The client says that nothing is wrong, or wants only a name for the rug. */
export function saysNothingIsWrong(told: Told): boolean {
  const trouble =
    (told.answered("incidents") && !told.has("incidents:nothing")) ||
    (told.answered("changes") && !told.has("changes:none")) ||
    (told.answered("treatments") && !told.has("treatments:nothing")) ||
    told.answered("liquid") || told.has("wetNow:wet") || told.has("wetNow:damp");
  if (trouble) return false;
  const says = told.has("incidents:nothing") && (told.has("changes:none") || !told.answered("changes")) && !told.has("reason:routine");
  return says || told.has("reason:what-is-it") || told.has("reason:mis-sold");
}
