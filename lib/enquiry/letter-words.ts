import { ARRIVED_PERHAPS, mayHaveArrived, NO_MAIL, TWICE, wasHeldBack, wasReadOut } from "../mail/last-word";
import type { LetterStateId } from "./views";

export interface LetterStanding {
  state: LetterStateId;
  toAddress: string;
  lastResponse: string | null;
  attempts: number;
}

/** Where a letter stands, in a sentence for staff. Nothing but `sent` is ever said to be sent. */
export function sayLetter({ state, toAddress, lastResponse, attempts }: LetterStanding, isMailConfigured: boolean): string {
  if (state === "taken_back") return wasHeldBack(lastResponse) ? lastResponse : "Taken back before it went out.";
  if (state === "sent" && lastResponse !== null && wasReadOut(lastResponse)) return lastResponse;
  if (toAddress === NO_MAIL) return "Not sent: the client left no e-mail address. Ring them, and read it out.";
  switch (state) {
    case "held":
      return "Held: it can still be taken back.";
    case "sending":
      return "On its way.";
    case "sent":
      return lastResponse?.endsWith(TWICE) ? `Sent. ${TWICE}` : "Sent.";
    case "failed":
      return sayFailed(lastResponse?.trim());
    case "unknown":
      return `Nobody knows whether it arrived. It is sent again under the same number and may arrive twice.${sayLast(lastResponse)}`;
    case "waiting":
      if (!isMailConfigured) return "Not sent: no mail server is set up.";
      return attempts > 0 ? `Not sent yet: tried ${attempts === 1 ? "once" : `${attempts} times`}, and it is tried again.${sayLast(lastResponse)}` : "Goes out in a moment.";
  }
}

/** How the last try ended, in the server's words or ours. */
function sayLast(lastResponse: string | null): string {
  const last = lastResponse?.replace(ARRIVED_PERHAPS, "").trim();
  return last ? ` The last try ended with: “${last}”.` : "";
}

/** A reply of SMTP begins with its code (RFC 5321 §4.2); any other last word is ours and says itself what happened. */
function sayFailed(last: string | undefined): string {
  if (!last) return REFUSED;
  const sentence = /[.!?]$/u.test(last) ? last : `${last}.`;
  if (mayHaveArrived(last)) return `Nobody knows whether it arrived, and it is not tried again. ${sentence}`;
  if (/^[45]\d\d\b/u.test(last)) return `${REFUSED} ${sentence}`;
  return last.startsWith("Not sent: ") ? sentence : `Not delivered. ${sentence}`;
}
const REFUSED = "Not sent: the mail server refused it.";
