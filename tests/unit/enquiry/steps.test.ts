import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { IntakeAnswers } from "../../../lib/enquiry/questionnaire";
import {
  applies, FIRST_STEP, isStepId, nextStep, offeredAnswers, previousStep, relevantAnswers, resumeAt, STEPS, stepsFor, withoutContradiction, type StepId,
} from "../../../lib/enquiry/steps";
import { QUESTIONS, type AnswerOf, type QuestionId } from "../../../lib/trade/questions";

const withIncidents = (...incidents: AnswerOf<"incidents">[]): IntakeAnswers => ({ reason: "routine", rug: { incidents } });
const conditional = (answers: IntakeAnswers) => stepsFor(answers).filter((id) => ["liquid", "since", "treatments", "treated-by", "changes"].includes(id));
const anAnswer = <Q extends QuestionId>(q: Q) => fc.constantFrom(...(Object.keys(QUESTIONS[q].answers) as AnswerOf<Q>[]), "unsure" as AnswerOf<Q>);
const someAnswers: fc.Arbitrary<IntakeAnswers> = fc.record({
  wetNow: fc.option(anAnswer("wetNow"), { nil: undefined }),
  reason: fc.option(anAnswer("reason"), { nil: undefined }),
  rug: fc.record({
    fringe: fc.option(anAnswer("fringe"), { nil: undefined }),
    incidents: fc.option(fc.array(anAnswer("incidents"), { maxLength: 4 }), { nil: undefined }),
    treatments: fc.option(fc.array(anAnswer("treatments"), { maxLength: 4 }), { nil: undefined }),
  }),
});

describe("stepsFor", () => {
  it("asks first whether anything is wet", () => expect(stepsFor({})[0]).toBe("wet-now"));
  it.each(["wet", "damp"] as const)("shows first aid straight after %s, before anything else is asked", (wetNow) => {
    expect(stepsFor({ wetNow }).slice(0, 3)).toEqual(["wet-now", "first-aid", "reason"]);
  });
  it.each(["no", "unsure"] as const)("shows no first aid after %s", (wetNow) => expect(stepsFor({ wetNow })).not.toContain("first-aid"));
  it("keeps the order of the table for every set of answers, and ends with sending", () => {
    const order = STEPS.map((s) => s.id);
    fc.assert(fc.property(someAnswers, (answers) => {
      const steps = stepsFor(answers);
      expect(steps).toEqual(order.filter((id) => steps.includes(id)));
      expect(steps.at(-1)).toBe("send");
    }));
  });
  it("always asks household and age, whatever was answered", () => {
    fc.assert(fc.property(someAnswers, (answers) => { expect(stepsFor(answers)).toEqual(expect.arrayContaining(["household", "age", "contact"])); }));
  });
  it("tells a colleague, and nobody else, to ring", () => {
    expect(stepsFor({ reason: "trade" })).toContain("call-us");
    expect(stepsFor({ reason: "after-cleaning" })).not.toContain("call-us");
  });
});

describe("applies", () => {
  it("asks for the liquid after a spill or a treated spot only", () => {
    expect(applies("liquid", withIncidents("spill"))).toBe(true);
    expect(applies("liquid", withIncidents("wear", "spotted"))).toBe(true);
    expect(applies("liquid", withIncidents("pet-urine"))).toBe(false);
  });
  it("asks when it was only of things that happen at a moment", () => {
    expect(applies("since", withIncidents("water"))).toBe(true);
    expect(applies("since", withIncidents("wear", "sun", "stored"))).toBe(false);
  });
  it("asks what was done where somebody may have done something", () => {
    expect(applies("treatments", withIncidents("insects"))).toBe(true);
    expect(applies("treatments", withIncidents("sun"))).toBe(false);
    expect(applies("treatments", { reason: "after-cleaning", rug: { incidents: ["unsure"] } })).toBe(true);
  });
  it("asks who did it after a real treatment, not after none", () => {
    expect(applies("treated-by", { rug: { treatments: ["nothing"] } })).toBe(false);
    expect(applies("treated-by", { rug: { treatments: ["unsure"] } })).toBe(false);
    expect(applies("treated-by", { rug: { treatments: ["blotted"] } })).toBe(true);
    expect(applies("treated-by", withIncidents("washed-home"))).toBe(true);
  });
  it("leaves out what changed only where somebody merely wants to know what it is", () => {
    expect(conditional({ reason: "what-is-it", rug: { incidents: ["nothing"] } })).toEqual([]);
    expect(conditional({ reason: "what-is-it", rug: { incidents: ["wear"] } })).toEqual(["changes"]);
    expect(conditional({ reason: "routine", rug: { incidents: ["nothing"] } })).toEqual(["changes"]);
  });
  it("asks how the fringe feels only where there is one", () => {
    expect(applies("fringe-feel", { rug: { fringe: "sewn-on" } })).toBe(true);
    expect(applies("fringe-feel", { rug: { fringe: "none" } })).toBe(false);
    expect(applies("fringe-feel", { rug: { fringe: "unsure" } })).toBe(false);
  });
});

