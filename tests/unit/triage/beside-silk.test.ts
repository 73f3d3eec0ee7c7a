import { describe, expect, it } from "vitest";
import { hasStrangerBeforeSilk, maySilkBeLessThanRead } from "../../../lib/triage/beside-silk";

/** Words as they were read: ? after one that was guessed, ^ before one with print before it that was not read. */
const read = (text: string) => text.split("\n").map((line) => line.split(" ").map((w) => ({ text: w.replace(/^\^|\?$/gu, ""), unsure: w.endsWith("?"), missed: w.startsWith("^") })));

describe("maySilkBeLessThanRead", () => {
  it.each(["^SILK PILE", "100% ^SILK", "Pile: ^silk"])("doubts silk where print before it was not read: %j", (text) => expect(maySilkBeLessThanRead(read(text))).toBe(true));
  it.each(["a? SILK PILE", "0? SILK", "HAND? SILK"])("doubts silk after a word that was guessed: %j", (text) => expect(maySilkBeLessThanRead(read(text))).toBe(true));
  it("doubts silk that was itself guessed, but not behind a word that is known", () => {
    expect(["SILK? PILE", "HAND SILK?", "100% SILK?", "PURE SILK?"].map((text) => maySilkBeLessThanRead(read(text)))).toEqual([true, true, false, false]);
  });
  it.each(["AHT SILK", "ARI SILK PILE", "AR silk", "ARTIFICAL SILK", "IMITATON\nSILK", "SOIE artifisielle", "100% ART SILKi"])("doubts silk beside what looks like a word of imitation silk, however sure: %j", (text) => expect(maySilkBeLessThanRead(read(text))).toBe(true));
  it.each(["SILK PILE", "100% SILK", "100%? SILK", "PURE SILK", "HAND MADE SILK RUG", "Genuine silk", "MADE OF SILK", "80% wool\n20% silk", "Hand knotted\nSILK", "COTTON\nSILK", "SILK PILE!?", "SOIE 100 %"])("leaves plain silk alone: %j", (text) => expect(maySilkBeLessThanRead(read(text))).toBe(false));
  it.each(["ART? SILK", "^ART SILK", "i? wool", "^wool", "silk touch", "wool ^and cotton", "", "a?"])("says nothing of a label that names no silk: %j", (text) => expect(maySilkBeLessThanRead(read(text))).toBe(false));
  it("counts slips by the length of the word: one in art, three in artificial", () => {
    expect(["arc silk", "axc silk", "artxxxcial silk", "axxxxficial silk"].map((t) => maySilkBeLessThanRead(read(t)))).toEqual([true, false, true, false]);
  });
});

describe("hasStrangerBeforeSilk", () => {
  const has = (text: string) => hasStrangerBeforeSilk(text.split("\n").map((line) => line.split(" ")));
  it("is a word that the dictionary does not know, on the same line", () => {
    expect([has("AHT SILK"), has("HAND MADE SILK")]).toEqual([true, true]);
    expect([has("AHT\nSILK"), has("PURE SILK"), has("100% SILK"), has("ART SILK"), has("AHT WOOL")]).toEqual([false, false, false, false, false]);
  });
});
