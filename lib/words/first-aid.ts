import { FIRST_AID } from "../trade/first-aid";
import { fill } from "./fill";
import { TABLES_EN } from "./tables";
import type { Words } from "./words";

const KEYS = new Map([...TABLES_EN].filter(([key]) => key.startsWith("first-aid.")).map(([key, text]) => [text, key]));

/** The sentence with the emergency number of the workshop's settings. */
export const emergencyIn = (words: Words, emergencyNumber: string): string => fill(words.table("first-aid.emergency"), { number: emergencyNumber });

/** What is said where mould may be in one of so many rugs, before anybody here has answered. */
export const mouldIn = (words: Words, rugs: number): string => `${words.say("own.mould", { n: rugs })} ${words.table("first-aid.mould")}`;

/** What is said instead where bleach and something it can give off gas with were told together, with the emergency number of the workshop's settings. */
export const gasIn = (words: Words, emergencyNumber: string): string => fill(words.table("first-aid.gas"), { number: emergencyNumber });

const before = (sentence: (number: string) => string): string => sentence("\0").split("\0")[0] as string;
/** How the sentences with the number begin, whichever number they were made with. */
const CALLS = [{ begins: before(FIRST_AID.emergency), say: emergencyIn }, { begins: before(FIRST_AID.gas.line), say: gasIn }] as const;

/** The first aid of an assessment, which holds it in English, in a client's words and with the emergency number of today. */
export function firstAidIn(words: Words, sentences: readonly string[], emergencyNumber: string): string[] {
  return sentences.map((sentence) => {
    const key = KEYS.get(sentence);
    const call = CALLS.find(({ begins }) => sentence.startsWith(begins));
    return call ? call.say(words, emergencyNumber) : key === undefined ? sentence : words.table(key);
  });
}
