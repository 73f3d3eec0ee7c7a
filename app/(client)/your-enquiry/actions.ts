"use server";
import { revalidatePath } from "next/cache";
import { clientCaller } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { sendFromClient } from "@/lib/enquiry/answer-client";
import { answerLabelReading } from "@/lib/enquiry/answer-label-reading";
import { refuse, type Caller, type Result } from "@/lib/enquiry/caller";
import { messageSchema } from "@/lib/enquiry/client-message";
import { frameLabel } from "@/lib/enquiry/frame-label";
import type { FramedLabel } from "@/lib/enquiry/frame-schema";
import type { LabelReadingView } from "@/lib/enquiry/label-view";
import { readPhotoLabel } from "@/lib/enquiry/read-photo-label";
import { recordMeasurement } from "@/lib/enquiry/record-measurement";
import { retellFields, retellResult } from "@/lib/enquiry/retell";
import { spotsShown, type ShownSpots } from "@/lib/enquiry/shown-spots";
import type { FieldErrors } from "@/lib/enquiry/step-forms";
import { withdrawMeasurement } from "@/lib/enquiry/withdraw-measurement";
import { wrong } from "@/lib/enquiry/wrong";
import { notTaken, type FormState } from "@/lib/ui/form-state";
import { answerOfForm, type LabelFormState } from "@/lib/ui/label-form";

const NO_LINK = wrong("refusal.no-link");

/** One operation of the client whose link was opened on this device. */
async function asClient<T>(operation: (caller: Caller) => Promise<Result<T>>): Promise<Result<T>> {
  const caller = await clientCaller();
  return retellResult(await clientWords(), caller ? await operation(caller) : refuse("expired", NO_LINK));
}

/** The same, after which the page shows what came of it. */
async function ofClient<T>(operation: (caller: Caller) => Promise<Result<T>>): Promise<Result<T>> {
  const done = await asClient(operation);
  if (done.ok) revalidatePath("/your-enquiry");
  return done;
}

/** Keeps where the client touched a clean and a changed spot. */
export async function showSpots(shown: ShownSpots): Promise<Result<{ id: string }>> {
  return ofClient((caller) => recordMeasurement(caller, spotsShown(shown), new Date()));
}

export async function takeSpotsBack(measurementId: string): Promise<Result<null>> {
  return ofClient((caller) => withdrawMeasurement(caller, String(measurementId), new Date()));
}

/** How the label in a photo reads so far. */
export async function lookAtLabel(photoId: string): Promise<Result<LabelReadingView>> {
  return asClient((caller) => readPhotoLabel(caller, String(photoId)));
}

/** What the client says stands there. */
export async function answerLabel(before: LabelFormState, form: FormData): Promise<LabelFormState> {
  const after = await answerOfForm(before, form, (given) => ofClient((caller) => answerLabelReading(caller, given, new Date())));
  // What they told us stands on the same page.
  if (after.say === null) revalidatePath("/your-enquiry");
  return after;
}

/** Where the client says the label lies. */
export async function showLabel(given: FramedLabel): Promise<Result<LabelReadingView>> {
  return asClient((caller) => frameLabel(caller, given, new Date()));
}

/** Keeps what the client wrote and lets the workshop know. */
export async function sendMessage(previous: FormState, form: FormData): Promise<FormState> {
  const values = { message: String(form.get("message") ?? "") };
  const words = await clientWords();
  const no = (errors: FieldErrors) => notTaken(previous, retellFields(words, errors), values);
  const parsed = messageSchema.safeParse(values);
  if (!parsed.success) return no({ message: parsed.error.issues[0]?.message ?? "" });
  const caller = await clientCaller();
  if (!caller) return no({ form: NO_LINK });
  const sent = await sendFromClient(caller, { message: parsed.data.message });
  if (!sent.ok) return no({ form: sent.say });
  revalidatePath("/your-enquiry");
  return { attempt: previous.attempt + 1, errors: {}, values: {}, done: words.say("own.message-sent") };
}
