import { describe, expect, it } from "vitest";
import { ANALYSED_FIBRES, QUANTITATIVE_METHODS, SCHEMES, type SchemeId } from "../../lib/trade/quantitative";
import { compositionFromWeighings } from "../../lib/triage/quantitative";
import { roundedToHundred, ternary1Shares, ternaryStepShares, withAllowances } from "../../lib/triage/quantitative-formulae";
import { seeded } from "./seeded";

// Worked examples: Regulation (EU) No 1007/2011 (OJ L 272, 18.10.2011), Annex VIII, chapter 3, IV. All `read`.
describe("Annex VIII, chapter 3, worked example of variant 1: wool, polyamide, unbleached cotton", () => {
  const shares = ternary1Shares({ m1: 1.6, r1: 1.4166, m2: 1.8, r2: 0.9, d1: 1.0, d2: 1.03, d3: 1.0, d4: 1.0 });
  const allowed = withAllowances([{ dry: 10.3, a: 17, b: 0 }, { dry: 50, a: 6.25, b: 0 }, { dry: 39.7, a: 8.5, b: 4 }]);

  it("gives 10.30, 50.00, 39.70 of clean dry mass within .01, as the text rounds 10.306 down", () => {
    [10.3, 50, 39.7].forEach((printed, i) => expect(Math.abs((shares[i] as number) - printed)).toBeLessThanOrEqual(0.01));
  });

  it("gives 10.97, 48.37, 40.66 with allowances, to the digits printed", () => {
    [10.97, 48.37, 40.66].forEach((printed, i) => expect(allowed[i]).toBeCloseTo(printed, 2));
  });

  it("closes the result as the printed table does: 11.0, 48.4, 40.6", () => {
    expect(roundedToHundred(allowed)).toEqual([11, 48.4, 40.6]);
  });

  it("gives the same through the one door, from methods 2 and 4 with their own factors", () => {
    const whole = compositionFromWeighings({
      scheme: "ternary-1", fibres: ["wool-carded", "polyamide", "cotton-unbleached"],
      weighings: [{ method: 2, specimenMassG: 1.6, residueMassG: 1.4166 }, { method: 4, specimenMassG: 1.8, residueMassG: 0.9 }],
    });
    if (!whole.ok) throw new Error(whole.say);
    expect(whole.percents.map((p) => p.dry)).toEqual([10.3, 50, 39.7]);
    [10.97, 48.37, 40.66].forEach((printed, i) => expect(Math.abs((whole.percents[i]?.withAllowances as number) - printed)).toBeLessThanOrEqual(0.1));
  });
});

describe("Annex VIII, chapter 3, worked example of variant 4: wool, viscose, unbleached cotton", () => {
  // The example's factors (1.00 for viscose, .96 for cotton) differ from those the methods' own texts now print (1.01, 1.02).
  const example = { scheme: "ternary-4", fibres: ["wool-carded", "viscose", "cotton-unbleached"], weighings: [
    { method: 2, specimenMassG: 1.6, residueMassG: 1.4166, ownFactors: { viscose: 1, "cotton-unbleached": 1.03 } },
    { method: 3, specimenMassG: 1.6, residueMassG: 0.663, ownFactors: { "cotton-unbleached": 0.96 } },
  ] } as const;

  it("gives 10.27, 48.71, 41.02 of clean dry mass with its d3 rounded to .99, to the digits printed", () => {
    const shares = ternaryStepShares({ m1: 1.6, r1: 1.4166, m2: 1.6, r2: 0.663, d1: 1, d2: 1.03, d3: 0.99 });
    [10.27, 48.71, 41.02].forEach((printed, i) => expect(shares[i]).toBeCloseTo(printed, 2));
  });

  it("gives 10.61, 48.62, 40.77 with allowances within .01, as the text closes 40.764 up, and rounds it to 10.6, 48.6, 40.8", () => {
    const allowed = withAllowances([{ dry: 10.27, a: 17, b: 0 }, { dry: 48.71, a: 13, b: 0 }, { dry: 41.02, a: 8.5, b: 4 }]);
    [10.61, 48.62, 40.77].forEach((printed, i) => expect(Math.abs((allowed[i] as number) - printed)).toBeLessThanOrEqual(0.01));
    expect(roundedToHundred(allowed)).toEqual([10.6, 48.6, 40.8]);
  });

  it("gives the same within .1 through the one door, with the laboratory's own factors", () => {
    const whole = compositionFromWeighings(example);
    if (!whole.ok) throw new Error(whole.say);
    [10.27, 48.71, 41.02].forEach((printed, i) => expect(Math.abs((whole.percents[i]?.dry as number) - printed)).toBeLessThanOrEqual(0.1));
    [10.61, 48.62, 40.77].forEach((printed, i) => expect(Math.abs((whole.percents[i]?.withAllowances as number) - printed)).toBeLessThanOrEqual(0.1));
  });
});

