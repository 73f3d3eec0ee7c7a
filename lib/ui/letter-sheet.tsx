import type { ClientView } from "../enquiry/client-view";
import { longDate } from "../words/measures";
import { tied } from "../words/unbroken";
import type { Words } from "../words/words";
import { Enclosed } from "./enclosed";
import { Prose } from "./prose";
import type { Place } from "./time";
import styles from "./letter-sheet.module.css";

/** A letter as a letter: a sheet, a date, the text in paragraphs. */
export function LetterSheet({ letter, words, place }: { letter: ClientView["letters"][number]; words: Words; place: Place }) {
  return (
    <article className={styles.sheet} aria-label={words.say("own.letter", { subject: letter.subject })}>
      <p className={styles.date}><time dateTime={letter.at}>{longDate(new Date(letter.at), place)}</time></p>
      <div className={`letter ${styles.text}`}><Prose text={tied(letter.text)} /></div>
      <Enclosed enclosures={letter.enclosures} title={words.say("own.enclosed")} />
    </article>
  );
}
