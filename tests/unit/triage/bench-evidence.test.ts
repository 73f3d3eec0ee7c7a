import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BENCH_RESPONSES } from "../../../lib/trade/bench-responses";
import { BENCH_TESTS, type BenchTestRow, type TestId } from "../../../lib/trade/bench-tests";
import { SMALLEST_CELL } from "../../../lib/trade/likelihood-table";
import { benchEvidence, pileEvidence, readSamples, yarnEvidence } from "../../../lib/triage/bench-evidence";
import { classIndex, NAMED } from "../../../lib/triage/classes";
import { distinctFindings } from "../../../lib/triage/distinct-findings";
import type { Finding, FindingValue, Sample } from "../../../lib/triage/finding";
import { possibleTestFindings } from "../../../lib/triage/possible-tests";
import { seededRandom } from "../../../lib/triage/random";
import { stateRows } from "../../../lib/triage/yarn-states";

const FIELD: Sample = { part: "pile", yarn: "field" };
const ACCENT: Sample = { part: "pile", yarn: "accent" };
const WHOLE: Sample = { part: "pile", yarn: "whole" };
const bench = (test: string, value: FindingValue, of: Sample = FIELD, row = "1"): Finding => ({ what: `test:${test}`, value, strength: "bench", from: `bench:${row}`, of });
const dissolves = (test: string, of = FIELD, row = "1") => bench(test, { outcome: "dissolves" }, of, row);
const stays = (test: string, of = FIELD, row = "1") => bench(test, { outcome: "stays" }, of, row);

/** The joint likelihood of everything, by class. */
const joint = (findings: readonly Finding[]) => NAMED.map((_, c) => pileEvidence(findings).reduce((p, e) => p * (e.likelihood[c] as number) ** e.power, 1));
const decibans = (findings: readonly Finding[], one: (typeof NAMED)[number], other: (typeof NAMED)[number]) => {
  const all = joint(findings);
  return 10 * Math.log10((all[classIndex(one)] as number) / (all[classIndex(other)] as number));
};

describe("benchEvidence", () => {
  it("gives one piece a reading, named by test and reading, with the column of its table", () => {
    const evidence = benchEvidence([bench("burn", { smell: "hair", ash: "crushable" })]);
    expect(evidence.map((e) => e.what)).toEqual(["test:burn.smell", "test:burn.ash"]);
    const smell = BENCH_RESPONSES.find((t) => t.what === "test:burn.smell");
    expect(evidence[0]?.likelihood).toEqual(NAMED.map((f) => smell?.rows[f][smell.answers.indexOf("hair")]));
  });
  it("tempers the readings of one test the more of them there are, and other tests not", () => {
    const powers = (...findings: Finding[]) => benchEvidence(findings).map((e) => e.power);
    expect(powers(bench("burn", { smell: "hair" }))).toEqual([1]);
    const [two] = powers(bench("burn", { smell: "hair", ash: "crushable" }));
    const [three] = powers(bench("burn", { smell: "hair", ash: "crushable", flame: "slow" }));
    expect(two).toBeLessThan(1);
    expect(three).toBeLessThan(two as number);
    expect(powers(dissolves("hypochlorite"), dissolves("acetone"))).toEqual([1, 1]);
  });
  it("hears nothing in tests of spots, unknown answers, or values that are none", () => {
    const silent = [
      bench("dye-bleed", { colour: "red", water: "strong" }, WHOLE), bench("spot-ph", { place: "affected", ph: 9 }, WHOLE), bench("ultraviolet",
        { place: "affected", glow: "blue-white" }, WHOLE),
      bench("moisture", { place: "affected", percent: 30 }, WHOLE), bench("burn", { smell: "roses" }), bench("burn", "hair"), bench("burn", 3),
        bench("unheard-of", { outcome: "dissolves" }), bench("burn", {}),
    ];
    expect(benchEvidence(silent)).toEqual([]);
    expect(pileEvidence(silent)).toEqual([]);
  });
  it("counts a test that was repeated with the same answer once, and averages answers that disagree", () => {
    const once = benchEvidence([dissolves("hypochlorite")])[0]?.likelihood as number[];
    const again = benchEvidence([dissolves("hypochlorite"), dissolves("hypochlorite", FIELD, "2")]);
    expect(again).toHaveLength(1);
    expect(again[0]?.findings).toHaveLength(2);
    expect(again[0]?.likelihood).toEqual(once);
    const other = benchEvidence([stays("hypochlorite")])[0]?.likelihood as number[];
    const mixed = benchEvidence([dissolves("hypochlorite"), stays("hypochlorite", FIELD, "2")])[0]?.likelihood as number[];
    mixed.forEach((p, i) => expect(p).toBeCloseTo(((once[i] as number) + (other[i] as number)) / 2, 12));
  });
  it("bears a finding that was given twice once", () => {
    expect(benchEvidence([dissolves("hypochlorite"), dissolves("hypochlorite")])[0]?.findings).toHaveLength(1);
  });
  it("draws anew within .001 and 1, around the row", () => {
    const [piece] = benchEvidence([dissolves("hypochlorite")]);
    const random = seededRandom(7, "hypochlorite");
    const silk = Array.from({ length: 400 }, () => piece?.draw(random)[NAMED.indexOf("silk")] as number);
    expect(Math.min(...silk)).toBeGreaterThanOrEqual(SMALLEST_CELL);
    expect(Math.max(...silk)).toBeLessThanOrEqual(1);
    expect(silk.reduce((a, b) => a + b, 0) / silk.length).toBeCloseTo(piece?.likelihood[NAMED.indexOf("silk")] as number, 1);
  });
});

