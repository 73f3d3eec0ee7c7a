import "server-only";
import type { Tx } from "../store/database";
import { beginFreshDraft } from "./fresh-draft";
import { judgeAnew } from "./judge-anew";
import { takeTurnOutdated } from "./take-turn-outdated";

/** Something new is known of a rug: it is judged anew, it is our turn where a letter that left no longer holds, and the draft that follows from it is begun where that loses nobody's words. */
export async function reconsider(tx: Tx, { rugId, enquiryId }: { rugId: string; enquiryId: string }, now: Date): Promise<void> {
  await judgeAnew(tx, rugId, now);
  await takeTurnOutdated(tx, enquiryId, now);
  await beginFreshDraft(tx, enquiryId, now);
}
