import type { Metadata } from "next";
import Link from "next/link";
import { Shell } from "./(client)/_parts/shell";
import styles from "./error.module.css";

export const metadata: Metadata = { title: "This page is not here" };

/** For addresses that lead nowhere. */
export default function NotFound() {
  return (
    <Shell start={<Link href="/">To the beginning</Link>}>
      <h1>This page is not here</h1>
      <p className={styles.said}>The address may be mistyped, or what stood here is gone. If you came by a link in one of our letters, try it again from the letter.</p>
      <p><Link className="button" href="/">To the beginning</Link></p>
    </Shell>
  );
}
