import { ASKS_BACK, BUT_THIS, CHANGE, CORRECTED, DENIED_BEFORE, INSTEAD_OF, INTO, IT_DRIED, IT_IS, IT_IS_NOT, IT_IS_NOW, NO_CORRECTION, NOT_OF_RUG, NOT_YET, OF_WHICH, OWNED_TO, POLITE, POLITE_END, PUTS_RIGHT, SAID_BEFORE, TOGETHER_CHARS, type CorrectedId, type CorrectedRow } from "../trade/correcting-words";
import { QUESTIONS, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../trade/questions";
import { NEW_CLAUSE, OF_ANOTHER_RUG } from "../trade/story-words";
import { inPlainLetters, isFound, pattern, sentencesOf, tellsUntil } from "./sentences";

/** What was answered of a rug, and of its enquiry as a whole. */
export type Given = RugAnswers & EnquiryAnswers;

/** A name or a figure in a sentence. `is`: which answer it names. */
interface Named { readonly is: string; readonly from: number; readonly to: number }
interface Compiled extends Pick<CorrectedRow, "of" | "isByDenial" | "isByNow" | "isGivenAgain"> { readonly namedIn: (plain: string) => Named[]; readonly beside: RegExp | null }

const placed = (is: string, { index, 0: text }: RegExpExecArray): Named => ({ is, from: index, to: index + text.length });
/** Thousands are grouped by a mark and three figures; any other mark is the decimal one. */
const valueOf = (text: string): number => {
  const bare = text.replace(/[.,]+$/u, "");
  return Number(/^\d{1,3}(?:[.,]\d{3})+$/u.test(bare) ? bare.replace(/[.,]/gu, "") : bare.replace(",", "."));
};

function compile({ names = [], figures, beside, ...row }: CorrectedRow): Compiled {
  const known = names.map((group, n) => ({ is: String(n), words: pattern(group) }));
  const all = (plain: string): Named[] => figures ? [...plain.matchAll(figures)].map((m) => placed(String(valueOf(m[0])), m)) : known.flatMap(({ is, words }) => [...plain.matchAll(words)].map((m) => placed(is, m)));
  // "Art silk" names no silk.
  const namedIn = (plain: string) => { const found = all(plain); return found.filter((a) => !found.some((b) => b !== a && b.from <= a.from && b.to >= a.to && b.to - b.from > a.to - a.from)).sort((a, b) => a.from - b.from); };
  return { ...row, namedIn, beside: beside ? pattern(beside) : null };
}
const ROWS = CORRECTED.map(compile);
const [NO, OTHER_RUG] = [pattern(NO_CORRECTION), pattern(OF_ANOTHER_RUG)];

/** What was answered, in the words it was shown in; null where nothing was. */
function toldOf(id: CorrectedId, given: Given): string | null {
  if (id === "label") return given.labelText ?? null;
  if (id === "size") return given.widthCm || given.lengthCm ? "" : null;
  if (id === "price" || id === "boughtYear") return given[id]?.toString() ?? null;
  const value = given[id];
  if (value === undefined) return null;
  const answers: Readonly<Record<string, { label: string }>> = QUESTIONS[id satisfies QuestionId].answers;
  return [value].flat().map((a) => answers[a]?.label ?? "").join("; ");
}

/** A sentence, of which only what it tells counts. */
interface Told { readonly plain: string; /** A slip was owned to here or just before. */ readonly isOwned: boolean }
interface Sought { readonly row: Compiled; /** Whether it is not what was answered. */ readonly isNew: (is: string) => boolean }

/** Whether the figures or names of a sentence are of this answer. */
const isAbout = ({ row: { namedIn, beside, isGivenAgain }, isNew }: Sought, plain: string): boolean =>
  beside === null || isFound(beside, plain) || (isGivenAgain !== true && namedIn(plain).some(({ is }) => !isNew(is)));

/** Whether one is named as right in the place of another. */
function isSetAgainst({ row, isNew }: Sought, plain: string): boolean {
  const named = row.namedIn(plain);
  return named.some((first, n) => {
    const second = named[n + 1];
    if (!second || second.is === first.is || second.from - first.to > TOGETHER_CHARS) return false;
    const [before, between] = [plain.slice(0, first.from), plain.slice(first.to, second.from)];
    if (INSTEAD_OF.test(between)) return isNew(first.is);
    return isNew(second.is) && ((DENIED_BEFORE.test(before) && BUT_THIS.test(between)) || (CHANGE.test(before) && INTO.test(between)));
  });
}

/** Whether one is named that was not answered, where somebody owns to a slip, or right after what they said before. */
function isPutRight({ row, isNew }: Sought, { plain, isOwned }: Told, isSaid: boolean): boolean {
  const marks = [...plain.matchAll(PUTS_RIGHT)].map((m) => m.index + m[0].length);
  return row.namedIn(plain).some(({ is, from }) => {
    const before = plain.slice(0, from);
    if (!isNew(is) || DENIED_BEFORE.test(before)) return false;
    return isOwned || (isSaid && IT_IS.test(before)) || marks.some((at) => from >= at && from - at <= TOGETHER_CHARS);
  });
}

/** Whether what was answered is said to be what they said before: "I told you coffee". */
const isSaidIn = ({ row, isNew }: Sought, plain: string): boolean => row.namedIn(plain).some(({ is, from }) => !isNew(is) && SAID_BEFORE.test(plain.slice(0, from)));
/** Whether "it is not" what was answered. */
const isDeniedIn = ({ row, isNew }: Sought, plain: string): boolean => row.isByDenial !== undefined && row.namedIn(plain).some(({ is, from, to }) => !isNew(is) && IT_IS_NOT.test(plain.slice(0, from)) && !OF_WHICH.test(plain.slice(to)));

/** Whether it is said to be by now what was not answered, and not what was answered too. */
function isOtherwiseNow({ row, isNew }: Sought, plain: string): boolean {
  if (row.isByNow !== true) return false;
  const now = row.namedIn(plain).filter(({ from, to }) => {
    const clause = plain.slice(0, from).split(NEW_CLAUSE).at(-1) ?? "";
    const isSaid = IT_IS_NOW.some((re) => re.test(clause)) || IT_DRIED.test(clause + plain.slice(from, to));
    return isSaid && !NOT_YET.test(clause) && !NOT_OF_RUG.test(plain.slice(to));
  });
  return now.length > 0 && now.every(({ is }) => isNew(is));
}

function isCorrectedBy(sought: Sought, sentences: readonly Told[]): boolean {
  const said = sentences.map(({ plain }) => isSaidIn(sought, plain));
  return sentences.some((sentence, n) => {
    const { plain } = sentence;
    const isSaid = said[n] === true || said[n - 1] === true;
    if (isDeniedIn(sought, plain) || isOtherwiseNow(sought, plain)) return true;
    return sought.row.isByDenial !== "only" && (isAbout(sought, plain) && (isSetAgainst(sought, plain) || isPutRight(sought, sentence, isSaid)));
  });
}

/** What a sentence tells, without what it asks; nothing of what is only wished or supposed, or said of another rug or of us. */
function toldIn(sentence: string): string {
  const plain = sentence.replace(POLITE, "i ").replace(POLITE_END, "");
  if (ASKS_BACK.test(plain) || isFound(NO, plain) || isFound(OTHER_RUG, plain)) return "";
  return plain.slice(0, tellsUntil(plain));
}

/**
 * Which answers a message seems to correct, in the order of the table: it sets one name or figure against another, owns to a slip, or denies
 * what was answered, or says how it is by now. Only of what was answered, and only where it says something else. Nothing is judged by it; a person reads the message.
 */
export function correctedIn(text: string, given: Given): CorrectedId[] {
  // A decimal point ends no sentence.
  const sentences = sentencesOf(text.replace(/(?<=\d)\.(?=\d)/gu, ",")).map(({ plain }) => toldIn(plain));
  const owned = sentences.map((plain) => OWNED_TO.some((re) => re.test(plain)));
  const told = sentences.map((plain, n): Told => ({ plain, isOwned: owned[n] === true || owned[n - 1] === true }));
  return ROWS.flatMap((row) => {
    const of = row.of.find((id) => toldOf(id, given) !== null);
    if (of === undefined) return [];
    const named = row.isGivenAgain ? [] : row.namedIn(inPlainLetters(toldOf(of, given) ?? "")).map(({ is }) => is);
    const answered = row.isByNow ? named.slice(0, 1) : named;
    return isCorrectedBy({ row, isNew: (is) => !answered.includes(is) }, told) ? [of] : [];
  });
}
