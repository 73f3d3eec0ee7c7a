"use server";
import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { setCookies } from "@/app/_server/caller";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { ok } from "@/lib/enquiry/caller";
import { signIn, signOut } from "@/lib/staff/sign-in";
import type { FormState } from "@/lib/ui/form-state";
import { signInSchema } from "./schema";

export async function enter(previous: FormState, form: FormData): Promise<FormState> {
  const state = await answerForm(previous, fieldsOf(form), signInSchema, {
    operation: async (given) => {
      const result = await signIn(given, new Headers(await headers()));
      if (!result.ok) return result;
      await setCookies(result.value.cookies);
      return ok(null);
    },
    done: () => "Signed in.",
  });
  if (state.done) redirect("/desk");
  return state;
}

export async function leave(): Promise<void> {
  await setCookies(await signOut(new Headers(await headers())));
  redirect("/sign-in");
}
