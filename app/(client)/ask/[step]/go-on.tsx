import Link from "next/link";
import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import { stepRow, type StepId } from "@/lib/enquiry/steps";
import { progressWords } from "@/lib/ui/progress";
import styles from "./step.module.css";

/** The foot of a question: on, how much is still to come, and a way to send it as it stands. */
export function GoOn({ step, answers, unsure }: { step: StepId; answers: IntakeAnswers; unsure?: string | undefined }) {
  return (
    <div className={styles.foot}>
      <div className={styles.onward}>
        <button className="button">Go on</button>
        {unsure && <button className="button quiet" name="skip" value="1">{unsure}</button>}
        <p className="small">{progressWords(step, answers)}</p>
      </div>
      <SendAsItIs step={step} />
    </div>
  );
}

/** Everything after the photos can be left out: what is known is better sent than kept. */
export function SendAsItIs({ step }: { step: StepId }) {
  const { chapter } = stepRow(step);
  if (chapter === "now" || chapter === "you") return null;
  return (
    <p className={`small ${styles.asItIs}`}>
      No time for more? <Link href="/ask/contact" prefetch={false}>Send it as it is</Link>. Every answer helps, none is needed.
    </p>
  );
}
