import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Thread } from "../../../app/(client)/your-enquiry/thread";
import { wordsIn } from "../../../lib/words/words";

const letter = (at: string) => ({ subject: "Your rug", text: "Dear Ana", at, by: null, enclosures: [] });
const times = (view: Parameters<typeof Thread>[0]["view"]) =>
  [...renderToStaticMarkup(<Thread view={view} words={wordsIn("en-GB")} place={{ locale: "en-GB", timeZone: "Europe/London" }} />).matchAll(/<time[^>]*>([^<]*)<\/time>/gu)].map(([, told]) => told);

describe("Thread", () => {
  it("tells the hour, in the workshop's zone, where two stand on one day of the workshop's, and the day alone elsewhere", () => {
    const view = { written: [{ at: "2026-07-01T08:05:00Z", text: "Hello." }], letters: [letter("2026-07-01T16:40:00Z"), letter("2026-07-01T23:30:00Z")] };
    // Half past midnight in London is the next day.
    expect(times(view)).toEqual(["1 July 2026 at 09:05", "1 July 2026 at 17:40", "2 July 2026"]);
  });
  it("tells two letters of one day apart", () =>
    expect(times({ written: [], letters: [letter("2026-01-01T09:00:00Z"), letter("2026-01-01T15:30:00Z")] })).toEqual(["1 January 2026 at 09:00", "1 January 2026 at 15:30"]));
});
