import { describe, expect, it } from "vitest";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import type { FibreBelief } from "../../../lib/triage/assessment";
import { lettersInWords, postInWords, waitingForUs } from "../../../lib/ui/queue";
import { comesBackInWords, fibreInWords } from "../../../lib/ui/slip";
import { scaleOf } from "../../../lib/ui/weights";
import { worthShowing } from "../../../lib/ui/judgement";

describe("waitingForUs", () => {
  it.each([[0, "Nobody is waiting for us"], [1, "One waiting for us"], [11, "Eleven waiting for us"], [25, "25 waiting for us"]])("heads the page for %i", (n, words) => {
    expect(waitingForUs(n)).toBe(words);
  });
});

describe("postInWords", () => {
  it.each([[1, "One message waits in the Post."], [3, "Three messages wait in the Post."]])("says what waits for %i", (n, words) => expect(postInWords(n)).toBe(words));
});

describe("comesBackInWords", () => {
  it("gives the range", () => expect(comesBackInWords({ low: 20, median: 30, high: 35 }).replaceAll("\u00a0", " ")).toBe("comes back 20–35 %"));
});

describe("lettersInWords", () => {
  const none = { notSent: 0, failed: 0, unknown: 0, mailConfigured: true };
  it("says nothing when every letter has left", () => {
    expect(lettersInWords(none)).toEqual([]);
  });
  it("says so where no mail server is set up, with and without letters waiting", () => {
    expect(lettersInWords({ ...none, mailConfigured: false })[0]).toMatch(/No mail server is set up: letters will wait/);
    expect(lettersInWords({ ...none, mailConfigured: false, notSent: 2 })).toEqual(["No mail server is set up: two letters wait here, not sent."]);
  });
  it("never says sent of what failed or is not known", () => {
    const says = lettersInWords({ notSent: 1, failed: 1, unknown: 2, mailConfigured: true });
    expect(says).toEqual(["One letter not sent yet.", "One letter could not be delivered.", "Two letters may or may not have arrived."]);
  });
});

describe("fibreInWords", () => {
  it("does not name an unlikely leader as if it were known", () => {
    expect(fibreInWords({ name: "wool", words: "unlikely" })).toBe("cannot be told yet; wool comes first");
    expect(fibreInWords({ name: "viscose", words: "very likely" })).toBe("viscose, very likely");
  });
});

describe("scaleOf", () => {
  it.each([[[0], 5], [[5], 5], [[-5.1], 10], [[14, -63], 80], [[60], 60], [[], 5]])("holds every one of %j", (weights, full) => {
    expect(scaleOf(weights)).toBe(full);
  });
});

describe("worthShowing", () => {
  const beliefs = (...p: number[]): FibreBelief[] => p.map((probability, i) => ({ fibre: FIBRE_IDS[i] ?? "other", probability, low: 0, high: 1, words: "" }));
  it("stops where what is left falls under six in a hundred", () => {
    expect(worthShowing(beliefs(0.95, 0.03, 0.02))).toHaveLength(1);
    expect(worthShowing(beliefs(0.9, 0.05, 0.05))).toHaveLength(2);
  });
  it("shows at most five", () => {
    expect(worthShowing(beliefs(0.2, 0.2, 0.15, 0.15, 0.1, 0.1, 0.1))).toHaveLength(5);
  });
});
