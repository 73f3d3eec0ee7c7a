import { IntlMessageFormat } from "intl-messageformat";
import type { ArgumentsOf, TagsOf } from "./arguments";
import { EN, type Messages } from "./en/messages";
import { figuresOf, languageOf, MARKED_LOCALE, type Language, type Locale } from "./locales";
import { TABLES_EN, type TableKey } from "./tables";

export type MessageKey = keyof Messages;
type Values<K extends MessageKey> = ArgumentsOf<Messages[K]>;
type Given<K extends MessageKey> = keyof Values<K> extends never ? [] : [values: Values<K>];
/** What puts a tag's words into something of the page. */
type Around<K extends MessageKey, T> = Record<TagsOf<Messages[K]>, (words: (string | T)[]) => T>;

/** Everything said to a client, in the words and figures of one locale. */
export interface Words {
  readonly locale: Locale;
  /** A message with its arguments. */
  say<K extends MessageKey>(key: K, ...given: Given<K>): string;
  /** A message whose tags become something of the page: its parts in order. */
  parts<K extends MessageKey, T>(key: K, values: Values<K> & Around<K, T>): (string | T)[];
  /** A message as it stands in the catalogue, its arguments open, for the browser to fill. */
  open(key: MessageKey): string;
  /** A text that is kept elsewhere in this language, such as a paragraph of a letter: between marks in the marked locale. */
  mark(text: string): string;
  /** A text of the trade's tables: a question, an answer, a photo asked for, first aid. */
  table(key: TableKey): string;
}

/** One whole catalogue a language. A language is added here when somebody who speaks it has reviewed all of it, not before. */
const CATALOGUES: Readonly<Record<Language, { readonly messages: Readonly<Record<MessageKey, string>>; readonly tables: ReadonlyMap<TableKey, string> }>> = {
  en: { messages: EN, tables: TABLES_EN },
};

const MARKS = ["⟦", "⟧"] as const;

function made(locale: Locale): Words {
  const { messages, tables } = CATALOGUES[languageOf(locale)];
  const marked = (text: string) => (locale === MARKED_LOCALE ? MARKS.join(text) : text);
  const formats = new Map<string, IntlMessageFormat>();
  const formatOf = (key: MessageKey) => {
    const format = formats.get(key) ?? new IntlMessageFormat(marked(messages[key]), figuresOf(locale));
    formats.set(key, format);
    return format;
  };
  return {
    locale,
    say: (key, ...[values]) => String(formatOf(key).format(values as Record<string, string | number> | undefined)),
    parts: <K extends MessageKey, T>(key: K, values: Values<K> & Around<K, T>) => [formatOf(key).format<T>(values as never)].flat() as (string | T)[],
    mark: marked,
    open: (key) => marked(messages[key]),
    table: (key) => {
      const text = tables.get(key);
      if (text === undefined) throw new Error(`Expected the key of a table's text but received ${key}`);
      return marked(text);
    },
  };
}

/** The desk is read in English; figures are written there as its clients read them. */
export const deskWords = (locale: Locale): Words => wordsIn(locale === MARKED_LOCALE ? "en-GB" : locale);

const known = new Map<Locale, Words>();
/** The words of a locale. The same object every time: its messages are read once. */
export function wordsIn(locale: Locale): Words {
  const words = known.get(locale) ?? made(locale);
  known.set(locale, words);
  return words;
}
