import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { METHODS, WASHING, type MethodId } from "../../../lib/trade/care";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import type { Assessment, MechanismId } from "../../../lib/triage/assessment";
import { anyReason, anyRug } from "./any-answers";
import { anyInput, anyWorth } from "./any-input";
import { action, inputOf, range, WOOL_METHODS } from "./make";
import { answersOf, DEMO_CLIENTS, lettersTo, reasonOf } from "./must-say/demo-letters";
import { letterOf, plainly } from "./must-say/letter-of";

const REFUSES_WATER = /\b(?:will not wash it|would not wet it again)\b/;
/** How a letter names each way of cleaning. */
const OFFERS: readonly (readonly [MethodId, RegExp])[] = [
  ["immersion-wash", /by a full wash/], ["wet-hand-clean", /by hand with little water/], ["low-moisture", /nearly dry/], ["solvent-dry", /dry solvent/],
];
const LEAVES_IT = /(?:keep|use) it as it is/;
const isOut = (a: Assessment, id: MethodId): boolean => a.methods.some((m) => m.method === id && m.verdict === "ruled-out");

/** What somebody who reads the desk's methods beside the letter would hold against them: written from the sentences. */
const contradictions = (a: Assessment, letter: string): string[] => {
  const open = WASHING.filter((id) => !isOut(a, id)).map((id) => METHODS[id].name);
  return [
    ...(REFUSES_WATER.test(letter) && open.length > 0 ? [`the letter will not wash it, the desk leaves open: ${open.join(", ")}`] : []),
    ...(!REFUSES_WATER.test(letter) && WASHING.some((id) => isOut(a, id)) ? ["the desk rules washing out, the letter does not say so"] : []),
    ...OFFERS.filter(([id, named]) => named.test(letter) && isOut(a, id)).map(([id]) => `the letter names what the desk rules out: ${METHODS[id].name}`),
    ...(LEAVES_IT.test(letter) && isOut(a, "none") ? ["the letter says to keep it as it is, the desk that this is not suitable"] : []),
  ];
};

/** What harms people, spreads or is wet, by what was told and by the chances a letter goes by. */
const goesOn = (a: Assessment, { incidents, changes }: RugAnswers, { wetNow }: EnquiryAnswers): boolean =>
  wetNow === "wet" || wetNow === "damp" || incidents?.includes("flood") === true || changes?.includes("spots") === true
  || a.mechanisms.some((m) => (m.mechanism === "mould" || m.mechanism === "insects") && m.probability >= 0.33);

describe("the methods at the desk and the letter", () => {
  it.each([["any", anyInput], ["evenly drawn", anyWorth]] as const)("say the same of water, and of leaving it as it is, over %s made-up assessments of one rug", (_, any) => {
    const seen = { refused: 0, open: 0, named: 0 };
    fc.assert(fc.property(any, (input) => {
      const [rug] = input.assessments;
      if (!rug) return;
      const letter = plainly(composeDraft({ ...input, assessments: [rug] }).text);
      seen[REFUSES_WATER.test(letter) ? "refused" : "open"] += 1;
      seen.named += Number(OFFERS.some(([, named]) => named.test(letter)));
      expect(contradictions(rug.assessment, letter)).toEqual([]);
    }), { numRuns: 1000 });
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
  }, 120_000);

  it("say so of whatever an owner answers, and leave nothing as it is that harms, spreads or is wet", () => {
    const seen = { refused: 0, goesOn: 0, left: 0 };
    fc.assert(fc.property(anyRug, anyReason, (answers, enquiry) => {
      const { rugs, draft } = letterOf({ answers, enquiry });
      const a = rugs[0]!.assessment, letter = plainly(draft.text);
      const isLeft = !isOut(a, "none");
      seen.refused += Number(REFUSES_WATER.test(letter));
      seen[isLeft ? "left" : "goesOn"] += 1;
      expect(contradictions(a, letter)).toEqual([]);
      expect(isLeft).toBe(!goesOn(a, answers, enquiry));
    }), { numRuns: 300 });
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
  }, 120_000);

  it.each(DEMO_CLIENTS)("say the same to %s", (client) => {
    for (const { letter: { draft, rugs } } of lettersTo(client)) {
      rugs.forEach(({ assessment }, at) => expect(isOut(assessment, "none"), client).toBe(goesOn(assessment, answersOf(client)[at]!, reasonOf(client))));
      if (rugs.length === 1) expect(contradictions(rugs[0]!.assessment, plainly(draft.text))).toEqual([]);
    }
  });
});

