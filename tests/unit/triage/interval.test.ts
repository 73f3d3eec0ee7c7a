import { describe, expect, it } from "vitest";
import { quantile } from "../../../lib/triage/interval";
import { believeAnswers } from "./belief-helpers";

describe("quantile", () => {
  // Hyndman and Fan type 7, worked by hand: position (n−1)q.
  it.each([[[1, 2, 3, 4, 5], 0.5, 3], [[1, 2, 3, 4, 5], 0.1, 1.4], [[1, 2, 3, 4], 0.9, 3.7], [[7], 0.9, 7], [[1, 2], 0, 1], [[1, 2], 1, 2]])("of %j at %d is %d", (xs, q, expected) => {
    expect(quantile(xs, q)).toBeCloseTo(expected, 12);
  });
});

describe("intervals", () => {
  const width = (rug: Parameters<typeof believeAnswers>[0]) => {
    const [top] = believeAnswers(rug).fibres;
    return (top?.high ?? 0) - (top?.low ?? 0);
  };
  it("are wide when little is known and narrower when the label says it", () => {
    expect(width({ shine: "two-tone" })).toBeGreaterThan(0.25);
    expect(width({ labelText: "100% wool", touch: "springy", shine: "none" })).toBeLessThan(width({ touch: "springy", shine: "none" }));
  });
  it("do not change the draws of one finding when another is added: a finding without weight moves nothing", () => {
    const rug = { touch: "springy" } as const;
    expect(believeAnswers({ ...rug, room: "busy" }).fibres).toEqual(believeAnswers(rug).fibres);
  });
  it("leave room below a cap: a belief at its cap is no certainty about that number", () => {
    const [wool] = believeAnswers({ sellerSaid: "wool", shine: "none", touch: "springy", footprints: "none", labelText: "100% wool" }).fibres;
    expect(wool?.low).toBeLessThan(0.9);
  });
});
