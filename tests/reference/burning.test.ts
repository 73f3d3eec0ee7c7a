import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { BENCH_RESPONSES } from "../../lib/trade/bench-responses";
import { SINGLE_FIBRES, type SingleFibre } from "../../lib/trade/single-fibres";
import { flatPosterior, topOf, type TestReading } from "./bench-helpers";

/** Published burning behaviour, in the words of each source. */
interface Row { fibre: string; source: string; how: string; approach?: string; in_flame?: string; removed?: string; smell?: string; ash?: string }
const ROWS = JSON.parse(readFileSync(path.join(import.meta.dirname, "data/burning-behaviour.json"), "utf8")) as Row[];

/** The published words for each fibre of ours. */
const NAMES: readonly (readonly [RegExp, readonly SingleFibre[]])[] = [
  [/animal/, ["wool", "silk"]], [/vegetable/, ["cotton", "bast", "hard-fibre"]], [/viscose|rayon/, ["viscose"]], [/lyocell/, ["lyocell"]], [/acetate/, ["acetate"]],
  [/nylon/, ["polyamide"]], [/polyester/, ["polyester"]], [/acrylic/, ["acrylic"]], [/cotton/, ["cotton"]], [/linen|flax/, ["bast"]], [/wool/, ["wool"]],
    [/silk/, ["silk"]], [/olefin|polypropylene/, ["polypropylene"]],
];
const fibresOf = (row: Row) => NAMES.filter(([name]) => name.test(row.fibre)).flatMap(([, fibres]) => fibres);

/** The chance of misreading a burn that the tables allow for. */
const BURN_ERROR = 0.1;

/** Words to answers: the first pattern that fits. */
const WORDS: Readonly<Record<string, { of: keyof Row; says: readonly (readonly [RegExp, string | null])[] }>> = {
  approach: { of: "approach", says: [[/melt|fuse|shrink/, "melts"], [/curl/, "curls"], [/scorch|ignite/, "scorches"]] },
  flame: {
    of: "in_flame",
    says: [
      [/without melting/, "slow"], [/melt|drip/, "melting"], [/rapid/, "quick"], [/slow|difficult|not burn readily|sputter|shrivel/, "slow"],
      [/quick|fast|vigor|easily|readily|steady/, "quick"],
    ],
  },
  removal: {
    of: "removed",
    says: [
      [/difficult to extinguish/, "burns-on"], [/self-extinguish|die out|with difficulty/, "goes-out"], [/no (or brief |after)*glow/i, "burns-on"],
      [/glow|ember/i, "glows"], [/continues/, "burns-on"],
    ],
  },
  smell: {
    of: "smell",
    says: [
      [/hair|feather/, "hair"], [/paper|leaves|wood/i, "paper"], [/vinegar/, "vinegar"], [/wax|paraffin/, "wax"], [/celery/, "celery"],
      [/acrid|chemical|pungent|meat/, "sharp"], [/sweet/, "sweet"],
    ],
  },
  ash: {
    of: "ash",
    says: [
      [/almost no|slight|very little/, "hardly-any"], [/difficult to crush/, "hard-black"], [/crushable|powders/, "crushable"],
      [/feather|fluffy|fine|^grey$/, "feathery"], [/(hard|tough).*(gray|tan|brown)/, "hard-pale"], [/hard/, "hard-black"],
    ],
  },
};
function readingsOf(row: Row): Record<string, string> {
  const read = Object.entries(WORDS).map(([reading, { of, says }]) => [reading,
    row[of] === undefined ? null : (says.find(([words]) => words.test(row[of] as string))?.[1] ?? null)] as const);
  return Object.fromEntries(read.filter((r): r is readonly [string, string] => r[1] !== null));
}

/** SCA burn-test handout: a flame “cannot tell which animal or which vegetable fibre”. Iowa State gives the melting fibres one row. */
const GROUPS: readonly (readonly SingleFibre[])[] = [
  ["wool", "silk"], ["cotton", "mercerised-cotton", "viscose", "lyocell", "bast", "hard-fibre"], ["acetate", "polyamide", "polyester", "polypropylene", "acrylic"],
];
const groupOf = (fibre: SingleFibre) => GROUPS.find((g) => g.includes(fibre)) as readonly SingleFibre[];

const cases = ROWS.flatMap((row) => {
  const readings = readingsOf(row);
  return Object.keys(readings).length > 0 ? fibresOf(row).map((fibre) => ({ fibre, source: row.source, how: row.how, readings })) : [];
});
const every = (fibre: SingleFibre): TestReading[] => cases.filter((c) => c.fibre === fibre).map((c) => ["burn", c.readings]);

describe("published burning behaviour (each source as named in data/burning-behaviour.json)", () => {
  it("is understood: nine sources or more, and words for every fibre but lyocell and mercerised cotton", () => {
    expect(new Set(cases.map((c) => c.source)).size).toBeGreaterThanOrEqual(9);
    const without = SINGLE_FIBRES.filter((f) => !cases.some((c) => c.fibre === f));
    expect(without).toEqual(["lyocell", "mercerised-cotton"]);
  });

  it.each(cases.map((c) => [c.fibre, c.source, c] as const))("puts %s, or what a flame cannot tell from it, on top: %s", (fibre, _, { readings }) => {
    expect(groupOf(fibre), JSON.stringify(readings)).toContain(topOf(flatPosterior(["burn", readings])));
  });

  it.each(SINGLE_FIBRES.filter((f) => every(f).length > 1))("%s: all its sources together, contradictions and all, give its group nine tenths", (fibre) => {
    const posterior = flatPosterior(...every(fibre));
    expect(groupOf(fibre).reduce((sum, f) => sum + posterior[f], 0)).toBeGreaterThan(0.9);
  });

  it.each(["acetate", "polyamide", "polyester", "polypropylene", "acrylic"] as const)("%s comes first among the melting fibres by all its sources together", (fibre) => {
    expect(topOf(flatPosterior(...every(fibre)))).toBe(fibre);
  });

  it("keeps every published statement, those that contradict each other too: none is left to the chance of a misreading", () => {
    for (const { fibre, source, readings } of cases)
      for (const [reading, answer] of Object.entries(readings)) {
        const table = BENCH_RESPONSES.find((t) => t.what === `test:burn.${reading}`);
        const misread = BURN_ERROR / (table?.answers.length as number);
        expect(table?.rows[fibre][table.answers.indexOf(answer)], `${source}: ${fibre}, ${reading}, ${answer}`).toBeGreaterThan(1.5 * misread);
      }
  });

  it("hardly separates silk from wool, or viscose from cotton, whatever is read: under 5 dB", () => {
    for (const { readings } of cases) {
      const p = flatPosterior(["burn", readings]);
      expect(Math.abs(10 * Math.log10(p.silk / p.wool))).toBeLessThan(5);
      expect(Math.abs(10 * Math.log10(p.viscose / p.cotton))).toBeLessThan(5);
    }
  });
});
