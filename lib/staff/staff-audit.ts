import "server-only";
import type { Tx } from "../store/database";
import { newRowId } from "../store/row-order";
import type { Caller } from "./caller";

/** Writes what happened to the staff, in the transaction of the change itself. */
export async function noteStaff(tx: Tx, caller: Caller, action: string, detail: Record<string, string>): Promise<void> {
  await tx.audit.create({
    data: { id: newRowId(), actorKind: caller.kind, actorId: caller.kind === "staff" ? caller.staffId : null, action, detail },
  });
}
