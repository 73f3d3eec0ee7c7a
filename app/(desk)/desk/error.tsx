"use client";
import styles from "@/app/error.module.css";

/** What nobody expected. What was done before it happened is kept; the page can be tried again. */
export default function DeskError({ reset }: { reset: () => void }) {
  return (
    <>
      <h1>Something went wrong here</h1>
      <p className={styles.said}>It was not you. What was kept before is kept; the log has the details.</p>
      <p><button type="button" className="button quiet" onClick={reset}>Try again</button></p>
    </>
  );
}
