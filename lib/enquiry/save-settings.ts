import "server-only";
import { checkSentences, WORDS_AND_PHOTOS } from "../reply/promises/check";
import { broughtAlong, type Brought } from "../workshop/brought-along";
import { readSettings, writeSettings, type WorkshopSettings } from "../workshop/settings";
import { newlySetFaults } from "../workshop/newly-set";
import { workshopSettingsSchema } from "../workshop/settings-schema";
import { audit } from "./audit";
import { authorise } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { mayErasePlace, wouldErase } from "./may-erase";
import { inOneStep } from "./one-step";
import { countOutlived } from "./retention";
import { readsOtherwise, rewriteDrafts } from "./rewrite-drafts";

/** Sentences that stand in letters as the workshop wrote them: what of them says more than is known, under their field. */
function tooSure(before: WorkshopSettings, { collecting }: WorkshopSettings): Record<string, string> {
  const [over] = collecting === before.collecting ? [] : checkSentences(collecting, WORDS_AND_PHOTOS);
  return over ? { collecting: `“${over.sentence}” ${over.why} Letters with it could leave only for a reason, so please write it otherwise.` } : {};
}

/** Enquiries that a shorter time of keeping would erase, unless somebody agreed to just that time: how many, beside the tick for it. */
async function erasedUnasked({ retentionMonths: was }: WorkshopSettings, { retentionMonths }: WorkshopSettings, { mayErase, now }: { mayErase: number | null; now: Date }): Promise<Record<string, string>> {
  const count = retentionMonths < was && mayErase !== retentionMonths ? await countOutlived(retentionMonths, now) : 0;
  return count > 0 ? { [mayErasePlace(retentionMonths)]: wouldErase(count, retentionMonths) } : {};
}

/**
 * The owner's alone. Assessments made before keep the settings they were made with, their currency among them. Prices and the emergency number
 * follow a new currency and place where they were left as they stood; `says` tells so. Drafts that nobody has touched are written anew where something changed that stands in letters (rewrite-drafts.ts). Reagents are switched one by one, elsewhere.
 * Where enquiries would be erased because they are to be kept for fewer months, nothing is saved before `mayErase` names just that number of months.
 */
export async function saveSettings(caller: Caller, values: WorkshopSettings, now: Date = new Date(), mayErase: number | null = null): Promise<Result<Brought>> {
  const no = authorise(caller, "change-settings");
  if (no) return no;
  const parsed = workshopSettingsSchema.safeParse(values);
  if (!parsed.success)
    return refuse("invalid", "Please look at the settings again.", Object.fromEntries(parsed.error.issues.map((i) => [i.path.join("."), i.message])));
  const unasked = await erasedUnasked(await readSettings(), parsed.data, { mayErase, now });
  const done = await inOneStep(async (tx) => {
    const before = await readSettings(tx);
    const faults = { ...tooSure(before, parsed.data), ...newlySetFaults(before, parsed.data), ...unasked };
    const [fault] = Object.values(faults);
    if (fault) return refuse("invalid", fault, faults);
    const brought = broughtAlong(before, { ...parsed.data, reagents: before.reagents });
    await writeSettings(tx, brought.settings);
    await audit(tx, caller, { action: "settings-saved", enquiryId: null, at: now });
    return ok({ brought, isRewritten: readsOtherwise(before, brought.settings) });
  });
  if (!done.ok) return done;
  if (done.value.isRewritten) await rewriteDrafts(now);
  return ok(done.value.brought);
}
