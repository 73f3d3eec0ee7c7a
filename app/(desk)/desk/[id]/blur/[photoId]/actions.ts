"use server";
import * as z from "zod/mini";
import { asStaff } from "@/app/(desk)/_server/as-staff";
import { blurPhoto } from "@/lib/enquiry/blur-photo";
import { areasSchema } from "@/lib/enquiry/blur-schema";
import type { Result } from "@/lib/enquiry/caller";

const blurSchema = z.strictObject({ photoId: z.string().check(z.minLength(1), z.maxLength(64)), areas: areasSchema });
export async function blur(input: z.infer<typeof blurSchema>): Promise<Result<{ photoId: string }>> {
  return asStaff(blurSchema, input, (caller, value) => blurPhoto(caller, value, new Date()));
}
