"use client";
import { Link } from "@/lib/ui/link";
import { fibreField, methodField, MOST_FIBRES, MOST_WEIGHINGS, residueField, specimenField, weighingsForm } from "@/lib/enquiry/weighings-form";
import { SCHEME_IDS } from "@/lib/enquiry/weighings-schema";
import { ANALYSED_FIBRES, QUANTITATIVE_METHODS, SCHEMES } from "@/lib/trade/quantitative";
import { CheckedForm } from "@/lib/ui/checked-form";
import { SelectField, TextField } from "@/lib/ui/field";
import { sentenceCase } from "@/lib/ui/figures";
import { PickOne } from "@/lib/ui/pick-one";
import { enterWeighings } from "./actions";
import { ReportHead } from "./report-form";
import { HiddenFields, PickSample, type Hidden } from "./test-form";
import css from "./test.module.css";

const NOT_CHOSEN = { id: "", label: "Choose" };
const FIBRES = [NOT_CHOSEN, ...ANALYSED_FIBRES.map((f) => ({ id: f.fibre, label: sentenceCase(f.name) }))];
const METHODS = [NOT_CHOSEN, ...QUANTITATIVE_METHODS.map((m) => ({ id: String(m.method), label: `${m.method}: ${m.reagent}` }))];
const ORDINALS = ["First", "Second", "Third"] as const;
const counted = (most: number) => ORDINALS.slice(0, most).map((word, at) => ({ word, n: at + 1 }));

/** A laboratory's masses, from which the per cents are worked out as the published methods do. */
export function WeighingsForm({ title, form }: { title: string; form: Hidden }) {
  return (
    <CheckedForm schema={weighingsForm} action={enterWeighings} values={{}} title={title}>
      <HiddenFields form={form} />
      <div className={css.fields}>
        <ReportHead />
        <PickSample />
        <PickOne name="scheme" legend="How was it analysed?" options={SCHEME_IDS.map((id) => ({ id, label: SCHEMES[id].name }))} />
        <fieldset className={css.group}>
          <legend>Which fibres</legend>
          <div className={css.pair}>
            {counted(MOST_FIBRES).map(({ word, n }) => (
              <SelectField key={n} name={fibreField(n)} label={n < MOST_FIBRES ? `${word} fibre` : `${word} fibre, if any`} options={FIBRES} />
            ))}
          </div>
        </fieldset>
        {counted(MOST_WEIGHINGS).map(({ word, n }) => (
          <fieldset key={n} className={css.group}>
            <legend>{word} weighing</legend>
            {n > 1 && <p className="small">Only for three fibres. Leave the specimen empty where it is the same one.</p>}
            <div className={css.pair}>
              <SelectField name={methodField(n)} label="Method of the Regulation" options={METHODS} />
              <TextField name={specimenField(n)} label="Dry mass of the specimen, g" inputMode="decimal" autoComplete="off" />
              <TextField name={residueField(n)} label="Dry mass of the residue, g" inputMode="decimal" autoComplete="off" />
            </div>
          </fieldset>
        ))}
        <div className={css.send}><button className="button">Enter these weighings</button><Link href={`/desk/${form.enquiryId}#tests-${form.rugId}`}>Back without entering them</Link></div>
      </div>
    </CheckedForm>
  );
}
