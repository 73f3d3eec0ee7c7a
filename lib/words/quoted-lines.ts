/** A line of somebody else's words, as mail programs mark them. */
export const isQuotedLine = (line: string): boolean => /^\s*>/u.test(line);

/** A text without the lines that repeat what somebody else wrote. */
export const ownLines = (text: string): string => text.split(/\r?\n/u).filter((line) => !isQuotedLine(line)).join("\n");

/** Lines that follow each other and are all quoted, without their marks, or all the writer's own. */
export interface Passage { readonly isQuoted: boolean; readonly text: string }

/** A text in passages, in their order; blank lines around each are left out, and an empty text has none. */
export function passagesIn(text: string): Passage[] {
  const passages: { isQuoted: boolean; lines: string[] }[] = [];
  for (const line of text.split(/\r?\n/u)) {
    const isQuoted = isQuotedLine(line), last = passages.at(-1);
    const bare = isQuoted ? line.replace(/^[\s>]+/u, "") : line;
    if (last?.isQuoted === isQuoted) last.lines.push(bare);
    else passages.push({ isQuoted, lines: [bare] });
  }
  return passages.map(({ isQuoted, lines }) => ({ isQuoted, text: lines.join("\n").replace(/^(?:[^\S\n]*\n)+|\s+$/gu, "") })).filter((p) => p.text !== "");
}
