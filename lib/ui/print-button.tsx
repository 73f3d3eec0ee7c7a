"use client";
import css from "./print-button.module.css";

/** Prints the page. */
export function PrintButton({ label }: { label: string }) {
  return <button type="button" className={`no-print ${css.print}`} onClick={() => window.print()}>{label}</button>;
}
