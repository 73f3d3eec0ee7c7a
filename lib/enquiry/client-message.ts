import * as z from "zod/mini";
import { LIMITS } from "./questionnaire";

/** What a client writes on their own page. */
export const messageSchema = z.object({
  message: z.string("Write your message.").check(
    z.trim(),
    z.minLength(1, "Write your message."),
    z.maxLength(LIMITS.storyChars, `A message can have at most ${LIMITS.storyChars.toLocaleString("en")} characters.`)),
});
