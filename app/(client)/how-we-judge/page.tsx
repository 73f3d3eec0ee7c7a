import type { Metadata } from "next";
import Link from "next/link";
import { METHODS } from "@/lib/trade/care";
import { CAPS, SILK_CEILING } from "@/lib/trade/evidence-caps";
import { ONLY_INSPECTION } from "@/lib/trade/inspection";
import { LOSSES } from "@/lib/trade/losses";
import { publicTables, publishedSources, rowsByHow, TABLES } from "@/lib/trade/tables";
import { MODEL_VERSION } from "@/lib/triage/assess";
import { percent, sentenceCase } from "@/lib/ui/figures";
import { Length } from "@/lib/ui/length";
import { Measure, Measures } from "@/lib/ui/measure-row";
import { HOW_WORDS, Tables } from "@/lib/ui/printed-table";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import styles from "./how-we-judge.module.css";

export const metadata: Metadata = { title: "How we judge", description: "What we go by when we judge a rug: the method in plain words, every table and every source." };

/** The method in plain words, and every table it goes by with its source, printed from the tables themselves. */
export default async function HowWeJudge() {
  const { name, locale } = await readSettings();
  return (
    <Shell words={wordsIn(locale)} start={<Link href="/">{name}</Link>} isWide>
      <article className={styles.text}>
        <h1>How we judge</h1>
        <p className={styles.lead}>A program weighs what you tell and show us, and says how likely things are. A person reads it, decides, and writes to you. This page shows how the program reasons and every table it goes by.</p>
        <HowSure />
        <Fibre />
        <Happened />
        <Outlook />
        <Advice />
        <NeverSaid />
        <section>
          <h2>Published sources</h2>
          <p>What was read in a published text. Other rows say beside themselves how they are known.</p>
          <ul className={styles.sources}>{publishedSources(TABLES).map((s) => <li key={s}>{s}</li>)}</ul>
          <p className="small">Model {MODEL_VERSION}.</p>
        </section>
      </article>
    </Shell>
  );
}

function HowSure() {
  const all = TABLES.reduce((sum, t) => sum + t.rows.length, 0);
  return (
    <section>
      <h2>How sure the tables are</h2>
      <p>
        Nobody has published how often a silk rug is described as cool to the touch. Most of our rows are therefore our own judgement, called
        elicited: put into numbers for this purpose, to be corrected by what becomes of the rugs we see. Every chance we state has a range
        beside it, and it is wide because of that.
      </p>
      <Measures>
        {rowsByHow(TABLES).map(({ how, rows }) => (
          <Measure key={how} name={sentenceCase(HOW_WORDS[how])} chart={<Length share={rows / all} of={HOW_WORDS[how]} words={`${rows} of ${all} rows`} />} figures={`${rows} rows, ${percent(rows / all)}`} />
        ))}
      </Measures>
    </section>
  );
}

function Fibre() {
  return (
    <>
      <section>
        <h2>What it is made of</h2>
        <p>
          We start from what people who write to us usually own. Each answer then makes some fibres more likely and others less: how the pile
          shines, what the seller called it, what the label says, what it cost. Answers that carry the same news, such as shine and touch,
          count less together than apart.
        </p>
        <p>
          Words and photos can mislead as a whole, so they never make us surer than {percent(CAPS.told)}; a label that you typed, not surer
          than {percent(CAPS["label-typed"])}; one that we saw in a photo, {percent(CAPS["label-photo"])}. Silk stays under{" "}
          {percent(SILK_CEILING)} until a few fibres have been tested, because silk is what everything else is sold as.
        </p>
        <Tables tables={publicTables("fibre", "labels", "words")} />
      </section>
      <section>
        <h2>What a test can add</h2>
        <p>
          A few fibres of the pile, looked at and tested on the bench, say more than all photos. It is done by trained people in the workshop.
          Please try none of it on your rug: flames, acids and bleach hurt people and ruin piles. A test speaks only for the yarn that was taken.
        </p>
        <Tables tables={publicTables("tests")} />
      </section>
    </>
  );
}

function Happened() {
  return (
    <section>
      <h2>What happened to it</h2>
      <p>
        Several things can have happened at once. We weigh all of them together, so that one cause explains another away: a ring after a spill
        asks for no second reason. What you saw counts for a cause, and what you did not mention counts a little against it.
      </p>
      <Tables tables={publicTables("happened")} />
    </section>
  );
}

function Outlook() {
  return (
    <>
      <section>
        <h2>What cleaning can do</h2>
        <p>
          From fibre and cause follows how far a mark comes back, always as a range and never as a promise. Where several things happened, the
          worst of them decides. Each way of working, from {METHODS["immersion-wash"].name} to {METHODS.none.name}, is ruled out, needs a
          test in a hidden corner first, or suits.
        </p>
        <Tables tables={publicTables("prospects")} />
      </section>
      <section>
        <h2>How long it lasts</h2>
        <p>A range of years in ordinary use, by pile, make, age and wear. A rug that has lived long is more likely one of those that do. An antique gets no figure: a conservator can say more.</p>
        <Tables tables={publicTables("life")} />
      </section>
      <section>
        <h2>What it costs and what it is worth</h2>
        <p>Our own prices for our work; for a new one, what such rugs cost in shops; for today, that less what published tables take off for age. An antique is valued by a valuer, never by us.</p>
        <Tables tables={publicTables("money")} />
      </section>
    </>
  );
}

function Advice() {
  return (
    <section>
      <h2>What a wrong answer costs</h2>
      <p>
        We advise what we would regret least. In that reckoning a promise that fails costs {LOSSES["promised-and-failed"].loss} ordinary
        cleans, and a rug made worse {LOSSES["made-worse"].loss}; turning away one that would have come back costs{" "}
        {LOSSES["declined-cleanable"].loss}. We ask the question next whose answer could change most for the least trouble, and what cannot
        wait goes by what is lost by waiting.
      </p>
      <Tables tables={publicTables("decision")} />
    </section>
  );
}

function NeverSaid() {
  return (
    <>
      <section>
        <h2>What only an inspection can settle</h2>
        <ul className={styles.list}>{[...new Set(ONLY_INSPECTION.map((r) => r.say))].map((say) => <li key={say}>{say}</li>)}</ul>
      </section>
      <section>
        <h2>What we never say from photos</h2>
        <ul className={styles.list}>
          <li>That a mark will come out, or that a rug will be as new.</li>
          <li>That a rug is beyond repair. Until somebody has seen it, that stays provisional.</li>
          <li>What it is made of, for certain.</li>
          <li>Who is to blame, or what an insurer will pay. Your local law decides.</li>
        </ul>
      </section>
    </>
  );
}
