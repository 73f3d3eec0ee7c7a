import { describe, expect, it } from "vitest";
import { BENCH_TESTS } from "../../../lib/trade/bench-tests";
import { sayFinding, tellFinding } from "../../../lib/triage/say-finding";
import type { Finding } from "../../../lib/triage/finding";
import { told } from "./belief-helpers";

const pair = { leading: "viscose", rival: "wool-viscose" } as const;
const say = (finding: Finding, decibans: number | null) => sayFinding(finding, { decibans, yearNow: 2026 }, pair);

describe("sayFinding", () => {
  it.each([
    [0.9, "Says little between viscose and a blend of wool and viscose."],
    [1, "Speaks a little for viscose against a blend of wool and viscose (1.0 dB)."],
    [4, "Speaks clearly for viscose against a blend of wool and viscose (4.0 dB)."],
    [8, "Speaks strongly for viscose against a blend of wool and viscose (8.0 dB)."],
    [-8, "Speaks strongly for a blend of wool and viscose against viscose (8.0 dB)."],
  ])("puts %d dB into words for staff", (db, words) => {
    expect(say(told("sellerSaid", "silk"), db).staff).toBe(`The seller called it “Silk”. ${words}`);
  });
  it("tells the client what it points to, without numbers", () => {
    expect(say(told("sellerSaid", "silk"), 5).client).toBe("The seller called it “Silk”. That points clearly to viscose rather than a blend of wool and viscose.");
    expect(say(told("sellerSaid", "silk"), 0.5).client).toBe("The seller called it “Silk”.");
  });
  it("knows of a gift only what was passed on", () => {
    const passedOn = (value: string) => sayFinding(told("sellerSaid", value), { decibans: 0.5, yearNow: 2026, isGift: true }, pair).client;
    expect(passedOn("silk")).toBe("It was passed on as “Silk”.");
    expect(passedOn("nothing")).toBe("Nothing was passed on of what it is made of.");
  });
  it("says of a gift’s price that it was paid, and by the client only of what they bought", () => {
    const price = (isGift: boolean) => sayFinding(told("price-per-m2", { amount: 192, currency: "GBP", year: 2018 }), { decibans: 0.5, yearNow: 2026, isGift }, pair).client;
    expect(price(false)).toBe("You paid about £192 a square metre in 2018.");
    expect(price(true)).toBe("As far as you know, about £192 a square metre was paid for it in 2018.");
  });
  it("says to staff, not to the client, that a finding is not weighed", () => {
    const said = say(told("boughtYear", 2020), null);
    expect(said).toEqual({ staff: "It was bought in 2020. Not weighed for the fibre.", client: "It was bought in 2020." });
  });
  it("says of a year to come that it is not weighed, and counts the present one", () => {
    expect(say(told("price-per-m2", { amount: 250, currency: "EUR", year: 3020 }), null).staff).toContain("The year 3020 has not come yet, so this is not weighed.");
    expect(say(told("boughtYear", 2027), null).client).toContain("has not come yet");
    expect(say(told("boughtYear", 2026), null).client).toBe("It was bought in 2026.");
  });
  it("tells a test to staff with its answer, to the client without", () => {
    const burn: Finding = { what: "test:burn", value: { smell: Object.keys(BENCH_TESTS.burn.readings.smell.answers)[0] as string }, strength: "bench", from: "bench:1", of: { part: "pile", yarn: "field" } };
    expect(say(burn, 9).staff).toMatch(/^The test “.+” of the field of the pile gave “.+”\. Speaks strongly/);
    expect(say(burn, 9).client).toBe("We tested a few fibres of the field of the pile. That points strongly to viscose rather than a blend of wool and viscose.");
  });
});

describe("tellFinding", () => {
  it.each([
    [told("label", { says: "wool-viscose", text: "x" }), "the label says wool and viscose"],
    [told("label", { says: "art-silk", text: "x" }), "the label has a trade word for imitation silk, not a fibre name"],
    [told("label", { says: "other", text: "x" }), "the label names a fibre that is rare in rugs"],
    [told("label", { says: null, text: "ბამბა" }), "no fibre could be read in the label’s words “ბამბა”"],
    [told("sellerSaid", "nothing"), "the seller did not say what it is made of"],
    [told("price-per-m2", { amount: 250.4, currency: "EUR", year: 2019 }), "you paid about €250 a square metre in 2019"],
    [told("price", { priceTotal: 1234.5, currency: null }), "the price was 1,230"],
    [told("size", { widthCm: 200, lengthCm: 300, m2: 6 }), "it measures 200 by 300 cm"],
    [told("changes", ["browner", "stiff"]), "you answered “Browner or yellower than it was”, “The pile is stiff or matted” to “How has the rug changed?”"],
    [told("shine", "constructor"), "you answered “constructor” to “Stand at one end, then at the other. How does the pile shine?”"],
    [told("colour", { deltaE: 4.2, place: "corner" }), "colour: deltaE 4.2, place corner"],
  ])("%j", (finding, clause) => {
    expect(tellFinding(finding).client).toBe(clause);
  });
});
