import * as z from "zod/mini";
import type { DocumentKind } from "../reply/documents/offered";
import { hasCome, isOfOurTime, TOO_LONG_AGO } from "./day-schema";
import type { FormValues } from "./step-schemas";
import { wrongWithDay } from "./told-day";

/** What is filled in by hand for a document, checked by the browser and the server alike. *elicited* */
export const DOCUMENT_LIMITS = { lineChars: 120, addressChars: 300, wordsChars: 300, foundChars: 2_000 } as const;

const upTo = (max: number) => z.string().check(z.trim(), z.maxLength(max, `At most ${max} characters.`));
/** A letter or a figure: less says nothing on paper. */
const SAYS = /[\p{L}\p{N}]/u;
const orNothing = (is: (text: string) => boolean) => (text: string) => text === "" || is(text);
const legible = z.refine<string>(orNothing((text) => SAYS.test(text)), "Write it in letters or figures, or leave it empty.");
const line = z._default(upTo(DOCUMENT_LIMITS.lineChars).check(legible), "");
const address = z._default(upTo(DOCUMENT_LIMITS.addressChars).check(legible), "");
const words = z._default(upTo(DOCUMENT_LIMITS.wordsChars).check(z.refine(orNothing((text) => /\p{L}/u.test(text)), "Write it word for word, or leave it empty.")), "");
/** What somebody tells of a seller is not what the seller said. */
const TOLD_OF_THEM = /^\P{L}*(?:they|he|she|the (?:seller|shop|dealer|man|woman|lady|gentleman|assistant))(?: \p{L}+){0,2} (?:told|said|says?|assured|promised|claimed|swore|insisted|called|described)\b|\b(?:told|assured|promised|sold) (?:me|us|it(?= as))\b/iu;
const saidBySeller = words.check(z.refine((text) => !TOLD_OF_THEM.test(text), "Write only the seller’s own words, such as “pure silk”: it stands in the letter as a quotation."));
const needed = (say: string) => upTo(DOCUMENT_LIMITS.lineChars).check(z.refine((text) => SAYS.test(text), say));

/** A sum as people write it, above nothing: "€1,200", "900 euros", "€ 900,-". */
const isPrice = (text: string): boolean => /[1-9]/u.test(text) && !/(?<!\p{N}\s*)[-−]\s*\p{Sc}?\s*\p{N}/u.test(text);
const price = z._default(upTo(DOCUMENT_LIMITS.lineChars).check(z.refine(orNothing(isPrice), "Write what was paid as a sum above nothing, such as “€1,200”, or leave it empty.")), "");
const bought = z._default(upTo(DOCUMENT_LIMITS.lineChars).check((day) => {
  const wrong = day.value === "" ? null : wrongWithDay(day.value);
  if (wrong) day.issues.push({ code: "custom", input: day.value, message: wrong });
}), "");

/** A tick that may be left out: "yes", or "" for everything else; in the browser a box without a tick is `false`. */
const tick = z._default(z.pipe(z.union([z.string(), z.literal(false)]), z.transform((ticked): "yes" | "" => (ticked === "yes" ? "yes" : ""))), "");

/** Whether the client's own words are kept at the workshop (`leaveOutWords`, of an owner) or quoted (`putInWords`, of a cleaner); see `quotesWords`. */
export const reportFields = z.strictObject({ theirReference: line, leaveOutWords: tick, putInWords: tick });
export const sellerLetterFields = z.strictObject({
  clientAddress: address, sellerName: needed("Write whom the letter is to."), sellerAddress: address, boughtOn: bought, price, invoice: line, saidWords: saidBySeller, labelWords: words,
});
export type ReportFields = z.infer<typeof reportFields>;
/** An owner's words are the account of what happened, and quoted unless left out; a cleaner's are a question among colleagues, and quoted only where somebody says so. */
export const quotesWords = ({ leaveOutWords, putInWords }: Pick<ReportFields, "leaveOutWords" | "putInWords">, isTrade: boolean): boolean =>
  (isTrade ? putInWords === "yes" : leaveOutWords !== "yes");
export type SellerLetterFields = z.infer<typeof sellerLetterFields>;

/** One schema for each kind of document. */
export const DOCUMENT_FIELDS = { "condition-report": reportFields, "letter-to-seller": sellerLetterFields, "care-card": z.strictObject({}), "cut-down-plan": z.strictObject({}) } as const satisfies Record<DocumentKind, z.ZodMiniType>;
/** As a form takes it: what the form carries beside its fields is left out. */
export const documentForm = (kind: DocumentKind): z.ZodMiniType<Record<string, string>, FormValues> =>
  z.object(DOCUMENT_FIELDS[kind].shape) as unknown as z.ZodMiniType<Record<string, string>, FormValues>;

export const VERDICTS = ["yes", "no"] as const;
/** A named person's own inspection of a rug. */
export const inspectionSchema = z.object({
  by: needed("Write who inspected the rug."),
  /** YYYY-MM-DD */
  day: z.iso.date("Write the day of the inspection.").check(z.refine(hasCome, "That day has not come yet."), z.refine(isOfOurTime, TOO_LONG_AGO)),
  found: upTo(DOCUMENT_LIMITS.foundChars).check(z.minLength(1, "Write what was seen.")),
  beyondRepair: z.enum(VERDICTS, "Say whether it is beyond economic repair."),
});
export type InspectionEntry = z.infer<typeof inspectionSchema>;
export const inspectionForm = inspectionSchema as unknown as z.ZodMiniType<InspectionEntry, FormValues>;
