import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { wasFilledWith } from "../../../lib/reply/moved";
import { PARAGRAPHS } from "../../../lib/reply/paragraphs";
import type { DraftInput } from "../../../lib/reply/pieces";
import { fillWith, SLOTS, slotsIn, type SlotName } from "../../../lib/reply/slot-words";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import type { Assessment } from "../../../lib/triage/assessment";
import { action, inputOf, range } from "./make";

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
  it("stands where another paragraph tells the same", () => {
    const doubted = soiled(28, 97, { beyondRepair: 0.8 });
    expect(letter(soiled(28, 97), doubted)).not.toMatch(/replaces what we wrote before about [^.]*how far it may come back|28–97/);
  });
});
