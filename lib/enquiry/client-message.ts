import * as z from "zod/mini";
import { LIMITS } from "./limits";
import { wrong } from "./wrong";

/** What a client writes on their own page. */
export const messageSchema = z.object({
  message: z.string(wrong("wrong.message")).check(
    z.trim(),
    z.minLength(1, wrong("wrong.message")),
    z.maxLength(LIMITS.storyChars, wrong("wrong.message-long"))),
});
