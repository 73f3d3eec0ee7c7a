import type { QuestionId } from "../trade/questions";
import { STORY_DETAILS, STORY_WORDS, type StoryDetail, type StoryWords } from "../trade/story-words";
import { saidOfWater } from "./letter-signs";
import { isFound, isSaidIn, pattern, sentencesOf, tellsAny } from "./sentences";

type Compiled = Omit<StoryWords, "words" | "notWith"> & { readonly words: RegExp; readonly notWith: RegExp | null };
const COMPILED: readonly Compiled[] = STORY_WORDS.map((row) => ({ ...row, words: pattern(row.words, row.notBefore), notWith: row.notWith ? pattern(row.notWith) : null }));
const DETAILS = STORY_DETAILS.map(({ detail, words }) => ({ detail, words: pattern(words) }));
const WET = "wetNow" satisfies QuestionId;

/** What a sentence tells of by itself, whatever stands beside it. */
function tellsAlone(plain: string): QuestionId[] {
  const told = COMPILED.filter(({ beside, words }) => beside === undefined && tellsAny(plain, words)).map(({ tells }) => tells);
  return saidOfWater(plain) === null ? told : [...told, WET];
}

/** The questions that somebody answers already in their own words, told as a fact; nothing is believed by it. Whether it is wet is for `saidOfWater`, which knows what was said last. */
export function storyTells(story: string): QuestionId[] {
  const sentences = sentencesOf(story).map(({ plain }) => plain);
  const alone = sentences.map(tellsAlone);
  const near = (at: number) => [alone[at - 1], alone[at], alone[at + 1]].flatMap((tells) => tells ?? []);
  const isBeside = ({ beside = [], words, notWith }: Compiled, plain: string, at: number) =>
    near(at).some((q) => beside.includes(q)) && tellsAny(plain, words) && !(notWith !== null && isFound(notWith, plain));
  const besides = COMPILED.filter((row) => row.beside && sentences.some((plain, at) => isBeside(row, plain, at))).map(({ tells }) => tells);
  return [...new Set([...alone.flat(), ...besides])].filter((q) => q !== WET);
}

/** What somebody tells in their own words that a letter of ours can take up; what they deny does not count. */
export function storyDetails(story: string): StoryDetail[] {
  return DETAILS.filter(({ words }) => isSaidIn(story, words)).map(({ detail }) => detail);
}

/** Whether somebody tells in their own words of something that happened to it, or that is wrong with it; what they deny does not count. */
export const storyHasTrouble = (story: string): boolean =>
  storyDetails(story).length > 0 || COMPILED.some(({ words, isWish, beside }) => beside === undefined && !isWish && isSaidIn(story, words));
