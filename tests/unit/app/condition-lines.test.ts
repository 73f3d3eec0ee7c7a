import { describe, expect, it } from "vitest";
import { conditionOf, linesOf } from "../../../app/(desk)/desk/settings/paragraphs/[id]/condition-lines";
import { LARGEST } from "../../../lib/reply/condition-words";
import { PARAGRAPHS } from "../../../lib/reply/paragraphs";

describe("lines of a condition", () => {
  it("say again what every shipped condition says", () => {
    for (const { id, when } of PARAGRAPHS) expect(conditionOf(linesOf(JSON.stringify(when), LARGEST), LARGEST), id).toEqual(when);
  });
  it("join lines about the same fact", () => {
    const line = (value: string) => ({ fact: "leading", how: "is" as const, values: [value], percent: "" });
    expect(conditionOf([line("silk"), line("wool"), line("silk")], LARGEST)).toEqual({ is: { leading: ["silk", "wool"] } });
  });
  it.each([["33", 0.33], ["33,5", 0.335], ["0", 0], ["", -1], ["much", -1]])("read %j per cent of a chance as %d, −1 where it is no number", (percent, bound) => {
    expect(conditionOf([{ fact: "worse", how: "atLeast", values: [], percent }], LARGEST)).toEqual({ atLeast: { worse: bound } });
  });
});
