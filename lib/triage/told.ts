import { STRENGTHS } from "../trade/evidence-caps";
import type { Finding } from "./finding";
import { signsOf, type Signs } from "./signs";

type ValueRecord = Readonly<Record<string, string | number | boolean | null>>;

/**
 * The findings about what happened, read once. `has("treatments:bleach")` asks for one answer of one question;
 * `answered` is false where the question was never answered or only with "not sure". Order and doubles change nothing.
 */
export interface Told {
  /** An answer, `question:answer`, or a sign that a test of a place gave, `sign:still-wet`. */
  has(answer: string): boolean;
  answered(question: string): boolean;
  /** The one answer to a question of one answer, by the strongest finding; null where not answered. */
  one(question: string): string | null;
  /** The value of the strongest finding of a kind; of equals the first by its text. */
  value(what: string): Finding["value"] | undefined;
  /** How strong the strongest finding of a kind is; null where there is none. */
  strength(what: string): Finding["strength"] | null;
  /** What tests of places show. */
  readonly signs: Signs;
}

const UNSURE = "unsure";
const strengthOf = (f: Finding): number => STRENGTHS.indexOf(f.strength);

/** Whether a finding speaks rather than another of its kind. Any fixed rule will do, so that order never decides. */
function outranks(f: Finding, g: Finding): boolean {
  if (f.strength !== g.strength) return strengthOf(f) > strengthOf(g);
  return JSON.stringify(f.value) < JSON.stringify(g.value);
}

/** An answer, or several, that says something; "not sure" says nothing. */
const sureAnswers = (value: Finding["value"]): readonly string[] =>
  (typeof value === "string" ? [value] : Array.isArray(value) ? (value as readonly string[]) : []).filter((a) => a !== UNSURE);

const isRecord = (value: Finding["value"]): value is ValueRecord => typeof value === "object" && !Array.isArray(value);

export function readTold(findings: readonly Finding[]): Told {
  const answers = new Set<string>();
  const questions = new Map<string, Finding>();
  const values = new Map<string, Finding>();
  const tests: { what: string; value: ValueRecord }[] = [];
  for (const f of findings) {
    const before = values.get(f.what);
    if (!before || outranks(f, before)) values.set(f.what, f);
    if (f.what.startsWith("test:") && isRecord(f.value)) tests.push({ what: f.what, value: f.value });
    const sure = sureAnswers(f.value);
    if (sure.length === 0) continue;
    const answered = questions.get(f.what);
    if (!answered || outranks(f, answered)) questions.set(f.what, f);
    for (const a of sure) answers.add(`${f.what}:${a}`);
  }
  const signs = signsOf(tests);
  for (const sign of signs.shown) answers.add(`sign:${sign}`);
  return {
    signs,
    has: (answer) => answers.has(answer),
    answered: (question) => questions.has(question),
    one: (question) => { const f = questions.get(question); return f ? (sureAnswers(f.value)[0] ?? null) : null; },
    value: (what) => values.get(what)?.value,
    strength: (what) => values.get(what)?.strength ?? null,
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
    told.answered("liquid") || told.has("wetNow:wet") || told.has("wetNow:damp") || told.has("sign:still-wet");
  if (trouble) return false;
  const says = told.has("incidents:nothing") && (told.has("changes:none") || !told.answered("changes")) && !told.has("reason:routine");
  return says || told.has("reason:what-is-it") || told.has("reason:mis-sold");
}
