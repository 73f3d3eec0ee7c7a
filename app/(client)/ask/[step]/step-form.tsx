"use client";
import type { ReactNode } from "react";
import type { FormStepId, FormValues } from "@/lib/enquiry/step-schemas";
import { PlainForm } from "@/lib/ui/plain-form";
import { saveStep } from "../actions";

/** The form of one question. The server checks it with its schema and answers in the client's language. */
export function StepForm({ step, title, values, children }: { step: FormStepId; title: string; values: FormValues; children: ReactNode }) {
  return (
    <PlainForm action={saveStep} values={values} title={title}>
      <input type="hidden" name="step" value={step} />
      {children}
    </PlainForm>
  );
}
