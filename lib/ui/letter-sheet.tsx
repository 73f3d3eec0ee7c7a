import type { ClientView } from "../enquiry/views";
import { Enclosed } from "./enclosed";
import styles from "./letter-sheet.module.css";

const DAY = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric" });

/** A letter as a letter: a sheet, a date, the text in paragraphs. */
export function LetterSheet({ letter }: { letter: ClientView["letters"][number] }) {
  const paragraphs = letter.text.split(/\n\s*\n/).map((p) => p.trim()).filter(Boolean);
  return (
    <article className={styles.sheet} aria-label={`Our letter: ${letter.subject}`}>
      <p className={styles.date}><time dateTime={letter.at}>{DAY.format(new Date(letter.at))}</time></p>
      <div className={`letter ${styles.text}`}>
        {paragraphs.map((p, k) => <p key={k}>{p}</p>)}
      </div>
      <Enclosed enclosures={letter.enclosures} />
    </article>
  );
}
