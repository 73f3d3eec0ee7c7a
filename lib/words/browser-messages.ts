import { REMARKS } from "../photo/sentences";
import { BROWSER } from "./en/browser";
import type { Words } from "./words";

const KEYS = Object.keys(BROWSER) as (keyof typeof BROWSER)[];
/** The messages of the browser in the words of a locale, to be handed to BrowserWords. */
export const browserMessages = (words: Words): Record<keyof typeof BROWSER, string> =>
  Object.fromEntries(KEYS.map((key) => [key, words.open(key)])) as Record<keyof typeof BROWSER, string>;

/** What is said of a photo on the device itself, from its English to the words of a locale; empty where they are the same. */
export const browserRemarks = (words: Words): Record<string, string> =>
  Object.fromEntries(Object.entries(REMARKS).flatMap(([id, text]) => {
    const said = words.table(`remark.${id}`);
    return said === text ? [] : [[text, said]];
  }));
