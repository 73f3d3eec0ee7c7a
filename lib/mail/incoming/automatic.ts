import type { ParsedMail } from "mailparser";
import { ABSENCE_SUBJECTS } from "./absence-subjects";

/**
 * Why a message was written by a machine, or null where a person wrote it. Nothing that this names is ever answered
 * (RFC 3834, section 2; lists RFC 2919; an empty return path RFC 5321, section 4.5.5). Other marks are common practice, no published source.
 */
export function automaticWhy(mail: Pick<ParsedMail, "headers" | "subject" | "from">): string | null {
  const header = (name: string): string => valueOf(mail.headers.get(name)).toLowerCase();
  const submitted = header("auto-submitted");
  if (submitted !== "" && !/^no\b/u.test(submitted)) return "Its head says that a machine sent it.";
  if (header("list-id") !== "" || mail.headers.has("list")) return "It came by a mailing list.";
  if (/\b(?:bulk|junk|list|auto_reply)\b/u.test(header("precedence"))) return "Its head says that it was sent to many at once.";
  if (header("x-autoreply") !== "" || header("x-autorespond") !== "" || header("x-auto-response-suppress") !== "") return "Its head says that a machine answered.";
  if (mail.headers.has("return-path") && !JSON.stringify(mail.headers.get("return-path")).includes("@")) return "It names no address to answer to.";
  const from = mail.from?.value[0]?.address ?? "";
  if (/^(?:mailer-daemon|postmaster|no-?reply|do-?not-?reply)@/iu.test(from)) return "Its sender takes no answers.";
  if (isAbsenceNote(mail.subject ?? "")) return "Its subject says that a machine answered.";
  return null;
}

const BEGINS = Object.values(ABSENCE_SUBJECTS).flat();
/** Whether a subject begins as those of absence notes do; an answer to one, “Re: …”, is a person's. */
function isAbsenceNote(subject: string): boolean {
  const plain = subject.trim().normalize("NFKD").replace(/\p{M}/gu, "").replace(/’/gu, "'").replace(/\s+/gu, " ").toLowerCase();
  return BEGINS.some((begin) => plain.startsWith(begin) && !/^\p{L}/u.test(plain.slice(begin.length)));
}

/** A header as text, whatever the parser made of it. */
export function valueOf(value: unknown): string {
  if (typeof value === "string") return value.trim();
  if (Array.isArray(value)) return value.map(valueOf).join(", ");
  if (value && typeof value === "object") {
    const { text, value: inner, html: _html, ...rest } = value as { text?: unknown; value?: unknown; html?: unknown };
    if (typeof text === "string") return text;
    if (typeof inner === "string") return inner;
    return Object.keys(rest).length > 0 ? JSON.stringify(rest) : "";
  }
  return "";
}
