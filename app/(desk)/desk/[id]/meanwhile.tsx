import type { MeanwhileView } from "@/lib/enquiry/draft-types";
import type { EnquiryView } from "@/lib/enquiry/views";
import { dayAndClock } from "@/lib/ui/time";
import { Came, type Beside } from "./came";
import css from "./since.module.css";

const OURS = { acknowledgement: "acknowledgement", reply: "letter", question: "question" } as const;

/** What a client did, as the reason for something. */
function deedOf({ messages, photos, answers }: MeanwhileView): string {
  if (messages.length > 0) return "wrote";
  if (photos > 0) return "sent a photo";
  // Where nothing has come to the enquiry yet, their letter still waits in the Post.
  return answers ? "told us more" : "wrote";
}

/** A client who wrote after our letter was approved and before it left: it was held back for it, or could not be any more. Or the rug was judged anew then, and it was held back. */
export function Meanwhile({ view: { meanwhile, since }, ...by }: Beside & { view: EnquiryView }) {
  if (!meanwhile) return null;
  const { name, now, place } = by;
  const [ours, approved] = [OURS[meanwhile.kind], dayAndClock(meanwhile.approvedAt, now, place)];
  return (
    <section className={css.since} aria-label={meanwhile.isOvertaken ? "Judged anew before our letter left" : "Written before our letter left"}>
      {meanwhile.isOvertaken
        ? <p className={css.why}><b>The rug was judged anew after our {ours} was approved, so it did not leave: look at it again.</b> It was approved {approved}. What was approved stands under “Letters”.</p>
        : meanwhile.isHeldBack
        ? <p className={css.why}><b>Our {ours} was held back: <bdi>{name}</bdi> {deedOf(meanwhile)} before it left.</b> It was approved {approved} and has not gone. {NEXT[meanwhile.kind]}</p>
        : <p className={css.why}><b><bdi>{name}</bdi> {deedOf(meanwhile)} just before our {ours} left.</b> It was approved {approved}, was on its way by then, and went without an answer to this.</p>}
      {(since === null || since.at === null) && <Came came={meanwhile} {...by} />}
    </section>
  );
}
const NEXT = { acknowledgement: "", reply: "Read what came, then look at the letter again and send it.", question: "Read what came; its words are still there under “Ask for more”." } as const;
