import "server-only";
import { NO_MAIL, wasGivenUp } from "../mail/last-word";
import type { Letter, Prisma } from "../store/database";

/** A letter that a person approved for a client without an address, and that nobody has told them yet. */
export const TO_BE_READ_OUT = { automatic: false, toAddress: NO_MAIL, state: { in: ["held", "waiting"] } } satisfies Prisma.LetterWhereInput;
/** The same of a letter that was read. */
export const isToBeReadOut = ({ automatic, toAddress, state }: Pick<Letter, "automatic" | "toAddress" | "state">): boolean =>
  !automatic && toAddress === NO_MAIL && (state === "held" || state === "waiting");
/** A letter of a person's that failed may be told instead, as long as it is the newest; the words of one that was given up here are to be changed. */
export const isToldInstead = ({ automatic, state, lastResponse }: Pick<Letter, "automatic" | "state" | "lastResponse">): boolean => !automatic && state === "failed" && !wasGivenUp(lastResponse);
