import { describe, expect, it } from "vitest";
import { sayCorrected } from "../../../app/(desk)/desk/[id]/client/words";
import { telephoneSchema } from "../../../app/(desk)/desk/telephone/schema";
import { settingsFormSchema, valuesOf, withFields } from "../../../app/(desk)/desk/settings/schema";
import { asSeen, clientSchema } from "../../../lib/enquiry/client-schema";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";

const errorsOf = (values: Record<string, unknown>) => {
  const parsed = telephoneSchema.safeParse(values);
  return parsed.success ? {} : Object.fromEntries(parsed.error.issues.map((i) => [String(i.path[0]), i.message]));
};

describe("telephoneSchema", () => {
  it("makes the file of one enquiry, leaving out what was not asked", () => {
    const parsed = telephoneSchema.safeParse({ name: " Ada Birch ", telephone: "0123 555 019", email: "", wetNow: "damp", incidents: ["spill"], changes: false, shine: null, labelText: "", noLabel: "on", price: "1,200", currency: "GBP", widthCm: "170,5", story: "" });
    expect(parsed.data).toEqual({
      channel: "telephone", wetNow: "damp", client: { name: "Ada Birch", telephone: "0123 555 019" },
      rugs: [{ incidents: ["spill"], labelFound: "none", price: 1200, currency: "GBP", widthCm: 170.5 }],
    });
  });
  it("takes a label's words over the tick that there is none", () => {
    expect(telephoneSchema.safeParse({ name: "Ada", labelText: "100% wool", noLabel: "on" }).data?.rugs[0]).toEqual({ labelText: "100% wool", labelFound: "typed" });
  });
  it("needs nothing but the caller's name", () => {
    expect(errorsOf({})).toEqual({ name: "Write the caller's name." });
    expect(errorsOf({ name: "Ada" })).toEqual({});
  });
  it("reports a number that is none beside its own field", () => {
    expect(errorsOf({ name: "Ada", price: "a lot", widthCm: "wide", email: "ada" })).toEqual({
      price: "Write the price as a number.", widthCm: "Write the width as a number, alone or with one of these units: mm, cm, m, ft, in.", email: "Write an e-mail address like name@example.org.",
    });
  });
  it("takes a price and a year as callers say them, with the currency they name, and asks which dollars", () => {
    const rug = telephoneSchema.safeParse({ name: "Ada", price: "about £1.2k", currency: "EUR", boughtYear: "about 2019" }).data?.rugs[0];
    expect(rug).toEqual({ price: 1200, currency: "GBP", boughtYear: 2019 });
    expect(errorsOf({ name: "Ada", price: "$900", currency: "GBP" })).toEqual({ currency: "Choose which dollars they paid in." });
    expect(errorsOf({ name: "Ada", price: "$900", currency: "NZD" })).toEqual({});
  });
  const sides = (values: Record<string, string>) => {
    const { widthCm, lengthCm } = telephoneSchema.safeParse({ name: "Ada", ...values }).data?.rugs[0] ?? {};
    return [widthCm, lengthCm];
  };
  it("reads a bare size in the unit that the form asked for, and any unit that was typed", () => {
    expect(sides({ areaUnit: "m2", widthCm: "170", lengthCm: "8 ft" })).toEqual([170, 244]);
    expect(sides({ areaUnit: "sqft", widthCm: "25", lengthCm: "25 ft" })).toEqual([762, 762]);
    expect(sides({ areaUnit: "sqft", widthCm: "80 in", lengthCm: "2,44 m" })).toEqual([203, 244]);
  });
  // 20 cm are 7.9 in, 2,000 cm are 65.6 ft.
  it("takes the least and the largest size in feet, and says the limits in both units", () => {
    expect(sides({ areaUnit: "sqft", widthCm: "8 in", lengthCm: "65" })).toEqual([20, 1981]);
    expect(errorsOf({ name: "Ada", areaUnit: "sqft", widthCm: "7 in", lengthCm: "66" })).toEqual({
      widthCm: "The width must be at least 20 cm (8 in).", lengthCm: "The length can be at most 2,000 cm (65 ft).",
    });
  });
  it("refuses a telephone number that nobody can ring", () => {
    for (const telephone of ["abc", "1234"]) expect(errorsOf({ name: "Ada", telephone })).toEqual({ telephone: "Write the telephone number in figures, or leave it empty." });
    expect(errorsOf({ name: "Ada", telephone: "12345" })).toEqual({});
  });
  it("refuses a unit that it does not know", () => {
    expect(errorsOf({ name: "Ada", areaUnit: "sqft", lengthCm: "3 yards" })).toEqual({ lengthCm: "Write the length as a number, alone or with one of these units: mm, cm, m, ft, in." });
  });
  it("refuses an answer that was never offered", () => {
    expect(Object.keys(errorsOf({ name: "Ada", incidents: ["spill", "meteor"] }))).toEqual(["incidents"]);
  });
});

