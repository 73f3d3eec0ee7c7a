import type { IntakeAnswers } from "../enquiry/questionnaire";
import { applies, STEPS, stepRow, type ChapterId, type StepId } from "../enquiry/steps";
import type { Words } from "../words/words";

const ORDER: readonly ChapterId[] = ["now", "photos", "rug", "happened", "home", "you"];
/** The last pages say it in their own words. */
const THE_END = { story: "progress.story", contact: "progress.contact", send: "progress.send" } as const;
const isTheEnd = (id: StepId): id is keyof typeof THE_END => Object.hasOwn(THE_END, id);

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

/** "Two", "Two or three", "Up to four", "Perhaps one". */
function countWords({ least, most }: { least: number; most: number }, { say }: Words): string {
  if (most === 1 && least === 0) return say("progress.perhaps-one");
  if (least === most) return say("count.begins", { n: most });
  return least > 0 && least + 1 === most
    ? say("progress.between", { least: say("count.begins", { n: least }), most: say("count.words", { n: most }) })
    : say("progress.up-to", { most: say("count.words", { n: most }) });
}

/** Progress as a sentence or two, never as a bar: "Two or three more about the rug itself, then what happened to it." */
export function progressWords(id: StepId, answers: IntakeAnswers, words: Words): string {
  const { say } = words;
  const named = stepRow(id).chapter;
  if (isTheEnd(id)) return say(THE_END[id]);
  if (named === "now") return say("progress.begin");
  if (named === "photos") return say("progress.photos", { rug: say("chapter.rug"), happened: say("chapter.happened") });
  const left = remainingInChapter(id, answers);
  const after = ORDER[ORDER.indexOf(named) + 1];
  const [chapter, next] = [say(`chapter.${named}`), after && say(`chapter.${after}`)];
  if (left.most === 0) return next ? say("progress.last-then", { chapter, next }) : say("progress.last", { chapter });
  const count = countWords(left, words);
  return next ? say("progress.more-then", { count, chapter, next }) : say("progress.more", { count, chapter });
}
