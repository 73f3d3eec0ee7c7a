import { Link } from "@/lib/ui/link";
import type { IntakeView } from "@/lib/enquiry/read-intake";
import { labelsRead, reviewOf } from "@/lib/ui/review";
import { titleOf } from "@/lib/ui/step-titles";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { SendForm } from "./send-form";
import styles from "./step.module.css";

/** What will be sent, what it is used for, consent, and the button. */
export async function Send({ intake }: { intake: IntakeView }) {
  const { name, retentionMonths, locale, areaUnit } = await readSettings();
  const words = wordsIn(locale);
  const { say } = words;
  const title = titleOf("send", intake.answers, words);
  return (
    <>
      <h1>{title}</h1>
      <dl className={styles.review}>
        {reviewOf(intake.answers, intake.photos.length, { words, areaUnit, labels: labelsRead(intake.photos, words) }).map((line) => (
          <div key={line.step}>
            <dt>{line.asked}</dt>
            <dd>{line.told}</dd>
            <dd><Link href={`/ask/${line.step}`} aria-label={say("review.change-what", { what: line.asked })}>{say("review.change")}</Link></dd>
          </div>
        ))}
      </dl>
      <p className="small">{say("send.another")}</p>
      <SendForm title={title} sentence={say("send.consent")} button={say("send.button")}>
        <h2>{say("send.what")}</h2>
        <ul>
          <li>{say("send.reads", { workshop: name })}</li>
          <li>{say("send.program")}</li>
          <li>{say("send.sees")}</li>
          <li>{say("send.kept", { months: retentionMonths })}</li>
          <li>{say("send.complain")}</li>
        </ul>
        <p><Link href="/privacy">{say("send.all")}</Link></p>
      </SendForm>
    </>
  );
}
