import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readEnquiry } from "@/lib/enquiry/read-enquiry";
import { shownAs } from "@/lib/trade/questions";
import css from "./blur.module.css";
import { BlurForm } from "./blur-form";

export const metadata = { title: "Blur part of a photo" };

interface Props { params: Promise<{ id: string; photoId: string }> }

export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id, photoId } = await params;
  const enquiry = await readEnquiry(caller, id, new Date());
  if (!enquiry.ok) return <Refused refusal={enquiry} />;
  const photo = enquiry.value.rugs.flatMap((r) => r.photos).find((p) => p.id === photoId);
  if (!photo) notFound();
  return (
    <div className={css.page}>
      <p className="small"><Link href={`/desk/${id}`}><bdi>{enquiry.value.title}</bdi></Link> <span className="num">· {enquiry.value.reference}</span></p>
      <h1>Blur part of a photo</h1>
      {enquiry.value.may.blur ? (
        <>
          <p className={css.about}>
            For faces, papers and number plates. What is blurred is gone for good, in every size, here, on the client’s page and in every document
            that shows this photo. What was measured or read there no longer counts. Backups made before now, and letters that have left, still
            hold the old picture.
          </p>
          <BlurForm enquiryId={id} photo={{ id: photo.id, width: photo.width, height: photo.height, shows: shownAs(photo.kind).ask }} />
        </>
      ) : <p className={css.about}>It cannot be undone, so it is left to the owner and the reviewers. Ask one of them.</p>}
    </div>
  );
}
