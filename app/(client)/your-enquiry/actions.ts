"use server";
import { revalidatePath } from "next/cache";
import { clientCaller } from "@/app/_server/caller";
import { sendFromClient } from "@/lib/enquiry/answer-client";
import { refuse, type Caller, type Result } from "@/lib/enquiry/caller";
import { messageSchema } from "@/lib/enquiry/client-message";
import { recordMeasurement } from "@/lib/enquiry/record-measurement";
import { spotsShown, type ShownSpots } from "@/lib/enquiry/shown-spots";
import { withdrawMeasurement } from "@/lib/enquiry/withdraw-measurement";
import { notTaken, type FormState } from "@/lib/ui/form-state";

const NO_LINK = "This page is no longer open on this device. Follow the link in our letter again; what you wrote is still in the box.";

/** One operation of the client whose link was opened on this device. */
async function ofClient<T>(operation: (caller: Caller) => Promise<Result<T>>): Promise<Result<T>> {
  const caller = await clientCaller();
  const done = caller ? await operation(caller) : refuse("expired", NO_LINK);
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

/** Keeps what the client wrote and lets the workshop know. */
export async function sendMessage(previous: FormState, form: FormData): Promise<FormState> {
  const values = { message: String(form.get("message") ?? "") };
  const parsed = messageSchema.safeParse(values);
  if (!parsed.success) return notTaken(previous, { message: parsed.error.issues[0]?.message ?? "" }, values);
  const caller = await clientCaller();
  if (!caller) return notTaken(previous, { form: NO_LINK }, values);
  const sent = await sendFromClient(caller, { message: parsed.data.message });
  if (!sent.ok) return notTaken(previous, { form: sent.say }, values);
  revalidatePath("/your-enquiry");
  return { attempt: previous.attempt + 1, errors: {}, values: {}, done: "Your message is with us." };
}
