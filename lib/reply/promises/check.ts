import type { Assessment } from "../../triage/assessment";
import { beyondAssessment, isTested } from "./against-assessment";
import { excused, saysNotThat, type Catch } from "./excuses";
import { cautionsMissing, type LeftOut } from "./cautions";
import { MUST_SAYS, withoutDeniedTests } from "./must-say";
import { namesOf, tellingOf } from "./naming";
import type { Pattern, Rule, RuleId, Telling } from "./rule";
import { RULES } from "./rules";
import { clausesOf, plainOf, sentencesOf } from "./sentences";
import { liftedByStance } from "./stances";
import { speaksTooSurely, speaksWithCare, surenessOf, tooSure } from "./sureness";
import { ownLines } from "../../words/quoted-lines";
import { foreignIn } from "./unjudged";
import { expression } from "./vocabulary";

/** A sentence that says more than is known; of something left out, `sentence` is empty. */
export interface Overpromise {
  readonly sentence: string; readonly rule: RuleId | "left-out"; readonly why: string; readonly suggestion: string;
  /** A whole sentence that can take the place of the other and passes; absent where nobody can know it for this rug. */
  readonly instead?: string;
}

/** What is known of a rug beside the letter. Without an assessment: words and photos. `inspection`: what a named person who has had it in hand found of it; `isOvertaken`: flood or waste water was told of only after that. */
export interface Known { readonly assessment: Assessment | null; readonly inspection?: { readonly isBeyondRepair: boolean; readonly isOvertaken?: boolean } | null }
export const WORDS_AND_PHOTOS: Known = { assessment: null };
/** What a letter about these rugs is held against: what is known of an only rug, without an inspection that was overtaken; of several, words and photos. */
export function knownOf([only, ...more]: readonly Known[]): Known {
  if (!only || more.length > 0) return WORDS_AND_PHOTOS;
  return only.inspection?.isOvertaken ? { ...only, inspection: null } : only;
}

interface Compiled { readonly rule: Rule; readonly pattern: Pattern; readonly re: () => RegExp }
const ALL: readonly Compiled[] = RULES.flatMap((rule) => rule.patterns.map((pattern) => ({ rule, pattern, re: expression(pattern.catches, "gu") })));

/** What a sentence breaks, as it is told. */
type Broken = Pick<Rule, "id" | "what" | keyof Telling>;

/**
 * The rules that one sentence breaks, in the order of RULES, each once, judged as if only words and photos were known. Of a
 * sentence that breaks none: whether it is surer than it may be all the same.
 */
export function rulesBroken(sentence: string): Broken[] {
  const known = JUDGED.get(sentence);
  if (known) return known;
  if (JUDGED.size >= MOST_JUDGED) JUDGED.clear();
  const broken = judge(sentence);
  JUDGED.set(sentence, broken);
  return broken;
}
/** Sentences judged before: while a letter is written, all but one stay as they were. */
const JUDGED = new Map<string, Broken[]>();
const MOST_JUDGED = 10_000;

function judge(sentence: string): Broken[] {
  const sureness = surenessOf(sentence);
  const plain = plainOf(sentence);
  const careful = speaksWithCare(sureness);
  const held = liftedByStance(plain);
  const caught = caughtIn(plain).filter((c) => (!careful || standsAmongCare(c)) && !held.has(c.rule.id));
  const names = namesOf(caught, plain);
  const broken = RULES.filter((rule) => names.has(rule.id)).map((rule) => ({ id: rule.id, what: rule.what, ...tellingOf(rule, caught) }));
  if (broken.length > 0) return broken;
  return names.has("sureness") || (!held.has("sureness") && speaksTooSurely(sureness)) ? [tooSure(sureness)] : [];
}

/** The patterns that catch a sentence at a place that nothing excuses. */
const caughtIn = (sentence: string): Compiled[] =>
  clausesOf(sentence).flatMap((clause) => ALL.filter((c) => placesIn(clause, c.re()).some((place) => !isExcused(c, { sentence, clause, ...place }))));

/**
 * What no care takes back: what an insurer or a seller must do, advice that harms, however gently it is given (a product that is only named, a hedge softens, and so does
 * care), and what claims by denying ("nobody could tell it from new"), whose denial counts as care.
 */
