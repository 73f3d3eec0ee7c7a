import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { SHIPPED } from "../../../lib/reply/library";
import { wasFilledWith } from "../../../lib/reply/moved";
import { PARAGRAPHS } from "../../../lib/reply/paragraphs";
import type { DraftInput } from "../../../lib/reply/pieces";
import { fillWith, SLOTS, slotsIn, type SlotName } from "../../../lib/reply/slot-words";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import type { ActionId, Assessment, MechanismId, MethodId } from "../../../lib/triage/assessment";
import { action, FIRST_AID_SAID, inputOf, range, worthless } from "./make";

/** The letter to somebody who had the first one and has answered a question since. */
function letter(before: DraftInput, after: DraftInput): string {
  const { text, paragraphs, leftOut } = composeDraft(before);
  return composeFollowing(after, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text.replaceAll("\u00a0", " ");
}

describe("what a paragraph was filled with", () => {
  const example = (slot: SlotName): string => SLOTS[slot].example;
  const another = (slot: SlotName): string => { const [first, ...more] = example(slot).split(" "); return more.length > 0 ? `${first} quite another` : "quite another"; };
  const open = PARAGRAPHS.map((p) => ({ p, slots: slotsIn(p.text) as SlotName[] })).filter(({ slots }) => slots.length > 1);

  it("is known of every slot of every shipped paragraph that has several, beside each other too", () => {
    expect(open.filter(({ p }) => /\} ?\{/.test(p.text)).map(({ p }) => p.id)).toEqual(expect.arrayContaining(["outlook-soil", "outlook-soil-doubtful", "outlook-later", "outlook-no-trouble"]));
    for (const { p: { id, place, text }, slots } of open) for (const slot of slots) for (const was of [example, another]) {
      const said = fillWith(text, (name) => (name === slot ? was(name) : example(name)));
      for (const asked of [example, another]) expect([id, slot, wasFilledWith({ id, place, text, said, rug: 0 }, slot, asked(slot))]).toEqual([id, slot, was === asked]);
    }
  });
  it("is nothing where it has no such slot, or nothing of it was kept", () => {
    const told = { id: "own", place: "outlook", text: "At most {improvement}.", rug: 0 } as const;
    expect([wasFilledWith({ ...told, said: "At most a third." }, "life", null), wasFilledWith({ ...told, said: null }, "improvement", null)]).toEqual([true, true]);
    expect([wasFilledWith({ ...told, said: "At most a third." }, "life", "a third"), wasFilledWith({ ...told, said: "At most a third." }, "improvement", null)]).toEqual([false, false]);
  });
});

describe("a range whose words begin as they did, with what it is a share of beside it", () => {
  const soiled = (low: number, high: number, rest: Partial<Assessment> = {}, enquiry: EnquiryAnswers = {}, changes: RugAnswers["changes"] = ["dirty"]) => inputOf({
    sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: { text: "100% wool", says: null, pile: "wool" }, strength: "told" }, { what: "changes", value: changes ?? [], strength: "told" }],
      mechanisms: { "soil-only": 0.9 }, rest: { improvement: range(low, (low + high) / 2, high), advice: action("routine-clean"), ...rest } },
    answers: { changes: changes ?? [] }, enquiry,
  });
  it.each([
    ["outlook-soil", {}, {}], ["outlook-soil-doubtful", { beyondRepair: 0.8 }, {}],
    ["outlook-later", { advice: action("leave-alone") }, { reason: "what-is-it" }], ["outlook-no-trouble", {}, { reason: "what-is-it" }],
  ] satisfies [string, Partial<Assessment>, EnquiryAnswers][])("is replaced by another, in %s, and stands where it is the same", (id, rest, enquiry) => {
    const [told, moved] = [soiled(28, 97, rest, enquiry), soiled(66, 98, rest, enquiry)];
    expect(composeDraft(told).paragraphs.map((p) => p.id)).toContain(id);
    expect(letter(told, moved)).toMatch(/replaces what we wrote before about how far it may come back\./);
    expect(letter(told, moved)).toMatch(/between three fifths and nearly all \(66–98 %\)/);
    expect(letter(told, told)).not.toMatch(/replaces|no longer holds|28–97/);
  });
  describe("and that moved a little", () => {
    type Moved = [string, [number, number], [number, number]];
    const REPLACED = /replaces what we wrote before about how far it may come back\./;
    it.each<Moved>([["by a point", [50, 97], [51, 98]], ["by two", [50, 97], [52, 99]], ["down by two", [52, 97], [50, 97]]])("stands %s, unsaid, as nobody can work it out closer", (_, from, to) => {
      expect(letter(soiled(...from), soiled(...to))).not.toMatch(/replaces|no longer holds|has changed|can say more|\d %/);
    });
    it.each<Moved>([["by three", [50, 97], [53, 97]], ["by three at its other end", [50, 60], [50, 63]], ["by one, into another word", [49, 97], [50, 97]]])("is replaced %s", (_, from, to) => {
      expect(letter(soiled(...from), soiled(...to))).toMatch(REPLACED);
      expect(letter(soiled(...from), soiled(...to))).toContain(`(${to.join("–")} %)`);
    });
    it("stands by little steps no further than from what was told", () => {
      const steps = (...inputs: DraftInput[]) => inputs.slice(1).reduce((before, now) => composeFollowing(now, { told: { text: before.text, paragraphs: [...before.paragraphs, ...before.leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }), composeDraft(inputs[0]!)).text;
      expect(steps(soiled(50, 97), soiled(51, 97), soiled(52, 97))).not.toMatch(REPLACED);
      expect(steps(soiled(50, 97), soiled(52, 97), soiled(53, 97))).toMatch(REPLACED);
    });
    it("is replaced where the letter says it again, for something that leans on it: no two figures stand unexplained", () => {
      const little = (low: number, offered: readonly MethodId[]) => soiled(low, 17, { advice: action("inspect-and-test"), methods: offered.map((method) => ({ method, verdict: "suitable", why: "" })) });
      const [told, same, otherwise] = [little(10, ["low-moisture"]), little(11, ["low-moisture"]), little(11, ["immersion-wash"])];
      expect(composeDraft(told).text).toMatch(/If it is cleaned all the same/);
      expect(letter(told, same)).not.toMatch(/\d %/);
      expect(letter(told, otherwise)).toMatch(/replaces what we wrote before about how far it may come back and how it may be cleaned\.[^]*\(11–17 %\)/);
      expect(letter(told, little(10, ["immersion-wash"]))).toMatch(/replaces what we wrote before about how it may be cleaned\.[^]*\(10–17 %\)/);
    });
  });
  it("stands where another paragraph tells the same", () => {
    const doubted = soiled(28, 97, { beyondRepair: 0.8 });
    expect(letter(soiled(28, 97), doubted)).not.toMatch(/replaces what we wrote before about [^.]*how far it may come back|28–97/);
  });
});

