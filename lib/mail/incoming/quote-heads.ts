import { isQuotedLine } from "../../words/quoted-lines";

/**
 * Where a repetition begins: a line of ours is marked ">", or a program says who wrote what. Common practice, no
 * published source, in the languages our clients write in.
 */
const SAYS_WHO = [
  /^On .{4,200} wrote:$/u, /^Am .{4,200} schrieb .{0,200}:$/u, /^Le .{4,200} a écrit\s?:$/u, /^El .{4,200} escribió:$/u, /^Il .{4,200} ha scritto:$/u, /^Op .{4,200} schreef .{0,200}:$/u,
  /^-{2,}\s?(?:Original Message|Ursprüngliche Nachricht|Message d'origine|Mensaje original|Messaggio originale|Oorspronkelijk bericht|Forwarded message)\s?-{2,}$/iu,
];
/** A head of lines that other programs put over a repetition: From, Sent, To, Subject. */
const HEAD = /^(?:From|Von|De|Da|Van):\s.+$/u;
const HEAD_NEXT = /^(?:Sent|Date|Gesendet|Datum|Envoyé|Enviado|Inviato|Verzonden|To|An|À|Para|A|Aan):\s/u;

/** Whether a program says in it who wrote what follows. */
export const saysWho = (line: string): boolean => SAYS_WHO.some((re) => re.test(line.trim()));

/** How many lines from here on a program put over what it repeats, 0 where it did not: "On … wrote:", also wrapped over two, or From, Sent, To and so on. */
export function headAt(lines: readonly string[], at: number): number {
  const [here = "", next = "", after = ""] = lines.slice(at, at + 3).map((line) => line.trim());
  if (saysWho(here)) return 1;
  if (here !== "" && saysWho(`${here} ${next}`)) return 2;
  if (!HEAD.test(here) || !(HEAD_NEXT.test(next) || HEAD_NEXT.test(after))) return 0;
  const end = lines.slice(at).findIndex((line) => line.trim() === "" || isQuotedLine(line));
  return end < 0 ? lines.length - at : end;
}

/** A line as it was before programs marked it. */
export const withoutMarks = (line: string): string => line.replace(/^[\s>]+/u, "").trimEnd();