describe("pileEvidence", () => {
  it("is none without bench or laboratory findings", () => {
    expect(pileEvidence([{ what: "shine", value: "none", strength: "told", from: "client" }])).toEqual([]);
  });
  it("multiplies, over the tests of one yarn, to the exact sum over what the yarn may be", () => {
    const findings = [dissolves("hypochlorite"), dissolves("sulphuric-acid-75"), bench("burn", { smell: "hair", flame: "slow" })];
    const tests = yarnEvidence(readSamples(findings), "pile:field");
    const exact = stateRows("field").map((row) => row.reduce((sum, p, s) => sum + p * tests.reduce((q, t) => q * (t.likelihood[s] as number), 1), 0));
    joint(findings).forEach((p, c) => expect(p).toBeCloseTo(exact[c] as number, 12));
  });
  it("reads animal fibre in the field and plant fibre in the accent as wool with viscose", () => {
    const findings = [dissolves("hypochlorite", FIELD), stays("sulphuric-acid-75", FIELD), stays("hypochlorite", ACCENT), dissolves("formic-acid-zinc-chloride", ACCENT)];
    for (const other of ["wool", "viscose", "silk", "wool-silk", "silk-viscose"] as const) expect(decibans(findings, "wool-viscose", other)).toBeGreaterThan(5);
  });
  it("reads a whole sample that dissolves in part as a blend of an animal with another fibre", () => {
    const partly = [bench("hypochlorite", { outcome: "partly" }, WHOLE)];
    for (const one of ["wool-viscose", "silk-viscose"] as const) for (const other of ["wool", "silk", "viscose", "cotton",
      "wool-silk"] as const) expect(decibans(partly, one, other)).toBeGreaterThan(8);
  });
  it("lets an accent in another fibre stand beside a pile of wool alone: silk outlines are no proof of a blend", () => {
    const silkAccent = [dissolves("hypochlorite", ACCENT), dissolves("sulphuric-acid-75", ACCENT)];
    expect(decibans(silkAccent, "wool-silk", "wool")).toBeGreaterThan(5);
    expect(decibans(silkAccent, "wool-silk", "wool")).toBeLessThan(15);
  });
  it("hears nothing of the pile in tests of ground and fringe", () => {
    expect(pileEvidence([dissolves("hypochlorite", { part: "ground", yarn: "whole" }), dissolves("hypochlorite", { part: "fringe", yarn: "whole" })])).toEqual([]);
  });
  it("takes a test without a sample as of the pile as a whole", () => {
    const { of, ...unsaid } = dissolves("acetone", WHOLE);
    expect(of).toEqual(WHOLE);
    expect(joint([unsaid])).toEqual(joint([dissolves("acetone", WHOLE)]));
  });
});

/** Any test with any of its answers, or none, of any sample. */
const anyTest = fc.constantFrom(...(Object.keys(BENCH_TESTS) as TestId[])).chain((test) => {
  const readings = Object.entries((BENCH_TESTS[test] as BenchTestRow).readings);
  const values = Object.fromEntries(readings.map(([id, r]) => [id,
    r.kind === "choice" ? fc.constantFrom(...Object.keys(r.answers)) : r.kind === "number" ? fc.double({ noNaN: false }) : fc.string()]));
  return fc.record({
    what: fc.constant(`test:${test}`), value: fc.record(values, { requiredKeys: [] }) as fc.Arbitrary<FindingValue>, strength: fc.constant("bench" as const),
    from: fc.constantFrom("bench:1", "bench:2", "bench:3"), of: fc.constantFrom(FIELD, ACCENT, WHOLE, { part: "ground", yarn: "whole" } as Sample),
  });
});

describe("any findings of the bench", () => {
  it("give finite likelihoods above zero, contradictory or not, drawn or not", () => {
    fc.assert(fc.property(fc.array(anyTest, { maxLength: 14 }), (findings) => {
      for (const e of pileEvidence(findings)) for (const v of [e.likelihood, e.draw(seededRandom(1, e.group))]) {
        expect(v).toHaveLength(NAMED.length);
        for (const p of v) expect(Number.isFinite(p) && p > 0 && p <= 1 + 1e-9).toBe(true);
      }
    }));
  });
  it("in any order, and given twice, say the same", () => {
    fc.assert(fc.property(fc.array(anyTest, { maxLength: 8 }).chain((a) => fc.tuple(fc.constant(a), fc.shuffledSubarray([...a, ...a],
      { minLength: 2 * a.length }))), ([once, twice]) => {
      expect(joint(twice)).toEqual(joint(once));
    }));
  });
});

describe("distinctFindings", () => {
  it("keeps the same reading of two samples as two", () => {
    expect(distinctFindings([dissolves("acetone", FIELD), dissolves("acetone", ACCENT), dissolves("acetone", FIELD)])).toHaveLength(2);
  });
  it("looks past the order of a value’s fields", () => {
    expect(distinctFindings([bench("burn", { smell: "hair", ash: "crushable" }), bench("burn", { ash: "crushable", smell: "hair" })])).toHaveLength(1);
  });
});

describe("possibleTestFindings", () => {
  it.each(Object.keys(BENCH_TESTS) as TestId[])("%s: chances over its answers sum to 1 for every class; none where it tells no fibre", (test) => {
    const possible = possibleTestFindings(test);
    if (BENCH_TESTS[test].speaksFor === "spot") expect(possible).toEqual([]);
    else NAMED.forEach((_, c) => expect(possible.reduce((sum, p) => sum + (p.column[c] as number), 0)).toBeCloseTo(1, 9));
  });
  it("has for each answer the column that the finding would give", () => {
    for (const { finding, column } of possibleTestFindings("hypochlorite")) pileEvidence([finding])[0]?.likelihood.forEach((p,
      c) => expect(p).toBeCloseTo(column[c] as number, 12));
  });
});
