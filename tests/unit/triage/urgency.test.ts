import { describe, expect, it } from "vitest";
import { FIRST_AID, firstAidSentences } from "../../../lib/trade/first-aid";
import { URGENCY } from "../../../lib/trade/urgency";
import type { Finding } from "../../../lib/triage/finding";
import { judgeFirstAid, judgeUrgency, needsFirstAid } from "../../../lib/triage/urgency";
import { told } from "./told";

const level = (answers: Record<string, Finding["value"]>, chances: Record<string, number> = {}) => judgeUrgency(told(answers), (m) => chances[m] ?? 0).level;

describe("judgeUrgency", () => {
  it.each([
    ["wet now", { wetNow: "wet" }, "hours"],
    ["damp and browning", { wetNow: "damp", changes: ["browner"] }, "hours"],
    ["wine within the hour", { incidents: ["spill"], liquid: "wine", since: "hour" }, "hours"],
    ["flood today", { incidents: ["flood"], since: "day" }, "hours"],
    ["a spill today, dry", { incidents: ["spill"], since: "day", wetNow: "no" }, "two-days"],
    ["urine yesterday", { incidents: ["pet-urine"], since: "two-days" }, "two-days"],
    ["browned after a wash this week", { treatments: ["professional-wet"], since: "week", changes: ["browner"] }, "two-days"],
    ["a spill this week", { incidents: ["spill"], since: "week" }, "a-week"],
    ["furry or black spots beside a likelier cause", { incidents: ["spotted"], changes: ["spots"], wetNow: "no" }, "a-week"],
    ["washed, nobody said when", { incidents: ["washed-home"] }, "a-week"],
    ["complaint of a cleaning, they are not sure when", { reason: "after-cleaning", since: "unsure" }, "a-week"],
    ["washed this week", { incidents: ["washed-professional"], since: "week" }, "a-week"],
    ["washed months ago", { incidents: ["washed-home"], since: "longer" }, "can-wait"],
    ["dry cleaned, nobody said when", { treatments: ["professional-dry"] }, "can-wait"],
    ["urine months ago", { incidents: ["pet-urine"], since: "longer" }, "can-wait"],
    ["a spill, nobody said when", { incidents: ["spill"] }, "a-week"],
    ["a spill, they are not sure when", { incidents: ["spill"], since: "unsure" }, "a-week"],
    ["a spill months ago", { incidents: ["spill"], since: "longer" }, "can-wait"],
    ["fading", { incidents: ["sun"], changes: ["faded"] }, "can-wait"],
    ["what is it", { reason: "what-is-it" }, "can-wait"],
    ["nothing told", {}, "can-wait"],
  ] as const)("%s: %s is %s", (_, answers, expected) => expect(level(answers as never)).toBe(expected));

  it("gives insects a week from .33 on: below, at, above", () => expect([level({}, { insects: 0.32 }), level({}, { insects: 0.33 }), level({}, { insects: 0.8 })]).toEqual(["can-wait", "a-week", "a-week"]));
  it("gives what the meter finds wet hours, and nothing where it reads dry", () => {
    expect(level({ "test:moisture": { place: "affected", percent: 30 } })).toBe("hours");
    expect(level({ "test:moisture": { place: "affected", percent: 9 } })).toBe("can-wait");
  });
  it("gives likely fresh urine two days: below, at", () => expect([level({}, { "urine-fresh": 0.49 }), level({}, { "urine-fresh": 0.5 })]).toEqual(["can-wait", "two-days"]));
  it("gives mould a week from .33 on, two days from .5: below, at, below, at", () =>
    expect([0.32, 0.33, 0.49, 0.5].map((mould) => level({}, { mould }))).toEqual(["can-wait", "a-week", "a-week", "two-days"]));
  it("does not go by how angry the message is", () => expect(level({ matters: ["claim"], reason: "mis-sold", story: "This is an outrage" })).toBe("can-wait"));
  it("gives what may give off gas hours, dry as it is called, on the day alone, and whatever else is urgent people come first", () => {
    const of = (answers: Record<string, Finding["value"]>) => judgeUrgency(told({ incidents: ["spotted"], treatments: ["bleach", "vinegar-soda"], ...answers }), () => 0);
    const gas = { level: "hours", why: expect.stringMatching(/harmful gas.*people come first/u) as string };
    expect([of({ since: "hour", wetNow: "no" }), of({ since: "day", wetNow: "no" }), of({ since: "longer", wetNow: "wet" })]).toEqual([gas, gas, gas]);
    const other = [of({ since: "two-days", wetNow: "no" }), of({ since: "hour", wetNow: "no", treatments: ["bleach"] }), of({ since: "hour", wetNow: "no", treatments: ["vinegar-soda"] })];
    expect(other).toEqual(other.map(() => ({ level: "can-wait", why: "Nothing is lost by waiting." })));
  });
  it("calls what was spilt within the hour wet no longer once it was answered later that it is dry, and still fresh", () => {
    const dry = { incidents: ["spill"], since: "hour", wetNow: "no" };
    const urgency = (isLater: boolean) => judgeUrgency(told(dry), () => 0, needsFirstAid(told(dry), isLater));
    expect(urgency(false)).toEqual({ level: "hours", why: expect.stringMatching(/may still be wet/) });
    expect(urgency(true)).toEqual({ level: "two-days", why: expect.not.stringMatching(/wet/) });
  });
  it("says that nothing is lost by waiting only where somebody has said that it is dry", () => {
    const why = (answers: Record<string, Finding["value"]>) => judgeUrgency(told(answers), () => 0).why;
    expect(why({ incidents: ["sun"], wetNow: "no" })).toBe("Nothing is lost by waiting.");
    for (const unknown of [{}, { incidents: ["sun"] }, { reason: "what-is-it" }]) expect(why(unknown)).toBe("Nobody has said whether it is wet; nothing else in it is lost by waiting.");
  });
  it.each([
    ["out of shape after a leak this week", { incidents: ["water"], since: "week", changes: ["wavy"], wetNow: "no" }], ["the same, of which they only say that it just happened", { incidents: ["water"], reason: "just-happened", changes: ["wavy"], wetNow: "no" }],
    ["no change was told of a spill", { incidents: ["spill"], since: "two-days", changes: ["none"], wetNow: "no" }], ["no change was asked after", { liquid: "wine", since: "week", wetNow: "no" }],
  ] as const)("tells of what got on it, and of no mark that nobody has told of: %s", (_, answers) => {
    const { level: of, why } = judgeUrgency(told(answers as never), () => 0);
    expect([of, why]).toEqual(["a-week", expect.stringMatching(/^Something got on it only days ago/u)]);
    expect(why).not.toMatch(/\b(?:the|its|this) mark\b/iu);
  });
  it("tells what may be lost, and not that haste gains: beside that the desk says where a letter sets no time since it would gain too little", () => { for (const r of URGENCY) expect(r.why).not.toMatch(/sooner|easier|\bbest\b|better/); });
  it("says why in a sentence in every row", () => { for (const r of URGENCY) expect(r.why).toMatch(/^[A-Z].{20,}\.$/); });
});

