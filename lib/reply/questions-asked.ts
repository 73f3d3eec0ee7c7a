/** So many of a client's questions stand beside the answer; whoever asks more is read whole anyway. Elicited. */
const MOST = 5;
/** Where a sentence ends as people type: not all of them begin the next one with a capital. */
const ENDS = /\n+|(?<=[.!?…？؟])\s+/u;

/** What people asked in their own words: the sentences that end in a question mark, as they wrote them, each once, in their order. */
export function questionsAsked(stories: readonly (string | undefined)[]): string[] {
  const sentences = stories.flatMap((story) => (story ?? "").split(ENDS)).map((s) => s.trim());
  return [...new Set(sentences.filter((s) => /[?？؟]["”’)]*$/u.test(s) && /\p{L}/u.test(s)))].slice(0, MOST);
}
