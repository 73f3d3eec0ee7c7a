"use client";
import { TextField } from "@/lib/ui/field";
import { PlainForm } from "@/lib/ui/plain-form";
import { erase } from "./actions";
import css from "./erase.module.css";

/** The reference is typed, so that the wrong one does not go by a slip. */
export function EraseForm({ enquiryId, reference }: { enquiryId: string; reference: string }) {
  return (
    <PlainForm action={erase} title="Erase this enquiry">
      <div className={css.form}>
        <input type="hidden" name="enquiryId" value={enquiryId} />
        <TextField name="typed" label={`To erase it, type ${reference}`} autoComplete="off" size={12} />
        <button className="button">Erase for good</button>
      </div>
    </PlainForm>
  );
}
