import * as z from "zod/mini";
import { LIMITS } from "./limits";

export const LABEL_ANSWERS = ["right", "corrected", "unsure", "no-label"] as const;
/** What a person says of what was read: right as it is, their own words, that they cannot tell, or that there is no label in the photo. */
export const labelAnswerSchema = z.strictObject({
  photoId: z.string().check(z.minLength(1), z.maxLength(64)),
  answer: z.enum(LABEL_ANSWERS),
  text: z.optional(z.string().check(z.trim(), z.maxLength(LIMITS.labelChars, `A label can have at most ${LIMITS.labelChars.toLocaleString("en")} characters.`))),
}).check(z.refine((a) => a.answer !== "corrected" || (a.text ?? "") !== "", "Write what stands on the label."));
export type LabelAnswer = z.infer<typeof labelAnswerSchema>;
