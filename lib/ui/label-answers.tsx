import { useId, type ReactNode } from "react";
import type { LabelAnswer } from "../enquiry/label-answer-schema";
import { isAsked, isGuess, type LabelReadingView } from "../enquiry/label-view";
import type { LabelSays } from "../words/label-says";
import css from "./label-reading.module.css";
import { isTold, isToWrite } from "./label-words";

interface Props { reading: LabelReadingView; says: LabelSays; typed: string | null; isBusy: boolean }

/**
 * What can be answered of a label: yes, no, or cannot tell; where nothing was read, or hardly anything, only what stands there. Beside
 * words agreed or typed before, which are right; beside typed ones where the photo gives none, nothing; where "silk" may be more than was read, what stands before it.
 */
export function Answers({ reading, says, typed, isBusy }: Props) {
  const field = useId();
  const { state, agreed, told, isSilkInDoubt } = reading;
  const known = isTold(reading) ? (reading.typed ?? "") : isGuess(reading) ? "" : reading.text;
  const button = (answer: LabelAnswer["answer"], key: keyof LabelSays, look: string | undefined) => <button className={look} name="answer" value={answer} disabled={isBusy}>{says[key]}</button>;
  const write = (
    <div className={css.write}>
      <label htmlFor={field}>{says["label.stands"]}</label>
      <textarea id={field} name="text" dir="auto" rows={Math.max(3, known.split("\n").length + 1)} maxLength={2_000} defaultValue={typed ?? known} />
      {button("corrected", "label.keep", "button")}
    </div>
  );
  const fold = (key: keyof LabelSays) => <Fold title={says[key]} isOpen={typed !== null}>{write}</Fold>;
  const keep = agreed !== null && button("kept", "label.keep-agreed", "button quiet");
  const others = <div className={css.answers}>{isAsked(state) && state !== "unsure" && agreed === null && !isTold(reading) && button("unsure", "label.cannot-tell", css.plain)}{button("no-label", "label.no-label", css.plain)}</div>;
  if (isTold(reading)) return <>{fold("label.correct")}{others}</>;
  if (isToWrite(reading)) return <>{keep}{write}{others}</>;
  if (!isAsked(state) || reading.lines.length === 0) return <>{keep}{fold(state === "reading" || state === "refused" ? "label.write" : "label.correct")}</>;
  const look = isSilkInDoubt && <p className={`small ${css.why}`}>{says["label.look-silk"]}</p>;
  if (agreed) return <Question asks={says["label.which"]}>{look}<div className={css.choices}>{button("right", "label.take-new", "button")}{keep}</div>{fold("label.neither")}{others}</Question>;
  if (told) return <Question asks={says["label.which"]}>{look}<div className={css.choices}>{button("told", "label.take-told", "button quiet")}{button("right", "label.take-read", "button quiet")}</div>{fold("label.neither")}{others}</Question>;
  if (isSilkInDoubt) return <Question asks={says["label.before-silk"]}><p className={`small ${css.why}`}>{says["label.why-silk"]}</p>{fold("label.silk-more")}{button("right", "label.silk-alone", `button quiet ${css.alone}`)}{others}</Question>;
  return <Question asks={says["label.question"]}><div className={css.choices}>{button("right", "label.yes", "button")}</div>{fold("label.no")}{others}</Question>;
}

const Question = ({ asks, children }: { asks: string; children: ReactNode }) => <fieldset className={css.question}><legend>{asks}</legend>{children}</fieldset>;
const Fold = ({ title, isOpen, children }: { title: string; isOpen: boolean; children: ReactNode }) => <details className={css.fold} open={isOpen}><summary>{title}</summary>{children}</details>;
