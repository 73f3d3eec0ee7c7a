import "server-only";
import type { Tx } from "../store/database";
import { newRowId } from "../store/row-order";
import type { HISTORY } from "../words/en/history";
import type { Caller } from "./caller";

type DoneKey = Extract<keyof typeof HISTORY, `did.${string}`>;
/** What can stand in the history of an enquiry; how each reads is said in lib/words/en/history.ts. */
export type AuditAction = DoneKey extends `did.${infer Action}` ? Action : never;

type Fact = string | number | null;
/** What stands beside a deed; a list where it was done to several things at once. */
export type Detail = Record<string, Fact | readonly Record<string, Fact>[]>;

/** The id of who acts; null for the public. */
export function actorOf(caller: Caller): string | null {
  switch (caller.kind) {
    case "staff":
      return caller.staffId;
    case "client":
      return caller.linkId;
    case "intake":
      return caller.intakeId;
    case "system":
      return caller.what;
    case "public":
      return null;
  }
}

/** Writes who did what, in the transaction of the change itself. `detail` holds ids and states, and the reasons people gave; what a correction made of a client's contact details; never what clients or letters say, but for the sentences of a letter that a reason was given for. Erasing an enquiry empties it. */
export async function audit(
  tx: Tx,
  caller: Caller,
  entry: { action: AuditAction; enquiryId: string | null; at: Date; detail?: Detail },
): Promise<void> {
  await tx.audit.create({
    data: {
      id: newRowId(),
      at: entry.at,
      actorKind: caller.kind,
      actorId: actorOf(caller),
      action: entry.action,
      enquiryId: entry.enquiryId,
      detail: entry.detail ?? {},
    },
  });
}
