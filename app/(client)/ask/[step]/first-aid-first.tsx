import { Link } from "@/lib/ui/link";
import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import { nextStep } from "@/lib/enquiry/steps";
import { isGasTold } from "@/lib/reply/happened";
import { FirstAid } from "@/lib/ui/first-aid";
import { titleOf } from "@/lib/ui/step-titles";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import styles from "./step.module.css";

/** Something is wet now: what to do, before anything else is asked. */
export async function FirstAidFirst({ answers }: { answers: IntakeAnswers }) {
  const { emergencyNumber, locale } = await readSettings();
  const words = wordsIn(locale);
  const title = titleOf("first-aid", answers, words);
  return (
    <>
      <title>{title}</title>
      <h1>{title}</h1>
      <p className={styles.hint}>{words.table("first-aid.lead")} {words.say("aid.kept")}</p>
      <div className={styles.aid}><FirstAid words={words} emergencyNumber={emergencyNumber} isGas={isGasTold(answers.rug ?? {})} /></div>
      <div className={styles.foot}>
        <Link className="button" href={`/ask/${nextStep("first-aid", answers)}`}>{words.say("aid.done")}</Link>
      </div>
    </>
  );
}
