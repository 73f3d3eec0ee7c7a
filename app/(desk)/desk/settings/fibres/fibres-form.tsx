"use client";
import { useState, type FormEvent } from "react";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { isHundred, percentSum, priorsForm, sayPercent, shareName } from "@/lib/enquiry/table-forms";
import { FIBRE_IDS } from "@/lib/trade/fibres";
import { PRIORS } from "@/lib/trade/priors";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField } from "@/lib/ui/field";
import { keepPriors } from "../actions";
import css from "../tables.module.css";

const sumOf = (form: HTMLFormElement | null) => percentSum(form ? Object.fromEntries(new FormData(form)) : {});

/** The share of each fibre in per cent, with their sum as it is typed. */
export function FibresForm({ title, values }: { title: string; values: FormValues }) {
  const [sum, setSum] = useState(percentSum(values));
  const recount = (event: FormEvent<HTMLDivElement>) => setSum(sumOf(event.currentTarget.closest("form")));
  return (
    <CheckedForm schema={priorsForm} action={keepPriors} values={values} title={title}>
      <div className={css.rows} onInput={recount}>
        {FIBRE_IDS.map((id) => (
          <div key={id} className={css.row}>
            <TextField name={id} label={shareName(id)} hint={`Without yours: ${sayPercent(PRIORS[id] * 100)} per cent`} inputMode="decimal" autoComplete="off" />
          </div>
        ))}
      </div>
      <div className={css.bar}>
        <output className={`num ${css.sum}`}>{sum === 0 ? "All empty: ours are used." : `Together ${sayPercent(sum)} per cent${isHundred(sum) ? "" : ", to be 100"}.`}</output>
        <button className="button">Keep these shares</button>
      </div>
    </CheckedForm>
  );
}
