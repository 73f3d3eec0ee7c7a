import type { Assessment } from "../../triage/assessment";
import { beyondAssessment, isTested } from "./against-assessment";
import { excused, saysNotThat } from "./excuses";
import { cautionsMissing, MUST_SAYS, type MustSay } from "./must-say";
import type { Pattern, Rule, RuleId } from "./rule";
import { RULES } from "./rules";
import { clausesOf, plainOf, sentencesOf } from "./sentences";
import { compiled } from "./vocabulary";

/** A sentence that says more than is known; of something left out, `sentence` is empty. */
export interface Overpromise { readonly sentence: string; readonly rule: RuleId | "left-out"; readonly why: string; readonly suggestion: string }

/** What is known beside the letter. Without an assessment: words and photos. `inspected`: a named person has seen the rug. */
export interface Known { readonly assessment: Assessment | null; readonly inspected: boolean }
export const WORDS_AND_PHOTOS: Known = { assessment: null, inspected: false };
/** What a letter about these rugs is held against: the assessment of an only rug; of several, words and photos. */
export const knownOf = ([only, ...more]: readonly (Assessment | null)[]): Known => ({ assessment: more.length === 0 ? (only ?? null) : null, inspected: false });

interface Compiled { readonly rule: Rule; readonly pattern: Pattern; readonly re: RegExp }
const ALL: readonly Compiled[] = RULES.flatMap((rule) => rule.patterns.map((pattern) => ({ rule, pattern, re: compiled(pattern.catches) })));

/** The rules that one sentence breaks, in the order of RULES, each once, judged as if only words and photos were known. */
export function rulesBroken(sentence: string): Rule[] {
  const clauses = clausesOf(plainOf(sentence));
  return RULES.filter((rule) => ALL.some((c) => c.rule === rule && clauses.some((clause) => catches(c, clause))));
}

function catches({ rule, pattern, re }: Compiled, clause: string): boolean {
  const found = re.exec(clause);
  if (!found) return false;
  const end = found.index + found[0].length;
  if (pattern.except?.includes("negated") && saysNotThat(clause.slice(0, found.index))) return false;
  const excuses = [...rule.excuses, ...(pattern.also ?? [])].filter((e) => !pattern.except?.includes(e));
  return !excuses.some((e) => excused(e, clause, end));
}

/** A rule that what is known has lifted: a tested fibre may be named, an inspected rug given up. */
const lifted = (rule: RuleId, sentence: string, { assessment, inspected }: Known): boolean =>
  (rule === "certainty" && assessment !== null && isTested(sentence, assessment)) || (rule === "verdict" && inspected);

/** One sentence against everything that is known. */
export function checkSentence(sentence: string, known: Known): Overpromise[] {
  const broken = rulesBroken(sentence).filter((r) => !lifted(r.id, sentence, known)).map((r) => ({ sentence, rule: r.id, why: r.why, suggestion: r.suggest }));
  const beyond = known.assessment ? beyondAssessment(sentence, known.assessment).map((b) => ({ sentence, ...b })) : [];
  return [...broken, ...beyond.filter((b) => !broken.some((o) => o.rule === b.rule))];
}

/** Every sentence of a text in its order: all there is to check in a letter that only asks. */
export const checkSentences = (text: string, known: Known): Overpromise[] => sentencesOf(text).flatMap((s) => checkSentence(s, known));

/** A whole letter, sentence by sentence, and then what it leaves out. Pure: the page, the server and the command line call this. */
export function checkLetter(text: string, known: Known): Overpromise[] {
  const plain = plainOf(text);
  const missing = MUST_SAYS.filter((m) => m.when.test(plain) && !m.needs.test(plain) && !m.unless?.test(plain));
  const cautions = known.assessment ? cautionsMissing(plain, known.assessment) : [];
  const leftOut = ({ why, suggestion }: MustSay): Overpromise => ({ sentence: "", rule: "left-out", why, suggestion });
  return [...checkSentences(text, known), ...[...missing, ...cautions].map(leftOut)];
}
