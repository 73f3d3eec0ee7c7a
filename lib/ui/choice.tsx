"use client";
import type { ChangeEvent, ReactNode } from "react";
import { standsAlone } from "../enquiry/steps";
import styles from "./choice.module.css";
import { controlId, describedBy, errorId, hintId, useFields } from "./form-context";

export interface ChoiceOption {
  id: string;
  label: string;
  hint?: string | undefined;
  picture?: ReactNode;
}

/** Choices as cards: real radio buttons, or tick boxes where several may hold. The first control carries the group's id. */
export function Choice({ name, kind, options, legend, hint }: {
  name: string;
  kind: "one" | "many";
  options: readonly ChoiceOption[];
  legend: ReactNode;
  hint?: string | undefined;
}) {
  const { errors, initial } = useFields();
  const chosen = [initial[name] ?? []].flat();
  const error = errors[name];
  return (
    <fieldset className={styles.choice} aria-describedby={describedBy(hint !== undefined && hintId(name), error !== undefined && errorId(name))}>
      <legend>{legend}</legend>
      {hint && <p className={styles.hint} id={hintId(name)}>{hint}</p>}
      {error && <p className="error" id={errorId(name)}>{error}</p>}
      <div className={styles.cards}>
        {options.map((option, k) => (
          <Card key={option.id} name={name} kind={kind} option={option} isChosen={chosen.includes(option.id)} isInvalid={error !== undefined} id={k === 0 ? controlId(name) : `${controlId(name)}-${option.id}`} />
        ))}
      </div>
    </fieldset>
  );
}

function Card({ name, kind, option, isChosen, isInvalid, id }: {
  name: string; kind: "one" | "many"; option: ChoiceOption; isChosen: boolean; isInvalid: boolean; id: string;
}) {
  const { register, choose } = useFields();
  const field = register(name);
  /** "Nothing" and "I'm not sure" cannot hold beside another answer: whichever was ticked last stays. */
  const change = (event: ChangeEvent<HTMLInputElement>) => {
    field.onChange?.(event);
    if (kind === "one" || !event.target.checked) return;
    const boxes = [...(event.target.form?.querySelectorAll<HTMLInputElement>(`input[name="${name}"]`) ?? [])];
    const ticked = boxes.filter((b) => b.checked).map((b) => b.value);
    const kept = standsAlone(option.id) ? [option.id] : ticked.filter((t) => !standsAlone(t));
    if (kept.length === ticked.length) return;
    for (const box of boxes) box.checked = kept.includes(box.value);
    choose(name, kept);
  };
  return (
    <div className={`${styles.card} ${option.picture ? styles.pictured : ""}`}>
      {option.picture}
      <span className={styles.words}>
        <label htmlFor={id}>{option.label}</label>
        {option.hint && <small id={`${id}-hint`}>{option.hint}</small>}
      </span>
      <input
        type={kind === "one" ? "radio" : "checkbox"} id={id} value={option.id} defaultChecked={isChosen} {...field} onChange={change}
        aria-describedby={option.hint ? `${id}-hint` : undefined} aria-invalid={isInvalid || undefined}
      />
    </div>
  );
}
