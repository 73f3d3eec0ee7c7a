import type { ReactNode } from "react";
import { LIMITS } from "../enquiry/limits";
import type { RugView } from "../enquiry/views";
import type { Locale } from "../words/locales";
import type { AreaUnit } from "../words/measures";
import { deskWords } from "../words/words";
import { AddPhotos } from "./add-photos";
import { askedPhotos } from "./asked-photos";
import type { LabelDeeds } from "./label-form";
import { LabelReading } from "./label-reading";
import { Photos } from "./photos";
import { Strip } from "./strip";
import { conflictIn } from "./short-finding";
import { labelsAtDesk, rugFacts, toldOfRug } from "./told";
import { ToldList } from "./told-list";
import { Judgement } from "./judgement";
import { planInWords } from "./plan-words";
import css from "./rug-evidence.module.css";

interface Props {
  rug: RugView;
  locale: Locale;
  /** In which its size and what it cost are told. */
  areaUnit: AreaUnit;
  isOneOfSeveral: boolean;
  /** What was written of it since the enquiry. */
  written: ReactNode;
  /** What was tested. */
  bench: ReactNode;
  /** The way to a new answer. */
  correct: ReactNode;
  /** The address below which its photos are measured. */
  measureAt: string;
  /** The address below which its photos can be blurred; null for those who may not. */
  blur: string | null;
  /** What can be done with the label in a photo. */
  labels: LabelDeeds;
}

/** Everything that is known about one rug. With one rug the page's title and strip stand for it; one of several has its own. */
export function RugEvidence({ rug, locale, areaUnit, isOneOfSeveral, written, bench, correct, measureAt, blur, labels }: Props) {
  const facts = rugFacts(rug.answers, { locale, areaUnit });
  const labelled = rug.photos.filter((p) => p.kind === "label" || p.label !== null);
  const H = isOneOfSeveral ? "h3" : "h2";
  return (
    <article className={css.rug} aria-label={rug.title}>
      {isOneOfSeveral && <div className={css.strip}><Strip colours={rug.colours} cells={80} /></div>}
      {isOneOfSeveral && <h2><bdi>{rug.title}</bdi></h2>}
      {facts && <p className={css.facts}><bdi>{facts}</bdi></p>}
      {rug.assessment?.conflicts.map((c, i) => <p key={i} className={css.conflict}>{conflictIn(c, rug.assessment?.findings ?? [], { locale, areaUnit })}</p>)}
      <Photos photos={rug.photos} unopened={rug.unopened} rug={rug.title} measured={rug.measured} measureAt={measureAt} blur={blur} />
      {rug.measured.map((m) => <p key={m.id} className={css.measured}>{m.kind === "spots" ? m.result.says : planInWords(m, { locale, areaUnit })} <small>Marked by <bdi>{m.by}</bdi>.</small></p>)}
      {labelled.length > 0 && (
        <section className={css.labels}>
          <H>The label in the photo</H>
          {labelled.map((p) => <LabelReading key={p.id} photo={p} deeds={labels} />)}
        </section>
      )}
      {rug.photos.length < LIMITS.maxPhotos && (
        <details className={`no-print ${css.add}`}>
          <summary>Add a photo</summary>
          <AddPhotos kinds={askedPhotos(deskWords(locale))} fields={{ as: "staff", rugId: rug.id }} />
        </details>
      )}
      {rug.answers.story && <Story text={rug.answers.story} />}
      {rug.messages.length > 0 && <section className={css.story} aria-label="Written since">{written}</section>}
      {rug.assessment && rug.letter ? <Judgement assessment={rug.assessment} letter={rug.letter} currencyNow={rug.currencyNow} as={H} words={deskWords(locale)} areaUnit={areaUnit} /> : <p className={css.none}>This rug has not been judged yet.</p>}
      {bench}
      <section className={css.told} aria-labelledby={`told-${rug.id}`}>
        <H id={`told-${rug.id}`}>As told</H>
        <ToldList told={toldOfRug(rug.answers, { labels: labelsAtDesk(rug.photos), sinceToldOn: rug.sinceToldOn })} none="Nothing was answered about this rug." />
        {correct}
      </section>
    </article>
  );
}

/** In the client's own words, whatever their script. */
function Story({ text }: { text: string }) {
  return (
    <blockquote className={css.story} dir="auto">
      {text.split(/\n{2,}/).map((p, i) => <p key={i}>{p}</p>)}
    </blockquote>
  );
}
