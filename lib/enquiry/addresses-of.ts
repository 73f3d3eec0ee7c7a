import "server-only";
import * as z from "zod/mini";
import type { Db, Tx } from "../store/database";
import type { AuditAction } from "./audit";

const correctedSchema = z.object({ emailWas: z.string(), areLinksEnded: z.literal(0) });

/** Every address that an enquiry's client has or had; one that turned out to be another person's is not theirs. */
export async function addressesOf(tx: Db | Tx, { enquiryId, email }: { enquiryId: string; email: string | null }): Promise<string[]> {
  const corrected = await tx.audit.findMany({ where: { enquiryId, action: "address-corrected" satisfies AuditAction }, select: { detail: true } });
  const before = corrected.flatMap(({ detail }) => correctedSchema.safeParse(detail).data?.emailWas ?? []);
  return [...new Set([...(email ? [email] : []), ...before])];
}
