"use client";
import { TextArea } from "@/lib/ui/field";
import { PlainForm } from "@/lib/ui/plain-form";
import { sendMessage } from "./actions";
import styles from "./client-page.module.css";

/** A message to the workshop. */
export function MessageForm({ title, label, hint, button }: { title: string; label: string; hint: string; button: string }) {
  return (
    <PlainForm action={sendMessage} title={title}>
      <div className={styles.message}>
        <TextArea name="message" label={label} hint={hint} rows={4} />
        <button className="button quiet">{button}</button>
      </div>
    </PlainForm>
  );
}
