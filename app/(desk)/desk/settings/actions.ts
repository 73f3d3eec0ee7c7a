"use server";
import { revalidatePath } from "next/cache";
import * as z from "zod/mini";
import { staffCallerOrNull } from "@/app/_server/caller";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { asStaff, SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { refuse, type Result } from "@/lib/enquiry/caller";
import { judgeOpenAnew } from "@/lib/enquiry/judge-open-anew";
import { monthsOfPlace } from "@/lib/enquiry/may-erase";
import { saveSettings } from "@/lib/enquiry/save-settings";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { switchReagent } from "@/lib/enquiry/switch-reagent";
import { lossesForm, priorsForm } from "@/lib/enquiry/table-forms";
import type { FormState } from "@/lib/ui/form-state";
import { readSettings, type WorkshopSettings } from "@/lib/workshop/settings";
import { settingsFormSchema, valuesOf, withFields } from "./schema";

/** The months after which the form says that enquiries may be erased; null where it says so of none. */
const mayErase = (values: FormValues): number | null => Object.keys(values).flatMap((name) => monthsOfPlace(name) ?? []).at(-1) ?? null;

/** One form of the settings: what it holds is put in its place, the rest stays as it was. */
async function keep<T>(previous: FormState, form: FormData, schema: z.ZodMiniType<T, FormValues>, put: (settings: WorkshopSettings, fields: T) => WorkshopSettings): Promise<FormState> {
  const [caller, values] = [await staffCallerOrNull(), fieldsOf(form)];
  const state = await answerForm(previous, values, schema, {
    operation: async (fields) => (caller ? saveSettings(caller, put(await readSettings(), fields), new Date(), mayErase(values)) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ says }) => ["Kept. Letters and assessments from now on use these.", ...says].join(" "),
  });
  if (!state.done) return state;
  revalidatePath("/desk", "layout");
  return state;
}

/** The fields show afterwards what was kept, which may be more than was typed: a price that followed its currency. */
export async function keepSettings(previous: FormState, form: FormData): Promise<FormState> {
  const state = await keep(previous, form, settingsFormSchema, withFields);
  return state.done ? { ...state, values: valuesOf(await readSettings()) } : state;
}
export const keepLosses = async (previous: FormState, form: FormData): Promise<FormState> => keep(previous, form, lossesForm, (settings, losses) => ({ ...settings, losses }));
export const keepPriors = async (previous: FormState, form: FormData): Promise<FormState> => keep(previous, form, priorsForm, (settings, priors) => ({ ...settings, priors }));

export const judgeOpen = async (): Promise<Result<{ judged: number; left: number }>> => asStaff(z.null(), null, (caller) => judgeOpenAnew(caller, new Date()));

const switchSchema = z.strictObject({ reagent: z.string(), to: z.enum(["on", "off"]), isAssessed: z.boolean() });
export async function switchTo(input: z.infer<typeof switchSchema>): Promise<Result<null>> {
  return asStaff(switchSchema, input, (caller, value) => switchReagent(caller, value, new Date()));
}
