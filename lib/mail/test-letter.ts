import "server-only";
import { config } from "../config/config";
import type { ComposedLetter } from "./compose";
import { messageOf, type Attachment } from "./message";
import { newMessageId } from "./message-id";
import type { Outcome } from "./outcome";
import { canSend, mailDomain, senderOf } from "./sender";
import { sendBySmtp, type SmtpTimes } from "./smtp";

/** Somebody sits and waits for it, so a test is given up sooner than a letter. *elicited* */
const TEST_TIMES: SmtpTimes = { connectMs: 15_000, silenceMs: 30_000 };
const MARK = "[Test] ";

export interface TestLetter {
  to: { name: string; address: string };
  letter: ComposedLetter;
  attachments: readonly Attachment[];
  workshop: { name: string; email: string };
  now: Date;
}

/** Hands a letter to the mail server at once, marked as a test in its subject; it never lies in the outbox. Null where no mail server is set up. */
export async function sendTest({ to, letter, attachments, workshop, now }: TestLetter, times = TEST_TIMES): Promise<Outcome | null> {
  if (!config.smtp || !canSend(workshop)) return null;
  const message = await messageOf({
    ...letter, subject: `${MARK}${letter.subject}`, toName: to.name, toAddress: to.address, messageId: newMessageId(mailDomain(workshop)), inReplyTo: null, references: null, automatic: false,
  }, { sender: senderOf(workshop), date: now, attachments });
  return sendBySmtp(config.smtp.url, message, times);
}
