/** Who asks for an operation. Every operation of lib/enquiry takes one first and authorises it. */
export type Caller =
  | { kind: "public"; addressHash: string | null }
  /** Somebody filling in a questionnaire on one device; proven by the intake cookie. */
  | { kind: "intake"; intakeId: string; addressHash: string | null }
  /** A client who came by a link of theirs; proven by its cookie. Sees this one enquiry only. */
  | { kind: "client"; enquiryId: string; linkId: string }
  | { kind: "staff"; staffId: string; name: string; role: StaffRole }
  /** The program itself: worker, demo, command line. */
  | { kind: "system"; what: string };

export type StaffRole = "owner" | "reviewer" | "trainee";

/** An expected outcome that is not success. `say` is a sentence for the person. */
export type Refusal = { ok: false; code: RefusalCode; say: string; fields?: Record<string, string> };
export type RefusalCode =
  | "not-signed-in"
  | "not-allowed"
  | "not-found"
  | "invalid"
  | "changed-meanwhile"
  /** A letter says more than is known, and no reason was given for sending it all the same. */
  | "promises-too-much"
  | "too-many"
  | "too-large"
  | "unsupported"
  | "unreadable"
  | "expired"
  | "unavailable";
export type Result<T> = { ok: true; value: T } | Refusal;

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const refuse = (code: RefusalCode, say: string, fields?: Record<string, string>): Refusal =>
  fields ? { ok: false, code, say, fields } : { ok: false, code, say };

/** The one table from refusal to HTTP status. */
export const STATUS_OF: Record<RefusalCode, number> = {
  "not-signed-in": 401,
  "not-allowed": 403,
  "not-found": 404,
  invalid: 422,
  "changed-meanwhile": 409,
  "promises-too-much": 422,
  "too-many": 429,
  "too-large": 413,
  unsupported: 415,
  unreadable: 422,
  expired: 410,
  unavailable: 503,
};