describe("needsFirstAid", () => {
  it.each([
    [{ wetNow: "wet" }, true], [{ wetNow: "damp" }, true], [{ wetNow: "no" }, false], [{}, false],
    [{ since: "hour", liquid: "wine" }, true], [{ since: "day", incidents: ["pet-urine"] }, true], [{ since: "two-days", liquid: "wine" }, false], [{ since: "day", incidents: ["wear"] }, false],
  ] as const)("%o: %s", (answers, needed) => expect(needsFirstAid(told(answers as never))).toBe(needed));
  const spilt = (since: string, more: Record<string, Finding["value"]> = {}) => told({ wetNow: "no", since, incidents: ["spill"], ...more });
  it("is over for what is answered to be dry, of the last hour only where that was told later", () => {
    expect([needsFirstAid(spilt("day")), needsFirstAid(spilt("hour")), needsFirstAid(spilt("hour"), true)]).toEqual([false, true, false]);
  });
  it("outlasts that answer of flood water, of what the meter finds wet, and of what may give off gas", () => {
    for (const more of [{ incidents: ["spill", "flood"] }, { "test:moisture": { place: "affected", percent: 30 } }, { treatments: ["bleach", "vinegar-soda"] }]) expect(needsFirstAid(spilt("day", more), true)).toBe(true);
    expect(needsFirstAid(spilt("day", { treatments: ["bleach"] }))).toBe(false);
  });
  it("is due today for what was put on it and may give off gas, though nothing else got on it and it is called dry", () => {
    const treated = (since: string, treatments: string[]) => needsFirstAid(told({ wetNow: "no", since, incidents: ["spotted"], treatments }));
    expect([treated("hour", ["bleach", "vinegar-soda"]), treated("day", ["bleach", "vinegar-soda"])]).toEqual([true, true]);
    expect([treated("two-days", ["bleach", "vinegar-soda"]), treated("hour", ["bleach"]), treated("hour", ["vinegar-soda"])]).toEqual([false, false, false]);
  });
  it("ends for what may give off gas once it was answered more than a day later that it is dry, but for flood water, what the meter finds wet, and what is not dry", () => {
    const gas = (more: Record<string, Finding["value"]> = {}) => spilt("hour", { treatments: ["bleach", "vinegar-soda"], ...more });
    expect([needsFirstAid(gas(), true), needsFirstAid(gas(), true, true)]).toEqual([true, false]);
    for (const more of [{ incidents: ["spill", "flood"] }, { "test:moisture": { place: "affected", percent: 30 } }, { wetNow: "damp" }, { wetNow: "unsure" }]) expect(needsFirstAid(gas(more), true, true)).toBe(true);
  });
});

