import type { ClientView } from "../enquiry/client-view";
import { tied } from "../words/unbroken";
import type { Words } from "../words/words";
import { Enclosed } from "./enclosed";
import { Prose } from "./prose";
import styles from "./letter-sheet.module.css";

/** A letter as a letter: a sheet, a date as it is told, the text in paragraphs. */
export function LetterSheet({ letter, words, date }: { letter: ClientView["letters"][number]; words: Words; date: string }) {
  return (
    <article className={styles.sheet} aria-label={words.say("own.letter", { subject: letter.subject })}>
      <p className={styles.date}><time dateTime={letter.at}>{date}</time></p>
      <div className={`letter ${styles.text}`}><Prose text={tied(letter.text)} /></div>
      <Enclosed enclosures={letter.enclosures} title={words.say("own.enclosed")} />
    </article>
  );
}
