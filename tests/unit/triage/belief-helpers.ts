import fc from "fast-check";
import { LIKELIHOODS } from "../../../lib/trade/likelihoods";
import { CURRENCIES, QUESTIONS, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../../../lib/trade/questions";
import type { TriageSettings } from "../../../lib/triage/assessment";
import { believe, type Belief } from "../../../lib/triage/belief";
import type { Finding, Strength } from "../../../lib/triage/finding";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";

export const AS_OF = "2026-01-15T09:00:00Z";
export const SETTINGS: TriageSettings = {
  currency: "GBP", priors: null, channel: "web", reason: null, wetNow: null,
  prices: { cleanPerM2: 30, cleanMinimum: 60, bindingPerM: 20 }, losses: null, seed: 1,
};
export const told = (what: string, value: Finding["value"], strength: Strength = "told"): Finding => ({ what, value, strength, from: "client" });
export const believeAnswers = (rug: RugAnswers, settings: Partial<TriageSettings> = {}, enquiry: EnquiryAnswers = {}): Belief =>
  believe(findingsFromAnswers(rug, enquiry), { ...SETTINGS, ...settings }, AS_OF);

const answersOf = (q: QuestionId) => [...Object.keys(QUESTIONS[q].answers), "unsure"];
const anyAnswer = (q: QuestionId) => fc.constantFrom(...answersOf(q));
const LABEL_TEXTS = ["100% viscose", "100% silk", "80% wool 20% polyamide", "art silk", "100% kapok", "ქართული ენა", "silk touch", ""];

/** Any answers somebody could give about one rug, contradictory ones included. */
export const anyRug: fc.Arbitrary<RugAnswers> = fc.record({
  ...Object.fromEntries((Object.keys(QUESTIONS) as QuestionId[]).filter((q) => QUESTIONS[q].of === "rug")
    .map((q) => [q, QUESTIONS[q].kind === "one" ? anyAnswer(q) : fc.array(anyAnswer(q), { maxLength: 5 })])),
  labelText: fc.oneof(fc.constantFrom(...LABEL_TEXTS), fc.string({ unit: "grapheme" })),
  price: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1e7, noNaN: true })),
  currency: fc.constantFrom(...CURRENCIES),
  boughtYear: fc.integer({ min: 1850, max: 9999 }),
  widthCm: fc.double({ min: 20, max: 2000, noNaN: true }),
  lengthCm: fc.double({ min: 20, max: 2000, noNaN: true }),
}, { requiredKeys: [] }) as fc.Arbitrary<RugAnswers>;

const STRENGTHS: readonly Strength[] = ["told", "photo", "label-typed", "label-photo", "bench", "laboratory"];
/** Any finding on the fibre, of any strength, with a fair share of nonsense values. */
export const anyFinding: fc.Arbitrary<Finding> = fc.oneof(
  fc.constantFrom(...LIKELIHOODS.filter((t) => t.what !== "label" && t.what !== "changes")).chain((t) => fc.record({
    what: fc.constant(t.what), value: fc.oneof(fc.constantFrom(...t.answers), fc.constantFrom("nonsense", 7, true)) as fc.Arbitrary<Finding["value"]>,
    strength: fc.constantFrom(...STRENGTHS), from: fc.constantFrom("client", "staff", "photo:1"),
  })),
  fc.record({
    what: fc.constant("price-per-m2"), strength: fc.constantFrom(...STRENGTHS), from: fc.constant("client"),
    value: fc.record({ amount: fc.double(), currency: fc.constantFrom("GBP", "EUR", "XTS", null), year: fc.constantFrom(1900, 2015, 3020, null), place: fc.constantFrom("bazaar", "online", null) }),
  }),
);
