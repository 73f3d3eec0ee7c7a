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
  it("says nothing of gas where none was told", () => {
    expect(shown(false)).not.toContain("harmful gas");
    expect(shown(false)).toContain("white cloth");
  });
});
