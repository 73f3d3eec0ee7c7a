"use client";
import css from "./print-button.module.css";

/** Prints the page. */
export function PrintButton() {
  return <button type="button" className={`no-print ${css.print}`} onClick={() => window.print()}>Print this page</button>;
}
