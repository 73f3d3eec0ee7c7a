import { FIRST_AID } from "../trade/first-aid";
import { fill } from "./fill";
import { TABLES_EN } from "./tables";
import type { Words } from "./words";

const KEYS = new Map([...TABLES_EN].filter(([key]) => key.startsWith("first-aid.")).map(([key, text]) => [text, key]));

/** The sentence with the emergency number of the workshop's settings. */
export const emergencyIn = (words: Words, emergencyNumber: string): string => fill(words.table("first-aid.emergency"), { number: emergencyNumber });

/** How the sentence with the number begins, whichever number an assessment was made with. */
const CALL = FIRST_AID.emergency("\0").split("\0")[0] as string;

/** The first aid of an assessment, which holds it in English, in a client's words and with the emergency number of today. */
export function firstAidIn(words: Words, sentences: readonly string[], emergencyNumber: string): string[] {
  return sentences.map((sentence) => {
    const key = KEYS.get(sentence);
    return sentence.startsWith(CALL) ? emergencyIn(words, emergencyNumber) : key === undefined ? sentence : words.table(key);
  });
}
