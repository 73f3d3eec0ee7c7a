"use client";
import { Link } from "@/lib/ui/link";
import { useMemo } from "react";
import { benchTestForm, NOT_READ, readingField } from "@/lib/enquiry/bench-test-form";
import { isNeeded, testRow } from "@/lib/enquiry/bench-test-schema";
import { SAMPLE_IDS, SAMPLES } from "@/lib/enquiry/samples";
import type { Reading, TestId } from "@/lib/trade/bench-tests";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField } from "@/lib/ui/field";
import { lowerFirst, sentenceCase } from "@/lib/ui/figures";
import { PickOne } from "@/lib/ui/pick-one";
import { record } from "./actions";
import css from "./test.module.css";

export interface Hidden { id: string; enquiryId: string; rugId: string }

/** What every form here carries unseen: which rug, and the form's own id. */
export const HiddenFields = ({ form }: { form: Hidden }) => <>{Object.entries(form).map(([name, value]) => <input key={name} type="hidden" name={name} defaultValue={value} />)}</>;

/** What the sample was taken from. */
export const PickSample = () => (
  <PickOne name="sample" legend="What was tested?" options={SAMPLE_IDS.map((id) => ({ id, label: sentenceCase(SAMPLES[id].name), hint: SAMPLES[id].hint }))} />
);

/** One test with its readings, in the order of its row, without those whose reagent is switched off. */
export function TestForm({ test, title, form, closed }: { test: TestId; title: string; form: Hidden; closed: readonly string[] }) {
  const schema = useMemo(() => benchTestForm(test), [test]);
  const { readings, speaksFor } = testRow(test);
  const open = Object.entries(readings).filter(([id]) => !closed.includes(id));
  return (
    <CheckedForm schema={schema} action={record} values={{}} title={title}>
      <HiddenFields form={form} />
      <input type="hidden" name="test" defaultValue={test} />
      <div className={css.fields}>
        {speaksFor === "yarn" && <PickSample />}
        {open.map(([id, reading]) => <ReadingField key={id} id={id} reading={reading} />)}
        {closed.length > 0 && <p className="small">Switched off by the owner, because of what they take: {closed.map((id) => lowerFirst(readings[id]?.ask ?? id)).join("; ")}.</p>}
        <div className={css.send}><button className="button">Record this test</button><Link href={`/desk/${form.enquiryId}#tests-${form.rugId}`}>Back without recording</Link></div>
      </div>
    </CheckedForm>
  );
}

function ReadingField({ id, reading }: { id: string; reading: Reading }) {
  const { ask, hint } = reading;
  const name = readingField(id);
  if (reading.kind === "name") return <div className={css.short}><TextField name={name} label={ask} hint={hint} autoComplete="off" /></div>;
  if (reading.kind === "number") {
    const bounds = `Between ${reading.least} and ${reading.most}${reading.unit ? ` ${reading.unit}` : ""}.`;
    return <div className={css.short}><TextField name={name} label={ask} hint={hint ? `${hint}. ${bounds}` : bounds} inputMode="decimal" autoComplete="off" /></div>;
  }
  const answers = Object.entries(reading.answers).map(([answer, row]) => ({ id: answer, label: row.label, hint: row.hint }));
  if (isNeeded(id, reading)) return <PickOne name={name} legend={ask} hint={hint} options={answers} />;
  return <PickOne name={name} legend={ask} hint={hint} options={[...answers, { id: NOT_READ, label: "Not looked at" }]} chosen={NOT_READ} />;
}
