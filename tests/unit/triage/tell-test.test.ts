import { describe, expect, it } from "vitest";
import type { Finding, FindingValue, Sample } from "../../../lib/triage/finding";
import { tellTest } from "../../../lib/triage/tell-test";

const bench = (test: string, value: FindingValue, of?: Sample): Finding => ({ what: `test:${test}`, value, strength: "bench", from: "bench:1", ...(of ? { of } : {}) });

describe("tellTest", () => {
  it("tells staff the test, the sample and what was read", () => {
    expect(tellTest(bench("burn", { smell: "hair", ash: "crushable" }, { part: "pile", yarn: "accent" }))?.staff)
      .toBe("the test “Burn test” of the accent of the pile gave “Burning hair or feathers”, “A dark bead that crumbles to powder”");
  });
  it("tells a client neither the reagent nor a pH", () => {
    expect(tellTest(bench("hypochlorite", { outcome: "dissolves" }))?.client).toBe("we tested a few fibres of the pile");
    expect(tellTest(bench("spot-ph", { place: "affected", ph: 8.5 }))).toEqual({
      staff: "the test “pH of a spot” gave “In the trouble”, 8.5", client: "we made a test on the rug in the workshop",
    });
  });
  it("tells a laboratory's composition, most first, or that it does not add up", () => {
    const report = (value: FindingValue): Finding => ({ what: "laboratory", value, strength: "laboratory", from: "laboratory:Tarn", of: { part: "fringe", yarn: "whole" } });
    expect(tellTest(report({ viscose: 20, wool: 80, silk: 0 }))?.client).toBe("a laboratory found the fringe to be 80 % wool, 20 % viscose");
    expect(tellTest(report({ wool: 20 }))?.staff).toBe("a laboratory’s report on the fringe gives no composition that adds up");
  });
  it("is null for what is no test, and leaves out what the table does not know", () => {
    expect(tellTest({ what: "shine", value: "none", strength: "told", from: "client" })).toBeNull();
    expect(tellTest(bench("unheard-of", { outcome: "dissolves" }))).toBeNull();
    expect(tellTest(bench("burn", "hair"))).toBeNull();
    expect(tellTest(bench("burn", { smell: "roses", flame: "slow" }))?.staff).toBe("the test “Burn test” of the pile gave “It burns slowly, sputters, is hard to light”");
  });
});
