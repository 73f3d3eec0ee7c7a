import "server-only";
import { database, type Tx } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { withLinks } from "../workshop/client-link";

/** The newest letter of ours that is answered. Only our own numbers tell; a sender's address proves nothing. */
export async function ourLetter(db: Pick<Tx, "letter">, answers: readonly (string | null)[]) {
  const ids = answers.filter((id) => id !== null);
  const letters = await db.letter.findMany({ where: { messageId: { in: ids } }, select: { id: true, messageId: true, enquiryId: true, toAddress: true, automatic: true, enquiry: { select: { client: { select: { email: true } } } } } });
  return letters.sort((a, b) => ids.indexOf(a.messageId) - ids.indexOf(b.messageId))[0] ?? null;
}

/** All letters of the enquiry whose letter is answered, as they went out: a thread repeats the earlier ones too. null where none of the ids is ours. */
export async function ourLetters(answers: readonly string[]): Promise<string | null> {
  const letter = await ourLetter(database(), answers);
  return letter && lettersOf(letter.enquiryId);
}

/** All letters of an enquiry that may be repeated, as they went out. */
export async function lettersOf(enquiryId: string): Promise<string> {
  const all = await database().letter.findMany({ where: { enquiryId, state: { not: "taken_back" } }, orderBy: OLDEST_FIRST.createdAt, select: { text: true } });
  return all.map(({ text }) => withLinks(text)).join("\n\n");
}
