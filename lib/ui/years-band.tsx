import { yearsPhrase } from "../reply/phrases";
import type { Range } from "../triage/assessment";
import type { Words } from "../words/words";
import { sentenceCase } from "./figures";
import { markLabel, yearMarks } from "./year-marks";
import styles from "./years-band.module.css";

/** A length of time that is not known exactly, as a band on a line of years that begins now, in the words of the letter. */
export function YearsBand({ low, median, high, words }: Range & { words: Words }) {
  const { end, marks } = yearMarks(high);
  const at = (years: number) => `${(years / end) * 100}%`;
  const middle = yearsPhrase({ low: median, median, high: median }, words);
  return (
    <figure className={styles.band}>
      <figcaption>{words.say("own.life-band", { range: sentenceCase(yearsPhrase({ low, median, high }, words)), middle })}</figcaption>
      <div className={styles.line} aria-hidden="true">
        <i style={{ left: at(low), width: `${((high - low) / end) * 100}%` }} />
        <b style={{ left: at(median) }} />
        {marks.map((m) => <span key={m} style={{ left: at(m) }} />)}
      </div>
      <div className={styles.marks} aria-hidden="true">
        {marks.map((m, k) => <span key={m} style={{ left: at(m) }}>{markLabel(m, k === marks.length - 1, words)}</span>)}
      </div>
    </figure>
  );
}
