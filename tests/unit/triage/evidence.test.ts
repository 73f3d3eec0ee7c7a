import { describe, expect, it } from "vitest";
import { TEMPER } from "../../../lib/trade/evidence-caps";
import { SHINE, TOUCH } from "../../../lib/trade/likelihoods-look";
import { LIKELIHOODS } from "../../../lib/trade/likelihoods";
import { SMALLEST_CELL } from "../../../lib/trade/likelihood-table";
import { NAMED } from "../../../lib/triage/classes";
import { findingKey } from "../../../lib/triage/distinct-findings";
import { DRAWS } from "../../../lib/triage/draws";
import { collectEvidence, possibleFindings } from "../../../lib/triage/evidence";
import type { Finding } from "../../../lib/triage/finding";
import { told } from "./belief-helpers";

const context = { currency: "GBP", year: 2026 };
const collect = (...findings: Finding[]) => collectEvidence(findings, context);
const item = (what: string, ...findings: Finding[]) => collect(...findings).find((i) => i.what === what);
const column = (table: typeof SHINE, answer: string) => NAMED.map((f) => table.rows[f][table.answers.indexOf(answer)] as number);

describe("collectEvidence", () => {
  it("reads a table's column for an answer", () => {
    expect(item("shine", told("shine", "two-tone"))?.likelihood).toEqual(column(SHINE, "two-tone"));
  });
  it("finds nothing in findings that say nothing of the fibre, or carry an unknown answer", () => {
    expect(collect(told("room", "busy"), told("shine", "unheard-of"), told("shine", 3), told("label", { says: null, text: "?" }), told("label", "viscose"))).toEqual([]);
  });
  it("counts the same finding once", () => {
    expect(item("shine", told("shine", "none"), told("shine", "none"))?.findings).toHaveLength(1);
  });
  it("averages two answers that disagree: either may be right", () => {
    const mixed = item("touch", told("touch", "springy"), told("touch", "plastic"));
    column(TOUCH, "springy").forEach((p, i) => expect(mixed?.likelihood[i]).toBeCloseTo((p + (column(TOUCH, "plastic")[i] as number)) / 2, 12));
    expect(mixed?.findings).toHaveLength(2);
  });
  it("lets the stronger replace the weaker of one kind: a photographed label the wording typed", () => {
    const label = item("label", told("label", { says: "silk" }, "label-typed"), told("label", { says: "viscose" }, "label-photo"));
    expect(label?.strength).toBe("label-photo");
    expect(label?.findings.map((f) => f.value)).toEqual([{ says: "viscose" }]);
  });
  it("draws its likelihoods anew, none under .001, and the same for the same seed", () => {
    const drawn = (seed: number) => [...(item("shine", told("shine", "none"))?.drawn(seed) ?? [])];
    expect(drawn(1)).toHaveLength(DRAWS * NAMED.length);
    expect(drawn(1)).toEqual(drawn(1));
    expect(drawn(1)).not.toEqual(drawn(2));
    expect(drawn(1).slice(0, NAMED.length)).not.toEqual(drawn(1).slice(NAMED.length, 2 * NAMED.length));
    for (const l of drawn(1)) expect(l >= Math.log(SMALLEST_CELL) - 1e-12 && l <= 0).toBe(true);
  });
});

describe("collectEvidence, what water did", () => {
  const wet = told("incidents", ["spill"]);
  const answer = (changes: string[], ...others: Finding[]) => item("changes", told("changes", changes), ...others)?.likelihood[NAMED.indexOf("viscose")];
  it.each([
    [["stiff"], 0.46], [["rough", "browner"], 0.46], [["browner"], 0.3], [["none"], 0.04], [["dirty"], 0.04], [["ran"], 0.2], [["none", "smell"], 0.2],
  ])("reads %j in a rug that got wet", (changes, viscose) => {
    expect(answer(changes, wet)).toBe(viscose);
  });
  it.each([
    ["the spill", wet], ["a wet rug now", told("wetNow", "wet")], ["washing", told("treatments", ["machine"])], ["water on it", told("incidents", ["stored", "water"])],
  ])("counts %s as wetting", (_, finding) => {
    expect(answer(["stiff"], finding)).toBe(0.46);
  });
  it.each([["sun", told("incidents", ["sun"])], ["a dry rug", told("wetNow", "no")], ["dry cleaning", told("treatments", ["solvent", "professional-dry"])]])("does not count %s", (_, finding) => {
    expect(answer(["stiff"], finding)).toBeUndefined();
  });
  it("reads nothing from no changes at all", () => {
    expect(answer([], wet)).toBeUndefined();
  });
});

