import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CAPS, SILK_CEILING } from "../../../lib/trade/evidence-caps";
import { CURRENCIES, QUESTIONS, type RugAnswers } from "../../../lib/trade/questions";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { PRIORS } from "../../../lib/trade/priors";
import { believe } from "../../../lib/triage/belief";
import { NAMED } from "../../../lib/triage/classes";
import { collectEvidence } from "../../../lib/triage/evidence";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { AS_OF, SETTINGS, anyFinding, anyRug, believeAnswers, told } from "./belief-helpers";

/** Each run works out an interval of some hundred draws, mostly from tables drawn before. */
const RUNS = { numRuns: 150 };
const sum = (p: Record<FibreId, number>) => FIBRE_IDS.reduce((s, f) => s + p[f], 0);
const lead = (b: { fibres: { fibre: FibreId }[] }) => b.fibres[0]?.fibre;

describe("believe, cases a workshop knows", () => {
  it("with nothing known, is the prior, with a wide interval", () => {
    const belief = believeAnswers({});
    for (const f of FIBRE_IDS) expect(belief.probabilities[f]).toBeCloseTo(PRIORS[f], 12);
    const viscose = belief.fibres.find((f) => f.fibre === "viscose");
    expect((viscose?.high ?? 0) - (viscose?.low ?? 1)).toBeGreaterThan(0.2);
    expect(belief.findings).toEqual([]);
    expect(belief.balance.findings).toBe(0);
    expect(belief.balance.damping).toBeCloseTo(0, 9);
  });
  it("takes a label that says viscose against a seller who said silk, and names the conflict", () => {
    const belief = believeAnswers({ labelText: "100% viscose", sellerSaid: "silk" });
    expect(belief.probabilities.viscose).toBeGreaterThanOrEqual(0.93);
    expect(belief.probabilities.silk).toBeLessThan(0.01);
    expect(belief.conflicts.map((c) => c.between)).toEqual([["label", "sellerSaid"]]);
    expect(belief.conflicts[0]?.client).toContain("the label says 100 % viscose, but the seller called it “Silk”");
  });
  it("calls no seller to witness for a gift, neither in a finding nor in a conflict", () => {
    const { conflicts, findings } = believeAnswers({ labelText: "100% viscose", sellerSaid: "silk", boughtWhere: "gift" });
    expect(conflicts[0]?.staff).toBe("These do not agree: the label says 100 % viscose; it was passed on as “Silk”.");
    expect(findings.filter((f) => /seller called/u.test(f.staff + f.client))).toEqual([]);
  });
  it("leads with viscose for art silk, two-tone, cool and slippery, 250 pounds a square metre, and stays unsure", () => {
    const belief = believeAnswers({ sellerSaid: "art-silk", shine: "two-tone", touch: "cool-slippery", price: 1500, currency: "GBP", widthCm: 200, lengthCm: 300, boughtYear: 2022 });
    expect(lead(belief)).toBe("viscose");
    expect(belief.probabilities.viscose).toBeGreaterThan(0.6);
    expect(belief.probabilities.viscose).toBeLessThan(0.85);
  });
  it("leads with wool for a rug shop, no shine and a springy pile", () => {
    const belief = believeAnswers({ boughtWhere: "specialist", shine: "none", touch: "springy" });
    expect(lead(belief)).toBe("wool");
    expect(belief.probabilities.wool).toBeGreaterThan(0.6);
  });
  it("hardly believes silk at 40 euros a square metre", () => {
    const belief = believeAnswers({ sellerSaid: "silk", price: 240, currency: "EUR", widthCm: 200, lengthCm: 300, boughtYear: 2022 });
    expect(belief.probabilities.silk).toBeLessThan(0.03);
    expect(belief.conflicts.map((c) => c.between)).toContainEqual(["sellerSaid", "price-per-m2"]);
  });
  it("believes a label that says silk much less than one that says viscose", () => {
    const silk = believeAnswers({ labelText: "100% silk" }).probabilities.silk;
    expect(silk).toBeGreaterThan(0.6);
    expect(silk).toBeLessThan(SILK_CEILING);
    expect(believeAnswers({ labelText: "100% viscose" }).probabilities.viscose - silk).toBeGreaterThan(0.1);
  });
  it("stops at .85 for silk however much speaks for it, until a bench test agrees", () => {
    const all = { sellerSaid: "silk", shine: "two-tone", touch: "warm-fine", footprints: "brush", back: "knots", fringe: "part-of-rug", age: "25-80", labelText: "100% silk" } as const;
    expect(believeAnswers(all).probabilities.silk).toBeLessThanOrEqual(SILK_CEILING);
    expect(believeAnswers(all).probabilities.silk).toBeGreaterThan(0.84);
    const bench = believe([...findingsFromAnswers(all, {}), told("touch", "warm-fine", "bench")], SETTINGS, AS_OF);
    expect(bench.probabilities.silk).toBeGreaterThan(SILK_CEILING);
  });
  it("takes stiffening after a spill for viscose, and stiffening of a dry rug for nothing", () => {
    const dry = believeAnswers({ changes: ["stiff"], incidents: ["sun"] });
    expect(dry.probabilities.viscose).toBeCloseTo(PRIORS.viscose, 12);
    expect(believeAnswers({ changes: ["stiff"], incidents: ["spill"] }).probabilities.viscose).toBeGreaterThan(PRIORS.viscose + 0.1);
  });
  it("takes an old rug for anything but viscose", () => {
    expect(believeAnswers({ age: "25-80" }).probabilities.viscose).toBeLessThan(PRIORS.viscose / 2);
  });
  it("thinks of a fibre outside the classes where the label names one", () => {
    expect(lead(believeAnswers({ labelText: "100% kapok" }))).toBe("other");
  });
  it("turns to the unclear where everything contradicts everything", () => {
    const odd = believeAnswers({ touch: "coarse", shine: "satin", back: "knots", sellerSaid: "silk" });
    expect(odd.probabilities.other).toBeGreaterThan(PRIORS.other);
  });
});

