import "server-only";
import { findingsFromAnswers } from "../triage/findings-from-answers";
import { letterUrgency, type LetterUrgency } from "../triage/letter-signs";
import type { Assessment } from "../triage/assessment";
import { readTold } from "../triage/told";
import type { Answer, Letter, Prisma } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { assessmentOf, enquiryAnswersOf, messagesOf, rugAnswersOf } from "./stored";

/** Beside the questions: that somebody here has read what the client wrote until then. */
export const WORDS_READ = "words-read";

/** What is read of an enquiry to know which words of its client nobody has read yet. */
export const WORDS_PARTS = {
  rugs: { orderBy: { position: "asc" }, include: { answers: true, assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1 } } },
  letters: { where: { automatic: false, state: { not: "taken_back" } }, select: { createdAt: true, state: true } },
} as const satisfies Prisma.EnquiryInclude;

type Told = Pick<Answer, "question" | "value" | "at">;
export interface Words {
  /** As stored: what was told of the enquiry as a whole. */
  answers: unknown;
  rugs: readonly { answers: readonly Told[] }[];
  /** Ours to the client that no machine wrote and nobody took back. */
  letters: readonly Pick<Letter, "createdAt">[];
}

/** Urgencies by words that nobody has read: neither answered by a letter since nor set aside. A later message outlives what was answered before it. */
export function urgenciesOfWords({ answers, rugs, letters }: Words): LetterUrgency[] {
  const enquiry = enquiryAnswersOf(answers).answers;
  const written = rugs.flatMap(({ answers: rows }) => {
    const told = readTold(findingsFromAnswers(rugAnswersOf(rows), enquiry));
    const stories = rows.filter((r) => r.question === "story").map((r) => ({ at: r.at, text: String(r.value), isAnswered: told.answered }));
    return [...stories.sort((a, b) => b.at.getTime() - a.at.getTime()).slice(0, 1), ...messagesOf(rows).map((m) => ({ ...m, isAnswered: () => false }))];
  });
  const read = Math.max(0, ...letters.map((l) => l.createdAt.getTime()), ...rugs.flatMap((r) => r.answers.filter((a) => a.question === WORDS_READ).map((a) => a.at.getTime())));
  return written.filter((w) => w.at.getTime() > read).flatMap((w) => letterUrgency(w.text, w.isAnswered) ?? []);
}

/** What waiting costs by each rug's newest assessment. */
export const urgenciesOfRugs = (rugs: readonly { assessments: readonly { result: unknown }[] }[]): Assessment["urgency"][] =>
  rugs.flatMap((r) => (r.assessments[0] ? [assessmentOf(r.assessments[0].result).urgency] : []));
