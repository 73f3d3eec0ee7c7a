import "server-only";
import { composeLetter } from "../mail/compose";
import { filesOf } from "../mail/enclosures";
import type { Outcome } from "../mail/outcome";
import { sendTest } from "../mail/test-letter";
import { ALLOWANCES, takeOne } from "../staff/rate-limit";
import { database } from "../store/database";
import { readSettings } from "../workshop/settings";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { documentKindSchema } from "./document-view";
import { withDraftOf } from "./enclosures";
import { inOneStep } from "./one-step";
import { readLetter } from "./save-draft";

export interface LetterToTry { enquiryId: string; kind: "reply" | "question"; subject: string; text: string }

/** Sends the words of a letter, with what is enclosed, to the address of whoever asks and to nobody else. Nothing about the enquiry changes. */
export async function sendTestLetter(caller: Caller, given: LetterToTry, now: Date): Promise<Result<{ to: string }>> {
  const no = authorise(caller, "send-test-letter");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const words = readLetter(given);
  if (!words.ok) return words;
  const { enquiryId, kind } = given;
  const [me, settings, there] = await Promise.all([
    database().staff.findUniqueOrThrow({ where: { id: caller.staffId }, select: { name: true, email: true } }), readSettings(),
    database().enquiry.count({ where: { id: enquiryId } }),
  ]);
  if (there !== 1) return NOT_THERE;
  if (!(await takeOne(`test-letter:${caller.staffId}`, ALLOWANCES.testLetter, now))) return refuse("too-many", "That were many test letters within an hour. Wait a little before the next.");
  const enclosed = kind === "reply" ? await database().document.findMany({ where: withDraftOf(enquiryId) }) : [];
  const letter = composeLetter({ kind, ...words.value, workshop: settings, enclosed: enclosed.map((d) => documentKindSchema.parse(d.kind)) });
  const outcome = await sendTest({ to: { name: me.name, address: me.email }, letter, attachments: filesOf(enclosed), workshop: settings, now });
  const failed = whyNot(outcome);
  if (failed) return refuse("unavailable", failed);
  return inOneStep(async (tx) => {
    await audit(tx, caller, { action: "test-letter-sent", enquiryId, at: now, detail: { kind } });
    return ok({ to: me.email });
  });
}

function whyNot(outcome: Outcome | null): string | null {
  if (!outcome) return "No mail server is set up, so no test letter can be sent.";
  switch (outcome.kind) {
    case "accepted": return null;
    case "later": return `The mail server did not take the test letter: ${outcome.said}`;
    case "refused": return `The mail server refused the test letter: ${outcome.said}`;
    case "unknown": return "The mail server gave no answer. The test letter may have arrived all the same.";
  }
}
