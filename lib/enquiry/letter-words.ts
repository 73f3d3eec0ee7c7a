import type { LetterStateId } from "./views";

export interface LetterStanding {
  state: LetterStateId;
  toAddress: string;
  lastResponse: string | null;
  attempts: number;
}

/** Where a letter stands, in a sentence for staff. Nothing but `sent` is ever said to be sent. */
export function sayLetter({ state, toAddress, lastResponse, attempts }: LetterStanding, isMailConfigured: boolean): string {
  if (state === "taken_back") return "Taken back before it went out.";
  if (toAddress === "") return "Not sent: the client left no e-mail address. It stands on their own page; please ring them.";
  switch (state) {
    case "held":
      return "Held: it can still be taken back.";
    case "sending":
      return "On its way.";
    case "sent":
      return "Sent.";
    case "failed":
      return lastResponse ? `Not sent: the mail server refused it. ${lastResponse}` : "Not sent: the mail server refused it.";
    case "unknown":
      return "Nobody knows whether it arrived. It is sent again under the same number and may arrive twice.";
    case "waiting":
      if (!isMailConfigured) return "Not sent: no mail server is set up.";
      return attempts > 0 ? `Not sent yet: tried ${attempts === 1 ? "once" : `${attempts} times`}, and it is tried again.` : "Goes out in a moment.";
  }
}