describe("tables of quantitative analysis", () => {
  it("hold the read allowances of Annex IX for the fibres of rugs", () => {
    const allowance = Object.fromEntries(ANALYSED_FIBRES.map((f) => [f.fibre, f.allowancePercent]));
    expect(allowance).toMatchObject({ "wool-carded": 17, "wool-combed": 18.25, silk: 11, cotton: 8.5, "cotton-mercerised": 10.5, viscose: 13, acetate: 9, polyamide: 6.25, "polyamide-filament": 5.75, polyester: 1.5, polypropylene: 2, acrylic: 2, jute: 17, flax: 12 });
  });

  it("hold the read factors of methods 2, 3 and 11, and never a fibre that both dissolves and stays", () => {
    const factor = (method: number, fibre: string) => QUANTITATIVE_METHODS.find((m) => m.method === method)?.residueFactor[fibre];
    expect([factor(2, "viscose"), factor(2, "cotton-unbleached"), factor(3, "cotton"), factor(11, "wool-carded")]).toEqual([1.01, 1.03, 1.02, 0.985]);
    for (const m of QUANTITATIVE_METHODS) expect(m.dissolves.filter((f) => m.residueFactor[f] !== undefined)).toEqual([]);
  });
});

/** Exact masses of a specimen of 1 g: what stays of each fibre is its share divided by its factor, one for each reagent it met. */
function weighed(shares: readonly number[], scheme: SchemeId, factors: readonly Readonly<Record<number, number>>[]): number[] {
  const { removes, oneSpecimen } = SCHEMES[scheme];
  return removes.map((_, step) => {
    const met = oneSpecimen ? removes.slice(0, step + 1).map((takes, k) => ({ takes, k })) : [{ takes: removes[step] as readonly number[], k: step }];
    return shares.reduce((sum, share, i) => (met.some(({ takes }) => takes.includes(i)) ? sum : sum + met.reduce((left, { k }) => left / (factors[k]?.[i] ?? 1), share / 100)), 0);
  });
}

describe("composition → masses → composition", () => {
  const random = seeded(1833);
  const FIBRES = ["silk", "wool-carded", "cotton"];
  for (const scheme of Object.keys(SCHEMES) as SchemeId[]) {
    it(`gives ${scheme} back within ${scheme === "ternary-1" ? ".2, as its formula drops products of corrections" : ".1, the rounding to one decimal"}`, () => {
      for (let i = 0; i < 300; i += 1) {
        const { fibres: count, removes } = SCHEMES[scheme];
        const raw = Array.from({ length: count }, () => 0.05 + random());
        const shares = raw.map((r) => (100 * r) / raw.reduce((s, x) => s + x, 0));
        const factors = removes.map((takes) => Object.fromEntries(FIBRES.slice(0, count).flatMap((_, f) => ((takes as readonly number[]).includes(f) ? [] : [[f, 0.98 + 0.05 * random()]]))));
        const residues = weighed(shares, scheme, factors);
        const fibres = FIBRES.slice(0, count);
        const weighings = residues.map((residueMassG, step) => ({ method: null, specimenMassG: 1, residueMassG, ownFactors: ownFactors(fibres, factors, step, scheme) }));
        const back = compositionFromWeighings({ scheme, fibres, weighings });
        if (!back.ok) throw new Error(back.say);
        back.percents.forEach((p, f) => expect(Math.abs(p.dry - (shares[f] as number))).toBeLessThanOrEqual(scheme === "ternary-1" ? 0.2 : 0.0999));
      }
    });
  }
});

const ownFactors = (fibres: readonly string[], factors: readonly Readonly<Record<number, number>>[], step: number, scheme: SchemeId) =>
  Object.fromEntries(Object.entries(factors[step] ?? {}).filter(([i]) => !SCHEMES[scheme].oneSpecimen || step === 0 || !(SCHEMES[scheme].removes[0] as readonly number[]).includes(Number(i))).map(([i, d]) => [fibres[Number(i)] as string, d]));
