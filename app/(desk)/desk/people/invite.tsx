"use client";
import { useActionState, useEffect, useId, useRef } from "react";
import { FRESH } from "@/lib/ui/form-state";
import { invite } from "./actions";
import css from "./people.module.css";
import { ROLE_IDS, ROLES } from "./schema";

/** Makes a link for a colleague. It is shown here and nowhere else, works once and for ten minutes. */
export function Invite() {
  const [state, send, isBusy] = useActionState(invite, FRESH);
  const ids = useId();
  const status = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (state.attempt > 0) status.current?.focus();
  }, [state.attempt]);
  const { errors, values, done } = state;
  const kept = done ? {} : values;
  return (
    <section className={css.invite}>
      <h2>Invite somebody</h2>
      <form action={send} key={state.attempt} noValidate>
        <div className="field">
          <label htmlFor={`${ids}-email`}>E-mail address</label>
          {errors.email && <span className="error" id={`${ids}-wrong`}>{errors.email}</span>}
          <input id={`${ids}-email`} name="email" type="email" autoComplete="off" defaultValue={[kept.email ?? ""].flat()[0]} aria-invalid={errors.email ? true : undefined} aria-describedby={errors.email ? `${ids}-wrong` : undefined} />
        </div>
        <div className="field">
          <label htmlFor={`${ids}-role`}>Role</label>
          <select id={`${ids}-role`} name="role" defaultValue={[kept.role ?? "trainee"].flat()[0]}>
            {ROLE_IDS.map((r) => <option key={r} value={r}>{ROLES[r].name}</option>)}
          </select>
        </div>
        <button className="button" disabled={isBusy}>Make a link</button>
      </form>
      <div ref={status} role="status" tabIndex={-1} className={css.said}>
        {errors.form && <p className="error">{errors.form}</p>}
        {done && <><p>Open it with them beside you. It works once, for ten minutes, and is not shown again.</p><p><code className={css.link}>{done}</code></p></>}
      </div>
    </section>
  );
}
