import "server-only";
import { composeLetter } from "../mail/compose";
import { pokeDelivery } from "../mail/loop";
import { queueLetter } from "../mail/outbox";
import type { Tx } from "../store/database";
import type { WorkshopSettings } from "../workshop/settings";
import { kindsOf } from "./enclosures";

export interface LetterToWrite {
  enquiryId: string;
  kind: "reply" | "question";
  subject: string;
  text: string;
  approvedById: string | null;
  secondedById: string | null;
  /** It leaves then, and can be taken back until then. */
  notBefore: Date;
  documentIds: readonly string[];
  settings: WorkshopSettings;
  now: Date;
}

/**
 * Puts an approved letter into the outbox, held until its time. A client without an e-mail address gets theirs on their own page;
 * the letter then never leaves the outbox and never counts as sent.
 */
export async function writeLetter(
  tx: Tx,
  { settings, ...letter }: LetterToWrite,
): Promise<string> {
  const { enquiryId, kind, subject, text } = letter;
  const { client } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { client: { select: { name: true, email: true } } } });
  return queueLetter(tx, {
    ...letter,
    to: { name: client.name, address: client.email ?? "" },
    workshop: settings,
    letter: composeLetter({ kind, subject, text, workshop: settings, enclosed: await kindsOf(tx, { id: { in: [...letter.documentIds] } }) }),
  });
}

/** After the transaction: lets the outbox look at once. It would find the letter by itself a little later. */
export const pokeOutbox = (): void => pokeDelivery();
