/** What a mail server made of one letter. `said` is its last word, or ours where it said nothing. */
export type Outcome =
  | { kind: "accepted"; said: string }
  /** Not taken now: a 4xx reply, our own address refused, or the server never reached. */
  | { kind: "later"; said: string }
  /** A 5xx reply. `addressRefused`: it is the address that does not exist or takes no mail. */
  | { kind: "refused"; said: string; addressRefused: boolean }
  /** The connection ended or hung without a reply; the server may hold the letter. */
  | { kind: "unknown"; said: string };

/** What nodemailer tells about an error. */
export interface SmtpError { message: string; code?: string | undefined; response?: string | undefined; responseCode?: number | undefined; command?: string | undefined }

const said = (error: SmtpError) => (error.response ?? error.message).slice(0, 500);

/**
 * Whether the reply is about the recipient's address: an enhanced code 5.1.x (RFC 3463 §3.2), or a plain 550 to RCPT.
 * 5.7.x and the like speak of policy or content and say nothing against the address.
 */
function refusesAddress({ response = "", responseCode, command }: SmtpError): boolean {
  const enhanced = /^\d{3}[ -](\d\.\d{1,3}\.\d{1,3})/.exec(response)?.[1];
  if (enhanced) return enhanced.startsWith("5.1.");
  return responseCode === 550 && command === "RCPT TO";
}

/** Codes with which nodemailer itself refuses a letter before a word of it is sent: too large, or no address it can write. */
const OWN_REFUSALS = ["EMESSAGE", "EENVELOPE"];

/** What an error means. `reached`: the letter itself had begun; before that, nothing can have arrived. */
export function outcomeOf(error: SmtpError, reached: boolean): Outcome {
  if (!reached) return { kind: "later", said: said(error) };
  if (error.responseCode === undefined) {
    return OWN_REFUSALS.includes(error.code ?? "") ? { kind: "refused", said: said(error), addressRefused: false } : { kind: "unknown", said: said(error) };
  }
  // The sender was refused, not the letter: somebody sets the address right, and no letter is lost over it.
  if (error.command === "MAIL FROM") return { kind: "later", said: said(error) };
  if (error.responseCode >= 500) return { kind: "refused", said: said(error), addressRefused: refusesAddress(error) };
  return { kind: "later", said: said(error) };
}
