"use server";
import { revalidatePath } from "next/cache";
import { clientCaller } from "@/app/_server/caller";
import { sendFromClient } from "@/lib/enquiry/answer-client";
import { messageSchema } from "@/lib/enquiry/client-message";
import { notTaken, type FormState } from "@/lib/ui/form-state";

const NO_LINK = "This page is no longer open on this device. Follow the link in our letter again; what you wrote is still in the box.";

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
