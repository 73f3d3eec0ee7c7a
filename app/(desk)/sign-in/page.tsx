import { redirect } from "next/navigation";
import { staffCallerOrNull } from "@/app/_server/caller";
import { readSettings } from "@/lib/workshop/settings";
import { Door } from "../_parts/door";
import { SignInForm } from "./sign-in-form";

const TITLE = "Sign in to the desk";
// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

export default async function Page() {
  if (await staffCallerOrNull()) redirect("/desk");
  const { name } = await readSettings();
  return (
    <Door workshop={name} title={TITLE}>
      <SignInForm title={TITLE} />
      <p className="small">No account? The owner of the workshop can invite you. Forgotten the password? Ask for a new invitation.</p>
    </Door>
  );
}
