"use client";
import { Link } from "@/lib/ui/link";
import { inspectionForm } from "@/lib/enquiry/document-forms";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextArea, TextField } from "@/lib/ui/field";
import { PickOne } from "@/lib/ui/pick-one";
import { inspect } from "./actions";
import type { Where } from "./document-form";
import css from "./document-form.module.css";

const VERDICTS = [{ id: "no", label: "No" }, { id: "yes", label: "Yes" }];

/** What a named person saw of the rug with their own eyes. */
export function InspectionForm({ title, at, values }: { title: string; at: Where; values: Record<string, string> }) {
  return (
    <CheckedForm schema={inspectionForm} action={inspect} values={values} title={title}>
      {Object.entries(at).map(([name, value]) => <input key={name} type="hidden" name={name} defaultValue={value} />)}
      <p className={css.tells}>A report names this person and this day, and repeats these words as they stand.</p>
      <div className={css.fields}>
        <div className={css.pair}>
          <TextField name="by" label="Inspected by" autoComplete="off" />
          <TextField name="day" type="date" label="On" />
        </div>
        <TextArea name="found" label="What was seen" hint="What you saw, felt and measured, as surely as you saw it; not whose fault it is, who pays, or what cleaning will bring." rows={6} />
        <PickOne name="beyondRepair" legend="Is it beyond economic repair, in this person’s judgement?" options={VERDICTS} />
        <div className={css.send}><button className="button">Record this inspection</button><Link href={`/desk/${at.enquiryId}#documents`}>Back without recording</Link></div>
      </div>
    </CheckedForm>
  );
}
