import type { ClientView } from "@/lib/enquiry/client-view";
import { AddPhotos } from "@/lib/ui/add-photos";
import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import { askedPhotos } from "@/lib/ui/asked-photos";
import { FirstAid } from "@/lib/ui/first-aid";
import { LabelReading } from "@/lib/ui/label-reading";
import { inForce, isSettled } from "@/lib/enquiry/label-view";
import { PrintButton } from "@/lib/ui/print-button";
import { labelsRead, reviewOf } from "@/lib/ui/review";
import { Strip } from "@/lib/ui/strip";
import { Telephone } from "@/lib/ui/telephone";
import type { Place } from "@/lib/ui/time";
import { YearsBand } from "@/lib/ui/years-band";
import { listed } from "@/lib/reply/phrases";
import { mouldIn } from "@/lib/words/first-aid";
import { labelSays } from "@/lib/words/label-says";
import type { AreaUnit } from "@/lib/words/measures";
import type { Words } from "@/lib/words/words";
import styles from "./client-page.module.css";
import { answerLabel, lookAtLabel, showLabel } from "./actions";
import { MessageForm } from "./message-form";
import { ShownPhotos } from "./shown-photos";
import { Thread } from "./thread";
import { YourData } from "./your-data";

/** Says whose cookie the photos come with: this device may hold a questionnaire too. */
const AS_CLIENT = { as: "client" };
const LABELS = { look: lookAtLabel, answer: answerLabel, frame: showLabel };

/** What one enquiry looks like to the person who sent it. Without an approved letter it carries no judgement. */
export function ClientPage({ view, words, place, areaUnit, emergencyNumber }: { view: ClientView; words: Words; place: Place; areaUnit: AreaUnit; emergencyNumber: string }) {
  const [first] = view.rugs;
  const { say } = words;
  const aid = <FirstAid words={words} emergencyNumber={emergencyNumber} handsOff={view.firstAid.handsOff} isGas={view.firstAid.isGas} />;
  return (
    <>
      <h1><bdi>{view.rugs.length === 1 && first ? first.title : say("own.rugs")}</bdi></h1>
      <p className={styles.standing}>{view.standing}</p>
      <div className={styles.two}>
        <div className={styles.main}>
          {view.isMouldFeared && <p className={styles.aid}>{mouldIn(words, view.rugs.length)}</p>}
          {view.firstAid.isNow && <section className={styles.aid} aria-label={say("foot.first-aid")}>{aid}</section>}
          <Thread view={view} words={words} place={place} />
          {view.letters.length === 0 && (
            <div className={`letter ${styles.waiting}`}>
              <p>{say("own.answer-here")}</p>
              <p>{say("own.until")}</p>
            </div>
          )}
          {!view.firstAid.isNow && <details className={styles.details}><summary>{say("foot.first-aid")}</summary>{aid}</details>}
        </div>
        <div className={styles.side}>
          {view.rugs.map((rug, i) => <Rug key={i} rug={rug} told={i === 0 ? view.answers : {}} words={words} unit={areaUnit} isOneOfMany={view.rugs.length > 1} mayShow={view.canAddPhotos} />)}
          {view.beside.length > 0 && (
            <section className={styles.beside}>
              <h2>{say("own.beside")}</h2>
              {view.beside.map(({ reference, rugs }) => <p key={reference}><bdi>{listed(rugs, "and", words)}</bdi> <span className="small">{say("own.enquiry", { reference })}</span></p>)}
              <p className="small">{say("own.beside-page")}</p>
            </section>
          )}
          <section className="no-print">
            <h2>{say("own.write")}</h2>
            <MessageForm title={say("own.form")} label={say("own.message")} hint={say("own.message-hint")} button={say("own.message-send")} />
          </section>
          {view.canAddPhotos && (
            <details className={`no-print ${styles.details}`} open={view.unopened.length > 0}>
              <summary>{say("own.add-photo")}</summary>
              {view.unopened.length > 0 && <p className={styles.unopened}>{say("own.unopened", { n: view.unopened.length, count: say("count.words", { n: view.unopened.length }), names: listed(view.unopened, "and", words) })}</p>}
              <p className="small">{say("own.room-left", { n: view.photosLeft, count: say("count.words", { n: view.photosLeft }) })} {say("photos.leave-out")}</p>
              <AddPhotos kinds={askedPhotos(words)} fields={AS_CLIENT} />
            </details>
          )}
          <YourData copy={view.copy} words={words} />
          <Reach workshop={view.workshop} words={words} />
        </div>
      </div>
    </>
  );
}

