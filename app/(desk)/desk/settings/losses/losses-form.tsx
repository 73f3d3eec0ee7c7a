"use client";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { LOSS_IDS, lossesForm, lossName } from "@/lib/enquiry/table-forms";
import { LOSSES } from "@/lib/trade/losses";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField } from "@/lib/ui/field";
import { keepLosses } from "../actions";
import css from "../tables.module.css";

/** Every row of the loss table with its words and its default. */
export function LossesForm({ title, values }: { title: string; values: FormValues }) {
  return (
    <CheckedForm schema={lossesForm} action={keepLosses} values={values} title={title}>
      <div className={css.rows}>
        {LOSS_IDS.map((id) => (
          <div key={id} className={css.row}>
            <TextField name={id} label={lossName(id)} hint={`Without yours: ${LOSSES[id].loss}`} inputMode="decimal" autoComplete="off" />
          </div>
        ))}
      </div>
      <div className={css.bar}><span className="small">An empty field keeps the figure we ship.</span><button className="button">Keep these figures</button></div>
    </CheckedForm>
  );
}
