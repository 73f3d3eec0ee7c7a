import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import type { ReactNode } from "react";
import { inPage } from "@/lib/ui/in-page";
import { Swatch } from "@/lib/ui/swatch";
import { Telephone } from "@/lib/ui/telephone";
import { wordsIn, type Words } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "./_parts/shell";
import { intakeOfDevice } from "./ask/intake";
import styles from "./front.module.css";

export async function generateMetadata(): Promise<Metadata> {
  const { say } = wordsIn((await readSettings()).locale);
  return { title: say("front.title"), description: say("front.description") };
}

/** Where a homeowner arrives. */
export default async function Front() {
  const [settings, { caller, intake }] = await Promise.all([readSettings(), intakeOfDevice()]);
  const isUnderWay = caller !== null && intake.submittedReference === null && Object.keys(intake.answers).length > 0;
  const words = wordsIn(settings.locale);
  const { say } = words;
  return (
    <Shell words={words} start={<bdi>{settings.name}</bdi>} end={settings.town} isWide>
      <div className={styles.front}>
        <div className={styles.words}>
          <h1>{say("front.title")}</h1>
          <p className={styles.lead}>{say("front.lead")}</p>
          <p className={styles.start}>
            <Link className="button" href="/ask">{say(isUnderWay ? "front.go-on" : "front.begin")}</Link>
            <span className="small">{say("front.no-account")}</span>
          </p>
          <aside className={styles.wet} aria-labelledby="wet">
            <h2 id="wet">{say("front.wet")}</h2>
            <p>{inPage(words.parts("front.wet-first", { link: (w) => <Link href="/first-aid">{inPage(w)}</Link> }))}</p>
          </aside>
          <WhatHappens words={words} hours={settings.hours} />
          <section>
            <h2>{say("front.not-from-photos")}</h2>
            <p>{say("front.not-from-photos-which")}</p>
          </section>
          <section>
            <h2>{say("front.trade")}</h2>
            <p>{say("front.trade-ring")} {settings.telephone && <Telephone number={settings.telephone} />}</p>
          </section>
          <p className={`small ${styles.staff}`}><Link href="/sign-in">{say("front.staff")}</Link></p>
        </div>
        <div className={styles.swatch}><Swatch /></div>
      </div>
    </Shell>
  );
}

function WhatHappens({ words, hours }: { words: Words; hours: string }) {
  const bold = { b: (w: ReactNode[]) => <b>{inPage(w)}</b> };
  return (
    <section>
      <h2>{words.say("front.next")}</h2>
      <ol className={styles.steps}>
        <li>{inPage(words.parts("front.next-answer", bold))}</li>
        <li>{inPage(words.parts("front.next-person", bold))}</li>
        <li>{inPage(words.parts("front.next-letter", bold))}{hours && ` ${words.say("front.hours", { hours })}`}</li>
      </ol>
    </section>
  );
}
