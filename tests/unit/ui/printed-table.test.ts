import { describe, expect, it } from "vitest";
import { sayHow, sayPercent } from "../../../lib/ui/printed-table";
import { wordsIn } from "../../../lib/words/words";

const words = wordsIn("en-GB");

describe("sayPercent", () => {
  it("tells whole per cents", () => expect([0, 0.042, 0.5, 0.994, 1].map((p) => sayPercent(p, words))).toEqual(["0\u00a0%", "4\u00a0%", "50\u00a0%", "99\u00a0%", "100\u00a0%"]));
  it("never tells what is not sure as 100 %", () => expect([0.995, 0.9999].map((p) => sayPercent(p, words))).toEqual(["over 99\u00a0%", "over 99\u00a0%"]));
});

describe("sayHow", () => {
  it("says each way of knowing in a client's words", () => {
    const said = (["read", "memory", "computed", "common practice", "elicited"] as const).map((how) => sayHow(how, wordsIn("en-XA")));
    expect(new Set(said).size).toBe(5);
    for (const text of said) expect(text).toMatch(/^⟦[^⟦⟧]+⟧$/);
  });
});
