import * as z from "zod/mini";
import { typedNumber } from "@/lib/enquiry/amounts";
import { parseLength } from "@/lib/words/read-length";
import { enquiryFileSchema, type EnquiryFile } from "@/lib/enquiry/enquiry-file";
import { thisYear } from "@/lib/enquiry/questionnaire";
import { currencyOf, parsePrice } from "@/lib/enquiry/typed-price";
import { parseYear } from "@/lib/enquiry/typed-year";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { QUESTIONS, type QuestionId } from "@/lib/trade/questions";

const QUESTION_IDS = Object.keys(QUESTIONS) as QuestionId[];
/** The fields that hold several answers. */
export const MANY: readonly string[] = QUESTION_IDS.filter((q) => QUESTIONS[q].kind === "many");

/** What is in a field, without what an untouched one holds in this browser or that. */
const filled = (value: unknown): string | undefined => (typeof value === "string" && value.trim() ? value.trim() : undefined);
const numberIn = (value: unknown, parse: (text: string) => number | null): number | undefined => {
  const text = filled(value);
  return text === undefined ? undefined : typedNumber(text, parse);
};
const answersIn = (value: unknown): string[] | undefined => {
  const list = [value].flat().filter((v): v is string => typeof v === "string" && v !== "");
  return list.length > 0 ? list : undefined;
};
const present = (fields: Record<string, unknown>) => Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined));

/** The enquiry as the file of `npm run triage` has it: one way in for both. A size is read in the unit that the form asked for. */
function fileOf(v: Readonly<Record<string, unknown>>): unknown {
  const answer = (q: QuestionId) => (QUESTIONS[q].kind === "many" ? answersIn(v[q]) : filled(v[q]));
  const ofRug = Object.fromEntries(QUESTION_IDS.filter((q) => QUESTIONS[q].of === "rug").map((q) => [q, answer(q)]));
  const labelText = filled(v.labelText);
  const typed = parsePrice(filled(v.price) ?? "");
  const price = numberIn(v.price, (text) => parsePrice(text)?.amount ?? null);
  const side = (text: string) => parseLength(text, v.areaUnit === "sqft" ? "ft" : "cm");
  const rug = present({
    ...ofRug, labelText, labelFound: labelText ? "typed" : v.noLabel ? "none" : undefined, sellerWords: filled(v.sellerWords), boughtPlace: filled(v.boughtPlace),
    boughtYear: numberIn(v.boughtYear, (text) => parseYear(text, thisYear())), price, currency: price === undefined ? undefined : (typed?.currency ?? filled(v.currency)),
    widthCm: numberIn(v.widthCm, side), lengthCm: numberIn(v.lengthCm, side), story: filled(v.story),
  });
  const client = present({ name: filled(v.name) ?? "", email: filled(v.email), telephone: filled(v.telephone) });
  return present({ channel: "telephone", wetNow: answer("wetNow"), reason: answer("reason"), client, rugs: [rug] });
}

/** The field an error of the file belongs to: the last name on its way, list positions left out. */
const fieldOf = (path: readonly PropertyKey[]): string => [...path].reverse().find((p): p is string => typeof p === "string") ?? "form";
/** The schema speaks to the client; here somebody else writes for them. */
const FOR_STAFF: Readonly<Record<string, string>> = { "Write your name.": "Write the caller's name." };

const fields = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): EnquiryFile => {
  const price = parsePrice(filled(values.price) ?? "");
  if (price && currencyOf(price, values.currency) === null) ctx.issues.push({ code: "custom", message: "Choose which dollars they paid in.", path: ["currency"], input: values });
  const parsed = enquiryFileSchema.safeParse(fileOf(values));
  if (parsed.success) return parsed.data;
  for (const { path, message } of parsed.error.issues) ctx.issues.push({ code: "custom", message: FOR_STAFF[message] ?? message, path: [fieldOf(path)], input: values });
  return z.NEVER;
}));
export const telephoneSchema = fields as unknown as z.ZodMiniType<EnquiryFile, FormValues>;
