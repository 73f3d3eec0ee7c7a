/** What is looked through, and how much of it is shown. *elicited* */
export const LOOKED_BYTES = 64 * 1024;
const MOST_CHARS = 1_200;
/** Shorter runs of characters stand in pictures and programs by chance. *elicited* */
const LEAST_RUN = 8;

/** A run of what people write, without control characters and what could not be decoded. */
const RUN = new RegExp(`[\\p{L}\\p{M}\\p{N}\\p{P}\\p{S} \\t]{${LEAST_RUN},}`, "gu");
/** Two words beside each other, which code of a picture hardly ever holds. */
const WORDS = /\p{L}{2,}[^\p{L}\n]{1,3}\p{L}{2,}/u;

/** The first words that can be read in bytes that are no message, a line each; empty where there are none. Nothing of it is to be trusted or rendered as anything but text. */
export function rawWords(bytes: Uint8Array): string {
  const text = new TextDecoder().decode(bytes.subarray(0, LOOKED_BYTES)).replaceAll("\uFFFD", "\n").replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, (c) => (c === "\t" ? c : "\n"));
  const lines = (text.match(RUN) ?? []).map((line) => line.trim()).filter((line) => WORDS.test(line));
  const said = lines.join("\n");
  return said.length <= MOST_CHARS ? said : `${said.slice(0, MOST_CHARS).trimEnd()} …`;
}
