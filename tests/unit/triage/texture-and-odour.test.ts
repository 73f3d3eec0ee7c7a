import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { TEXTURE, TEXTURE_HARMS } from "../../../lib/trade/texture";
import type { Finding } from "../../../lib/triage/finding";
import { judgeOdour } from "../../../lib/triage/odour";
import { afterCleaning, graver, judgeTexture } from "../../../lib/triage/texture";
import { whatHappened } from "../../../lib/triage/what-happened";
import { belief, told } from "./told";

const sum = (of: readonly number[]) => of.reduce((a, b) => a + b, 0);
const mean = (of: readonly number[]) => sum(of.map((p, grade) => p * grade));
const texture = (answers: Record<string, Finding["value"]>, fibre: FibreId) => judgeTexture(whatHappened(told(answers)), belief({ [fibre]: 1 }));
const chances = fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 }).map((w) => w.map((x) => x / sum(w)));

describe("the grades of texture", () => {
  it("every row is a distribution over the grades, and nothing stays more than surely", () => {
    for (const m of TEXTURE_HARMS) {
      expect(sum(TEXTURE[m].now)).toBeCloseTo(1, 12);
      for (const stays of Object.values(TEXTURE[m].stays)) expect(stays > 0 && stays < 1).toBe(true);
    }
  });
  it("from grade 4 each grade stays for itself: a binomial law", () => {
    const after = afterCleaning([0, 0, 0, 0, 1], 0.5);
    expect(after.map((p) => p * 16)).toEqual([1, 4, 6, 4, 1]);
  });
  it("keeps the chances at one, and the mean grade falls by what stays", () => fc.assert(fc.property(chances, fc.double({ min: 0, max: 1, noNaN: true }), (now, stays) => {
    expect(sum(afterCleaning(now, stays))).toBeCloseTo(1, 9);
    expect(mean(afterCleaning(now, stays))).toBeCloseTo(stays * mean(now), 9);
  })));
  it("the graver of two is as listing all pairs finds it", () => fc.assert(fc.property(chances, chances, (a, b) => {
    const listed = [0, 0, 0, 0, 0];
    a.forEach((p, i) => b.forEach((q, j) => { listed[Math.max(i, j)] = (listed[Math.max(i, j)] as number) + p * q; }));
    graver(a, b).forEach((p, g) => expect(p).toBeCloseTo(listed[g] as number, 9));
  })));
});

describe("judgeTexture", () => {
  const scrubbed = { incidents: ["spill"], treatments: ["rubbed", "plain-water"], changes: ["rough"] };
  it("says nothing where nothing speaks of it", () => expect(texture({ incidents: ["sun"], changes: ["faded"] }, "wool")).toBeNull());
  it("is never better before cleaning than after, and both sum to one", () => {
    for (const f of FIBRE_IDS) {
      const t = texture(scrubbed, f)!;
      expect(sum(t.now)).toBeCloseTo(1, 9);
      expect(sum(t.after)).toBeCloseTo(1, 9);
      expect(mean(t.after)).toBeLessThanOrEqual(mean(t.now));
    }
  });
  it("scrubbed viscose stays rough where wool can be set again", () => {
    expect(mean(texture(scrubbed, "viscose")!.after)).toBeGreaterThan(2 * mean(texture(scrubbed, "wool")!.after));
  });
});

describe("judgeOdour", () => {
  const odour = (answers: Record<string, Finding["value"]>, chance: Record<string, number>) => judgeOdour(told(answers), (m) => chance[m] ?? 0);
  it("says nothing where nothing smells", () => expect(odour({ changes: ["faded"] }, { fading: 0.9 })).toBeNull());
  it("old urine comes back more often than not (common practice, no published source)", () => {
    const o = odour({ changes: ["smell"] }, { "urine-old": 0.95 })!;
    expect(o.now).toBe(1);
    expect(o.returns).toBeGreaterThan(0.5);
  });
  it("a smell that nothing explains has a chance of its own", () => expect(odour({ changes: ["smell"] }, {})!.returns).toBeCloseTo(0.3, 12));
  it("stays a chance, whatever the causes, and never falls as one grows likelier where none was told", () => fc.assert(fc.property(
    fc.double({ min: 0.3, max: 0.9, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (urine, mould) => {
      const [less, more] = [odour({}, { "urine-old": urine, mould })!, odour({}, { "urine-old": urine + 0.05, mould })!];
      for (const o of [less, more]) expect(o.returns >= 0 && o.returns <= o.now && o.now <= 1).toBe(true);
      expect(more.returns).toBeGreaterThan(less.returns);
    })));
});
