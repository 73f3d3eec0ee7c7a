import type { EnquiryView } from "@/lib/enquiry/views";
import { nextTryInWords } from "@/lib/ui/next-try";
import { dayAndClock, type Place } from "@/lib/ui/time";

interface When { now: string; place: Place; mailConfigured: boolean }

/** What becomes of a letter once it is approved; nothing where one has gone its way and says so itself. */
export function noteOf(view: Pick<EnquiryView, "client" | "waitsForSecond" | "draft" | "holdMinutes" | "sender">, { now, place, mailConfigured }: When): string {
  // Once the letter is approved it says itself that it is to be read out, and once it was, that it was.
  if (!view.client.email) return view.draft === null ? "" : "There is no e-mail address: an approved letter waits here, to be read out or printed.";
  if (view.client.suppressedWhy !== null) return "This address refused our mail for good: a letter will not be sent there and counts as failed. Correct it, ring them, or say in the Post why it should be tried again.";
  if (!mailConfigured) return "No mail server is set up: approved letters wait here, not sent, and can be read as .eml.";
  if (view.waitsForSecond) return `It leaves only once a second person has read and sent it${view.waitsForSecond.sendAt ? `, and not before ${dayAndClock(view.waitsForSecond.sendAt, now, place)}` : ""}.`;
  if (!view.draft) return "";
  const { holdMinutes: m, sender } = view;
  const from = `It comes from ${sender.name}, ${sender.address}.`;
  if (m === 0) return `It leaves as soon as it is approved. ${from}`;
  return `Held ${m === 1 ? "one minute" : m === 2 ? "two minutes" : `${m} minutes`} before it leaves; until then it can be taken back. ${from}`;
}

/** What becomes of each letter that has not gone, and when, in the workshop's time. */
export function whenWords({ client, letters }: Pick<EnquiryView, "client" | "letters">, { now, place, mailConfigured }: When): Record<string, string> {
  const leaves = mailConfigured && client.email;
  return Object.fromEntries(letters.map((l) => {
    const then = dayAndClock(l.notBefore, now, place);
    if (l.state === "held" && leaves && client.suppressedWhy !== null) return [l.id, `Does not leave: the address refused our mail, and ${then} it counts as failed. Take it back, and correct the address or ring them.`];
    if (l.state === "held") return [l.id, `${leaves ? "Leaves" : "Waits here from"} ${then}.`];
    if (l.readOutUntil) return [l.id, `If it was not, that can be taken back until ${dayAndClock(l.readOutUntil, now, place)}.`];
    return [l.id, l.state === "sent" && l.to === "" ? "If it was not, ring now; what is to be said otherwise goes into a second letter." : nextTryInWords(l, now, place)];
  }));
}
