import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { ONLY_INSPECTION } from "@/lib/trade/inspection";
import { publicTables, publishedSources, rowsByHow, TABLES } from "@/lib/trade/tables";
import { MODEL_VERSION } from "@/lib/triage/assess";
import { Length } from "@/lib/ui/length";
import { Measure, Measures } from "@/lib/ui/measure-row";
import { sayHow, sayPercent } from "@/lib/ui/printed-table";
import { printedIn } from "@/lib/words/printed-tables";
import { wordsIn, type Words } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import { chaptersIn, type Chapter } from "./chapters";
import styles from "./how-we-judge.module.css";

export async function generateMetadata(): Promise<Metadata> {
  const { say } = wordsIn((await readSettings()).locale);
  return { title: say("judge.title"), description: say("judge.description") };
}

/** The method in plain words, the way to every table it goes by, and every published source. */
export default async function HowWeJudge() {
  const { name, locale } = await readSettings();
  const words = wordsIn(locale);
  const { say } = words;
  const sources = publishedSources(TABLES);
  return (
    <Shell words={words} start={<Link href="/">{name}</Link>} isWide>
      <article className={styles.text}>
        <h1>{say("judge.title")}</h1>
        <p className={styles.lead}>{say("judge.lead")}</p>
        <HowSure words={words} />
        {chaptersIn(words).map((chapter) => <InShort key={chapter.id} chapter={chapter} words={words} />)}
        <NeverSaid words={words} />
        <section>
          <h2>{say("judge.sources")}</h2>
          <p>{say("judge.sources-which")}</p>
          <details className={styles.tables}>
            <summary>{say("judge.sources-all", { n: sources.length })}</summary>
            <ul className={styles.sources}>{sources.map((s) => <li key={s}><cite lang="en">{s}</cite></li>)}</ul>
          </details>
          <p className="small">{say("judge.model", { version: MODEL_VERSION })}</p>
        </section>
      </article>
    </Shell>
  );
}

/** One part of the method: what it does, and the way to each table it goes by; plain links, because a browser then unfolds the table they lead to. */
function InShort({ chapter: { id, title, how, parts }, words }: { chapter: Chapter; words: Words }) {
  const print = printedIn(words);
  const tables = publicTables(...parts);
  return (
    <section>
      <h2>{title}</h2>
      {how.map((p) => <p key={p}>{p}</p>)}
      <details className={styles.tables}>
        <summary>{words.say("judge.tables", { n: tables.length })}</summary>
        <ul>{tables.map((t) => <li key={t.id}><a href={`/how-we-judge/${id}#table-${t.id}`}>{print(t.name)}</a> <small>{words.say("table.rows", { n: t.rows.length })}</small></li>)}</ul>
      </details>
      <p><Link href={`/how-we-judge/${id}`}>{words.say("judge.open-tables", { title })}</Link></p>
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
