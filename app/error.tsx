"use client";
import styles from "./error.module.css";

/** When something of ours fails while a page is made. Says nothing about the inside. */
export default function ErrorPage({ reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <main className={styles.page}>
      <title>Something went wrong with us</title>
      <h1>Something went wrong with us, not with you</h1>
      <p>What you told us up to the page before is kept. Please try once more; if it happens again, wait a few minutes or ring us.</p>
      <p><button className="button" onClick={reset}>Try again</button></p>
    </main>
  );
}
