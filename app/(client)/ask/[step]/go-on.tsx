import { Link } from "@/lib/ui/link";
import type { ReactNode } from "react";
import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import { stepRow, type StepId } from "@/lib/enquiry/steps";
import { inPage } from "@/lib/ui/in-page";
import { progressWords } from "@/lib/ui/progress";
import type { Words } from "@/lib/words/words";
import styles from "./step.module.css";

/** The foot of a question: on, how much is still to come, and a way to send it as it stands. */
export function GoOn({ step, answers, words, unsure }: { step: StepId; answers: IntakeAnswers; words: Words; unsure?: string | undefined }) {
  return (
    <div className={styles.foot}>
      <div className={styles.onward}>
        <button className="button">{words.say("ask.go-on")}</button>
        {unsure && <button className="button quiet" name="skip" value="1">{unsure}</button>}
        <p className="small">{progressWords(step, answers, words)}</p>
      </div>
      <SendAsItIs step={step} words={words} />
    </div>
  );
}

/** Everything after the photos can be left out: what is known is better sent than kept. */
export function SendAsItIs({ step, words }: { step: StepId; words: Words }) {
  const { chapter } = stepRow(step);
  if (chapter === "now" || chapter === "you") return null;
  const link = (w: readonly ReactNode[]) => <Link href="/ask/contact">{inPage(w)}</Link>;
  return <p className={`small ${styles.asItIs}`}>{inPage(words.parts("ask.as-it-is", { link }))}</p>;
}
