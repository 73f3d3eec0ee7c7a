import { METHODS } from "../trade/care";
import { ONLY_INSPECTION } from "../trade/inspection";
import type { FactTable } from "../trade/table";
import { TABLES } from "../trade/tables";
import { languageOf, type Language } from "./locales";
import type { Words } from "./words";

const hasWords = (text: unknown): text is string => typeof text === "string" && /\p{L}/u.test(text);
const textsOf = ({ name, about, columns, rows }: FactTable): unknown[] => [name, about, ...columns.map((c) => c.name), ...rows.flatMap((r) => [r.name, ...r.cells])];

/**
 * What “How we judge” prints of the trade's tables. Hundreds of rows bear the same few names, so the English text is its own
 * key, as in gettext. Sources stand as they were recorded, in every language: they are there to be looked up.
 */
export const PRINTED_EN: ReadonlySet<string> = new Set([
  ...TABLES.filter((t) => t.for === "everybody").flatMap(textsOf), ...ONLY_INSPECTION.map((r) => r.say), ...Object.values(METHODS).map((m) => m.name),
].filter(hasWords));

const PRINTED: Readonly<Record<Language, ReadonlyMap<string, string>>> = { en: new Map([...PRINTED_EN].map((text) => [text, text])) };

/** A text of the printed tables in a client's words; figures alone stay as they are. @throws where it is none of theirs. */
export const printedIn = (words: Words) => (text: string): string => {
  if (!hasWords(text)) return text;
  const said = PRINTED[languageOf(words.locale)].get(text);
  if (said === undefined) throw new Error(`Expected a text of the printed tables but received ${text}`);
  return words.mark(said);
};
