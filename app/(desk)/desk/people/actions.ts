"use server";
import * as z from "zod/mini";
import { staffCallerOrNull } from "@/app/_server/caller";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { asStaff, SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { refuse, type Result } from "@/lib/enquiry/caller";
import { inviteStaff } from "@/lib/staff/invitations";
import { disableStaff, restoreStaff, setRole } from "@/lib/staff/people";
import type { FormState } from "@/lib/ui/form-state";
import { invitationSchema, ROLE_IDS } from "./schema";

/** The link is shown once, to the person who asked for it: nothing but its hash is kept. */
export async function invite(previous: FormState, form: FormData): Promise<FormState> {
  const caller = await staffCallerOrNull();
  return answerForm(previous, fieldsOf(form), invitationSchema, {
    operation: async (given) => (caller ? inviteStaff(caller, given) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ link }) => link,
  });
}

const id = z.string().check(z.minLength(1), z.maxLength(64));
const roleSchema = z.strictObject({ staffId: id, role: z.enum(ROLE_IDS) });
export async function changeRole(input: z.infer<typeof roleSchema>): Promise<Result<null>> {
  return asStaff(roleSchema, input, setRole);
}
export async function disable(staffId: string): Promise<Result<null>> {
  return asStaff(id, staffId, (caller, value) => disableStaff(caller, value));
}
export async function restore(staffId: string): Promise<Result<null>> {
  return asStaff(id, staffId, restoreStaff);
}
