import type { IntakeAnswers } from "../enquiry/questionnaire";
import { applies, STEPS, stepRow, type ChapterId, type StepId } from "../enquiry/steps";
import { countInWords, sentenceCase } from "./figures";

/** What each part of the questionnaire is about, in the middle of a sentence. */
const CHAPTERS: Readonly<Record<ChapterId, string>> = {
  now: "this moment",
  photos: "a few photos",
  rug: "the rug itself",
  happened: "what happened to it",
  home: "where it lies",
  you: "you",
};
const ORDER = Object.keys(CHAPTERS) as ChapterId[];
/** The last pages say it in their own words. */
const THE_END: Partial<Record<StepId, string>> = {
  story: "After this only how to reach you, and a last look.",
  contact: "One more page, to look it over and send it.",
  send: "This is the last page.",
};

/**
 * How many more questions of the same part follow this one: at least and at most, as far as the answers so far
 * tell. A step that hangs on an answer still to come counts only towards the most.
 */
export function remainingInChapter(id: StepId, answers: IntakeAnswers): { least: number; most: number } {
  const place = STEPS.findIndex((s) => s.id === id);
  const later = new Set<string>(STEPS.slice(place).map((s) => s.id));
  const rest = STEPS.slice(place + 1).map((s) => ({ ...stepRow(s.id), id: s.id })).filter((s) => s.chapter === stepRow(id).chapter && !s.tells);
  const isOpen = (s: (typeof rest)[number]) => s.after?.some((a) => later.has(a)) ?? false;
  return {
    least: rest.filter((s) => !isOpen(s) && applies(s.id, answers)).length,
    most: rest.filter((s) => isOpen(s) || applies(s.id, answers)).length,
  };
}

/** Progress as a sentence or two, never as a bar: "Two or three more about the rug itself, then what happened to it." */
export function progressWords(id: StepId, answers: IntakeAnswers): string {
  const { chapter } = stepRow(id);
  const atTheEnd = THE_END[id];
  if (atTheEnd) return atTheEnd;
  if (chapter === "now") return "Most questions take one tap. You can stop and come back.";
  const { least, most } = remainingInChapter(id, answers);
  const next = ORDER[ORDER.indexOf(chapter) + 1];
  if (chapter === "photos") return `After this: ${CHAPTERS.rug}, ${CHAPTERS.happened}, and how to reach you.`;
  const then = next ? `, then ${CHAPTERS[next]}` : "";
  if (most === 0) return `The last one about ${CHAPTERS[chapter]}${then}.`;
  const count = most === 1 && least === 0 ? "perhaps one" : least === most ? countInWords(most) : least > 0 && least + 1 === most ? `${countInWords(least)} or ${countInWords(most)}` : `up to ${countInWords(most)}`;
  return `${sentenceCase(count)} more about ${CHAPTERS[chapter]}${then}.`;
}
