import { describe, expect, it } from "vitest";
import { withMissed } from "../../../../lib/photo/label/missed";

/** A line 20 pixels high in a sheet of 400; its last word stands from 300 to 380. */
const SHEET = { width: 400, height: 40 };
const LINE = { top: 10 / 40, bottom: 30 / 40 };
const word = (text: string, from: number, to: number) => ({ text, confidence: 0.9, left: from / 400, right: to / 400, ...LINE });
const words = (...texts: string[]) => [texts.map((text) => ({ text, confidence: 0.9, unsure: false }))];
/** Print from one column to another, over so many rows from the line's top. */
function sheet(...prints: [from: number, to: number, rows: number][]) {
  const data = new Uint8Array(SHEET.width * SHEET.height).fill(255);
  for (const [from, to, rows] of prints) for (let y = 10; y < 10 + rows; y++) data.fill(0, y * SHEET.width + from, y * SHEET.width + to);
  return { ...SHEET, data };
}
const missed = (...prints: Parameters<typeof sheet>) => withMissed(words("SILK"), [[word("SILK", 300, 380)]], sheet(...prints)).flat().map((w) => w.missed === true);

describe("withMissed", () => {
  it("marks a word before which a word's worth of print stands, from eight tenths of the line's height on", () => {
    expect([missed([270, 286, 20]), missed([270, 285, 20])]).toEqual([[true], [false]]);
  });
  it("takes no notice of a seam, of weave, nor of what stands further away than one and a half heights", () => {
    expect([missed([280, 284, 20]), missed([100, 295, 2]), missed([100, 260, 20])]).toEqual([[false], [false], [false]]);
  });
  it("counts what stands between two words, and not the words themselves", () => {
    const two = (...prints: Parameters<typeof sheet>) => withMissed(words("100%", "SILK"), [[word("100%", 100, 200), word("SILK", 300, 380)]], sheet([100, 200, 20], [300, 380, 20], ...prints)).flat().map((w) => w.missed === true);
    expect([two(), two([220, 280, 20])]).toEqual([[false, false], [false, true]]);
  });
  it("leaves everything else of a word as it was", () => {
    expect(withMissed(words("SILK"), [[word("SILK", 300, 380)]], sheet([240, 290, 20]))).toEqual([[{ text: "SILK", confidence: 0.9, unsure: false, missed: true }]]);
    expect(withMissed([], [], sheet())).toEqual([]);
  });
});
