import { fill, type Fillings } from "../words/fill";
import { REFUSALS } from "../words/en/refusals";
import { WRONG } from "../words/en/wrong";
import { CM_PER_INCH, INCHES_PER_FOOT } from "../words/measures";
import { LIMITS } from "./limits";

/** The sizes a rug can have, in whole inches and feet that lie within the limits. */
const IN_FEET = { minInches: Math.ceil(LIMITS.minCm / CM_PER_INCH), maxFeet: Math.floor(LIMITS.maxCm / (CM_PER_INCH * INCHES_PER_FOOT)) };
/** The limits as they are written in a sentence. */
export const limitsIn = (tag: string): Fillings => Object.fromEntries(Object.entries({ ...LIMITS, ...IN_FEET }).map(([name, n]) => [name, n.toLocaleString(tag)]));
const SENTENCES = { ...WRONG, ...REFUSALS };
export type SentenceKey = keyof typeof SENTENCES;

/**
 * What is wrong, as schemas and operations say it: in English, which staff read as it is. A client's page says it again in
 * its own language (retell.ts), as gettext does: the English sentence is its own key.
 */
export const wrong = (key: SentenceKey): string => fill(SENTENCES[key], limitsIn("en"));
export const SENTENCE_KEYS = Object.keys(SENTENCES) as SentenceKey[];

/** Sentences that name what was typed. */
export type UnreadKey = Extract<SentenceKey, `${string}-unread`>;
export const isUnreadKey = (key: SentenceKey): key is UnreadKey => key.endsWith("-unread");
/** Of what was typed so much is named. Elicited. */
const NAMED_CHARS = 40;
/** As `wrong`, with what was typed. */
export const wrongOf = (key: UnreadKey, typed: string): string => {
  const chars = [...typed];
  return fill(wrong(key), { typed: chars.length > NAMED_CHARS ? `${chars.slice(0, NAMED_CHARS).join("")}…` : typed });
};