describe("settingsFormSchema", () => {
  it("tells a number below zero from what is no number", () => {
    const said = (values: Record<string, string>) => {
      const parsed = settingsFormSchema.safeParse({ ...valuesOf({ ...DEFAULT_SETTINGS, name: "Yard", email: "desk@yard.example" }), ...values });
      return parsed.success ? {} : Object.fromEntries(parsed.error.issues.map((i) => [String(i.path[0]), i.message]));
    };
    expect(said({ holdMinutes: "-1", retentionMonths: "−1", cleanPerM2: "£ -1" })).toEqual({
      holdMinutes: "Minutes an approved letter is held: at least 0.", retentionMonths: "Months an enquiry is kept after it ends: at least 1.", cleanPerM2: "Cleaning, per square metre: not below zero.",
    });
    expect(said({ holdMinutes: "soon", cleanPerM2: "dear" })).toEqual({ holdMinutes: "Minutes an approved letter is held: write a whole number.", cleanPerM2: "Cleaning, per square metre: write a number." });
    expect(said({ holdMinutes: "0" })).toEqual({});
    expect(said({ emergencyNumber: "call grandma <script>" })).toEqual({ emergencyNumber: "Write the emergency number in figures, such as 112, or several, such as 999 or 112." });
    expect(said({ emergencyNumber: " " })).toEqual({ emergencyNumber: "Write the emergency number." });
  });
  it("gives back the settings it was filled from", () => {
    const parsed = settingsFormSchema.parse(valuesOf(DEFAULT_SETTINGS));
    expect(withFields(DEFAULT_SETTINGS, parsed)).toEqual(DEFAULT_SETTINGS);
  });
  it("keeps what the form does not show", () => {
    const settings = { ...DEFAULT_SETTINGS, losses: { "broken-promise": 9 } };
    expect(withFields(settings, settingsFormSchema.parse(valuesOf(settings))).losses).toEqual({ "broken-promise": 9 });
  });
  it("gives them back in feet too, and reads a price that was typed by the square foot", () => {
    const feet = { ...DEFAULT_SETTINGS, areaUnit: "sqft" as const };
    expect(withFields(feet, settingsFormSchema.parse(valuesOf(feet)))).toEqual(feet);
    const { prices } = withFields(feet, settingsFormSchema.parse({ ...valuesOf(feet), cleanPerSqft: "5" }));
    expect(prices.cleanPerM2).toBeCloseTo(53.82, 2);
    expect(prices.bindingPerM).toBe(DEFAULT_SETTINGS.prices.bindingPerM);
  });
  it("shows the name where no signature is set, and lets it follow the name while it is left", () => {
    const read = (change: Record<string, string>) => withFields(DEFAULT_SETTINGS, settingsFormSchema.parse({ ...valuesOf(DEFAULT_SETTINGS), ...change })).signature;
    expect(valuesOf(DEFAULT_SETTINGS)["signature"]).toBe(DEFAULT_SETTINGS.name);
    expect([read({ name: "Lantern Yard" }), read({ signature: "Nell" })]).toEqual(["", "Nell"]);
    expect(settingsFormSchema.safeParse({ ...valuesOf(DEFAULT_SETTINGS), signature: " " }).error?.issues.map((i) => i.message)).toEqual(["Write the signature: it stands under every letter."]);
  });
  it.each([
    [{ weeksLow: "3", weeksHigh: "6" }, { low: 3, high: 6 }], [{ weeksLow: " ", weeksHigh: "" }, null],
    [{ weeksLow: "3", weeksHigh: "" }, { weeksHigh: "Write both numbers of weeks, or leave both empty." }], [{ weeksLow: "", weeksHigh: "6" }, { weeksLow: "Write both numbers of weeks, or leave both empty." }],
    [{ weeksLow: "6", weeksHigh: "3" }, { weeksHigh: "The second number of weeks must not be smaller than the first." }],
    [{ weeksLow: "0", weeksHigh: "53" }, { weeksLow: "Weeks your work usually takes, from: at least 1.", weeksHigh: "Weeks your work usually takes, to: at most 52." }],
    [{ weeksLow: "some", weeksHigh: "4.5" }, { weeksLow: "Weeks your work usually takes, from: write a whole number.", weeksHigh: "Weeks your work usually takes, to: write a whole number." }],
  ])("reads the weeks of %j", (typed, read) => {
    const parsed = settingsFormSchema.safeParse({ ...valuesOf(DEFAULT_SETTINGS), ...typed });
    expect(parsed.success ? withFields(DEFAULT_SETTINGS, parsed.data).workWeeks : Object.fromEntries(parsed.error.issues.map((i) => [String(i.path[0]), i.message]))).toEqual(read);
  });
  it.each([
    [{ weeksLow: "9", weeksHigh: "3" }, { weeksHigh: "The second number of weeks must not be smaller than the first." }], [{ weeksLow: "9", weeksHigh: "" }, { weeksHigh: "Write both numbers of weeks, or leave both empty." }],
    [{ weeksLow: "9", weeksHigh: "some" }, { weeksHigh: "Weeks your work usually takes, to: write a whole number." }], [{ weeksLow: "9", weeksHigh: "0" }, { weeksHigh: "Weeks your work usually takes, to: at least 1." }],
  ])("names what is wrong with the weeks of %j beside everything else that is wrong, and not at the next try", (weeks, said) => {
    const parsed = settingsFormSchema.safeParse({ ...valuesOf({ ...DEFAULT_SETTINGS, email: "desk@yard.example" }), ...weeks, name: " ", cleanPerM2: "forty" });
    expect(Object.fromEntries((parsed.error?.issues ?? []).map((i) => [String(i.path[0]), i.message]))).toEqual({ ...said, name: "Write the workshop's name.", cleanPerM2: "Cleaning, per square metre: write a number." });
  });
  it("names the field of what is wrong", () => {
    const parsed = settingsFormSchema.safeParse({ ...valuesOf(DEFAULT_SETTINGS), name: " ", cleanPerM2: "forty", holdMinutes: "1441" });
    expect(parsed.error?.issues.map((i) => i.path[0]).sort()).toEqual(["cleanPerM2", "holdMinutes", "name"]);
  });
});

