"use client";
import { CheckedForm } from "@/lib/ui/checked-form";
import { TextField } from "@/lib/ui/field";
import css from "../_parts/door.module.css";
import { enter } from "./actions";
import { signInSchema } from "./schema";

export function SignInForm({ title }: { title: string }) {
  return (
    <CheckedForm schema={signInSchema} action={enter} values={{}} title={title}>
      <div className={css.fields}>
        <TextField name="email" type="email" label="E-mail address" autoComplete="username" />
        <TextField name="password" type="password" label="Password" autoComplete="current-password" />
        <button className="button">Sign in</button>
      </div>
    </CheckedForm>
  );
}
