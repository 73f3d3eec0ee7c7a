import "server-only";
import { mailConfigured } from "../mail/outbox";
import { database } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { isReplaced, LETTER_ORDER, LETTER_PARTS, letterView } from "./letter-view";
import type { LetterView } from "./views";

/** How many letters that have left stand on the page; what has not left is shown wholly. */
export const SENT_SHOWN = 100;

export interface LetterOfEnquiry { letter: LetterView; /** It failed, and a newer one has taken its place. */ isReplaced: boolean; /** It failed at an address that has been corrected since. */ isCorrected: boolean; enquiryId: string; reference: string; title: string; toName: string }

/** The outbox: every letter that has not left, and the newest of those that have, each with the enquiry it belongs to; the newest first. */
export async function readLetters(caller: Caller, now: Date): Promise<Result<{ notGone: LetterOfEnquiry[]; gone: LetterOfEnquiry[]; mailConfigured: boolean }>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const isMailConfigured = mailConfigured();
  const include = { ...LETTER_PARTS, enquiry: { select: { reference: true, title: true, letters: LETTER_ORDER, client: { select: { email: true } } } } } as const;
  const orderBy = NEWEST_FIRST.createdAt;
  const [{ holdMinutes }, open, left] = await Promise.all([
    readSettings(),
    database().letter.findMany({ where: { state: { notIn: ["sent", "taken_back"] } }, include, orderBy: [...orderBy] }),
    database().letter.findMany({ where: { state: "sent" }, include, orderBy: [...orderBy], take: SENT_SHOWN }),
  ]);
  const view = (row: (typeof open)[number]): LetterOfEnquiry => ({
    letter: letterView(row, { now, isMailConfigured, holdMinutes }), isReplaced: row.state === "failed" && isReplaced(row, row.enquiry.letters), isCorrected: row.state === "failed" && row.toAddress.toLowerCase() !== row.enquiry.client.email?.toLowerCase(), enquiryId: row.enquiryId, reference: row.enquiry.reference, title: row.enquiry.title, toName: row.toName,
  });
  return ok({ notGone: open.map(view), gone: left.map(view), mailConfigured: isMailConfigured });
}
