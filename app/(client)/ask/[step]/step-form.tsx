"use client";
import type { ReactNode } from "react";
import { stepSchema, type FormStepId, type FormValues } from "@/lib/enquiry/step-schemas";
import { CheckedForm } from "@/lib/ui/checked-form";
import { saveStep } from "../actions";

/** The form of one question, checked by its schema. */
export function StepForm({ step, title, values, children }: { step: FormStepId; title: string; values: FormValues; children: ReactNode }) {
  return (
    <CheckedForm schema={stepSchema(step)} action={saveStep} values={values} title={title}>
      <input type="hidden" name="step" value={step} />
      {children}
    </CheckedForm>
  );
}
