import { readFileSync } from "node:fs";
import { create } from "fontkit";
import { describe, expect, it } from "vitest";
import { unpacked } from "../../../lib/print/woff";

const TEXTS = [["atkinson-hyperlegible-next", "latin", "Fluff, 80 in 100"], ["noto-sans", "greek", "Χαλί"], ["noto-sans-hebrew", "hebrew", "שטיח"], ["vazirmatn", "arabic", "قالی"]] as const;
const woffOf = (name: string, part: string): Buffer => readFileSync(`node_modules/@fontsource/${name}/files/${name}-${part}-400-normal.woff`);

describe("a typeface unpacked from WOFF", () => {
  it.each(TEXTS)("sets a text as fontkit sets it from the packed file: %s, %s", (name, part, text) => {
    const woff = woffOf(name, part);
    const set = (bytes: Buffer) => {
      const font = create(bytes);
      const run = font.layout(text);
      const outlines = run.glyphs.map((glyph) => (glyph as unknown as { path: { toSVG(): string } }).path.toSVG());
      return { outlines, positions: run.positions, ascent: font.ascent, unitsPerEm: font.unitsPerEm };
    };
    const packed = set(woff);
    expect(packed.outlines.join("")).toMatch(/M.*Z/su);
    expect(set(unpacked(woff))).toEqual(packed);
  });
  it("is as long as the packed file says that it is (WOFF 1.0, totalSfntSize)", () => {
    for (const [name, part] of TEXTS) {
      const woff = woffOf(name, part);
      expect(unpacked(woff).length, name).toBe(woff.readUInt32BE(16));
    }
  });
  it("says so where the bytes are no WOFF, or a table is not as long as it should be", () => {
    expect(() => unpacked(Buffer.from("OTTO"))).toThrow("The typeface is not a WOFF 1 file.");
    const wrong = Buffer.from(woffOf("noto-sans", "greek"));
    const first = 44 + 12;
    const length = wrong.readUInt32BE(first);
    wrong.writeUInt32BE(length + 1, first);
    expect(() => unpacked(wrong)).toThrow(`A table of the typeface is ${length} bytes long, not ${length + 1}.`);
  });
});
