import { PHOTO_KINDS, QUESTIONS, type PhotoKind } from "./questions";
import { CONDITIONS } from "./urgency";

const SIGN_WORDS: Readonly<Record<string, string>> = {
  alkaline: "A test paper shows something alkaline", acid: "A test paper shows something acid", "glows-yellow": "It glows yellow-green under the lamp",
  "glows-blue": "It glows blue-white under the lamp", "dye-moved": "A colour moves in the dye test", "still-wet": "The meter shows that it is still wet",
};
export const signInWords = (sign: string): string => SIGN_WORDS[sign] ?? sign;

const NAMED: Readonly<Record<string, string>> = {
  "recent:yes": "in the last two days", "spilt:yes": "something wet got on it", "fresh-wash:yes": "cleaned within the week", "washed:yes": "cleaned wet, or complained of after cleaning",
};

/** An answer to a question, or a named condition over answers, as a person reads it; `question:answer`. */
export function answerInWords(answer: string): string {
  if (Object.hasOwn(CONDITIONS, answer)) return NAMED[answer] ?? answer;
  const at = answer.indexOf(":");
  const [question, id] = [answer.slice(0, at), answer.slice(at + 1)];
  if (question === "sign") return signInWords(id);
  const row = Object.hasOwn(QUESTIONS, question) ? (QUESTIONS as Readonly<Record<string, { answers: Readonly<Record<string, { label: string }>> }>>)[question] : undefined;
  return row?.answers[id]?.label ?? answer;
}

/** What a finding, question or photo is called in a table; `label` and `photo:<kind>` are findings too. */
export function findingInWords(what: string): string {
  if (Object.hasOwn(QUESTIONS, what)) return QUESTIONS[what as keyof typeof QUESTIONS].ask;
  if (what.startsWith("photo:")) return `Photo: ${PHOTO_KINDS[what.slice("photo:".length) as PhotoKind].ask.toLowerCase()}`;
  return what === "label" ? "The label" : what;
}