describe("a caution of a letter before", () => {
  const WET_ASKED = { id: "wetNow", kind: "question", ask: "Is any part of the rug wet right now?", why: "" } as const;
  const feared = (mechanisms: Partial<Record<MechanismId, number>>, answers: RugAnswers = {}, rest: Partial<Assessment> = {}) =>
    inputOf({ sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: { text: "100% wool", says: null, pile: "wool" }, strength: "told" }], mechanisms: { "soil-only": 0.5, ...mechanisms }, rest }, answers });
  const [spotted, eaten] = [feared({ mould: 0.82 }, { changes: ["spots"] }), feared({ insects: 0.9 }, { incidents: ["insects"] })];
  const none = feared({ mould: 0.3, insects: 0.3 }, { changes: ["smell"] });
  const TAKEN_BACK = /What we wrote before about [^.]*(mould|insects) in it[^.]* no longer holds\./;

  it("is taken back once nobody has to fear it", () => {
    expect(composeDraft(spotted).text).toMatch(/keep everybody out of the room/);
    expect(letter(spotted, none).match(TAKEN_BACK)?.[1]).toBe("mould");
    expect(letter(eaten, none).match(TAKEN_BACK)?.[1]).toBe("insects");
    expect(letter(feared({ mould: 0.6 }), none).match(TAKEN_BACK)?.[1]).toBe("mould");
  });
  it("is neither taken back nor replaced while it is as likely, more likely or less, or only worded otherwise", () => {
    for (const [told, now] of [[spotted, feared({ mould: 0.95 }, { changes: ["spots"] })], [spotted, feared({ mould: 0.3 }, { changes: ["spots"] })], [spotted, feared({ mould: 0.5 }, { changes: ["smell"] })], [eaten, feared({ insects: 0.9 }, { incidents: ["insects"] }, { nextQuestions: [WET_ASKED] })]] as const)
      expect(letter(told, now)).not.toMatch(/(replaces|wrote before)[^.]*(mould|insects) in it/);
  });
  it("is taken back by the number of its rug, where it is not taken back of every rug: of another it may stand", () => {
    const both = (first: DraftInput, second: DraftInput): DraftInput => ({ ...first, assessments: [...first.assessments, ...second.assessments.map((rug) => ({ ...rug, title: "Red, 100 × 150" }))] });
    const gone = (before: DraftInput, after: DraftInput) => /What we wrote before about ([^.]*) no longer holds\./.exec(letter(before, after))?.[1];
    expect(gone(both(spotted, spotted), both(spotted, none))).toBe("mould in rug 2");
    expect(gone(both(spotted, none), both(none, none))).toBe("mould in rug 1");
    expect(gone(both(spotted, spotted), both(none, none))).toBe("mould in it");
  });
  it("is taken back though nobody has said whether it is wet: such a letter offers a wash and a way here, and asks whether it is wet", () => {
    const wetOpen = feared({}, { changes: ["smell"] }, { nextQuestions: [WET_ASKED] });
    const text = letter(spotted, wetOpen);
    expect(text.match(TAKEN_BACK)?.[1]).toBe("mould");
    expect(text).toMatch(/We would clean it[^]*If any part of it is wet now[^]*Bring it/);
    expect(text).not.toMatch(/keep everybody out/);
    expect(letter(spotted, feared({}, { changes: ["spots"] }, { nextQuestions: [WET_ASKED] }))).not.toMatch(TAKEN_BACK);
  });
  it("is taken back while first aid comes first, which has them press a cloth on it, and stands where nobody may touch it", () => {
    const aid = (answers: RugAnswers) => feared({}, answers, { firstAid: FIRST_AID_SAID, advice: action("first-aid") });
    const text = letter(spotted, aid({ changes: ["smell"] }));
    expect(text).toMatch(/^– Press a plain white cloth/m);
    expect(text.match(TAKEN_BACK)?.[1]).toBe("mould");
    expect(letter(eaten, aid({ changes: ["smell"] })).match(TAKEN_BACK)?.[1]).toBe("insects");
    expect(letter(spotted, aid({ changes: ["spots"] }))).not.toMatch(TAKEN_BACK);
  });
  it("stands while flood water or water that they wrote of comes first, or the workshop writes no caution of its own any more", () => {
    const flooded = feared({}, { incidents: ["flood"], changes: ["smell"] });
    const saidWet = { ...none, assessments: none.assessments.map((rug) => ({ ...rug, wetByWords: "whole" as const })) };
    const off = { ...spotted, library: SHIPPED.map((row) => (row.place === "safety" ? { ...row, off: true } : row)) };
    for (const now of [flooded, saidWet, off]) expect(letter(spotted, now)).not.toMatch(TAKEN_BACK);
  });
});

