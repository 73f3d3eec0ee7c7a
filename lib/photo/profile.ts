import { FROM_XYZ, levelOf } from "./colour";

/**
 * Colours with a profile turned into sRGB by tables, for profiles of the kind that cameras write: RGB, three curves and a
 * matrix (ICC.1:2022, 8.3.3). A pixel's red, green and blue level each add something to its light: to that of red (upper
 * 16 bits) and of green (lower 16), and to that of blue. The sums are indexes into `level`.
 */
export interface ToSrgb { readonly redGreen: readonly Int32Array[]; readonly blue: readonly Int32Array[]; readonly level: Uint8Array }

/** Steps from black to white: less than a fifth of a level where sRGB is steepest, at its dark end. */
const STEPS = 1 << 14;
/** The white of profiles, D50, brought to D65 (Bradford; sample code of CSS Color Module Level 4). Row by row. */
const D50_TO_D65 = [
  0.955473421488075, -0.02309845494876471, 0.06325924320057072,
  -0.0283697093338637, 1.0099953980813041, 0.021041441191917323,
  0.012314014864481998, -0.020507649298898964, 1.330365926242124,
] as const;

type Matrix = readonly number[];
const times = (a: Matrix, b: Matrix): Matrix =>
  Array.from({ length: 9 }, (_, i) => [0, 1, 2].reduce((sum, k) => sum + a[3 * Math.floor(i / 3) + k]! * b[3 * k + (i % 3)]!, 0));

/** The tables of a profile; null where it is of another kind, or damaged. */
export function toSrgbOf(icc: Uint8Array): ToSrgb | null {
  const profile = Buffer.from(icc.buffer, icc.byteOffset, icc.byteLength);
  try {
    const tag = tagsOf(profile);
    if (profile.toString("latin1", 16, 24) !== "RGB XYZ " || tag("A2B0") || tag("D2B0")) return null;
    const [red, green, blue] = ["rXYZ", "gXYZ", "bXYZ"].map((name) => xyzIn(tag(name)));
    const curves = ["rTRC", "gTRC", "bTRC"].map((name) => curveIn(tag(name)));
    const toXyz = [0, 1, 2].flatMap((row) => [red![row]!, green![row]!, blue![row]!]);
    return tablesOf(times(times(FROM_XYZ, D50_TO_D65), toXyz), curves);
  } catch {
    return null;
  }
}

/** Levels by which a profile may differ from sRGB and still be it: tables of one and the same curve round in other places. */
const SAME_LEVELS = 1;
const SAMPLES = [0, 32, 64, 96, 128, 160, 192, 224, 255];

/** Does a profile mean sRGB, to within a level, over the whole of its colours? */
export function isSrgb(icc: Uint8Array): boolean {
  const tables = toSrgbOf(icc);
  return tables !== null && SAMPLES.every((r) => SAMPLES.every((g) => SAMPLES.every((b) => throughTables(tables, r, g, b).every((v, k) => Math.abs(v - [r, g, b][k]!) <= SAME_LEVELS))));
}

function throughTables({ redGreen: [rgOfR, rgOfG, rgOfB], blue: [bOfR, bOfG, bOfB], level }: ToSrgb, r: number, g: number, b: number): number[] {
  const light = rgOfR![r]! + rgOfG![g]! + rgOfB![b]!;
  return [level[light >>> 16]!, level[light & 0xffff]!, level[bOfR![r]! + bOfG![g]! + bOfB![b]!]!];
}

/** Lists the tags of a profile (7.3); the answer gives one its bytes, null where there is none. */
function tagsOf(profile: Buffer): (name: string) => Buffer | null {
  const tags = new Map(Array.from({ length: profile.readUInt32BE(128) }, (_, n) => {
    const at = 132 + 12 * n, from = profile.readUInt32BE(at + 4);
    return [profile.toString("latin1", at, at + 4), profile.subarray(from, from + profile.readUInt32BE(at + 8))];
  }));
  return (name) => tags.get(name) ?? null;
}

const typed = (tag: Buffer | null, ...types: string[]): Buffer => {
  if (!tag || !types.includes(tag.toString("latin1", 0, 4))) throw new RangeError(`Expected a tag of type ${types.join(" or ")}`);
  return tag;
};
/** s15Fixed16Number (4.6). */
const fixed = (tag: Buffer, at: number): number => tag.readInt32BE(at) / 65_536;
const xyzIn = (tag: Buffer | null): number[] => [8, 12, 16].map((at) => fixed(typed(tag, "XYZ "), at));

/** Light of each of 256 levels, 0 to 1: a table or a gamma (10.6), or a formula (10.18). */
function curveIn(found: Buffer | null): number[] {
  const tag = typed(found, "curv", "para");
  const lightOf = tag.toString("latin1", 0, 4) === "para" ? formulaIn(tag) : sampledIn(tag);
  return Array.from({ length: 256 }, (_, level) => Math.min(1, Math.max(0, lightOf(level / 255))));
}

function sampledIn(tag: Buffer): (v: number) => number {
  const count = tag.readUInt32BE(8);
  if (count === 0) return (v) => v;
  if (count === 1) return (v) => v ** (tag.readUInt16BE(12) / 256);
  return (v) => {
    const at = v * (count - 1), low = Math.min(count - 2, Math.floor(at));
    const [before, after] = [tag.readUInt16BE(12 + 2 * low), tag.readUInt16BE(14 + 2 * low)];
    return (before + (at - low) * (after - before)) / 65_535;
  };
}

/** Parameters by type: g; g a b; g a b c; g a b c d; g a b c d e f. */
function formulaIn(tag: Buffer): (v: number) => number {
  const type = tag.readUInt16BE(8);
  const count = [1, 3, 4, 5, 7][type];
  if (count === undefined) throw new RangeError(`Expected a curve of type 0 to 4 but received ${type}`);
  const [g = 1, a = 1, b = 0, c = 0, d = 0, e = 0, f = 0] = Array.from({ length: count }, (_, n) => fixed(tag, 12 + 4 * n));
  const steep = (v: number) => (a * v + b) ** g;
  if (type === 0) return (v) => v ** g;
  if (type === 1) return (v) => (v >= -b / a ? steep(v) : 0);
  if (type === 2) return (v) => (v >= -b / a ? steep(v) + c : c);
  return (v) => (v >= d ? steep(v) + e : c * v + f);
}

/** All sums are brought above nought by what red adds, so that no pixel needs to be held against the ends. */
function tablesOf(matrix: Matrix, curves: readonly number[][]): ToSrgb | null {
  const adds = matrix.map((factor, i) => curves[i % 3]!.map((light) => Math.round(STEPS * factor * light)));
  const ends = (pick: (...values: number[]) => number) => [0, 3, 6].map((row) => [0, 1, 2].reduce((sum, k) => sum + pick(...adds[row + k]!), 0));
  const least = Math.min(0, ...ends(Math.min)), most = Math.max(STEPS, ...ends(Math.max));
  if (most - least >= 1 << 16) return null;
  const raised = adds.map((values, i) => values.map((v) => (i % 3 === 0 ? v - least : v)));
  const channels = [0, 1, 2].map((k) => ({ red: raised[k]!, green: raised[3 + k]!, blue: raised[6 + k]! }));
  return {
    redGreen: channels.map(({ red, green }) => Int32Array.from(red, (v, level) => v * (1 << 16) + green[level]!)),
    blue: channels.map(({ blue }) => Int32Array.from(blue)),
    level: Uint8Array.from({ length: most - least + 1 }, (_, i) => Math.round(levelOf((i + least) / STEPS))),
  };
}