describe("clientSchema", () => {
  const read = (values: Record<string, string>) => clientSchema.safeParse({ name: "Ada Birch", email: "", telephone: "", ...values });
  it("takes what is filled in, trimmed, and nothing for an empty field", () => {
    expect(read({ name: " Ada Birch ", email: " ada@example.org ", telephone: " 01632 960 112 " }).data).toEqual({ name: "Ada Birch", email: "ada@example.org", telephone: "01632 960 112" });
    expect(read({}).data).toEqual({ name: "Ada Birch", email: null, telephone: null });
  });
  it.each([
    [{ name: " " }, "Write the client’s name."], [{ name: "x".repeat(201) }, "That name is too long for us."], [{ email: "ada@" }, "Write an e-mail address like name@example.org."],
    [{ email: `${"a".repeat(64)}@${"b".repeat(190)}.org` }, "That address is too long."], [{ telephone: "1234" }, "Write the telephone number in figures, or leave it empty."], [{ telephone: "1".repeat(41) }, "A telephone number can have at most 40 characters."],
  ])("says what is wrong with %j", (values, says) => expect(read(values).error?.issues.map((i) => i.message)).toContain(says));
  it("takes the longest name and number, and the shortest number", () => {
    for (const values of [{ name: "x".repeat(200) }, { telephone: "1".repeat(40) }, { telephone: "12345" }]) expect(read(values).success).toBe(true);
  });
});

describe("asSeen", () => {
  it("differs with each detail, and tells none from empty", () => {
    const one = { name: "Ada", email: "ada@example.org", telephone: "1" };
    const all = [one, { ...one, name: "Ida" }, { ...one, email: "ida@example.org" }, { ...one, telephone: "2" }, { ...one, telephone: null }, { ...one, telephone: "" }, { name: "Ada", email: "1", telephone: "ada@example.org" }];
    expect(new Set(all.map(asSeen)).size).toBe(all.length);
    expect(asSeen({ telephone: "1", email: "ada@example.org", name: "Ada" })).toBe(asSeen(one));
  });
});

describe("sayCorrected", () => {
  const done = { was: "ada@exmaple.org", is: "ada@example.org", redirected: 0, posted: 0, overtaken: 0, inDoubt: 0, areLinksEnded: false, isAcknowledged: false, suppressedWhy: null, others: [] };
  it("says no more than what was done", () => {
    expect(sayCorrected(done)).toBe("Corrected.");
  });
  it("says where letters go, what may have arrived, and what becomes of links", () => {
    expect(sayCorrected({ ...done, redirected: 1, inDoubt: 2 })).toBe("Corrected. One letter goes to ada@example.org now. Two letters may have reached the old address and are not tried again.");
    expect(sayCorrected({ ...done, areLinksEnded: true, isAcknowledged: true })).toBe("Corrected. The links sent before open nothing any more. The acknowledgement goes to ada@example.org, with a link to their own page.");
    expect(sayCorrected({ ...done, is: null, redirected: 2, areLinksEnded: true })).toBe("Corrected. Two letters wait here, to be read out. The links sent before open nothing any more. The client has no link now.");
  });
  it("says what becomes of letters that were to be read out, now that there is an address", () => {
    expect(sayCorrected({ ...done, was: null, posted: 1 })).toBe("Corrected. One letter that was to be read out goes to ada@example.org once the holding time is over.");
    expect(sayCorrected({ ...done, was: null, overtaken: 2 })).toBe("Corrected. Two letters that were to be read out are taken back: what stands at the enquiry now takes their place.");
  });
  it("warns of a new address that refused before, and of other enquiries with the old one", () => {
    expect(sayCorrected({ ...done, suppressedWhy: "550 5.1.1", others: ["K7-204", "A1-300"] })).toBe("Corrected. ada@example.org refused our mail before (550 5.1.1): nothing is sent there until somebody says in the Post why it should be. The old address stands in other enquiries too: K7-204, A1-300.");
  });
});
