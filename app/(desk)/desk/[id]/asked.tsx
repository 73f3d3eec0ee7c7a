import type { EnquiryView } from "@/lib/enquiry/views";
import { questionsAsked } from "@/lib/reply/questions-asked";
import css from "./since.module.css";

/** Before the first answer: what the client asked in their own words, above the letter that has to answer it. */
export function Asked({ view }: { view: EnquiryView }) {
  const asked = view.since?.at ? [] : questionsAsked(view.rugs.map((rug) => rug.answers.story));
  if (asked.length === 0) return null;
  return (
    <section className={css.since} aria-label="What they ask">
      <h3 className={css.heading}>They ask</h3>
      {asked.map((question) => <p key={question} className={css.words} dir="auto">{question}</p>)}
      <p className="small">See that the letter answers it, or says that it cannot be told yet.</p>
    </section>
  );
}