describe("believe, the caps", () => {
  const wool = { sellerSaid: "wool", shine: "none", touch: "springy", footprints: "none", back: "knots", fringe: "part-of-rug", age: "10-25" } as const;
  it("stops at .90 with words alone", () => {
    expect(believeAnswers(wool).probabilities.wool).toBeGreaterThan(0.89);
    expect(believeAnswers(wool).probabilities.wool).toBeLessThanOrEqual(CAPS.told);
  });
  it("reaches .95 with a label typed by the client and .98 with one seen in a photo, not more", () => {
    expect(believeAnswers({ ...wool, labelText: "100% wool" }).probabilities.wool).toBeCloseTo(CAPS["label-typed"], 6);
    const photo = believe([...findingsFromAnswers(wool, {}), told("label", { says: "wool", text: "100% wool" }, "label-photo")], SETTINGS, AS_OF);
    expect(photo.probabilities.wool).toBeGreaterThan(CAPS["label-typed"]);
    expect(photo.probabilities.wool).toBeLessThanOrEqual(CAPS["label-photo"]);
  });
  it("does not let a label lift the cap of a fibre it speaks against", () => {
    expect(believeAnswers({ ...wool, labelText: "100% silk" }).probabilities.wool).toBeLessThanOrEqual(CAPS.told);
  });
  it("holds for any findings and any priors of the workshop", () => {
    fc.assert(fc.property(fc.array(anyFinding.filter((f) => f.strength === "told" || f.strength === "photo"), { maxLength: 10 }), fc.constantFrom(...FIBRE_IDS), (findings, favourite) => {
      const { fibres } = believe(findings, { ...SETTINGS, priors: { [favourite]: 5 } }, AS_OF);
      for (const f of fibres) {
        expect(f.high).toBeLessThanOrEqual(CAPS.told);
        if (f.fibre === "silk") expect(f.high).toBeLessThanOrEqual(SILK_CEILING);
      }
    }), RUNS);
  });
});

