import type { Metadata } from "next";
import Link from "next/link";
import { FIRST_AID } from "@/lib/trade/first-aid";
import { FirstAid } from "@/lib/ui/first-aid";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../_parts/shell";
import styles from "./first-aid.module.css";

export const metadata: Metadata = { title: "First aid for a wet rug" };

/** First aid for somebody who has told nothing yet. */
export default async function FirstAidPage() {
  const settings = await readSettings();
  return (
    <Shell start={<Link href="/">{settings.name}</Link>}>
      <h1>First aid for a wet rug</h1>
      <p className={styles.lead}>{FIRST_AID.lead}</p>
      <FirstAid emergencyNumber={settings.emergencyNumber} />
      <p className={`no-print ${styles.then}`}><Link className="button" href="/ask" prefetch={false}>Then tell us about it</Link></p>
    </Shell>
  );
}
