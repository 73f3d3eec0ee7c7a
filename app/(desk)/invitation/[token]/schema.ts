import * as z from "zod/mini";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { passwordTrouble } from "@/lib/staff/password-rules";

/** The password is judged here by its length and by what anybody guesses first; the server also knows the names it must not be made of. */
const fields = z.object({
  name: z.string("Write your name.").check(z.trim(), z.minLength(1, "Write your name.")),
  /** The invitation may name it; the server decides. */
  email: z.optional(z.string()),
  password: z.string("Choose a password.").check((ctx) => {
    const trouble = passwordTrouble(ctx.value);
    if (trouble) ctx.issues.push({ code: "custom", message: trouble, input: ctx.value });
  }),
});
export const welcomeSchema = fields as z.ZodMiniType<z.infer<typeof fields>, FormValues>;