describe("believe, for any findings", () => {
  const some = fc.array(anyFinding, { maxLength: 8 });
  it("sums to 1, gives no NaN, orders by probability, and keeps each point inside its interval", () => {
    fc.assert(fc.property(some, (findings) => {
      const { fibres, probabilities } = believe(findings, SETTINGS, AS_OF);
      expect(sum(probabilities)).toBeCloseTo(1, 9);
      fibres.forEach((f, i) => {
        expect(f.low).toBeGreaterThanOrEqual(0);
        expect(f.low).toBeLessThanOrEqual(f.probability);
        expect(f.probability).toBeLessThanOrEqual(f.high);
        expect(f.high).toBeLessThanOrEqual(1);
        if (i > 0) expect(f.probability).toBeLessThanOrEqual(fibres[i - 1]?.probability ?? 0);
      });
    }), RUNS);
  });
  it("does not care about order, or about a finding given twice", () => {
    fc.assert(fc.property(some.chain((f) => fc.tuple(fc.constant(f), fc.shuffledSubarray(f, { minLength: f.length }))), ([findings, shuffled]) => {
      const one = believe(findings, SETTINGS, AS_OF);
      const two = believe([...shuffled, ...findings.slice(0, 3)], SETTINGS, AS_OF);
      expect({ ...two, hypothetical: null, answerDistribution: null }).toEqual({ ...one, hypothetical: null, answerDistribution: null });
    }), RUNS);
  });
  it("adds up: prior + findings + damping + cap = total, and the findings' decibans make the sum of findings", () => {
    fc.assert(fc.property(some, (findings) => {
      const { balance, findings: weighed, probabilities } = believe(findings, SETTINGS, AS_OF);
      expect(balance.prior + balance.findings + balance.damping + balance.cap).toBeCloseTo(balance.total, 9);
      expect(weighed.reduce((s, f) => s + f.decibans, 0)).toBeCloseTo(balance.findings, 9);
      expect(balance.total).toBeCloseTo(10 * Math.log10(probabilities[balance.leading] / probabilities[balance.rival]), 9);
      expect(balance.rival).not.toBe("other");
      expect(balance.rival).not.toBe(balance.leading);
    }), RUNS);
  });
  it("shows what the cap holds back as a bar of its own, and none where no cap is reached", () => {
    const held = believeAnswers({ sellerSaid: "wool", shine: "none", touch: "springy", footprints: "none", back: "knots", fringe: "part-of-rug", labelText: "100% wool" }).balance;
    expect(held.cap).toBeLessThan(-3);
    expect(held.prior + held.findings + held.damping + held.cap).toBeCloseTo(held.total, 9);
    expect(believeAnswers({ shine: "two-tone" }).balance.cap).toBe(0);
  });
  it("gives the same interval for the same seed, another for another seed", () => {
    const findings = [told("shine", "two-tone")];
    const low = (seed: number) => believe(findings, { ...SETTINGS, seed }, AS_OF).fibres[0]?.low;
    expect(low(5)).toBe(low(5));
    expect(low(6)).not.toBe(low(5));
  });
});

describe("believe, for any answers", () => {
  it("never breaks, whatever is told, and every finding has two sentences", () => {
    fc.assert(fc.property(anyRug, (rug) => {
      const belief = believeAnswers(rug);
      expect(sum(belief.probabilities)).toBeCloseTo(1, 9);
      expect(belief.findings).toHaveLength(findingsFromAnswers(rug, {}).length);
      for (const f of belief.findings) {
        expect(Number.isFinite(f.decibans)).toBe(true);
        for (const text of [f.staff, f.client]) expect(text).toMatch(/^[\s\S]+[.?!”]$/u);
      }
    }), RUNS);
  });
  it.each([
    ["the year 3020", { price: 900, currency: "GBP", boughtYear: 3020, widthCm: 200, lengthCm: 300 }],
    ["a price of 0", { price: 0, currency: "GBP", boughtYear: 2020, widthCm: 200, lengthCm: 300 }],
    ["a price of 10 million", { price: 1e7, currency: "USD", boughtYear: 2020, widthCm: 20, lengthCm: 20 }],
    ["a price of a penny", { price: 0.01, currency: "EUR", boughtYear: 2020, widthCm: 2000, lengthCm: 2000 }],
    ["a label of 40,000 characters", { labelText: "100% wełna / wool ".repeat(2223) }],
    ["Georgian script", { labelText: "100% მატყლი, ბამბა" }],
  ] as const)("stands %s", (_, rug) => {
    const { probabilities } = believeAnswers(rug);
    expect(sum(probabilities)).toBeCloseTo(1, 9);
    expect(Object.values(probabilities).every((p) => p > 0 && p < 1)).toBe(true);
  });
  it("does not weigh a price of the year 3020, and says so", () => {
    const of = (rug: RugAnswers) => believeAnswers({ sellerSaid: "silk", widthCm: 200, lengthCm: 300, ...rug });
    const price = { price: 90, currency: "GBP" } as const;
    expect(of({ ...price, boughtYear: 3020 }).probabilities).toEqual(of({}).probabilities);
    expect(of({ ...price, boughtYear: 2025 }).probabilities).not.toEqual(of({}).probabilities);
    expect(of({ ...price, boughtYear: 3020 }).findings.find((f) => f.what === "price-per-m2")?.staff).toContain("has not come yet");
  });
});

