import { fill, type Fillings } from "../words/fill";
import { REFUSALS } from "../words/en/refusals";
import { WRONG } from "../words/en/wrong";
import { LIMITS } from "./limits";

/** The limits as they are written in a sentence. */
export const limitsIn = (tag: string): Fillings => Object.fromEntries(Object.entries(LIMITS).map(([name, n]) => [name, n.toLocaleString(tag)]));
const SENTENCES = { ...WRONG, ...REFUSALS };
export type SentenceKey = keyof typeof SENTENCES;

/**
 * What is wrong, as schemas and operations say it: in English, which staff read as it is. A client's page says it again in
 * its own language (retell.ts), as gettext does: the English sentence is its own key.
 */
export const wrong = (key: SentenceKey): string => fill(SENTENCES[key], limitsIn("en"));
export const SENTENCE_KEYS = Object.keys(SENTENCES) as SentenceKey[];
