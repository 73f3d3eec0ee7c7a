import * as z from "zod/mini";
import type { DocumentKind } from "../reply/documents/offered";
import { hasCome, isOfOurTime, TOO_LONG_AGO } from "./day-schema";
import type { FormValues } from "./step-schemas";

/** What is filled in by hand for a document, checked by the browser and the server alike. *elicited* */
export const DOCUMENT_LIMITS = { lineChars: 120, addressChars: 300, wordsChars: 300, foundChars: 2_000 } as const;

const upTo = (max: number) => z.string().check(z.trim(), z.maxLength(max, `At most ${max} characters.`));
const line = z._default(upTo(DOCUMENT_LIMITS.lineChars), "");
const address = z._default(upTo(DOCUMENT_LIMITS.addressChars), "");
const words = z._default(upTo(DOCUMENT_LIMITS.wordsChars), "");
const needed = (say: string) => upTo(DOCUMENT_LIMITS.lineChars).check(z.minLength(1, say));

export const reportFields = z.strictObject({ theirReference: line });
export const sellerLetterFields = z.strictObject({
  clientAddress: address, sellerName: needed("Write whom the letter is to."), sellerAddress: address, boughtOn: line, price: line, invoice: line, saidWords: words, labelWords: words,
});
export type ReportFields = z.infer<typeof reportFields>;
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
