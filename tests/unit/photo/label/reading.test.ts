import { describe, expect, it } from "vitest";
import { readLabel } from "../../../../lib/triage/read-label";
import { seeded } from "../../../../prisma/demo/canvas";
import { LEVELS, type Level } from "../../../labels/conditions";
import { judgeLabel, partsKey } from "../../../labels/judge";
import { TYPEFACES } from "../../../labels/typefaces";
import { LANGUAGES, labelWords, NAMES } from "../../../labels/words";
import published from "../../../reference/data/label-names.json";
import { tempFolder } from "../pictures";

const folder = tempFolder();
const rows = published as unknown as readonly (readonly [string, string, string, string, string])[];

describe("the drawn labels", () => {
  it("name fibres as Annex I of Regulation (EU) No 1007/2011 and its published translations do", () => {
    const known = new Set(rows.map(([language, , name]) => `${language} ${name.toLowerCase()}`));
    const odd = LANGUAGES.flatMap((l) => Object.values(NAMES[l]).filter((name) => !known.has(`${l} ${name.toLowerCase()}`)).map((name) => `${l} ${name}`));
    expect(odd).toEqual([]);
  });
  it("say what they mean when their words are read without a photo, whatever the language", () => {
    for (let n = 0; n < 400; n++) {
      const { lines, says } = labelWords(seeded(n), LANGUAGES[n % LANGUAGES.length]!);
      expect(partsKey(readLabel(lines.join("\n")).components), lines.join(" | ")).toBe(partsKey(says));
    }
  });
  it("come in twelve typefaces and eight languages", () => {
    expect([TYPEFACES.length, LANGUAGES.length]).toEqual([12, 8]);
  });
});

/** A few of each level; `npm run long` reads hundreds. */
const EACH = 8;
const REQUIRED: Readonly<Record<Level, number>> = { clean: 0.97, medium: 0.97, "whole frame": 0.9, hard: 0.6 };

describe("readLabelPhoto", () => {
  it.each(LEVELS)("reads the right fibres and per cents on %s labels, and says where it may be wrong", async (level) => {
    const judged = [];
    for (let n = 0; n < EACH; n++) judged.push(await judgeLabel(level, n, folder));
    const wrong = judged.filter((j) => !j.right).map((j) => `${j.face}: ${j.words.lines.join(" | ")} read as ${j.read}`);
    expect(judged.filter((j) => j.silent)).toEqual([]);
    expect(wrong.length, wrong.join("\n")).toBeLessThanOrEqual(Math.floor((1 - REQUIRED[level]) * EACH));
  }, 240_000);
  // Upside down and on its side; by the rug around their corners they were read as noise.
  it.each([9648, 9661])("reads a label that fills its photo from edge to edge (number %i)", async (n) => {
    expect((await judgeLabel("medium", n, folder)).right).toBe(true);
  }, 60_000);
});