describe("a caution of flood water of a letter before", () => {
  const wet = { firstAid: FIRST_AID_SAID, advice: action("first-aid"), urgency: { level: "hours", why: "" } } as const;
  const told = (incidents: RugAnswers["incidents"], rest: Partial<Assessment> = {}, wetNow: EnquiryAnswers["wetNow"] = "no") => inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "soil-only": 0.5 }, rest }, answers: { incidents: incidents ?? [] }, enquiry: { wetNow } });
  const [dry, now] = [told(["flood"]), told(["water"])];
  const TAKEN_BACK = /What we wrote before about flood water in (it|rug \d) no longer holds\./;
  const both = (first: DraftInput, second: DraftInput): DraftInput => ({ ...first, assessments: [...first.assessments, ...second.assessments.map((rug) => ({ ...rug, title: "Red, 100 × 150" }))] });

  it("is taken back once they say that it was no flood, whether it stood among the cautions or in first aid", () => {
    for (const before of [dry, told(["flood"], wet, "wet")]) {
      expect(composeDraft(before).text).toMatch(/Flood and waste water can make you ill/);
      expect(letter(before, now)).toMatch(TAKEN_BACK);
    }
  });
  it("is taken back too where it is wet with other water, which may be blotted", () => {
    expect(letter(dry, told(["water"], wet, "wet"))).toMatch(TAKEN_BACK);
  });
  it("stands while the flood does, in whichever words, or while they write of such water", () => {
    const saidFoul = { ...now, assessments: now.assessments.map((rug) => ({ ...rug, wetByWords: "hands-off" as const })) };
    for (const after of [dry, told(["flood", "water"]), told(["flood"], wet, "wet"), saidFoul]) expect(letter(dry, after)).not.toMatch(TAKEN_BACK);
    expect(letter(told(["flood"], wet, "wet"), dry)).not.toMatch(TAKEN_BACK);
  });
  it("is taken back of the rug it was said of, and what first aid said of the whole letter once it is so of none", () => {
    expect(letter(both(dry, dry), both(dry, now)).match(TAKEN_BACK)?.[1]).toBe("rug 2");
    const aid = both(told(["flood"], wet, "wet"), now);
    expect(letter(aid, both(dry, now))).not.toMatch(TAKEN_BACK);
    expect(letter(aid, both(now, now))).toMatch(TAKEN_BACK);
  });
});

