import Link from "next/link";
import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import { nextStep } from "@/lib/enquiry/steps";
import { Telephone } from "@/lib/ui/telephone";
import { readSettings } from "@/lib/workshop/settings";
import styles from "./step.module.css";
import { titleOf } from "@/lib/ui/step-titles";

/** A colleague with a customer's rug: the telephone first, because what helps is lost by the hour. */
export async function CallUs({ answers }: { answers: IntakeAnswers }) {
  const { telephone, hours } = await readSettings();
  const title = titleOf("call-us", answers);
  return (
    <>
      <title>{title}</title>
      <h1>{title}</h1>
      <p className={styles.hint}>
        It happens to all of us. If the rug is damp, turning brown or its dye is moving, stop, put nothing more on it, and let us talk
        before you do the next thing.
      </p>
      <div className={styles.call}>
        {telephone ? <Telephone number={telephone} className={styles.number} /> : <p>Leave your number on the last page, and we ring you back before anybody else.</p>}
        {telephone && hours && <p className="small">{hours}. Outside these hours, go on here and leave your number: you are rung back first.</p>}
      </div>
      <p>What to use on it and how, we only say from one person to another, when we know the rug. Nothing of that kind is sent by this page.</p>
      <p>The questions that follow are about your customer’s rug. You can answer them while you wait.</p>
      <div className={styles.foot}>
        <Link className="button" href={`/ask/${nextStep("call-us", answers)}`}>Go on</Link>
      </div>
    </>
  );
}
