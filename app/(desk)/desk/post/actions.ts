"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import * as z from "zod/mini";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { asStaff, SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { refuse, type Result } from "@/lib/enquiry/caller";
import { reachableSchema } from "@/lib/enquiry/client-schema";
import { liftSuppression } from "@/lib/enquiry/lift-suppression";
import { linkPost } from "@/lib/enquiry/link-post";
import { openPost } from "@/lib/enquiry/open-post";
import { putPostAside } from "@/lib/enquiry/put-post-aside";
import type { FormState } from "@/lib/ui/form-state";

const id = z.string().check(z.minLength(1), z.maxLength(64));
const short = z.string().check(z.maxLength(1_000));

export async function open(postId: string): Promise<Result<{ enquiryId: string }>> {
  return asStaff(id, postId, (caller, value) => openPost(caller, { postId: value }, new Date()));
}

/** Opens an enquiry with a message that names nobody, with the sender that was typed. */
export async function openFrom(previous: FormState, form: FormData): Promise<FormState> {
  const { postId, ...values } = fieldsOf(form);
  const caller = await staffCallerOrNull();
  const state = await answerForm(previous, values, reachableSchema, {
    operation: async (sender) => (caller ? openPost(caller, { postId: String(postId), sender }, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: ({ enquiryId }) => enquiryId,
  });
  if (!state.done) return state;
  revalidatePath("/desk", "layout");
  redirect(`/desk/${state.done}`);
}

const linkSchema = z.strictObject({ postId: id, reference: short });
export async function link(input: z.infer<typeof linkSchema>): Promise<Result<{ enquiryId: string }>> {
  return asStaff(linkSchema, input, (caller, value) => linkPost(caller, value, new Date()));
}

const asideSchema = z.strictObject({ postId: id, isBack: z.boolean() });
export async function putAside(input: z.infer<typeof asideSchema>): Promise<Result<null>> {
  return asStaff(asideSchema, input, (caller, value) => putPostAside(caller, value, new Date()));
}

const liftSchema = z.strictObject({ address: short, reason: short });
export async function lift(input: z.infer<typeof liftSchema>): Promise<Result<null>> {
  return asStaff(liftSchema, input, (caller, value) => liftSuppression(caller, value, new Date()));
}
