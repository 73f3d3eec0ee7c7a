"use client";
import type { ReactNode } from "react";
import { consentSchema } from "@/lib/enquiry/consent";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TickBox } from "@/lib/ui/field";
import { sendEnquiry } from "../actions";
import styles from "./step.module.css";

/** Consent, and the button that sends. Nothing is ticked beforehand. */
export function SendForm({ title, sentence, children }: { title: string; sentence: string; children: ReactNode }) {
  return (
    <CheckedForm schema={consentSchema} action={sendEnquiry} values={{}} title={title}>
      <div className={styles.consent}>
        {children}
        <TickBox name="consent" label={sentence} />
      </div>
      <div className={styles.foot}><button className="button">Send to the workshop</button></div>
    </CheckedForm>
  );
}
