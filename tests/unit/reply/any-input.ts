import fc from "fast-check";
import { OFFERED } from "../../../lib/reply/paragraphs/troubles";
import type { DraftInput } from "../../../lib/reply/pieces";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import { CURRENCIES, PHOTO_KINDS, QUESTIONS, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../../../lib/trade/questions";
import type { ActionId, Assessment, MechanismId, MethodId, Verdict } from "../../../lib/triage/assessment";
import type { Strength } from "../../../lib/triage/finding";
import { wordsForChance } from "../../../lib/triage/words";
import { assessmentOf, FIRST_AID_SAID, WORKSHOP } from "./make";

const MECHANISMS: MechanismId[] = ["browning-cleaning", "browning-use", "water-mark", "pile-distortion", "bleaching", "dye-bleed", "urine-fresh", "urine-old", "food-fresh", "food-old", "matting", "fading", "insects", "mould", "backing-failure", "shrinkage", "soil-only"];
const METHODS: MethodId[] = ["dusting", "immersion-wash", "wet-hand-clean", "low-moisture", "solvent-dry", "at-home"];
/** Water is ruled out by hand wherever it is in a bath, and nowhere else: the judgement of methods keeps to that. */
const alike = (verdicts: Record<MethodId, Verdict>): Record<MethodId, Verdict> => {
  const [bath, byHand] = [verdicts["immersion-wash"], verdicts["wet-hand-clean"]];
  return { ...verdicts, "wet-hand-clean": bath === "ruled-out" ? bath : byHand === "ruled-out" ? "needs-testing-first" : byHand };
};
const ACTIONS: ActionId[] = ["leave-alone", "routine-clean", "first-aid", "ask-for-more", "inspect-and-test", "quote-with-limits", "advise-cut-down", "advise-claim-or-replacement", "refer", "not-our-work"];
const STRENGTHS: Strength[] = ["told", "label-typed", "photo", "label-photo", "bench", "laboratory"];

const anyRange = (max: number) => fc.tuple(fc.double({ min: 0, max, noNaN: true }), fc.double({ min: 0, max, noNaN: true }))
  .map(([a, b]) => ({ low: Math.min(a, b), median: (a + b) / 2, high: Math.max(a, b) }));
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const answer = (q: QuestionId) => fc.option(fc.constantFrom(...Object.keys(QUESTIONS[q].answers), "unsure"), { nil: undefined });
const answers = (q: QuestionId) => fc.option(fc.uniqueArray(fc.constantFrom(...Object.keys(QUESTIONS[q].answers), "unsure"), { maxLength: 4 }), { nil: undefined });

const nextQuestion = fc.oneof(
  fc.constantFrom(...(Object.keys(PHOTO_KINDS) as (keyof typeof PHOTO_KINDS)[])).map((id) => ({ id, kind: "photo" as const, ask: PHOTO_KINDS[id].ask, why: "" })),
  fc.constantFrom(...(Object.keys(QUESTIONS) as QuestionId[])).map((id) => ({ id, kind: "question" as const, ask: QUESTIONS[id].ask as string, why: "" })),
  fc.constant({ id: "microscope", kind: "bench-test" as const, ask: "A fibre under the microscope", why: "" }),
);

const chance = fc.double({ min: 0, max: 1, noNaN: true });
const money = fc.record({ currency: fc.constantFrom(...CURRENCIES), clean: maybe(anyRange(900)), cutDown: maybe(anyRange(900)), replace: maybe(anyRange(9000)), valueToday: maybe(anyRange(9000)) });

const rest = fc.record({
  improvement: maybe(anyRange(100)), worse: maybe(chance), beyondRepair: maybe(chance), lifeYears: maybe(anyRange(60)),
  advice: fc.record({ action: fc.constantFrom(...ACTIONS), why: fc.constant(""), referTo: maybe(fc.constantFrom("a conservator", "a valuer", "pest control")), losses: fc.constant<Assessment["advice"]["losses"]>([]) }),
  urgency: fc.record({ level: fc.constantFrom("hours" as const, "two-days" as const, "a-week" as const, "can-wait" as const), why: fc.constant("") }),
  firstAid: maybe(fc.constant(FIRST_AID_SAID)), nextQuestions: fc.uniqueArray(nextQuestion, { maxLength: 5, selector: (q) => `${q.kind}:${q.id}` }), money: maybe(money),
});

const anyAssessment: fc.Arbitrary<Assessment> = fc.record({
  weights: fc.array(fc.double({ min: 0.0001, max: 1, noNaN: true }), { minLength: FIBRE_IDS.length, maxLength: FIBRE_IDS.length }),
  evidence: fc.array(fc.record({ what: fc.constantFrom("label", "touch", "sellerSaid"), value: fc.constant("x"), strength: fc.constantFrom(...STRENGTHS), decibans: fc.constantFrom(0, 3, -2) }), { maxLength: 4 }),
  mechanisms: fc.dictionary(fc.constantFrom(...MECHANISMS), chance, { maxKeys: 4 }),
  verdicts: fc.array(fc.constantFrom<Verdict>("ruled-out", "needs-testing-first", "suitable"), { minLength: METHODS.length, maxLength: METHODS.length }),
  rest,
}).map(({ weights, evidence, mechanisms, verdicts, rest }) => {
  const sum = weights.reduce((a, b) => a + b ** 6, 0);
  const fibres = Object.fromEntries(FIBRE_IDS.map((f, at) => [f, (weights[at] as number) ** 6 / sum]));
  const top = Math.max(...Object.values(fibres));
  return assessmentOf({
    fibres, words: wordsForChance({ probability: top, low: top * 0.95 }), evidence, mechanisms,
    methods: alike(Object.fromEntries(METHODS.map((m, at) => [m, verdicts[at]])) as Record<MethodId, Verdict>), rest,
  });
});

const anyAnswers = fc.record({
  sellerSaid: answer("sellerSaid"), age: answer("age"), incidents: answers("incidents"), changes: answers("changes"), matters: answers("matters"),
  labelText: fc.option(fc.string({ maxLength: 60 }), { nil: undefined }),
}) as fc.Arbitrary<RugAnswers>;

/** Any input a draft may be asked for: up to three rugs, any belief, any trouble, any advice, with and without every range. */
export const anyInput: fc.Arbitrary<DraftInput> = fc.record({
  assessments: fc.array(fc.record({ title: fc.constantFrom("Grey, 170 × 240", "Rug, 90 × 160", "A rug"), assessment: anyAssessment, answers: anyAnswers }), { minLength: 1, maxLength: 3 }),
  client: fc.record({ name: fc.constantFrom("Ana Example", "Ivo Sample", "Ünal 🧵", " "), isTrade: fc.boolean() }),
  workshop: fc.constantFrom(WORKSHOP, { ...WORKSHOP, telephone: "", signature: "" }, { ...WORKSHOP, tone: "warm" as const }, { ...WORKSHOP, tone: "brief" as const }),
  enquiry: fc.record({ wetNow: answer("wetNow"), reason: answer("reason") }) as fc.Arbitrary<EnquiryAnswers>,
});

const anyInspection = fc.record({ by: fc.constantFrom("Ivo Castellane", "Nell Harrow"), on: fc.constantFrom("24 November 2026", "28 February 2025"), isBeyondRepair: fc.boolean() });
/** Any such input, every rug of which somebody of the workshop has inspected. */
export const seen = (any: fc.Arbitrary<DraftInput>): fc.Arbitrary<DraftInput> =>
  fc.tuple(any, fc.array(anyInspection, { minLength: 3, maxLength: 3 })).map(([input, found]) => ({ ...input, assessments: input.assessments.map((rug, at) => ({ ...rug, inspection: found[at] ?? null })) }));

const evenly = (max: number) => fc.integer({ min: 0, max });
const evenRange = (max: number) => fc.tuple(evenly(max), evenly(max)).map(([a, b]) => ({ low: Math.min(a, b), median: (a + b) / 2, high: Math.max(a, b) }));

/** What a rug has whose owner we would gladly clean for: one that is dry, and probably worth it. */
const anyHope = fc.record({ action: fc.constantFrom(...OFFERED), beyondRepair: evenly(40) });

/** Told of a smell, and of nothing else. */
const smelling = (a: Assessment): Assessment => ({ ...a, findings: [...a.findings.filter((f) => f.what !== "incidents" && f.what !== "changes"), { what: "changes", value: ["smell"], strength: "told", from: "client", decibans: 0, staff: "", client: "" }] });

/** One rug of any input, one in three of them with such a hope, whose chance of being beyond repair, range, trouble and money are drawn evenly: doubles that fast-check draws crowd at nothing. */
export const anyWorth: fc.Arbitrary<DraftInput> = fc.record({
  input: anyInput, beyondRepair: evenly(100), improvement: maybe(evenRange(100)), top: fc.constantFrom(...MECHANISMS), clean: maybe(evenRange(900)), worth: maybe(evenRange(900)), hope: fc.oneof({ weight: 2, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: anyHope }),
  story: maybe(fc.constant("Is it worth saving?")), isSmell: fc.oneof({ weight: 5, arbitrary: fc.constant(false) }, { weight: 1, arbitrary: fc.constant(true) }),
}).map(({ input, beyondRepair, improvement, top, clean, worth, hope, story, isSmell }) => {
  const [drawnRug] = input.assessments as [DraftInput["assessments"][number]];
  const rug = { ...drawnRug, answers: { ...drawnRug.answers, ...(story ? { story } : {}) }, assessment: isSmell ? smelling(drawnRug.assessment) : drawnRug.assessment };
  const money = { currency: "GBP", cutDown: null, replace: { low: 300, median: 400, high: 500 }, clean, valueToday: worth };
  const mechanisms = [{ mechanism: top, probability: 0.95 }];
  const drawn = { ...rug.assessment, beyondRepair: beyondRepair / 100, improvement, mechanisms, money };
  if (hope === null) return { ...input, assessments: [{ ...rug, assessment: drawn }] };
  const hopeful = { ...drawn, beyondRepair: hope.beyondRepair / 100, firstAid: null, advice: { ...drawn.advice, action: hope.action } };
  return { ...input, client: { ...input.client, isTrade: false }, assessments: [{ ...rug, assessment: hopeful }] };
});

const YEARS_MOST = 30;
/** The same with its years drawn evenly too, in quarters of a year. */
export const anyProspect: fc.Arbitrary<DraftInput> = fc.record({ input: anyWorth, years: maybe(evenRange(YEARS_MOST * 4)) }).map(({ input, years }) => {
  const rug = input.assessments[0]!;
  const lifeYears = years && { low: years.low / 4, median: years.median / 4, high: years.high / 4 };
  return { ...input, assessments: [{ ...rug, assessment: { ...rug.assessment, lifeYears } }] };
});
