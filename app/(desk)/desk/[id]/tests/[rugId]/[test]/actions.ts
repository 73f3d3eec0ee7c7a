"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type * as z from "zod/mini";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { NOT_THERE } from "@/lib/enquiry/authorise";
import { benchTestForm } from "@/lib/enquiry/bench-test-form";
import { isTestId } from "@/lib/enquiry/bench-test-schema";
import { refuse } from "@/lib/enquiry/caller";
import type { LaboratoryEntry } from "@/lib/enquiry/laboratory-schema";
import { recordBenchTest } from "@/lib/enquiry/record-bench-test";
import { recordLaboratoryReport } from "@/lib/enquiry/record-laboratory-report";
import { reportForm } from "@/lib/enquiry/report-form";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { weighingsForm } from "@/lib/enquiry/weighings-form";
import type { WeighedEntry } from "@/lib/enquiry/weighings-schema";
import { notTaken, type FormState } from "@/lib/ui/form-state";

const text = (value: FormValues[string]): string => [value ?? ""].flat()[0] ?? "";
const hiddenOf = (values: FormValues) => ({ id: text(values["id"]), rugId: text(values["rugId"]) });

/** Back to the rug's tests once it is recorded; with what was typed where it was not. */
function go(state: FormState, values: FormValues): FormState {
  if (!state.done) return state;
  revalidatePath("/desk", "layout");
  redirect(`/desk/${encodeURIComponent(state.done)}#tests-${encodeURIComponent(text(values["rugId"]))}`);
}

export async function record(previous: FormState, form: FormData): Promise<FormState> {
  const values = fieldsOf(form);
  const test = text(values["test"]);
  if (!isTestId(test)) return notTaken(previous, { form: NOT_THERE.say }, values);
  const caller = await staffCallerOrNull();
  const state = await answerForm(previous, values, benchTestForm(test), {
    operation: async (entry) => (caller ? recordBenchTest(caller, { ...hiddenOf(values), test, ...entry }, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ enquiryId }) => enquiryId,
  });
  return go(state, values);
}

async function enter<T extends LaboratoryEntry | WeighedEntry>(previous: FormState, form: FormData, schema: z.ZodMiniType<T, FormValues>): Promise<FormState> {
  const values = fieldsOf(form);
  const caller = await staffCallerOrNull();
  const state = await answerForm(previous, values, schema, {
    operation: async (entry) => (caller ? recordLaboratoryReport(caller, { ...hiddenOf(values), ...entry }, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ enquiryId }) => enquiryId,
  });
  return go(state, values);
}
export const enterReport = async (previous: FormState, form: FormData): Promise<FormState> => enter(previous, form, reportForm);
export const enterWeighings = async (previous: FormState, form: FormData): Promise<FormState> => enter(previous, form, weighingsForm);
