import { ownLines } from "../words/quoted-lines";
import { LIMITS } from "./limits";

const GOES_ON = "\n\n[The letter goes on; it stands whole in the Post.]";

/** As much of a letter as an answer holds. */
export const cutToAnswer = (text: string): string =>
  text.length <= LIMITS.storyChars ? text : `${text.slice(0, LIMITS.storyChars - GOES_ON.length).trimEnd()}${GOES_ON}`;

/** What a letter tells of a rug: its subject, where that says more than the letter does, and its own words, without lines of somebody else's that it answers. */
export function storyOf({ subject, text }: { subject: string; text: string }): string {
  const own = ownLines(text).trim();
  const isSaid = subject === "" || own.toLowerCase().includes(subject.toLowerCase());
  return cutToAnswer([isSaid ? "" : subject, own].filter(Boolean).join("\n\n"));
}

/** What a sender calls themselves; without a name, the part of the address before the @. */
export const nameOf = (from: { name: string; address: string }): string =>
  (from.name || from.address.slice(0, from.address.indexOf("@"))).slice(0, LIMITS.nameChars);
