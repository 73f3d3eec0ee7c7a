import "server-only";
import { REAGENTS, type ReagentId } from "../trade/reagents";
import { readSettings } from "../workshop/settings";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { peopleNames } from "./people-names";

export interface ReagentView { id: ReagentId; on: { by: string; at: string } | null }

/** Every reagent in the order of the table, and who switched it on when. */
export async function readReagents(caller: Caller): Promise<Result<ReagentView[]>> {
  const no = authorise(caller, "switch-reagent");
  if (no) return no;
  const { reagents } = await readSettings();
  const nameOf = await peopleNames(Object.values(reagents).map((r) => r.byId));
  return ok((Object.keys(REAGENTS) as ReagentId[]).map((id) => {
    const on = reagents[id];
    return { id, on: on ? { by: nameOf(on.byId), at: on.at } : null };
  }));
}
