import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { Refused } from "@/app/(desk)/_parts/refused";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readEnquiry } from "@/lib/enquiry/read-enquiry";
import { valuesOf } from "@/lib/enquiry/step-forms";
import { isCorrectable } from "@/lib/enquiry/step-schemas";
import { stepRow } from "@/lib/enquiry/steps";
import { SEEN_IN_A_PHOTO } from "@/lib/trade/questions";
import { offeredSize } from "@/lib/ui/offered-size";
import { StepFields } from "@/lib/ui/step-fields";
import { labelsAtDesk } from "@/lib/ui/told";
import { titleOf } from "@/lib/ui/step-titles";
import { deskWords } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import css from "../answers.module.css";
import { AnswerForm } from "./answer-form";

// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

interface Props { params: Promise<{ id: string; rugId: string; step: string }> }

/** One question as the client reads it, to be answered anew by staff. */
export default async function Page({ params }: Props) {
  const caller = await staffCallerOrRedirect();
  const { id, rugId, step } = await params;
  const enquiry = await readEnquiry(caller, id, new Date());
  if (!enquiry.ok) return <Refused refusal={enquiry} />;
  const rug = enquiry.value.rugs.find((r) => r.id === rugId);
  if (!rug || !enquiry.value.may.correct || !isCorrectable(step)) notFound();
  const answers = { ...enquiry.value.answers, rug: rug.answers };
  const { locale, areaUnit, currency } = await readSettings();
  const words = deskWords(locale);
  const { question } = stepRow(step);
  const offered = step === "size" ? offeredSize({ answers, photos: rug.photos }, { words, areaUnit }) : null;
  const known = step === "label" ? labelsAtDesk(rug.photos) : (offered?.known ?? []);
  const mayBeSeen = question !== undefined && SEEN_IN_A_PHOTO.includes(question) && rug.photos.length > 0;
  return (
    <div className={css.page}>
      <p className="small"><Link href={`/desk/${id}/answers/${rugId}`}>All answers about <bdi>{rug.title}</bdi></Link> <span className="num">· {enquiry.value.reference}</span></p>
      <div className={css.form}>
        <AnswerForm rugId={rugId} step={step} title={titleOf(step, answers, words)} values={{ ...valuesOf(step, answers, { areaUnit, currency }), ...offered?.values }} back={`/desk/${id}/answers/${rugId}`} seen={mayBeSeen ? rug.seen.includes(question) : null}>
          <StepFields step={step} answers={answers} words={words} areaUnit={areaUnit} known={known} />
        </AnswerForm>
      </div>
    </div>
  );
}
