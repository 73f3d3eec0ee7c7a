import "server-only";
import type { Db, Tx } from "../store/database";

/** Why nothing more is sent to an address, or null while it may be written to. It holds for whoever has the address, in every enquiry. */
export async function suppressedWhy(db: Db | Tx, address: string): Promise<string | null> {
  const client = await db.client.findFirst({ where: { email: address, suppressedAt: { not: null } }, select: { suppressedWhy: true } });
  return client ? (client.suppressedWhy ?? "no reason kept") : null;
}

/** Writes down that an address refused for good: nothing goes there until a person lifts it. What is known already stays. */
export async function suppress(tx: Tx, { address, why, now }: { address: string; why: string; now: Date }): Promise<void> {
  await tx.client.updateMany({ where: { email: address, suppressedAt: null }, data: { suppressedAt: now, suppressedWhy: why } });
}
