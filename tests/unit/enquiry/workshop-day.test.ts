import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lastEvening } from "../../../lib/enquiry/workshop-day";

const at = (now: string, zone: string) => lastEvening(new Date(now), zone).toISOString();

describe("lastEvening", () => {
  it("is yesterday's six o'clock until six, and today's from six on", () => {
    expect(at("2026-11-25T09:00:00Z", "Europe/Dublin")).toBe("2026-11-24T18:00:00.000Z");
    expect(at("2026-11-25T17:59:59.999Z", "Europe/Dublin")).toBe("2026-11-24T18:00:00.000Z");
    expect(at("2026-11-25T18:00:00Z", "Europe/Dublin")).toBe("2026-11-25T18:00:00.000Z");
  });
  it("goes by the workshop's clock, summer and winter", () => {
    expect(at("2026-07-01T09:00:00Z", "Europe/Dublin")).toBe("2026-06-30T17:00:00.000Z");
    expect(at("2026-11-25T09:00:00Z", "America/New_York")).toBe("2026-11-24T23:00:00.000Z");
    expect(at("2026-11-25T02:00:00Z", "Asia/Kolkata")).toBe("2026-11-24T12:30:00.000Z");
  });
  it("is right across the night the clock changes (Dublin, 29 March and 25 October 2026)", () => {
    expect(at("2026-03-29T09:00:00Z", "Europe/Dublin")).toBe("2026-03-28T18:00:00.000Z");
    expect(at("2026-03-29T20:00:00Z", "Europe/Dublin")).toBe("2026-03-29T17:00:00.000Z");
    expect(at("2026-10-25T09:00:00Z", "Europe/Dublin")).toBe("2026-10-24T17:00:00.000Z");
  });
  it("lies within the last 25 hours, and shows six on the workshop's clock", () => {
    const zone = fc.constantFrom("Europe/Dublin", "America/Los_Angeles", "Asia/Kathmandu", "Pacific/Chatham", "UTC");
    fc.assert(
      fc.property(fc.date({ min: new Date("2000-01-01"), max: new Date("2060-01-01"), noInvalidDate: true }), zone, (now, timeZone) => {
        const evening = lastEvening(now, timeZone);
        const hours = (now.getTime() - evening.getTime()) / 3_600_000;
        expect(hours).toBeGreaterThanOrEqual(0);
        expect(hours).toBeLessThan(25 + 1e-9);
        expect(new Intl.DateTimeFormat("en-GB", { timeZone, hour: "2-digit", minute: "2-digit" }).format(evening)).toBe("18:00");
      }),
    );
  });
});
