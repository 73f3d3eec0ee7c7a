import { mkdtempSync, rmSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { converter, differenceCiede2000, formatHex } from "culori";
import fc from "fast-check";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { deltaE00, hexOf, labOf, type Lab } from "../../lib/photo/colour";
import { openPicture } from "../../lib/photo/server/pictures";
import { receivePhoto } from "../../lib/photo/server/receive";
import { pixelsOf } from "../../lib/photo/server/sizes";
import { tagPng } from "../../lib/photo/server/tag-png";
import { spotColour } from "../../lib/photo/spot";
import { photoFileName } from "../../lib/store/photo-layout";
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
  // Pairs 10 and 14 have hues that are exactly opposite: which of two means of them is taken hangs on the last bit of the
  // platform's arithmetic, so that another one may give pair 14 as 4.7461 instead of 4.8045 without being wrong.
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
    }), { numRuns: 10_000 });
  });
  it("comes back to the same level from Lab, as culori does", () => {
    fc.assert(fc.property(level, level, level, (r, g, b) => hexOf(labOf(r, g, b)) === formatHex({ mode: "rgb", r: r / 255, g: g / 255, b: b / 255 })), { numRuns: 5000 });
  });
});

/** A PNG that says it is in Display P3, or that says nothing and so is in sRGB. */
async function taggedPng(pixels: Buffer, { width, height }: { width: number; height: number }, profile: "p3" | null): Promise<Buffer> {
  const png = await sharp(pixels, { raw: { width, height, channels: 3 } }).png().toBuffer();
  if (!profile) return png;
  const { icc } = await sharp(await sharp({ create: { width: 1, height: 1, channels: 3, background: "#fff" } }).withIccProfile(profile).png().toBuffer()).metadata();
  if (!icc) throw new Error("no profile");
  return tagPng(png, icc);
}

describe("a chart of 24 colours drawn in Display P3 and in sRGB", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "chart-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const toP3 = converter("p3");
  const [SIDE, COLUMNS, ROWS] = [64, 6, 4];
  // Standard deviation in levels, as a phone's sensor and a pile have it: of a perfectly flat block JPEG rounds the mean.
  const GRAIN_LEVELS = 4;
  // Six hues at three lightnesses, well inside sRGB, and six greys.
  const chart: Lab[] = [35, 55, 75].flatMap((L) => [20, 80, 140, 200, 260, 320].map((hue): Lab => ({ L, a: 20 * Math.cos((hue * Math.PI) / 180), b: 20 * Math.sin((hue * Math.PI) / 180) })))
    .concat([20, 35, 50, 65, 80, 95].map((L) => ({ L, a: 0, b: 0 })));

  async function measured(space: typeof toRgb | typeof toP3, profile: "p3" | null): Promise<Lab[]> {
    const levels = chart.map((c) => { const { r, g, b } = space(asCulori(c)); return [r, g, b].map((v) => 255 * v); });
    const size = { width: COLUMNS * SIDE, height: ROWS * SIDE };
    const pixels = Buffer.alloc(size.width * size.height * 3);
    const next = uniform(7);
    const grain = () => GRAIN_LEVELS * (next.next().value + next.next().value - 1) * Math.sqrt(6);
    for (let y = 0; y < size.height; y++) for (let x = 0; x < size.width; x++) {
      const patch = levels[Math.floor(y / SIDE) * COLUMNS + Math.floor(x / SIDE)]!;
      pixels.set(patch.map((v) => Math.min(255, Math.max(0, Math.round(v + grain())))), 3 * (y * size.width + x));
    }
    const bytes = await taggedPng(pixels, size, profile);
    const answer = await receivePhoto((async function* () { yield bytes; })(), { name: "chart.png", type: "image/png" }, folder);
    if (!answer.ok) throw new Error(answer.say);
    const copy = await pixelsOf(openPicture(path.join(folder, photoFileName(answer.photo.id, "1600"))), 1600);
    return chart.map((_, i) => {
      const [column, row] = [i % COLUMNS, Math.floor(i / COLUMNS)];
      const seen = spotColour(copy, { shape: "rectangle", x: (column + 0.25) / COLUMNS, y: (row + 0.25) / ROWS, width: 0.5 / COLUMNS, height: 0.5 / ROWS });
      if (!seen) throw new Error("no colour");
      return seen.mean;
    });
  }

  it("measures the same within 0.5 ΔE00 after being received, and as it was drawn within 1", async () => {
    const [inP3, inSrgb] = [await measured(toP3, "p3"), await measured(toRgb, null)];
    chart.forEach((drawn, i) => {
      expect(deltaE00(inP3[i]!, inSrgb[i]!)).toBeLessThan(0.5);
      expect(theirs(asCulori(inP3[i]!), asCulori(drawn))).toBeLessThan(1);
    });
  });
  it("would differ by more if the profile were ignored, so that the check can fail", async () => {
    const [unread, inSrgb] = [await measured(toP3, null), await measured(toRgb, null)];
    expect(Math.max(...chart.map((_, i) => deltaE00(unread[i]!, inSrgb[i]!)))).toBeGreaterThan(2);
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
    return taggedPng(data, { width: 64 * PATCHES.length, height: 64 }, "p3");
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
