import { headlineOf } from "../reply/headline";
import { mechanismIn } from "../reply/mechanism-name";
import type { ToldByLetter } from "../reply/told-by-letter";
import { fibreName } from "../trade/fibres";
import type { Assessment, FibreBelief } from "../triage/assessment";
import { wordsForChance } from "../triage/words";
import type { AreaUnit } from "../words/measures";
import type { Words } from "../words/words";
import { Components } from "./components";
import { chancePercent, chanceRange, percent, sentenceCase } from "./figures";
import { Interval } from "./interval";
import { Length, spoken } from "./length";
import { Measure, Measures } from "./measure-row";
import { STRENGTH_NAMES } from "./names";
import { Expected, Prospects } from "./prospects";
import { shortFinding } from "./short-finding";
import { Weights } from "./weights";
import css from "./judgement.module.css";

/** The level of a section's heading: under the page's title, or under one of several rugs. */
export type HeadingLevel = "h2" | "h3";

/** What triage made of one rug: every figure with its doubt, every weight with its reason. */
export function Judgement({ assessment: a, letter, currencyNow, as: H, words, areaUnit }: { assessment: Assessment; letter: ToldByLetter; /** Where its amounts are in another currency than the workshop's of today: that one. */ currencyNow: string | null; as: HeadingLevel; words: Words; /** In which sizes and areas are told. */ areaUnit: AreaUnit }) {
  const Sub = H === "h2" ? "h3" : "h4";
  const headline = headlineOf(a, { letter, words });
  return (
    <>
      <section className={css.advice}>
        <H>{headline.says}</H>
        <p>{headline.why}{a.advice.referTo && ` To: ${a.advice.referTo}.`}</p>
      </section>
      <section className={css.glance}>
        <H className="unseen">In short</H>
        <Sub className={css.group}>Made of</Sub>
        <Fibres fibres={a.fibres} />
        <Components components={a.components} as={Sub} />
        <Sub className={css.group}>What happened</Sub>
        <Mechanisms assessment={a} words={words} />
        <Sub className={css.group}>To be expected</Sub>
        <Expected assessment={a} letter={letter} words={words} />
      </section>
      <section>
        <H>What speaks for {fibreName(a.balance.leading)} rather than {fibreName(a.balance.rival)}</H>
        <Weights leading={fibreName(a.balance.leading)} rival={fibreName(a.balance.rival)} before={a.balance.prior} held={a.balance.damping} capped={a.balance.cap} total={a.balance.total}
          findings={a.findings.map((f) => ({ says: shortFinding(f, { locale: words.locale, areaUnit }), decibans: f.decibans, from: f.strength === "told" ? undefined : STRENGTH_NAMES[f.strength] }))} />
      </section>
      <Prospects assessment={a} letter={letter} currencyNow={currencyNow} as={H} words={words} />
      <Open assessment={a} letter={letter} as={H} />
      <p className={`small ${css.model}`}>Judged by model {a.modelVersion}. From what was told and photographed: inspection and testing decide.</p>
    </>
  );
}

/** Shown one by one until together they leave less than this. Elicited. */
const REST = 0.06;
const MOST_FIBRES = 5;

function Fibres({ fibres }: { fibres: FibreBelief[] }) {
  const shown = worthShowing(fibres);
  const rest = fibres.slice(shown.length);
  return (
    <>
      <Measures>{shown.map((f) => <Fibre key={f.fibre} belief={f} />)}</Measures>
      {rest.length > 0 && (
        <details className={css.more}>
          <summary>{rest.length} others together {percent(rest.reduce((sum, f) => sum + f.probability, 0))}</summary>
          <Measures>{rest.map((f) => <Fibre key={f.fibre} belief={f} />)}</Measures>
        </details>
      )}
    </>
  );
}

function Fibre({ belief: f }: { belief: FibreBelief }) {
  const name = sentenceCase(fibreName(f.fibre));
  return <Measure name={name} note={f.words} chart={<Interval low={f.low} mid={f.probability} high={f.high} of={name} words={f.words} />} figures={chanceRange(f.low, f.high)} />;
}

/** The most probable fibres, as many as leave little unsaid, at most five. */
export function worthShowing(fibres: FibreBelief[]): FibreBelief[] {
  let left = 1;
  const enough = fibres.findIndex((f) => (left -= f.probability) < REST);
  return fibres.slice(0, enough < 0 ? MOST_FIBRES : Math.min(enough + 1, MOST_FIBRES));
}

/** Below this a mechanism stands among the folded ones: "very unlikely" on the published scale. */
const VERY_UNLIKELY = 0.1;

function Mechanisms({ assessment, words }: { assessment: Assessment; words: Words }) {
  const mechanisms = assessment.mechanisms.map((m) => ({ ...m, name: sentenceCase(mechanismIn(assessment, m.mechanism, words)) }));
  if (mechanisms.length === 0) return <p className={css.plain}>Nothing that was told points to damage.</p>;
  const shown = mechanisms.filter((m) => m.probability >= VERY_UNLIKELY);
  const rest = mechanisms.slice(shown.length);
  return (
    <>
      <Measures>{shown.map((m) => <Mechanism key={m.mechanism} {...m} />)}</Measures>
      {rest.length > 0 && (
        <details className={css.more}>
          <summary>{rest.length} more, each very unlikely</summary>
          <Measures>{rest.map((m) => <Mechanism key={m.mechanism} {...m} />)}</Measures>
        </details>
      )}
    </>
  );
}

function Mechanism({ name, probability: p }: { name: string; probability: number }) {
  const words = wordsForChance({ probability: p, low: p });
  return <Measure name={name} note={words} chart={<Length share={p} says={spoken(name, words, chancePercent(p))} />} figures={chancePercent(p)} />;
}

function Open({ assessment: a, letter: { asks, inspection }, as: H }: { assessment: Assessment; letter: ToldByLetter; as: HeadingLevel }) {
  return (
    <>
      <section>
        <H>What would help most</H>
        {asks.length === 0 ? <p className={css.plain}>Nothing cheap: no further question or photo would change what we do.</p> : (
          <ol className={css.next}>{asks.map((q) => <li key={q.id}><b>{q.ask}</b>{q.kind === "bench-test" && <small> on the bench</small>}<br />{q.why}</li>)}</ol>
        )}
      </section>
      {a.onlyInspection.length > 0 && (
        <section>
          <H>{inspection ? "What the inspection was to settle" : "Only an inspection can settle"}</H>
          <ul className={css.next}>{a.onlyInspection.map((s) => <li key={s}>{s}</li>)}</ul>
        </section>
      )}
    </>
  );
}
