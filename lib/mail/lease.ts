import "server-only";
import { database, type Letter } from "../store/database";

/** A claim holds this long after its last renewal; a process that died is noticed then. Elicited. */
const LEASE_MS = 2 * 60_000;
const RENEW_MS = 30_000;

export const leaseUntil = (now: Date): Date => new Date(now.getTime() + LEASE_MS);

/** Renews the claim on a letter while it is being sent. A renewal that fails is tried again by the next one. */
export function keepLease(letter: Pick<Letter, "id" | "leaseOwner">, clock: () => Date): { end(): void } {
  const timer = setInterval(() => {
    database().letter.updateMany({ where: { id: letter.id, state: "sending", leaseOwner: letter.leaseOwner }, data: { leaseUntil: leaseUntil(clock()) } })
      .catch((error: Error) => console.error(JSON.stringify({ level: "warn", event: "lease not renewed", letterId: letter.id, message: error.message })));
  }, RENEW_MS);
  timer.unref();
  return { end: () => clearInterval(timer) };
}
