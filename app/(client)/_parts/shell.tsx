import { Link } from "@/lib/ui/link";
import type { ReactNode } from "react";
import type { ColourShare } from "@/lib/enquiry/views";
import { Strip } from "@/lib/ui/strip";
import type { Words } from "@/lib/words/words";
import styles from "./shell.module.css";

/** The frame of every page a homeowner sees: one line, the strip, the page, the foot. */
export function Shell({ words: { say }, start, end, colours = [], isWide = false, children }: {
  words: Words;
  start: ReactNode;
  end?: ReactNode;
  colours?: readonly ColourShare[];
  isWide?: boolean;
  children: ReactNode;
}) {
  return (
    <div className={`${styles.shell} ${isWide ? styles.wide : ""}`}>
      <header className={styles.head}><span>{start}</span><span>{end}</span></header>
      <div className={styles.narrowStrip}><Strip colours={colours} cells={38} thickness={16} /></div>
      <div className={styles.wideStrip}><Strip colours={colours} cells={isWide ? 104 : 54} thickness={16} /></div>
      <main className={styles.main}>{children}</main>
      <footer className={`${styles.foot} no-print`}>
        <Link href="/privacy">{say("foot.privacy")}</Link>
        <Link href="/how-we-judge">{say("foot.judge")}</Link>
        <Link href="/first-aid">{say("foot.first-aid")}</Link>
      </footer>
    </div>
  );
}
