import { describe, expect, it } from "vitest";
import { SURENESS_MARKS } from "../../../../lib/reply/promises/sureness-marks";
import { SURENESS_START, SURENESS_WEIGHTS } from "../../../../lib/reply/promises/sureness-weights";
import { speaksTooSurely, surenessOf } from "../../../../lib/reply/promises/sureness";
import { fit, inDecibans, rowOf, scoreOf, type Row } from "./fit";
import { TABLES } from "./tables";

const ROWS: readonly (readonly Row[])[] = TABLES.map(({ over, honest }) => [...over.map((s) => rowOf(s, true)), ...honest.map((s) => rowOf(s, false))]);

describe("how surely a sentence speaks", () => {
  it("weighs each mark as the tables of sentences give it, to a deciban: a paragraph that is worded anew moves them less", () => {
    const { start, weights } = inDecibans(fit(ROWS.flat()));
    expect(Math.abs(start - SURENESS_START)).toBeLessThanOrEqual(1);
    expect(SURENESS_MARKS.filter(({ id }, at) => Math.abs((weights[at] as number) - (SURENESS_WEIGHTS[id] ?? NaN)) > 1 || !(id in SURENESS_WEIGHTS)).map((m) => m.id)).toEqual([]);
  });

  it("tells two in three statements of a table that it was not fitted to, and alarms at few honest ones; advice it leaves to the rules", () => {
    const seen = { over: 0, caught: 0, honest: 0, alarmed: 0 };
    for (const [at, held] of ROWS.entries()) {
      const weights = inDecibans(fit(ROWS.filter((_, n) => n !== at).flat()));
      for (const row of held.filter((r) => !r.advises)) {
        const hit = speaksTooSurely({ decibans: scoreOf(weights, row), length: Infinity, advises: false, ofTheHouse: false });
        if (row.over) Object.assign(seen, { over: seen.over + 1, caught: seen.caught + Number(hit) });
        else Object.assign(seen, { honest: seen.honest + 1, alarmed: seen.alarmed + Number(hit) });
      }
    }
    expect(seen.caught / seen.over).toBeGreaterThanOrEqual(0.64);
    expect(seen.alarmed / seen.honest).toBeLessThanOrEqual(0.08);
  }, 60_000);

  it("names the words that weigh most", () => {
    expect(surenessOf("Every stain will definitely go.").words).toContain("will");
    expect(speaksTooSurely(surenessOf("It may help a little, and it may not."))).toBe(false);
  });
});
