import "server-only";
import { composeLetter } from "../mail/compose";
import { pokeDelivery } from "../mail/loop";
import { queueLetter } from "../mail/outbox";
import type { Tx } from "../store/database";
import type { WorkshopSettings } from "../workshop/settings";

const MINUTE_MS = 60_000;

export interface LetterToWrite {
  enquiryId: string;
  kind: "reply" | "question";
  subject: string;
  text: string;
  approvedById: string | null;
  secondedById: string | null;
  settings: WorkshopSettings;
  now: Date;
}

/**
 * Puts an approved letter into the outbox, held for as long as the workshop lets itself take letters back. A client without
 * an e-mail address gets theirs on their own page; the letter then never leaves the outbox and never counts as sent.
 */
export async function writeLetter(
  tx: Tx,
  { enquiryId, kind, subject, text, approvedById, secondedById, settings, now }: LetterToWrite,
): Promise<string> {
  const { client } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { client: { select: { name: true, email: true } } } });
  return queueLetter(tx, {
    enquiryId,
    to: { name: client.name, address: client.email ?? "" },
    workshop: settings,
    now,
    letter: composeLetter({ kind, subject, text, workshop: settings }),
    notBefore: new Date(now.getTime() + settings.holdMinutes * MINUTE_MS),
    approvedById,
    secondedById,
  });
}

/** After the transaction: lets the outbox look at once. It would find the letter by itself a little later. */
export const pokeOutbox = (): void => pokeDelivery();
