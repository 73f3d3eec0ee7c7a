import Link from "next/link";
import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import { nextStep } from "@/lib/enquiry/steps";
import { FIRST_AID } from "@/lib/trade/first-aid";
import { FirstAid } from "@/lib/ui/first-aid";
import { readSettings } from "@/lib/workshop/settings";
import styles from "./step.module.css";
import { titleOf } from "@/lib/ui/step-titles";

/** Something is wet now: what to do, before anything else is asked. */
export async function FirstAidFirst({ answers }: { answers: IntakeAnswers }) {
  const { emergencyNumber } = await readSettings();
  const title = titleOf("first-aid", answers);
  return (
    <>
      <title>{title}</title>
      <h1>{title}</h1>
      <p className={styles.hint}>{FIRST_AID.lead} The questions can wait; your answers so far are kept.</p>
      <div className={styles.aid}><FirstAid emergencyNumber={emergencyNumber} /></div>
      <div className={styles.foot}>
        <Link className="button" href={`/ask/${nextStep("first-aid", answers)}`}>I’ve done that, go on</Link>
      </div>
    </>
  );
}
