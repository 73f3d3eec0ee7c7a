"use client";
import type { ReactNode } from "react";
import { TickBox } from "@/lib/ui/field";
import { PlainForm } from "@/lib/ui/plain-form";
import { sendEnquiry } from "../actions";
import styles from "./step.module.css";

/** Consent, and the button that sends. Nothing is ticked beforehand. */
export function SendForm({ title, sentence, button, children }: { title: string; sentence: string; button: string; children: ReactNode }) {
  return (
    <PlainForm action={sendEnquiry} title={title}>
      <div className={styles.consent}>
        {children}
        <TickBox name="consent" label={sentence} />
      </div>
      <div className={styles.foot}><button className="button">{button}</button></div>
    </PlainForm>
  );
}
