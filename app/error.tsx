"use client";
import { useSay } from "@/lib/ui/browser-words";
import styles from "./error.module.css";

/** When something of ours fails while a page is made. Says nothing about the inside. */
export default function ErrorPage({ reset }: { error: Error & { digest?: string }; reset: () => void }) {
  const say = useSay();
  return (
    <main className={styles.page}>
      <title>{say("error.title")}</title>
      <h1>{say("error.head")}</h1>
      <p>{say("error.kept")}</p>
      <p><button className="button" onClick={reset}>{say("error.again")}</button></p>
    </main>
  );
}
