"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { staffCallerOrNull } from "@/app/_server/caller";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { refuse } from "@/lib/enquiry/caller";
import { enterEnquiry } from "@/lib/enquiry/enter-enquiry";
import type { FormState } from "@/lib/ui/form-state";
import { MANY, telephoneSchema } from "./schema";

export async function enter(previous: FormState, form: FormData): Promise<FormState> {
  const caller = await staffCallerOrNull();
  const state = await answerForm(previous, fieldsOf(form, MANY), telephoneSchema, {
    operation: async (file) => (caller ? enterEnquiry(caller, file, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ enquiryId }) => enquiryId,
  });
  if (!state.done) return state;
  revalidatePath("/desk", "layout");
  redirect(`/desk/${state.done}`);
}
