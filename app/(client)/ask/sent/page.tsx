import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { Telephone } from "@/lib/ui/telephone";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../../_parts/shell";
import { askAboutAnother } from "../actions";
import { coloursOfPhotos, intakeOfDevice } from "../intake";
import styles from "./sent.module.css";

// In the page itself, like every title on the way here: the browser never shows a moment without one.
export const metadata: Metadata = { title: null };

/** It is sent: the reference, and what happens now. */
export default async function Sent() {
  const { intake } = await intakeOfDevice();
  if (!intake.submittedReference) redirect("/ask");
  const settings = await readSettings();
  const { answers } = intake;
  const isWet = answers.wetNow === "wet" || answers.wetNow === "damp";
  return (
    <Shell start={settings.name} end="Sent" colours={coloursOfPhotos(intake.photos)}>
      <title>Your enquiry is with us</title>
      <h1>It is with us</h1>
      <p className={styles.reference}><span className="small">Your enquiry</span> <strong>{intake.submittedReference}</strong></p>
      {isWet && <p>Your rug is still wet: <Link href="/first-aid">what to do until we answer</Link>. What is still wet is answered first.</p>}
      <h2>What happens now</h2>
      <ol className={styles.steps}>
        {answers.contact?.email && <li>A note that we have it goes to <bdi>{answers.contact.email}</bdi>, with a link to your own page.</li>}
        <li>A person here looks at your photos and answers, what is most urgent first.{settings.hours && ` We are here ${settings.hours}.`}</li>
        <li>{answers.contact?.email ? "The answer comes by e-mail and stands on your page too." : "We ring you. What we write stands on your page too."}</li>
      </ol>
      <p>Until then, please put no water and no product on it.</p>
      <div className={styles.onward}>
        <Link className="button" href="/your-enquiry">See your page</Link>
        <form action={askAboutAnother}><button className="button quiet">Ask about another rug</button></form>
      </div>
      {settings.telephone && <p className={`small ${styles.ring}`}>If it cannot wait: <Telephone number={settings.telephone} /></p>}
    </Shell>
  );
}
