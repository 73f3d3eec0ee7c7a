import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readQueue } from "@/lib/enquiry/read-queue";
import { KeepFresh } from "@/lib/ui/keep-fresh";
import { Queue } from "@/lib/ui/queue";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../_parts/refused";

export const metadata = { title: "This morning" };

export default async function Page() {
  const caller = await staffCallerOrRedirect();
  const now = new Date();
  const [queue, settings] = await Promise.all([readQueue(caller, now), readSettings()]);
  if (!queue.ok) return <Refused refusal={queue} />;
  return (
    <>
      <Queue view={queue.value} now={now.toISOString()} place={settings} />
      <KeepFresh />
    </>
  );
}
