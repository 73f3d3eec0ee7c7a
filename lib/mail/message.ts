import "server-only";
import MailComposer from "nodemailer/lib/mail-composer";
import type { Letter } from "../store/database";
import { withLinks } from "../workshop/client-link";
import { headerText } from "./address";

export interface Sender { name: string; address: string }
/** The parts of a letter that its message is made from. */
export type LetterMessage = Pick<Letter,
  "messageId" | "inReplyTo" | "references" | "toName" | "toAddress" | "subject" | "text" | "html" | "automatic">;

/** A message ready for the wire: RFC 5322 with CRLF, and the envelope of one recipient. */
export interface Message { envelope: { from: string; to: string[] }; bytes: Buffer }

/**
 * The message of a letter. Addresses are given apart from names, so that nothing in a name can become an address; no
 * file and no URL is read. The client's link is written in here and nowhere before.
 */
export async function messageOf(letter: LetterMessage, { sender, date }: { sender: Sender; date: Date }): Promise<Message> {
  const node = new MailComposer({
    from: { name: headerText(sender.name), address: sender.address },
    to: { name: headerText(letter.toName), address: letter.toAddress },
    subject: headerText(letter.subject),
    messageId: letter.messageId,
    ...(letter.inReplyTo ? { inReplyTo: letter.inReplyTo } : {}),
    ...(letter.references ? { references: letter.references } : {}),
    date,
    headers: letter.automatic ? { "Auto-Submitted": "auto-replied" } : {},
    text: withLinks(letter.text), html: withLinks(letter.html),
    disableFileAccess: true, disableUrlAccess: true, newline: "win",
  }).compile();
  const { from, to } = node.getEnvelope();
  return { envelope: { from: from || sender.address, to }, bytes: await node.build() };
}
