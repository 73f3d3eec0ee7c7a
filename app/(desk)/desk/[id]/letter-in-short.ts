import type { EnquiryView, LetterView } from "@/lib/enquiry/views";
import { movedIn } from "./moved-in";

/** The newest letter a person wrote that was not taken back. */
export const newestOfOurs = (letters: readonly LetterView[]): LetterView | undefined =>
  letters.filter((l) => l.kind !== "acknowledgement" && l.state !== "taken_back").sort((a, b) => Date.parse(b.createdAt) - Date.parse(a.createdAt))[0];

/** How it stands with the letter, in a line, for whoever is far from it on a small screen. */
export function letterInShort({ draft, waitsForSecond, undelivered, letters }: Pick<EnquiryView, "draft" | "waitsForSecond" | "undelivered" | "letters">): string {
  if (undelivered) return "A letter did not arrive.";
  if (draft && waitsForSecond) return "Waits for a second person.";
  if (draft) return draft.today && movedIn(draft.today, draft) ? "Drafted; what is known has changed since." : "Drafted, not sent.";
  return newestOfOurs(letters)?.says ?? "No letter is being written.";
}
