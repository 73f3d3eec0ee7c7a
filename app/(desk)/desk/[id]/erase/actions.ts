"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { fieldsOf } from "@/app/(desk)/_server/answer-form";
import { SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { refuse } from "@/lib/enquiry/caller";
import { eraseEnquiry } from "@/lib/enquiry/erase-enquiry";
import { notTaken, type FormState } from "@/lib/ui/form-state";

/** To the page that says that it is gone; back with what was typed where it was not erased. */
export async function erase(previous: FormState, form: FormData): Promise<FormState> {
  const values = fieldsOf(form);
  const caller = await staffCallerOrNull();
  const wish = { enquiryId: String(values["enquiryId"]), typed: String(values["typed"]) };
  const erased = caller ? await eraseEnquiry(caller, wish, new Date()) : refuse("not-signed-in", SIGNED_OUT);
  if (!erased.ok) return notTaken(previous, erased.fields ?? { form: erased.say }, values);
  revalidatePath("/desk", "layout");
  redirect("/desk/erased");
}
