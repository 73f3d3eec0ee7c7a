"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { forgetIntake, intakeCaller, intakeCallerOrOpen, rememberClient, rememberIntake } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { consentSchema } from "@/lib/enquiry/consent";
import { answerLabelReading } from "@/lib/enquiry/answer-label-reading";
import { refuse, type Caller, type Result } from "@/lib/enquiry/caller";
import { frameLabel } from "@/lib/enquiry/frame-label";
import type { FramedLabel } from "@/lib/enquiry/frame-schema";
import type { LabelReadingView } from "@/lib/enquiry/label-view";
import { readPhotoLabel } from "@/lib/enquiry/read-photo-label";
import { recordMeasurement } from "@/lib/enquiry/record-measurement";
import { spotsShown, type ShownSpots } from "@/lib/enquiry/shown-spots";
import { withdrawMeasurement } from "@/lib/enquiry/withdraw-measurement";
import { submissionSchema } from "@/lib/enquiry/questionnaire";
import { openAnother } from "@/lib/enquiry/open-intake";
import { knownOf, readIntake } from "@/lib/enquiry/read-intake";
import { removePhoto } from "@/lib/enquiry/remove-photo";
import { retellFields, retellResult } from "@/lib/enquiry/retell";
import { saveIntake } from "@/lib/enquiry/save-intake";
import { emptyValues, parseStep, valuesFromForm, type FieldErrors } from "@/lib/enquiry/step-forms";
import { isFormStep, type FormValues } from "@/lib/enquiry/step-schemas";
import { nextStep } from "@/lib/enquiry/steps";
import { submitEnquiry } from "@/lib/enquiry/submit-enquiry";
import { wrong } from "@/lib/enquiry/wrong";
import { notTaken, type FormState } from "@/lib/ui/form-state";
import { answerOfForm, type LabelFormState } from "@/lib/ui/label-form";

/** The answer to a form that was not taken, in the client's words. */
const saidNot = async (previous: FormState, errors: FieldErrors, values: FormValues): Promise<FormState> =>
  notTaken(previous, retellFields(await clientWords(), errors), values);

/** Keeps the answers of one page and leads on. */
export async function saveStep(previous: FormState, form: FormData): Promise<FormState> {
  const step = String(form.get("step"));
  if (!isFormStep(step)) return saidNot(previous, { form: wrong("refusal.no-such-page") }, {});
  const values = valuesFromForm(step, form);
  const parsed = parseStep(step, form.has("skip") ? emptyValues(step) : values);
  if (!parsed.ok) return saidNot(previous, parsed.errors, values);
  const caller = await intakeCallerOrOpen();
  if (!caller.ok) return saidNot(previous, { form: caller.say }, values);
  const saved = await saveIntake(caller.value, parsed.patch, parsed.cleared);
  if (!saved.ok) return saidNot(previous, { form: saved.say }, values);
  const read = await readIntake(caller.value);
  redirect(`/ask/${nextStep(step, saved.value.answers, read.ok ? knownOf(read.value) : [])}`);
}

const NO_INTAKE = refuse("expired", wrong("refusal.no-intake"));

/** One operation of the questionnaire on this device. */
async function ofIntake<T>(operation: (caller: Caller) => Promise<Result<T>>): Promise<Result<T>> {
  const caller = await intakeCaller();
  return retellResult(await clientWords(), caller ? await operation(caller) : NO_INTAKE);
}

/** Takes one photo out again. */
export async function takePhotoAway(photoId: string): Promise<Result<null>> {
  return ofIntake((caller) => removePhoto(caller, String(photoId)));
}

/** Keeps where a person touched a clean and a changed spot. */
export async function showSpots(shown: ShownSpots): Promise<Result<{ id: string }>> {
  return ofIntake((caller) => recordMeasurement(caller, spotsShown(shown), new Date()));
}

export async function takeSpotsBack(measurementId: string): Promise<Result<null>> {
  return ofIntake((caller) => withdrawMeasurement(caller, String(measurementId), new Date()));
}

/** How the label in a photo reads so far. */
export async function lookAtLabel(photoId: string): Promise<Result<LabelReadingView>> {
  return ofIntake((caller) => readPhotoLabel(caller, String(photoId)));
}

/** What the person says stands there. */
export async function answerLabel(before: LabelFormState, form: FormData): Promise<LabelFormState> {
  const after = await answerOfForm(before, form, (given) => ofIntake((caller) => answerLabelReading(caller, given, new Date())));
  // The way on passes over a question that is answered now.
  if (after.say === null) revalidatePath("/ask", "layout");
  return after;
}

/** Where the person says the label lies. */
export async function showLabel(given: FramedLabel): Promise<Result<LabelReadingView>> {
  return ofIntake((caller) => frameLabel(caller, given, new Date()));
}

/** Sends the enquiry. Without a name and a way back it leads to the page that asks for them. */
export async function sendEnquiry(previous: FormState, form: FormData): Promise<FormState> {
  const consent = consentSchema.safeParse({ consent: form.get("consent") });
  if (!consent.success) return saidNot(previous, { consent: consent.error.issues[0]?.message ?? "" }, {});
  const caller = await intakeCaller();
  const intake = caller ? await readIntake(caller) : null;
  if (!caller || !intake?.ok) redirect("/ask");
  const { name, email, telephone } = intake.value.answers.contact ?? {};
  const submission = submissionSchema.safeParse({ contact: { name, ...(email ? { email } : {}), ...(telephone ? { telephone } : {}) }, consent: true });
  if (!submission.success || !(email || telephone)) redirect("/ask/contact");
  const sent = await submitEnquiry(caller, submission.data, new Date());
  if (!sent.ok) return saidNot(previous, { form: sent.say }, { consent: "yes" });
  await rememberClient(sent.value.clientToken);
  redirect("/ask/sent");
}

/** Begins anew on this device, for another rug of the same person. */
export async function addAnotherRug(): Promise<void> {
  const caller = await intakeCaller();
  const opened = caller && await openAnother(caller, new Date());
  if (opened?.ok) await rememberIntake(opened.value.token);
  else await forgetIntake();
  redirect("/ask/wet-now");
}
