"use server";
import * as z from "zod/mini";
import { asStaff } from "@/app/(desk)/_server/as-staff";
import type { Result } from "@/lib/enquiry/caller";
import { liftSuppression } from "@/lib/enquiry/lift-suppression";
import { linkPost } from "@/lib/enquiry/link-post";
import { openPost } from "@/lib/enquiry/open-post";
import { putPostAside } from "@/lib/enquiry/put-post-aside";

const id = z.string().check(z.minLength(1), z.maxLength(64));
const short = z.string().check(z.maxLength(1_000));

export async function open(postId: string): Promise<Result<{ enquiryId: string }>> {
  return asStaff(id, postId, (caller, value) => openPost(caller, value, new Date()));
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
