import { describe, expect, it } from "vitest";
import { quotedInside } from "../../../lib/words/quoted";

describe("quotedInside", () => {
  it.each([
    ["Hand-knotted “pure mulberry silk”, 100 % natural", "Hand-knotted ‘pure mulberry silk’, 100 % natural"],
    ['They said "pure silk".', "They said ‘pure silk’."],
    ['("silk") and "wool"', "(‘silk’) and ‘wool’"],
    ["„reine Seide“ stand dort", "‚reine Seide‘ stand dort"],
    ['6\'7" × 9\'10", "silk"', '6\'7" × 9\'10", ‘silk’'],
    ["It’s the owner’s ‘silk’", "It’s the owner’s ‘silk’"],
    ['An open " mark', 'An open " mark'],
    ["", ""],
  ])("reads %s as %s", (text, quoted) => expect(quotedInside(text)).toBe(quoted));
});
