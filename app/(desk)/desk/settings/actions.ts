"use server";
import { revalidatePath } from "next/cache";
import { staffCallerOrNull } from "@/app/_server/caller";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { refuse } from "@/lib/enquiry/caller";
import { saveSettings } from "@/lib/enquiry/save-settings";
import type { FormState } from "@/lib/ui/form-state";
import { readSettings } from "@/lib/workshop/settings";
import { settingsFormSchema, withFields } from "./schema";

export async function keepSettings(previous: FormState, form: FormData): Promise<FormState> {
  const caller = await staffCallerOrNull();
  const state = await answerForm(previous, fieldsOf(form), settingsFormSchema, {
    operation: async (fields) => (caller ? saveSettings(caller, withFields(await readSettings(), fields)) : refuse("not-signed-in", SIGNED_OUT)),
    done: () => "Kept. Letters and assessments from now on use these.",
  });
  if (state.done) revalidatePath("/desk", "layout");
  return state;
}
