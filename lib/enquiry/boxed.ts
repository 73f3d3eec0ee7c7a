import "server-only";
import { boxedIn } from "../print/fonts";
import type { PrintedDocument } from "../reply/documents/blocks";
import { textsOf } from "../reply/documents/blocks";
import { listed } from "../reply/phrases";

/** So many characters are named by themselves. *elicited* */
const MOST_NAMED = 12;

/** The characters of a document, or of words that are to stand in it, that no typeface of ours can draw: each once. */
export const boxedOf = (document: PrintedDocument): string[] => boxedIn(textsOf(document).join("\n"));
export const boxedInWords = (words: readonly string[]): string[] => boxedIn(words.join("\n"));

const named = (characters: readonly string[]): string => {
  const more = characters.length - MOST_NAMED;
  return listed([...characters.slice(0, MOST_NAMED), ...(more > 0 ? [`${more} more`] : [])]);
};
const are = (characters: readonly string[]) => (characters.length === 1 ? "is" : "are");

/** Before a document is made: which of its characters will stand as a box; null where none will. */
export const willBeBoxed = (characters: readonly string[]): string | null =>
  (characters.length === 0 ? null : `${named(characters)} ${are(characters)} in none of our typefaces and will print as ${characters.length === 1 ? "an empty box" : "empty boxes"} (◻).`);

/** The same of a document that was made. */
export const wasBoxed = (characters: readonly string[]): string | null =>
  (characters.length === 0 ? null : `${named(characters)} ${are(characters)} in none of our typefaces and printed as ${characters.length === 1 ? "an empty box" : "empty boxes"} (◻).`);
