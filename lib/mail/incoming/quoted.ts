/** A letter's own words, and what it repeats of earlier ones, which is folded away. */
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

/** Splits a text at the first repetition. A letter that repeats first and answers below keeps its answers: only marked lines go. */
export function foldQuoted(text: string): Folded {
  const lines = text.replace(/\r\n?/gu, "\n").split("\n");
  const at = lines.findIndex((line, i) => beginsQuotation(line, lines[i + 1] ?? "", lines[i + 2] ?? ""));
  if (at < 0) return split(lines, isMarked);
  const above = lines.slice(0, at), below = lines.slice(at);
  if (!below.some(isMarked)) return { own: tidy(above.join("\n")), quoted: tidy(below.join("\n")) };
  // Marked lines with others between: the answers stand among them.
  const rest = split(below, (line) => isMarked(line) || saysWho(line) || isWrapped(line, below));
  return { own: tidy([...above, rest.own].join("\n")), quoted: rest.quoted };
}

const isMarked = (line: string): boolean => line.startsWith(">");
const saysWho = (line: string): boolean => SAYS_WHO.some((re) => re.test(line.trim()));

/** The second half of a "On … wrote:" that a program wrapped. */
const isWrapped = (line: string, lines: readonly string[]): boolean => {
  const i = lines.indexOf(line);
  return i === 0 ? saysWho(`${line} ${lines[1] ?? ""}`) : i === 1 && saysWho(`${lines[0]} ${line}`);
};

function beginsQuotation(line: string, next: string, after: string): boolean {
  const here = line.trim();
  if (saysWho(here) || (here !== "" && saysWho(`${here} ${next}`))) return true;
  return HEAD.test(here) && (HEAD_NEXT.test(next.trim()) || HEAD_NEXT.test(after.trim()));
}

function split(lines: readonly string[], isQuoted: (line: string) => boolean): Folded {
  return { own: tidy(lines.filter((l) => !isQuoted(l)).join("\n")), quoted: tidy(lines.filter(isQuoted).join("\n")) };
}
const tidy = (text: string) => text.replace(/\n{3,}/gu, "\n\n").trim();
