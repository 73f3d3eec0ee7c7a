import "server-only";
import { randomInt } from "node:crypto";

/** Letters that nobody reads as a digit or as one another over the telephone (no B, G, I, L, O, Q, S, Z). */
export const REFERENCE_LETTERS = "ACDEFHJKMNPRTUVWXY";
export const REFERENCE_PATTERN = /^[ACDEFHJKMNPRTUVWXY]\d-\d{3}$/;

/** A short name for people, such as "K7-204". 180,000 exist; whoever stores one tries again when it is taken. */
export function newReference(pick: (below: number) => number = (below) => randomInt(below)): string {
  const letter = REFERENCE_LETTERS.charAt(pick(REFERENCE_LETTERS.length));
  return `${letter}${pick(10)}-${String(pick(1000)).padStart(3, "0")}`;
}
