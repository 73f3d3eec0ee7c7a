import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GROUNDS } from "../../../lib/trade/ground-fringe";
import type { FibreId } from "../../../lib/trade/fibres";
import { SINGLE_FIBRES } from "../../../lib/trade/single-fibres";
import { CLASSES } from "../../../lib/triage/classes";
import { judgeComponents } from "../../../lib/triage/components";
import type { Finding, FindingValue, Sample } from "../../../lib/triage/finding";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { told } from "./belief-helpers";

const bench = (test: string, value: FindingValue, of: Sample): Finding => ({ what: `test:${test}`, value, strength: "bench", from: "bench:1", of });
const at = (part: Sample["part"], yarn: Sample["yarn"]): Sample => ({ part, yarn });
const beliefs = (weights: Partial<Record<FibreId, number>>): Record<FibreId, number> => {
  const given = Object.values(weights).reduce((a, b) => a + b, 0);
  return Object.fromEntries(CLASSES.map((c) => [c, weights[c] ?? (1 - given) / (CLASSES.length - Object.keys(weights).length)])) as Record<FibreId, number>;
};
const UNSURE = beliefs({ wool: 0.4, "wool-viscose": 0.3, viscose: 0.1 });
const judge = (findings: Finding[], classPosterior = UNSURE) => judgeComponents({ findings, classPosterior });
const one = (part: string, yarn: string, findings: Finding[], classes = UNSURE) => judge(findings, classes).find((c) => c.part === part && c.yarn === yarn);
const chance = (belief: ReturnType<typeof one>, fibre: string) => belief?.fibres.find((f) => f.fibre === fibre)?.probability as number;

describe("judgeComponents: yarns of the pile", () => {
  it("says nothing where no test or report speaks for a yarn", () => {
    expect(judge([told("shine", "two-tone"), bench("hypochlorite", { outcome: "stays" }, at("pile", "whole"))])).toEqual([]);
  });
  it("names the yarn that was tested, and only that", () => {
    const accent = [bench("hypochlorite", { outcome: "stays" }, at("pile", "accent")), bench("formic-acid-zinc-chloride", { outcome: "dissolves" }, at("pile", "accent"))];
    expect(judge(accent).map((c) => [c.part, c.yarn, c.fibres[0]?.fibre])).toEqual([["pile", "accent", "viscose"]]);
    expect(one("pile", "accent", accent)?.says).toMatch(/^The accent of the pile is likely viscose \(\d+ %\), by what is known of the pile and bench tests of it\.$/);
  });
  it("is Bayes over class and yarn together: for one class and one clear test, by hand", () => {
    // Field of a pile of wool alone: wool .97, each other state .03/16. 75 % acid: stays for wool .968, for the rest by its table.
    const field = one("pile", "field", [bench("acetone", { outcome: "dissolves" }, at("pile", "field"))], beliefs({ wool: 1 }));
    const [right, wrong] = [0.968, 0.008];
    const rest = 0.03 / 16;
    // All but acetate answer alike, the intimate mixtures too: those mean the same row worked out from two that stay.
    const named = 0.97 * wrong + 15 * rest * wrong + rest * right;
    expect(chance(field, "acetate")).toBeCloseTo((0.99 * rest * right) / named, 2);
  });
  it("counts an intimate mixture half for either fibre: by hand, where two kinds were seen in the field of wool with viscose", () => {
    const field = one("pile", "field", [bench("microscopy", { kinds: "several" }, at("pile", "field"))], beliefs({ "wool-viscose": 1 }));
    // Field of wool with viscose: wool .72, both .16, viscose .09, each of 14 other states .03/14. Two kinds seen: .88 in a mixture, .08 in one fibre.
    const [mixed, alone, rest] = [0.88, 0.08, 0.03 / 14];
    const total = 0.16 * mixed + (0.72 + 0.09) * alone + rest * (3 * mixed + 11 * alone);
    expect(chance(field, "wool")).toBeCloseTo((0.99 * (0.72 * alone + (0.16 * mixed) / 2 + (rest * mixed) / 2)) / total, 9);
    expect(chance(field, "viscose")).toBeCloseTo((0.99 * (0.09 * alone + (0.16 * mixed) / 2 + 2 * ((rest * mixed) / 2))) / total, 9);
    expect(chance(field, "other")).toBeCloseTo(0.01, 9);
  });
  it("a test of the accent moves the field through the class alone: with the class held, not at all", () => {
    const fieldTest = bench("hypochlorite", { outcome: "dissolves" }, at("pile", "field"));
    const accent = fc.constantFrom("dissolves", "partly", "stays").chain((outcome) => fc.constantFrom("hypochlorite", "acetone",
      "sulphuric-acid-75").map((test) => bench(test, { outcome }, at("pile", "accent"))));
    fc.assert(fc.property(fc.array(accent, { maxLength: 4 }), (tests) => {
      expect(one("pile", "field", [fieldTest, ...tests])).toEqual(one("pile", "field", [fieldTest]));
    }));
  });
  it("believes a laboratory that finds metal thread in the accent of a wool pile", () => {
    const accent = one("pile", "accent", [{ what: "laboratory", value: { other: 100 }, strength: "laboratory", from: "laboratory:Tarn", of: at("pile",
      "accent") }], beliefs({ wool: 0.95 }));
    expect(accent?.fibres[0]?.fibre).toBe("other");
  });
});

