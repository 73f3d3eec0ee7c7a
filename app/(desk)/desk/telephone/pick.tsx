"use client";
import type { QuestionRow } from "@/lib/trade/question-row";
import { QUESTIONS, type QuestionId } from "@/lib/trade/questions";
import { controlId, describedBy, errorId, useFields } from "@/lib/ui/form-context";
import { QUESTION_HEADS } from "@/lib/ui/heads";
import css from "./telephone.module.css";

/** A question on few lines: real radio buttons or tick boxes, side by side. What was not asked stays empty. */
export function Pick({ question }: { question: QuestionId }) {
  const { register, errors, initial } = useFields();
  const { kind, ask, answers }: QuestionRow = QUESTIONS[question];
  const chosen = [initial[question] ?? []].flat();
  const error = errors[question];
  const options = [...Object.entries(answers).map(([id, a]) => ({ id, label: a.label })), { id: "unsure", label: "not sure" }];
  return (
    <fieldset className={css.pick} aria-describedby={describedBy(error !== undefined && errorId(question))}>
      <legend title={ask}>{QUESTION_HEADS[question]}<span className="unseen">: {ask}</span></legend>
      {error && <p className="error" id={errorId(question)}>{error}</p>}
      <div className={css.options}>
        {options.map(({ id, label }, k) => (
          <label key={id}>
            <input type={kind === "one" ? "radio" : "checkbox"} id={k === 0 ? controlId(question) : undefined} value={id} defaultChecked={chosen.includes(id)} {...register(question)} />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
