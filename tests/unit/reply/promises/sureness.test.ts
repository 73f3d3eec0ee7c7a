import { describe, expect, it } from "vitest";
import { speaksTooSurely, surenessOf } from "../../../../lib/reply/promises/sureness";
import { SURENESS_START, SURENESS_WEIGHTS } from "../../../../lib/reply/promises/sureness-weights";
import { fit, scoreOf, type Fit } from "./fit";
import { BESIDE, rowsOf, WRITTEN } from "./tables";

const ROWS = WRITTEN.map(rowsOf);
const BESIDE_ROWS = BESIDE.flatMap(rowsOf);
/** So many times a share of the tables is held out. */
const SHARES = 10;

describe("how surely a sentence speaks", () => {
  it("weighs each sign as the tables of sentences give it: a paragraph that is worded anew moves few sentences, and those little", () => {
    const anew = fit([...ROWS.flat(), ...BESIDE_ROWS]);
    const kept: Fit = { start: SURENESS_START, weights: SURENESS_WEIGHTS };
    const moved = [...ROWS.flat(), ...BESIDE_ROWS].map((row) => Math.abs(scoreOf(anew, row) - scoreOf(kept, row))).sort((a, b) => a - b);
    expect(moved[Math.floor(0.95 * moved.length)]).toBeLessThanOrEqual(2);
  });

  it("by itself tells three in four sentences of a table that it was not fitted to, and alarms at few honest ones", () => {
    const seen = { over: 0, caught: 0, honest: 0, alarmed: 0 };
    for (let share = 0; share < SHARES; share += 1) {
      const held = ROWS.filter((_, n) => n % SHARES === share).flat();
      const weights = fit([...ROWS.filter((_, n) => n % SHARES !== share).flat(), ...BESIDE_ROWS]);
      for (const row of held) {
        const hit = speaksTooSurely({ decibans: scoreOf(weights, row), length: Infinity });
        if (row.over) Object.assign(seen, { over: seen.over + 1, caught: seen.caught + Number(hit) });
        else Object.assign(seen, { honest: seen.honest + 1, alarmed: seen.alarmed + Number(hit) });
      }
    }
    expect(seen.caught / seen.over).toBeGreaterThanOrEqual(0.75);
    expect(seen.alarmed / seen.honest).toBeLessThanOrEqual(0.08);
  }, 180_000);

  it("names the words that weigh most", () => {
    expect(surenessOf("Every stain will definitely go.").words).toContain("definitely");
    expect(speaksTooSurely(surenessOf("It may help a little, and it may not."))).toBe(false);
  });
});
