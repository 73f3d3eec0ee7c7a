import "server-only";
import { randomUUID } from "node:crypto";
import { database, type Tx } from "../store/database";
import { newRowId } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { headerText } from "./address";
import type { ComposedLetter } from "./compose";
import { attachmentsOf } from "./enclosures";
import { messageOf } from "./message";
import { newMessageId } from "./message-id";
import { mailDomain, senderOf } from "./sender";
import { threadOf } from "./thread";

export { deliverDue } from "./deliver";
export { mailConfigured } from "./sender";

export interface LetterToQueue {
  enquiryId: string;
  to: { name: string; address: string };
  letter: ComposedLetter;
  workshop: { name: string; email: string };
  now: Date;
  /** Documents that go with it, as they were made. */
  documentIds?: readonly string[];
  /** Until then it can be taken back. Default: `now`. */
  notBefore?: Date;
  approvedById?: string | null;
  secondedById?: string | null;
}

/**
 * Writes a letter into the outbox, inside the transaction of the decision to send it. Its Message-ID is fixed here,
 * and what it follows (`threadOf`). Returns the letter's id.
 */
export async function queueLetter(tx: Tx, { enquiryId, to, letter, workshop, now, documentIds = [], notBefore = now, approvedById = null, secondedById = null }: LetterToQueue): Promise<string> {
  const [address, automatic] = [to.address.trim(), letter.kind === "acknowledgement"];
  const row = await tx.letter.create({
    data: {
      id: newRowId(), enquiryId, kind: letter.kind, automatic,
      state: notBefore > now ? "held" : "waiting", messageId: newMessageId(mailDomain(workshop)), ...(await threadOf(tx, { enquiryId, address, automatic })),
      toName: headerText(to.name), toAddress: address, subject: letter.subject, text: letter.text, html: letter.html,
      notBefore, createdAt: now, approvedById, secondedById,
      enclosures: { create: documentIds.map((documentId) => ({ id: randomUUID(), documentId, at: now })) },
    },
    select: { id: true },
  });
  return row.id;
}

/** A letter as a file that mail programs open (RFC 5322); null where there is no such letter. */
export async function letterAsEml(letterId: string): Promise<Buffer | null> {
  const letter = await database().letter.findUnique({ where: { id: letterId } });
  if (!letter) return null;
  const { bytes } = await messageOf(letter, { sender: senderOf(await readSettings()), date: letter.sentAt ?? letter.createdAt, attachments: await attachmentsOf(letterId) });
  return bytes;
}
