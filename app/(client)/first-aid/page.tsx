import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { FirstAid } from "@/lib/ui/first-aid";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import styles from "./first-aid.module.css";

export async function generateMetadata(): Promise<Metadata> {
  return { title: wordsIn((await readSettings()).locale).say("first-aid.title") };
}

/** First aid for somebody who has told nothing yet. */
export default async function FirstAidPage() {
  const settings = await readSettings();
  const words = wordsIn(settings.locale);
  return (
    <Shell words={words} start={<Link href="/">{settings.name}</Link>}>
      <h1>{words.say("first-aid.title")}</h1>
      <p className={styles.lead}>{words.table("first-aid.lead")}</p>
      <FirstAid words={words} emergencyNumber={settings.emergencyNumber} />
      <p className={`no-print ${styles.then}`}><Link className="button" href="/ask">{words.say("first-aid.then")}</Link></p>
    </Shell>
  );
}
