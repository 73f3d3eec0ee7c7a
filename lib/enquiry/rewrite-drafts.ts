import "server-only";
import { isDeepStrictEqual } from "node:util";
import { database } from "../store/database";
import type { WorkshopSettings } from "../workshop/settings-schema";
import { ok } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { inOneStep } from "./one-step";
import { WAITING_FOR_US } from "./states";

/** What of the settings stands in letters as it is, whatever was judged. */
const WRITTEN_WITH = ["name", "signature", "telephone", "locale", "areaUnit", "tone", "collecting", "workWeeks"] as const satisfies readonly (keyof WorkshopSettings)[];

/** Whether letters read otherwise after a change of the settings. */
export const readsOtherwise = (before: WorkshopSettings, after: WorkshopSettings): boolean => WRITTEN_WITH.some((name) => !isDeepStrictEqual(before[name], after[name]));

/**
 * Writes the drafts anew that nobody has touched, each in a transaction of its own, so that they read as the settings and the
 * paragraphs of today have it. What somebody changed is left, and says itself where it would read otherwise (draft-today.ts). The caller has been authorised.
 */
export async function rewriteDrafts(now: Date): Promise<void> {
  const open = await database().enquiry.findMany({ where: { state: { in: [...WAITING_FOR_US] } }, orderBy: [{ submittedAt: "asc" }, { id: "asc" }], select: { id: true } });
  for (const { id } of open) {
    await inOneStep(async (tx) => {
      await beginFreshDraft(tx, id, now);
      return ok(null);
    });
  }
}