describe("what first aid warned of in the letter's own name", () => {
  const GONE = /What we wrote before about ([^.]*) no longer holds\./;
  const wet = (answers: RugAnswers) => inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "soil-only": 0.5 }, rest: { firstAid: FIRST_AID_SAID, advice: action("first-aid"), urgency: { level: "hours", why: "" } } }, answers, enquiry: { wetNow: "wet" } });
  const dry = (answers: RugAnswers) => inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { "soil-only": 0.5 } }, answers, enquiry: { wetNow: "no" } });
  const all = (...rugs: DraftInput[]): DraftInput => ({ ...rugs[0]!, assessments: rugs.flatMap(({ assessments }) => assessments) });
  const FLOOD: RugAnswers = { incidents: ["flood"] }, WATER: RugAnswers = { incidents: ["water"] };
  /** What the last of several letters takes back, each of which follows the one before. */
  const gone = ([first, ...more]: readonly [DraftInput, ...DraftInput[]]): string | undefined => GONE.exec(more.reduce((before, now) =>
    composeFollowing(now, { told: { text: before.text, paragraphs: [...before.paragraphs, ...before.leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }), composeDraft(first)).text)?.[1];

  it("is taken back of that rug alone which had no lines of its own beside it", () => {
    expect(composeDraft(all(wet(FLOOD), wet(WATER))).text).toMatch(/Only if rug 2 lies/);
    expect(gone([all(wet(FLOOD), wet(WATER)), all(wet(WATER), wet(WATER))])).toBe("flood water in rug 1");
    expect(gone([all(wet(FLOOD), wet(WATER)), all(dry(WATER), dry(WATER))])).toBe("flood water in rug 1");
    expect(gone([all(wet(FLOOD), wet(FLOOD)), all(dry(WATER), dry(WATER))])).toBe("flood water in it");
  });
  it("is taken back of that rug alone which a letter since warned of by itself, and of a rug that only first aid came to warn of too", () => {
    expect(gone([all(wet(FLOOD), wet({})), all(dry(FLOOD), dry({})), all(dry(WATER), dry({}))])).toBe("flood water in rug 1");
    expect(gone([all(dry(FLOOD), dry(WATER)), all(wet(FLOOD), wet(FLOOD)), all(dry(WATER), dry(WATER))])).toBe("flood water in it");
  });
});

describe("that what they see is soil", () => {
  const soiled = (chance: number, rest: Partial<Assessment> = {}) => inputOf({
    sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "changes", value: ["dirty"], strength: "told" }], mechanisms: { "soil-only": chance }, rest: { improvement: range(40, 60, 80), advice: action("routine-clean"), ...rest } },
    answers: { changes: ["dirty"] }, enquiry: { wetNow: rest.firstAid ? "wet" : "no" },
  });
  const aid = { firstAid: FIRST_AID_SAID, advice: action("first-aid"), urgency: { level: "hours", why: "" } } as const;

  it("is not taken back while first aid comes first and it is as likely, and is where it is less likely", () => {
    expect(composeDraft(soiled(0.8)).text).toMatch(/soil and nothing worse/);
    expect(letter(soiled(0.8), soiled(0.7, aid))).not.toMatch(/what has happened/);
    expect(letter(soiled(0.8), soiled(0.2, aid))).toMatch(/What we wrote before about [^.]*what has happened to it[^.]* no longer holds/);
  });
});

describe("how soon a letter before asked to have it seen to", () => {
  const due = (level: Assessment["urgency"]["level"], rest: Partial<Assessment> = {}, mechanisms: Partial<Record<MechanismId, number>> = { "food-fresh": 0.8 }) =>
    inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms, rest: { improvement: range(40, 60, 80), urgency: { level, why: "" }, ...rest } } });
  const [week, waiting] = [due("a-week"), due("can-wait")];
  const TAKEN_BACK = /What we wrote before about [^.]*having it seen to soon no longer holds\./, REPLACED = /This replaces what we wrote before about having it seen to soon\./;

  it("is taken back once it can wait, or once haste would gain too little", () => {
    expect(composeDraft(week).text).toMatch(/seen to within a week/);
    for (const after of [waiting, due("a-week", { improvement: range(0, 5, 10) })]) expect(letter(week, after)).toMatch(TAKEN_BACK);
    expect(letter(due("two-days"), waiting)).toMatch(TAKEN_BACK);
  });
  it("is replaced where it is sooner or later, and neither where it is as soon nor where none was told", () => {
    expect(letter(week, due("two-days"))).toMatch(/This replaces what we wrote before about having it seen to soon\.[^]*within a day or two/);
    expect(letter(due("two-days"), week)).toMatch(/This replaces what we wrote before about having it seen to soon\.[^]*within a week/);
    for (const [before, after] of [[week, week], [waiting, week], [waiting, waiting]] as const) for (const moved of [TAKEN_BACK, REPLACED]) expect(letter(before, after)).not.toMatch(moved);
  });
  it("stands where first aid or whoever inspected it says how soon", () => {
    const aid = due("hours", { firstAid: FIRST_AID_SAID, advice: action("first-aid") });
    const inspected = { ...waiting, assessments: waiting.assessments.map((rug) => ({ ...rug, inspection: { by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair: false } })) };
    for (const after of [aid, inspected]) expect(letter(week, after)).not.toMatch(TAKEN_BACK);
  });
});

