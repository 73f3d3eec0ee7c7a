import type { Result } from "../enquiry/caller";
import type { FramedLabel } from "../enquiry/frame-schema";
import type { LabelAnswer } from "../enquiry/label-answer-schema";
import type { LabelReadingView } from "../enquiry/label-view";
import type { LabelSays } from "../words/label-says";

/** What came of an answer about a label. */
export interface LabelFormState {
  /** How often it was sent. */
  attempt: number;
  /** As it stands since; null while nothing was taken. */
  reading: LabelReadingView | null;
  /** Why it was not taken; null where it was. */
  say: string | null;
  /** What was typed, so that it stays without script too. */
  text: string | null;
}
export const FRESH_LABEL: LabelFormState = { attempt: 0, reading: null, say: null, text: null };

/** What a page can do with a label (look how its reading stands, say what it says, show where it lies), and its words. `answer` takes a form, so that it works without script. */
export interface LabelDeeds {
  look(photoId: string): Promise<Result<LabelReadingView>>;
  answer(before: LabelFormState, form: FormData): Promise<LabelFormState>;
  frame(given: FramedLabel): Promise<Result<LabelReadingView>>;
  says: LabelSays;
}

const textIn = (form: FormData, name: string): string | null => { const value = form.get(name); return typeof value === "string" ? value : null; };

/** One answer as its form sent it, given to the operation. */
export async function answerOfForm(before: LabelFormState, form: FormData, operation: (given: LabelAnswer) => Promise<Result<LabelReadingView>>): Promise<LabelFormState> {
  const text = textIn(form, "text");
  const answer = textIn(form, "answer") as LabelAnswer["answer"];
  const result = await operation({ photoId: textIn(form, "photoId") ?? "", answer, ...(answer === "corrected" ? { text: text ?? "" } : {}) });
  const attempt = before.attempt + 1;
  return result.ok ? { attempt, reading: result.value, say: null, text: null } : { ...before, attempt, say: result.say, text };
}
