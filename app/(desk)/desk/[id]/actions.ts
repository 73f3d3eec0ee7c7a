"use server";
import * as z from "zod/mini";
import { asStaff, SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { answerLabelReading } from "@/lib/enquiry/answer-label-reading";
import { approveReply, type Approved } from "@/lib/enquiry/approve-reply";
import { askClient } from "@/lib/enquiry/ask-client";
import { reasonSchema } from "@/lib/enquiry/bench-test-schema";
import { refuse, type Result } from "@/lib/enquiry/caller";
import { disownMessage } from "@/lib/enquiry/disown-message";
import { encloseDocument } from "@/lib/enquiry/enclose-document";
import { frameLabel } from "@/lib/enquiry/frame-label";
import { framedLabelSchema, type FramedLabel } from "@/lib/enquiry/frame-schema";
import { labelAnswerSchema } from "@/lib/enquiry/label-answer-schema";
import type { LabelReadingView } from "@/lib/enquiry/label-view";
import { giveUpLetter } from "@/lib/enquiry/give-up-letter";
import { makeAnew } from "@/lib/enquiry/make-anew";
import { moveEnquiry } from "@/lib/enquiry/move-enquiry";
import { ownMessage } from "@/lib/enquiry/own-message";
import { readPhotoLabel } from "@/lib/enquiry/read-photo-label";
import { recordReadOut, takeReadOutBack } from "@/lib/enquiry/read-out";
import { letterSchema } from "@/lib/enquiry/save-draft";
import { secondReply } from "@/lib/enquiry/second-reply";
import { sendTestLetter } from "@/lib/enquiry/send-test-letter";
import { setWordsAside } from "@/lib/enquiry/set-words-aside";
import { STATES } from "@/lib/enquiry/states";
import { standByDraft } from "@/lib/enquiry/stand-by-draft";
import { takeBackLetter } from "@/lib/enquiry/take-back";
import type { EnquiryStateId } from "@/lib/enquiry/views";
import { takePostOut } from "@/lib/enquiry/take-post-out";
import { withdrawBenchTest } from "@/lib/enquiry/withdraw-bench-test";
import { withdrawInspection } from "@/lib/enquiry/withdraw-inspection";
import { MOST_QUESTIONS, QUESTION_CHARS } from "@/lib/reply/questions-asked";
import { answerOfForm, type LabelFormState } from "@/lib/ui/label-form";

const { subject, text } = letterSchema.shape;
const id = z.string().check(z.minLength(1), z.maxLength(64));
const number = z.int().check(z.minimum(1));
const reason = z.optional(z.string());
const states = STATES as [EnquiryStateId, ...EnquiryStateId[]];

const standBySchema = z.strictObject({ enquiryId: id, from: number, mark: z.string().check(z.maxLength(64)) });
export async function standBy(input: z.infer<typeof standBySchema>): Promise<Result<{ number: number }>> {
  return asStaff(standBySchema, input, (caller, value) => standByDraft(caller, value, new Date()));
}

const documents = z.optional(z.array(id).check(z.maxLength(100)));
const sendAt = z.optional(z.nullable(z.strictObject({ day: z.string(), hour: z.string() })));
const heard = z.optional(z.nullable(id));
const asked = z.optional(z.array(z.string().check(z.maxLength(QUESTION_CHARS))).check(z.maxLength(MOST_QUESTIONS)));
const asItIs = z.optional(z.array(z.strictObject({ documentId: id, judgedAt: z.string().check(z.maxLength(40)) })).check(z.maxLength(100)));
const approveSchema = z.strictObject({ enquiryId: id, number, reason, longReason: reason, sendAt, documents, heard, read: z.optional(z.boolean()), asked, asItIs });
export async function approve(input: z.infer<typeof approveSchema>): Promise<Result<Approved>> {
  return asStaff(approveSchema, input, (caller, value) => approveReply(caller, value, new Date()));
}

const secondSchema = z.strictObject({ enquiryId: id, documents, heard });
export async function second(input: z.infer<typeof secondSchema>): Promise<Result<{ letterId: string }>> {
  return asStaff(secondSchema, input, (caller, value) => secondReply(caller, value, new Date()));
}

const askSchema = z.strictObject({ enquiryId: id, subject, text, reason, heard });
export async function ask(input: z.infer<typeof askSchema>): Promise<Result<Approved>> {
  return asStaff(askSchema, input, (caller, value) => askClient(caller, value, new Date()));
}

const testSchema = z.strictObject({ enquiryId: id, kind: z.enum(["reply", "question"]), subject, text });
export async function sendTest(input: z.infer<typeof testSchema>): Promise<Result<{ to: string }>> {
  return asStaff(testSchema, input, (caller, value) => sendTestLetter(caller, value, new Date()));
}

const encloseSchema = z.strictObject({ documentId: id, isEnclosed: z.boolean() });
export async function enclose(input: z.infer<typeof encloseSchema>): Promise<Result<null>> {
  return asStaff(encloseSchema, input, (caller, value) => encloseDocument(caller, value, new Date()));
}

export async function makeItAnew(documentId: string): Promise<Result<{ version: number }>> {
  return asStaff(id, documentId, (caller, value) => makeAnew(caller, value, new Date()));
}

export async function takeBack(letterId: string): Promise<Result<null>> {
  return asStaff(id, letterId, (caller, value) => takeBackLetter(caller, value, new Date()));
}

export async function giveUp(letterId: string): Promise<Result<null>> {
  return asStaff(id, letterId, (caller, value) => giveUpLetter(caller, value, new Date()));
}

export async function readOut(letterId: string): Promise<Result<null>> {
  return asStaff(id, letterId, (caller, value) => recordReadOut(caller, value, new Date()));
}

export async function notReadOut(letterId: string): Promise<Result<null>> {
  return asStaff(id, letterId, (caller, value) => takeReadOutBack(caller, value, new Date()));
}

const moveSchema = z.strictObject({ enquiryId: id, from: z.enum(states), to: z.enum(states) });
export async function move(input: z.infer<typeof moveSchema>): Promise<Result<null>> {
  return asStaff(moveSchema, input, (caller, value) => moveEnquiry(caller, value, new Date()));
}

const asideSchema = z.strictObject({ enquiryId: id, why: z.string().check(z.minLength(1), z.maxLength(1_000)) });
export async function setAside(input: z.infer<typeof asideSchema>): Promise<Result<null>> {
  return asStaff(asideSchema, input, (caller, value) => setWordsAside(caller, value, new Date()));
}

export async function own(postId: string): Promise<Result<null>> {
  return asStaff(id, postId, (caller, value) => ownMessage(caller, value, new Date()));
}

export async function disown(postId: string): Promise<Result<null>> {
  return asStaff(id, postId, (caller, value) => disownMessage(caller, value, new Date()));
}

export async function takeOut(postId: string): Promise<Result<null>> {
  return asStaff(id, postId, (caller, value) => takePostOut(caller, value, new Date()));
}

const withdrawSchema = z.strictObject({ id, reason: reasonSchema });
export async function withdraw(input: z.infer<typeof withdrawSchema>): Promise<Result<null>> {
  return asStaff(withdrawSchema, input, (caller, value) => withdrawBenchTest(caller, value, new Date()));
}

export async function withdrawSeen(input: z.infer<typeof withdrawSchema>): Promise<Result<null>> {
  return asStaff(withdrawSchema, input, (caller, value) => withdrawInspection(caller, value, new Date()));
}

/** Asked again and again while a label is being read, so the page around it is left as it is. */
export async function lookAtLabelOf(photoId: string): Promise<Result<LabelReadingView>> {
  const caller = await staffCallerOrNull();
  return caller ? readPhotoLabel(caller, String(photoId)) : refuse("not-signed-in", SIGNED_OUT);
}

export async function answerLabel(before: LabelFormState, form: FormData): Promise<LabelFormState> {
  return answerOfForm(before, form, (given) => asStaff(labelAnswerSchema, given, (caller, value) => answerLabelReading(caller, value, new Date())));
}

export async function frameLabelOf(input: FramedLabel): Promise<Result<LabelReadingView>> {
  return asStaff(framedLabelSchema, input, (caller, value) => frameLabel(caller, value, new Date()));
}
