import { LABEL } from "./en/label";
import type { Words } from "./words";

/** What is said of a label in the browser, ready in one language. */
export type LabelSays = Readonly<Record<keyof typeof LABEL, string>>;
export const labelSays = (words: Words): LabelSays =>
  Object.fromEntries((Object.keys(LABEL) as (keyof typeof LABEL)[]).map((key) => [key, words.say(key)])) as Record<keyof typeof LABEL, string>;