describe("believe, the price", () => {
  const odds = (p: Record<FibreId, number>) => 10 * Math.log10(p.silk / p.viscose);
  it("never raises silk over viscose by more than 3 dB, nor lowers it by more than 15, at any price, year, currency or place", () => {
    const again = believe([], SETTINGS, AS_OF).hypothetical;
    const before = odds(again([]));
    fc.assert(fc.property(fc.double({ min: 0.01, max: 1e7, noNaN: true }), fc.constantFrom(...CURRENCIES), fc.integer({ min: 2000, max: 2025 }), fc.constantFrom("bazaar", "online", "auction", null), (amount, currency, year, place) => {
      const change = odds(again([told("price-per-m2", { amount, currency, year, place })])) - before;
      expect(change).toBeLessThanOrEqual(3 + 1e-9);
      expect(change).toBeGreaterThanOrEqual(-15 - 1e-9);
    }), { numRuns: 1000 });
  });
  it("weighs no more than that with any construction seen", () => {
    const at = (name: string) => NAMED.findIndex((f) => f === name);
    fc.assert(fc.property(fc.double({ min: 0.01, max: 1e7, noNaN: true }), fc.constantFrom(...Object.keys(QUESTIONS.back.answers)), fc.constantFrom("gift", "specialist", null), (amount, back, place) => {
      const price = collectEvidence([told("price-per-m2", { amount, currency: "GBP", year: null, place }), told("back", back)], { currency: "GBP", year: 2026 }).find((i) => i.what === "price-per-m2");
      const weight = (10 / Math.LN10) * ((price?.logs[at("silk")] as number) - (price?.logs[at("viscose")] as number));
      expect(weight).toBeLessThanOrEqual(3 + 1e-9);
      expect(weight).toBeGreaterThanOrEqual(-15 - 1e-9);
    }), { numRuns: 1000 });
  });
  it("counts for nothing before the year 2000", () => {
    expect(believeAnswers({ price: 50, currency: "GBP", boughtYear: 1999, widthCm: 100, lengthCm: 100 }).probabilities.silk).toBeCloseTo(PRIORS.silk, 12);
  });
});

describe("hypothetical and answerDistribution", () => {
  it("is what would be believed if it were found", () => {
    const extra = told("touch", "plastic");
    const now = [told("shine", "satin"), told("back", "machine")];
    expect(believe(now, SETTINGS, AS_OF).hypothetical([extra])).toEqual(believe([...now, extra], SETTINGS, AS_OF).probabilities);
  });
  it.each(["shine", "touch", "footprints", "back", "fringe", "fringeKind", "sellerSaid", "boughtWhere", "age", "label", "price-per-m2"])("foretells the answers to %s, each usable as a finding", (what) => {
    const belief = believeAnswers({ sellerSaid: "silk" });
    const answers = belief.answerDistribution(what);
    expect(answers.length).toBeGreaterThan(2);
    expect(answers.reduce((s, a) => s + a.probability, 0)).toBeCloseTo(1, 9);
    const moved = answers.some((a) => Math.abs(belief.hypothetical([a.finding]).viscose - belief.probabilities.viscose) > 0.001);
    expect(moved).toBe(true);
  });
  it("has none for what says nothing on the fibre", () => {
    for (const what of ["incidents", "changes", "matters", "nonsense"]) expect(believeAnswers({}).answerDistribution(what)).toEqual([]);
  });
  it("expects a two-tone shine more of what looks like viscose than of what looks like wool", () => {
    const chance = (rug: Parameters<typeof believeAnswers>[0]) => believeAnswers(rug).answerDistribution("shine").find((a) => a.finding.value === "two-tone")?.probability ?? 0;
    expect(chance({ touch: "cool-slippery" })).toBeGreaterThan(chance({ touch: "springy" }));
  });
});
