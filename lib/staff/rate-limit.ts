import "server-only";
import { randomUUID } from "node:crypto";
import { database, isTaken } from "../store/database";

/** At most `max` per `windowMs` milliseconds, counted from the first of them. */
export interface Allowance {
  max: number;
  windowMs: number;
}

const MINUTE = 60_000;
/** Elicited, for one workshop: a family behind one address is never in its way, a flood is. */
export const ALLOWANCES = {
  /** Wrong passwords for one account from one address. Another address is not locked out by them. */
  signInAccount: { max: 8, windowMs: 15 * MINUTE },
  signInAddress: { max: 40, windowMs: 15 * MINUTE },
  intakeAddress: { max: 40, windowMs: 10 * MINUTE },
  photoAddress: { max: 240, windowMs: 10 * MINUTE },
  submitAddress: { max: 40, windowMs: 10 * MINUTE },
  /** Test letters of one person to themselves. */
  testLetter: { max: 30, windowMs: 60 * MINUTE },
  /** Letters of one address that open enquiries by themselves, and of all addresses; further ones wait for a person. */
  mailAddress: { max: 5, windowMs: 24 * 60 * MINUTE },
  mailAll: { max: 60, windowMs: 60 * MINUTE },
  /** Frames drawn by hand around the label of one photo, each of which is read: seconds of work. */
  labelFrame: { max: 20, windowMs: 60 * MINUTE },
  clientMessage: { max: 20, windowMs: 24 * 60 * MINUTE },
} as const satisfies Record<string, Allowance>;

/**
 * Takes one of the allowance under `key`; false when it is used up. Each step is one conditional statement, so that
 * any number of parallel calls never take more than `max`.
 */
export async function takeOne(key: string, { max, windowMs }: Allowance, now: Date): Promise<boolean> {
  const { rateLimit } = database();
  const begin = BigInt(now.getTime() - windowMs);
  // Another call may make or renew the row between two steps; the next round then finds it.
  for (let round = 0; round < 3; round++) {
    const used = await rateLimit.updateMany({ where: { key, lastRequest: { gt: begin }, count: { lt: max } }, data: { count: { increment: 1 } } });
    if (used.count === 1) return true;
    const renewed = await rateLimit.updateMany({
      where: { key, lastRequest: { lte: begin } },
      data: { count: 1, lastRequest: BigInt(now.getTime()) },
    });
    if (renewed.count === 1) return true;
    if (await rateLimit.findUnique({ where: { key }, select: { id: true } })) {
      if (round > 0) return false;
      continue;
    }
    try {
      await rateLimit.create({ data: { id: randomUUID(), key, count: 1, lastRequest: BigInt(now.getTime()) } });
      return true;
    } catch (error) {
      if (!isTaken(error)) throw error;
    }
  }
  return false;
}

/** Gives the whole allowance back, e.g. after the right password. */
export async function forget(key: string): Promise<void> {
  await database().rateLimit.deleteMany({ where: { key } });
}
