import { SIGN_LIMITS, type SignId } from "../trade/signs";

type Reading = string | number | boolean | null;
export interface SpotTest { readonly what: string; readonly value: Readonly<Record<string, Reading>> }

/** What the tests of places and colours show, and what they would have shown and did not. */
export interface Signs {
  readonly shown: readonly SignId[];
  readonly absent: readonly SignId[];
  /** How the colours stood in a dye test: `held` all of them in everything tried, `moved` one clearly, `doubt` one a little; null: not tested. */
  readonly dyes: "held" | "doubt" | "moved" | null;
}

const NO_SIGNS: Signs = { shown: [], absent: [], dyes: null };

/** The readings of one number at one place. */
function numbersAt(tests: readonly SpotTest[], what: string, reading: string, place: "affected" | "untouched"): number[] {
  return tests.filter((t) => t.what === what && t.value["place"] === place).map((t) => t.value[reading])
    .filter((x): x is number => typeof x === "number" && Number.isFinite(x));
}
const mean = (xs: readonly number[]): number | null => (xs.length > 0 ? xs.reduce((a, b) => a + b, 0) / xs.length : null);

/** The readings of a place and of an untouched one, doubles counted once. */
function pairOf(tests: readonly SpotTest[], what: string, reading: string): { here: number; there: number | null } | null {
  const at = (place: "affected" | "untouched") => mean([...new Set(numbersAt(tests, what, reading, place))].sort((a, b) => a - b));
  const here = at("affected");
  return here === null ? null : { here, there: at("untouched") };
}

/** Alkaline, acid, both absent, or nothing where the place was not read. */
function acidity(tests: readonly SpotTest[]): readonly [SignId, boolean][] {
  const ph = pairOf(tests, "test:spot-ph", "ph");
  if (!ph) return [];
  const by = ph.there === null ? Infinity : ph.here - ph.there;
  return [
    ["alkaline", ph.here >= SIGN_LIMITS.alkalineFrom && by >= SIGN_LIMITS.differsBy],
    ["acid", ph.here <= SIGN_LIMITS.acidUpTo && (ph.there === null || -by >= SIGN_LIMITS.differsBy)],
  ];
}

function wetness(tests: readonly SpotTest[]): readonly [SignId, boolean][] {
  const percent = pairOf(tests, "test:moisture", "percent");
  if (!percent) return [];
  return [["still-wet", percent.there === null ? percent.here >= SIGN_LIMITS.wetFrom : percent.here - percent.there >= SIGN_LIMITS.wetterBy]];
}

/** What glows in the trouble and not where nothing has happened. */
function glows(tests: readonly SpotTest[]): readonly [SignId, boolean][] {
  const seen = (place: string) => tests.filter((t) => t.what === "test:ultraviolet" && t.value["place"] === place).map((t) => t.value["glow"]).filter((g) => typeof g === "string");
  const [here, there] = [seen("affected"), seen("untouched")];
  if (here.length === 0) return [];
  const only = (glow: string) => here.includes(glow) && !there.includes(glow);
  return [["glows-yellow", only("yellow-green")], ["glows-blue", only("blue-white")]];
}

const MEDIA = ["water", "acid", "alkali"] as const;
function dyeTest(tests: readonly SpotTest[]): { dyes: Signs["dyes"]; sign: readonly [SignId, boolean][] } {
  const read = tests.filter((t) => t.what === "test:dye-bleed");
  const all = read.flatMap((t) => MEDIA.map((m) => t.value[m])).filter((x) => x === "none" || x === "slight" || x === "strong");
  if (all.length === 0) return { dyes: null, sign: [] };
  const inWater = read.map((t) => t.value["water"]);
  const moved = all.includes("strong");
  const dyes = moved ? "moved" : all.includes("slight") || !inWater.includes("none") ? "doubt" : "held";
  return { dyes, sign: [["dye-moved", moved || inWater.includes("slight")]] };
}

/** The signs of all tests of places, in any order. Readings that are no numbers or no answers say nothing. */
export function signsOf(tests: readonly SpotTest[]): Signs {
  if (tests.length === 0) return NO_SIGNS;
  const { dyes, sign } = dyeTest(tests);
  const all = [...acidity(tests), ...wetness(tests), ...glows(tests), ...sign];
  return { dyes, shown: all.filter(([, shown]) => shown).map(([s]) => s), absent: all.filter(([, shown]) => !shown).map(([s]) => s) };
}
