import { describe, expect, it } from "vitest";
import { wordsForChance } from "../../../lib/triage/words";

describe("wordsForChance", () => {
  it.each([
    [0.995, 0.991, "virtually certain"],
    [0.995, 0.989, "very likely"],
    [0.95, 0.9, "very likely"],
    [0.95, 0.899, "likely"],
    [0.8, 0.7, "likely"],
    [0.5, 0.4, "about as likely as not"],
    [0.2, 0.02, "unlikely"],
    [0.05, 0.01, "very unlikely"],
    [0, 0, "very unlikely"],
    [1, 1, "virtually certain"],
  ])("calls %d with a lower end of %d %s", (probability, low, words) => {
    expect(wordsForChance({ probability, low })).toBe(words);
  });
  it("keeps to the widest word that applies where the lower end falls outside them all", () => {
    expect(wordsForChance({ probability: 0.96, low: 0.4 })).toBe("likely");
    expect(wordsForChance({ probability: 0.54, low: 0.15 })).toBe("about as likely as not");
  });
  it("takes the narrower band where two meet, at 66 and at 90 per cent", () => {
    expect(wordsForChance({ probability: 0.66, low: 0.66 })).toBe("about as likely as not");
    expect(wordsForChance({ probability: 0.9, low: 0.9 })).toBe("very likely");
  });
  it("refuses what is no probability", () => {
    expect(() => wordsForChance({ probability: Number.NaN, low: 0 })).toThrow("Expected a probability");
    expect(() => wordsForChance({ probability: 1.2, low: 0 })).toThrow("Expected a probability");
  });
});
