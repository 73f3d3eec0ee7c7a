import { describe, expect, it } from "vitest";
import { BENCH_TESTS, type TestId } from "../../../lib/trade/bench-tests";
import { assess, defaultSettings } from "../../../lib/triage/assess";
import type { Finding } from "../../../lib/triage/finding";
import { findings } from "./told";

const next = (answers: Record<string, Finding["value"]>) => assess(findings(answers), defaultSettings(), "2026-03-01T00:00:00Z").nextQuestions;
const ids = (answers: Record<string, Finding["value"]>) => next(answers).map((q) => q.id);

const FULL = {
  wetNow: "no", reason: "routine", household: ["none"], age: "10-25", room: "ordinary", sellerSaid: "wool", boughtWhere: "specialist", shine: "none", footprints: "brush",
  touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "cottony", incidents: ["nothing"], changes: ["dirty"], treatments: ["nothing"], liquid: "other", since: "longer", treatedBy: "owner", labelFound: "none",
};

describe("nextQuestions", () => {
  it("asks first whether it is wet, where that is open", () => expect(ids({})[0]).toBe("wetNow"));
  it("always asks for household and age, and no longer once answered", () => {
    expect(ids({})).toEqual(expect.arrayContaining(["household", "age"]));
    expect(ids({ household: ["none"], age: "2-5" })).not.toEqual(expect.arrayContaining(["household"]));
  });
  it("asks nothing twice: no question that was answered, no photo that was sent, no label that is not there", () => {
    const asked = ids({ ...FULL, photo: ["trouble", "whole", "back", "pile"] });
    expect(asked.filter((id) => id in FULL || ["trouble", "whole", "back", "pile", "label"].includes(id))).toEqual([]);
  });
  it("asks for a photo of the label while nothing but the seller's word speaks for silk", () => expect(ids({ wetNow: "no", sellerSaid: "silk", reason: "mis-sold", incidents: ["nothing"], changes: ["none"] })).toContain("label"));
  it("asks for no photo of a label that was read in a photo of something else; one that was only typed may still be photographed", () => {
    const asks = (strength: "label-photo" | "label-typed") => {
      const label: Finding = { what: "label", value: { says: null, text: "HAND MADE", pile: null }, strength, from: "s1" };
      return assess([...findings({ wetNow: "no", sellerSaid: "silk", reason: "mis-sold", incidents: ["nothing"], changes: ["none"] }), label], defaultSettings(), "2026-03-01T00:00:00Z").nextQuestions.map((q) => q.id);
    };
    expect(asks("label-typed")).toContain("label");
    expect(asks("label-photo")).not.toContain("label");
  });
  it("asks what happened before what liquid it was", () => {
    expect(ids({ wetNow: "no" })).toContain("incidents");
    expect(ids({ wetNow: "no" })).not.toContain("liquid");
    expect(ids({ wetNow: "no", incidents: ["spill"], changes: ["ring"], since: "week", treatments: ["nothing"] })).toContain("liquid");
  });
  it("offers a bench test by its name while the fibre is open by a tenth: one that needs no reagent unless the owner switched some on", () => {
    const tests = (open?: string[]) => assess(findings(FULL), defaultSettings(open ? { benchTests: open } : {}), "2026-03-01T00:00:00Z").nextQuestions.filter((q) => q.kind === "bench-test");
    expect(tests().length).toBeGreaterThan(0);
    for (const { id, ask } of tests()) {
      expect(BENCH_TESTS[id as TestId].reagent).toBeNull();
      expect(ask).toBe(`Bench test: ${BENCH_TESTS[id as TestId].name}`);
    }
    expect(tests(["acetone", "hypochlorite"]).every((q) => ["acetone", "hypochlorite"].includes(q.id))).toBe(true);
    expect(tests([])).toEqual([]);
  });
  it("proposes no test that was made", () => {
    const made: Finding = { what: "test:microscopy", value: { surface: "scales" }, strength: "bench", from: "bench:1", of: { part: "pile", yarn: "field" } };
    const ids = assess([...findings(FULL), made], defaultSettings({ benchTests: ["microscopy"] }), "2026-03-01T00:00:00Z").nextQuestions.map((q) => q.id);
    expect(ids).not.toContain("microscopy");
  });
  it("says why for each", () => { for (const q of next({})) expect(q.why.length, q.id).toBeGreaterThan(20); });
});
