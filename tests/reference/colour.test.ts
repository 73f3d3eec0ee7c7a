import { mkdtempSync, rmSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { converter, differenceCiede2000, formatHex } from "culori";
import fc from "fast-check";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { deltaE00, hexOf, labOf, type Lab } from "../../lib/photo/colour";
import { receivePhoto } from "../../lib/photo/server/receive";
import { tagPng } from "../../lib/photo/server/tag-png";
import table from "./data/ciede2000-pairs.json";

// The oracle is culori, another implementation. Its "lab65" is Lab relative to D65, like ours.
const toLab65 = converter("lab65"), toRgb = converter("rgb");
const theirs = differenceCiede2000();
const asCulori = ({ L, a, b }: Lab) => ({ mode: "lab65" as const, l: L, a, b });
const level = fc.integer({ min: 0, max: 255 });
/** Minimal standard generator of Park & Miller (1988). */
function* uniform(state: number): Generator<number, never> {
  for (;;) yield (state = (state * 16807) % 2147483647) / 2147483647;
}

describe("deltaE00", () => {
  it(`agrees with the 34 published pairs to their four decimals (${table.source})`, () => {
    expect(table.pairs).toHaveLength(34);
    for (const [L1, a1, b1, L2, a2, b2, expected] of table.pairs as [number, number, number, number, number, number, number][]) {
      const one = { L: L1, a: a1, b: b1 }, two = { L: L2, a: a2, b: b2 };
      expect(Math.abs(deltaE00(one, two) - expected)).toBeLessThan(1e-4);
      expect(Math.abs(deltaE00(two, one) - expected)).toBeLessThan(1e-4);
    }
  });
  it("agrees with culori on 10,000 pairs to 1e-9", () => {
    const next = uniform(1), lab = (): Lab => ({ L: 100 * next.next().value, a: 240 * next.next().value - 120, b: 240 * next.next().value - 120 });
    let worst = 0;
    for (let i = 0; i < 10_000; i++) {
      const one = lab(), two = lab();
      worst = Math.max(worst, Math.abs(deltaE00(one, two) - theirs(asCulori(one), asCulori(two))));
    }
    expect(worst).toBeLessThan(1e-9);
  });
});

describe("labOf and hexOf", () => {
  it("agrees with culori on 10,000 sRGB colours to 1e-3", () => {
    fc.assert(fc.property(level, level, level, (r, g, b) => {
      const ours = labOf(r, g, b), { l, a, b: yellow } = toLab65({ mode: "rgb", r: r / 255, g: g / 255, b: b / 255 });
      return Math.abs(ours.L - l) < 1e-3 && Math.abs(ours.a - a) < 1e-3 && Math.abs(ours.b - yellow) < 1e-3;
    }), { numRuns: 10_000, seed: 2 });
  });
  it("comes back to the same level from Lab, as culori does", () => {
    fc.assert(fc.property(level, level, level, (r, g, b) => hexOf(labOf(r, g, b)) === formatHex({ mode: "rgb", r: r / 255, g: g / 255, b: b / 255 })), { numRuns: 5000, seed: 3 });
  });
});

describe("Display P3 becomes sRGB", () => {
  const PATCHES = [[180, 60, 60], [70, 150, 80], [60, 80, 170], [200, 180, 120], [30, 30, 30], [128, 128, 128]] as const;
  const folder = mkdtempSync(path.join(tmpdir(), "p3-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** sRGB levels by culori from P3 levels. */
  const expected = (p3: readonly number[]): number[] => {
    const { r, g, b } = toRgb({ mode: "p3", r: p3[0]! / 255, g: p3[1]! / 255, b: p3[2]! / 255 });
    return [r, g, b].map((v) => 255 * Math.min(1, Math.max(0, v)));
  };
  async function keptPatches(bytes: Buffer): Promise<number[][]> {
    const answer = await receivePhoto((async function* () { yield bytes; })(), { name: "patches", type: "" }, folder);
    if (!answer.ok) throw new Error(answer.say);
    const middle = (i: number) => sharp(path.join(folder, `${answer.photo.id}.jpg`)).extract({ left: 64 * i + 24, top: 24, width: 16, height: 16 }).resize(1, 1).raw().toBuffer();
    return Promise.all(PATCHES.map(async (_, i) => [...(await middle(i))]));
  }
  async function p3Png(): Promise<Buffer> {
    const data = Buffer.alloc(PATCHES.length * 64 * 64 * 3);
    for (let i = 0; i < data.length / 3; i++) data.set(PATCHES[Math.floor((i % (64 * PATCHES.length)) / 64)]!, 3 * i);
    const profiled = await sharp({ create: { width: 1, height: 1, channels: 3, background: "#fff" } }).withIccProfile("p3").png().toBuffer();
    const { icc } = await sharp(profiled).metadata();
    if (!icc) throw new Error("no profile");
    return tagPng(await sharp(data, { raw: { width: 64 * PATCHES.length, height: 64, channels: 3 } }).png().toBuffer(), icc);
  }

  // Two levels: one for rounding of the conversion, one for the JPEG in which the photo is kept. HEIC holds Y'CbCr of
  // eight bits, which by itself puts the patches of the fixture out by one level.
  it.each([["PNG", 2, p3Png], ["HEIC", 3, () => readFile(path.resolve("tests/fixtures/display-p3.heic"))]])("%s patches are within %d levels of culori", async (_what, levels, bytes) => {
    const kept = await keptPatches(await bytes());
    kept.forEach((patch, i) => patch.forEach((v, c) => expect(Math.abs(v - expected(PATCHES[i]!)[c]!)).toBeLessThanOrEqual(levels)));
  });
  it("would be out by more than that if the profile were ignored, so that the check can fail", () => {
    expect(Math.max(...PATCHES.slice(0, 3).map((p3) => Math.max(...p3.map((v, c) => Math.abs(v - expected(p3)[c]!)))))).toBeGreaterThan(10);
  });
});
