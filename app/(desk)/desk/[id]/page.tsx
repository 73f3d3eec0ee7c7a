import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readEnquiry } from "@/lib/enquiry/read-enquiry";
import { readUsedParagraphs } from "@/lib/enquiry/read-used-paragraphs";
import { mailConfigured } from "@/lib/mail/outbox";
import { tomorrowAtEight } from "@/lib/enquiry/workshop-day";
import { openTests } from "@/lib/workshop/open-tests";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../../_parts/refused";
import { Enquiry } from "./enquiry";

// The title is the enquiry's own and stands in the page, so that it is read once.
export const metadata = { title: null };

interface Props { params: Promise<{ id: string }> }

export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id } = await params;
  const now = new Date();
  const [enquiry, used, settings] = await Promise.all([readEnquiry(caller, id, now), readUsedParagraphs(caller, id), readSettings()]);
  if (!enquiry.ok) return <Refused refusal={enquiry} />;
  if (!used.ok) return <Refused refusal={used} />;
  return (
    <>
      <title>{`${enquiry.value.title} · ${enquiry.value.reference}`}</title>
      <Enquiry key={id} view={enquiry.value} used={used.value} now={now.toISOString()} place={settings} workshop={settings} tomorrow={tomorrowAtEight(now, settings.timeZone)} mailConfigured={mailConfigured()} openTests={openTests(settings.reagents)} />
    </>
  );
}
