import { isQuotedLine } from "../../words/quoted-lines";
import { piecesByWriter, type Piece } from "./our-words";
import { headAt, withoutMarks } from "./quote-heads";

/** A line of a letter, and whether it repeats what was written before. */
export interface Line { readonly text: string; readonly repeats: boolean }

const depthOf = (line: string): number => /^[\s>]*/u.exec(line)?.[0].replace(/\s/gu, "").length ?? 0;
/** A line as mail programs mark what they repeat. */
export const marked = (text: string): string => (isQuotedLine(text) ? text : `> ${text}`.trimEnd());
const RULE = /^[-–—_=*~#•\s]*$/u;

/**
 * What somebody wrote between the lines of ours becomes theirs, unmarked, and lines of ours are marked, also where a program marked
 * neither and put no head over them. What repeats no letter of ours, such as an earlier one of theirs, stays as it is. `isKnown`: whether any
 * of what a program had told for repeated was ours.
 */
export function toldApart(lines: readonly Line[], ours: string | null): { readonly lines: readonly Line[]; readonly isKnown: boolean } {
  if (ours === null) return { lines, isKnown: false };
  const parts = partsOf(lines).map(({ head, rest }) => ({ head, rest, between: betweenOurs(rest, { ours, hasHead: head.length > 0 }) }));
  if (parts.every(({ between }) => between === null)) return { lines, isKnown: false };
  const told = parts.flatMap(({ head, rest, between }) => [...head.map((line) => ({ ...line, repeats: true })), ...(between?.lines ?? rest)]);
  return { lines: told, isKnown: parts.some(({ between }) => between?.isKnown) };
}

/** A letter's parts: what stands above all heads, and what follows each. */
function partsOf(lines: readonly Line[]): { head: Line[]; rest: Line[] }[] {
  const bare = lines.map((line) => withoutMarks(line.text));
  const parts: { head: Line[]; rest: Line[] }[] = [{ head: [], rest: [] }];
  for (let at = 0; at < lines.length;) {
    const length = headAt(bare, at);
    if (length > 0) parts.push({ head: lines.slice(at, at + length), rest: [] });
    else parts.at(-1)?.rest.push(...lines.slice(at, at + 1));
    at += Math.max(length, 1);
  }
  return parts;
}

/** The lines of one part, each told for ours or theirs; null where nothing in it is ours. Above all heads the lines that are not marked are theirs unless they plainly repeat ours. */
function betweenOurs(rest: readonly Line[], { ours, hasHead }: { ours: string; hasHead: boolean }): { lines: Line[]; isKnown: boolean } | null {
  const mayBe = rest.map((line) => hasHead || line.repeats);
  const byLine = piecesByWriter(rest.map(({ text }) => withoutMarks(text)), ours, mayBe.map((may) => !may));
  if (!byLine) return null;
  const hasOurs = byLine.map((pieces) => pieces.some((p) => p.isOurs));
  const depth = Math.max(...rest.filter((_, i) => hasOurs[i]).map((line) => depthOf(line.text)));
  const folded = foldedBelow(rest.map((line) => withoutMarks(line.text)), hasOurs.lastIndexOf(true));
  const isBeforeOurs = beforeOurs(rest, hasOurs);
  let before = true, isAfterOurs = false;
  const lines = rest.flatMap((line, i) => {
    if (!mayBe[i] && !hasOurs[i]) {
      const isRule = RULE.test(line.text);
      isAfterOurs &&= isRule;
      return [isRule && line.text.trim() !== "" && (isAfterOurs || isBeforeOurs[i]) ? { text: marked(line.text), repeats: true } : line];
    }
    if (withoutMarks(line.text) === "") return [{ text: before ? line.text : "", repeats: before }];
    const isOlder = depthOf(line.text) > depth && !hasOurs[i];
    const told = isOlder || folded[i] ? [{ text: line.text, repeats: true }] : linesOf(line.text, byLine[i] ?? [], before);
    before = told.at(-1)?.repeats === true;
    isAfterOurs = before;
    return told;
  });
  return { lines, isKnown: hasOurs.some((is, i) => is && mayBe[i]) };
}

/** Of each line, whether the next one with words holds some of ours. */
function beforeOurs(lines: readonly Line[], hasOurs: readonly boolean[]): boolean[] {
  let next = false;
  return lines.map((_, n) => lines.length - 1 - n).map((i) => {
    const is = next;
    if (!RULE.test(lines[i]?.text ?? "")) next = hasOurs[i] === true;
    return is;
  }).reverse();
}

/** Behind the words of a link, and wrapped. */
const ADDRESS_ALONE = /^[[<]\S+[\]>]$/u;

/** A line by its pieces. One without words is theirs, unless it only rules off or is the address behind a line of ours. `before`: whether the line before repeats. */
const linesOf = (text: string, pieces: readonly Piece[], before: boolean): Line[] => {
  const bare = withoutMarks(text);
  if (pieces.length === 0) return [RULE.test(bare) || (before && ADDRESS_ALONE.test(bare)) ? { text, repeats: true } : { text: bare, repeats: false }];
  return pieces.map((p) => ({ text: p.isOurs ? marked(p.text) : p.text, repeats: p.isOurs }));
};

/** A passage that a mail server puts below all letters. Common practice, no published source, in the languages our clients write in. */
const OF_A_SERVER = /(?:e-?mail|message|nachricht|courriel|mensaje|correo|messaggio|bericht).{0,200}(?:confidential|intended (?:only|solely)|privileged|virus|vertraulich|confidentiel|confidencial|riservat|confidenzial|vertrouwelijk)/isu;

/** Which lines below the last one of ours nobody wrote for us: a signature (after "--", RFC 3676, section 4.3), and a mail server's passages. */
function foldedBelow(bare: readonly string[], lastOurs: number): boolean[] {
  const folded = bare.map(() => false);
  const signature = bare.findIndex((line, i) => i > lastOurs && line === "--");
  if (signature >= 0) folded.fill(true, signature);
  for (let from = lastOurs + 1; from < bare.length;) {
    const empty = bare.indexOf("", from);
    const to = empty < 0 ? bare.length : empty;
    if (OF_A_SERVER.test(bare.slice(from, to).join(" "))) folded.fill(true, from, to);
    from = to + 1;
  }
  return folded;
}
