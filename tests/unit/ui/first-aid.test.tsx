import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { FirstAid } from "../../../lib/ui/first-aid";
import { wordsIn } from "../../../lib/words/words";

const shown = (isGas: boolean) => renderToStaticMarkup(<FirstAid words={wordsIn("en-GB")} emergencyNumber="112" isGas={isGas} />).replace(/<[^>]*>/gu, " ");

describe("first aid on a page", () => {
  it("has everybody leave the room first, and nobody blot it or open a window, where bleach may give off gas", () => {
    expect(shown(true)).toMatch(/^\s*People first\s+Leave the room[^]*harmful gas[^]*has swallowed something[^]*call 112 now\.[^]*Do not blot it/u);
    expect(shown(true)).not.toMatch(/white cloth|open a window/u);
  });
  it("begins with no gas where none was told, and says in general to leave the room where products have met", () => {
    expect(shown(false)).toMatch(/^\s*People first\s+If somebody has swallowed something/u);
    expect(shown(false)).toMatch(/Where two have met, or one has met urine, a harmful gas can rise: leave the room and do not blot\./u);
    expect(shown(false)).toContain("white cloth");
  });
});
