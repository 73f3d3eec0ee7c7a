import type { Overpromise } from "./check";

/** All that is said of one sentence. Of something left out, `sentence` is empty. */
export interface PromiseNote {
  readonly sentence: string;
  readonly reasons: readonly Pick<Overpromise, "why" | "suggestion">[];
  /** What can take the sentence's place: an answer to each reason that has one, each once. Absent where none has. */
  readonly instead?: string;
}

/** What was found, as one note a sentence, in order. What a letter leaves out has a note each. */
export function notesOf(found: readonly Overpromise[]): PromiseNote[] {
  const ofSentence = new Map<string, Overpromise[]>();
  for (const [n, over] of found.entries()) {
    const key = over.sentence || `left out: ${n}`;
    ofSentence.set(key, [...(ofSentence.get(key) ?? []), over]);
  }
  return [...ofSentence.values()].map(noteOf);
}

/** The same sentence twice in a letter breaks the same rules twice: each reason is told once. */
function noteOf(of: readonly Overpromise[]): PromiseNote {
  const once = [...new Map(of.map((over) => [over.why, over])).values()];
  const answers = [...new Set(once.flatMap(({ instead }) => instead ?? []))];
  return { sentence: of[0]?.sentence ?? "", reasons: once.map(({ why, suggestion }) => ({ why, suggestion })), ...(answers.length > 0 ? { instead: answers.join(" ") } : {}) };
}
