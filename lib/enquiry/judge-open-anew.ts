import "server-only";
import { isDeepStrictEqual } from "node:util";
import { database, type Db, type Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { readSettings, type WorkshopSettings } from "../workshop/settings";
import { audit } from "./audit";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { judgeAnew } from "./judge-anew";
import { inOneStep } from "./one-step";
import { STATES, isOver } from "./states";
import { toJson } from "./to-json";

/** So many enquiries are judged at one press, so that the answer comes while the page waits. Elicited. */
export const MOST_AT_ONCE = 25;

/** What of the settings a judgement hangs on, beside the bench tests, which only change what is proposed. */
const JUDGED_BY: readonly string[] = ["currency", "prices", "priors", "losses", "emergencyNumber"] satisfies (keyof WorkshopSettings)[];
const judgedBy = (settings: unknown) => toJson(Object.fromEntries(Object.entries(settings ?? {}).filter(([name]) => JUDGED_BY.includes(name))));

/** The open enquiries with a rug whose newest assessment was made with other settings, the longest waiting first. */
async function judgedOtherwise(db: Db | Tx): Promise<string[]> {
  const now = judgedBy(await readSettings(db));
  const rugs = await db.rug.findMany({
    where: { enquiry: { state: { in: STATES.filter((s) => !isOver(s)) } } }, orderBy: [{ enquiry: { submittedAt: "asc" } }, { id: "asc" }],
    select: { enquiryId: true, assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1, select: { settings: true } } },
  });
  const stale = rugs.filter(({ assessments: [newest] }) => newest && !isDeepStrictEqual(judgedBy(newest.settings), now));
  return [...new Set(stale.map((r) => r.enquiryId))];
}

/** How many open enquiries were judged with other settings than those of today. */
export async function countJudgedOtherwise(caller: Caller): Promise<Result<number>> {
  const no = authorise(caller, "change-settings");
  return no ?? ok((await judgedOtherwise(database())).length);
}

/** Judges them anew, each in a transaction of its own, and writes the drafts anew that nobody has changed; up to MOST_AT_ONCE. `left`: how many are still to do. */
export async function judgeOpenAnew(caller: Caller, now: Date): Promise<Result<{ judged: number; left: number }>> {
  const no = authorise(caller, "change-settings");
  if (no) return no;
  const ids = await judgedOtherwise(database());
  const turn = ids.slice(0, MOST_AT_ONCE);
  for (const enquiryId of turn) {
    const done = await inOneStep(async (tx) => {
      for (const { id } of await tx.rug.findMany({ where: { enquiryId }, orderBy: { position: "asc" }, select: { id: true } })) {
        await judgeAnew(tx, id, now);
        await audit(tx, caller, { action: "assessed", enquiryId, at: now, detail: { rugId: id } });
      }
      await beginFreshDraft(tx, enquiryId, now);
      return ok(null);
    });
    if (!done.ok) return done;
  }
  return ok({ judged: turn.length, left: ids.length - turn.length });
}
