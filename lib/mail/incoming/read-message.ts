import "server-only";
import { simpleParser, type Attachment, type ParsedMail } from "mailparser";
import { bounceOf, type Bounce } from "./bounce";
import { headerText } from "../address";
import { automaticWhy } from "./automatic";
import { withShortLinks } from "./link-words";
import { foldQuoted, type Folded } from "./quoted";

/** A file that came with a letter. */
export interface Enclosed { readonly name: string; readonly type: string; readonly content: Buffer }

/** One message that came in, read. */
export interface IncomingMessage {
  /** RFC 5322 Message-ID with its brackets, or null: a message without one is told apart by its bytes. */
  readonly messageId: string | null;
  /** The ids it answers, newest first: In-Reply-To, then References from the end. */
  readonly answers: readonly string[];
  /** null where it names none that could be answered. */
  readonly from: { readonly name: string; readonly address: string } | null;
  readonly subject: string;
  readonly sentAt: Date | null;
  readonly body: Folded;
  readonly pictures: readonly Enclosed[];
  /** Enclosures that are no pictures, in their order; they are kept with the message alone. */
  readonly otherEnclosures: readonly Enclosed[];
}

/**
 * What came in: a person's letter, a report that ours did not arrive, something a machine wrote and that nobody may
 * answer, or bytes that could not be read (to be kept and shown).
 */
export type Incoming =
  | { readonly kind: "letter"; readonly message: IncomingMessage }
  | { readonly kind: "bounce"; readonly bounce: Bounce; readonly message: IncomingMessage }
  | { readonly kind: "automatic"; readonly why: string; readonly message: IncomingMessage }
  | { readonly kind: "unreadable"; readonly why: string };

/** Greater messages are not read, only kept. *elicited*: a dozen pictures of a phone. */
export const MOST_MESSAGE_BYTES = 60 * 1024 * 1024;
/** Text beyond this is not a letter. *elicited* */
const MOST_TEXT_CHARS = 100_000;

const PARSED = { skipHtmlToText: false, skipImageLinks: true, skipTextToHtml: true, skipTextLinks: true };

/** Finds the letters of ours that a message may repeat, as they were sent, by the ids it answers; null where none is ours. */
export type OurLetters = (answers: readonly string[]) => Promise<string | null>;

/** Reads the bytes of one message (RFC 5322, MIME). Never throws for what is in them. `ourLetters`: absent where its own words are not needed. */
export async function readMessage(bytes: Buffer, ourLetters?: OurLetters): Promise<Incoming> {
  if (bytes.length === 0) return { kind: "unreadable", why: "The message is empty." };
  if (bytes.length > MOST_MESSAGE_BYTES) return { kind: "unreadable", why: "The message is larger than 60 MB." };
  let mail: ParsedMail;
  try {
    mail = await simpleParser(bytes, PARSED);
  } catch (error) {
    return { kind: "unreadable", why: `It is not a message that can be read: ${(error as Error).message}.` };
  }
  const words = await wordsOf(mail);
  const text = mail.html ? withShortLinks(words, mail.html) : words;
  const message = messageOf(mail, text, await ourLetters?.(answersOf(mail)));
  const bounce = bounceOf(mail);
  if (bounce) return { kind: "bounce", bounce, message };
  const why = automaticWhy(mail);
  if (why) return { kind: "automatic", why, message };
  if (!message.from && !hasHead(mail)) return { kind: "unreadable", why: "It names no sender, and has no head as messages have." };
  return { kind: "letter", message: withForwarded(message, await forwardedIn(mail)) };
}

/** How deep letters are looked for within letters. *elicited*: one that was sent on twice. */
const MOST_FORWARDS = 2;

/** What stands in letters that were sent on as files (message/rfc822), the outermost first. What of them cannot be read stays a file. */
async function forwardedIn({ attachments }: ParsedMail, depth = MOST_FORWARDS): Promise<IncomingMessage[]> {
  const found: IncomingMessage[] = [];
  for (const { content } of attachments.filter((a) => a.contentType === "message/rfc822").slice(0, depth === 0 ? 0 : undefined)) {
    const inner = await simpleParser(content, PARSED).catch(() => null);
    if (inner) found.push(messageOf(inner, await wordsOf(inner)), ...(await forwardedIn(inner, depth - 1)));
  }
  return found;
}

