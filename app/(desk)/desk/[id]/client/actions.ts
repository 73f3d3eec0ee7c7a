"use server";
import { revalidatePath } from "next/cache";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { refuse } from "@/lib/enquiry/caller";
import { clientSchema } from "@/lib/enquiry/client-schema";
import { correctClient } from "@/lib/enquiry/correct-client";
import type { FormState } from "@/lib/ui/form-state";
import { sayCorrected } from "./words";

/** Keeps the corrected details and says what became of letters and links. Also where it was refused the page is read anew: somebody may have changed it. */
export async function correct(previous: FormState, form: FormData): Promise<FormState> {
  const { enquiryId, seen, ...values } = fieldsOf(form);
  const caller = await staffCallerOrNull();
  const isSomebodyElses = values["somebodyElses"] === "yes";
  const state = await answerForm(previous, { somebodyElses: "", ...values }, clientSchema, {
    operation: async (contact) => (caller ? correctClient(caller, { enquiryId: String(enquiryId), seen: String(seen), contact, isSomebodyElses }, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: sayCorrected,
  });
  if (caller) revalidatePath("/desk", "layout");
  return state;
}
