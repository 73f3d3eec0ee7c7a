import "server-only";
import { isReagentId } from "../workshop/settings-schema";
import { readSettings, writeSettings } from "../workshop/settings";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";

export const NOT_ASSESSED = "Tick that the assessment for your own workshop was made and written down.";

/** Switches a reagent on, which takes an assessment made in the workshop, or off. The owner's alone; who and when is kept. */
export async function switchReagent(
  caller: Caller,
  { reagent, to, isAssessed }: { reagent: string; to: "on" | "off"; isAssessed: boolean },
  now: Date,
): Promise<Result<null>> {
  const no = authorise(caller, "switch-reagent");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  if (!isReagentId(reagent)) return NOT_THERE;
  if (to === "on" && !isAssessed) return refuse("invalid", NOT_ASSESSED, { isAssessed: NOT_ASSESSED });
  return inOneStep(async (tx) => {
    const settings = await readSettings(tx);
    const { [reagent]: before, ...others } = settings.reagents;
    if ((before !== undefined) === (to === "on")) return ok(null);
    const reagents = to === "on" ? { ...others, [reagent]: { byId: caller.staffId, at: now.toISOString() } } : others;
    await writeSettings(tx, { ...settings, reagents });
    await audit(tx, caller, { action: to === "on" ? "reagent-on" : "reagent-off", enquiryId: null, at: now, detail: { reagent } });
    return ok(null);
  });
}
