import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { Shell } from "./(client)/_parts/shell";
import styles from "./error.module.css";
import { clientWords } from "./_server/client-words";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await clientWords()).say("missing.title") };
}

/** For addresses that lead nowhere. */
export default async function NotFound() {
  const words = await clientWords();
  return (
    <Shell words={words} start={<Link href="/">{words.say("page.to-beginning")}</Link>}>
      <h1>{words.say("missing.title")}</h1>
      <p className={styles.said}>{words.say("missing.why")}</p>
      <p><Link className="button" href="/">{words.say("page.to-beginning")}</Link></p>
    </Shell>
  );
}
