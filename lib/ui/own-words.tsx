import { passagesIn } from "../words/quoted-lines";
import css from "./own-words.module.css";

/** What somebody wrote, line by line as they set it; lines of ours or of others that they answer stand apart, above the answer. */
export function OwnWords({ text }: { text: string }) {
  return passagesIn(text).map(({ isQuoted, text: passage }, i) => (
    isQuoted ? <span key={i} className={css.quoted} dir="auto"><span className="unseen">They repeat: </span>{passage}</span> : <span key={i} className={css.own} dir="auto">{passage}</span>
  ));
}
