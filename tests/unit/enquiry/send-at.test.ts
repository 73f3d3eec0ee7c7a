import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chosenInstant, isBeforeHoldingEnds, leavesAt, SEND_AHEAD_DAYS } from "../../../lib/enquiry/send-at";
import { dayAndHour, instantAt, longDay, tomorrowAtEight } from "../../../lib/enquiry/workshop-day";

const DUBLIN = { timeZone: "Europe/Dublin", holdMinutes: 5, locale: "en-GB" as const };
const NOW = new Date("2026-11-28T09:12:00Z");
const chosen = (day: string, hour: string, now = NOW, clock = DUBLIN) => {
  const found = chosenInstant({ day, hour }, clock, now);
  return found.ok ? (found.value?.toISOString() ?? null) : found.say;
};

describe("chosenInstant", () => {
  it("goes by the workshop's clock, winter and summer", () => {
    expect(chosen("2026-11-29", "08:00")).toBe("2026-11-29T08:00:00.000Z");
    expect(chosen("2026-07-02", "08:00", new Date("2026-07-01T09:00:00Z"))).toBe("2026-07-02T07:00:00.000Z");
    expect(chosen("2026-11-29", "08:00", NOW, { ...DUBLIN, timeZone: "America/New_York" })).toBe("2026-11-29T13:00:00.000Z");
    expect(chosen("2026-11-29", "08:00", NOW, { ...DUBLIN, timeZone: "Asia/Kathmandu" })).toBe("2026-11-29T02:15:00.000Z");
  });
  it("is none where none was chosen", () => expect(chosenInstant(null, DUBLIN, NOW)).toEqual({ ok: true, value: null }));
  it("refuses this very minute and what is past, says what the clock shows, and takes the minute after", () => {
    expect(chosen("2026-11-28", "09:12")).toBe("That is past: at the workshop it is 09:12 on 28 November 2026.");
    expect(chosen("2025-11-29", "08:00")).toMatch(/^That is past/);
    expect(chosen("2026-11-28", "09:13")).toBe("2026-11-28T09:13:00.000Z");
  });
  it("takes thirty days ahead to the minute and nothing beyond", () => {
    expect(SEND_AHEAD_DAYS).toBe(30);
    expect(chosen("2026-12-28", "09:12")).toBe("2026-12-28T09:12:00.000Z");
    expect(chosen("2026-12-28", "09:13")).toBe("Choose a time within the next 30 days.");
  });
  it("refuses what is no time, and the hour that the clock leaves out (Dublin, 29 March 2026, one to two)", () => {
    const before = new Date("2026-03-28T09:00:00Z");
    expect(chosen("2026-03-29", "00:59", before)).toBe("2026-03-29T00:59:00.000Z");
    for (const hour of ["01:00", "01:30", "01:59"]) expect(chosen("2026-03-29", hour, before), hour).toMatch(/^There is no such time/);
    expect(chosen("2026-03-29", "02:00", before)).toBe("2026-03-29T01:00:00.000Z");
    for (const [day, hour] of [["2026-11-31", "08:00"], ["tomorrow", "08:00"], ["2026-11-29", "25:00"], ["2026-11-29", "8"]] as const) expect(chosen(day, hour), `${day} ${hour}`).toMatch(/^There is no such time/);
  });
  it("says which of the two is missing, the day first", () => {
    expect([chosen("", "08:00"), chosen("2026-11-29", ""), chosen("", "")]).toEqual(["Choose the day.", "Choose the hour.", "Choose the day."]);
  });
  it("says the wrong time beside its field", () => expect(chosenInstant({ day: "2026-11-28", hour: "08:00" }, DUBLIN, NOW)).toMatchObject({ code: "invalid", fields: { sendAt: expect.any(String) as string } }));
});

describe("isBeforeHoldingEnds", () => {
  it("tells a chosen time that the holding outlasts from the end of it, and from none", () => {
    const at = (hour: string) => new Date(`2026-11-28T${hour}:00Z`);
    expect(["09:16", "09:17", "09:18"].map((hour) => isBeforeHoldingEnds(at(hour), DUBLIN, NOW))).toEqual([true, false, false]);
    expect(isBeforeHoldingEnds(null, DUBLIN, NOW)).toBe(false);
  });
});

describe("leavesAt", () => {
  it("is the end of the holding where nothing or an earlier time was chosen, else the chosen time", () => {
    const held = new Date("2026-11-28T09:17:00Z");
    expect(leavesAt(null, DUBLIN, NOW)).toEqual(held);
    expect(leavesAt(new Date("2026-11-28T09:16:00Z"), DUBLIN, NOW)).toEqual(held);
    const tomorrow = new Date("2026-11-29T08:00:00Z");
    expect(leavesAt(tomorrow, DUBLIN, NOW)).toEqual(tomorrow);
    expect(leavesAt(null, { ...DUBLIN, holdMinutes: 0 }, NOW)).toEqual(NOW);
  });
});

describe("instantAt and dayAndHour", () => {
  it("undo each other to the minute, in every zone, but for hours that are left out or come twice", () => {
    const zone = fc.constantFrom("Europe/Dublin", "America/Los_Angeles", "Asia/Kathmandu", "Pacific/Chatham", "Australia/Lord_Howe", "UTC");
    fc.assert(fc.property(fc.date({ min: new Date("2000-01-01"), max: new Date("2060-01-01"), noInvalidDate: true }), zone, (at, timeZone) => {
      const shown = dayAndHour(at, timeZone);
      const back = instantAt(shown.day, shown.hour, timeZone);
      expect(back).not.toBeNull();
      expect(dayAndHour(back as Date, timeZone)).toEqual(shown);
      expect(Math.abs((back as Date).getTime() - at.getTime())).toBeLessThanOrEqual(3_600_000 + 60_000);
    }));
  });
});

describe("tomorrowAtEight", () => {
  it("is the workshop's next day, whatever day it is elsewhere", () => {
    expect(tomorrowAtEight(new Date("2026-11-28T23:30:00Z"), "Europe/Dublin")).toEqual({ day: "2026-11-29", hour: "08:00" });
    expect(tomorrowAtEight(new Date("2026-11-28T23:30:00Z"), "Asia/Kathmandu")).toEqual({ day: "2026-11-30", hour: "08:00" });
    expect(tomorrowAtEight(new Date("2026-12-31T12:00:00Z"), "America/New_York")).toEqual({ day: "2027-01-01", hour: "08:00" });
    expect(tomorrowAtEight(new Date("2026-10-24T22:30:00Z"), "Europe/Dublin")).toEqual({ day: "2026-10-25", hour: "08:00" });
  });
});

describe("longDay", () => {
  it("is written as the workshop writes days", () => expect([longDay("2026-11-28", "en-GB"), longDay("2026-11-28", "en-US")]).toEqual(["28 November 2026", "November 28, 2026"]));
});
