import { describe, expect, it } from "vitest";
import { plainOf } from "../../../../lib/reply/promises/sentences";

describe("a question that a sentence repeats and answers", () => {
  it.each([
    ["You asked if it can be saved: yes.", "it can be saved."],
    ["You ask whether the stain will come out; it will.", "the stain will come out."],
    ["Will it fade, you ask: no, it will not.", "it will not fade."],
    ["Can it be saved? yes, of course.", "it can be saved."],
    ["Does the red run? no.", "the red does not run."],
    ["The answer to whether it is silk is a simple yes.", "it is silk."],
    ["You asked if it can be saved: no.", "it cannot be saved."],
    ["Whether it can be saved, you ask: yes, and it is quickly done.", "it can be saved, and it is quickly done."],
  ])("says what was asked: %s", (say, plain) => expect(plainOf(say)).toBe(plain));

  it.each([
    "You asked if it can be saved: perhaps.", "You asked if it can be saved: yes, in part.", "You asked if it can be saved: only a test would tell.", "If it is wool: yes, bring it.", "You asked if it can be saved.",
    "Is it still wet?", "Will it come out?", "You told us that it was saved: yes.", "You asked if it can be saved: no one can say.",
  ])("stays as it is where the answer is not plain, or is none: %s", (say) => expect(plainOf(say)).toBe(say.toLowerCase()));
});
