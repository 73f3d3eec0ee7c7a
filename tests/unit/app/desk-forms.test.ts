import { describe, expect, it } from "vitest";
import { telephoneSchema } from "../../../app/(desk)/desk/telephone/schema";
import { settingsFormSchema, valuesOf, withFields } from "../../../app/(desk)/desk/settings/schema";
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
      price: "Write the price as a number.", widthCm: "Write the width as a number.", email: "Write an e-mail address like name@example.org.",
    });
  });
  it("refuses an answer that was never offered", () => {
    expect(Object.keys(errorsOf({ name: "Ada", incidents: ["spill", "meteor"] }))).toEqual(["incidents"]);
  });
});

describe("settingsFormSchema", () => {
  it("gives back the settings it was filled from", () => {
    const parsed = settingsFormSchema.parse(valuesOf(DEFAULT_SETTINGS));
    expect(withFields(DEFAULT_SETTINGS, parsed)).toEqual(DEFAULT_SETTINGS);
  });
  it("keeps what the form does not show", () => {
    const settings = { ...DEFAULT_SETTINGS, losses: { "broken-promise": 9 } };
    expect(withFields(settings, settingsFormSchema.parse(valuesOf(settings))).losses).toEqual({ "broken-promise": 9 });
  });
  it("names the field of what is wrong", () => {
    const parsed = settingsFormSchema.safeParse({ ...valuesOf(DEFAULT_SETTINGS), name: " ", cleanPerM2: "forty", holdMinutes: "1441" });
    expect(parsed.error?.issues.map((i) => i.path[0]).sort()).toEqual(["cleanPerM2", "holdMinutes", "name"]);
  });
});
