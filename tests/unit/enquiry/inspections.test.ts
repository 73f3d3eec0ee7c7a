import { describe, expect, it } from "vitest";
import { inspectedIn, isOvertaken } from "../../../lib/enquiry/inspections";
import { composeDraft } from "../../../lib/reply/draft";
import type { RugAnswers } from "../../../lib/trade/questions";
import { action, worthless } from "../reply/make";

const SEEN = { by: "Ivo Castellane", day: "2026-11-24", at: new Date("2026-11-24T14:00:00Z"), isBeyondRepair: false };
const told = (at: string, incidents: RugAnswers["incidents"]) => ({ question: "incidents", value: incidents ?? [], at: new Date(at) });
const DIRT = told("2026-11-20T09:00:00Z", ["wear"]);
const floodAt = (at: string) => [DIRT, told(at, ["wear", "flood"])];

describe("isOvertaken", () => {
  it("holds of flood water that was told of after an inspection was recorded, and not before or then", () => {
    expect(isOvertaken(SEEN, floodAt("2026-11-24T14:00:00.001Z"))).toBe(true);
    expect(isOvertaken(SEEN, floodAt("2026-11-24T14:00:00.000Z"))).toBe(false);
    expect(isOvertaken(SEEN, floodAt("2026-11-21T09:00:00Z"))).toBe(false);
  });
  it("holds, of one that was recorded on a later day, of flood water told of on its day or after, since its hour is not kept", () => {
    const late = { ...SEEN, at: new Date("2026-11-25T00:00:00Z") };
    expect(isOvertaken(late, floodAt("2026-11-24T20:00:00Z"))).toBe(true);
    expect(isOvertaken(late, floodAt("2026-11-24T00:00:00Z"))).toBe(true);
    expect(isOvertaken(late, floodAt("2026-11-23T23:59:59.999Z"))).toBe(false);
    expect(isOvertaken({ ...SEEN, at: new Date("2026-11-24T23:59:59.999Z") }, floodAt("2026-11-24T20:00:00Z"))).toBe(false);
  });
  it("holds no longer once the flood was taken back, nor where it was known before and is told of again, nor of other trouble", () => {
    expect(isOvertaken(SEEN, [...floodAt("2026-11-25T09:00:00Z"), told("2026-11-26T09:00:00Z", ["water"])])).toBe(false);
    expect(isOvertaken(SEEN, [...floodAt("2026-11-21T09:00:00Z"), told("2026-11-25T09:00:00Z", ["flood"])])).toBe(false);
    expect(isOvertaken(SEEN, [DIRT, told("2026-11-25T09:00:00Z", ["wear", "water"])])).toBe(false);
    expect(isOvertaken(SEEN, [])).toBe(false);
  });
  it("does not hold where the enquiry was written down only after the rug was seen", () => {
    expect(isOvertaken(SEEN, [told("2026-11-25T09:00:00Z", ["flood"])])).toBe(false);
    expect(isOvertaken({ ...SEEN, at: new Date("2026-11-27T09:00:00Z") }, [told("2026-11-24T09:00:00Z", ["flood"])])).toBe(false);
  });
  it("holds where the enquiry was written down after the rug was seen, and told of the flood only later", () => {
    const late = { ...SEEN, at: new Date("2026-11-27T09:00:00Z") };
    expect(isOvertaken(late, [told("2026-11-24T09:00:00Z", ["wear"]), told("2026-11-24T20:00:00Z", ["flood"])])).toBe(true);
    expect(isOvertaken(SEEN, [told("2026-11-25T09:00:00Z", ["wear"]), told("2026-11-25T09:00:01Z", ["flood"])])).toBe(true);
  });
});

describe("inspectedIn", () => {
  it("gives the newest that stands, and none where none does", () => {
    expect(inspectedIn({ inspections: [SEEN], answers: [DIRT] }, "en-GB")).toEqual({ by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair: false });
    expect(inspectedIn({ inspections: [], answers: [DIRT] }, "en-GB")).toBeNull();
  });
  it("gives a letter no verdict from before the flood: it waits for the firm as if nobody had seen the rug, and denies no inspection", () => {
    const letter = (floodTold: string) => {
      const input = worthless({ advice: action("refer") });
      const inspection = inspectedIn({ inspections: [SEEN], answers: floodAt(floodTold) }, "en-GB");
      return composeDraft({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { ...rug.answers, incidents: ["flood"] }, inspection })) }).text;
    };
    const [before, after] = [letter("2026-11-24T09:00:00Z"), letter("2026-11-25T09:00:00Z")];
    expect(before).toMatch(/Ivo Castellane, who inspected it on 24 November 2026/u);
    expect(after).not.toMatch(/Ivo Castellane|nobody here|provisional/u);
    expect(after).toMatch(/What can be done for it we cannot say before a flood-damage firm has seen to it/u);
    expect(after).toMatch(/Once the firm has been/u);
    expect(before).not.toMatch(/Once the firm has been/u);
  });
});
