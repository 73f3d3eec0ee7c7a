import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import { publicTables } from "@/lib/trade/tables";
import { Tables } from "@/lib/ui/printed-table";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../../_parts/shell";
import { chaptersIn } from "../chapters";
import styles from "../how-we-judge.module.css";

type Props = Readonly<{ params: Promise<{ chapter: string }> }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const words = wordsIn((await readSettings()).locale);
  const { chapter } = await params;
  return { title: chaptersIn(words).find((c) => c.id === chapter)?.title ?? words.say("judge.title"), description: words.say("judge.description") };
}

/** One chapter of the method with every table it goes by, printed from the tables themselves. */
export default async function Chapter({ params }: Props) {
  const { name, locale } = await readSettings();
  const words = wordsIn(locale);
  const { chapter } = await params;
  const all = chaptersIn(words);
  const at = all.findIndex((c) => c.id === chapter);
  const here = all[at];
  if (!here) notFound();
  const next = all[at + 1];
  return (
    <Shell words={words} start={<Link href="/">{name}</Link>} end={<Link href="/how-we-judge">{words.say("judge.title")}</Link>} isWide>
      <article className={styles.text}>
        <h1>{here.title}</h1>
        <section>
          {here.how.map((p) => <p key={p}>{p}</p>)}
          <Tables tables={publicTables(...here.parts)} words={words} />
        </section>
        <p className={`no-print ${styles.next}`}>{next ? <Link href={`/how-we-judge/${next.id}`}>{words.say("judge.next", { title: next.title })}</Link> : <Link href="/how-we-judge">{words.say("judge.title")}</Link>}</p>
      </article>
    </Shell>
  );
}
