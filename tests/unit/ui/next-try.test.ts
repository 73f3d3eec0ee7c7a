import { describe, expect, it } from "vitest";
import { nextTryInWords } from "../../../lib/ui/next-try";

const NOW = "2026-11-25T09:00:00.000Z";
const LONDON = { locale: "en-GB", timeZone: "Europe/London" } as const;

describe("nextTryInWords", () => {
  it.each([
    [null, ""], ["2026-11-25T08:59:59.000Z", "Next try in a moment."], [NOW, "Next try in a moment."],
    ["2026-11-25T09:01:00.000Z", "Next try today 09:01."], ["2026-11-26T00:30:00.000Z", "Next try tomorrow 00:30."],
  ])("for %s says %j", (nextTry, says) => expect(nextTryInWords({ nextTry }, NOW, LONDON)).toBe(says));
});
