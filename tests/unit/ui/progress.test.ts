import { describe, expect, it } from "vitest";
import { wordsIn } from "../../../lib/words/words";
import { progressWords, remainingInChapter } from "../../../lib/ui/progress";

const ENGLISH = wordsIn("en-GB");

describe("remainingInChapter", () => {
  it("counts a page that hangs on an answer still to come towards the most only", () => {
    expect(remainingInChapter("back", {})).toEqual({ least: 1, most: 2 });
  });
  it("knows once that answer is given and lies behind", () => {
    expect(remainingInChapter("liquid", { reason: "routine", rug: { incidents: ["spill"] } })).toEqual({ least: 3, most: 4 });
  });
  it("is nothing after the last of a part", () => expect(remainingInChapter("matters", {})).toEqual({ least: 0, most: 0 }));
});

describe("progressWords", () => {
  it("says a known number plainly", () => expect(progressWords("room", {}, ENGLISH)).toBe("Three more about where it lies, then you."));
  it("says two numbers where one answer decides", () => expect(progressWords("touch", {}, ENGLISH)).toBe("Two or three more about the rug itself, then what happened to it."));
  it("says perhaps where it may be none", () => expect(progressWords("fringe", {}, ENGLISH)).toBe("Perhaps one more about the rug itself, then what happened to it."));
  it("says which is the last of a part", () => expect(progressWords("fringe-feel", { rug: { fringe: "sewn-on" } }, ENGLISH)).toBe("The last one about the rug itself, then what happened to it."));
  it("says which is the last page", () => expect(progressWords("send", {}, ENGLISH)).toBe("This is the last page."));
});
