import { describe, expect, it } from "vitest";
import { markWords } from "../../../lib/triage/label-marks";

/** Each name of a fibre and the fibre. */
function named(text: string): string[] {
  const lines = text.split("\n").map((line) => line.split(" "));
  const names: string[] = [];
  markWords(lines).flat().forEach(({ fibre, goesOn }, at) => {
    if (fibre && goesOn) names.push(`${names.pop()?.replace(/: .*/u, "")} ${lines.flat()[at]}: ${fibre}`);
    else if (fibre) names.push(`${lines.flat()[at]}: ${fibre}`);
  });
  return names;
}

describe("markWords", () => {
  it.each([
    ["100% ART SILK PILE", ["ART SILK: art-silk"]], ["art. silk", ["art. silk: art-silk"]], ["man made silk", ["man made silk: art-silk"]],
    ["Soie artificielle 100 %", ["Soie artificielle: art-silk"]], ["PURE NEW WOOL", ["NEW WOOL: wool"]], ["ART\nSILK", ["ART SILK: art-silk"]],
    ["80% WOOL\n20% VISCOSE", ["WOOL: wool", "VISCOSE: viscose"]], ["SILK, VISCOSE", ["SILK,: silk", "VISCOSE: viscose"]], ["Wollflor", ["Wollflor: wool"]], ["SILK PILE", ["SILK: silk"]],
  ])("takes names as long as the dictionary has them: %j", (text, names) => expect(named(text)).toEqual(names));
  it.each(["SILK TOUCH", "wool look", "HAND MADE", "160 x 230 cm"])("finds none in %j", (text) => expect(named(text)).toEqual([]));
  it("knows a word of the dictionary, and what is neither a word nor a figure, from one that it does not know", () => {
    expect(markWords([["PURE", "100%", "pile", "—", "AHT", "160"]]).flat().map((m) => m.isKnown)).toEqual([true, true, true, true, false, false]);
  });
  it("has a mark for each word, and none for none", () => expect(markWords([[], ["WOOL", ""], []]).map((line) => line.length)).toEqual([0, 2, 0]));
});
