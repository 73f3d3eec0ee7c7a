import { isQuotedLine } from "../../words/quoted-lines";
import { headAt, saysWho, withoutMarks } from "./quote-heads";
import { marked, toldApart, type Line } from "./told-apart";

/** A letter's own words, each answer below the lines that it answers, which keep their marks; and all that it repeats of earlier letters, which is folded away. Where a letter of ours was known in it, every line of that is marked. */
export interface Folded { readonly own: string; readonly quoted: string }

/** What some telephones put below all else: it answers nothing. */
const SENT_FROM = /^(?:Sent from my |Get Outlook for |Gesendet von meinem |Von meinem .{2,40} gesendet|Envoyé de mon |Enviado desde mi |Inviato da |Verzonden vanaf mijn )/u;
/** How letters are closed. Common practice, no published source, in the languages our clients write in. */
const CLOSES = new RegExp(`^(?:${[
  "(?:with )?(?:kind(?:est)?|warm(?:est)?|best) (?:regards|wishes)", "yours (?:sincerely|faithfully|truly)", "sincerely",
  "mit (?:freundlichen|besten|herzlichen) gr(?:ü|ue)(?:ß|ss)en", "(?:freundliche|beste|viele|herzliche|liebe) gr(?:ü|ue)(?:ß|ss)e", "(?:bien )?cordialement", "bien à vous", "un cordial saludo", "saludos(?: cordiales)?", "atentamente",
  "(?:cordiali|distinti) saluti", "(?:met )?(?:vriendelijke|hartelijke) groet(?:en)?", "z poważaniem", "pozdrawiam", "(?:com os melhores )?cumprimentos", "atenciosamente",
].join("|")})[,.!]?$`, "iu");
/** So many lines are kept of a passage that somebody answers. *elicited* */
const MOST_KEPT_LINES = 4;

/**
 * Parts a letter's own words from what it repeats. A letter that repeats first and answers below, or answers line by line, keeps the lines just
 * above each answer. `ours`: the letters of ours that it may repeat, as they were sent; what is written between their lines is then its
 * own, marked or not. null where none are known: what is not told apart then stays folded.
 */
export function foldQuoted(text: string, ours: string | null): Folded {
  const lines = text.replace(/\r\n?/gu, "\n").split("\n");
  const repeats = repeatedIn(lines);
  const told = toldApart(lines.map((line, i) => ({ text: line, repeats: repeats[i] === true })), ours);
  const folded = told.lines.filter((line) => line.repeats).map((line) => (told.isKnown ? marked(line.text) : line.text));
  return { own: tidy(withWhatIsAnswered(told.lines).join("\n")), quoted: tidy(folded.join("\n")) };
}

/** Which lines repeat: those that are marked, and what a program puts over them. Where none below such a head is marked, all of it repeats. */
function repeatedIn(lines: readonly string[]): boolean[] {
  const repeats = lines.map(isQuotedLine);
  const lastMarked = repeats.lastIndexOf(true);
  for (let at = 0; at < lines.length; at++) {
    const length = repeats[at] ? 0 : headAt(lines, at);
    if (length > 0) repeats.fill(true, at, lastMarked < at ? undefined : at + length);
  }
  return repeats;
}

/** Their own lines, and before each passage of them the end of what they repeat just above it. */
function withWhatIsAnswered(lines: readonly Line[]): string[] {
  const kept: string[] = [];
  let above: string[] = [];
  lines.forEach(({ text: line, repeats }) => {
    if (repeats) return void above.push(line);
    if (line.trim() === "") above.push("");
    else {
      kept.push(...(SENT_FROM.test(line.trim()) ? [] : lastPassage(above)));
      above = [];
    }
    kept.push(line);
  });
  return kept;
}

/** The last marked lines up to an empty one, without what closes a letter, a signature (after "--", RFC 3676, section 4.3) and who wrote them; nothing where none are marked. */
function lastPassage(above: readonly string[]): string[] {
  const signature = above.findIndex((line) => isQuotedLine(line) && (withoutMarks(line) === "--" || CLOSES.test(withoutMarks(line))));
  const lines = above.slice(0, signature < 0 ? undefined : signature);
  const end = lines.findLastIndex((line) => withoutMarks(line) !== "");
  const begin = lines.slice(0, end + 1).findLastIndex((line) => withoutMarks(line) === "") + 1;
  const passage = lines.slice(begin, end + 1).filter((line) => isQuotedLine(line) && !saysWho(withoutMarks(line)));
  return passage.length > 0 ? ["", ...passage.slice(-MOST_KEPT_LINES).map((line) => line.trim()), ""] : [];
}

/** Whether something was folded that nobody could tell from their own words. */
export const hidesPerhaps = (quoted: string): boolean => quoted.split("\n").some((line) => line.trim() !== "" && !isQuotedLine(line));

const tidy = (text: string) => text.replace(/\n{3,}/gu, "\n\n").trim();
