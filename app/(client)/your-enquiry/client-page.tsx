import type { ClientView } from "@/lib/enquiry/views";
import { AddPhotos } from "@/lib/ui/add-photos";
import { ASKED_PHOTOS, PEOPLE_AND_PAPERS } from "@/lib/ui/asked-photos";
import { countInWords } from "@/lib/ui/figures";
import { FirstAid } from "@/lib/ui/first-aid";
import { LetterSheet } from "@/lib/ui/letter-sheet";
import { PrintButton } from "@/lib/ui/print-button";
import { Strip } from "@/lib/ui/strip";
import { Telephone } from "@/lib/ui/telephone";
import { YearsBand } from "@/lib/ui/years-band";
import styles from "./client-page.module.css";
import { MessageForm } from "./message-form";
import { ShownPhotos } from "./shown-photos";
import { YourData } from "./your-data";

/** Says whose cookie the photos come with: this device may hold a questionnaire too. */
const AS_CLIENT = { as: "client" };

/** What one enquiry looks like to the person who sent it. Without an approved letter it carries no judgement. */
export function ClientPage({ view, emergencyNumber }: { view: ClientView; emergencyNumber: string }) {
  const [first] = view.rugs;
  return (
    <>
      <h1><bdi>{view.rugs.length === 1 && first ? first.title : "Your rugs"}</bdi></h1>
      <p className={styles.standing}>{view.standing}</p>
      <div className={styles.two}>
        <div className={styles.main}>
          {view.firstAid && view.letters.length === 0 && <section className={styles.aid} aria-label="First aid"><FirstAid emergencyNumber={emergencyNumber} /></section>}
          {view.letters.map((letter) => <LetterSheet key={letter.at} letter={letter} />)}
          {view.letters.length === 0 && (
            <div className={`letter ${styles.waiting}`}>
              <p>Our answer will stand here, and come to you by e-mail.</p>
              <p>Until then, please put no water and no product on the rug.</p>
            </div>
          )}
          {view.firstAid && view.letters.length > 0 && (
            <details className={styles.details}><summary>First aid while it is wet</summary><FirstAid emergencyNumber={emergencyNumber} /></details>
          )}
        </div>
        <div className={styles.side}>
          {view.rugs.map((rug) => <Rug key={rug.title} rug={rug} isOneOfMany={view.rugs.length > 1} mayShow={view.canAddPhotos} />)}
          <section className="no-print">
            <h2>Write to us</h2>
            <MessageForm />
          </section>
          {view.canAddPhotos && (
            <details className={`no-print ${styles.details}`}>
              <summary>Add a photo</summary>
              <p className="small">{view.photosLeft === 1 ? "There is room for one more." : `There is room for ${countInWords(view.photosLeft)} more.`} {PEOPLE_AND_PAPERS}</p>
              <AddPhotos kinds={ASKED_PHOTOS} fields={AS_CLIENT} />
            </details>
          )}
          <YourData copy={view.copy} />
          <Reach workshop={view.workshop} />
        </div>
      </div>
    </>
  );
}

function Rug({ rug, isOneOfMany, mayShow }: { rug: ClientView["rugs"][number]; isOneOfMany: boolean; mayShow: boolean }) {
  return (
    <section className={styles.rug}>
      {isOneOfMany && <><Strip colours={rug.colours} cells={38} /><h2><bdi>{rug.title}</bdi></h2></>}
      {rug.lifeYears && (
        <div className={styles.life}>
          <h2>How long it has left</h2>
          <p className="small">In ordinary use, counted from today. Eight in ten rugs like this end inside the band.</p>
          <YearsBand {...rug.lifeYears} />
        </div>
      )}
      {rug.photos.length > 0 && <ShownPhotos photos={rug.photos} spots={rug.spots} mayShow={mayShow} />}
    </section>
  );
}

function Reach({ workshop }: { workshop: ClientView["workshop"] }) {
  return (
    <p className={`small ${styles.reach}`}>
      {workshop.telephone && <Telephone number={workshop.telephone} />}
      {workshop.email && <a href={`mailto:${workshop.email}`}>{workshop.email}</a>}
      <PrintButton />
    </p>
  );
}
