import { Link } from "@/lib/ui/link";
import type { Words } from "@/lib/words/words";
import styles from "./client-page.module.css";

/** A copy of everything, and the way out. `copy`: what the copy is called by. */
export function YourData({ copy, words: { say } }: { copy: string; words: Words }) {
  return (
    <section className="no-print">
      <h2>{say("data.keep")}</h2>
      <p className={`small ${styles.reach}`}>
        <a href={`/copies/${copy}`} download>{say("data.copy")}</a>
        <Link href="/your-enquiry/erase">{say("data.erase")}</Link>
      </p>
    </section>
  );
}
