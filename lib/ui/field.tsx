"use client";
import type { InputHTMLAttributes, ReactNode } from "react";
import styles from "./field.module.css";
import { controlId, describedBy, errorId, hintId, useFields } from "./form-context";

interface FieldProps {
  name: string;
  label: ReactNode;
  hint?: string | undefined;
}
type InputProps = Pick<InputHTMLAttributes<HTMLInputElement>, "type" | "inputMode" | "autoComplete" | "size">;

function useField(name: string, hint: string | undefined, shouldUnregister = false) {
  const { register, errors, initial } = useFields();
  const error = errors[name];
  const control = {
    ...register(name, { shouldUnregister }), id: controlId(name), defaultValue: [initial[name] ?? ""].flat()[0],
    "aria-invalid": error !== undefined || undefined,
    "aria-describedby": describedBy(hint !== undefined && hintId(name), error !== undefined && errorId(name)),
  };
  return { control, error };
}

function Frame({ name, label, hint, error, children }: FieldProps & { error: string | undefined; children: ReactNode }) {
  return (
    <div className="field">
      <label htmlFor={controlId(name)}>{label}</label>
      {hint && <small id={hintId(name)}>{hint}</small>}
      {error && <span className="error" id={errorId(name)}>{error}</span>}
      {children}
    </div>
  );
}

/** One line of text, with its label, its hint and what is wrong with it. `isFresh`: shown anew after it was gone, it begins with what is kept then. */
export function TextField({ name, label, hint, isFresh, ...input }: FieldProps & InputProps & { isFresh?: boolean }) {
  const { control, error } = useField(name, hint, isFresh);
  return <Frame name={name} label={label} hint={hint} error={error}><input type="text" {...input} {...control} /></Frame>;
}

/** Several lines of text. */
export function TextArea({ name, label, hint, rows = 5 }: FieldProps & { rows?: number }) {
  const { control, error } = useField(name, hint);
  return <Frame name={name} label={label} hint={hint} error={error}><textarea rows={rows} {...control} /></Frame>;
}

/** A choice out of a few short words. */
export function SelectField({ name, label, hint, options }: FieldProps & { options: readonly { id: string; label: string }[] }) {
  const { control, error } = useField(name, hint);
  return (
    <Frame name={name} label={label} hint={hint} error={error}>
      <select {...control}>{options.map((o) => <option key={o.id} value={o.id}>{o.label}</option>)}</select>
    </Frame>
  );
}

/** One thing to agree to. */
export function TickBox({ name, label }: { name: string; label: ReactNode }) {
  const { register, errors, initial } = useFields();
  const error = errors[name];
  return (
    <div className={`field ${styles.tick}`}>
      {error && <span className="error" id={errorId(name)}>{error}</span>}
      <label htmlFor={controlId(name)}>
        <input
          type="checkbox" value="yes" {...register(name)} id={controlId(name)} defaultChecked={initial[name] === "yes"}
          aria-invalid={error !== undefined || undefined} aria-describedby={describedBy(error !== undefined && errorId(name))}
        />
        <span>{label}</span>
      </label>
    </div>
  );
}
