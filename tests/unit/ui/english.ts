import type { SayInBrowser } from "../../../lib/ui/browser-words";
import { BROWSER } from "../../../lib/words/en/browser";
import { fill, type Fillings } from "../../../lib/words/fill";

/** What a page says in the browser, in English. */
export const sayEnglish: SayInBrowser = (key, ...[values]) => fill(BROWSER[key], (values ?? {}) as Fillings);
