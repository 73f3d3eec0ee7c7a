import { describe, expect, it } from "vitest";
import { inTurn } from "../../../lib/photo/server/turns";

describe("inTurn", () => {
  it("runs two at a time, in the order of asking, and gives the turn back after a failure", async () => {
    let running = 0, most = 0;
    const started: number[] = [];
    const answers = await Promise.allSettled(Array.from({ length: 9 }, (_, i) => inTurn(async () => {
      started.push(i);
      most = Math.max(most, ++running);
      await new Promise((go) => setImmediate(go));
      running--;
      if (i % 3 === 1) throw new Error("broken");
      return i;
    })));
    expect(most).toBe(2);
    expect(started).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    expect(answers.map((a) => a.status === "fulfilled")).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8].map((i) => i % 3 !== 1));
  });
});
