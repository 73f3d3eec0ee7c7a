import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { ROW_IDS, type RowId } from "../../../lib/trade/improvement";
import { ACTIONS, LOSSES } from "../../../lib/trade/losses";
import { advise, leastNow, misnamingLoss, priced, referTo, weighActions, type Circumstances, type Decision } from "../../../lib/triage/advice";
import { circumstancesOf, openShare } from "../../../lib/triage/circumstances";
import { failsOn, type RulingRows } from "../../../lib/triage/prospects";
import { belief, told } from "./told";

const ORDINARY: Circumstances = { sound: 0, wet: 0, specialist: 0, local: 1, placed: true, antique: false, cheap: 0, grounds: 0.5, asksName: 0, soldAsSilk: false, open: 0 };
const rowsOf = (row: RowId): RulingRows => Object.fromEntries(FIBRE_IDS.map((f) => [f, Object.fromEntries(ROW_IDS.map((r) => [r, r === row ? 1 : 0]))])) as unknown as RulingRows;
const WORSE = Object.fromEntries(FIBRE_IDS.map((f) => [f, 0])) as Record<FibreId, number>;
const decision = (over: Partial<Omit<Decision, "circumstances">> & { row?: RowId; circumstances?: Partial<Circumstances> } = {}): Decision => ({
  fibres: over.fibres ?? belief({ wool: 1 }), rows: over.rows ?? rowsOf(over.row ?? "soil"), worse: over.worse ?? WORSE,
  circumstances: { ...ORDINARY, ...over.circumstances }, losses: over.losses ?? null,
});
const best = (d: Decision) => weighActions(d)[0]?.action;
const loss = (d: Decision, action: string) => weighActions(d).find((w) => w.action === action)?.loss ?? NaN;

