import type { ReactNode } from "react";
import type { FormStepId } from "../enquiry/step-schemas";
import { stepRow } from "../enquiry/steps";
import { CURRENCIES } from "../trade/questions";
import type { AreaUnit } from "../words/measures";
import { Choice } from "./choice";
import { TextArea, TextField, SelectField } from "./field";
import { UnitChoice } from "./unit-choice";
import { ChoiceFields } from "./choice-fields";
import type { StepProps } from "./step-props";
import styles from "./step-fields.module.css";
import { titleOf } from "./step-titles";

const Title = ({ step, answers, words }: StepProps) => <h1>{titleOf(step, answers, words)}</h1>;

function LabelFields({ known, ...props }: StepProps & { known: readonly string[] }) {
  const { say } = props.words;
  const answers = [
    { id: "typed", label: say("label.typed"), hint: say("label.typed-hint") },
    { id: "none", label: say("label.none") },
    { id: "unsure", label: say("ask.unsure"), hint: say("label.unsure-hint") },
  ];
  return (
    <>
      <Choice name="answer" kind="one" legend={<Title {...props} />} hint={known.length > 0 ? known.join("; ") : say("label.hint")} options={answers} />
      <div className={`${styles.beside} ${styles.whenTyped}`}>
        <TextArea name="labelText" label={say("label.words")} hint={say("label.words-hint")} rows={3} />
      </div>
    </>
  );
}

function SellerFields(props: StepProps) {
  const { say } = props.words;
  return (
    <>
      <ChoiceFields {...props} question="sellerSaid" />
      <div className={styles.beside}><TextField name="sellerWords" label={say("seller.words")} hint={say("ask.may-be-empty")} /></div>
    </>
  );
}

function BoughtFields(props: StepProps) {
  const { say } = props.words;
  return (
    <>
      <ChoiceFields {...props} question="boughtWhere" />
      <div className={styles.beside}><TextField name="boughtPlace" label={say("bought.place")} hint={say("ask.may-be-empty")} /></div>
    </>
  );
}

function PriceFields(props: StepProps) {
  const { say } = props.words;
  return (
    <>
      <Title {...props} />
      <p className={styles.hint}>{say("price.hint")}</p>
      <div className={styles.fields}>
        <TextField name="boughtYear" label={say("price.year")} hint={say("price.year-hint")} size={12} />
        <div className={styles.amount}>
          <TextField name="price" label={say("price.cost")} inputMode="decimal" />
          <SelectField name="currency" label={say("price.currency")} options={CURRENCIES.map((c) => ({ id: c, label: c }))} />
        </div>
      </div>
    </>
  );
}

function SizeFields({ known, ...props }: StepProps & Asked) {
  const { say } = props.words;
  const units = [{ id: "cm", label: say("size.in-cm") }, { id: "ft", label: say("size.in-feet") }];
  return (
    <>
      <Title {...props} />
      <p className={styles.hint}>{say("size.hint")}</p>
      {known.map((told) => <p key={told} className={styles.hint}>{told}</p>)}
      <div className={`${styles.fields} ${styles.sides}`}>
        <UnitChoice className={styles.unit} legend={say("size.in")} units={units} chosen={props.areaUnit === "sqft" ? "ft" : "cm"} />
        <div className={`${styles.pair} ${styles.centimetres}`}>
          <TextField name="widthCm" label={say("size.width-cm")} inputMode="decimal" />
          <TextField name="lengthCm" label={say("size.length-cm")} inputMode="decimal" />
        </div>
        <div className={styles.feet}>
          {(["width", "length"] as const).map((side) => (
            <div key={side} className={styles.pair}>
              <TextField name={`${side}Ft`} label={say(`size.${side}-feet`)} inputMode="decimal" />
              <TextField name={`${side}In`} label={say("size.inches")} inputMode="decimal" />
            </div>
          ))}
        </div>
      </div>
    </>
  );
}

function StoryFields(props: StepProps) {
  const { say } = props.words;
  return (
    <>
      <Title {...props} />
      <p className={styles.hint}>{say(props.answers.reason === "trade" ? "story.hint-trade" : "story.hint")}</p>
      <div className={styles.fields}><TextArea name="story" label={say("story.words")} rows={8} /></div>
    </>
  );
}

function ContactFields(props: StepProps) {
  const { say } = props.words;
  const isTrade = props.answers.reason === "trade";
  return (
    <>
      <Title {...props} />
      <p className={styles.hint}>{say(isTrade ? "contact.hint-trade" : "contact.hint")}</p>
      <div className={styles.fields}>
        <TextField name="name" label={say("contact.name")} autoComplete="name" />
        <TextField name="email" label={say("contact.email")} type="email" inputMode="email" autoComplete="email" />
        <TextField name="telephone" label={say("contact.telephone")} hint={isTrade ? undefined : say("ask.may-be-empty")} type="tel" inputMode="tel" autoComplete="tel" />
      </div>
    </>
  );
}

interface Asked { areaUnit: AreaUnit; known: readonly string[] }

/** The pages that are more than one choice out of a list. */
const OWN_FIELDS: Partial<Record<FormStepId, (props: StepProps & Asked) => ReactNode>> = {
  label: LabelFields, seller: SellerFields, bought: BoughtFields, price: PriceFields, size: SizeFields, story: StoryFields, contact: ContactFields,
};

/** What is asked on a page: its fields, headed by the question. `areaUnit`: in which unit sizes are asked for at first; `known`: what answers it already, from elsewhere. */
export function StepFields({ step, answers, words, areaUnit, known = [] }: StepProps & { step: FormStepId; areaUnit: AreaUnit; known?: readonly string[] }) {
  const Fields = OWN_FIELDS[step];
  const { question } = stepRow(step);
  const props = { step, answers, words };
  return Fields ? <Fields {...props} areaUnit={areaUnit} known={known} /> : question && <ChoiceFields {...props} question={question} />;
}
