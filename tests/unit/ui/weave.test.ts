import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { colourAt, shade, STITCH, weave } from "../../../lib/ui/weave";

const RED = "#a03020";
const GREY = "#808890";
const stitches = (d: string) => d.match(/M/g)?.length ?? 0;
const aColour = fc.record({ hex: fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, "0")}`), share: fc.double({ min: 0.01, max: 1, noNaN: true }) });

describe("colourAt", () => {
  const colours = [{ hex: RED, share: 3 }, { hex: GREY, share: 1 }];
  it("changes colour where the share of the first ends", () => {
    expect(colourAt(colours, 0)).toBe(RED);
    expect(colourAt(colours, 0.749)).toBe(RED);
    expect(colourAt(colours, 0.75)).toBe(GREY);
    expect(colourAt(colours, 1)).toBe(GREY);
  });
  it("is null without colours", () => expect(colourAt([], 0.5)).toBeNull());
});

describe("shade", () => {
  it("multiplies each channel", () => expect(shade("#804020", 0.5)).toBe("#402010"));
  it("stays within the scale", () => expect(shade("#ff8000", 2)).toBe("#ffff00"));
});

describe("weave", () => {
  it("lays every stitch of both rows, the second half a stitch behind", () => {
    fc.assert(fc.property(fc.array(aColour, { minLength: 1, maxLength: 6 }), fc.integer({ min: 4, max: 80 }), fc.boolean(), (colours, cells, upright) => {
      const total = weave({ colours, cells, upright }).reduce((sum, yarn) => sum + stitches(yarn.d), 0);
      expect(total).toBe(STITCH.rows * cells + 1);
    }));
  });
  it("gives each colour about its share of the stitches", () => {
    const cells = 200;
    const yarns = weave({ colours: [{ hex: RED, share: 0.7 }, { hex: GREY, share: 0.3 }], cells });
    const isRed = (colour: string) => Number.parseInt(colour.slice(1, 3), 16) > Number.parseInt(colour.slice(5, 7), 16) + 60;
    const red = yarns.filter((y) => isRed(y.colour)).reduce((sum, y) => sum + stitches(y.d), 0);
    expect(red / (2 * cells + 1)).toBeGreaterThan(0.66);
    expect(red / (2 * cells + 1)).toBeLessThan(0.74);
  });
  it("is the same every time", () => {
    const colours = [{ hex: RED, share: 1 }, { hex: GREY, share: 2 }];
    expect(weave({ colours, cells: 30 })).toEqual(weave({ colours, cells: 30 }));
  });
  it("gives no yarn without colours", () => expect(weave({ colours: [], cells: 10 })).toEqual([]));
});
