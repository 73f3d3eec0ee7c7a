import "server-only";
import type { Tx } from "../store/database";
import { beginFreshDraft } from "./fresh-draft";
import { judgeAnew } from "./judge-anew";

/** Something new is known of a rug: it is judged anew, and the draft that follows from it begun where that loses nobody's words. */
export async function reconsider(tx: Tx, { rugId, enquiryId }: { rugId: string; enquiryId: string }, now: Date): Promise<void> {
  await judgeAnew(tx, rugId, now);
  await beginFreshDraft(tx, enquiryId, now);
}
