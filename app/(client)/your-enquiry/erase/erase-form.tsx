"use client";
import { TickBox } from "@/lib/ui/field";
import { PlainForm } from "@/lib/ui/plain-form";
import { erase } from "./actions";
import css from "./erase.module.css";

/** One tick and one button: it cannot be undone. */
export function EraseForm({ title, sure }: { title: string; sure: string }) {
  return (
    <PlainForm action={erase} title={title}>
      <div className={css.form}>
        <TickBox name="sure" label={sure} />
        <button className="button">{title}</button>
      </div>
    </PlainForm>
  );
}
