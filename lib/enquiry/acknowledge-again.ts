import "server-only";
import type { Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { acknowledge } from "./acknowledge";
import type { Contact } from "./client-schema";
import { isEnded } from "./client-standing";
import { addClientLink } from "./open-client-link";
import { urgenciesOfWords, WORDS_PARTS } from "./unread-letters";
import { assessmentOf, rugAnswersOf } from "./stored";
import { firstAidAtOnce, mouldAmong } from "./wet-by-words";

interface Again {
  enquiryId: string;
  to: Pick<Contact, "name" | "email">;
  /** The address before; null for none. */
  was: string | null;
  /** Whether it is sent in any case: the link in the first one opens nothing any more, or there was no address to send one to. */
  isDue: boolean;
}

/**
 * Sends the acknowledgement to a corrected address, with a link of its own, where the first one cannot have told its client anything, or there was no
 * address that it could go to. Not of what has ended, nor where the first one is on its way there only now. Returns whether it is sent.
 */
export async function acknowledgeAgain(tx: Tx, { enquiryId, to, was, isDue }: Again, now: Date): Promise<boolean> {
  const first = await tx.letter.findFirst({ where: { enquiryId, automatic: true }, orderBy: NEWEST_FIRST.createdAt, select: { state: true, toAddress: true } });
  const hasFailed = first?.state === "failed" && first.toAddress === was;
  const isOnItsWay = first?.state === "waiting" && first.toAddress === to.email;
  const enquiry = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, include: WORDS_PARTS });
  if (to.email === null || isEnded(enquiry.state) || isOnItsWay || !(hasFailed || isDue)) return false;
  const settings = await readSettings(tx);
  const judged = enquiry.rugs.flatMap((r) => r.assessments.map((a) => ({ answers: rugAnswersOf(r.answers), assessment: assessmentOf(a.result) })));
  const isAnswered = enquiry.letters.length > 0;
  const firstAid = isAnswered ? null : firstAidAtOnce({ assessments: judged.map((r) => r.assessment), byWords: urgenciesOfWords(enquiry), answers: judged.map((r) => r.answers), emergencyNumber: settings.emergencyNumber });
  const { linkId } = await addClientLink(tx, enquiryId, now);
  const hasPhotos = (await tx.photo.count({ where: { rug: { enquiryId } } })) > 0;
  await acknowledge(tx, { enquiryId, reference: enquiry.reference, channel: enquiry.channel, linkId, hasPhotos, client: { name: to.name, email: to.email }, isTold: enquiry.letters.some((l) => l.state === "sent"), firstAid, mouldAmong: isAnswered ? null : mouldAmong(judged), settings, now });
  return true;
}
