import { readInvitation } from "@/lib/staff/invitations";
import { readSettings } from "@/lib/workshop/settings";
import { Door } from "../../_parts/door";
import { join } from "./actions";
import { JoinForm } from "./join-form";

const TITLE = "Welcome to the desk";
// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };
const DEAD = "This link does not open anything";

/** Opening this changes nothing, however often: a mail scanner may open it too. */
export default async function Page({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const [invitation, { name }] = await Promise.all([readInvitation(token), readSettings()]);
  if (!invitation.ok) return <Door workshop={name} title={DEAD}><title>{DEAD}</title><p>{invitation.say}</p></Door>;
  const { role, email, first } = invitation.value;
  return (
    <Door workshop={name} title={TITLE}>
      <p>{first ? "You are the first here, and become the owner." : `You are invited as ${role === "owner" ? "an owner" : `a ${role}`}.`}</p>
      <JoinForm title={TITLE} email={email} action={join.bind(null, token)} />
    </Door>
  );
}
