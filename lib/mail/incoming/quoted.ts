import { isQuotedLine } from "../../words/quoted-lines";

/** A letter's own words, each answer below the lines that it answers, which keep their marks; and all that it repeats of earlier letters, which is folded away. */
export interface Folded { readonly own: string; readonly quoted: string }

/**
 * Where a repetition begins: a line of ours is marked ">", or a program says who wrote what. Common practice, no
 * published source, in the languages our clients write in.
 */
const SAYS_WHO = [
  /^On .{4,200} wrote:$/u, /^Am .{4,200} schrieb .{0,200}:$/u, /^Le .{4,200} a écrit\s?:$/u, /^El .{4,200} escribió:$/u, /^Il .{4,200} ha scritto:$/u, /^Op .{4,200} schreef .{0,200}:$/u,
  /^-{2,}\s?(?:Original Message|Ursprüngliche Nachricht|Message d'origine|Mensaje original|Messaggio originale|Forwarded message)\s?-{2,}$/iu,
];
/** A head of lines that other programs put over a repetition: From, Sent, To, Subject. */
const HEAD = /^(?:From|Von|De|Da|Van):\s.+$/u;
const HEAD_NEXT = /^(?:Sent|Date|Gesendet|Datum|Envoyé|Enviado|Inviato|Verzonden|To|An|À|Para|A|Aan):\s/u;

/** What some telephones put below all else: it answers nothing. */
const SENT_FROM = /^(?:Sent from my |Get Outlook for |Gesendet von meinem |Von meinem .{2,40} gesendet|Envoyé de mon |Enviado desde mi |Inviato da |Verzonden vanaf mijn )/u;
/** So many lines are kept of a passage that somebody answers. *elicited* */
const MOST_KEPT_LINES = 4;

/** Parts a letter's own words from what it repeats. A letter that repeats first and answers below, or answers line by line, keeps the lines just above each answer. */
export function foldQuoted(text: string): Folded {
  const lines = text.replace(/\r\n?/gu, "\n").split("\n");
  const repeats = repeatedIn(lines);
  return { own: tidy(withWhatIsAnswered(lines, repeats).join("\n")), quoted: tidy(lines.filter((_, i) => repeats[i]).join("\n")) };
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

const saysWho = (line: string): boolean => SAYS_WHO.some((re) => re.test(line.trim()));

/** How many lines from here on a program put over what it repeats, 0 where it did not: "On … wrote:", also wrapped over two, or From, Sent, To and so on. */
function headAt(lines: readonly string[], at: number): number {
  const [here = "", next = "", after = ""] = lines.slice(at, at + 3).map((line) => line.trim());
  if (saysWho(here)) return 1;
  if (here !== "" && saysWho(`${here} ${next}`)) return 2;
  if (!HEAD.test(here) || !(HEAD_NEXT.test(next) || HEAD_NEXT.test(after))) return 0;
  const end = lines.slice(at).findIndex((line) => line.trim() === "" || isQuotedLine(line));
  return end < 0 ? lines.length - at : end;
}

/** Their own lines, and before each passage of them the end of what they repeat just above it. */
function withWhatIsAnswered(lines: readonly string[], repeats: readonly boolean[]): string[] {
  const kept: string[] = [];
  let above: string[] = [];
  lines.forEach((line, i) => {
    if (repeats[i]) return void above.push(line);
    if (line.trim() === "") above.push("");
    else {
      kept.push(...(SENT_FROM.test(line.trim()) ? [] : lastPassage(above)));
      above = [];
    }
    kept.push(line);
  });
  return kept;
}

const withoutMarks = (line: string): string => line.replace(/^[\s>]+/u, "").trimEnd();

/** The last marked lines up to an empty one, without a signature (after "--", RFC 3676, section 4.3) and without who wrote them; nothing where none are marked. */
function lastPassage(above: readonly string[]): string[] {
  const signature = above.findIndex((line) => isQuotedLine(line) && withoutMarks(line) === "--");
  const lines = above.slice(0, signature < 0 ? undefined : signature);
  const end = lines.findLastIndex((line) => withoutMarks(line) !== "");
  const begin = lines.slice(0, end + 1).findLastIndex((line) => withoutMarks(line) === "") + 1;
  const passage = lines.slice(begin, end + 1).filter((line) => isQuotedLine(line) && !saysWho(withoutMarks(line)));
  return passage.length > 0 ? ["", ...passage.slice(-MOST_KEPT_LINES).map((line) => line.trim()), ""] : [];
}
const tidy = (text: string) => text.replace(/\n{3,}/gu, "\n\n").trim();
