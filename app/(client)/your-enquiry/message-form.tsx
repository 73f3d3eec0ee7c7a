"use client";
import { TextArea } from "@/lib/ui/field";
import { PlainForm } from "@/lib/ui/plain-form";
import { sendMessage } from "./actions";
import styles from "./client-page.module.css";

/** A message to the workshop. */
export function MessageForm() {
  return (
    <PlainForm action={sendMessage} title="Your enquiry">
      <div className={styles.message}>
        <TextArea name="message" label="Your message" hint="A question, something that has changed, or what you have decided." rows={4} />
        <button className="button quiet">Send the message</button>
      </div>
    </PlainForm>
  );
}
