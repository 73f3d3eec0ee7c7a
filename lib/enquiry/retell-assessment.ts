import { chanceWord } from "../reply/phrases";
import { PHOTO_KINDS, QUESTIONS, type PhotoKind, type QuestionId } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import type { FindingValue } from "../triage/finding";
import { firstAidIn } from "../words/first-aid";
import { methodWhyIn, notStatedIn } from "../words/judged";
import type { Words } from "../words/words";
import { isTestId } from "./bench-test-schema";
import { retell } from "./retell";

/**
 * An assessment as it is kept, for a client's copy: the sentences of its tables in the client's words, its first aid with the
 * emergency number of today. What was found, what does not agree and why something is asked next stand there as data: the
 * sentences that triage makes of them are English and for the desk.
 */
export function retellAssessment(words: Words, a: Assessment, emergencyNumber: string) {
  const { advice, urgency } = a;
  return {
    ...a,
    fibres: a.fibres.map((f) => ({ ...f, words: chanceWord(f.words, words) })),
    findings: a.findings.map(({ what, value, strength, from, decibans }) => ({ what, value: withoutSentences(value), strength, from, decibans })),
    components: a.components.map(({ part, yarn, fibres }) => ({ part, yarn, fibres })),
    conflicts: a.conflicts.map(({ between }) => ({ between })),
    methods: a.methods.map((m) => ({ ...m, why: methodWhyIn(words, m.method, m.why) })),
    why: Object.fromEntries(Object.entries(a.why).map(([field, sentence]) => [field, notStatedIn(words, sentence)])),
    firstAid: a.firstAid && firstAidIn(words, a.firstAid, emergencyNumber),
    nextQuestions: a.nextQuestions.map((q) => ({ kind: q.kind, id: q.id, ask: askIn(words, q) })),
    advice: { ...advice, why: retell(words, advice.why), referTo: advice.referTo && retell(words, advice.referTo) },
    urgency: { ...urgency, why: retell(words, urgency.why) },
    onlyInspection: a.onlyInspection.map((sentence) => retell(words, sentence)),
  };
}

/** How the program came to it: weights of evidence, what each action would cost the workshop in its own table, and what it would ask next. */
const WORKINGS: readonly string[] = ["balance", "decibans", "losses", "nextQuestions"];

/** Of that, what the client is given: what their rug was found to be and by what, without the program's workings, which no letter tells. */
export const toldToClient = (retold: ReturnType<typeof retellAssessment>): unknown =>
  JSON.parse(JSON.stringify(retold, (field, value: unknown) => (WORKINGS.includes(field) ? undefined : value)));

/** A reading of a label keeps beside its words, in sentences, what was doubtful in them. */
function withoutSentences(value: FindingValue): FindingValue {
  if (typeof value !== "object" || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).filter(([field]) => field !== "doubts")) as FindingValue;
}

/** What is asked, by the tables of questions, photos and tests. */
function askIn(words: Words, { kind, id, ask }: Assessment["nextQuestions"][number]): string {
  if (kind === "photo" && Object.hasOwn(PHOTO_KINDS, id)) return words.table(`photo.${id as PhotoKind}.ask`);
  if (kind === "bench-test" && isTestId(id)) return words.table(`test.${id}`);
  return kind === "question" && Object.hasOwn(QUESTIONS, id) ? words.table(`question.${id as QuestionId}.ask`) : ask;
}
