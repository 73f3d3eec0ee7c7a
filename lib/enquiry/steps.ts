import { QUESTIONS, type AnswerOf, type QuestionId } from "../trade/questions";
import type { IntakeAnswers } from "./questionnaire";

/**
 * The way through the questionnaire: one step a page, in one order, and which steps cannot apply after what was
 * answered so far. Pure; pages, server actions and progress words all read it from here.
 */
export type ChapterId = "now" | "photos" | "rug" | "happened" | "home" | "you";

interface StepRow {
  readonly id: string;
  readonly chapter: ChapterId;
  /** The question table's row that this page asks, where it asks one. */
  readonly question?: QuestionId;
  /** Shows something and asks nothing. */
  readonly tells?: true;
  /** Whether it can apply. Absent: always. */
  readonly applies?: (answers: IntakeAnswers) => boolean;
  /** The steps `applies` looks at. */
  readonly after?: readonly string[];
}

const incidentsOf = (a: IntakeAnswers) => a.rug?.incidents ?? [];
const happenedAny = (a: IntakeAnswers, ids: readonly AnswerOf<"incidents">[]) => incidentsOf(a).some((i) => ids.includes(i));
const isReason = (a: IntakeAnswers, ids: readonly AnswerOf<"reason">[]) => a.reason !== undefined && ids.includes(a.reason);

/** Things that happen at a moment, so that "when was that?" makes sense. */
const MOMENTS = ["spill", "pet-urine", "vomit", "water", "flood", "washed-professional", "washed-home", "spotted"] as const;
/** Things somebody may have tried to put right. */
const TREATABLE = [...MOMENTS, "insects", "damp", "unknown"] as const;
/** Incidents that are a treatment themselves: somebody did them. */
const BY_SOMEBODY = ["washed-professional", "washed-home", "spotted"] as const;
const HAPPENED_REASONS = ["just-happened", "after-cleaning", "trade"] as const;

const wasTreated = (a: IntakeAnswers) =>
  happenedAny(a, BY_SOMEBODY) || (a.rug?.treatments ?? []).some((t) => t !== "nothing" && t !== "unsure");
const onlyCurious = (a: IntakeAnswers) =>
  isReason(a, ["what-is-it", "mis-sold"]) && incidentsOf(a).length > 0 && incidentsOf(a).every((i) => i === "nothing" || i === "unsure");

export const STEPS = [
  { id: "wet-now", chapter: "now", question: "wetNow" },
  { id: "first-aid", chapter: "now", tells: true, applies: (a) => a.wetNow === "wet" || a.wetNow === "damp", after: ["wet-now"] },
  { id: "reason", chapter: "now", question: "reason" },
  { id: "call-us", chapter: "now", tells: true, applies: (a) => a.reason === "trade", after: ["reason"] },
  { id: "photos", chapter: "photos" },
  { id: "label", chapter: "rug" },
  { id: "seller", chapter: "rug", question: "sellerSaid" },
  { id: "bought", chapter: "rug", question: "boughtWhere" },
  { id: "price", chapter: "rug" },
  { id: "size", chapter: "rug" },
  { id: "shine", chapter: "rug", question: "shine" },
  { id: "footprints", chapter: "rug", question: "footprints" },
  { id: "touch", chapter: "rug", question: "touch" },
  { id: "back", chapter: "rug", question: "back" },
  { id: "fringe", chapter: "rug", question: "fringe" },
  { id: "fringe-feel", chapter: "rug", question: "fringeKind", applies: (a) => a.rug?.fringe === "part-of-rug" || a.rug?.fringe === "sewn-on", after: ["fringe"] },
  { id: "happened", chapter: "happened", question: "incidents" },
  { id: "liquid", chapter: "happened", question: "liquid", applies: (a) => happenedAny(a, ["spill", "spotted"]), after: ["happened"] },
  { id: "since", chapter: "happened", question: "since", applies: (a) => happenedAny(a, MOMENTS) || isReason(a, HAPPENED_REASONS), after: ["happened"] },
  { id: "treatments", chapter: "happened", question: "treatments", applies: (a) => happenedAny(a, TREATABLE) || isReason(a, HAPPENED_REASONS), after: ["happened"] },
  { id: "treated-by", chapter: "happened", question: "treatedBy", applies: wasTreated, after: ["happened", "treatments"] },
  { id: "changes", chapter: "happened", question: "changes", applies: (a) => !onlyCurious(a), after: ["happened"] },
  { id: "room", chapter: "home", question: "room" },
  { id: "household", chapter: "home", question: "household" },
  { id: "age", chapter: "home", question: "age" },
  { id: "matters", chapter: "home", question: "matters" },
  { id: "story", chapter: "you" },
  { id: "contact", chapter: "you" },
  { id: "send", chapter: "you" },
] as const satisfies readonly StepRow[];

