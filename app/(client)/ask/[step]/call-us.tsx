import { Link } from "@/lib/ui/link";
import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import { nextStep } from "@/lib/enquiry/steps";
import { titleOf } from "@/lib/ui/step-titles";
import { Telephone } from "@/lib/ui/telephone";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import styles from "./step.module.css";

/** A colleague with a customer's rug: the telephone first, because what helps is lost by the hour. */
export async function CallUs({ answers }: { answers: IntakeAnswers }) {
  const { telephone, hours, locale } = await readSettings();
  const words = wordsIn(locale);
  const { say } = words;
  const title = titleOf("call-us", answers, words);
  return (
    <>
      <title>{title}</title>
      <h1>{title}</h1>
      <p className={styles.hint}>{say("call.happens")}</p>
      <div className={styles.call}>
        {telephone ? <Telephone number={telephone} className={styles.number} /> : <p>{say("call.leave-number")}</p>}
        {telephone && hours && <p className="small">{say("call.hours", { hours })}</p>}
      </div>
      <p>{say("call.no-recipe")}</p>
      <p>{say("call.meanwhile")}</p>
      <div className={styles.foot}>
        <Link className="button" href={`/ask/${nextStep("call-us", answers)}`}>{say("ask.go-on")}</Link>
      </div>
    </>
  );
}
