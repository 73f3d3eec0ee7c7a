import { Fragment } from "react";
import type { ClientView } from "@/lib/enquiry/client-view";
import { inPage } from "@/lib/ui/in-page";
import { LetterSheet } from "@/lib/ui/letter-sheet";
import { Prose } from "@/lib/ui/prose";
import type { Place } from "@/lib/ui/time";
import { longDate, longDateAndHour } from "@/lib/words/measures";
import type { Words } from "@/lib/words/words";
import css from "./thread.module.css";

/** Characters of one's own words that stand open above an answer; more are folded, so that the answer is near. Elicited. */
const OPEN_CHARS = 400;

/** What the client wrote and what we answered, in the order it was said. */
export function Thread({ view: { written, letters }, words, place }: { view: Pick<ClientView, "written" | "letters">; words: Words; place: Place }) {
  const answered = letters.at(-1)?.at ?? "";
  const days = [...written, ...letters].map(({ at }) => longDate(new Date(at), place));
  // Two of one day are told apart by the hour.
  const dateOf = (at: string) => { const day = longDate(new Date(at), place); return days.filter((d) => d === day).length > 1 ? longDateAndHour(new Date(at), place) : day; };
  const said = [
    ...written.map((own) => ({ at: own.at, part: <Own own={own} date={dateOf(own.at)} isFolded={own.at < answered && own.text.length > OPEN_CHARS} words={words} /> })),
    ...letters.map((letter) => ({ at: letter.at, part: <LetterSheet letter={letter} words={words} date={dateOf(letter.at)} /> })),
  ].sort((a, b) => a.at.localeCompare(b.at));
  return said.map(({ at, part }, i) => <Fragment key={`${at}/${i}`}>{part}</Fragment>);
}

function Own({ own, date, isFolded, words: { say, parts } }: { own: ClientView["written"][number]; date: string; isFolded: boolean; words: Words }) {
  const text = <div className={css.text} dir="auto"><Prose text={own.text} /></div>;
  return (
    <article className={css.own} aria-label={say("own.wrote-on", { date })}>
      <p className={css.head}>{inPage(parts("own.you-wrote", { date, time: (w) => <time dateTime={own.at}>{inPage(w)}</time> }))}</p>
      {isFolded ? <details><summary>{say("own.read-again")}</summary>{text}</details> : text}
    </article>
  );
}
