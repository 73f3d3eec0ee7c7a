import "server-only";
import MailComposer from "nodemailer/lib/mail-composer";
import { config } from "../config/config";
import type { Letter } from "../store/database";
import { tied } from "../words/unbroken";
import { withLinks } from "../workshop/client-link";
import { headOf, type Named } from "./head";
import { signed } from "./sign";

export type Sender = Named;
/** The parts of a letter that its message is made from. */
export type LetterMessage = Pick<Letter,
  "messageId" | "inReplyTo" | "references" | "toName" | "toAddress" | "subject" | "text" | "html" | "automatic">;

/** A file that goes with a letter. */
export interface Attachment { fileName: string; bytes: Buffer; type: string }

/** A message ready for the wire: RFC 5322 with CRLF, and the envelope of one recipient. */
export interface Message { envelope: { from: string; to: string[] }; bytes: Buffer }

/** The plain form as it arrives: figures keep by their units with spaces that do not break, which every mail program draws; joiners it may not. */
export const plainOf = (text: string): string => tied(text);

/**
 * The message of a letter, signed where a DKIM key is set. Addresses are given apart from names, so that nothing in a name
 * can become an address; no file and no URL is read. The client's link is written in here and nowhere before.
 */
export async function messageOf(letter: LetterMessage, { sender, date, attachments = [] }: { sender: Sender; date: Date; attachments?: readonly Attachment[] }): Promise<Message> {
  const node = new MailComposer({
    ...headOf({ from: sender, to: { name: letter.toName, address: letter.toAddress }, subject: letter.subject }),
    messageId: letter.messageId,
    ...(letter.inReplyTo ? { inReplyTo: letter.inReplyTo } : {}),
    ...(letter.references ? { references: letter.references } : {}),
    date,
    headers: letter.automatic ? { "Auto-Submitted": "auto-replied" } : {},
    attachments: attachments.map(({ fileName, bytes, type }) => ({ filename: fileName, content: bytes, contentType: type, contentDisposition: "attachment" as const })),
    text: withLinks(plainOf(letter.text)), html: withLinks(letter.html),
    disableFileAccess: true, disableUrlAccess: true, newline: "win",
  }).compile();
  const { from, to } = node.getEnvelope();
  const bytes = await node.build();
  return { envelope: { from: from || sender.address, to }, bytes: config.dkim ? await signed(bytes, config.dkim) : bytes };
}
