import { describe, expect, it } from "vitest";
import { rulesBroken } from "../../../../lib/reply/promises/check";
import { HONEST } from "./honest";
import { OVER_PROMISING } from "./over-promising";
import { STRANGERS_HONEST, STRANGERS_OVER_PROMISING } from "./strangers-first";

const broken = (sentence: string) => rulesBroken(sentence).map((r) => r.id);

describe("the check of promises on its own sentences", () => {
  it("has 120 and more of each", () => {
    expect(OVER_PROMISING.length).toBeGreaterThanOrEqual(120);
    expect(HONEST.length).toBeGreaterThanOrEqual(120);
  });
  it("catches at least 98 in 100 of those that promise too much", () => {
    const missed = OVER_PROMISING.filter(([, say]) => broken(say).length === 0);
    expect(missed.length / OVER_PROMISING.length, missed.map(([r, s]) => `${r}: ${s}`).join("\n")).toBeLessThanOrEqual(0.02);
  });
  it("catches them for the right reason", () => {
    const wrong = OVER_PROMISING.filter(([rule, say]) => broken(say).length > 0 && !broken(say).includes(rule));
    expect(wrong.length / OVER_PROMISING.length, wrong.map(([r, s]) => `${r}, not ${broken(s).join()}: ${s}`).join("\n")).toBeLessThanOrEqual(0.02);
  });
  it("leaves at least 97 in 100 of the honest ones alone", () => {
    const alarmed = HONEST.filter((say) => broken(say).length > 0);
    expect(alarmed.length / HONEST.length, alarmed.map((s) => `${broken(s).join()}: ${s}`).join("\n")).toBeLessThanOrEqual(0.03);
  });
});

describe("the check of promises on a stranger’s sentences, which its rules have seen since", () => {
  const caught = (sentences: readonly string[]) => sentences.filter((say) => broken(say).length > 0);
  it("catches at least 95 in 100 of those that promise too much", () => {
    expect(caught(STRANGERS_OVER_PROMISING).length / STRANGERS_OVER_PROMISING.length).toBeGreaterThanOrEqual(0.95);
  });
  it("leaves at least 95 in 100 of the honest ones alone", () => {
    expect(caught(STRANGERS_HONEST).length / STRANGERS_HONEST.length, caught(STRANGERS_HONEST).join("\n")).toBeLessThanOrEqual(0.05);
  });
});
