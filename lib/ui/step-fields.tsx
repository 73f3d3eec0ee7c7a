import type { ReactNode } from "react";
import type { FormStepId } from "../enquiry/step-schemas";
import { stepRow } from "../enquiry/steps";
import { CURRENCIES } from "../trade/questions";
import { Choice } from "./choice";
import { TextArea, TextField, SelectField } from "./field";
import { UnitChoice } from "./unit-choice";
import { ChoiceFields } from "./choice-fields";
import type { StepProps } from "./step-props";
import styles from "./step-fields.module.css";
import { titleOf } from "./step-titles";

const LABEL_ANSWERS = [
  { id: "typed", label: "Yes, it says…", hint: "Write it below, in any language, as it stands there" },
  { id: "none", label: "There is no label" },
  { id: "unsure", label: "I’m not sure", hint: "Or I can’t get at it, or can’t read it" },
] as const;

function LabelFields(props: StepProps) {
  return (
    <>
      <Choice name="answer" kind="one" legend={<h1>{titleOf(props.step, props.answers)}</h1>} hint="Usually sewn under a corner, or on the back. Don’t lift a wet rug to look for it." options={LABEL_ANSWERS} />
      <div className={`${styles.beside} ${styles.whenTyped}`}>
        <TextArea name="labelText" label="What the label says" hint="For example “Pile: 100 % viscose”. The small print too, if you can." rows={3} />
      </div>
    </>
  );
}

function SellerFields(props: StepProps) {
  return (
    <>
      <ChoiceFields {...props} question="sellerSaid" />
      <div className={styles.beside}><TextField name="sellerWords" label="The exact words, if you remember them" hint="You may leave this empty." /></div>
    </>
  );
}

function BoughtFields(props: StepProps) {
  return (
    <>
      <ChoiceFields {...props} question="boughtWhere" />
      <div className={styles.beside}><TextField name="boughtPlace" label="Which place or town, if it helps" hint="You may leave this empty." /></div>
    </>
  );
}

function PriceFields({ step, answers }: StepProps) {
  return (
    <>
      <h1>{titleOf(step, answers)}</h1>
      <p className={styles.hint}>The price helps us a little with what it can be, and with whether cleaning is worth the money. Roughly is enough.</p>
      <div className={styles.fields}>
        <TextField name="boughtYear" label="The year" hint="For example 2019" inputMode="numeric" size={6} />
        <div className={styles.amount}>
          <TextField name="price" label="What it cost" inputMode="decimal" />
          <SelectField name="currency" label="Currency" options={CURRENCIES.map((c) => ({ id: c, label: c }))} />
        </div>
      </div>
    </>
  );
}

function SizeFields({ step, answers }: StepProps) {
  return (
    <>
      <h1>{titleOf(step, answers)}</h1>
      <p className={styles.hint}>Without the fringe. If you have no tape measure, count in steps and tell us roughly.</p>
      <div className={`${styles.fields} ${styles.sides}`}>
        <UnitChoice className={styles.unit} />
        <div className={`${styles.pair} ${styles.centimetres}`}>
          <TextField name="widthCm" label="Width in cm" inputMode="decimal" />
          <TextField name="lengthCm" label="Length in cm" inputMode="decimal" />
        </div>
        <div className={styles.feet}>
          {(["width", "length"] as const).map((side) => (
            <div key={side} className={styles.pair}>
              <TextField name={`${side}Ft`} label={`${side === "width" ? "Width" : "Length"}, feet`} inputMode="decimal" />
              <TextField name={`${side}In`} label="and inches" inputMode="decimal" />
            </div>
          ))}
        </div>
      </div>
    </>
  );
}

function StoryFields({ step, answers }: StepProps) {
  const isTrade = answers.reason === "trade";
  return (
    <>
      <h1>{titleOf(step, answers)}</h1>
      <p className={styles.hint}>
        {isTrade
          ? "What you did, in which order, and what you have told your customer so far. We read it as colleagues."
          : "In your own words, as long or as short as you like. What worries you, what the rug means to you, what nobody asked."}
      </p>
      <div className={styles.fields}><TextArea name="story" label="In your own words" rows={8} /></div>
    </>
  );
}

function ContactFields({ step, answers }: StepProps) {
  const isTrade = answers.reason === "trade";
  return (
    <>
      <h1>{titleOf(step, answers)}</h1>
      <p className={styles.hint}>
        {isTrade
          ? "With a telephone number we ring you. The answer in writing comes by e-mail."
          : "The answer comes by e-mail. A telephone number helps when something cannot wait."}
      </p>
      <div className={styles.fields}>
        <TextField name="name" label="Your name" autoComplete="name" />
        <TextField name="email" label="E-mail" type="email" inputMode="email" autoComplete="email" />
        <TextField name="telephone" label="Telephone" hint={isTrade ? undefined : "You may leave this empty."} type="tel" inputMode="tel" autoComplete="tel" />
      </div>
    </>
  );
}

/** The pages that are more than one choice out of a list. */
const OWN_FIELDS: Partial<Record<FormStepId, (props: StepProps) => ReactNode>> = {
  label: LabelFields, seller: SellerFields, bought: BoughtFields, price: PriceFields, size: SizeFields, story: StoryFields, contact: ContactFields,
};

/** What is asked on a page: its fields, headed by the question. */
export function StepFields({ step, answers }: { step: FormStepId; answers: StepProps["answers"] }) {
  const Fields = OWN_FIELDS[step];
  const { question } = stepRow(step);
  return Fields ? <Fields step={step} answers={answers} /> : question && <ChoiceFields step={step} question={question} answers={answers} />;
}
