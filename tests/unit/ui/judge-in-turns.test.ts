import { describe, expect, it } from "vitest";
import { judgeInTurns, type Judged } from "../../../app/(desk)/desk/settings/judge-in-turns";
import { ok, refuse, type Result } from "../../../lib/enquiry/caller";

/** A desk with so many to judge, so many at a turn. */
function deskOf(all: number, atOnce: number) {
  let left = all;
  const turns: Judged[] = [];
  const turn = async (): Promise<Result<Judged>> => {
    const judged = Math.min(left, atOnce);
    left -= judged;
    turns.push({ judged, left });
    return ok({ judged, left });
  };
  return { turn, turns };
}
const never = () => false;

describe("judgeInTurns", () => {
  it.each([[1, 1], [24, 1], [25, 1], [26, 2], [60, 3]])("judges %i in %i turns, and says after each how many are done and left", async (all, needed) => {
    const { turn, turns } = deskOf(all, 25);
    const told: Judged[] = [];
    expect(await judgeInTurns(turn, { left: all, told: (so) => told.push(so), isStopped: never })).toEqual({ judged: all, left: 0, halted: null });
    expect(turns).toHaveLength(needed);
    expect(told.map(({ judged, left }) => judged + left)).toEqual(turns.map(() => all));
  });
  it("begins no further turn once it is told to stop, and keeps what was done", async () => {
    const { turn, turns } = deskOf(60, 25);
    expect(await judgeInTurns(turn, { left: 60, told: () => undefined, isStopped: () => turns.length === 2 })).toEqual({ judged: 50, left: 10, halted: null });
    expect(turns).toHaveLength(2);
  });
  it("says why a turn failed beside what was done before", async () => {
    const { turn, turns } = deskOf(60, 25);
    const fails = async () => (turns.length === 1 ? refuse("unavailable", "The server could not be reached.") : turn());
    expect(await judgeInTurns(fails, { left: 60, told: () => undefined, isStopped: never })).toEqual({ judged: 25, left: 35, halted: "The server could not be reached." });
  });
  it("does not ask without end for what cannot be judged", async () => {
    let asked = 0;
    const none = async () => { asked += 1; return ok({ judged: 0, left: 3 }); };
    expect(await judgeInTurns(none, { left: 3, told: () => undefined, isStopped: never })).toMatchObject({ judged: 0, left: 3, halted: expect.stringMatching(/could not be judged/) as string });
    expect(asked).toBe(1);
  });
  it("counts what comes in meanwhile", async () => {
    const turns = [{ judged: 2, left: 1 }, { judged: 1, left: 0 }];
    expect(await judgeInTurns(async () => ok(turns.shift() ?? { judged: 0, left: 0 }), { left: 2, told: () => undefined, isStopped: never })).toEqual({ judged: 3, left: 0, halted: null });
  });
});
