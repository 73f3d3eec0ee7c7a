import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { CLEANING } from "../../../lib/reply/paragraphs/troubles";
import type { DraftInput } from "../../../lib/reply/pieces";
import { anyProspect, seen as inspected } from "./any-input";
import { range, worthless } from "./make";

const RUNS = 5000;
const KEPT = /looks and not use|keep it as it is/;
const YEARS_TOLD = /serve [^.]*(?:years?|months?) more|open guess: [^.]*(?:years?|months?) in ordinary use/;
const FEW_YEARS = /may not have many years left|may have few years left/;
const MAY_BE_OVER = new RegExp(`${FEW_YEARS.source}|use it as it is for as long as it serves`);
/** More years than a reader calls few, as the upper end of a range. */
const MANY_YEARS = /serve [^.]*\b(?:(?:[7-9]|[1-9]\d) years|decades)\b[^.]* more/;
/** Pairs of sentences of which no letter about one rug says both. */
const CONTRARY: readonly (readonly [string, RegExp, RegExp])[] = [
  ["it is good news, and we advise against the work", /good news/, /rather not take your money|not work that we take on|not worth|think about replacing|propose cutting it down|do not spend money/],
  ["it is good news, and its years may be few", /good news/, MAY_BE_OVER],
  ["keep it, and live with what is not fit to live with", KEPT, /are mould|may be mould|mould grows|insects have fed|latex that holds the backing is breaking|drawn in or gone out of shape|changed the dye or the fibre/],
  ["keep it, and it has few years left", KEPT, MAY_BE_OVER],
  ["it has not many years left, and may serve for many", FEW_YEARS, MANY_YEARS],
  ["it may have years left or only months, and the range that says so", /years left, or only months/, /serve [^.]* more/],
  ["lost colour comes back in part, and it does not", /lost colour may come back/, /colour (?:does not|rarely) come/],
  ["we would clean it, and little would change", /We would clean it/, /expect little to change|bring back too little|not gain enough/],
  ["cleaning costs so much, and little would change", /Cleaning would cost about/, /expect little to change|bring back too little|not gain enough/],
  ["we would clean it, and cleaning is not the matter", /We would clean it|Cleaning would cost about/, /What has happened is a matter for repair|Nothing you have told us calls for cleaning now/],
  ["it is likely worth its cost, and it is not", /likely that cleaning it is worth its cost/, /not worth|may well cost more|rather not|expect little to change|not work that we take on|think about replacing|do not spend money|may (?:not )?have (?:many|few) years left/],
  ["it is likely worth its cost, and what cleaning brings cannot be told", /likely that cleaning it is worth its cost/, /we cannot tell (?:from here )?how much|how much of it would come out/],
  ["it is likely worth its cost, and cleaning is not the matter, or not yet", /likely that cleaning it is worth its cost/, /If it is cleaned (?:at all|all the same)|What has happened is a matter for repair|no way of cleaning it|calls for cleaning now|has to say first|stays open until we know more|do this first|still wet|hours count|clean nothing before|not wet it again/],
  ["everybody stays out of the room, and only some do", /[Kk]eep everybody[^.]* out of the room/, /keep children and [^.]*(?:out of the room|away)/],
  ["we would rather not be paid for it, and its price", /rather not take your money/, /Cleaning would cost|we estimate/],
];

const isShort = ({ low, high }: { low: number; high: number }) => low < 1 || high <= 5;
/** Dry cleaning after a test is never ruled out. */
const leavesAWay = ({ assessments }: DraftInput) => assessments.every(({ assessment: { methods } }) => methods.some((m) => CLEANING.includes(m.method) && m.verdict !== "ruled-out"));

describe("composeDraft, sentences against each other", () => {
  it(`says no two things of one rug that cannot both hold, over ${RUNS.toLocaleString("en")} made-up assessments`, () => {
    const seen = { kept: 0, short: 0, worthIt: 0 };
    fc.assert(fc.property(anyProspect.filter(leavesAWay), (input) => {
      const { text } = composeDraft(input);
      expect(CONTRARY.filter(([, one, other]) => one.test(text) && other.test(text)).map(([name]) => name)).toEqual([]);
      const years = input.assessments[0]!.assessment.lifeYears;
      if (KEPT.test(text)) seen.kept += 1;
      if (/likely that cleaning it is worth its cost/.test(text)) seen.worthIt += 1;
      if (years && isShort(years) && YEARS_TOLD.test(text)) {
        seen.short += 1;
        expect(text).not.toMatch(/looks and not use|keep it as it is|good news|likely that cleaning it is worth its cost/);
      }
    }), { numRuns: RUNS });
    expect(Math.min(seen.kept, seen.short, seen.worthIt)).toBeGreaterThan(20);
  }, 240_000);
  it("nor of one that somebody here has inspected", () => {
    fc.assert(fc.property(inspected(anyProspect).filter(leavesAWay), (input) => {
      const { text } = composeDraft(input);
      expect(CONTRARY.filter(([, one, other]) => one.test(text) && other.test(text)).map(([name]) => name)).toEqual([]);
    }), { numRuns: RUNS / 5 });
  }, 240_000);
});

