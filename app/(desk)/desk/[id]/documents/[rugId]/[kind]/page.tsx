import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { documentKindSchema } from "@/lib/enquiry/document-view";
import { readDocumentForm } from "@/lib/enquiry/read-document-form";
import { dayAndHour } from "@/lib/enquiry/workshop-day";
import { forbids } from "@/lib/staff/deeds";
import { DOCUMENTS } from "@/lib/reply/documents/offered";
import { readSettings } from "@/lib/workshop/settings";
import { DocumentForm } from "./document-form";
import css from "./document-form.module.css";
import { InspectionForm } from "./inspection-form";

// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };
const INSPECTION = "inspection";

interface Props { params: Promise<{ id: string; rugId: string; kind: string }> }

export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id, rugId, kind: given } = await params;
  const kind = given === INSPECTION ? null : documentKindSchema.safeParse(given);
  if (kind && !kind.success) notFound();
  const [form, settings] = await Promise.all([readDocumentForm(caller, { enquiryId: id, rugId, kind: kind?.data ?? null }, new Date()), readSettings()]);
  if (!form.ok) return <Refused refusal={form} />;
  const no = kind ? null : forbids(caller, "record-inspection");
  if (no) return <Refused refusal={no} />;
  const title = kind ? DOCUMENTS[kind.data].name : "Inspection";
  return (
    <div className={css.page}>
      <p className="small"><Link href={`/desk/${id}#documents`}><bdi>{form.value.rug}</bdi></Link> <span className="num">· {form.value.reference}</span></p>
      <h1>{title}</h1>
      {kind ? <DocumentForm kind={kind.data} title={title} at={{ enquiryId: id, rugId }} known={form.value} />
        : <InspectionForm title={title} at={{ enquiryId: id, rugId }} values={{ by: caller.name, day: dayAndHour(new Date(), settings.timeZone).day }} />}
    </div>
  );
}
