import type { StrangersSet } from "./strangers";
import one from "./voices/voices-1.json";
import two from "./voices/voices-2.json";
import three from "./voices/voices-3.json";
import four from "./voices/voices-4.json";
import hints from "./voices/hints.json";
import laterHints from "./voices/hints-later.json";
import manners from "./voices/manners.json";
import mannersApart from "./voices/manners-apart.json";

/** A voice by name: so many different people, from trades, places and moods. */
export interface Voice extends StrangersSet { readonly voice: string }

/**
 * Forty voices, 40 sentences of each kind each, by people who had not seen the rules. Each was run once against the rules of that day
 * (`firstRun`: 1,239 of 1,600 caught, 158 of 1,600 alarmed), and the weights of sureness are fitted to them since. Invented for this project.
 */
export const FORTY_VOICES: readonly Voice[] = [...one, ...two, ...three, ...four];

/**
 * People who hint rather than say, 60 sentences of each kind each, half and more of them indirect, by people who had not seen the rules. Each
 * was run once against the check of that day (`firstRun`: between 29 and 40 of 60 caught, 5 to 7 of 60 alarmed); rules and weights have seen
 * them since. A joke or a saying is what the check tells worst. Invented for this project.
 */
export const HINTS: readonly Voice[] = [...hints, ...laterHints];

/**
 * Pairs by the manner of saying it: of each a sentence that says too much and an honest one close to it in its words. Written before the
 * rules of `manner.ts` and run once against the check of that day (`firstRun`, of twelve each: 30 of 60 caught, 5 of 60 alarmed); rules and
 * weights have seen them since. Invented for this project.
 */
export const MANNERS: readonly Voice[] = manners;
/** More such pairs, of the same hand and the same day, that no rule was written by and no weight fitted to. */
export const MANNERS_APART: readonly Voice[] = mannersApart;
