import type { Metadata } from "next";
import Link from "next/link";
import { Swatch } from "@/lib/ui/swatch";
import { Telephone } from "@/lib/ui/telephone";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "./_parts/shell";
import { intakeOfDevice } from "./ask/intake";
import styles from "./front.module.css";

export const metadata: Metadata = { title: "Can my rug be saved?", description: "Tell us what happened to your rug. A person answers, honestly." };

/** Where a homeowner arrives. */
export default async function Front() {
  const [settings, { caller, intake }] = await Promise.all([readSettings(), intakeOfDevice()]);
  const isUnderWay = caller !== null && intake.submittedReference === null && Object.keys(intake.answers).length > 0;
  return (
    <Shell start={<bdi>{settings.name}</bdi>} end={settings.town} isWide>
      <div className={styles.front}>
        <div className={styles.words}>
          <h1>Can my rug be saved?</h1>
          <p className={styles.lead}>
            Show us your rug and tell us what happened. We say what it is probably made of, what cleaning can and cannot do for it, and what
            we would do if it were ours. If the answer is no, we say that too.
          </p>
          <p className={styles.start}>
            <Link className="button" href="/ask" prefetch={false}>{isUnderWay ? "Go on where you stopped" : "Tell us about your rug"}</Link>
            <span className="small">No account. Most questions take one tap, and you can stop and come back.</span>
          </p>
          <aside className={styles.wet} aria-labelledby="wet">
            <h2 id="wet">Is it wet right now?</h2>
            <p>Then first this: <Link href="/first-aid">what to do while it is wet</Link>. It is right for every rug, and writing to us can wait.</p>
          </aside>
          <WhatHappens hours={settings.hours} />
          <NotFromPhotos />
          <section>
            <h2>You clean rugs yourself?</h2>
            <p>
              A customer’s rug has turned brown or changed under your hands: ring us first, you are called back before anybody else.{" "}
              {settings.telephone && <Telephone number={settings.telephone} />}
            </p>
          </section>
          <p className={`small ${styles.staff}`}><Link href="/sign-in" prefetch={false}>For the people of the workshop</Link></p>
        </div>
        <div className={styles.swatch}><Swatch /></div>
      </div>
    </Shell>
  );
}

function WhatHappens({ hours }: { hours: string }) {
  return (
    <section>
      <h2>What happens next</h2>
      <ol className={styles.steps}>
        <li><b>You answer a few questions and send photos.</b> Of the whole rug, its label, its back, the pile, and the trouble. What you can’t tell, you leave out.</li>
        <li><b>A person looks at it.</b> A program puts the urgent ones first and gathers what speaks for what. It decides nothing and writes to nobody on its own account.</li>
        <li><b>You get an honest letter.</b> By e-mail, and on a page of your own. What is still wet or fresh is answered first.{hours && ` We are here ${hours}.`}</li>
      </ol>
    </section>
  );
}

function NotFromPhotos() {
  return (
    <section>
      <h2>What we cannot tell from photos</h2>
      <p>
        What a rug is made of for certain: for that a thread has to be looked at on the bench. How much of a mark will come out: we give a
        range, and we test a hidden corner before anything else. What it is worth, or what an insurer will pay: we do not say.
      </p>
    </section>
  );
}
