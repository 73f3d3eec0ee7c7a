import fc from "fast-check";
import { QUESTIONS, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../../../lib/trade/questions";

const one = (q: QuestionId) => fc.option(fc.constantFrom(...Object.keys(QUESTIONS[q].answers), "unsure"), { nil: undefined });
const many = (q: QuestionId) => fc.option(fc.uniqueArray(fc.constantFrom(...Object.keys(QUESTIONS[q].answers)), { maxLength: 3 }), { nil: undefined });
/** What an owner may have answered about a rug, for the program to judge. */
export const anyRug = fc.record({
  labelText: fc.constantFrom(undefined, "100% viscose", "80% wool 20% viscose", "100% wool", "100% silk", "100% polypropylene", "jute"), back: one("back"), age: one("age"), liquid: one("liquid"), since: one("since"),
  incidents: many("incidents"), treatments: many("treatments"), changes: many("changes"), household: many("household"),
}) as fc.Arbitrary<RugAnswers>;
export const anyReason = fc.record({ wetNow: one("wetNow"), reason: one("reason") }) as fc.Arbitrary<EnquiryAnswers>;