describe("weighActions", () => {
  it("weighs every action once, least loss first", () => {
    const weighed = weighActions(decision());
    expect(weighed.map((w) => w.action).sort()).toEqual(Object.keys(ACTIONS).sort());
    for (let i = 1; i < weighed.length; i += 1) expect((weighed[i] as { loss: number }).loss).toBeGreaterThanOrEqual((weighed[i - 1] as { loss: number }).loss);
  });

  it("adds up by hand: an old food stain on wool", () => {
    const d = decision({ row: "food-old" });
    const fails = failsOn("wool", "food-old");
    expect(fails).toBeCloseTo(0.1 + 0.4 * (25 / 30), 9);
    expect(loss(d, "routine-clean")).toBeCloseTo(8 * fails + 1, 9);
    expect(loss(d, "quote-with-limits")).toBeCloseTo(fails + 0.3 * (1 - fails), 9);
    expect(loss(d, "leave-alone")).toBeCloseTo(2 * (1 - fails) + 1, 9);
    expect(loss(d, "advise-cut-down")).toBeCloseTo(3 * (1 - fails), 9);
  });

  it("cleans dusty wool, limits a stain, cuts or replaces what will not come back, leaves a sound rug alone", () => {
    expect(best(decision({ row: "soil" }))).toBe("routine-clean");
    expect(best(decision({ row: "food-fresh" }))).toBe("quote-with-limits");
    expect(["advise-cut-down", "advise-claim-or-replacement"]).toContain(best(decision({ row: "urine-old", fibres: belief({ viscose: 1 }) })));
    expect(best(decision({ circumstances: { sound: 1 } }))).toBe("leave-alone");
  });

  it("puts first aid before everything while it is wet, and a specialist before ourselves", () => {
    expect(best(decision({ row: "food-fresh", circumstances: { wet: 1 } }))).toBe("first-aid");
    expect(best(decision({ row: "soil", circumstances: { specialist: 1 } }))).toBe("refer");
  });

  it("asks for more while little is known, and inspects where asking has ended and fibre and damage are open", () => {
    const open = decision({ row: "food-old", fibres: belief({ wool: 0.5, viscose: 0.5 }), circumstances: { open: 1 } });
    expect(loss(open, "ask-for-more")).toBeLessThan(loss({ ...open, circumstances: { ...open.circumstances, open: 0 } }, "ask-for-more"));
    expect(best({ ...open, circumstances: { ...open.circumstances, asksName: 1, open: 0 } })).toBe("inspect-and-test");
  });

  it("never likes a promise better for a greater chance of failing", () => {
    const ordered = [...ROW_IDS].filter((r) => r !== "soil").sort((a, b) => failsOn("wool", a) - failsOn("wool", b));
    for (let i = 1; i < ordered.length; i += 1) {
      const [easier, harder] = [ordered[i - 1] as RowId, ordered[i] as RowId];
      expect(loss(decision({ row: harder }), "routine-clean")).toBeGreaterThanOrEqual(loss(decision({ row: easier }), "routine-clean") - 1e-12);
    }
  });

  it("obeys the workshop's own losses", () => {
    const d = decision({ row: "soil" });
    expect(best({ ...d, losses: { "acted-needlessly": 0, "promised-and-failed": 8, "mark-taken-for-soil": 1 } })).toBe("routine-clean");
    const wary = { ...decision({ row: "soil", worse: { ...WORSE, wool: 0.2 } }), losses: { "made-worse": 1000 } };
    expect(best(wary)).not.toBe("routine-clean");
  });

  it("moves some action for every loss of the table", () => {
    const many: Decision[] = [
      decision({ row: "food-old", worse: { ...WORSE, wool: 0.1 }, circumstances: { open: 0.5 } }),
      decision({ row: "urine-old", fibres: belief({ viscose: 0.5, silk: 0.4, wool: 0.1 }), circumstances: { asksName: 1, soldAsSilk: true, wet: 0.3, specialist: 0.2, cheap: 0.4, sound: 0.3, local: 0.3 } }),
      decision({ fibres: belief({ silk: 0.96, viscose: 0.02, wool: 0.02 }), circumstances: { asksName: 1 } }),
      decision({ fibres: belief({ silk: 0.1, viscose: 0.9 }), circumstances: { asksName: 1 } }),
      decision({ fibres: belief({ silk: 0.55, viscose: 0.05, wool: 0.4 }), circumstances: { asksName: 1 } }),
    ];
    for (const id of Object.keys(LOSSES)) {
      const moved = many.some((d) => JSON.stringify(weighActions(d)) !== JSON.stringify(weighActions({ ...d, losses: { [id]: (LOSSES as Record<string, { loss: number }>)[id]!.loss + 0.5 } })));
      expect(moved, id).toBe(true);
    }
  });

  it("never advises a cut-down without place and size: it asks for them first, if a cut-down would be best", () => {
    const d = decision({ row: "urine-old", fibres: belief({ viscose: 1 }), circumstances: { grounds: 0 } });
    expect(best(d)).toBe("advise-cut-down");
    const unplaced = { ...d, circumstances: { ...d.circumstances, placed: false } };
    expect(weighActions(unplaced).map((w) => w.action)).not.toContain("advise-cut-down");
    expect(best(unplaced)).toBe("ask-for-more");
  });
  it("never advises to cut an antique, whatever the losses", () => {
    const d = decision({ row: "urine-old", fibres: belief({ viscose: 1 }), circumstances: { antique: true, specialist: 1 }, losses: { "specialist-passed-over": 0, "cut-needlessly": 0 } });
    expect(weighActions(d).map((w) => w.action)).not.toContain("advise-cut-down");
    expect(weighActions({ ...d, circumstances: { ...d.circumstances, placed: false } }).map((w) => w.action)).not.toContain("advise-cut-down");
  });
  it("stays finite and whole for losses edited to extremes", () => {
    const ids = Object.keys(LOSSES);
    fc.assert(fc.property(fc.dictionary(fc.constantFrom(...ids), fc.constantFrom(0, 1e-9, 1, 1e6, 1e9)), fc.boolean(), fc.boolean(), fc.constantFrom(...ROW_IDS), (losses, placed, antique, row) => {
      const weighed = weighActions(decision({ row, fibres: belief({ viscose: 0.5, silk: 0.5 }), losses, circumstances: { placed, antique, asksName: 1, open: 0.5 } }));
      expect(weighed.length).toBeGreaterThanOrEqual(Object.keys(ACTIONS).length - 1);
      for (const w of weighed) expect(Number.isFinite(w.loss), w.action).toBe(true);
    }));
  });

  it("is never negative", () => {
    fc.assert(fc.property(fc.constantFrom(...ROW_IDS), fc.constantFrom(...FIBRE_IDS), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (row, f, a, b) => {
      for (const w of weighActions(decision({ row, fibres: belief({ [f]: 1 }), circumstances: { wet: a, open: b, cheap: a, specialist: b, sound: a } }))) expect(w.loss).toBeGreaterThanOrEqual(0);
    }), { numRuns: 60 });
  });
});

