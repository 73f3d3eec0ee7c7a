import * as z from "zod/mini";
import type { FormValues } from "@/lib/enquiry/step-schemas";

const fields = z.object({
  email: z.string("Write your e-mail address.").check(z.trim(), z.minLength(1, "Write your e-mail address.")),
  password: z.string("Write your password.").check(z.minLength(1, "Write your password.")),
});
export const signInSchema = fields as z.ZodMiniType<z.infer<typeof fields>, FormValues>;
