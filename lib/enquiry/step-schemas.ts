import * as z from "zod/mini";
import { CURRENCIES, QUESTIONS } from "../trade/questions";
import { parseLength } from "../words/read-length";
import { typedNumber } from "./amounts";
import { contactSchema, rugAnswersSchema, thisYear, type IntakeAnswers } from "./questionnaire";
import { isStepId, stepRow, withoutContradiction, type StepId } from "./steps";
import { currencyOf, parsePrice } from "./typed-price";
import { parseYear } from "./typed-year";
import { wrong, wrongOf, type UnreadKey } from "./wrong";

/**
 * The schema of each page: from what stands in its fields (text, as a browser sends it) to what is kept. The browser
 * checks with it before it sends; the server checks again.
 */
export type FormValues = Record<string, string | string[] | undefined>;

/** The pages that ask something and keep it in the answers. */
export type FormStepId = Exclude<StepId, "first-aid" | "call-us" | "photos" | "send">;
const WITHOUT_FORM: readonly StepId[] = ["first-aid", "call-us", "photos", "send"];
export const isFormStep = (text: string): text is FormStepId => isStepId(text) && !WITHOUT_FORM.includes(text);
/** What staff may correct of a rug: the client's story and name stay as the client gave them. */
export const isCorrectable = (text: string): text is FormStepId => isFormStep(text) && text !== "story" && text !== "contact";

const CHOOSE_ONE = wrong("wrong.choose-one");
const CHOOSE_SOME = wrong("wrong.choose-some");

const optionalText = z.optional(z.string());
const filled = (text: string | undefined) => (text?.trim() ? text.trim() : undefined);
type Issues = { issues: { push: (issue: { code: "custom"; message: string; path: string[]; input: unknown }) => void } };

/** Reports what a schema of the questionnaire has against a value, beside the field it was typed in. */
function checkField(ctx: Issues, path: string, schema: z.ZodMiniType, value: unknown): void {
  const result = z.safeParse(schema, value);
  const message = result.success ? undefined : result.error.issues[0]?.message;
  if (message) ctx.issues.push({ code: "custom", message, path: [path], input: value });
}

/** A number typed as text: undefined when empty, reported when it is none or out of its range; `unread` says so of a text that is none, with its words. */
function numberOf(ctx: Issues, input: { path: string; text: string | undefined; schema: z.ZodMiniType; parse: (text: string) => number | null; unread?: UnreadKey }) {
  const text = filled(input.text);
  if (text === undefined) return undefined;
  const value = typedNumber(text, input.parse);
  if (Number.isNaN(value) && input.unread) {
    ctx.issues.push({ code: "custom", message: wrongOf(input.unread, text), path: [input.path], input: text });
    return undefined;
  }
  checkField(ctx, input.path, input.schema, value);
  return value;
}

const choiceOf = (step: StepId) => {
  const question = stepRow(step).question;
  if (!question) throw new Error(`Expected a step that asks a question but received ${step}`);
  const { kind, of, answers } = QUESTIONS[question];
  const ids: [string, ...string[]] = ["unsure", ...Object.keys(answers)];
  const keep = (value: unknown): IntakeAnswers => (of === "enquiry" ? { [question]: value } : { rug: { [question]: value } });
  return { kind, ids, keep };
};

function choiceSchema(step: StepId) {
  const { kind, ids, keep } = choiceOf(step);
  return kind === "one"
    ? z.pipe(z.object({ answer: z.enum(ids, CHOOSE_ONE) }), z.transform((v) => keep(v.answer)))
    : z.pipe(
        z.object({ answer: z.array(z.enum(ids), CHOOSE_SOME).check(z.minLength(1, CHOOSE_SOME)) }),
        z.transform((v) => keep(withoutContradiction(v.answer))));
}

/** A choice with a line of one's own words beside it. */
function choiceWithWords(step: StepId, words: "sellerWords" | "boughtPlace") {
  const { ids, keep } = choiceOf(step);
  return z.pipe(z.object({ answer: z.enum(ids, CHOOSE_ONE), [words]: optionalText }), z.transform((v, ctx) => {
    const text = filled(v[words] as string | undefined);
    checkField(ctx as Issues, words, rugAnswersSchema.shape[words], text);
    const kept = keep(v.answer);
    return { ...kept, rug: { ...kept.rug, [words]: text ?? "" } } satisfies IntakeAnswers;
  }));
}

