import type { Metadata } from "next";
import Link from "next/link";
import { readSettings } from "@/lib/workshop/settings";
import { Shell } from "../../_parts/shell";
import styles from "../client-page.module.css";

export const metadata: Metadata = { title: "Everything is erased" };

/** After a client has erased their enquiry. */
export default async function Erased() {
  const { name } = await readSettings();
  return (
    <Shell start={<Link href="/">{name}</Link>}>
      <h1>Everything is erased</h1>
      <p className={styles.said}>Your answers, photos and letters are gone, and your link opens nothing any more. You are welcome to ask again at any time.</p>
      <p><Link className="button" href="/">To the beginning</Link></p>
    </Shell>
  );
}
