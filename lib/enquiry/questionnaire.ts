import * as z from "zod/mini";
import { CURRENCIES, QUESTIONS, type AnswerOf, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../trade/questions";
import { LIMITS } from "./limits";
import { wrong } from "./wrong";

/**
 * The schemas of what a person may tell us, made from the question tables and shared by the browser, the server
 * and the command line. Every object is strict: an unknown key is an error, not a silent loss.
 */
const answerIds = <Q extends QuestionId>(q: Q) => [...Object.keys(QUESTIONS[q].answers), "unsure"] as AnswerOf<Q>[];
export const one = <Q extends QuestionId>(q: Q) => z.enum(answerIds(q) as [AnswerOf<Q>, ...AnswerOf<Q>[]]);
const many = <Q extends QuestionId>(q: Q) => z.array(one(q)).check(z.maxLength(40));
const text = (max: number, tooLong: string) => z.string().check(z.trim(), z.maxLength(max, tooLong));
/** The year it is now where the day begins first, fourteen hours ahead of UTC. */
export const thisYear = () => new Date(Date.now() + 14 * 3_600_000).getUTCFullYear();
const hasCome = (year: number) => year <= thisYear();
const cm = (side: "width" | "length") =>
  z.number(wrong(`wrong.${side}`)).check(z.minimum(LIMITS.minCm, wrong(`wrong.${side}-least`)), z.maximum(LIMITS.maxCm, wrong(`wrong.${side}-most`)));

export const rugAnswersSchema = z.strictObject({
  labelText: z.optional(text(LIMITS.labelChars, wrong("wrong.label-long"))),
  labelFound: z.optional(z.enum(["typed", "none", "unsure"])),
  sellerSaid: z.optional(one("sellerSaid")),
  sellerWords: z.optional(text(LIMITS.shortTextChars, wrong("wrong.seller-long"))),
  boughtWhere: z.optional(one("boughtWhere")),
  boughtPlace: z.optional(text(LIMITS.shortTextChars, wrong("wrong.place-long"))),
  boughtYear: z.optional(z.number(wrong("wrong.year")).check(
    z.int(wrong("wrong.year")), z.minimum(LIMITS.firstYear, wrong("wrong.year-old")), z.maximum(9999, wrong("wrong.year")), z.refine(hasCome, wrong("wrong.year-ahead")))),
  price: z.optional(z.number(wrong("wrong.price")).check(
    z.minimum(0, wrong("wrong.price-below")), z.maximum(LIMITS.maxPrice, wrong("wrong.price-above")))),
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
  story: z.optional(text(LIMITS.storyChars, wrong("wrong.story-long"))),
});

/** Fewer digits than this are taken for a slip and not for a number that can be rung (elicited). */
const FEWEST_DIGITS = 5;
/** Whether what stands in the field can be a number at all. */
const canBeRung = (telephone: string) => telephone.replace(/\D/g, "").length >= FEWEST_DIGITS;
/** The longest address there is (RFC 5321, errata 1690). */
const MAIL_CHARS = 254;
export const contactSchema = z.strictObject({
  name: z.string(wrong("wrong.name")).check(z.trim(), z.minLength(1, wrong("wrong.name")), z.maxLength(LIMITS.nameChars, wrong("wrong.name-long"))),
  email: z.optional(z.email(wrong("wrong.email")).check(z.maxLength(MAIL_CHARS, wrong("wrong.email-long")))),
  telephone: z.optional(text(LIMITS.telephoneChars, wrong("wrong.number-long")).check(z.refine(canBeRung, wrong("wrong.number")))),
});

export const thirdPartySchema = z.strictObject({
  kind: z.enum(["trade-customer", "insurer", "seller"]),
  name: z.string().check(z.trim(), z.minLength(1), z.maxLength(LIMITS.nameChars)),
  reference: z.optional(text(LIMITS.shortTextChars, `A reference can have at most ${LIMITS.shortTextChars} characters.`)),
});

/** What is kept while the questionnaire is being filled in: everything optional, nothing lost. */
export const intakeAnswersSchema = z.strictObject({
  wetNow: z.optional(one("wetNow")),
  reason: z.optional(one("reason")),
  rug: z.optional(rugAnswersSchema),
  contact: z.optional(z.strictObject({
    name: z.optional(text(LIMITS.nameChars, wrong("wrong.name-long"))), email: z.optional(text(MAIL_CHARS, wrong("wrong.email-long"))),
    telephone: z.optional(text(LIMITS.telephoneChars, wrong("wrong.number-long"))),
  })),
});
export type IntakeAnswers = z.infer<typeof intakeAnswersSchema>;

/** What the last page sends, beside what was saved on the way. */
export const submissionSchema = z.strictObject({
  contact: contactSchema,
  consent: z.literal(true, wrong("wrong.consent")),
});
export type Submission = z.infer<typeof submissionSchema>;

// The schemas and the trade's types say the same; either side changing alone fails to compile.
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
export const _sameRug: Same<z.infer<typeof rugAnswersSchema>, RugAnswers> = true;
export const _sameEnquiry: Same<Pick<IntakeAnswers, "wetNow" | "reason">, EnquiryAnswers> = true;
