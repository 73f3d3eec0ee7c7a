import { redirect } from "next/navigation";
import { knownOf } from "@/lib/enquiry/read-intake";
import { resumeAt } from "@/lib/enquiry/steps";
import { intakeOfDevice } from "./intake";

/** Where somebody begins, or goes on where they stopped. */
export default async function Ask() {
  const { intake } = await intakeOfDevice();
  redirect(intake.submittedReference ? "/ask/sent" : `/ask/${resumeAt(intake.answers, intake.photos.length, knownOf(intake))}`);
}
