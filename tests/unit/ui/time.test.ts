import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clock, dayAndClock, heldInWords, waitingInWords } from "../../../lib/ui/time";

const NOW = "2026-11-25T09:00:00Z";
const before = (seconds: number) => new Date(Date.parse(NOW) - seconds * 1000).toISOString();
const waits = (seconds: number) => waitingInWords(before(seconds), NOW);
const [MIN, H, DAY] = [60, 3_600, 86_400];

describe("waitingInWords", () => {
  it.each([
    ["just now, to the last second of the first minute", 59, "just now", "just now"],
    ["one minute, from its first second", 60, "1 min", "1 minute"],
    ["minutes under an hour", 59 * MIN + 59, "59 min", "59 minutes"],
    ["a whole hour without minutes", H, "1 h", "1 hour"],
    ["minutes with two figures beside hours", H + 5 * MIN, "1 h 05", "1 hour 5 minutes"],
    ["hours and minutes under ten hours", 9 * H + 59 * MIN, "9 h 59", "9 hours 59 minutes"],
    ["hours alone from ten hours", 10 * H + 20 * MIN, "10 h", "10 hours"],
    ["hours under a day", 24 * H - 1, "23 h", "23 hours"],
    ["one day", DAY, "1 day", "1 day"],
    ["days under two weeks", 14 * DAY - 1, "13 days", "13 days"],
    ["weeks from two weeks", 14 * DAY, "2 weeks", "2 weeks"],
  ])("says %s", (_, seconds, short, spoken) => {
    expect(waits(seconds)).toEqual({ short, spoken });
  });

  it("counts an instant ahead as just now", () => {
    expect(waits(-3 * H).short).toBe("just now");
  });

  it("throws on what is no instant", () => {
    expect(() => waitingInWords("yesterday", NOW)).toThrow(/ISO 8601/);
  });

  it("never rounds up: what it says in minutes and hours has passed", () => {
    fc.assert(fc.property(fc.integer({ min: 60, max: DAY - 1 }), (seconds) => {
      const [a, unit, b] = waits(seconds).short.split(" ");
      const said = unit === "min" ? Number(a) * MIN : Number(a) * H + Number(b ?? 0) * MIN;
      expect(said).toBeLessThanOrEqual(seconds);
      expect(seconds - said).toBeLessThan(unit === "min" ? MIN : b === undefined ? H : MIN);
    }));
  });
});

describe("dayAndClock", () => {
  const place = { locale: "en-GB", timeZone: "Europe/London" } as const;
  it.each([
    ["2026-11-25T08:15:00Z", "today 08:15"],
    ["2026-11-24T17:40:00Z", "yesterday 17:40"],
    ["2026-11-26T07:00:00Z", "tomorrow 07:00"],
    ["2026-11-23T23:59:00Z", "Monday 23:59"],
    ["2026-11-19T09:00:00Z", "Thursday 09:00"],
    ["2026-11-18T09:00:00Z", "18 November 2026, 09:00"],
  ])("tells %s", (iso, words) => {
    expect(dayAndClock(iso, NOW, place)).toBe(words);
  });

  it("follows the workshop's calendar, not the server's: 23:30 in London is already tomorrow in Tokyo", () => {
    expect(dayAndClock("2026-11-24T23:30:00Z", NOW, { locale: "en-GB", timeZone: "Asia/Tokyo" })).toBe("today 08:30");
  });

  it("counts calendar days over the change of the clocks", () => {
    expect(dayAndClock("2026-10-24T23:30:00Z", "2026-10-26T00:30:00Z", { locale: "en-GB", timeZone: "Europe/London" })).toBe("yesterday 00:30");
  });
});

describe("clock", () => {
  it("is the hour in the workshop's time zone", () => {
    expect(clock("2026-07-01T12:05:00Z", { locale: "en-GB", timeZone: "Europe/Dublin" })).toBe("13:05");
  });
  // CLDR's short times: two figures of the hour on a clock of 24 hours, none too many on one of 12. ICU parts them from AM by a narrow space.
  it.each([["en-GB", "08:05", "18:00"], ["en-US", "8:05 AM", "6:00 PM"], ["en-AU", "8:05 am", "6:00 pm"]] as const)("is told as they do in %s", (locale, morning, evening) => {
    const told = (iso: string) => clock(iso, { locale, timeZone: "UTC" }).replace(/\u202f/gu, " ");
    expect([told("2026-11-28T08:05:00Z"), told("2026-11-28T18:00:00Z")]).toEqual([morning, evening]);
  });
});

describe("heldInWords", () => {
  const held = (until: string | null) => heldInWords(until, NOW, { locale: "en-GB", timeZone: "Europe/Berlin" });
  it("says until when, on the workshop's clock, with the day where it is another", () => {
    expect(held("2026-11-25T09:05:00Z")).toBe("our letter is held until 10:05");
    expect(held("2026-11-25T23:05:00Z")).toBe("our letter is held until tomorrow 00:05");
  });
  it("says nothing once the time is over, to the second, and where none is held", () => {
    for (const until of [NOW, before(1), null]) expect(held(until)).toBeNull();
  });
});
