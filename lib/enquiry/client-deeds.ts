import "server-only";
import type { Audit, Prisma, Tx } from "../store/database";
import type { AuditAction } from "./audit";
import { refuse, type Refusal } from "./caller";

const BY_MAIL = "mail-taken" satisfies AuditAction;
const TELLS_NOTHING = "copied" satisfies AuditAction;

/** What a client told us, on their own page or by a letter: words, photos, answers. */
const CLIENT_DEEDS = { OR: [{ action: BY_MAIL }, { actorKind: "client", action: { not: TELLS_NOTHING } }] } satisfies Prisma.AuditWhereInput;

/** The same of a row that was read. */
export const isClientDeed = ({ actorKind, action }: Pick<Audit, "actorKind" | "action">): boolean => action === BY_MAIL || (actorKind === "client" && action !== TELLS_NOTHING);

/** A refusal where the client has told more than the `heard` deeds that the person had before them; null where they have not, or nobody says. */
export async function unlessHeard(tx: Tx, enquiryId: string, heard: number | undefined): Promise<Refusal | null> {
  if (heard === undefined) return null;
  const told = await tx.audit.count({ where: { enquiryId, ...CLIENT_DEEDS } });
  return told <= heard ? null : refuse("changed-meanwhile", "The client has written or sent something since you opened this. Nothing was sent: read that first, then send the letter.");
}
