import { describe, expect, it } from "vitest";
import { nextOpening, openingDay, openingHours } from "../../../lib/enquiry/opening-hours";

const LONDON = "Europe/London";
const DEMO = "Monday to Friday, 8 to 17";
const daysOf = (hours: string) => openingHours(hours)?.map((o) => [[...o.days].sort().join(""), o.fromMinute / 60, o.toMinute / 60]);

describe("openingHours", () => {
  it.each<[string, [string, number, number][]]>([
    [DEMO, [["12345", 8, 17]]], ["Mon–Fri 8:30–17.30", [["12345", 8.5, 17.5]]], ["Tuesday, Thursday and Saturday, 9am to 5pm", [["246", 9, 17]]], ["weekdays 9 to 5", [["12345", 9, 17]]],
    ["Monday to Friday, 8 to 17; Saturday 9 to 12", [["12345", 8, 17], ["6", 9, 12]]], ["Monday to Friday 8 to 17, and Saturday 9 to 12.", [["12345", 8, 17], ["6", 9, 12]]],
    ["Saturday to Monday, 10 to 14", [["016", 10, 14]]], ["daily 10 a.m. to 12 p.m.", [["0123456", 10, 12]]], ["Mondays, 8 to 24", [["1", 8, 24]]],
  ])("reads %j", (hours, read) => expect(daysOf(hours)).toEqual(read));
  it.each(["", "by appointment", "Monday to Friday, 8 to 17, and by appointment", "Monday to Friday, 8 to 17 except holidays", "8 to 17", "Monday", "Monday to Friday", "Montag bis Freitag, 8 bis 17", "Monday, 25 to 27", "Monday 8 to 12 and 13 to 17"])(
    "tells nothing of %j, of which it does not understand every word", (hours) => expect(openingHours(hours)).toBeNull());
});

describe("nextOpening", () => {
  const at = (now: string, hours = DEMO, zone = LONDON) => nextOpening(hours, new Date(now), zone)?.toISOString() ?? null;
  it("is Monday at eight on a Saturday, a Sunday, and a Friday evening from five on", () => {
    for (const now of ["2026-11-27T17:00:00Z", "2026-11-28T12:00:00Z", "2026-11-29T23:59:00Z", "2026-11-30T07:59:00Z"]) expect(at(now)).toBe("2026-11-30T08:00:00.000Z");
  });
  it("is none while it is open, from the first minute to the last", () => {
    for (const now of ["2026-11-27T08:00:00Z", "2026-11-27T16:59:00Z"]) expect(at(now)).toBeNull();
  });
  it("goes by the workshop's clock, over the change of the hour too", () => {
    // Summer time ends in Britain on 25 October 2026; New York is five hours behind in November.
    expect(at("2026-10-24T12:00:00Z")).toBe("2026-10-26T08:00:00.000Z");
    expect(at("2026-10-23T06:30:00Z")).toBe("2026-10-23T07:00:00.000Z");
    expect(at("2026-11-30T12:59:00Z", DEMO, "America/New_York")).toBe("2026-11-30T13:00:00.000Z");
  });
  it("takes the next of several, and comes round to the same day in a week", () => {
    expect(at("2026-11-27T18:00:00Z", "Monday to Friday, 8 to 17; Saturday 9 to 12")).toBe("2026-11-28T09:00:00.000Z");
    expect(at("2026-11-30T18:00:00Z", "Monday, 8 to 17")).toBe("2026-12-07T08:00:00.000Z");
  });
  it("is today where the day has not ended, and of the same day in a week not named as if it were today", () => {
    const day = (now: string, hours = DEMO, zone = LONDON) => openingDay(nextOpening(hours, new Date(now), zone) as Date, new Date(now), zone);
    expect(day("2026-11-30T07:59:00Z")).toBe("today");
    expect(day("2026-11-29T23:59:00Z")).toBe("other");
    // In New York it is still the evening before.
    expect(day("2026-11-30T04:59:00Z", DEMO, "America/New_York")).toBe("other");
    expect(day("2026-11-30T05:00:00Z", DEMO, "America/New_York")).toBe("today");
    expect(day("2026-11-30T18:00:00Z", "Monday, 8 to 17")).toBe("week");
    expect(day("2026-12-01T00:00:00Z", "Monday, 8 to 17")).toBe("other");
  });
  it("is none where the hours cannot be read", () => expect(at("2026-11-29T12:00:00Z", "by appointment")).toBeNull());
});
