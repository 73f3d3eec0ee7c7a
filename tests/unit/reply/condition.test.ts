import { describe, expect, it } from "vitest";
import { holds, WORD_FACTS, type Facts } from "../../../lib/reply/condition";

const words = Object.fromEntries(Object.keys(WORD_FACTS).map((name) => [name, [] as string[]])) as unknown as Facts["words"];
const facts: Facts = { words: { ...words, leading: ["viscose"], mechanisms: ["mould", "fading"] }, numbers: { beyondRepair: 0.5 } };

describe("holds", () => {
  it("holds without any rule", () => expect(holds({}, facts)).toBe(true));
  it("is: one of the values is enough", () => {
    expect(holds({ is: { mechanisms: ["insects", "fading"] } }, facts)).toBe(true);
    expect(holds({ is: { mechanisms: ["insects"] } }, facts)).toBe(false);
  });
  it("is: a fact without a value meets nothing", () => expect(holds({ is: { rival: ["silk"] } }, facts)).toBe(false));
  it("not: one of the values is too much, none is fine", () => {
    expect(holds({ not: { mechanisms: ["mould"] } }, facts)).toBe(false);
    expect(holds({ not: { rival: ["silk"] } }, facts)).toBe(true);
  });
  it("every rule must hold", () => {
    expect(holds({ is: { leading: ["viscose"], mechanisms: ["mould"] } }, facts)).toBe(true);
    expect(holds({ is: { leading: ["viscose"] }, not: { mechanisms: ["mould"] } }, facts)).toBe(false);
  });
  it("atLeast: below, at and above the bound", () => {
    expect(holds({ atLeast: { beyondRepair: 0.51 } }, facts)).toBe(false);
    expect(holds({ atLeast: { beyondRepair: 0.5 } }, facts)).toBe(true);
    expect(holds({ atLeast: { beyondRepair: 0.49 } }, facts)).toBe(true);
  });
  it("below: below, at and above the bound", () => {
    expect(holds({ below: { beyondRepair: 0.51 } }, facts)).toBe(true);
    expect(holds({ below: { beyondRepair: 0.5 } }, facts)).toBe(false);
    expect(holds({ below: { beyondRepair: 0.49 } }, facts)).toBe(false);
  });
  it("a number that is not known meets neither bound", () => {
    expect(holds({ atLeast: { worse: 0 } }, facts)).toBe(false);
    expect(holds({ below: { worse: 1 } }, facts)).toBe(false);
  });
});
