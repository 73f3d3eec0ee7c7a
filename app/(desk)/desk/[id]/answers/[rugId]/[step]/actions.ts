"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { NOT_THERE } from "@/lib/enquiry/authorise";
import { correctAnswer } from "@/lib/enquiry/correct-answer";
import { valuesFromForm } from "@/lib/enquiry/step-forms";
import { isCorrectable } from "@/lib/enquiry/step-schemas";
import { notTaken, type FormState } from "@/lib/ui/form-state";

/** Keeps the new answer and leads back to what was told; with what was typed where it was not taken. */
export async function correct(previous: FormState, form: FormData): Promise<FormState> {
  const [step, rugId] = [String(form.get("step")), String(form.get("rugId"))];
  if (!isCorrectable(step)) return notTaken(previous, { form: NOT_THERE.say }, {});
  const values = valuesFromForm(step, form);
  const caller = await staffCallerOrNull();
  if (!caller) return notTaken(previous, { form: SIGNED_OUT }, values);
  const kept = await correctAnswer(caller, { rugId, step, values, seen: form.get("seen") === "yes" }, new Date());
  if (!kept.ok) return notTaken(previous, kept.fields ?? { form: kept.say }, values);
  revalidatePath("/desk", "layout");
  redirect(`/desk/${encodeURIComponent(kept.value.enquiryId)}#told-${encodeURIComponent(rugId)}`);
}
