import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { METHOD_IDS, type MethodId } from "../../../lib/trade/care";
import type { FibreId } from "../../../lib/trade/fibres";
import { forbiddenChance, judgeMethods, verdictByFibre, worseByFibre } from "../../../lib/triage/methods";
import type { Finding } from "../../../lib/triage/finding";
import { belief, told } from "./told";

const nothing = () => 0;
const verdict = (method: MethodId, fibres: Partial<Record<FibreId, number>>, answers: Record<string, Finding["value"]> = {}, chance: (m: string) => number = nothing) =>
  judgeMethods(told(answers), belief(fibres), chance).find((m) => m.method === method)?.verdict;

describe("verdictByFibre", () => {
  const at = (ruledOut: number, test: number) => verdictByFibre({ "ruled-out": ruledOut, "needs-testing-first": test, suitable: 1 - ruledOut - test });
  it("rules out from .20 of a forbidden pile: below, at, above", () => expect([at(0.199, 0), at(0.2, 0), at(0.201, 0)]).toEqual(["needs-testing-first", "ruled-out", "ruled-out"]));
  it("calls suitable only below .02 of a forbidden pile", () => expect([at(0.019, 0), at(0.02, 0), at(0.021, 0)]).toEqual(["suitable", "needs-testing-first", "needs-testing-first"]));
  it("calls nothing suitable while a pile of .02 asks for a test", () => expect([at(0, 0.019), at(0, 0.02)]).toEqual(["suitable", "needs-testing-first"]));
});

describe("judgeMethods", () => {
  it("never finds a wet method or home cleaning suitable where viscose is possible by 2 % or more", () => {
    fc.assert(fc.property(fc.double({ min: 0.02, max: 1, noNaN: true }), fc.constantFrom<FibreId>("wool", "polypropylene", "cotton", "silk"), fc.constantFrom<MethodId>("immersion-wash", "wet-hand-clean", "at-home"), (v, other, method) => {
      expect(verdict(method, { viscose: v, [other]: 1 - v }, { back: "knots" })).not.toBe("suitable");
    }));
  });
  it("rules wet methods and home cleaning out for viscose, and leaves dusting", () => {
    const out = Object.fromEntries(judgeMethods(told({}), belief({ viscose: 1 }), nothing).map((m) => [m.method, m.verdict]));
    expect(out).toEqual({ "immersion-wash": "ruled-out", "wet-hand-clean": "ruled-out", "low-moisture": "needs-testing-first", "solvent-dry": "needs-testing-first", dusting: "suitable", "at-home": "ruled-out" });
  });
  it("treats lyocell and acetate as viscose, jute as jute", () => {
    for (const f of ["lyocell", "acetate", "hard-fibre"] as const) expect(verdict("wet-hand-clean", { [f]: 1 }), f).toBe("ruled-out");
  });
  it("lets the strictest component of a blend rule", () => {
    expect(verdict("wet-hand-clean", { "silk-viscose": 1 })).toBe("ruled-out");
    expect(verdict("wet-hand-clean", { "wool-silk": 1 }, { back: "knots" })).toBe("needs-testing-first");
  });
  it("tests what is unclear, and never advises the owner to clean at home", () => {
    expect(verdict("wet-hand-clean", { other: 1 })).toBe("needs-testing-first");
    expect(verdict("at-home", { other: 1 })).toBe("ruled-out");
    expect(verdict("at-home", { wool: 1 })).toBe("ruled-out");
  });
  it("does not put an antique, a failing back or mould to any method unseen", () => {
    expect(verdict("dusting", { wool: 1 }, { age: "antique" })).toBe("needs-testing-first");
    expect(verdict("dusting", { wool: 1 }, {}, (m) => (m === "mould" ? 0.5 : 0))).toBe("needs-testing-first");
    expect(verdict("immersion-wash", { polyester: 1 }, {}, (m) => (m === "backing-failure" ? 0.5 : 0))).toBe("ruled-out");
    expect(verdict("immersion-wash", { polyester: 1 }, {}, (m) => (m === "backing-failure" ? 0.49 : 0))).toBe("suitable");
  });
  it("says why for every method", () => {
    const judged = judgeMethods(told({}), belief({ wool: 0.7, viscose: 0.3 }), nothing);
    expect(judged.map((m) => m.method)).toEqual(METHOD_IDS);
    for (const m of judged) expect(m.why.length, m.method).toBeGreaterThan(30);
  });
});

describe("forbiddenChance", () => {
  it("adds up the piles a method is forbidden for", () => expect(forbiddenChance("immersion-wash", belief({ viscose: 0.2, "wool-viscose": 0.1, wool: 0.7 }), told({}))).toBeCloseTo(0.3, 12));
  it("is nothing for dusting", () => expect(forbiddenChance("dusting", belief({ viscose: 1 }), told({}))).toBe(0));
});

describe("worseByFibre", () => {
  it("counts viscose .15 to .30, silk .08 to .15, wool .02 to .05", () => {
    const w = worseByFibre(told({ back: "knots" }), belief({ viscose: 0.5, wool: 0.5 }));
    expect(w.viscose >= 0.15 && w.viscose <= 0.3).toBe(true);
    expect(w.silk >= 0.08 && w.silk <= 0.15).toBe(true);
    expect(w.wool >= 0.02 && w.wool <= 0.05).toBe(true);
  });
  it("is raised by old latex under a tufted rug", () => {
    const at = (age: string) => worseByFibre(told({ back: "cloth", age }), belief({ wool: 1 })).wool;
    expect(at("10-25")).toBeGreaterThan(0.1);
    expect(at("under-2")).toBeLessThan(0.06);
  });
});
