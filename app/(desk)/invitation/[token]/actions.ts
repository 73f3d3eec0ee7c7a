"use server";
import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { setCookies } from "@/app/_server/caller";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { acceptInvitation } from "@/lib/staff/invitations";
import { signIn } from "@/lib/staff/sign-in";
import type { FormState } from "@/lib/ui/form-state";
import { welcomeSchema } from "./schema";

/** Uses the invitation up and signs the new person in. Only this post does; opening the page changes nothing. */
export async function join(token: string, previous: FormState, form: FormData): Promise<FormState> {
  const values = fieldsOf(form);
  const state = await answerForm(previous, values, welcomeSchema, {
    operation: ({ email = "", ...given }) => acceptInvitation(token, { ...given, email }),
    done: ({ email }) => email,
  });
  if (!state.done) return state;
  const entered = await signIn({ email: state.done, password: String(values.password) }, new Headers(await headers()));
  if (entered.ok) await setCookies(entered.value.cookies);
  redirect(entered.ok ? "/desk" : "/sign-in");
}
