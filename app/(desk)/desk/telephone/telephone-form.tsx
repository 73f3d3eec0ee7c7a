"use client";
import type { ReactNode } from "react";
import { ON_THE_TELEPHONE } from "@/lib/trade/on-the-telephone";
import { CURRENCIES } from "@/lib/trade/questions";
import { CheckedForm } from "@/lib/ui/checked-form";
import { SelectField, TextArea, TextField, TickBox } from "@/lib/ui/field";
import type { AreaUnit } from "@/lib/words/measures";
import { enter } from "./actions";
import { Pick } from "./pick";
import { telephoneSchema } from "./schema";
import { Sides } from "./sides";
import css from "./telephone.module.css";

/** One page in the order of a call. Nothing but the caller's name is needed. `aid`: what is read out where anything is wet, after that question. */
export function TelephoneForm({ title, currency, areaUnit, aid }: { title: string; currency: string; areaUnit: AreaUnit; aid: ReactNode }) {
  const { happened, rug, matters, ifThereIsTime } = ON_THE_TELEPHONE;
  return (
    <CheckedForm schema={telephoneSchema} action={enter} values={{ currency, areaUnit }} title={title}>
      <section className={css.part}>
        <h2>First</h2>
        <ul className={css.first}>{ON_THE_TELEPHONE.first.map((q) => <li key={q}>{q}</li>)}</ul>
        <Pick question="wetNow" />
      </section>
      {aid}
      <section className={css.part}>
        <h2>Who is calling</h2>
        <div className={css.fields}>
          <TextField name="name" label="Name" autoComplete="off" />
          <TextField name="telephone" type="tel" label="Telephone" autoComplete="off" />
          <TextField name="email" type="email" label="E-mail address" autoComplete="off" />
        </div>
      </section>
      <section className={css.part}>
        <h2>What happened</h2>
        {happened.map((q) => <Pick key={q} question={q} />)}
        <TextArea name="story" label="In their own words" rows={3} />
      </section>
      <section className={css.part}>
        <h2>What it is</h2>
        <div className={css.fields}>
          <TextField name="labelText" label="The label, word for word" />
          <TextField name="sellerWords" label="What the shop called it" />
          <TickBox name="noLabel" label="There is no label" />
        </div>
        {rug.map((q) => <Pick key={q} question={q} />)}
        <div className={css.fields}>
          <Sides />
          <TextField name="boughtYear" label="Year bought" inputMode="numeric" /><TextField name="boughtPlace" label="Where bought" />
          <TextField name="price" label="Price paid" inputMode="decimal" /><SelectField name="currency" label="Currency" options={CURRENCIES.map((c) => ({ id: c, label: c }))} />
        </div>
      </section>
      <section className={css.part}>
        <h2>What matters to them</h2>
        {matters.map((q) => <Pick key={q} question={q} />)}
      </section>
      <details className={css.part}>
        <summary><h2>If there is time</h2></summary>
        {ifThereIsTime.map((q) => <Pick key={q} question={q} />)}
      </details>
      <div className={css.send}><p>{ON_THE_TELEPHONE.never} {ON_THE_TELEPHONE.always}</p><button className="button">Take it in</button></div>
    </CheckedForm>
  );
}
