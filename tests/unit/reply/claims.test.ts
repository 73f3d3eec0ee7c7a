import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import type { DraftInput } from "../../../lib/reply/pieces";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import { inputOf, type Sketch } from "./make";

const CALLED_SILK = { what: "sellerSaid", value: "silk", strength: "told" } as const;
const SOUND: Sketch = { fibres: { viscose: 0.95 }, evidence: [CALLED_SILK], mechanisms: {}, rest: { advice: { action: "leave-alone", why: "", referTo: null, losses: [] } } };
const TESTED: Sketch = { ...SOUND, evidence: [CALLED_SILK, { what: "burn", value: "viscose", strength: "laboratory", decibans: 20 }] };
const MIS_SOLD: EnquiryAnswers = { reason: "mis-sold" };

const inputOn = (answers: RugAnswers, enquiry: EnquiryAnswers = MIS_SOLD, sketch = SOUND): DraftInput => inputOf({ sketch, answers: { sellerSaid: "silk", ...answers }, enquiry });
const letterOn = (...of: Parameters<typeof inputOn>) => composeDraft(inputOn(...of)).text;

const TEST_FIRST = /Before any claim comes a test of the fibre, ours or a laboratory’s: if you would like one, (?:ring us|answer)/u;
const INSPECTED = { ...SOUND, rest: { advice: { action: "inspect-and-test", why: "", referTo: null, losses: [] } } } satisfies Sketch;
const ASK_THE_SELLER = /ask the seller in writing/u;
const WITH_WHOEVER_BOUGHT_IT = /with whoever bought it, or among their papers/u;

describe("a claim about the fibre", () => {
  it.each<[string, RugAnswers, EnquiryAnswers, boolean]>([
    ["bought, and perhaps sold as something else", { boughtWhere: "online" }, MIS_SOLD, false],
    ["given, and perhaps sold as something else", { boughtWhere: "gift" }, MIS_SOLD, true],
    ["bought as silk, and a claim matters", { boughtWhere: "furniture", matters: ["claim"] }, {}, false],
    ["given as silk, and a claim matters", { boughtWhere: "gift", matters: ["claim"] }, {}, true],
    ["from nobody knows where", { boughtWhere: "unsure" }, MIS_SOLD, false],
  ])("is sent to the seller only where the client bought it: %s", (_, answers, enquiry, isGiven) => {
    const text = letterOn(answers, enquiry);
    expect([ASK_THE_SELLER.test(text), WITH_WHOEVER_BOUGHT_IT.test(text)]).toEqual([!isGiven, isGiven]);
    expect(text).toMatch(TEST_FIRST);
  });
  it("goes to the seller too where another rug of the letter was bought", () => {
    const [given, bought] = [inputOn({ boughtWhere: "gift" }), inputOn({ boughtWhere: "online" })];
    expect(composeDraft({ ...given, assessments: [...given.assessments, ...bought.assessments] }).text).toMatch(ASK_THE_SELLER);
  });
  it.each([MIS_SOLD, {}])("has a test first where nothing is wrong with the rug: not once it was tested, nor beside an inspection and tests (%o)", (enquiry) => {
    const answers: RugAnswers = { matters: ["claim"] };
    expect(letterOn(answers, enquiry)).toMatch(TEST_FIRST);
    expect(letterOn(answers, enquiry, TESTED)).not.toMatch(TEST_FIRST);
    expect(letterOn(answers, enquiry, INSPECTED)).not.toMatch(TEST_FIRST);
    expect(letterOn(answers, enquiry, INSPECTED)).toMatch(/an inspection and tests decide/u);
  });
  it("is no matter for a letter to somebody who claims nothing of the fibre", () => {
    for (const answers of [{}, { matters: ["know" as const] }]) expect(letterOn(answers, {})).not.toMatch(/claim/u);
    expect(composeDraft(inputOf({ sketch: SOUND, answers: { sellerSaid: "wool", matters: ["claim"] }, enquiry: {} })).text).not.toMatch(TEST_FIRST);
  });
  it("is worded so that the check of promises lets it pass", () => {
    for (const boughtWhere of ["gift", "online"] as const) for (const enquiry of [MIS_SOLD, {}]) {
      const input = inputOn({ boughtWhere, matters: ["claim"] }, enquiry);
      expect(checkLetter(composeDraft(input).text, knownOf(input.assessments)).filter((f) => /claim|bought it/u.test(f.sentence))).toEqual([]);
    }
  });
});
