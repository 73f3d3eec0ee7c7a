"use server";
import { redirect } from "next/navigation";
import { clientCaller, forgetClient } from "@/app/_server/caller";
import { clientWords } from "@/app/_server/client-words";
import { eraseEnquiry } from "@/lib/enquiry/erase-enquiry";
import { retellFields } from "@/lib/enquiry/retell";
import type { FieldErrors } from "@/lib/enquiry/step-forms";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { wrong } from "@/lib/enquiry/wrong";
import { notTaken, type FormState } from "@/lib/ui/form-state";

/** Erases the client's enquiry, and what this device knows of it. */
export async function erase(previous: FormState, form: FormData): Promise<FormState> {
  const words = await clientWords();
  const no = (errors: FieldErrors, values: FormValues) => notTaken(previous, retellFields(words, errors), values);
  if (form.get("sure") !== "yes") return no({ sure: wrong("wrong.erase-tick") }, {});
  const caller = await clientCaller();
  if (!caller) return no({ form: wrong("refusal.link-again") }, { sure: "yes" });
  const erased = await eraseEnquiry(caller, { enquiryId: caller.enquiryId, typed: "" }, new Date());
  if (!erased.ok) return no({ form: erased.say }, { sure: "yes" });
  await forgetClient();
  redirect("/your-enquiry/erased");
}
