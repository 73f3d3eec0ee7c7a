import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../../_parts/shell";
import styles from "../client-page.module.css";

export async function generateMetadata(): Promise<Metadata> {
  return { title: wordsIn((await readSettings()).locale).say("erased.title") };
}

/** After a client has erased their enquiry. */
export default async function Erased() {
  const { name, locale } = await readSettings();
  const words = wordsIn(locale);
  return (
    <Shell words={words} start={<Link href="/">{name}</Link>}>
      <h1>{words.say("erased.title")}</h1>
      <p className={styles.said}>{words.say("erased.gone")}</p>
      <p><Link className="button" href="/">{words.say("page.to-beginning")}</Link></p>
    </Shell>
  );
}
