import { describe, expect, it } from "vitest";
import { EMERGENCY_NUMBERS } from "../../../lib/trade/emergency-numbers";
import { broughtAlong } from "../../../lib/workshop/brought-along";
import { DEFAULT_SETTINGS, type WorkshopSettings } from "../../../lib/workshop/settings-schema";

const POUNDS: WorkshopSettings = { ...DEFAULT_SETTINGS, currency: "GBP", jurisdiction: "UK", emergencyNumber: "999 or 112", prices: { cleanPerM2: 40, cleanMinimum: 90, bindingPerM: 0 } };
const plainly = (sentences: string[]) => sentences.join(" ").replaceAll("\u00a0", " ");

describe("broughtAlong", () => {
  it("exchanges prices that were left as they stood, at the mean rate of 2025 (Federal Reserve H.10: 1.3185 dollars a pound), and says so", () => {
    const { settings, says } = broughtAlong(POUNDS, { ...POUNDS, currency: "USD" });
    expect(settings.prices).toEqual({ cleanPerM2: 52.74, cleanMinimum: 118.67, bindingPerM: 0 });
    expect(plainly(says)).toMatch(/from GBP to USD at the mean rate of 2025: cleaning per square metre US\$52\.74, cleaning at least US\$118\.67\. Please look at them again/);
  });
  it("goes from euros to dollars by way of pounds (0.8567 pounds a euro)", () => {
    const { settings } = broughtAlong({ ...POUNDS, currency: "EUR" }, { ...POUNDS, currency: "USD" });
    expect(settings.prices.cleanPerM2).toBeCloseTo(40 * 0.8567 * 1.3185, 2);
  });
  it("leaves a price that was written anew, and every price where the currency stays", () => {
    const after = { ...POUNDS, currency: "USD" as const, prices: { cleanPerM2: 55, cleanMinimum: 120, bindingPerM: 0 } };
    expect(broughtAlong(POUNDS, after)).toEqual({ settings: after, says: [] });
    const dearer = { ...POUNDS, prices: { ...POUNDS.prices, cleanPerM2: 41 } };
    expect(broughtAlong(POUNDS, dearer)).toEqual({ settings: dearer, says: [] });
  });
  it.each([["US", "911"], ["EU", "112"], ["IE", "112 or 999"], ["other", "your emergency number"]] as const)("calls the usual number of a new place: %s, %s", (jurisdiction, number) => {
    const { settings, says } = broughtAlong(POUNDS, { ...POUNDS, jurisdiction });
    expect(settings.emergencyNumber).toBe(number);
    expect(plainly(says)).toContain(`call ${number}.`);
  });
  it("leaves a number of the workshop's own, old or new", () => {
    const own = { ...POUNDS, emergencyNumber: "555" };
    expect(broughtAlong(own, { ...own, jurisdiction: "US" }).settings.emergencyNumber).toBe("555");
    expect(broughtAlong(POUNDS, { ...own, jurisdiction: "US" }).settings.emergencyNumber).toBe("555");
  });
  it("names a source beside every number", () => {
    for (const { how, source } of Object.values(EMERGENCY_NUMBERS)) expect(`${how} ${source}`).toMatch(/^(memory|elicited) .{20}/);
  });
});