const standsAmongCare = ({ rule, pattern }: Compiled): boolean =>
  rule.id === "cover" || pattern.despiteCare === true || (rule.id === "harm" && pattern.also?.includes("softened") !== true) || pattern.except?.includes("negated") === true;

/** As `matchAll`, which would make a copy of the expression each time, and compile it anew. */
function placesIn(clause: string, re: RegExp): { start: number; end: number }[] {
  const places: { start: number; end: number }[] = [];
  re.lastIndex = 0;
  for (let m = re.exec(clause); m; m = re.exec(clause)) {
    places.push({ start: m.index, end: m.index + m[0].length });
    if (m[0] === "") re.lastIndex += 1;
  }
  return places;
}

function isExcused({ rule, pattern }: Compiled, found: Catch): boolean {
  if (pattern.except?.includes("negated") && saysNotThat(found.clause.slice(0, found.start))) return true;
  return [...rule.excuses, ...(pattern.also ?? [])].some((e) => !pattern.except?.includes(e) && excused(e, found));
}

/** A rule that what is known has lifted: a tested fibre may be named, a rug found beyond repair given up, work on one that was seen priced. */
function lifted(rule: RuleId, sentence: string, { assessment, inspection }: Known): boolean {
  if (rule === "verdict") return inspection?.isBeyondRepair === true;
  if (rule === "number") return !!inspection && PRICED().test(plainOf(sentence));
  return (rule === "certainty" || rule === "sureness") && assessment !== null && isTested(sentence, assessment);
}
/** An amount of money, and no other figure that an inspection leaves open. */
const PRICED = expression("^(?!.*(?:%|\\b(?:per ?cent|years?|decades?|worth|value[sd]?|insure)\\b)).*\\b(?:AMOUNT|price|cost|charge|fee|quote)");

/** One sentence against everything that is known. */
export function checkSentence(sentence: string, known: Known): Overpromise[] {
  const broken = rulesBroken(sentence).filter((r) => !lifted(r.id, sentence, known)).map(({ id, why, advise, instead }) => ({ sentence, rule: id, why, suggestion: `${advise} “${instead}”`, instead }));
  const beyond = known.assessment ? beyondAssessment(sentence, known.assessment, !!known.inspection).filter((b) => b.rule !== "verdict" || !known.inspection || known.inspection.isBeyondRepair).map((b) => ({ sentence, ...b })) : [];
  return [...broken, ...beyond.filter((b) => !broken.some((o) => o.rule === b.rule))];
}

/** Every sentence of a text in its order, but for lines that repeat somebody else's: all there is to check in a letter that only asks. */
export const checkSentences = (text: string, known: Known): Overpromise[] => [...sentencesOf(ownLines(text)).flatMap((s) => checkSentence(s, known)), ...inOtherLanguages(text)];

/** What stands there in another language: nothing of it was judged, so it has not passed. */
const inOtherLanguages = (text: string): Overpromise[] =>
  foreignIn(text).map((sentence) => ({ sentence, rule: "left-out", why: "This is not in English, and the check knows English only: nobody has held it to the assessment.", suggestion: "Have somebody who reads it look at it, and say so as the reason, or write it in English." }));

/**
 * A whole letter, sentence by sentence, and then what it leaves out. `before`: letters of ours that the client has had, whose cautions
 * still hold. Pure: the page, the server and the command line call this.
 */
export function checkLetter(text: string, known: Known, before: readonly string[] = []): Overpromise[] {
  const plain = plainOf(ownLines(text));
  const said = withoutDeniedTests(plain);
  const missing = MUST_SAYS.filter((m) => m.when(plain) && !m.needs.test(said) && !m.unless?.test(plain));
  const cautions = known.assessment ? cautionsMissing(plain, known.assessment, before.map((letter) => plainOf(ownLines(letter)))) : [];
  const leftOut = ({ why, suggestion }: LeftOut): Overpromise => ({ sentence: "", rule: "left-out", why, suggestion });
  return [...checkSentences(text, known), ...[...missing, ...cautions].map(leftOut)];
}
