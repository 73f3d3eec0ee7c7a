/** The line that parts a plain text from its foot, which mail programs know and leave out of answers (RFC 3676, section 4.3). */
const PARTS = "\n\n-- \n";

/** A plain letter with its foot, each line on one of its own; without lines only the text. */
export const withFoot = (text: string, lines: readonly string[]): string => `${text}${lines.length > 0 ? `${PARTS}${lines.join("\n")}` : ""}\n`;

/** The letter without it, as it is read on a page that has a head of its own. A line of that kind in the letter's own words stays. */
export function withoutFoot(text: string): string {
  const at = text.lastIndexOf(PARTS);
  return at < 0 || text.includes("\n\n", at + PARTS.length) ? text : `${text.slice(0, at)}\n`;
}
