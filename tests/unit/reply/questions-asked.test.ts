import { describe, expect, it } from "vitest";
import { questionsAsked } from "../../../lib/reply/questions-asked";

describe("questionsAsked", () => {
  it("gives every question as it was written, once, in its order", () => {
    expect(questionsAsked(["Our dog was on it an hour ago. Is it safe? should I put it in the bath?\nThank you!", "Will the shop have to pay? Is it safe?"])).toEqual(["Is it safe?", "should I put it in the bath?", "Will the shop have to pay?"]);
  });
  it("gives nothing of what asks nothing, of marks alone, and of nobody's words", () => {
    expect(questionsAsked(["It is wet.", "???", "", undefined])).toEqual([]);
  });
  it("takes other scripts' marks and a closing quotation mark", () => {
    expect(questionsAsked(["هل يمكن إنقاذها؟", "He said “why not wash it?”"])).toEqual(["هل يمكن إنقاذها؟", "He said “why not wash it?”"]);
  });
  it("stops after five", () => {
    expect(questionsAsked([Array.from({ length: 9 }, (_, n) => `Is it ${n} years old?`).join(" ")])).toHaveLength(5);
  });
});
