import { describe, expect, it } from "vitest";
import { labelsAgree, labelsDiffer } from "../../../lib/triage/labels-differ";

describe("labelsDiffer", () => {
  it.each([
    ["ART SILK PILE", "SILK PILE!"], ["100% viscose", "100% silk"], ["wool", "60% wool 40% viscose"], ["80% wool 20% silk", "60% wool 40% silk"], ["bamboo silk", "100 % SOIE"],
  ])("sees that %j is not %j, whichever comes first", (a, b) => expect([labelsDiffer(a, b), labelsDiffer(b, a)]).toEqual([true, true]));
  it.each([
    ["100% Viscose. Made in India", "100 % VISCOSE\nMADE IN INDIA"], ["silk", "100% SILK"], ["wool", "Pile: 100% wool\nBacking: cotton"], ["rayon", "100% VISKOSE"], ["art silk", "ARTIFICIAL SILK PILE"], ["80% wool 20% silk", "79% wool, 21% silk"],
  ])("sees that %j and %j say the same", (a, b) => expect([labelsDiffer(a, b), labelsDiffer(b, a)]).toEqual([false, false]));
  it.each(["", "hand knotted", "160 x 230 cm"])("takes %j, which names no fibre, for no contradiction", (text) => expect(labelsDiffer(text, "100% silk")).toBe(false));
});

describe("labelsAgree", () => {
  it("needs a fibre in both, and the same", () => {
    expect([labelsAgree("wool 80, viscose 20", "80% WOOL\n20% VISCOSE"), labelsAgree("viscose", "100% VISCOSE")]).toEqual([true, true]);
    expect([labelsAgree("100% art silk", "100% VISCOSE"), labelsAgree("", "100% VISCOSE"), labelsAgree("hand knotted", "160 x 230 cm")]).toEqual([false, false, false]);
  });
});
