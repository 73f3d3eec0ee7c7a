import { describe, expect, it } from "vitest";
import { benchTestForm, NOT_READ, readingField } from "../../../lib/enquiry/bench-test-form";
import { isNeeded, readingsSchema, TEST_IDS, testRow } from "../../../lib/enquiry/bench-test-schema";
import { percentField, reportForm } from "../../../lib/enquiry/report-form";
import { SAMPLE_IDS, SAMPLES, sampleIdOf } from "../../../lib/enquiry/samples";
import type { FormValues } from "../../../lib/enquiry/step-schemas";
import { weighingsForm } from "../../../lib/enquiry/weighings-form";
import { percentsOfWeighings } from "../../../lib/enquiry/weighings-schema";
import type { Reading } from "../../../lib/trade/bench-tests";

/** What a form says against its fields, by field. */
function errorsOf(form: { safeParse(v: FormValues): { success: boolean; error?: { issues: { path: PropertyKey[]; message: string }[] } } }, values: FormValues): Record<string, string> {
  return Object.fromEntries((form.safeParse(values).error?.issues ?? []).map((i) => [String(i.path[0]), i.message]));
}
const burn = (values: FormValues) => benchTestForm("burn").safeParse({ sample: "pile:field", ...values });

/** An answer of every kind of reading, as it is kept and as it is typed. */
const anAnswer = (reading: Reading): string | number => (reading.kind === "choice" ? (Object.keys(reading.answers)[0] as string) : reading.kind === "number" ? reading.most : "red");

describe("benchTestForm", () => {
  it.each(TEST_IDS)("takes every reading of %s, and keeps them under their ids", (test) => {
    const { readings, speaksFor } = testRow(test);
    const given = Object.fromEntries(Object.entries(readings).map(([id, r]) => [id, anAnswer(r)]));
    const typed = Object.fromEntries(Object.entries(given).map(([id, v]) => [readingField(id), ` ${v} `]));
    const sample = speaksFor === "spot" ? "pile:whole" : "fringe:whole";
    expect(benchTestForm(test).safeParse({ ...typed, sample: "fringe:whole" })).toMatchObject({ success: true, data: { sample, readings: given } });
  });
  it("leaves out what was not looked at, and asks for one reading at least", () => {
    expect(burn({ "reading-smell": "hair", "reading-ash": NOT_READ, "reading-flame": "" })).toMatchObject({ data: { readings: { smell: "hair" } } });
    expect(errorsOf(benchTestForm("burn"), { sample: "pile:field", "reading-ash": NOT_READ })).toEqual({ form: "Record at least one reading." });
    expect(errorsOf(benchTestForm("dye-bleed"), { "reading-colour": "red" })).toEqual({ form: "Record at least one reading." });
  });
  it("says beside each field what is missing or wrong there", () => {
    expect(errorsOf(benchTestForm("burn"), { "reading-smell": "roses" })).toEqual({ sample: "Say what the sample was taken from.", "reading-smell": "Choose one of the answers." });
    expect(errorsOf(benchTestForm("dye-bleed"), { "reading-water": "none" })).toEqual({ "reading-colour": "Write which." });
    expect(errorsOf(benchTestForm("spot-ph"), { "reading-ph": "seven" })).toEqual({ "reading-place": "Choose one of the answers.", "reading-ph": "Write a number." });
  });
  it.each([["-0.1", false], ["0", true], ["14", true], ["14,0", true], ["14.1", false], ["1e1", false], ["7", true]])("about a pH of %s: %s", (ph, isTaken) => {
    expect(benchTestForm("spot-ph").safeParse({ "reading-place": "affected", "reading-ph": ph }).success).toBe(isTaken);
  });
  it("needs the place of every test that speaks of one", () => {
    const ofPlace = TEST_IDS.filter((t) => testRow(t).readings["place"]);
    expect(ofPlace).toEqual(expect.arrayContaining(["spot-ph", "moisture", "ultraviolet"]));
    for (const t of ofPlace) {
      const others = Object.fromEntries(Object.entries(testRow(t).readings).filter(([id]) => id !== "place").map(([id, r]) => [id, anAnswer(r)]));
      expect(isNeeded("place", testRow(t).readings["place"] as Reading)).toBe(true);
      expect(readingsSchema(t).safeParse(others).success, t).toBe(false);
    }
  });
});

describe("SAMPLES", () => {
  it("are kept under the part and the yarn they speak for", () => {
    for (const id of SAMPLE_IDS) expect(sampleIdOf(SAMPLES[id].of)).toBe(id);
  });
});

const HEAD = { laboratory: "Fenwick Fibre Laboratory", reportedOn: "2026-11-20", reference: "", sample: "pile:whole" };

