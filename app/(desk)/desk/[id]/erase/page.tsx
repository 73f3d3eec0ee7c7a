import { Link } from "@/lib/ui/link";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readEnquiry } from "@/lib/enquiry/read-enquiry";
import css from "./erase.module.css";
import { EraseForm } from "./erase-form";

// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

interface Props { params: Promise<{ id: string }> }

/** What erasing an enquiry means, and its reference to be typed. */
export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id } = await params;
  const enquiry = await readEnquiry(caller, id, new Date());
  if (!enquiry.ok) return <Refused refusal={enquiry} />;
  const { title, reference, client, may } = enquiry.value;
  return (
    <div className={css.page}>
      <p className="small"><Link href={`/desk/${id}`}><bdi>{title}</bdi></Link> <span className="num">· {reference}</span></p>
      <h1>Erase this enquiry</h1>
      {may.erase ? (
        <>
          <p>
            Everything of <bdi>{client.name}</bdi>’s enquiry {reference} goes for good: answers, photos, findings, letters sent and unsent, messages, documents,
            and their name and address where this is their only enquiry. That somebody erased it, and when, stays.
          </p>
          <p>What belongs to an order may have to be kept for some years; local law decides. Backups made before now still hold it; a restored one is freed of it again.</p>
          <p>Did they ask for a copy? <a href={`/copies/${id}`} download>Take a copy of everything</a> first.</p>
          <EraseForm enquiryId={id} reference={reference} />
        </>
      ) : <p>It cannot be undone, so it is left to the owner and the reviewers. Ask one of them.</p>}
    </div>
  );
}
