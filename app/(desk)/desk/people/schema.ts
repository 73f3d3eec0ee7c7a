import * as z from "zod/mini";
import type { FormValues } from "@/lib/enquiry/step-schemas";

export const ROLES = {
  owner: { name: "Owner", may: "everything, settings and people too" },
  reviewer: { name: "Reviewer", may: "writes, approves and sends, and reads what trainees wrote" },
  trainee: { name: "Trainee", may: "writes and approves; a second person sends" },
} as const;
export type RoleId = keyof typeof ROLES;
export const ROLE_IDS = Object.keys(ROLES) as [RoleId, ...RoleId[]];

const invitation = z.object({
  email: z.string("Write the e-mail address.").check(z.trim(), z.minLength(1, "Write the e-mail address.")),
  role: z.enum(ROLE_IDS, "Choose what this person may do."),
});
export const invitationSchema = invitation as z.ZodMiniType<z.infer<typeof invitation>, FormValues>;
