import * as z from "zod/mini";
import { LIMITS } from "./limits";
import { wrong } from "./wrong";

export const LABEL_ANSWERS = ["right", "corrected", "told", "kept", "unsure", "no-label"] as const;
/** What a person says of what was read: right as it is, their own words, those that were typed of the label before, the words agreed before another part was read, that they cannot tell, or that there is no label in the photo. */
export const labelAnswerSchema = z.strictObject({
  photoId: z.string().check(z.minLength(1), z.maxLength(64)),
  answer: z.enum(LABEL_ANSWERS),
  text: z.optional(z.string().check(z.trim(), z.maxLength(LIMITS.labelChars, wrong("wrong.label-long")))),
}).check(z.refine((a) => a.answer !== "corrected" || (a.text ?? "") !== "", wrong("wrong.label-words")));
export type LabelAnswer = z.infer<typeof labelAnswerSchema>;
