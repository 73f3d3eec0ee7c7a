"use client";
import { controlId, describedBy, errorId, hintId, useFields } from "./form-context";
import css from "./pick-one.module.css";

export interface PickOption { id: string; label: string; hint?: string | undefined }

/** One answer out of several on few lines, for the desk: real radio buttons. `chosen` is what stands there at first. */
export function PickOne({ name, legend, hint, options, chosen }: {
  name: string; legend: string; hint?: string | undefined; options: readonly PickOption[]; chosen?: string;
}) {
  const { register, errors, initial } = useFields();
  const error = errors[name];
  const kept = [initial[name] ?? chosen ?? []].flat()[0];
  return (
    <fieldset className={css.pick} aria-describedby={describedBy(hint !== undefined && hintId(name), error !== undefined && errorId(name))}>
      <legend>{legend}</legend>
      {hint && <p className={`small ${css.hint}`} id={hintId(name)}>{hint}</p>}
      {error && <p className="error" id={errorId(name)}>{error}</p>}
      <div className={css.options}>
        {options.map((o, k) => {
          const id = k === 0 ? controlId(name) : `${controlId(name)}-${o.id}`;
          return (
            <div key={o.id} className={css.option}>
              <input type="radio" id={id} value={o.id} defaultChecked={kept === o.id} {...register(name)} aria-describedby={o.hint ? `${id}-hint` : undefined} />
              <span><label htmlFor={id}>{o.label}</label>{o.hint && <small id={`${id}-hint`}>{o.hint}</small>}</span>
            </div>
          );
        })}
      </div>
    </fieldset>
  );
}