describe("what was told of the worth of a rug", () => {
  it("no longer holds once they tell us that it is an antique, though the chance is the same", () => {
    const told = worthless();
    const antique = { ...told, assessments: told.assessments.map((rug) => ({ ...rug, answers: { age: "antique" as const } })) };
    expect(composeDraft(told).text).toMatch(/not worth the cost/);
    expect(letter(told, antique)).toMatch(/What we wrote before about [^.]*whether it is worth its cost[^.]* no longer holds\./);
    expect(letter(told, told)).not.toMatch(/no longer holds/);
  });
});

describe("a letter that says we can tell more once we have heard from them", () => {
  it("asks for something, though a letter before asked it too", () => {
    const asking = (id: ActionId) => inputOf({ sketch: { fibres: { wool: 0.5, viscose: 0.4 }, words: "about as likely as not", mechanisms: { "food-old": 0.8 }, rest: { advice: action(id), nextQuestions: [{ kind: "photo", id: "back", ask: "A photo of the back", why: "" }] } } });
    const [told, now] = [asking("inspect-and-test"), asking("ask-for-more")];
    expect(composeDraft(told).text).toMatch(/^– /m);
    expect(letter(told, now)).toMatch(/^– [^]*Once we have heard from you, we can tell you more\./m);
    expect(letter(now, now)).not.toMatch(/^– |Once we have heard/m);
  });
});

describe("a caution that still stands, once what else has happened is another thing or nothing any more", () => {
  const happened = (mechanisms: Partial<Record<MechanismId, number>>, answers: RugAnswers = { changes: ["spots"] }) => inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms }, answers });
  const [MOULD, INSECTS, FLOOD] = [/Mould can harm your health/, /Please use no insecticide/, /Flood and waste water can make you ill/];
  const REPLACED = /This replaces what we wrote before about [^.]*what has happened to it/, TAKEN_BACK = /What we wrote before about [^.]*what has happened to it[^.]* no longer holds/;

  it.each<[string, Partial<Record<MechanismId, number>>, RugAnswers, RegExp]>([["mould", { mould: 0.82 }, { changes: ["spots"] }, MOULD], ["insects", { insects: 0.82 }, { changes: ["bare"] }, INSECTS], ["flood water", {}, { incidents: ["flood"], changes: ["smell"] }, FLOOD]])("is told again with it, so that nobody takes it for what no longer holds: %s", (_, feared, answers, caution) => {
    const before = happened({ ...feared, fading: 0.7 }, answers);
    for (const after of [happened(feared, answers), happened({ ...feared, matting: 0.7 }, answers)]) {
      const text = letter(before, after);
      expect(text).toMatch(REPLACED);
      expect(text).not.toMatch(TAKEN_BACK);
      expect(text).toMatch(caution);
    }
  });
  it("is not told again where what has happened stands, or where more comes to it", () => {
    const before = happened({ mould: 0.82, fading: 0.7 });
    for (const after of [before, happened({ mould: 0.82, fading: 0.7, matting: 0.6 })]) expect(letter(before, after)).not.toMatch(MOULD);
  });
  it("is none where there is none: then what has happened no longer holds, with nothing in its place", () => {
    const text = letter(happened({ fading: 0.7 }, { changes: ["smell"] }), happened({}, { changes: ["smell"] }));
    expect(text).toMatch(TAKEN_BACK);
    expect(text).not.toMatch(REPLACED);
  });
  it("is named by itself where it is over, beside what has happened", () => {
    const text = letter(happened({ mould: 0.82, fading: 0.7 }), happened({}, { changes: ["smell"] }));
    expect(text).toMatch(/What we wrote before about what has happened to it and mould in it no longer holds\./);
  });
});
