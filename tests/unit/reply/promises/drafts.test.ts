import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../../lib/reply/draft";
import { checkLetter } from "../../../../lib/reply/promises/check";
import { anyInput } from "../any-input";

describe("every draft of the program", () => {
  it("passes its own check of promises", () => {
    fc.assert(fc.property(anyInput, (input) => {
      const [only, ...more] = input.assessments;
      const assessment = only && more.length === 0 ? only.assessment : null;
      expect(checkLetter(composeDraft(input).text, { assessment, inspected: false })).toEqual([]);
    }), { numRuns: 5000, seed: 20261128 });
  }, 120_000);
});
