import { PHOTO_KINDS, QUESTIONS, type PhotoKind, type QuestionId } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import { firstAidIn } from "../words/first-aid";
import { methodWhyIn, notStatedIn } from "../words/judged";
import type { Words } from "../words/words";
import { retell } from "./retell";

/** An assessment as it is kept; the sentences of its tables in a client's words, its first aid with the emergency number of today. What was found is kept as data, and its English sentences beside it. */
export const retellAssessment = (words: Words, { advice, urgency, onlyInspection, methods, why, firstAid, nextQuestions, ...rest }: Assessment, emergencyNumber: string): Assessment => ({
  ...rest,
  methods: methods.map((m) => ({ ...m, why: methodWhyIn(words, m.method, m.why) })),
  why: Object.fromEntries(Object.entries(why).map(([field, sentence]) => [field, notStatedIn(words, sentence)])),
  firstAid: firstAid && firstAidIn(words, firstAid, emergencyNumber),
  nextQuestions: nextQuestions.map((q) => ({ ...q, ask: askIn(words, q) })),
  advice: { ...advice, why: retell(words, advice.why), referTo: advice.referTo && retell(words, advice.referTo) },
  urgency: { ...urgency, why: retell(words, urgency.why) },
  onlyInspection: onlyInspection.map((sentence) => retell(words, sentence)),
});

/** What is asked, by the tables of questions and photos; a test by its own name. */
function askIn(words: Words, { kind, id, ask }: Assessment["nextQuestions"][number]): string {
  if (kind === "photo" && Object.hasOwn(PHOTO_KINDS, id)) return words.table(`photo.${id as PhotoKind}.ask`);
  return kind === "question" && Object.hasOwn(QUESTIONS, id) ? words.table(`question.${id as QuestionId}.ask`) : ask;
}
