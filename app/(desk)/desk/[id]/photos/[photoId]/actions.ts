"use server";
import * as z from "zod/mini";
import { asStaff } from "@/app/(desk)/_server/as-staff";
import type { Result } from "@/lib/enquiry/caller";
import { marksSchema } from "@/lib/enquiry/mark-schema";
import { namedPhotoSchema, namePhoto, type NamedPhoto } from "@/lib/enquiry/name-photo";
import { recordMeasurement } from "@/lib/enquiry/record-measurement";
import { withdrawMeasurement } from "@/lib/enquiry/withdraw-measurement";

const id = z.string().check(z.minLength(1), z.maxLength(64));
const keepSchema = z.strictObject({ id, photoId: id, marked: marksSchema, replaces: z.nullable(id) });

/** Keeps what was marked; with `replaces`, in place of an earlier one. */
export async function keepMeasurement(input: z.infer<typeof keepSchema>): Promise<Result<{ id: string }>> {
  return asStaff(keepSchema, input, (caller, value) => recordMeasurement(caller, value, new Date()));
}

export async function nameIt(input: NamedPhoto): Promise<Result<null>> {
  return asStaff(namedPhotoSchema, input, (caller, value) => namePhoto(caller, value, new Date()));
}

export async function takeAway(measurementId: string): Promise<Result<null>> {
  return asStaff(id, measurementId, (caller, value) => withdrawMeasurement(caller, value, new Date()));
}
