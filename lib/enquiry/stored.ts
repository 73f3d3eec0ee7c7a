import "server-only";
import * as z from "zod/mini";
import type { Answer } from "../store/database";
import { SEEN_IN_A_PHOTO, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../trade/questions";
import type { Assessment, Range } from "../triage/assessment";
import { ownLines } from "../words/quoted-lines";
import { intakeAnswersSchema, rugAnswersSchema } from "./questionnaire";

/** What lies in Json columns, parsed on its way out. */

const consentSchema = z.object({ sentence: z.string(), at: z.iso.datetime() });
export type Consent = z.infer<typeof consentSchema>;

const enquiryAnswersSchema = z.object({
  ...z.pick(intakeAnswersSchema, { wetNow: true, reason: true }).shape,
  consent: z.optional(z.nullable(consentSchema)),
});

/** What was told about the enquiry as a whole, and the consent given with it. */
export function enquiryAnswersOf(stored: unknown): { answers: EnquiryAnswers; consent: Consent | null } {
  const { consent, ...answers } = enquiryAnswersSchema.parse(stored);
  return { answers, consent: consent ?? null };
}

type Row = Pick<Answer, "question" | "value" | "at">;
/** Beside the questions: what a client wrote later on their own page. */
export const MESSAGE = "message";

/** The newest answer of each question; rows of a question that is no longer asked are left out. */
export function rugAnswersOf(rows: readonly Row[]): RugAnswers {
  const newest = new Map([...rows].sort((a, b) => a.at.getTime() - b.at.getTime()).map((r) => [r.question, r.value]));
  const shape = rugAnswersSchema.shape;
  const known = Object.entries(shape).flatMap(([question, schema]) => {
    const parsed = newest.has(question) ? schema.safeParse(newest.get(question)) : null;
    return parsed?.success ? [[question, parsed.data] as const] : [];
  });
  return rugAnswersSchema.parse(Object.fromEntries(known));
}

/** When a question was answered last; null where it never was. */
export const answeredAt = (rows: readonly Pick<Answer, "question" | "at">[], question: QuestionId): Date | null =>
  rows.reduce<Date | null>((newest, row) => (row.question === question && (newest === null || row.at > newest) ? row.at : newest), null);

/** Before a question's name: whether staff saw its answer in a photo with their own eyes. */
export const SEEN = "seen:";

/** The questions whose newest answer staff saw in a photo. */
export function seenOf(rows: readonly Row[]): QuestionId[] {
  const newest = new Map([...rows].sort((a, b) => a.at.getTime() - b.at.getTime()).map((r) => [r.question, r.value]));
  return SEEN_IN_A_PHOTO.filter((q) => newest.get(`${SEEN}${q}`) === true);
}

// A letter of photos alone has no words, and holds its place by an empty row. What they answer line by line is ours, and nobody's account of a rug;
// where every line is marked, they marked their own.
const textsOf = (rows: readonly Row[]): { at: Date; text: string }[] =>
  rows.map((r) => ({ at: r.at, value: z.string().parse(r.value) })).map(({ at, value }) => ({ at, text: ownLines(value).trim() || value })).filter((r) => r.text !== "").sort((a, b) => a.at.getTime() - b.at.getTime());
/** What the client wrote after the enquiry, oldest first. */
export const messagesOf = (rows: readonly Row[]) => textsOf(rows.filter((r) => r.question === MESSAGE));
/** What was written of a rug, oldest first: how it began, and every message since. */
export const writtenOf = (rows: readonly Row[]) => textsOf(rows.filter((r) => r.question === MESSAGE || r.question === "story"));

const range = z.nullable(z.object({ low: z.number(), median: z.number(), high: z.number() })) satisfies z.ZodMiniType<Range | null>;
const said = z.object({ what: z.string(), strength: z.string(), from: z.string(), decibans: z.number(), staff: z.string(), client: z.string() });
const component = z.object({ part: z.string(), yarn: z.string(), fibres: z.array(z.object({ fibre: z.string(), probability: z.number() })), says: z.string() });
/** The shape; that the ids in it are ids of our own tables is the writer's word, and the model version says which tables. */
const assessmentSchema = z.looseObject({
  modelVersion: z.string(),
  asOf: z.string(),
  fibres: z
    .array(z.object({ fibre: z.string(), probability: z.number(), low: z.number(), high: z.number(), words: z.string() }))
    .check(z.minLength(1)),
  balance: z.looseObject({ prior: z.number(), findings: z.number(), damping: z.number(), cap: z._default(z.number(), 0), total: z.number() }),
  /** Assessments of earlier models have none. */
  components: z._default(z.array(component), []),
  findings: z.array(z.looseObject(said.shape)),
  mechanisms: z.array(z.object({ mechanism: z.string(), probability: z.number() })),
  improvement: range,
  texture: z._default(z.nullable(z.object({ now: z.array(z.number()), after: z.array(z.number()) })), null),
  odour: z._default(z.nullable(z.object({ now: z.number(), returns: z.number() })), null),
  lifeYears: range,
  worse: z.nullable(z.number()),
  beyondRepair: z.nullable(z.number()),
  methods: z.array(z.object({ method: z.string(), verdict: z.string(), why: z.string() })),
  advice: z.looseObject({ action: z.string(), why: z.string() }),
  urgency: z.object({ level: z.enum(["hours", "two-days", "a-week", "can-wait"]), why: z.string() }),
  firstAid: z.nullable(z.array(z.string())),
  why: z.record(z.string(), z.string()),
});
export const assessmentOf = (stored: unknown): Assessment => assessmentSchema.parse(stored) as unknown as Assessment;
