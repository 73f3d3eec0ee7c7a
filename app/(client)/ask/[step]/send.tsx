import Link from "next/link";
import { CONSENT_SENTENCE } from "@/lib/enquiry/consent";
import type { IntakeView } from "@/lib/enquiry/read-intake";
import { reviewOf } from "@/lib/ui/review";
import { readSettings } from "@/lib/workshop/settings";
import { SendForm } from "./send-form";
import styles from "./step.module.css";
import { titleOf } from "@/lib/ui/step-titles";

/** What will be sent, what it is used for, consent, and the button. */
export async function Send({ intake }: { intake: IntakeView }) {
  const settings = await readSettings();
  const title = titleOf("send", intake.answers);
  return (
    <>
      <h1>{title}</h1>
      <dl className={styles.review}>
        {reviewOf(intake.answers, intake.photos.length).map((line) => (
          <div key={line.step}>
            <dt>{line.asked}</dt>
            <dd>{line.told}</dd>
            <dd><Link href={`/ask/${line.step}`} prefetch={false} aria-label={`Change: ${line.asked}`}>Change</Link></dd>
          </div>
        ))}
      </dl>
      <SendForm title={title} sentence={CONSENT_SENTENCE}>
        <h2>What we do with it</h2>
        <ul>
          <li>{settings.name} reads it to judge your rug and to answer you, because you ask us to (your consent).</li>
          <li>A program sorts and ranks what you tell us. A person reads it, decides, and signs the answer.</li>
          <li>Only the people of the workshop see it. It is not sold, and not shown to anybody else.</li>
          <li>It is kept for {settings.retentionMonths} months after your enquiry ends or we last heard from each other, then erased. You can have a copy, have it corrected or erased, or take your consent back, at any time.</li>
          <li>If you think we do wrong, tell us, or your data protection authority.</li>
        </ul>
        <p><Link href="/privacy" prefetch={false}>All of it, at length</Link></p>
      </SendForm>
    </>
  );
}