export type StepId = (typeof STEPS)[number]["id"];
const ROWS: readonly (StepRow & { id: StepId })[] = STEPS;

export const stepRow = (id: StepId): StepRow => ROWS.find((r) => r.id === id) as StepRow;
export const isStepId = (text: string): text is StepId => ROWS.some((r) => r.id === text);
export const FIRST_STEP: StepId = STEPS[0].id;

/** Whether a step can apply after these answers. */
export const applies = (id: StepId, answers: IntakeAnswers): boolean => stepRow(id).applies?.(answers) ?? true;

/** The steps of one person's way, in order. */
export const stepsFor = (answers: IntakeAnswers): StepId[] => ROWS.filter((r) => applies(r.id, answers)).map((r) => r.id);

/** The step after this one that applies; null after the last. `known`: steps whose question was answered elsewhere, which are passed over. */
export function nextStep(id: StepId, answers: IntakeAnswers, known: readonly StepId[] = []): StepId | null {
  const place = ROWS.findIndex((r) => r.id === id);
  return ROWS.slice(place + 1).find((r) => applies(r.id, answers) && !known.includes(r.id))?.id ?? null;
}

/** The step before this one that applies; null before the first. */
export function previousStep(id: StepId, answers: IntakeAnswers, known: readonly StepId[] = []): StepId | null {
  const place = ROWS.findIndex((r) => r.id === id);
  return ROWS.slice(0, place).findLast((r) => applies(r.id, answers) && !known.includes(r.id))?.id ?? null;
}

const isGiven = (value: unknown): boolean => value !== undefined && value !== null && value !== "";

/** Whether anything was answered on this step. Pages that ask nothing are never "answered". */
export function isAnswered(id: StepId, answers: IntakeAnswers, photoCount = 0): boolean {
  const rug = answers.rug ?? {};
  const question = stepRow(id).question;
  if (question === "wetNow" || question === "reason") return isGiven(answers[question]);
  if (question) return isGiven(rug[question as keyof typeof rug]);
  switch (id) {
    case "photos": return photoCount > 0;
    case "label": return isGiven(rug.labelFound);
    case "price": return isGiven(rug.price) || isGiven(rug.boughtYear);
    case "size": return isGiven(rug.widthCm) || isGiven(rug.lengthCm);
    case "story": return isGiven(rug.story);
    case "contact": return isGiven(answers.contact?.name);
    default: return false;
  }
}

/** Where somebody who comes back goes on: after the last step they answered. `known`: steps answered elsewhere, as in `nextStep`. */
export function resumeAt(answers: IntakeAnswers, photoCount = 0, known: readonly StepId[] = []): StepId {
  const last = stepsFor(answers).findLast((id) => !known.includes(id) && isAnswered(id, answers, photoCount));
  return last === undefined ? FIRST_STEP : nextStep(last, answers, known) ?? "send";
}

/** The answer ids offered to a person, in order; `unsure` is not among them, it is always offered. */
export function offeredAnswers<Q extends QuestionId>(question: Q, answers: IntakeAnswers): AnswerOf<Q>[] {
  const all = Object.keys(QUESTIONS[question].answers) as AnswerOf<Q>[];
  return question === "treatedBy" && answers.reason !== "trade" ? all.filter((id) => id !== "me-trade") : all;
}

/** Answers that say "none of these", so that nothing else can be chosen beside them. */
const ALONE: readonly string[] = ["unsure", "nothing", "none"];
export const standsAlone = (answer: string): boolean => ALONE.includes(answer);

/** Several choices without contradiction: beside a real answer, "nothing", "none" and "unsure" fall away. */
export function withoutContradiction<T extends string>(chosen: readonly T[]): T[] {
  const unique = [...new Set(chosen)];
  const real = unique.filter((c) => !standsAlone(c));
  return real.length > 0 ? real : unique.slice(0, 1);
}

/**
 * The answers without those to questions that no longer apply, as after somebody went back and changed one. Goes
 * through in the order of the steps, so that what hangs on a dropped answer is dropped too.
 */
export function relevantAnswers(answers: IntakeAnswers): IntakeAnswers {
  return ROWS.reduce((kept, row) => {
    if (!row.question || !kept.rug || applies(row.id, kept)) return kept;
    const rug = Object.fromEntries(Object.entries(kept.rug).filter(([key]) => key !== row.question));
    return { ...kept, rug };
  }, answers);
}