describe("reportForm", () => {
  it("takes per cents however they are written, and leaves out the empty ones", () => {
    expect(reportForm.safeParse({ ...HEAD, [percentField("wool")]: "79,5 %", [percentField("viscose")]: "20.5", [percentField("silk")]: " " })).toMatchObject({
      success: true, data: { laboratory: HEAD.laboratory, sample: "pile:whole", percents: { wool: 79.5, viscose: 20.5 } },
    });
  });
  it("says what is missing beside its field", () => {
    expect(Object.keys(errorsOf(reportForm, {}))).toEqual(expect.arrayContaining(["laboratory", "reportedOn", "sample"]));
    expect(errorsOf(reportForm, { ...HEAD, [percentField("wool")]: "some", [percentField("silk")]: "40" })).toEqual({ [percentField("wool")]: "Write a number." });
    expect(errorsOf(reportForm, { ...HEAD, [percentField("wool")]: "60", [percentField("viscose")]: "30" })).toEqual({ [percentField("silk")]: "The per cents must add up to 100, give or take one." });
  });
  it("refuses a report from a day that has not come", () => expect(Object.keys(errorsOf(reportForm, { ...HEAD, reportedOn: "2999-01-01", [percentField("wool")]: "100" }))).toEqual(["reportedOn"]));
});

// Regulation (EU) No 1007/2011, Annex VIII, chapter 3, IV, worked example of variant 1: carded wool, polyamide and unbleached cotton.
const EXAMPLE = {
  ...HEAD, scheme: "ternary-1", "fibre-1": "wool-carded", "fibre-2": "polyamide", "fibre-3": "cotton-unbleached",
  "method-1": "2", "specimen-1": "1.6000 g", "residue-1": "1.4166", "method-2": "4", "specimen-2": "1,8000", "residue-2": "0.9000",
};

describe("weighingsForm", () => {
  it("gives the Regulation's own result, 10.97, 48.37 and 40.66 per cent, within a tenth", () => {
    const parsed = weighingsForm.safeParse(EXAMPLE);
    if (!parsed.success) throw new Error(JSON.stringify(parsed.error.issues));
    const found = percentsOfWeighings(parsed.data.weighings);
    if (!found.ok) throw new Error(found.say);
    for (const [fibre, printed] of [["wool", 10.97], ["polyamide", 48.37], ["cotton", 40.66]] as const) expect(Math.abs((found.percents[fibre] ?? 0) - printed)).toBeLessThanOrEqual(0.1);
  });
  it("says it in the fibres that triage knows, all of the specimen", () => {
    const found = percentsOfWeighings({ scheme: "ternary-4", fibres: ["wool-carded", "viscose", "cotton-unbleached"], weighings: [{ method: 2, specimenMassG: 1, residueMassG: 0.9 }, { method: 3, specimenMassG: 1, residueMassG: 0.4 }] });
    if (!found.ok) throw new Error(found.say);
    expect(Object.keys(found.percents).sort()).toEqual(["cotton", "viscose", "wool"]);
    expect(Object.values(found.percents).reduce((a, b) => a + b, 0)).toBeCloseTo(100, 6);
  });
  it("takes the first specimen again where there is one only", () => {
    const one = { ...EXAMPLE, scheme: "ternary-4", "fibre-2": "viscose", "method-2": "3", "specimen-2": "", "residue-2": "0.6630" };
    expect(weighingsForm.safeParse(one)).toMatchObject({ success: true, data: { weighings: { weighings: [{ specimenMassG: 1.6 }, { specimenMassG: 1.6 }] } } });
  });
  it("reads two fibres from one weighing and leaves the rest of the form alone", () => {
    const two = { ...EXAMPLE, scheme: "binary", "fibre-2": "cotton", "fibre-3": "silk", "method-2": "nonsense" };
    expect(weighingsForm.safeParse(two)).toMatchObject({ success: true, data: { weighings: { fibres: ["wool-carded", "cotton"], weighings: [{ method: 2 }] } } });
  });
  it("says what is wrong beside its field, and of masses that cannot be, why", () => {
    expect(Object.keys(errorsOf(weighingsForm, HEAD))).toEqual(["scheme"]);
    expect(Object.keys(errorsOf(weighingsForm, { ...HEAD, scheme: "binary" })).sort()).toEqual(["fibre-1", "fibre-2", "method-1", "residue-1", "specimen-1"]);
    expect(errorsOf(weighingsForm, { ...EXAMPLE, "residue-1": "1.7" })).toEqual({ form: "The residue cannot weigh more than the specimen." });
    expect(errorsOf(weighingsForm, { ...EXAMPLE, "residue-2": "-1" })).toEqual({ "residue-2": "Write the mass in grams." });
  });
});
