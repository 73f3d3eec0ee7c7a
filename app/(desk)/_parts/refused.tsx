import { Link } from "@/lib/ui/link";
import { notFound } from "next/navigation";
import styles from "@/app/error.module.css";
import type { Refusal } from "@/lib/enquiry/caller";

/** A page that may not be shown to this person: says why. What is not there is not found. */
export function Refused({ refusal }: { refusal: Refusal }) {
  if (refusal.code === "not-found") notFound();
  return (
    <>
      <h1>Not for you</h1>
      <p className={styles.said}>{refusal.say}</p>
      <p><Link href="/desk">Back to this morning</Link></p>
    </>
  );
}
