import { describe, expect, it } from "vitest";
import type { LabelState, LabelWord } from "../../../lib/enquiry/label-view";
import { isGuess } from "../../../lib/enquiry/label-view";
import { isTold, isToWrite, namesIn, saysOf } from "../../../lib/ui/label-words";
import { LABEL } from "../../../lib/words/en/label";

/** Lines of a reading; a word with ? was guessed, one with ! names a fibre, one with + goes on with a name. */
const lines = (...texts: string[]): LabelWord[][] => texts.map((t) => t.split(" ").map((w) => ({ text: w.replace(/[?!+]+$/u, ""), unsure: w.includes("?"), isFibre: w.includes("!"), goesOn: w.includes("+") })));
const NOISE = lines("i", "HHT? gs?", "HHH? 100%? PURE NEW wooL?!", "ge? ag?", "tii?");

describe("isGuess", () => {
  it("is what was mostly guessed and can be known again by nothing, up to the word", () => {
    expect(isGuess({ state: "read", lines: NOISE })).toBe(true);
    expect(isGuess({ state: "read", lines: lines("ge? ag? WOOL!") })).toBe(true);
    expect(isGuess({ state: "read", lines: lines("ge? ag? WOOL! NEW") })).toBe(false);
  });
  it("is not a label whose fibres and figures were hard to read: they are asked about, and dotted", () => {
    expect(isGuess({ state: "read", lines: lines("70%? WOOL?!", "39%? VISCOSE?!") })).toBe(false);
    expect(isGuess({ state: "read", lines: lines("100% VISCOSE!", "MADE? IN INDIA?") })).toBe(false);
  });
  it("is never what a person agreed to or wrote, nor where nothing was read", () => {
    for (const state of ["confirmed", "corrected", "refused"] as const) expect(isGuess({ state, lines: NOISE }), state).toBe(false);
    expect(isGuess({ state: "unreadable", lines: [] })).toBe(false);
  });
  it("has nobody asked whether it is right, but what the label says", () => {
    const asked = (state: LabelState) => [isToWrite({ state, lines: NOISE }), saysOf(LABEL, { state, lines: NOISE, typed: null, agreed: null })];
    expect(asked("read")).toEqual([true, LABEL["label.guessed"]]);
    expect(asked("unsure")).toEqual([true, LABEL["label.unsure"]]);
    expect(asked("confirmed")).toEqual([false, LABEL["label.confirmed"]]);
    expect(saysOf(LABEL, { state: "read", lines: lines("100% WOOL!"), typed: "wool", agreed: null })).toBeNull();
  });
});

describe("isTold", () => {
  const none = { lines: [], typed: "100% wool", agreed: null };
  it("is a label whose words the photo does not give, and that was typed before", () => {
    for (const state of ["unreadable", "failed", "withdrawn"] as const) expect(isTold({ ...none, state }), state).toBe(true);
    expect(isTold({ ...none, state: "read", lines: NOISE })).toBe(true);
  });
  it("is none where nothing was typed, words were read, or some were agreed on before", () => {
    expect(isTold({ ...none, state: "unreadable", typed: null })).toBe(false);
    expect(isTold({ ...none, state: "read", lines: lines("100% WOOL!") })).toBe(false);
    expect(isTold({ ...none, state: "unreadable", agreed: { state: "confirmed", by: "client", text: "wool", lines: [], crop: { x: 0, y: 0, width: 1, height: 1 }, quarters: 0 } })).toBe(false);
  });
  it("has nobody asked for the words again", () => {
    const says = (state: LabelState, typed: string | null, words = NOISE) => saysOf(LABEL, { state, lines: words, typed, agreed: null });
    for (const state of ["unreadable", "failed"] as const) {
      expect(says(state, null, []), state).toMatch(/write below/);
      expect(says(state, "100% wool", []), state).toMatch(/told us already/);
      expect(says(state, "100% wool", []), state).not.toMatch(/write below/);
    }
    expect([says("read", "100% wool"), says("read", null)]).toEqual([LABEL["label.unread-told"], LABEL["label.guessed"]]);
    expect(says("withdrawn", "100% wool", [])).toBe(LABEL["label.withdrawn"]);
  });
});

describe("namesIn", () => {
  it("keeps a fibre's name of several words together, and no other words", () => {
    expect(lines("100% ART! SILK!+ COTTON! pile").map((line) => namesIn(line).map((name) => name.map((w) => w.text).join(" ")))).toEqual([["100%", "ART SILK", "COTTON", "pile"]]);
    expect(namesIn(lines("SILK TOUCH+")[0] ?? [])).toHaveLength(2);
  });
  it("begins anew on a line where a name goes on from the one above", () => expect(namesIn(lines("SILK!+ pile")[0] ?? []).map((name) => name.length)).toEqual([1, 1]));
});
