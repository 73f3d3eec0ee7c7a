import { describe, expect, it } from "vitest";
import { compositionFromWeighings, type WeighingsInput } from "../../../lib/triage/quantitative";
import { roundedToHundred } from "../../../lib/triage/quantitative-formulae";

const silkInWool: WeighingsInput = { scheme: "binary", fibres: ["silk", "wool-carded"], weighings: [{ method: 11, specimenMassG: 1, residueMassG: 0.6 }] };
const weighing = (change: Partial<WeighingsInput["weighings"][number]>): WeighingsInput => ({ ...silkInWool, weighings: [{ ...silkInWool.weighings[0]!, ...change }] });
const saidOf = (input: WeighingsInput) => { const c = compositionFromWeighings(input); return c.ok ? null : c.say; };

describe("compositionFromWeighings", () => {
  it("gives silk in wool by method 11: the residue times .985 is wool, the rest silk", () => {
    expect(compositionFromWeighings(silkInWool)).toEqual({ ok: true, percents: [{ fibre: "silk", dry: 40.9, withAllowances: 39.6 }, { fibre: "wool-carded", dry: 59.1, withAllowances: 60.4 }] });
  });

  it("takes a residue as heavy as the specimen and refuses a heavier one", () => {
    expect(saidOf(weighing({ residueMassG: 1 }))).toBeNull();
    expect(saidOf(weighing({ residueMassG: 1.0001 }))).toBe("The residue cannot weigh more than the specimen.");
  });

  it.each([[-0.1], [Number.NaN], [Number.POSITIVE_INFINITY]])("refuses a residue of %s g", (residueMassG) => {
    expect(saidOf(weighing({ residueMassG }))).toBe("A mass is a number of grams, not below zero.");
  });

  it("refuses a specimen that weighs nothing", () => {
    expect(saidOf(weighing({ specimenMassG: 0, residueMassG: 0 }))).toBe("The specimen must weigh something.");
  });

  it("refuses a reagent that does not dissolve the fibre named, and names both", () => {
    expect(saidOf({ ...silkInWool, fibres: ["wool-carded", "silk"] })).toBe("Method 11 (sulphuric acid, at room temperature) is not one that dissolves wool, carded or not known.");
  });

  it("refuses a reagent that would take the fibre that should stay", () => {
    expect(saidOf(weighing({ method: 2 }))).toBe("Method 2 (alkaline hypochlorite) is not one for mixtures where wool, carded or not known stays.");
  });

  it("refuses unknown fibres and methods, the same fibre twice, and too few weighings", () => {
    expect(saidOf({ ...silkInWool, fibres: ["silk", "steel"] })).toBe("One of the fibres is not in the table of allowances.");
    expect(saidOf(weighing({ method: 99 }))).toBe("One of the methods is not in the table of methods.");
    expect(saidOf({ ...silkInWool, fibres: ["silk", "silk"] })).toBe("This analysis needs 2 different fibres.");
    expect(saidOf({ ...silkInWool, weighings: [] })).toBe("This analysis needs one weighing.");
  });

  it("refuses a second residue heavier than the first where both are of one specimen", () => {
    const steps = (first: number, second: number): WeighingsInput => ({ scheme: "ternary-4", fibres: ["wool-carded", "viscose", "cotton"], weighings: [{ method: 2, specimenMassG: 1, residueMassG: first }, { method: 3, specimenMassG: 1, residueMassG: second }] });
    expect(saidOf(steps(0.6, 0.7))).toBe("The second residue cannot weigh more than the first.");
    expect(saidOf(steps(0.7, 0.3))).toBeNull();
  });

  it("refuses masses that give a share no mixture can have", () => {
    const twoSpecimens = { scheme: "ternary-1", fibres: ["wool-carded", "polyamide", "cotton"], weighings: [{ method: 2, specimenMassG: 1, residueMassG: 0.1 }, { method: 4, specimenMassG: 1, residueMassG: 0.2 }] } as const;
    expect(saidOf(twoSpecimens)).toMatch(/^These masses give -\d+\.\d per cent of cotton, which cannot be\./);
  });

  it("takes a measured loss of pre-treatment in place of the usual one, and refuses one of 100 per cent", () => {
    const cotton: WeighingsInput = { scheme: "binary", fibres: ["wool-carded", "cotton-unbleached"], weighings: [{ method: 2, specimenMassG: 1, residueMassG: 0.5 }] };
    const allowed = (lossesPercent: Record<string, number>) => { const c = compositionFromWeighings({ ...cotton, lossesPercent }); return c.ok ? c.percents[1]?.withAllowances : undefined; };
    expect(allowed({})).toBeCloseTo((100 * 51.5 * 1.125) / (51.5 * 1.125 + 48.5 * 1.17), 1);
    expect(allowed({ "cotton-unbleached": 0 })).toBeCloseTo((100 * 51.5 * 1.085) / (51.5 * 1.085 + 48.5 * 1.17), 1);
    expect(saidOf({ ...cotton, lossesPercent: { "cotton-unbleached": 100 } })).toBe("A loss in pre-treatment is a number of per cent from 0 to under 100.");
  });

  it("refuses a factor that is no correction", () => {
    expect(saidOf(weighing({ ownFactors: { "wool-carded": 3 } }))).toBe("A correction factor is a number near 1.");
  });
});

describe("roundedToHundred", () => {
  it("leaves tenths that already add up alone", () => expect(roundedToHundred([10.3, 50, 39.7])).toEqual([10.3, 50, 39.7]));
  it("adds up to 100 for three equal thirds", () => expect(roundedToHundred([100 / 3, 100 / 3, 100 / 3])).toEqual([33.4, 33.3, 33.3]));
});
