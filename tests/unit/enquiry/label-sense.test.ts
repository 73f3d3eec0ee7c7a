import { describe, expect, it } from "vitest";
import { labelSense } from "../../../lib/enquiry/label-sense";

describe("labelSense", () => {
  it("finds no less sense in a name of imitation silk than in silk, whatever the law says of the name", () => {
    expect(labelSense("ART SILK PILE", 0.9)).toBe(labelSense("SILK PILE", 0.9));
    expect(labelSense("100% ART SILK", 0.9)).toBe(1);
    expect(labelSense("100% BAMBOO", 0.9)).toBe(labelSense("100% VISCOSE", 0.9));
  });
  it("finds less in silk after a word that nobody knows, so that it is read again", () => {
    expect(labelSense("100% AHT SILK", 0.9)).toBeLessThan(labelSense("100% ART SILK", 0.9));
    expect(labelSense("AHT SILK PILE", 0.9)).toBeLessThan(labelSense("ART SILK PILE", 0.9));
  });
  it("finds less where the doubts are of the reading", () => expect(labelSense("80% wool 30% silk", 0.9)).toBeLessThan(labelSense("80% wool 20% silk", 0.9)));
});
