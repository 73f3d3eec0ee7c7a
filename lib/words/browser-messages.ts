import { BROWSER } from "./en/browser";
import type { Words } from "./words";

const KEYS = Object.keys(BROWSER) as (keyof typeof BROWSER)[];
/** The messages of the browser in the words of a locale, to be handed to BrowserWords. */
export const browserMessages = (words: Words): Record<keyof typeof BROWSER, string> =>
  Object.fromEntries(KEYS.map((key) => [key, words.open(key)])) as Record<keyof typeof BROWSER, string>;