describe("composeDraft, a back of latex", () => {
  const OFFER = /full wash in our workshop|by hand with little water|with a dry solvent/;
  const withBack = ({ assessments: [rug], ...input }: DraftInput, isFailing: boolean): DraftInput => {
    const { assessment } = rug!;
    const back = { what: "back", value: "cloth", strength: "told" as const, from: "client", decibans: 0, staff: "", client: "" };
    const failing = isFailing ? [{ mechanism: "backing-failure" as const, probability: 0.5 }] : [];
    return { ...input, assessments: [{ ...rug!, assessment: { ...assessment, findings: [...assessment.findings, back], mechanisms: [...assessment.mechanisms, ...failing] } }] };
  };
  it(`looks at the back before it names any cleaning that may harm it, over ${RUNS.toLocaleString("en")} made-up assessments`, () => {
    let offered = 0;
    fc.assert(fc.property(anyProspect, fc.boolean(), (input, isFailing) => {
      const { text } = composeDraft(withBack(input, isFailing));
      const offer = text.search(OFFER);
      if (offer < 0) return;
      offered += 1;
      const caution = text.search(/look at (?:the|its) back/);
      expect([caution >= 0, caution < offer]).toEqual([true, true]);
    }), { numRuns: RUNS });
    expect(offered).toBeGreaterThan(500);
  }, 240_000);
});

describe("composeDraft, keeping it", () => {
  const says = (low: number | null, high = 0) => composeDraft(worthless({ improvement: range(0, 2, 5), lifeYears: low === null ? null : range(low, (low + high) / 2, high) }, "fading")).text;
  it.each([[0.99, 5.5], [3, 5], [0.25, 1.5]])("does not say to keep it where the years told are few (%d to %d), but to use it for as long as it serves", (low, high) => {
    expect(says(low, high)).not.toMatch(KEPT);
    expect(says(low, high)).toMatch(/may not have many years left: you could use it as it is for as long as it serves, and spend nothing\. Should you think of replacing it/);
  });
  it.each([[0.7, 9.1], [0.3, 5.1]])("says that it may be months or years where the range told runs from the one to the other (%d to %d)", (low, high) => {
    expect(says(low, high)).not.toMatch(KEPT);
    expect(says(low, high)).toMatch(/\n\nYou could use it as it is for as long as it serves, and spend nothing\. Should you think of replacing it/);
  });
  it.each([[1, 5.1], [4, 20], [9, 80]])("says so where they are many (%d to %d)", (low, high) => expect(says(low, high)).toMatch(KEPT));
  it("says so where no years are told", () => {
    expect(says(null)).toMatch(KEPT);
    expect(says(0.2, 46)).toMatch(/keep it as it is[^]*it could be few or many/);
  });
});

describe("composeDraft, colour that is lost", () => {
  const says = (mechanism: "fading" | "bleaching") => composeDraft(worthless({ improvement: range(0, 1, 4) }, mechanism)).text;
  it.each(["fading", "bleaching"] as const)("gives the range of what changes to the eye after %s, and not of colour that comes back", (mechanism) => {
    expect(says(mechanism)).toMatch(/\(0–4[^%]%\) of the change that you see may go\./);
    expect(says(mechanism)).not.toMatch(/of the (?:lost colour|mark) may/);
  });
  it.each(["fading", "bleaching"] as const)("says once that colour lost by %s does not come back", (mechanism) => {
    expect(says(mechanism).match(/colour (?:does not|rarely) comes? back|colour come back/g)).toHaveLength(1);
  });
});

describe("composeDraft, where we ask for more", () => {
  const asking = (advice: "ask-for-more" | "inspect-and-test") => composeDraft(worthless({ beyondRepair: 0.1, advice: { action: advice, why: "", referTo: null, losses: [] }, nextQuestions: [{ id: "back", kind: "photo", ask: "", why: "" }, { id: "since", kind: "question", ask: "", why: "" }] })).text;
  it("ends with what it is for, and only there", () => {
    expect(asking("ask-for-more")).toMatch(/Pass over what you have told us already\.\n– [^]*Once we have heard from you, we can tell you more\.\n\nWith kind regards/);
    expect(asking("inspect-and-test")).not.toMatch(/Once we have heard from you/);
  });
});
