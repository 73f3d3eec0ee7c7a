import "server-only";
import { randomUUID } from "node:crypto";
import type { Tx } from "../store/database";
import type { FreshDraft } from "./fresh-draft";
import { nextStates } from "./states";
import { toJson } from "./to-json";

/** A client wrote or sent a photo: it is our turn again, or the state stays where the table says so; and a new draft begins. */
export async function clientActed(tx: Tx, { enquiryId, draft, now }: { enquiryId: string; draft: FreshDraft | null; now: Date }): Promise<void> {
  const { state } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  const to = nextStates(state, "client")[0];
  if (to && to !== state) await tx.enquiry.update({ where: { id: enquiryId }, data: { state: to, stateSince: now } });
  if (draft) await beginDraft(tx, { enquiryId, draft, now });
}

/** Lets the program write the next revision, unless somebody wrote one since. */
export async function beginDraft(tx: Tx, { enquiryId, draft, now }: { enquiryId: string; draft: FreshDraft; now: Date }): Promise<void> {
  const number = draft.after + 1;
  const taken = await tx.draft.updateMany({ where: { enquiryId, number: draft.after }, data: { number } });
  if (taken.count !== 1) return;
  const { id } = await tx.draft.findUniqueOrThrow({ where: { enquiryId }, select: { id: true } });
  const { subject, text, paragraphs } = draft.composed;
  await tx.revision.create({
    data: {
      id: randomUUID(),
      draftId: id,
      number,
      subject,
      text,
      paragraphs: paragraphs.map(toJson),
      assessmentId: draft.assessmentId,
      createdAt: now,
    },
  });
}