describe("the ways of cleaning that a letter names", () => {
  const careOf = (wetNow: EnquiryAnswers["wetNow"], rest: Partial<Assessment>, mechanism: MechanismId = "food-old") =>
    /[^.\n]*(?:full wash|nearly dry)[^.]*\./.exec(composeDraft(inputOf({ enquiry: { wetNow }, sketch: { fibres: { wool: 0.93 }, evidence: [{ what: "label", value: "wool", strength: "label-typed" }], methods: WOOL_METHODS, mechanisms: { [mechanism]: 0.9 }, rest: { improvement: range(30, 60, 80), ...rest } } })).text)?.[0].trim();
  const little = { improvement: range(1, 3, 8) };
  it.each<[string, Partial<Assessment>, MechanismId?]>([
    ["it is offered", { advice: action("quote-with-limits") }],
    ["it comes after first aid", { advice: action("first-aid") }],
    ["it would rather be left", { advice: action("advise-claim-or-replacement") }], ["somebody else sees it first", { advice: action("refer") }],
    ["it is a matter for repair", { advice: action("quote-with-limits"), improvement: null }, "backing-failure"],
    ["it is likely not worth its cost", { advice: action("quote-with-limits"), beyondRepair: 0.7 }], ["little comes back", { advice: action("quote-with-limits"), ...little }],
    ["it can wait", { advice: action("leave-alone") }], ["more is asked for", { advice: action("ask-for-more") }],
  ])("wait until a wet or damp rug is dry where %s, and are the same ways as of a dry one", (_, rest, mechanism) => {
    const dry = careOf("no", rest, mechanism);
    expect(dry).toMatch(/ nearly dry or by a full wash in our workshop, and only after a test in a hidden corner\.$/);
    expect(dry).not.toContain("Once");
    for (const wetNow of ["wet", "damp"] as const) {
      const wet = careOf(wetNow, rest, mechanism);
      expect(wet).toMatch(/^Once it is dry/);
      expect(wet?.slice(wet.indexOf("nearly dry"))).toBe(dry?.slice(dry.indexOf("nearly dry")));
    }
  });
  it("are none yet where it has likely shrunk: water can draw it in further", () => {
    for (const rest of [{ advice: action("quote-with-limits") }, { advice: action("first-aid") }, { advice: action("quote-with-limits"), improvement: null }]) expect(careOf("no", rest, "shrinkage")).toBeUndefined();
    const at = (shrinkage: number) => composeDraft(inputOf({ sketch: { fibres: { wool: 0.93 }, evidence: [{ what: "label", value: "wool", strength: "label-typed" }], methods: WOOL_METHODS, mechanisms: { "soil-only": 0.6, shrinkage }, rest: { advice: action("quote-with-limits") } } })).text;
    expect(at(0.33)).toContain("How it could be cleaned stays open until a test in a hidden corner.");
    expect(at(0.33)).not.toContain("full wash");
    expect(at(0.32)).toContain("full wash");
  });
  it("come after a look at a back that is likely failing, where what harms latex is ruled out", () => {
    const methods = { ...WOOL_METHODS, "immersion-wash": "ruled-out", "wet-hand-clean": "ruled-out", "solvent-dry": "ruled-out" } as const;
    const at = (chance: number) => composeDraft(inputOf({ sketch: { fibres: { polypropylene: 0.93 }, evidence: [{ what: "label", value: "polypropylene", strength: "label-typed" }], methods, mechanisms: { "backing-failure": chance }, rest: { advice: action("quote-with-limits") } } })).text;
    expect(at(0.33)).toMatch(/Before anything else we would look at its back[^]*nearly dry/u);
    expect(at(0.32)).not.toContain("look at its back");
  });
  const toldOf = (answers: RugAnswers) => letterOf({ answers, enquiry: { wetNow: "no" } });
  const SPOTTED: RugAnswers = { labelText: "100% polypropylene", age: "under-2", liquid: "cleaner", since: "longer", treatments: ["vinegar-soda"] };
  it("come after a look at a back that they say crumbles, by what was told as by a judgement", () => {
    const { rugs, draft: { text } } = toldOf({ ...SPOTTED, changes: ["crumbles"] });
    expect(rugs[0]!.assessment.mechanisms.find((m) => m.mechanism === "backing-failure")?.probability).toBeLessThan(0.33);
    expect(text).toMatch(/You told us of the back that crumbles: the latex[^]*Before anything else we would look at its back[^]*nearly dry/u);
    expect(text).not.toMatch(/what that comes from we cannot tell|care label allows/u);
    expect(toldOf({ ...SPOTTED, changes: ["dirty"] }).draft.text).not.toMatch(/look at its back|back that crumbles/u);
  });
  it.each<[string, RugAnswers, MechanismId]>([
    ["ran", { labelText: "100% silk", liquid: "wine", since: "week", changes: ["ran"] }, "dye-bleed"], ["wavy", { labelText: "100% wool", incidents: ["washed-professional"], changes: ["wavy"] }, "shrinkage"],
  ])("are none yet where they told of it, likely or not: %s", (change, answers, mechanism) => {
    const { rugs, draft: { text } } = toldOf(answers);
    expect(rugs[0]!.assessment.mechanisms.find((m) => m.mechanism === mechanism)?.probability).toBeLessThan(0.33);
    expect(text).toContain("How it could be cleaned stays open until a test in a hidden corner.");
    expect(text).not.toMatch(/nearly dry|full wash|little water|dry solvent/u);
    expect(text.includes("a dye test of each colour")).toBe(change === "ran");
    expect(toldOf({ ...answers, changes: ["dirty"] }).draft.text).toMatch(/nearly dry|full wash|little water|dry solvent/u);
  });
  it("leave what may be done at home unsaid beside first aid, which puts nothing on it", () => {
    const home = (wetNow: EnquiryAnswers["wetNow"], since: RugAnswers["since"]) => letterOf({ answers: { labelText: "100% polypropylene", liquid: "coffee-tea", since }, enquiry: wetNow === undefined ? {} : { wetNow } }).draft.text;
    const AT_HOME = "do only what the maker’s own care label allows";
    for (const wetNow of ["wet", "unsure", undefined] as const) {
      expect(home(wetNow, "hour")).toContain("Put nothing on it");
      expect(home(wetNow, "hour")).not.toContain(AT_HOME);
    }
    expect(home("no", "week")).toContain(AT_HOME);
  });
  it("wait for no later need where a stain should be seen to soon", () => {
    const at = (level: Assessment["urgency"]["level"], id: Assessment["advice"]["action"]) => careOf("no", { advice: action(id), urgency: { level, why: "" } }, "food-fresh");
    for (const level of ["a-week", "two-days"] as const) expect(at(level, "ask-for-more")).toMatch(/^If we clean it, then /);
    for (const [level, id] of [["can-wait", "ask-for-more"], ["a-week", "leave-alone"]] as const) expect(at(level, id)).toMatch(/^When it needs a clean, then /);
  });
  it("are told to Henrike Aldous, whose rug is wet, for when it is dry", () => {
    for (const { letter: { draft } } of lettersTo("Henrike Aldous")) expect(draft.text).toContain("Once it is dry, we would clean it by a full wash in our workshop or by hand with little water, and only after a test in a hidden corner.");
  });
});
