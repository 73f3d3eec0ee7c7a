"use client";
import styles from "./client-page.module.css";

/** Prints the page. */
export function PrintButton() {
  return <button type="button" className={`no-print ${styles.print}`} onClick={() => window.print()}>Print this page</button>;
}
