import type { Metadata } from "next";
import { Link } from "@/lib/ui/link";
import { INTAKE_DAYS } from "@/lib/enquiry/open-intake";
import { wordsIn } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import styles from "./privacy.module.css";

export async function generateMetadata(): Promise<Metadata> {
  return { title: wordsIn((await readSettings()).locale).say("privacy.title") };
}

/** Who, why, on what basis, who sees it, how long, and what you may ask for. */
export default async function Privacy() {
  const { name, address, email, telephone, retentionMonths, locale } = await readSettings();
  const reach = [address, email, telephone].filter(Boolean).join(", ");
  const words = wordsIn(locale);
  const { say } = words;
  return (
    <Shell words={words} start={<Link href="/">{name}</Link>}>
      <article className={styles.text}>
        <h1>{say("privacy.title")}</h1>
        <h2>{say("privacy.who")}</h2>
        <p>{name}{reach && `, ${reach}`}.</p>
        <h2>{say("privacy.what")}</h2>
        <p>{say("privacy.what-kept")}</p>
        <p>{say("privacy.photos")}</p>
        <h2>{say("privacy.basis")}</h2>
        <p>{say("privacy.consent")}</p>
        <h2>{say("privacy.program")}</h2>
        <p>{say("privacy.program-sorts")}</p>
        <h2>{say("privacy.sees")}</h2>
        <p>{say("privacy.sees-it")}</p>
        <h2>{say("privacy.long")}</h2>
        <p>{say("privacy.months", { months: retentionMonths, days: INTAKE_DAYS })}</p>
        <h2>{say("privacy.cookies")}</h2>
        <p>{say("privacy.two")}</p>
        <h2>{say("privacy.ask")}</h2>
        <p>{say("privacy.ask-for")}</p>
        <h2>{say("privacy.wrong")}</h2>
        <p>{say("privacy.complain")}</p>
      </article>
    </Shell>
  );
}