const labelSchema = z.pipe(
  z.object({ answer: z.enum(["typed", "none", "unsure"], CHOOSE_ONE), labelText: optionalText }),
  z.transform((v, ctx): IntakeAnswers => {
    const text = filled(v.labelText);
    if (v.answer === "typed" && text === undefined) {
      ctx.issues.push({ code: "custom", message: wrong("wrong.label-missing"), path: ["labelText"], input: v });
    }
    checkField(ctx as Issues, "labelText", rugAnswersSchema.shape.labelText, text);
    return { rug: { labelFound: v.answer, labelText: v.answer === "typed" ? (text ?? "") : "" } };
  }));

const priceSchema = z.pipe(
  z.object({ boughtYear: optionalText, price: optionalText, currency: z.optional(z.enum(CURRENCIES)) }),
  z.transform((v, ctx): IntakeAnswers => {
    const { shape } = rugAnswersSchema;
    const boughtYear = numberOf(ctx as Issues, { path: "boughtYear", text: v.boughtYear, schema: shape.boughtYear, parse: (t) => parseYear(t, thisYear()), unread: "wrong.year-unread" });
    const price = numberOf(ctx as Issues, { path: "price", text: v.price, schema: shape.price, parse: (t) => parsePrice(t)?.amount ?? null, unread: "wrong.price-unread" });
    const typed = parsePrice(v.price ?? "");
    const currency = typed ? currencyOf(typed, v.currency) : v.currency;
    if (currency === null) ctx.issues.push({ code: "custom", message: wrong("wrong.price-dollars"), path: ["currency"], input: v });
    return { rug: { boughtYear, price, currency: price === undefined ? undefined : (currency ?? undefined) } };
  }));

const sizeFields = { widthCm: optionalText, lengthCm: optionalText, widthFt: optionalText, widthIn: optionalText, lengthFt: optionalText, lengthIn: optionalText };
type SizeFields = { [K in keyof typeof sizeFields]?: string | undefined };

/** Feet and inches out of their two fields, as they are written in one. */
const inOne = (feet: string, inches: string) => `${/\d$/.test(feet) ? `${feet} ft` : feet} ${inches}`;
/** One side in centimetres from feet and inches; undefined when both are empty. */
function sideFromFeet(ctx: Issues, v: SizeFields, side: "width" | "length"): number | undefined {
  const [feet, inches] = [filled(v[`${side}Ft`]), filled(v[`${side}In`])];
  const [text, bare] = feet === undefined ? [inches, "in" as const] : [inches === undefined ? feet : inOne(feet, inches), "ft" as const];
  return numberOf(ctx, { path: `${side}Ft`, text, schema: rugAnswersSchema.shape[`${side}Cm`], parse: (t) => parseLength(t, bare) });
}

const sizeSchema = z.pipe(
  z.object({ unit: z.enum(["cm", "ft"]), ...sizeFields }),
  z.transform((v, ctx): IntakeAnswers => {
    const side = (which: "width" | "length") =>
      v.unit === "ft"
        ? sideFromFeet(ctx as Issues, v, which)
        : numberOf(ctx as Issues, { path: `${which}Cm`, text: v[`${which}Cm`], schema: rugAnswersSchema.shape[`${which}Cm`], parse: (t) => parseLength(t, "cm") });
    return { rug: { widthCm: side("width"), lengthCm: side("length") } };
  }));

const storySchema = z.pipe(z.object({ story: optionalText }), z.transform((v, ctx): IntakeAnswers => {
  const story = v.story?.trim() ?? "";
  checkField(ctx as Issues, "story", rugAnswersSchema.shape.story, story);
  return { rug: { story } };
}));

const contactFormSchema = z.pipe(
  z.object({ name: optionalText, email: optionalText, telephone: optionalText }),
  z.transform((v, ctx): IntakeAnswers => {
    const contact = { name: v.name?.trim() ?? "", email: filled(v.email), telephone: filled(v.telephone) };
    for (const key of ["name", "email", "telephone"] as const) checkField(ctx as Issues, key, contactSchema.shape[key], contact[key]);
    if (!contact.email && !contact.telephone) ctx.issues.push({ code: "custom", message: wrong("wrong.no-way-back"), path: ["email"], input: v });
    return { contact };
  }));

const OWN: Partial<Record<StepId, z.ZodMiniType<IntakeAnswers>>> = {
  label: labelSchema,
  seller: choiceWithWords("seller", "sellerWords"),
  bought: choiceWithWords("bought", "boughtPlace"),
  price: priceSchema,
  size: sizeSchema,
  story: storySchema,
  contact: contactFormSchema,
};

/** The schema of a page: takes FormValues (anything else is reported, not thrown), gives the patch to keep. */
export const stepSchema = (step: FormStepId) => (OWN[step] ?? choiceSchema(step)) as z.ZodMiniType<IntakeAnswers, FormValues>;