interface RugProps { rug: ClientView["rugs"][number]; /** Of the enquiry as a whole, where it stands with this rug. */ told: ClientView["answers"]; words: Words; unit: AreaUnit; isOneOfMany: boolean; mayShow: boolean }

function Rug({ rug, told, words, unit, isOneOfMany, mayShow }: RugProps) {
  // Asked as long as anything is awaited; of another photo only what the workshop found in it and agreed on.
  const labelled = mayShow ? rug.photos.filter((p) => p.kind === "label" || (p.label !== null && isSettled(inForce(p.label).state))) : [];
  return (
    <section className={styles.rug}>
      {isOneOfMany && <><Strip colours={rug.colours} cells={38} /><h2><bdi>{rug.title}</bdi></h2></>}
      {rug.lifeYears && (
        <div className={styles.life}>
          <h2>{words.say("own.life")}</h2>
          <p className="small">{words.say("own.life-how", { once: rug.lifeOnce ?? "nothing" })}</p>
          <YearsBand {...rug.lifeYears} words={words} />
        </div>
      )}
      {labelled.length > 0 && (
        <div className="no-print">
          <h2>{words.say("label.title")}</h2>
          {labelled.map((photo) => <LabelReading key={photo.id} photo={photo} deeds={{ ...LABELS, says: labelSays(words) }} mayAnswer={photo.label?.by !== "staff"} />)}
        </div>
      )}
      {rug.photos.length > 0 && <ShownPhotos photos={rug.photos} spots={rug.spots} mayShow={mayShow} names={photoNames(rug.photos, words)} shown={words.say("spots.shown")} />}
      <Answers answers={{ ...told, rug: rug.answers }} sinceToldOn={rug.sinceToldOn} labels={labelsRead(rug.photos, words)} words={words} unit={unit} />
    </section>
  );
}

/** Each photo's number and what it shows, by its id: what a place in one of them is told by. */
const photoNames = (photos: ClientView["rugs"][number]["photos"], { say, table }: Words) =>
  Object.fromEntries(photos.map(({ id, kind }, i) => [id, say("own.photo", { n: i + 1, what: table(`photo.${kind}.ask`) })]));

/** Photos stand on the page themselves, words in their thread, and how to reach the client they know. */
const SHOWN_ELSEWHERE: readonly string[] = ["photos", "story", "contact"];

/** What they answered to our questions, folded. */
function Answers({ answers, sinceToldOn, labels, words, unit }: { answers: IntakeAnswers; sinceToldOn: string | null; labels: string[]; words: Words; unit: AreaUnit }) {
  const lines = reviewOf(answers, 0, { words, areaUnit: unit, labels, sinceToldOn }).filter((line) => !SHOWN_ELSEWHERE.includes(line.step));
  if (lines.length === 0) return null;
  return (
    <details className={styles.details}>
      <summary>{words.say("own.told")}</summary>
      <dl className={styles.told}>{lines.map(({ step, asked, told }) => <div key={step}><dt>{asked}</dt><dd dir="auto">{told}</dd></div>)}</dl>
    </details>
  );
}

function Reach({ workshop, words }: { workshop: ClientView["workshop"]; words: Words }) {
  return (
    <p className={`small ${styles.reach}`}>
      {workshop.telephone && <Telephone number={workshop.telephone} />}
      {workshop.email && <a href={`mailto:${workshop.email}`}>{workshop.email}</a>}
      <PrintButton label={words.say("own.print")} />
    </p>
  );
}
