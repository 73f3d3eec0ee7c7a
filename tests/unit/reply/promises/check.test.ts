import { describe, expect, it } from "vitest";
import { rulesBroken } from "../../../../lib/reply/promises/check";
import { HONEST } from "./honest";
import { OVER_PROMISING } from "./over-promising";
import { STRANGERS, UNSEEN } from "./strangers";

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

describe.each(STRANGERS.map((set, n) => [n + 1, set] as const))("the check of promises on the sentences of stranger %i, which its rules have seen since", (_, { overPromising, honest }) => {
  const share = (of: readonly string[], of100: readonly string[]) => of.length / of100.length;
  it("catches at least 95 in 100 of those that promise too much", () => {
    const missed = overPromising.filter((say) => broken(say).length === 0);
    expect(share(missed, overPromising), missed.join("\n")).toBeLessThanOrEqual(0.05);
  });
  it("leaves at least 95 in 100 of the honest ones alone", () => {
    const alarmed = honest.filter((say) => broken(say).length > 0);
    expect(share(alarmed, honest), alarmed.join("\n")).toBeLessThanOrEqual(0.05);
  });
});

describe("the check of promises on sentences that its rules have not seen", () => {
  it("catches no fewer than it did at first, and alarms at no more than one honest sentence in ten", () => {
    expect(UNSEEN.overPromising.filter((say) => broken(say).length > 0).length).toBeGreaterThanOrEqual(42);
    expect(UNSEEN.honest.filter((say) => broken(say).length > 0).length).toBeLessThanOrEqual(6);
  });
});
