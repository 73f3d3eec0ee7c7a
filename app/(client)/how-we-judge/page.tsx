import type { Metadata } from "next";
import Link from "next/link";
import { METHODS } from "@/lib/trade/care";
import { CAPS, SILK_CEILING } from "@/lib/trade/evidence-caps";
import { ONLY_INSPECTION } from "@/lib/trade/inspection";
import { LOSSES } from "@/lib/trade/losses";
import type { PartId } from "@/lib/trade/table";
import { publicTables, publishedSources, rowsByHow, TABLES } from "@/lib/trade/tables";
import { MODEL_VERSION } from "@/lib/triage/assess";
import { Length } from "@/lib/ui/length";
import { Measure, Measures } from "@/lib/ui/measure-row";
import { sayHow, sayPercent, Tables } from "@/lib/ui/printed-table";
import { printedIn } from "@/lib/words/printed-tables";
import { wordsIn, type Words } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import styles from "./how-we-judge.module.css";

export async function generateMetadata(): Promise<Metadata> {
  const { say } = wordsIn((await readSettings()).locale);
  return { title: say("judge.title"), description: say("judge.description") };
}

/** The method in plain words, and every table it goes by with its source, printed from the tables themselves. */
export default async function HowWeJudge() {
  const { name, locale } = await readSettings();
  const words = wordsIn(locale);
  const { say } = words;
  return (
    <Shell words={words} start={<Link href="/">{name}</Link>} isWide>
      <article className={styles.text}>
        <h1>{say("judge.title")}</h1>
        <p className={styles.lead}>{say("judge.lead")}</p>
        <HowSure words={words} />
        <Fibre words={words} />
        <Part title={say("judge.happened")} how={say("judge.happened-how")} parts={["happened"]} words={words} />
        <Outlook words={words} />
        <Advice words={words} />
        <NeverSaid words={words} />
        <section>
          <h2>{say("judge.sources")}</h2>
          <p>{say("judge.sources-which")}</p>
          <ul className={styles.sources}>{publishedSources(TABLES).map((s) => <li key={s}><cite lang="en">{s}</cite></li>)}</ul>
          <p className="small">{say("judge.model", { version: MODEL_VERSION })}</p>
        </section>
      </article>
    </Shell>
  );
}

/** One part of the method: what it does, and the tables it goes by. */
function Part({ title, how, parts, words }: { title: string; how: readonly string[] | string; parts: readonly PartId[]; words: Words }) {
  return (
    <section>
      <h2>{title}</h2>
      {[how].flat().map((p) => <p key={p}>{p}</p>)}
      <Tables tables={publicTables(...parts)} words={words} />
    </section>
  );
}

function HowSure({ words }: { words: Words }) {
  const { say } = words;
  const all = TABLES.reduce((sum, t) => sum + t.rows.length, 0);
  return (
    <section>
      <h2>{say("judge.sure")}</h2>
      <p>{say("judge.sure-how")}</p>
      <Measures>
        {rowsByHow(TABLES).map(({ how, rows }) => {
          const share = sayPercent(rows / all, words);
          const name = sayHow(how, words);
          return <Measure key={how} name={name} chart={<Length share={rows / all} says={say("judge.rows-of", { how: name, n: rows, all, share })} />} figures={say("judge.rows-share", { n: rows, share })} />;
        })}
      </Measures>
    </section>
  );
}

function Fibre({ words }: { words: Words }) {
  const { say } = words;
  const share = (p: number) => sayPercent(p, words);
  const caps = { told: share(CAPS.told), typed: share(CAPS["label-typed"]), seen: share(CAPS["label-photo"]), silk: share(SILK_CEILING) };
  return (
    <>
      <Part title={say("judge.fibre")} how={[say("judge.fibre-begins"), say("judge.fibre-caps", caps)]} parts={["fibre", "labels", "words"]} words={words} />
      <Part title={say("judge.tests")} how={say("judge.tests-how")} parts={["tests"]} words={words} />
    </>
  );
}

function Outlook({ words }: { words: Words }) {
  const { say } = words;
  const print = printedIn(words);
  return (
    <>
      <Part title={say("judge.cleaning")} how={say("judge.cleaning-how", { most: print(METHODS["immersion-wash"].name), least: print(METHODS.none.name) })} parts={["prospects"]} words={words} />
      <Part title={say("judge.life")} how={say("judge.life-how")} parts={["life"]} words={words} />
      <Part title={say("judge.money")} how={say("judge.money-how")} parts={["money"]} words={words} />
    </>
  );
}

function Advice({ words }: { words: Words }) {
  const costs = { failed: LOSSES["promised-and-failed"].loss, worse: LOSSES["made-worse"].loss, declined: LOSSES["declined-cleanable"].loss };
  return <Part title={words.say("judge.advice")} how={words.say("judge.advice-how", costs)} parts={["decision"]} words={words} />;
}

function NeverSaid({ words }: { words: Words }) {
  const { say } = words;
  return (
    <>
      <section>
        <h2>{say("judge.inspection")}</h2>
        <ul className={styles.list}>{[...new Set(ONLY_INSPECTION.map((r) => r.say))].map((text) => <li key={text}>{printedIn(words)(text)}</li>)}</ul>
      </section>
      <section>
        <h2>{say("judge.never")}</h2>
        <ul className={styles.list}>
          <li>{say("judge.never-as-new")}</li>
          <li>{say("judge.never-beyond")}</li>
          <li>{say("judge.never-certain")}</li>
          <li>{say("judge.never-blame")}</li>
        </ul>
      </section>
    </>
  );
}
