import { describe, expect, it } from "vitest";
import { orderAfter, paragraphForm, paragraphValues, wordingOf } from "../../../lib/enquiry/paragraph-form";
import { wordingSchema } from "../../../lib/enquiry/wording-schema";
import { SHIPPED } from "../../../lib/reply/library";

const FIELDS = { place: "notes", text: " We are closed\r\nin August. ", when: "{}", after: "first" };
const read = (change: Record<string, string | undefined>) => paragraphForm.safeParse({ ...FIELDS, ...change });
const fails = (change: Record<string, string | undefined>) => { const r = read(change); return r.success ? null : String(r.error.issues[0]?.path[0]); };

describe("paragraphForm", () => {
  it("reads what was typed, trimmed, with lines ended one way", () => {
    expect(paragraphForm.parse(FIELDS)).toEqual({ place: "notes", text: "We are closed\nin August.", warm: "", brief: "", when: {}, about: null, after: "first", off: false, reason: "" });
  });
  it.each([
    ["a place that is none", { place: "margin" }, "place"],
    ["a condition that is no JSON", { when: "{" }, "when"],
    ["a fact that is none", { when: '{"is":{"weather":["rain"]}}' }, "when"],
    ["a value that is none", { when: '{"is":{"leading":["velvet"]}}' }, "when"],
    ["a chance above one", { when: '{"atLeast":{"worse":1.01}}' }, "when"],
    ["a chance below none", { when: '{"below":{"worse":-1}}' }, "when"],
    ["a number that is none", { when: '{"atLeast":{"weather":0.5}}' }, "when"],
    ["code in place of a condition", { when: '{"run":"process.exit()"}' }, "when"],
    ["something that cannot have happened", { about: "rain" }, "about"],
  ])("refuses %s, beside its field", (_, change, field) => expect(fails(change)).toBe(field));
  it("names the line whose number is out of its range, and the range", () => {
    const says = (when: string) => read({ when }).error?.issues.map((i) => i.message);
    const worse = "“Chance that cleaning makes it worse”: write a number from 0 to 100 per cent.";
    expect(says('{"atLeast":{"waterShy":1,"worse":1.5}}')).toEqual([worse]);
    expect(says('{"below":{"worse":-1}}')).toEqual([worse]);
    expect(says('{"below":{"improvementHigh":150}}')).toEqual(["“Upper end of the improvement”: write a number from 0 to 100 per cent."]);
    expect(says('{"is":{"leading":["velvet"]}}')).toEqual(["This condition cannot be read. Please set it again."]);
  });
  it.each([{ when: '{"atLeast":{"worse":1}}' }, { when: '{"below":{"improvementHigh":100}}' }, { about: "mould", off: "yes" }])("takes %j", (change) => expect(fails(change)).toBeNull());
});

describe("orderAfter", () => {
  const others = [{ id: "a", order: 100 }, { id: "b", order: 200 }];
  it.each([["first", 50], ["a", 150], ["b", 300], ["gone", 50]])("after %s: %d", (after, order) => expect(orderAfter(after, others)).toBe(order));
  it("begins where nothing is", () => expect(orderAfter("first", [])).toBe(100));
});

describe("a form opened and kept unchanged", () => {
  it.each(SHIPPED.map((r) => r.id))("%s: says the same, at the same turn", (id) => {
    const row = SHIPPED.find((r) => r.id === id)!;
    const wording = wordingOf(paragraphForm.parse(paragraphValues(row, SHIPPED)), id, SHIPPED);
    const { place, text, when } = row;
    expect(wordingSchema.parse(wording)).toMatchObject({ place, text, when, about: row.about ?? null, tones: row.tones ?? {}, off: false });
    const turn = (order: number) => SHIPPED.filter((r) => r.place === place && r.id !== id && r.order < order).length;
    expect(turn(wording.order)).toBe(turn(row.order));
  });
});
