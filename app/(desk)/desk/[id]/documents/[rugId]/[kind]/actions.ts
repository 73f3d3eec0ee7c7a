"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { NOT_THERE } from "@/lib/enquiry/authorise";
import { refuse } from "@/lib/enquiry/caller";
import { documentForm, inspectionForm } from "@/lib/enquiry/document-forms";
import { documentKindSchema } from "@/lib/enquiry/document-view";
import { makeDocument } from "@/lib/enquiry/make-document";
import { recordInspection } from "@/lib/enquiry/record-inspection";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { notTaken, type FormState } from "@/lib/ui/form-state";

const text = (value: FormValues[string]): string => [value ?? ""].flat()[0] ?? "";
const placeOf = (values: FormValues) => ({ enquiryId: text(values["enquiryId"]), rugId: text(values["rugId"]) });

/** To the made document, to be read; back to the form with what was typed where it was not made. */
export async function make(previous: FormState, form: FormData): Promise<FormState> {
  const values = fieldsOf(form);
  const kind = documentKindSchema.safeParse(values["kind"]);
  if (!kind.success) return notTaken(previous, { form: NOT_THERE.say }, values);
  const [caller, place] = [await staffCallerOrNull(), placeOf(values)];
  const state = await answerForm(previous, values, documentForm(kind.data), {
    operation: async (filled) => (caller ? makeDocument(caller, { ...place, kind: kind.data, filled, mayBox: values["mayBox"] === "yes" }, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ documentId }) => documentId,
  });
  if (!state.done) return state;
  revalidatePath("/desk", "layout");
  redirect(`/desk/${encodeURIComponent(place.enquiryId)}/documents/made/${encodeURIComponent(state.done)}`);
}

/** Back to the rug's documents once it is recorded. */
export async function inspect(previous: FormState, form: FormData): Promise<FormState> {
  const values = fieldsOf(form);
  const [caller, place] = [await staffCallerOrNull(), placeOf(values)];
  const state = await answerForm(previous, values, inspectionForm, {
    operation: async (entry) => (caller ? recordInspection(caller, { ...place, ...entry }, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ inspectionId }) => inspectionId,
  });
  if (!state.done) return state;
  revalidatePath("/desk", "layout");
  redirect(`/desk/${encodeURIComponent(place.enquiryId)}#documents`);
}
