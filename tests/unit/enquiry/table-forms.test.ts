import { describe, expect, it } from "vitest";
import { lossesForm, lossName, LOSS_IDS, lossValues, percentSum, priorsForm, priorValues } from "../../../lib/enquiry/table-forms";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import { PRIORS } from "../../../lib/trade/priors";
import { DEFAULT_SETTINGS, SETTING_LIMITS, workshopSettingsSchema } from "../../../lib/workshop/settings-schema";

const messages = (r: { success: boolean; error?: { issues: { path: PropertyKey[]; message: string }[] } }) => Object.fromEntries((r.error?.issues ?? []).map((i) => [String(i.path[0]), i.message]));

describe("lossesForm", () => {
  it("keeps the figures that were written, and the table's where a field is empty", () => {
    expect(lossesForm.parse({ "promised-and-failed": "12", "trouble-question": "0,005", "made-worse": " " })).toEqual({ "promised-and-failed": 12, "trouble-question": 0.005 });
    expect(lossesForm.parse(lossValues(DEFAULT_SETTINGS))).toBeNull();
  });
  it("shows again what it kept", () => {
    const losses = { "made-worse": 20.5, "trouble-photo": 0 };
    expect(lossesForm.parse(lossValues({ ...DEFAULT_SETTINGS, losses }))).toEqual(losses);
    expect(workshopSettingsSchema.safeParse({ ...DEFAULT_SETTINGS, losses }).success).toBe(true);
  });
  it("says of each field, by the name above it, what is wrong with it", () => {
    expect(messages(lossesForm.safeParse({ "promised-and-failed": "-3", "home-advice-harms": "much", "trouble-photo": String(SETTING_LIMITS.maxLoss + 1) }))).toEqual({
      "promised-and-failed": "Promised too much, and it failed: not below zero.", "home-advice-harms": "Home advice that harms: write a number from 0 to 1,000.", "trouble-photo": "The trouble of a photo: at most 1,000.",
    });
    expect(lossesForm.safeParse({ "trouble-photo": String(SETTING_LIMITS.maxLoss) }).success).toBe(true);
    expect(new Set(LOSS_IDS.map(lossName)).size).toBe(LOSS_IDS.length);
  });
  it("lets a question be free, and no broken promise", () => {
    expect(messages(lossesForm.safeParse({ "promised-and-failed": "0" }))["promised-and-failed"]).toMatch(/cannot cost nothing/);
    expect(lossesForm.safeParse({ "trouble-question": "0" }).success).toBe(true);
  });
});

/** The table's own shares, as they would be typed. */
const ours = Object.fromEntries(FIBRE_IDS.map((f) => [f, String(Math.round(PRIORS[f] * 10_000) / 100)]));

describe("priorsForm", () => {
  it("keeps shares that make a hundred as chances that make one", () => {
    const priors = priorsForm.parse(ours);
    expect(Object.values(priors ?? {}).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    for (const f of FIBRE_IDS) expect(priors?.[f]).toBeCloseTo(PRIORS[f], 6);
    expect(workshopSettingsSchema.safeParse({ ...DEFAULT_SETTINGS, priors }).success).toBe(true);
    expect(priorValues({ ...DEFAULT_SETTINGS, priors })).toEqual(ours);
  });
  it("goes back to the table's where all is empty", () => expect(priorsForm.parse(priorValues(DEFAULT_SETTINGS))).toBeNull());
  it.each([["26.2", true], ["26.24", true], ["26.1", false], ["36.2", false]])("with wool at %s: %s", (wool, isTaken) => {
    const result = priorsForm.safeParse({ ...ours, wool });
    expect(result.success).toBe(isTaken);
    if (!isTaken) expect(messages(result)["form"]).toMatch(/^Together they make \d+(\.\d+)? per cent/);
  });
  it("says the sum that stands in the fields, whatever else does", () => {
    expect(percentSum(ours)).toBeCloseTo(100, 6);
    expect(percentSum({ silk: "40", wool: "x", viscose: "", cotton: "-3" })).toBe(40);
  });
  it("rules nothing out and takes nothing for certain", () => {
    expect(messages(priorsForm.safeParse({ ...ours, acetate: "0" }))["acetate"]).toMatch(/^Acetate: at least 0\.1 per cent/);
    expect(messages(priorsForm.safeParse({ ...ours, other: "2.9" }))["other"]).toMatch(/^Something else, or unclear: at least 3 per cent/);
    expect(messages(priorsForm.safeParse({ ...ours, wool: "80.1" }))["wool"]).toMatch(/^Wool: at most 80 per cent/);
    expect(messages(priorsForm.safeParse({ ...ours, wool: "" }))["wool"]).toBe("Wool: write a share for every fibre, or leave all empty.");
    expect(messages(priorsForm.safeParse({ ...ours, wool: "-1" }))["wool"]).toBe("Wool: not below zero.");
  });
});