describe("judgeComponents: ground and fringe", () => {
  it("takes the ground by how the rug is made", () => {
    const ground = one("ground", "whole", [told("back", "machine")]);
    expect(chance(ground, "hard-fibre")).toBeCloseTo(GROUNDS.machine["hard-fibre"], 12);
    expect(ground?.says).toBe("The ground is about as likely as not jute, sisal or coir (40 %), by how the rug is made.");
  });
  it("expects silk under a hand-knotted silk pile more than under a wool one", () => {
    const silk = (classes: Record<FibreId, number>) => chance(one("ground", "whole", [told("back", "knots")], classes), "silk");
    expect(silk(beliefs({ silk: 0.95 }))).toBeGreaterThan(5 * silk(beliefs({ wool: 0.95 })));
  });
  it("believes a label that names ground and fringe, as it stands in the answers", () => {
    const findings = findingsFromAnswers({ labelText: "Pile 100% wool, backing 100% jute" }, {});
    const label = findings.find((f) => f.what === "label");
    expect(label?.value).toMatchObject({ ground: expect.stringContaining("jute") as string });
    expect(chance(one("ground", "whole", findings), "hard-fibre")).toBeGreaterThan(0.5);
  });
  it("hears how the fringe feels, and knows no fringe where there is none", () => {
    expect(one("fringe", "whole", [told("fringe", "part-of-rug"), told("fringeKind", "woolly"), told("back", "knots")])?.fibres[0]?.fibre).toBe("wool");
    expect(one("fringe", "whole", [told("fringe", "none"), told("back", "knots")])).toBeUndefined();
  });
  it("lets a test of the fringe speak for the fringe alone", () => {
    const findings = [told("back", "knots"), told("fringe", "sewn-on"), bench("formic-acid-zinc-chloride", { outcome: "dissolves" }, at("fringe", "whole")),
      bench("hypochlorite", { outcome: "stays" }, at("fringe", "whole"))];
    expect(one("fringe", "whole", findings)?.fibres[0]?.fibre).toBe("viscose");
    expect(one("ground", "whole", findings)).toEqual(one("ground", "whole", [told("back", "knots")]));
  });
  it("believes a laboratory on the ground", () => {
    const ground = one("ground", "whole", [told("back", "cloth"), { what: "laboratory", value: { polyester: 100 }, strength: "laboratory",
      from: "laboratory:Tarn", of: at("ground", "whole") }]);
    expect(chance(ground, "polyester")).toBeGreaterThan(0.9);
  });
});

describe("any findings", () => {
  const anyFinding = fc.oneof(
    fc.constantFrom(...["knots", "cloth", "loomed", "machine", "flat", "felt"].map((a) => told("back", a))), fc.constantFrom(...["part-of-rug", "sewn-on",
      "none"].map((a) => told("fringe", a))),
    fc.constantFrom(...["cottony", "shiny", "woolly"].map((a) => told("fringeKind", a))),
    fc.record({ part: fc.constantFrom("pile" as const, "ground" as const, "fringe" as const), yarn: fc.constantFrom("whole" as const, "field" as const,
      "accent" as const), outcome: fc.constantFrom("dissolves", "partly", "stays") })
      .map(({ part, yarn, outcome }) => bench("hypochlorite", { outcome }, at(part, yarn))),
    fc.dictionary(fc.constantFrom(...SINGLE_FIBRES, "other"), fc.double({ min: -20, max: 120 })).map((value): Finding => ({ what: "laboratory", value,
      strength: "laboratory", from: "laboratory:Tarn", of: at("pile", "field") })),
  );
  it("give chances that sum to 1 over the single fibres and other, most probable first, in any order", () => {
    fc.assert(fc.property(fc.array(anyFinding, { maxLength: 9 }).chain((a) => fc.tuple(fc.constant(a), fc.shuffledSubarray(a, { minLength: a.length }))),
      ([findings, shuffled]) => {
      const all = judge(findings);
      expect(judge([...shuffled, ...findings])).toEqual(all);
      for (const { fibres } of all) {
        expect(fibres).toHaveLength(SINGLE_FIBRES.length + 1);
        expect(fibres.reduce((sum, f) => sum + f.probability, 0)).toBeCloseTo(1, 9);
        fibres.slice(1).forEach((f, i) => expect(f.probability).toBeLessThanOrEqual(fibres[i]?.probability as number));
      }
    }));
  });
});
