import type { Letter, Prisma } from "../store/database";

/** Letters that have left our hands: their time has come, or they were tried already and wait to be tried again. */
export const letGo = (now: Date) => ({ OR: [{ notBefore: { lte: now } }, { attempts: { gt: 0 } }] }) satisfies Prisma.LetterWhereInput;

/** The same of a letter that was read. */
export const isLetGo = ({ notBefore, attempts }: Pick<Letter, "notBefore" | "attempts">, now: Date): boolean => notBefore <= now || attempts > 0;

/** When a letter that was let go left: it was sent then, or was to be; one that is tried again has no time to come. */
export const leftAt = ({ sentAt, notBefore }: Pick<Letter, "sentAt" | "notBefore">, now: Date): Date => sentAt ?? (notBefore < now ? notBefore : now);
