import { describe, expect, it } from "vitest";
import { ownLines, passagesIn } from "../../../lib/words/quoted-lines";

describe("ownLines", () => {
  it("leaves out the lines that mail programs mark, also after a blank, and no other", () => {
    expect(ownLines("> Is it wet?\n >> Is it wool?\nNo.\nIt is > 2 m.")).toBe("No.\nIt is > 2 m.");
  });
});

describe("passagesIn", () => {
  it.each<[string, string, [boolean, string][]]>([
    ["an answer below a question", "> Is it wet?\n\nNo.", [[true, "Is it wet?"], [false, "No."]]],
    ["lines that were repeated twice", ">> Is it wool?\n> Yes.\nGood.", [[true, "Is it wool?\nYes."], [false, "Good."]]],
    ["paragraphs of their own in one", "One.\n\nTwo.\n> Three?\n", [[false, "One.\n\nTwo."], [true, "Three?"]]],
    ["indented words as they stand", "\n  a list\n", [[false, "  a list"]]],
    ["marks without words as nothing", ">\n> \nYes.", [[false, "Yes."]]],
    ["nothing of an empty text", "", []],
  ])("reads %s", (_, text, passages) => expect(passagesIn(text).map((p) => [p.isQuoted, p.text])).toEqual(passages));
});
