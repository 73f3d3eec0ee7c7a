import type { Attachment, ParsedMail } from "mailparser";

/** A report that a letter of ours did not arrive, or is late (RFC 3464). */
export interface Bounce {
  /** Message-ID of the letter it is about, with brackets, or null where the report does not say. */
  readonly about: string | null;
  readonly address: string | null;
  /** Enhanced status code (RFC 3463), such as 5.1.1, or null. */
  readonly status: string | null;
  /** `failed` for good; `delayed` still being tried; `relayed` or `delivered`: no trouble. */
  readonly action: "failed" | "delayed" | "delivered" | "relayed" | "expanded";
  /** What the other server said, in one line; may be empty. */
  readonly says: string;
}

const ACTIONS = ["failed", "delayed", "delivered", "relayed", "expanded"] as const;
const isReport = (a: Attachment) => /^message\/(?:global-)?delivery-status$/u.test(a.contentType);
const isOriginal = (a: Attachment) => /^(?:message\/(?:rfc822|global)|text\/(?:rfc822-headers))/u.test(a.contentType);

/** Reads a delivery status report out of a message; null where it is none. */
export function bounceOf(mail: Pick<ParsedMail, "attachments" | "text" | "from" | "subject" | "headers">): Bounce | null {
  const report = mail.attachments.find(isReport)?.content.toString("utf8") ?? reportInText(mail.text ?? "");
  const original = mail.attachments.find(isOriginal);
  if (report !== null) return readReport(report, original?.content.toString("utf8") ?? "");
  return looksReturned(mail) ? { about: idIn(original?.content.toString("utf8") ?? mail.text ?? ""), ...plainReport(mail.text ?? "") } : null;
}

/** The parser lays a report's fields into the text of the message. */
function reportInText(text: string): string | null {
  const plain = text.replace(/\r\n?/gu, "\n");
  const from = plain.search(/^(?:Reporting-MTA|Original-Recipient|Final-Recipient):/imu);
  return from >= 0 && /^Action:/imu.test(plain) ? plain.slice(from) : null;
}

/** The fields of the first recipient whose delivery was in trouble, else of the first. */
function readReport(report: string, original: string): Bounce {
  const blocks = unfolded(report).split(/\n\s*\n/u).map(fieldsOf).filter((f) => f.has("final-recipient") || f.has("original-recipient"));
  const actionOf = (f: Map<string, string>) => ACTIONS.find((a) => a === (f.get("action") ?? "").toLowerCase()) ?? "failed";
  const block = blocks.find((f) => actionOf(f) === "failed") ?? blocks.find((f) => actionOf(f) === "delayed") ?? blocks[0] ?? new Map<string, string>();
  return {
    about: idIn(original), action: actionOf(block),
    address: addressOf(block.get("original-recipient") ?? block.get("final-recipient") ?? ""),
    status: /\b[245]\.\d{1,3}\.\d{1,3}\b/u.exec(block.get("status") ?? "")?.[0] ?? null,
    says: (block.get("diagnostic-code") ?? "").replace(/^\s*\w+\s*;\s*/u, "").slice(0, 300),
  };
}

const unfolded = (text: string) => text.replace(/\r\n?/gu, "\n").replace(/\n[ \t]+/gu, " ");
function fieldsOf(block: string): Map<string, string> {
  return new Map(block.split("\n").flatMap((line) => {
    const at = line.indexOf(":");
    return at > 0 ? [[line.slice(0, at).trim().toLowerCase(), line.slice(at + 1).trim()] as const] : [];
  }));
}

const addressOf = (field: string): string | null => /[^\s;<>"]+@[^\s;<>"]+/u.exec(field)?.[0]?.toLowerCase() ?? null;
const idIn = (headers: string): string | null => /^message-id:\s*(<[^<>\s]+>)/imu.exec(unfolded(headers))?.[1] ?? null;

/** Servers that send no report in the standard's form still write from their own address, in words. Common practice, no published source. */
const looksReturned = (mail: Pick<ParsedMail, "from" | "subject">): boolean =>
  /^(?:mailer-daemon|postmaster)@/iu.test(mail.from?.value[0]?.address ?? "") && /\b(?:undeliver|delivery|returned|failure|not delivered)/iu.test(mail.subject ?? "");

function plainReport(text: string): Omit<Bounce, "about"> {
  const status = /\b[45]\.\d{1,3}\.\d{1,3}\b/u.exec(text)?.[0] ?? null;
  const code = /\b([45])\d\d\b/u.exec(text)?.[1];
  const delayed = status?.startsWith("4") === true || code === "4";
  return { address: addressOf(text), status, action: delayed ? "delayed" : "failed", says: (/^.*\b[45]\d\d\b.*$/mu.exec(text)?.[0] ?? "").trim().slice(0, 300) };
}
