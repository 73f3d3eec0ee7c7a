import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { redirect } from "next/navigation";
import { clientCaller } from "@/app/_server/caller";
import { nextOpening, openingDay } from "@/lib/enquiry/opening-hours";
import { readClientPage } from "@/lib/enquiry/read-client-page";
import { isGasNow } from "@/lib/reply/happened";
import { inPage } from "@/lib/ui/in-page";
import { Telephone } from "@/lib/ui/telephone";
import { clock } from "@/lib/ui/time";
import { gasIn, mouldIn } from "@/lib/words/first-aid";
import { weekday } from "@/lib/words/measures";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../../_parts/shell";
import { addAnotherRug } from "../actions";
import { coloursOfPhotos, intakeOfDevice } from "../intake";
import styles from "./sent.module.css";

// In the page itself, like every title on the way here: the browser never shows a moment without one.
export const metadata: Metadata = { title: null };

/** It is sent: the reference, and what happens now. */
export default async function Sent() {
  const { intake } = await intakeOfDevice();
  if (!intake.submittedReference) redirect("/ask");
  const settings = await readSettings();
  const words = wordsIn(settings.locale);
  const { say } = words;
  const { answers } = intake;
  const email = answers.contact?.email;
  const now = new Date();
  const next = nextOpening(settings.hours, now, settings.timeZone);
  const opens = next && { when: openingDay(next, now, settings.timeZone), day: weekday(next, settings), time: clock(next.toISOString(), settings) };
  const isGas = isGasNow(answers.rug ?? {}, answers);
  const caller = await clientCaller();
  const own = caller && await readClientPage(caller, now);
  // The device may hold the page of an enquiry sent before.
  const judged = own?.ok && own.value.reference === intake.submittedReference ? own.value : null;
  const aid = answers.wetNow === "wet" || answers.wetNow === "damp" ? "sent.wet" : judged?.firstAid.isNow ? "sent.perhaps-wet" : null;
  return (
    <Shell words={words} start={settings.name} end={say("sent.end")} colours={coloursOfPhotos(intake.photos)}>
      <title>{say("sent.title")}</title>
      <h1>{say("sent.head")}</h1>
      <p className={styles.reference}><span className="small">{say("sent.enquiry")}</span> <strong>{intake.submittedReference}</strong></p>
      {isGas && <p><strong>{gasIn(words, settings.emergencyNumber)}</strong></p>}
      {judged?.isMouldFeared && <p><strong>{mouldIn(words, judged.rugs.length)}</strong></p>}
      {aid && !isGas && <p>{inPage(words.parts(aid, { link: (w) => <Link href="/first-aid">{inPage(w)}</Link> }))}</p>}
      <h2>{say("sent.next")}</h2>
      <ol className={styles.steps}>
        {email && <li>{inPage(words.parts("sent.note", { email, address: (w) => <bdi>{inPage(w)}</bdi> }))}</li>}
        <li>{say("sent.person", { photos: intake.photos.length > 0 ? "some" : "none" })}{settings.hours && ` ${say("front.hours", { hours: settings.hours })}`}{opens && ` ${say("front.opens-again", opens)}`}</li>
        <li>{say(email ? "sent.by-mail" : "sent.by-telephone")}</li>
      </ol>
      <p>{say("sent.until")}</p>
      <div className={styles.onward}>
        <Link className="button" href="/your-enquiry">{say("sent.your-page")}</Link>
        <form action={addAnotherRug}><button className="button quiet">{say("sent.another")}</button></form>
      </div>
      {settings.telephone && <p className={`small ${styles.ring}`}>{say("sent.cannot-wait")} <Telephone number={settings.telephone} /></p>}
    </Shell>
  );
}
