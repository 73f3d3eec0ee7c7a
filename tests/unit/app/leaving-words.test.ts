import { describe, expect, it } from "vitest";
import { noteOf, whenWords } from "../../../app/(desk)/desk/[id]/leaving-words";
import type { DraftView } from "../../../lib/enquiry/draft-types";
import type { LetterView } from "../../../lib/enquiry/views";

const at = { now: "2026-11-29T14:50:00Z", place: { locale: "en-GB", timeZone: "UTC" }, mailConfigured: true } as const;
const client = { name: "Ada", email: "ada@example.org" as string | null, telephone: null, isTrade: false, suppressedWhy: null as string | null, earlier: [] };
const letter: LetterView = {
  id: "l", kind: "reply", state: "held", says: "", subject: "", text: "", to: "ada@example.org", createdAt: at.now, notBefore: "2026-11-29T14:55:00Z", nextTry: null, sentAt: null, approvedBy: null,
  canTakeBack: true, isToBeReadOut: false, canGiveUp: false, readOutUntil: null, enclosures: [],
};
const says = (of: Partial<typeof client> = {}, l: Partial<LetterView> = {}) => whenWords({ client: { ...client, ...of }, letters: [{ ...letter, ...l }] }, at)["l"];

describe("whenWords", () => {
  it("says when a held letter leaves, and of no letter to an address that refused our mail that it does", () => {
    expect(says()).toBe("Leaves today 14:55.");
    expect(says({ suppressedWhy: "550 5.1.1" })).toBe("Does not leave: the address refused our mail, and today 14:55 it counts as failed. Take it back, and correct the address or ring them.");
    expect(says({ email: null })).toBe("Waits here from today 14:55.");
  });
  it("says until when it can be taken back that a letter was read out", () => {
    expect(says({}, { state: "sent", readOutUntil: "2026-11-29T15:00:00Z" })).toBe("If it was not, that can be taken back until today 15:00.");
  });
});

describe("noteOf", () => {
  const draft: DraftView = { number: 1, subject: "", text: "", by: "the program", isByYou: false, at: at.now, words: 0, today: null };
  const note = (of: { draft: DraftView | null; email?: string | null }) =>
    noteOf({ client: { ...client, email: of.email ?? null }, draft: of.draft, waitsForSecond: null, holdMinutes: 5, sender: { name: "Yard", address: "desk@yard.example" } }, at);
  it("says where an approved letter will wait only while one can still be approved", () => {
    expect(note({ draft })).toBe("There is no e-mail address: an approved letter waits here, to be read out or printed.");
    expect(note({ draft: null })).toBe("");
  });
});
