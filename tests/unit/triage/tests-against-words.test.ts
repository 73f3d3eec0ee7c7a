import { describe, expect, it } from "vitest";
import type { RugAnswers } from "../../../lib/trade/questions";
import { believe } from "../../../lib/triage/belief";
import type { Finding } from "../../../lib/triage/finding";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { AS_OF, SETTINGS } from "./belief-helpers";

/** A rug that every word and a typed label call viscose. */
const CALLED_VISCOSE: RugAnswers = {
  labelText: "100% viscose", sellerSaid: "art-silk", touch: "cool-slippery", shine: "two-tone", footprints: "stay", back: "cloth", fringe: "none", age: "under-2", boughtWhere: "furniture",
};
const PILE = { part: "pile", yarn: "whole" } as const;

describe("believe, a test against words and a label", () => {
  const believed = (...tests: Finding[]) => believe([...findingsFromAnswers(CALLED_VISCOSE, {}), ...tests], SETTINGS, AS_OF);
  const tested = (test: string, value: Finding["value"]): Finding => ({ what: `test:${test}`, value, strength: "bench", from: `bench:${test}`, of: PILE });

  it("goes by a laboratory, however many words and a typed label say otherwise", () => {
    expect(believed().fibres[0]?.fibre).toBe("viscose");
    const belief = believed({ what: "laboratory", value: { wool: 100 }, strength: "laboratory", from: "laboratory:1", of: PILE });
    expect(belief.probabilities.wool).toBeGreaterThan(0.8);
  });
  it("no longer calls viscose likely where fibres smell of burning hair and bleach dissolves them, and calls wool likely where they have scales too", () => {
    const protein = [tested("burn", { smell: "hair" }), tested("hypochlorite", { outcome: "dissolves" })];
    expect(believed(...protein).probabilities.viscose).toBeLessThan(0.33);
    expect(believed(...protein, tested("microscopy", { surface: "scales" })).probabilities.wool).toBeGreaterThan(0.66);
  });
  it("adds its weights up all the same", () => {
    const { balance } = believed(tested("microscopy", { surface: "scales" }));
    expect(balance.prior + balance.findings + balance.damping + balance.cap).toBeCloseTo(balance.total, 9);
  });
});

describe("believe, scales under the microscope", () => {
  it.each(["typed", "photographed"])("leaves viscose a few per cent, whatever the %s label says: only animal hair has scales", (read) => {
    const label = findingsFromAnswers({ labelText: "100% viscose" }, {}).map((f) => (read === "photographed" && f.what === "label" ? { ...f, strength: "label-photo" as const } : f));
    const scales: Finding = { what: "test:microscopy", value: { surface: "scales" }, strength: "bench", from: "bench:1", of: PILE };
    const { probabilities } = believe([...label, scales], SETTINGS, AS_OF);
    expect(probabilities.viscose).toBeLessThan(0.08);
    expect(probabilities.wool).toBeGreaterThan(0.6);
  });
});
