import "server-only";
import { composeLetter } from "../mail/compose";
import { plainOf } from "../mail/message";
import { database } from "../store/database";
import { readSettings } from "../workshop/settings";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { kindsOf, withDraftOf } from "./enclosures";
import { readLetter } from "./save-draft";
import type { LetterToTry } from "./send-test-letter";

/** Both forms of a letter as the client's mail program will be given them, from words that need not be kept yet. */
export async function previewLetter(caller: Caller, given: LetterToTry): Promise<Result<{ html: string; text: string }>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const words = readLetter(given);
  if (!words.ok) return words;
  const [settings, there] = await Promise.all([readSettings(), database().enquiry.count({ where: { id: given.enquiryId } })]);
  if (there !== 1) return NOT_THERE;
  const enclosed = given.kind === "reply" ? await kindsOf(database(), withDraftOf(given.enquiryId)) : [];
  const { html, text } = composeLetter({ kind: given.kind, ...words.value, workshop: settings, enclosed });
  return ok({ html, text: plainOf(text) });
}