describe("judgeFirstAid", () => {
  const AID = { chance: () => 0, emergencyNumber: "112" };
  it("is one set, whatever the label, the shine and the seller say", () => {
    const sets = [{}, { sellerSaid: "silk" }, { shine: "two-tone" }, { touch: "plastic" }].map((a) => JSON.stringify(judgeFirstAid(told({ wetNow: "wet", ...a }), AID)));
    expect(new Set(sets).size).toBe(1);
  });
  it("begins with the workshop's emergency number, or without a number where none is set", () => {
    expect(judgeFirstAid(told({ wetNow: "wet" }), AID)?.[0]).toContain("112");
    expect(judgeFirstAid(told({ wetNow: "wet" }), { ...AID, emergencyNumber: undefined })?.[0]).toContain("your emergency number");
  });
  it("tells nobody to press a cloth on flood water or on what may be mould", () => {
    for (const grave of [{ incidents: ["flood"] }, { changes: ["spots"] }]) {
      const said = judgeFirstAid(told({ wetNow: "wet", ...grave }), AID)?.join(" ");
      expect(said).not.toMatch(/press|white cloth|before and after you blot/);
      expect(said).toMatch(/children.*Do not blot it/);
    }
  });
  it.each([[0.32, true], [0.33, false]] as const)("tells nobody to press one from where a letter warns of mould: at %d %s", (mould, isPressed) => {
    const said = judgeFirstAid(told({ wetNow: "damp", incidents: ["damp"], changes: ["smell"] }), { ...AID, chance: (m) => (m === "mould" ? mould : 0) })?.join(" ") ?? "";
    expect([/white cloth/.test(said), !/Do not blot it/.test(said)]).toEqual([isPressed, isPressed]);
  });
  it("is null where nothing is wet", () => expect(judgeFirstAid(told({ wetNow: "no" }), AID)).toBeNull());
});

describe("firstAidSentences", () => {
  it("names people first, then what to keep off, then what to do", () => {
    expect(firstAidSentences("112")).toEqual([FIRST_AID.emergency("112"), ...FIRST_AID.dangers, ...FIRST_AID.steps]);
  });
  it("has everybody leave the room first, and nobody blot it, where bleach may give off gas", () => {
    const said = firstAidSentences("112", false, true);
    expect(said).toEqual([FIRST_AID.gas.line("112"), ...FIRST_AID.dangers, ...FIRST_AID.handsOff]);
    expect(said[0]).toMatch(/^Leave the room.*harmful gas\..*call 112 now\.$/);
    expect(said.join(" ")).not.toMatch(/press|white cloth|open a window/);
  });
});

describe("FIRST_AID", () => {
  const text = [FIRST_AID.lead, ...FIRST_AID.steps, ...FIRST_AID.dangers].join(" ");
  it("keeps people and pets off, blots and does not rub, adds nothing, gives air and no heat", () => {
    for (const word of [/children/, /pets/, /plain white cloth/i, /not rub/, /no more water/, /[Nn]o heat/, /underfloor heating/]) expect(text).toMatch(word);
  });
  it("warns of electricity, sewage and glass, and of lifting a soaked rug", () => {
    for (const word of [/socket/, /fuse board/, /[Ss]ewage/, /glass/, /lifting or dragging/, /No insecticide/]) expect(text).toMatch(word);
  });
  it("has somebody leave the room instead of blotting where products have met, also where nobody's answers are known", () => {
    expect(FIRST_AID.dangers.find((d) => /Never mix/.test(d))).toMatch(/two have met, or one has met urine.*harmful gas.*leave the room and do not blot/);
  });
  it("holds no recipe, no dose and no acidity", () => expect(text).not.toMatch(/\d+\s*(ml|g|%|drops|spoon)|\bpH\b|vinegar|ammonia|peroxide|bleach/i));
});