describe("misnamingLoss", () => {
  it("takes the name that costs least if wrong: silk is said only when viscose is unlikely", () => {
    expect(misnamingLoss(belief({ silk: 1 }), null)).toBe(0);
    expect(misnamingLoss(belief({ silk: 0.9, viscose: 0.1 }), null)).toBeCloseTo(1, 9);
    expect(misnamingLoss(belief({ silk: 0.7, viscose: 0.3 }), null)).toBeCloseTo(1, 9);
    expect(misnamingLoss(belief({ silk: 0.6, viscose: 0.4 }), null)).toBeCloseTo(1, 9);
    expect(misnamingLoss(belief({ silk: 0.1, viscose: 0.9 }), null)).toBeCloseTo(0.3, 9);
  });
});

describe("leastNow", () => {
  it("equals the best deciding action of the full weighing", () => {
    const d = decision({ row: "food-old", fibres: belief({ wool: 0.6, viscose: 0.4 }) });
    const decides = weighActions(d).filter((w) => w.action !== "ask-for-more" && w.action !== "inspect-and-test");
    expect(leastNow(d, d.fibres, priced(d))).toBeCloseTo(decides[0]?.loss ?? NaN, 12);
  });
});

describe("advise", () => {
  it("names who it goes to only where it is referred", () => {
    expect(advise([{ action: "refer", loss: 0 }], "a valuer").referTo).toBe("a valuer");
    expect(advise([{ action: "routine-clean", loss: 0 }], "a valuer").referTo).toBeNull();
  });
  it("refers to nobody where there is nobody to refer to: the next best is advised, and no referral is weighed", () => {
    const weighed = [{ action: "refer" as const, loss: 1 }, { action: "inspect-and-test" as const, loss: 2 }];
    expect(advise(weighed, null)).toMatchObject({ action: "inspect-and-test", referTo: null, losses: [{ action: "inspect-and-test", loss: 2 }] });
    expect(advise(weighed, "a valuer")).toMatchObject({ action: "refer", referTo: "a valuer", losses: weighed });
  });
});

describe("referTo", () => {
  const to = (chances: Partial<Record<string, number>>) => referTo((when) => chances[when] ?? 0);
  it("refers from one half on: below, at, above", () => expect([to({ insects: 0.49 }), to({ insects: 0.5 }), to({ insects: 0.9 })]).toEqual([null, expect.stringContaining("pest"), expect.stringContaining("pest")]));
  it("sends an antique to a conservator whatever else is wrong", () => expect(to({ antique: 1, insects: 1 })).toContain("conservator"));
});

describe("circumstancesOf", () => {
  const of = (answers: Parameters<typeof told>[0]) => circumstancesOf(told(answers), { chance: () => 0, cheap: 0, needsAid: false });
  it("knows a sound rug whose name is asked", () => expect(of({ reason: "what-is-it" })).toMatchObject({ sound: 1, asksName: 1, wet: 0 }));
  it("does not call a stained rug sound because its name is asked", () => expect(of({ reason: "what-is-it", incidents: ["spill"] }).sound).toBe(0));
  it("tells a spot from a whole rug", () => expect([of({ incidents: ["spill"] }).local, of({ incidents: ["flood"] }).local]).toEqual([1, 0]));
  it("knows place and size only where both were told, or the cut was drawn on the plan", () => {
    const size = { widthCm: 170, lengthCm: 240, m2: 4.08 };
    expect([of({ incidents: ["spill"] }).placed, of({ size }).placed, of({ incidents: ["spill"], size }).placed]).toEqual([false, false, true]);
    expect(of({ incidents: ["spill"], changes: ["dirty"], size }).placed).toBe(false);
    expect(of({ incidents: ["flood"], size, "cut-down": { bindingM: 2 } })).toMatchObject({ placed: true, local: 1 });
  });
  it("holds for wet what first aid is due for, and nothing else", () => expect([true, false].map((needsAid) => circumstancesOf(told({ wetNow: "no" }), { chance: () => 0, cheap: 0, needsAid }).wet)).toEqual([1, 0]));
  it("counts waste water as a specialist's", () => expect(of({ incidents: ["flood"] }).specialist).toBe(1));
});

describe("openShare", () => {
  it("is one for nothing told, nothing for a full picture, and does not count “not sure”", () => {
    expect(openShare(told({}))).toBe(1);
    expect(openShare(told({ shine: "unsure" }))).toBe(1);
    expect(openShare(told({ labelFound: "none", sellerSaid: "silk", shine: "none", footprints: "stay", touch: "springy", back: "knots", incidents: ["spill"], changes: ["ring"], since: "day", treatments: ["nothing"] }))).toBeCloseTo(0, 9);
  });
});