describe("nextStep and previousStep", () => {
  it("undo each other all the way, for every set of answers", () => {
    fc.assert(fc.property(someAnswers, (answers) => {
      const walked: StepId[] = [];
      for (let at: StepId | null = FIRST_STEP; at; at = nextStep(at, answers)) walked.push(at);
      expect(walked).toEqual(stepsFor(answers));
      const back: StepId[] = [];
      for (let at: StepId | null = "send"; at; at = previousStep(at, answers)) back.unshift(at);
      expect(back).toEqual(walked);
    }));
  });
});

describe("resumeAt", () => {
  it("begins at the beginning with nothing answered", () => expect(resumeAt({})).toBe("wet-now"));
  it("shows first aid to somebody who left after saying it is wet", () => expect(resumeAt({ wetNow: "wet" })).toBe("first-aid"));
  it("goes on after the last answer, over pages that were left empty", () => {
    expect(resumeAt({ wetNow: "no", reason: "routine", rug: { sellerSaid: "wool" } })).toBe("bought");
  });
  it("passes over what was answered elsewhere, on the way on and back", () => {
    expect([nextStep("photos", {}, ["label"]), previousStep("seller", {}, ["label"]), resumeAt({ wetNow: "no", reason: "routine" }, 2, ["label"])]).toEqual(["seller", "photos", "seller"]);
  });
  it("counts photos as an answer", () => expect(resumeAt({ wetNow: "no", reason: "routine" }, 2)).toBe("label"));
  it("goes to the last look once the contact is known", () => expect(resumeAt({ wetNow: "no", contact: { name: "Ada Invented" } })).toBe("send"));
});

describe("offeredAnswers", () => {
  it("offers “I did, as a cleaner” to colleagues only", () => {
    expect(offeredAnswers("treatedBy", { reason: "trade" })).toContain("me-trade");
    expect(offeredAnswers("treatedBy", { reason: "routine" })).not.toContain("me-trade");
  });
});

describe("withoutContradiction", () => {
  it("drops “nothing” beside something", () => expect(withoutContradiction(["nothing", "spill"])).toEqual(["spill"]));
  it("keeps one of several that say nothing", () => expect(withoutContradiction(["nothing", "unsure"])).toEqual(["nothing"]));
  it("keeps a repeated answer once", () => expect(withoutContradiction(["spill", "sun", "spill"])).toEqual(["spill", "sun"]));
});

describe("relevantAnswers", () => {
  it("drops what was answered to a question that no longer applies", () => {
    const answers: IntakeAnswers = { reason: "routine", rug: { incidents: ["sun"], liquid: "wine", since: "day", shine: "none" } };
    expect(relevantAnswers(answers).rug).toEqual({ incidents: ["sun"], shine: "none" });
  });
  it("drops what hangs on a dropped answer too", () => {
    const answers: IntakeAnswers = { reason: "routine", rug: { incidents: ["sun"], treatments: ["blotted"], treatedBy: "owner" } };
    expect(relevantAnswers(answers).rug).toEqual({ incidents: ["sun"] });
  });
  it("changes nothing the second time, for every set of answers", () => {
    fc.assert(fc.property(someAnswers, (answers) => {
      const once = relevantAnswers(answers);
      expect(relevantAnswers(once)).toEqual(once);
    }));
  });
  it("leaves everything that applies", () => {
    const answers: IntakeAnswers = { wetNow: "no", reason: "just-happened", rug: { incidents: ["spill"], liquid: "wine", since: "hour" } };
    expect(relevantAnswers(answers)).toEqual(answers);
  });
});

describe("isStepId", () => {
  it("knows its own steps and nothing inherited", () => {
    expect(isStepId("shine")).toBe(true);
    expect(isStepId("toString")).toBe(false);
    expect(isStepId("")).toBe(false);
  });
});
