import type { QuestionId } from "../trade/questions";
import { STORY_WORDS } from "../trade/story-words";
import { inPlainLetters, pattern } from "./letter-signs";

const COMPILED = STORY_WORDS.map(({ tells, words }) => ({ tells, words: pattern(words) }));

/** The questions that somebody answers already in their own words; nothing is believed by it. */
export function storyTells(story: string): QuestionId[] {
  const plain = inPlainLetters(story);
  return COMPILED.filter(({ words }) => plain.search(words) >= 0).map(({ tells }) => tells);
}