describe("collectEvidence, tempering", () => {
  const lustre = [told("shine", "two-tone"), told("touch", "cool-slippery"), told("footprints", "stay"), told("price-per-m2", { amount: 200, currency: "GBP", year: 2024 })];
  it.each([1, 2, 3, 4])("gives each of %d findings of one group the same power", (n) => {
    const powers = collect(...lustre.slice(0, n)).map((i) => i.power);
    expect(powers).toEqual(new Array(n).fill(TEMPER.lustre[n - 1]));
  });
  it("leaves findings of other groups alone", () => {
    expect(item("age", ...lustre, told("age", "2-5"))?.power).toBe(1);
    expect(item("back", ...lustre, told("back", "knots"))?.power).toBe(1);
  });
  it("keeps the label whole and halves the seller's word beside it", () => {
    const both = [told("label", { says: "silk" }, "label-typed"), told("sellerSaid", "silk")];
    expect(item("label", ...both)?.power).toBe(1);
    expect(item("sellerSaid", ...both)?.power).toBe(0.5);
    expect(item("sellerSaid", told("sellerSaid", "silk"))?.power).toBe(1);
  });
});

describe("collectEvidence, the price", () => {
  const price = told("price-per-m2", { amount: 450, currency: "GBP", year: 2024, place: null });
  it("takes the construction from the back, where that is not disputed", () => {
    const wool = (...more: Finding[]) => item("price-per-m2", price, ...more)?.likelihood[NAMED.indexOf("wool")] as number;
    expect(wool(told("back", "knots"))).toBeCloseTo(1, 9);
    expect(wool(told("back", "knots"), told("back", "machine"))).toBe(wool());
  });
});

describe("every table", () => {
  const CHANGES: Readonly<Record<string, string>> = { stiffened: "stiff", browned: "browner", unharmed: "none", otherwise: "ran" };
  const findingFor = (what: string, answer: string): Finding[] => {
    if (what === "label") return [told(what, { says: answer }, "label-typed")];
    return what === "changes" ? [told(what, [CHANGES[answer] as string]), told("wetNow", "wet")] : [told(what, answer)];
  };
  it.each(LIKELIHOODS.flatMap((t) => t.answers.map((a) => [t.what, a, t] as const)))("is read cell by cell: %s, %s", (what, answer, table) => {
    expect(item(what, ...findingFor(what, answer))?.likelihood).toEqual(column(table, answer));
  });
});

describe("findingKey", () => {
  it("does not depend on the order of a value's fields, but on every field", () => {
    expect(findingKey(told("label", { says: "silk", text: "a" }))).toBe(findingKey(told("label", { text: "a", says: "silk" })));
    expect(findingKey(told("label", { says: "silk", text: "a" }))).not.toBe(findingKey(told("label", { says: "silk", text: "b" })));
    expect(findingKey(told("changes", ["a", "b"]))).not.toBe(findingKey(told("changes", ["a", "c"])));
  });
});

describe("possibleFindings", () => {
  it("gives every answer of a table, and none of what depends on other findings", () => {
    expect(possibleFindings("shine").map((p) => p.finding.value)).toEqual(SHINE.answers);
    expect(possibleFindings("changes")).toEqual([]);
    expect(possibleFindings("story")).toEqual([]);
  });
});
