"use client";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField } from "@/lib/ui/field";
import type { FormAction } from "@/lib/ui/form-state";
import css from "../../_parts/door.module.css";
import { welcomeSchema } from "./schema";

/** `email` is set where the invitation names the one address it is good for. */
export function JoinForm({ title, email, action }: { title: string; email: string | null; action: FormAction }) {
  return (
    <CheckedForm schema={welcomeSchema} action={action} values={{ email: email ?? "" }} title={title}>
      <div className={css.fields}>
        <TextField name="name" label="Your name" hint="As it stands under the letters you approve." autoComplete="name" />
        {email ? <><p>For <b>{email}</b></p><input type="hidden" name="email" value={email} autoComplete="username" /></> : <TextField name="email" type="email" label="E-mail address" autoComplete="username" />}
        <TextField name="password" type="password" label="Password" hint="At least 15 characters. Four words that have nothing to do with each other are good." autoComplete="new-password" />
        <button className="button">Set name and password</button>
      </div>
    </CheckedForm>
  );
}
