"use client";
import { TickBox } from "@/lib/ui/field";
import { PlainForm } from "@/lib/ui/plain-form";
import { erase } from "./actions";
import css from "./erase.module.css";

/** One tick and one button: it cannot be undone. */
export function EraseForm() {
  return (
    <PlainForm action={erase} title="Erase everything">
      <div className={css.form}>
        <TickBox name="sure" label="Yes, erase everything for good" />
        <button className="button">Erase everything</button>
      </div>
    </PlainForm>
  );
}
