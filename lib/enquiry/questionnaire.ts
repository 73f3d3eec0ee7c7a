import * as z from "zod/mini";
import { CURRENCIES, QUESTIONS, type AnswerOf, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../trade/questions";

/**
 * The schemas of what a person may tell us, made from the question tables and shared by the browser, the server
 * and the command line. Every object is strict: an unknown key is an error, not a silent loss.
 */
export const LIMITS = {
  nameChars: 200, shortTextChars: 500, labelChars: 2_000, storyChars: 8_000,
  maxRugs: 12, maxPhotos: 12,
  minCm: 20, maxCm: 2_000, maxPrice: 10_000_000, firstYear: 1850,
} as const;

const answerIds = <Q extends QuestionId>(q: Q) => [...Object.keys(QUESTIONS[q].answers), "unsure"] as AnswerOf<Q>[];
export const one = <Q extends QuestionId>(q: Q) => z.enum(answerIds(q) as [AnswerOf<Q>, ...AnswerOf<Q>[]]);
const many = <Q extends QuestionId>(q: Q) => z.array(one(q)).check(z.maxLength(40));
const text = (max: number, what: string) =>
  z.string().check(z.trim(), z.maxLength(max, `${what} can have at most ${max.toLocaleString("en")} characters.`));
/** The year it is now where the day begins first, fourteen hours ahead of UTC. */
const thisYear = () => new Date(Date.now() + 14 * 3_600_000).getUTCFullYear();
const hasCome = (year: number) => year <= thisYear();
const cm = (side: string) =>
  z.number(`Write the ${side} as a number.`).check(
    z.minimum(LIMITS.minCm, `The ${side} must be at least ${LIMITS.minCm} cm.`),
    z.maximum(LIMITS.maxCm, `The ${side} can be at most ${LIMITS.maxCm} cm.`));

export const rugAnswersSchema = z.strictObject({
  labelText: z.optional(text(LIMITS.labelChars, "The label")),
  labelFound: z.optional(z.enum(["typed", "none", "unsure"])),
  sellerSaid: z.optional(one("sellerSaid")),
  sellerWords: z.optional(text(LIMITS.shortTextChars, "What the seller called it")),
  boughtWhere: z.optional(one("boughtWhere")),
  boughtPlace: z.optional(text(LIMITS.shortTextChars, "The place")),
  boughtYear: z.optional(z.number("Write the year as four digits.").check(
    z.int("Write the year as four digits."), z.minimum(LIMITS.firstYear, "That year is too long ago to be when you bought it."), z.maximum(9999, "Write the year as four digits."),
    z.refine(hasCome, "That year is still to come."))),
  price: z.optional(z.number("Write the price as a number.").check(
    z.minimum(0, "A price cannot be below zero."), z.maximum(LIMITS.maxPrice, "That price is more than we can take in."))),
  currency: z.optional(z.enum(CURRENCIES)),
  widthCm: z.optional(cm("width")),
  lengthCm: z.optional(cm("length")),
  shine: z.optional(one("shine")),
  footprints: z.optional(one("footprints")),
  touch: z.optional(one("touch")),
  back: z.optional(one("back")),
  fringe: z.optional(one("fringe")),
  fringeKind: z.optional(one("fringeKind")),
  incidents: z.optional(many("incidents")),
  liquid: z.optional(one("liquid")),
  since: z.optional(one("since")),
  treatments: z.optional(many("treatments")),
  treatedBy: z.optional(one("treatedBy")),
  changes: z.optional(many("changes")),
  room: z.optional(one("room")),
  household: z.optional(many("household")),
  age: z.optional(one("age")),
  matters: z.optional(many("matters")),
  story: z.optional(text(LIMITS.storyChars, "Your story")),
});

export const contactSchema = z.strictObject({
  name: z.string("Write your name.").check(z.trim(), z.minLength(1, "Write your name."), z.maxLength(LIMITS.nameChars, "That name is too long for us.")),
  email: z.optional(z.email("Write an e-mail address like name@example.org.").check(z.maxLength(254, "That address is too long."))),
  telephone: z.optional(text(40, "A telephone number")),
});

export const thirdPartySchema = z.strictObject({
  kind: z.enum(["trade-customer", "insurer", "seller"]),
  name: z.string().check(z.trim(), z.minLength(1), z.maxLength(LIMITS.nameChars)),
  reference: z.optional(text(LIMITS.shortTextChars, "A reference")),
});

/** What is kept while the questionnaire is being filled in: everything optional, nothing lost. */
export const intakeAnswersSchema = z.strictObject({
  wetNow: z.optional(one("wetNow")),
  reason: z.optional(one("reason")),
  rug: z.optional(rugAnswersSchema),
  contact: z.optional(z.strictObject({
    name: z.optional(text(LIMITS.nameChars, "A name")), email: z.optional(text(254, "An address")), telephone: z.optional(text(40, "A telephone number")),
  })),
});
export type IntakeAnswers = z.infer<typeof intakeAnswersSchema>;

/** What the last page sends, beside what was saved on the way. */
export const submissionSchema = z.strictObject({
  contact: contactSchema,
  consent: z.literal(true, "We need your consent to read your enquiry and answer it."),
});
export type Submission = z.infer<typeof submissionSchema>;

// The schemas and the trade's types say the same; either side changing alone fails to compile.
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
export const _sameRug: Same<z.infer<typeof rugAnswersSchema>, RugAnswers> = true;
export const _sameEnquiry: Same<Pick<IntakeAnswers, "wetNow" | "reason">, EnquiryAnswers> = true;
