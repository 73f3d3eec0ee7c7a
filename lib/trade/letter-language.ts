import type { Source } from "./fibres";

/** How a letter is told from one in another language than that of LETTER_SIGNS. */
export interface LetterLanguage extends Source {
  /** Words that hardly an English letter does without, and that are no frequent words of the languages written beside it. */
  readonly words: readonly string[];
  /** A letter with fewer words is too short to tell by them. */
  readonly leastWords: number;
  /** Of so small a share of them on, from 0 to 1, it counts as written in another language. */
  readonly leastShare: number;
}

/** “in”, “is”, “was”, “of”, “we” and the like are left out: Dutch, German and the Nordic languages have them too. */
export const LETTER_ENGLISH: LetterLanguage = {
  words: [
    "the", "and", "that", "this", "these", "those", "it", "its", "it's", "my", "your", "our", "their", "you", "they", "she", "i've", "i'm", "i'd", "don't", "can't", "there", "here", "with", "from", "about", "into", "after", "before", "which", "what", "when", "where", "how", "why",
    "have", "has", "been", "are", "were", "would", "could", "should", "can", "does", "did", "not", "but", "because", "than", "then", "some", "any", "very", "just", "now", "all", "out", "off", "by", "if", "or", "as",
    "hello", "hi", "dear", "please", "thank", "thanks", "regards", "sincerely", "help", "need", "want", "know", "think", "rug", "rugs", "carpet", "cleaning", "clean", "stain", "stains", "wool", "silk", "label", "photo", "photos", "bought", "water",
    "yes", "today", "tomorrow", "yesterday", "morning", "afternoon", "evening", "week", "weeks", "month", "months", "year", "years", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "bring", "collect", "send", "sent", "look", "like", "get", "got", "made", "make", "new", "old", "still", "only", "also", "once",
  ],
  leastWords: 5,
  leastShare: 0.1,
  how: "elicited", source: "Elicited for this project: in made-up English letters to a workshop at least one word in six is of these, in letters in fifteen other languages at most one in twenty-five",
};
