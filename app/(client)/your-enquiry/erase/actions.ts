"use server";
import { redirect } from "next/navigation";
import { clientCaller, forgetClient } from "@/app/_server/caller";
import { eraseEnquiry } from "@/lib/enquiry/erase-enquiry";
import { notTaken, type FormState } from "@/lib/ui/form-state";

const NO_LINK = "This page is no longer open on this device. Follow the link in our letter again.";

/** Erases the client's enquiry, and what this device knows of it. */
export async function erase(previous: FormState, form: FormData): Promise<FormState> {
  if (form.get("sure") !== "yes") return notTaken(previous, { sure: "Tick this if you are sure: it cannot be undone." }, {});
  const caller = await clientCaller();
  if (!caller) return notTaken(previous, { form: NO_LINK }, { sure: "yes" });
  const erased = await eraseEnquiry(caller, { enquiryId: caller.enquiryId, typed: "" }, new Date());
  if (!erased.ok) return notTaken(previous, { form: erased.say }, { sure: "yes" });
  await forgetClient();
  redirect("/your-enquiry/erased");
}
