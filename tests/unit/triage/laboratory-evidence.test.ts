import { describe, expect, it } from "vitest";
import { LABORATORY_RIGHT } from "../../../lib/trade/yarns";
import { pileEvidence } from "../../../lib/triage/bench-evidence";
import { classIndex, CLASSES, NAMED } from "../../../lib/triage/classes";
import type { Finding, FindingValue, Sample } from "../../../lib/triage/finding";
import { classOfComposition, laboratoryEvidence, readComposition } from "../../../lib/triage/laboratory-evidence";
import { seededRandom } from "../../../lib/triage/random";

const report = (value: FindingValue, of?: Sample, name = "Hallowmere"): Finding => ({ what: "laboratory", value, strength: "laboratory",
  from: `laboratory:${name}`, ...(of ? { of } : {}) });
const classOf = (value: FindingValue) => {
  const composition = readComposition(value);
  return composition && classOfComposition(composition);
};

describe("readComposition", () => {
  it("reads per cents that add up to 100, give or take one", () => {
    expect(readComposition({ wool: 80, viscose: 20 })).toEqual(new Map([["wool", 80], ["viscose", 20]]));
    expect(readComposition({ wool: 99 })).not.toBeNull();
    expect(readComposition({ wool: 98.9 })).toBeNull();
    expect(readComposition({ wool: 101.1 })).toBeNull();
  });
  it.each([[{ wool: 120, silk: -20 }], [{ wool: Number.NaN }], [{ wool: Infinity }], [{ unobtainium: 100 }], [{ wool: "100" }], [{}], ["wool"], [100],
    [["wool"]], [{ "wool-silk": 100 }], [{ wool: null }]])(
    "reads nothing in %j", (value) => expect(readComposition(value as FindingValue)).toBeNull());
});

describe("classOfComposition", () => {
  it.each([
    [{ silk: 100 }, "silk"], [{ wool: 90, silk: 10 }, "wool-silk"], [{ wool: 91, silk: 9 }, "wool"], [{ wool: 70, viscose: 30 }, "wool-viscose"], [{ cotton: 20,
      viscose: 80 }, "cotton-viscose"],
    [{ wool: 50, silk: 25, viscose: 25 }, "wool-viscose"], [{ viscose: 40, polyester: 60 }, "viscose"], [{ wool: 80, polyamide: 20 }, "wool"], [{ polyester: 50,
      acrylic: 50 }, "other"], [{ other: 100 }, "other"],
    [{ cotton: 95, other: 5 }, "cotton"],
  ])("%j is %s", (value, expected) => expect(classOf(value)).toBe(expected));
});

describe("laboratoryEvidence", () => {
  it("is .97 likely under the class found, the rest even over all others", () => {
    const [evidence] = laboratoryEvidence([report({ silk: 100 })]);
    expect(evidence?.likelihood[classIndex("silk")]).toBeCloseTo(LABORATORY_RIGHT, 12);
    expect(evidence?.likelihood.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(evidence?.likelihood[classIndex("other")]).toBeCloseTo((1 - LABORATORY_RIGHT) / (CLASSES.length - 1), 12);
  });
  it("takes two reports that disagree as either being right, and the same found twice as once", () => {
    const likelihood = (...findings: Finding[]) => laboratoryEvidence(findings)[0]?.likelihood ?? [];
    const both = likelihood(report({ silk: 100 }), report({ viscose: 100 }, undefined, "Tarn"));
    expect(both[classIndex("silk")]).toBeCloseTo(both[classIndex("viscose")] as number, 12);
    expect(likelihood(report({ silk: 100 }), report({ silk: 99, cotton: 1 }, undefined, "Tarn"))).toEqual(likelihood(report({ silk: 100 })));
  });
  it("says nothing where the report is no composition", () => {
    expect(laboratoryEvidence([report({ silk: 60 }), report("silk")])).toEqual([]);
  });
});

describe("laboratory reports in pileEvidence", () => {
  const item = (value: FindingValue, of?: Sample) => pileEvidence([report(value, of)])[0];
  it("names the class where the report is of the pile as a whole", () => {
    const whole = item({ wool: 75, viscose: 25 });
    expect(whole?.strength).toBe("laboratory");
    expect(whole?.likelihood[classIndex("wool-viscose")]).toBeCloseTo(LABORATORY_RIGHT, 12);
    expect(whole?.other).toBeLessThan(0.01);
  });
  it("speaks of a yarn for the classes that may have such a yarn", () => {
    const accent = item({ viscose: 100 }, { part: "pile", yarn: "accent" });
    const at = (fibre: (typeof NAMED)[number]) => accent?.likelihood[classIndex(fibre)] as number;
    expect(at("viscose")).toBeGreaterThan(at("wool") * 5);
    expect(at("wool-viscose")).toBeGreaterThan(at("wool") * 5);
    expect(at("wool")).toBeGreaterThan(at("polyester"));
  });
  it("leaves a pile of wool possible where its accent is found to be something not named, such as metal thread", () => {
    const field = item({ other: 100 }, { part: "pile", yarn: "field" });
    const accent = item({ other: 100 }, { part: "pile", yarn: "accent" });
    const favours = (e: typeof field) => (e?.other as number) / (e?.likelihood[classIndex("wool")] as number);
    expect(favours(field)).toBeGreaterThan(favours(accent));
    expect(favours(accent)).toBeLessThan(30);
  });
  it("says nothing of the pile where it is of the ground", () => expect(item({ cotton: 100 }, { part: "ground", yarn: "whole" })).toBeUndefined());
  it("draws anew, finite and above zero", () => {
    for (const of of [undefined, { part: "pile", yarn: "field" } as const]) for (const p of item({ silk: 100 }, of)?.draw(seededRandom(3,
      "lab")) ?? [Number.NaN]) expect(p > 0 && p <= 1).toBe(true);
  });
});
