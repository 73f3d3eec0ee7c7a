import { randomUUID } from "node:crypto";
import { database, type Letter } from "../../../lib/store/database";
import { composeLetter } from "../../../lib/mail/compose";
import { queueLetter, type LetterToQueue } from "../../../lib/mail/outbox";
import { transact } from "../../../lib/store/database";

export const WORKSHOP = {
  name: "Lantern Yard Rug Workshop", town: "Hallowmere", address: "3 Lantern Yard, Hallowmere", email: "desk@lantern-yard.example", telephone: "01632 960001", hours: "Monday to Friday, 9 to 17",
};
/** As MAIL_FROM gives it: a name for people, an address for servers. */
export const OUR_ADDRESS = { name: WORKSHOP.name, address: WORKSHOP.email };
/** The instant every test begins at. */
export const NOW = new Date("2026-11-25T09:00:00.000Z");
export const minutes = (n: number, from = NOW): Date => new Date(from.getTime() + n * 60_000);

/** An enquiry with its client, and nothing else: what a letter needs. */
export async function makeEnquiry(client: { name?: string; email?: string | null } = {}): Promise<{ enquiryId: string; clientId: string; to: { name: string; address: string } }> {
  const { name = "Ana Example", email = `${randomUUID()}@client.example` } = client;
  const [enquiryId, clientId] = [randomUUID(), randomUUID()];
  await database().client.create({ data: { id: clientId, name, email } });
  await database().enquiry.create({
    data: { id: enquiryId, reference: enquiryId.slice(0, 8), channel: "web", clientId, answers: {}, title: "A rug", urgency: "can_wait", urgencyWhy: "" },
  });
  return { enquiryId, clientId, to: { name, address: email ?? "" } };
}

export const queue = (letter: Partial<LetterToQueue> & Pick<LetterToQueue, "enquiryId" | "to">): Promise<string> =>
  transact((tx) => queueLetter(tx, { letter: composeLetter({ kind: "reply", subject: "Your rug", text: "Dear Ana Example,\n\nIt is likely wool.", workshop: WORKSHOP }), workshop: WORKSHOP, now: NOW, ...letter }));

export const rowOf = (id: string): Promise<Letter> => database().letter.findUniqueOrThrow({ where: { id } });
