import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { BENCH_RESPONSES } from "../../lib/trade/bench-responses";
import { bandShares } from "../../lib/trade/bench-responses-wet";
import { ANALYSED_FIBRES } from "../../lib/trade/quantitative";
import type { SingleFibre } from "../../lib/trade/single-fibres";

/** Published and remembered fibre properties; each row names its source and how it is known. */
interface Row { fibre: string; property: string; value: string | number; how: string; source: string }
const ROWS = JSON.parse(readFileSync(path.join(import.meta.dirname, "data/fibre-properties.json"), "utf8")) as Row[];

const NAMES: Readonly<Record<string, SingleFibre>> = {
  wool: "wool", silk: "silk", viscose: "viscose", rayon: "viscose", "viscose (regular)": "viscose", "modal/HWM": "lyocell", lyocell: "lyocell",
    modal: "lyocell", cotton: "cotton", flax: "bast",
  hemp: "bast", "flax/linen": "bast", jute: "hard-fibre", acetate: "acetate", nylon: "polyamide", "nylon 6": "polyamide", "nylon 6,6": "polyamide",
    PET: "polyester", polyester: "polyester",
  polypropylene: "polypropylene", acrylic: "acrylic",
};
interface Span { fibre: SingleFibre; least: number; most: number }

/** The span of all figures given for each fibre; "14, 16-18" spans 14 to 18. */
function spans(rows: readonly Row[]): Span[] {
  const known = rows.flatMap((r) => {
    const fibre = NAMES[r.fibre];
    return fibre ? (String(r.value).match(/\d+(\.\d+)?/g) ?? []).map((figure) => ({ fibre, figure: Number(figure) })) : [];
  });
  return [...new Set(known.map((k) => k.fibre))].map((fibre) => {
    const figures = known.filter((k) => k.fibre === fibre).map((k) => k.figure);
    return { fibre, least: Math.min(...figures), most: Math.max(...figures) };
  });
}
/** Pairs whose published spans do not meet: there the order is agreed. */
const ordered = (all: readonly Span[]) => all.flatMap((low) => all.filter((high) => low.most < high.least).map((high) => [low.fibre, high.fibre] as const));

describe("moisture regain (NRC 2001, table 11.1; ASTM D1909 and Morton and Hearle as cited in Bioresources and Bioprocessing 2020; textilecalculation.blogspot.com)", () => {
  const regains = spans(ROWS.filter((r) => r.how === "read" && r.property !== "wet/dry strength ratio"));
  const allowance = (fibre: SingleFibre) => Math.max(...ANALYSED_FIBRES.filter((f) => f.single === fibre).map((f) => f.allowancePercent));

  /** An allowance is "a purely arbitrary value arrived at for commercial purposes" (ASTM D1909-04, 4.1): acetate’s 9 % stands above cotton’s 8.5 %, though it takes up less. */
  const AGAINST_THE_ORDER = ["acetate before cotton"];

  it("orders the agreed allowances wherever published spans do not meet, but for the one pair the regulation has the other way", () => {
    const pairs = ordered(regains);
    expect(pairs.length).toBeGreaterThan(25);
    const against = pairs.filter(([drier, thirstier]) => allowance(drier) >= allowance(thirstier)).map(([drier, thirstier]) => `${drier} before ${thirstier}`);
    expect(against).toEqual(AGAINST_THE_ORDER);
  });
});

describe("wet over dry strength (mytextilenotes.blogspot.com 2012, read; textbook ranges, from memory)", () => {
  const table = BENCH_RESPONSES.find((t) => t.what === "test:wet-strength.wet");
  /** How much of the row says it keeps its strength, less how much says it loses it. */
  const keeps = (fibre: SingleFibre) => {
    const row = table?.rows[fibre] ?? [];
    return (row[table?.answers.indexOf("as-strong") as number] as number) - (row[table?.answers.indexOf("much-weaker") as number] as number);
  };
  const ratios = spans(ROWS.filter((r) => r.property === "wet/dry strength ratio"));

  it("orders the responses wherever spans do not meet", () => {
    const pairs = ordered(ratios);
    expect(pairs.length).toBeGreaterThan(20);
    for (const [weaker, stronger] of pairs) expect(keeps(weaker), `${weaker} before ${stronger}`).toBeLessThanOrEqual(keeps(stronger) + 1e-9);
  });

  it("viscose is the likeliest to be much weaker wet, with acetate; cotton and linen the least", () => {
    for (const dry of ["silk", "wool", "cotton", "bast", "polyester"] as const) expect(keeps("viscose")).toBeLessThan(keeps(dry));
  });

  it("shares a published range out over the bands it spans", () => {
    expect(bandShares({ least: 0.57, most: 0.77 })["much-weaker"]).toBeCloseTo(0.5, 9);
    expect(bandShares({ least: 1.14, most: 1.14 })).toEqual({ "much-weaker": 0, "little-weaker": 0, "as-strong": 1 });
  });
});
