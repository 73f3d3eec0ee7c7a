import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { slotsOf } from "../../../lib/reply/slots";
import { CASES } from "./cases";
import { inputOf } from "./make";

/** What stands in no pair of marks, however many stand in one another. */
function marked(text: string): string {
  const rest = text.replace(/⟦[^⟦⟧]*⟧/g, "");
  return rest === text ? text : marked(rest);
}
/** Values that are the client's or the workshop's own, or figures. */
const DATA = new Set(["name", "title", "number", "telephone", "signature", "referTo"]);

describe("a letter in the marked locale", () => {
  for (const [name, kind] of Object.entries(CASES)) {
    const input = inputOf(kind);
    const workshop = { ...input.workshop, locale: "en-XA" as const };
    it(`${name}: says nothing outside the catalogue and the library`, () => {
      const { subject, text } = composeDraft({ ...input, workshop });
      expect(marked(text).replace(input.client.name, ""), "text").not.toMatch(/\p{L}/u);
      expect(marked(subject), "subject").not.toMatch(/\p{L}/u);
    });
    it(`${name}: fills its paragraphs from the catalogue too`, () => {
      for (const rug of input.assessments) {
        const slots = slotsOf({ rug, number: 1, rugs: input.assessments.length, client: input.client, workshop });
        for (const [slot, value] of Object.entries(slots)) if (!DATA.has(slot) && value && /\p{L}/u.test(value)) expect(value, slot).toContain("⟦");
      }
    });
  }
});

describe("figures of a letter", () => {
  const kind = Object.values(CASES)[0]!;
  const input = inputOf(kind);
  const letter = (workshop: object) => composeDraft({ ...input, workshop: { ...input.workshop, ...workshop } });
  it("name the workshop's currency as its locale does", () => {
    const dollars = (locale: "en-GB" | "en-US") => slotsOf({
      rug: { ...input.assessments[0]!, assessment: { ...input.assessments[0]!.assessment, money: { currency: "USD", clean: { low: 120, median: 150, high: 180 }, cutDown: null, replace: null, valueToday: null } } },
      number: 1, rugs: 1, client: input.client, workshop: { ...input.workshop, locale },
    }).clean;
    expect([dollars("en-GB"), dollars("en-US")]).toEqual(["US$120 to US$180", "$120 to $180"]);
  });
  it("are the same sums whatever unit areas are told in", () => {
    expect(letter({ areaUnit: "sqft" }).text).toBe(letter({ areaUnit: "m2" }).text);
  });
});
