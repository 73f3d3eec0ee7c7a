import type { DocumentView } from "@/lib/enquiry/views";

/** Which letters a document went with, and with which it goes that can still be taken back; it follows on a sentence, and is empty where there are none. */
export function wentWith({ letters, heldLetters: held }: Pick<DocumentView, "letters" | "heldLetters">): string {
  const left = letters - held;
  const went = left > 0 ? `, went with ${left === 1 ? "a letter" : `${left} letters`}` : "";
  const goes = held > 0 ? `, goes with ${held === 1 ? "a letter that is held" : `${held} letters that are held`}` : "";
  return went + goes;
}
