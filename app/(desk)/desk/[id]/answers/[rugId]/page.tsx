import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readEnquiry } from "@/lib/enquiry/read-enquiry";
import { isCorrectable } from "@/lib/enquiry/step-schemas";
import { stepsFor } from "@/lib/enquiry/steps";
import { toldOn } from "@/lib/ui/review";
import { labelsAtDesk } from "@/lib/ui/told";
import { titleOf } from "@/lib/ui/step-titles";
import { deskWords } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import css from "./answers.module.css";

export const metadata = { title: "Correct an answer" };

/** Every question about one rug with what was answered, each leading to its form. */
export default async function Page({ params }: { params: Promise<{ id: string; rugId: string }> }) {
  const caller = await staffCallerOrRedirect();
  const { id, rugId } = await params;
  const enquiry = await readEnquiry(caller, id, new Date());
  if (!enquiry.ok) return <Refused refusal={enquiry} />;
  const rug = enquiry.value.rugs.find((r) => r.id === rugId);
  if (!rug || !enquiry.value.may.correct) notFound();
  const answers = { ...enquiry.value.answers, rug: rug.answers };
  const { locale, areaUnit } = await readSettings();
  const words = deskWords(locale);
  return (
    <div className={css.page}>
      <p className="small"><Link href={`/desk/${id}#told-${rugId}`}><bdi>{rug.title}</bdi></Link> <span className="num">· {enquiry.value.reference}</span></p>
      <h1>Correct or add an answer</h1>
      <p className={css.lead}>What they told you since, or what you saw in a photo. The newest answer counts and the earlier one is kept; the rug is judged anew. “An hour ago” still means an hour before they wrote.</p>
      <ul className={css.list}>
        {stepsFor(answers).filter(isCorrectable).map((step) => (
          <li key={step}>
            <Link href={`/desk/${id}/answers/${rugId}/${step}`}>{titleOf(step, answers, words)}</Link>
            <span className={css.said} dir="auto">{toldOn(step, answers, rug.photos.length, { words, areaUnit, labels: labelsAtDesk(rug.photos) }) || "Not answered"}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