/** A letter with the pictures of those sent on with it; their words stand with what it repeats. */
const withForwarded = (message: IncomingMessage, forwarded: readonly IncomingMessage[]): IncomingMessage => ({
  ...message, pictures: [message, ...forwarded].flatMap((m) => m.pictures),
  body: { ...message.body, quoted: [message.body.quoted, ...forwarded.flatMap(({ body }) => [body.own, body.quoted])].filter(Boolean).join("\n\n") },
});

/** Heads of which a message has at least one, beside its sender's (RFC 5322, section 3.6; RFC 2045). */
const HEADS = ["to", "date", "subject", "message-id", "received", "mime-version", "content-type"] as const;
const hasHead = (mail: ParsedMail): boolean => HEADS.some((name) => mail.headers.has(name));

const ID = /<[^<>\s]{1,990}>/gu;
/** The Message-IDs in a header's value, in their order. */
export const idsIn = (value: string | readonly string[] | undefined): string[] => [value ?? []].flat().join(" ").match(ID) ?? [];

/** What reading HTML gave where it held nothing that can be read; never nothing, so that nobody takes the letter for an empty one. */
const UNREAD_HTML = "[Its words came as HTML that could not be read. Save the message as it came and open it in a mail program.]";

/**
 * The words of a message. The parser turns HTML into words only where it is the whole message or stands beside plain words; HTML that
 * came with nothing but photos is read once more as a message of its own.
 */
async function wordsOf({ text, html }: ParsedMail): Promise<string> {
  if (text?.trim() || !html) return text ?? "";
  const alone = Buffer.from(`Content-Type: text/html; charset=utf-8\r\nContent-Transfer-Encoding: base64\r\n\r\n${Buffer.from(html).toString("base64")}`);
  const { text: words, textConversionError } = await simpleParser(alone, PARSED);
  return words?.trim() || !textConversionError ? words ?? "" : UNREAD_HTML;
}

/** The ids it answers, newest first. */
const answersOf = (mail: ParsedMail): string[] => [...new Set([...idsIn(mail.inReplyTo), ...idsIn(mail.references).reverse()])];

function messageOf(mail: ParsedMail, text: string, ours: string | null = null): IncomingMessage {
  const sender = mail.from?.value[0];
  const isPicture = (a: Attachment) => a.contentType.startsWith("image/") || /\.(?:jpe?g|png|heic|heif|webp|avif)$/iu.test(a.filename ?? "");
  const enclosed = mail.attachments.filter((a) => !isSignatureMark(a));
  return {
    messageId: idsIn(mail.messageId)[0] ?? null,
    answers: answersOf(mail),
    from: sender?.address ? { name: oneLine(sender.name ?? ""), address: sender.address.toLowerCase() } : null,
    subject: oneLine(mail.subject ?? ""),
    sentAt: mail.date && !Number.isNaN(mail.date.getTime()) ? mail.date : null,
    body: foldQuoted(text.slice(0, MOST_TEXT_CHARS), ours),
    pictures: enclosed.filter(isPicture).map((a, i) => ({ name: oneLine(a.filename ?? `picture ${i + 1}`), type: a.contentType, content: a.content })),
    // A name that reads as another ("xlsx.exe" turned round) is how people are led to open what they should not.
    otherEnclosures: enclosed.filter((a) => !isPicture(a)).map((a) => ({ name: headerText(oneLine(a.filename ?? "")) || a.contentType, type: a.contentType, content: a.content })),
  };
}

/** Little pictures within a signature, shown in the text and no larger than a button: not a photo of a rug. *elicited* */
const isSignatureMark = (a: Attachment): boolean => a.related === true && a.contentType.startsWith("image/") && a.size < 12_000;

/** A line of more than 500 characters; what is kept of it, and that it goes on. *elicited* */
const TOO_LONG = /^(.{499})..+$/su;
const oneLine = (text: string): string => text.replace(/[\p{Cc}\p{Cs}]+/gu, " ").trim().replace(TOO_LONG, "$1…");
