import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { CHANNEL_SHIFTS, LARGEST_PRIOR, LEAST_OTHER, PRIORS, REASON_SHIFTS, SMALLEST_PRIOR, priorFor } from "../../../lib/trade/priors";
import { QUESTIONS } from "../../../lib/trade/questions";

const plain = { priors: null, reason: null, channel: "web" } as const;
const sum = (p: Record<FibreId, number>) => FIBRE_IDS.reduce((s, f) => s + p[f], 0);

describe("PRIORS", () => {
  it("sum to 1", () => {
    expect(sum({ ...PRIORS })).toBeCloseTo(1, 12);
  });
  it("leave the unclear at least 3 per cent", () => {
    expect(PRIORS.other).toBeGreaterThanOrEqual(LEAST_OTHER);
  });
  it("are shifted only by reasons that say nothing of the trouble, so that it is not counted twice", () => {
    expect(Object.keys(REASON_SHIFTS).sort()).toEqual(["mis-sold", "routine", "trade", "what-is-it"]);
    for (const reason of Object.keys(REASON_SHIFTS)) expect(Object.keys(QUESTIONS.reason.answers)).toContain(reason);
  });
});

describe("priorFor", () => {
  it("is the table for a plain web enquiry", () => {
    const prior = priorFor(plain);
    for (const f of FIBRE_IDS) expect(prior[f]).toBeCloseTo(PRIORS[f], 12);
  });
  it.each(["just-happened", "older-trouble", "after-cleaning", "unheard-of", "constructor"])("does not move for the reason %s", (reason) => {
    expect(priorFor({ ...plain, reason })).toEqual(priorFor(plain));
  });
  it("sees more viscose where somebody thinks it was mis-sold, and more wool in a routine clean", () => {
    expect(priorFor({ ...plain, reason: "mis-sold" }).viscose).toBeGreaterThan(PRIORS.viscose);
    expect(priorFor({ ...plain, reason: "routine" }).wool).toBeGreaterThan(PRIORS.wool);
  });
  it.each(Object.entries(REASON_SHIFTS))("is moved by every factor of the reason %s", (reason, shifts) => {
    const prior = priorFor({ ...plain, reason });
    for (const [f, factor] of Object.entries(shifts)) expect(prior[f as FibreId] / prior["cotton-viscose"]).toBeCloseTo((PRIORS[f as FibreId] * factor) / PRIORS["cotton-viscose"], 9);
  });
  it("sees older rugs by telephone", () => {
    const prior = priorFor({ ...plain, channel: "telephone" });
    for (const [f, factor] of Object.entries(CHANNEL_SHIFTS.telephone)) expect(prior[f as FibreId] / prior.viscose).toBeCloseTo((PRIORS[f as FibreId] * factor) / PRIORS.viscose, 9);
  });
  it("takes the workshop's own, keeping ours for classes it leaves out", () => {
    const prior = priorFor({ ...plain, priors: { wool: 0.5 } });
    expect(prior.wool / prior.viscose).toBeCloseTo(0.5 / PRIORS.viscose, 9);
  });
  it("lets no opinion stand for evidence: none above .8, other never under .03", () => {
    const prior = priorFor({ ...plain, priors: Object.fromEntries(FIBRE_IDS.map((f) => [f, f === "wool" ? 1 : 0])) });
    expect(prior.wool).toBeCloseTo(LARGEST_PRIOR, 9);
    expect(prior.other).toBeGreaterThanOrEqual(LEAST_OTHER - 1e-12);
  });
  it("is a distribution within its bounds for any priors, reason and channel", () => {
    const weights = fc.dictionary(fc.constantFrom(...FIBRE_IDS), fc.double({ min: -1, max: 5 }));
    fc.assert(fc.property(weights, fc.constantFrom(null, ...Object.keys(REASON_SHIFTS)), fc.constantFrom(...(Object.keys(CHANNEL_SHIFTS) as (keyof typeof CHANNEL_SHIFTS)[])), (priors, reason, channel) => {
      const prior = priorFor({ priors, reason, channel });
      expect(sum(prior)).toBeCloseTo(1, 9);
      for (const f of FIBRE_IDS) {
        expect(prior[f]).toBeGreaterThanOrEqual(SMALLEST_PRIOR - 1e-12);
        expect(prior[f]).toBeLessThanOrEqual(LARGEST_PRIOR + 1e-12);
      }
      expect(prior.other).toBeGreaterThanOrEqual(LEAST_OTHER - 1e-12);
    }));
  });
});
