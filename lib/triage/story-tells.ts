import type { QuestionId } from "../trade/questions";
import { STORY_DETAILS, STORY_WORDS, type StoryDetail } from "../trade/story-words";
import { inPlainLetters, isSaidIn, pattern } from "./letter-signs";

const COMPILED = STORY_WORDS.map((row) => ({ ...row, words: pattern(row.words) }));
const DETAILS = STORY_DETAILS.map(({ detail, words }) => ({ detail, words: pattern(words) }));

/** The questions that somebody answers already in their own words; nothing is believed by it. */
export function storyTells(story: string): QuestionId[] {
  const plain = inPlainLetters(story);
  return [...new Set(COMPILED.filter(({ words }) => plain.search(words) >= 0).map(({ tells }) => tells))];
}

/** What somebody tells in their own words that a letter of ours can take up; what they deny does not count. */
export function storyDetails(story: string): StoryDetail[] {
  return DETAILS.filter(({ words }) => isSaidIn(story, words)).map(({ detail }) => detail);
}

/** Whether somebody tells in their own words of something that happened to it, or that is wrong with it; what they deny does not count. */
export const storyHasTrouble = (story: string): boolean =>
  storyDetails(story).length > 0 || COMPILED.some(({ words, isWish }) => !isWish && isSaidIn(story, words));
