import Link from "next/link";
import styles from "./client-page.module.css";

/** A copy of everything, and the way out. `copy`: what the copy is called by. */
export function YourData({ copy }: { copy: string }) {
  return (
    <section className="no-print">
      <h2>What we keep about you</h2>
      <p className={`small ${styles.reach}`}>
        <a href={`/copies/${copy}`} download>A copy of everything</a>
        <Link href="/your-enquiry/erase">Erase everything</Link>
      </p>
    </section>
  );
}
