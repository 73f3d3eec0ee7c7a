"use client";
import { Link } from "@/lib/ui/link";
import type { ReactNode } from "react";
import { stepSchema, type FormStepId, type FormValues } from "@/lib/enquiry/step-schemas";
import { CheckedForm } from "@/lib/ui/checked-form";
import css from "../answers.module.css";
import { correct } from "./actions";

interface Props {
  rugId: string;
  step: FormStepId;
  title: string;
  values: FormValues;
  back: string;
  /** Whether it was seen in a photo; null where a photo cannot show it. */
  seen: boolean | null;
  children: ReactNode;
}

/** The form of one question, checked by its schema, and how the workshop knows. */
export function AnswerForm({ rugId, step, title, values, back, seen, children }: Props) {
  return (
    <CheckedForm schema={stepSchema(step)} action={correct} values={values} title={title}>
      <input type="hidden" name="step" value={step} />
      <input type="hidden" name="rugId" value={rugId} />
      {children}
      {seen !== null && <label className={css.seen}><input type="checkbox" name="seen" value="yes" defaultChecked={seen} />I saw this in the photo myself</label>}
      <div className={css.send}><button className="button">Keep this answer</button><Link href={back}>Back without changing</Link></div>
    </CheckedForm>
  );
}
