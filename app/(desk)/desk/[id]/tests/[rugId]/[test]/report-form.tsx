"use client";
import { Link } from "@/lib/ui/link";
import { REPORTED_FIBRES } from "@/lib/enquiry/laboratory-schema";
import { percentField, reportForm } from "@/lib/enquiry/report-form";
import { fibreName } from "@/lib/trade/fibres";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField } from "@/lib/ui/field";
import { sentenceCase } from "@/lib/ui/figures";
import { enterReport } from "./actions";
import { HiddenFields, PickSample, type Hidden } from "./test-form";
import css from "./test.module.css";

/** Whose report it is. */
export const ReportHead = () => (
  <div className={css.pair}>
    <TextField name="laboratory" label="Laboratory" autoComplete="off" />
    <TextField name="reportedOn" type="date" label="Date of the report" />
    <TextField name="reference" label="Its reference, if it has one" autoComplete="off" />
  </div>
);

/** A laboratory's report as it stands on paper. */
export function ReportForm({ title, form }: { title: string; form: Hidden }) {
  return (
    <CheckedForm schema={reportForm} action={enterReport} values={{}} title={title}>
      <HiddenFields form={form} />
      <div className={css.fields}>
        <ReportHead />
        <PickSample />
        <fieldset className={css.group}>
          <legend>What it found, in per cent by mass</legend>
          <p className="small">Leave empty what it does not name. The per cents add up to 100.</p>
          <div className={css.percents}>
            {REPORTED_FIBRES.map((f) => <TextField key={f} name={percentField(f)} label={sentenceCase(fibreName(f))} inputMode="decimal" autoComplete="off" />)}
          </div>
        </fieldset>
        <div className={css.send}><button className="button">Enter this report</button><Link href={`/desk/${form.enquiryId}#tests-${form.rugId}`}>Back without entering it</Link></div>
      </div>
    </CheckedForm>
  );
}
