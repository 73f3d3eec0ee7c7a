import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { cleaning } from "../../../lib/reply/facts";
import { shippedParagraph } from "../../../lib/reply/library";
import { mostWords } from "../../../lib/reply/length";
import { PLACES } from "../../../lib/reply/paragraphs";
import { WORTH } from "../../../lib/reply/paragraphs/worth";
import { says } from "../../../lib/reply/parts";
import { improvementPhrase } from "../../../lib/reply/phrases";
import type { DraftInput } from "../../../lib/reply/pieces";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import { readingOf } from "../../../lib/reply/reading";
import type { RugAnswers } from "../../../lib/trade/questions";
import { anyInput, anyWorth } from "./any-input";

const RUNS = 5000;
const count = (text: string, what: RegExp) => (text.match(what) ?? []).length;
/** From this many points on a range says neither little nor most. */
const isTooWide = ({ low, high }: { low: number; high: number }) => high - low >= 80;
const isFlooded = ({ incidents = [] }: RugAnswers) => incidents.includes("flood");
/** Places that a letter leaves out as a whole before it grows too long. */
const CAN_WAIT = PLACES.filter((p) => p.spare?.from === 0).map((p) => p.id);
const canWait = (id: string) => CAN_WAIT.some((place) => place === shippedParagraph(id)?.place);
/** The one thing that a long letter still asks for. */
const isLeast = (p: { place: string; said: string | null }) => p.place === "asks" && count(p.said ?? "", /\n– /g) === 1;
/** What stands in a letter of any length: the paragraph on a claim, where that is what an owner chose. */
const isChosen = ({ assessments }: DraftInput) => ({ id }: { id: string }) => id !== "claim-trade" && shippedParagraph(id)?.place === "claim" && assessments.some((r) => r.answers.matters?.includes("claim"));

describe(`every draft of the program, over ${RUNS.toLocaleString("en")} made-up assessments`, () => {
  it("names what it rests on, gives every range, asks for a test before any cleaning, leaves no slot open and promises nothing", () => {
    const most = { words: 0, grade: 0 };
    fc.assert(fc.property(anyInput, (input) => {
      const { text, subject, paragraphs } = composeDraft(input);
      const rugs = input.assessments.map((r) => r.assessment);
      const toldOf = rugs.map((_, at) => paragraphs.filter((p) => p.rug === at && p.said !== null && says(text, p.said)).map((p) => p.said).join("\n"));
      for (const told of toldOf) expect(count(told, /Going by |Your message is all we have so far/g)).toBe(1);
      const ranges = input.assessments.flatMap(({ answers, assessment: { improvement } }) => (improvement && !isFlooded(answers) ? [improvement] : []));
      for (const improvement of ranges) expect(text.includes(improvementPhrase(improvement))).toBe(!isTooWide(improvement));
      if (ranges.some(isTooWide)) expect(text).toMatch(/we cannot tell (?:from here )?how much|what cleaning would bring back we cannot tell/);
      rugs.forEach((a, at) => { if (cleaning(a).some((m) => m.verdict !== "ruled-out")) expect(toldOf[at]).toMatch(/test in a hidden corner/); });
      expect(count(text, /\bweak when wet\b|\bgrows weak\b/g)).toBeLessThanOrEqual(rugs.length);
      expect(subject + text).not.toMatch(/[{}]|undefined|\bnull\b|NaN/);
      expect(checkLetter(text, knownOf(rugs.map((assessment) => ({ assessment }))))).toEqual([]);
      if (rugs.length === 1 && /keep (?:it|the rug) dry|a dye test/i.test(text)) expect(text).not.toMatch(/full wash|with little water|care label allows/);
      expect(text.includes(input.workshop.telephone || "ring us on")).toBe(input.workshop.telephone !== "");
      const words = readingOf(text).words;
      const chosen = paragraphs.filter(isChosen(input));
      if (words > mostWords(rugs.length)) expect(paragraphs.filter((p) => canWait(p.id) && !chosen.includes(p) && !(rugs.length > 1 && isLeast(p)))).toEqual([]);
      const besides = words - chosen.reduce((sum, p) => sum + readingOf(p.said ?? "").words, 0);
      if (rugs.length === 1) Object.assign(most, { words: Math.max(most.words, besides), grade: Math.max(most.grade, readingOf(text).grade) });
    }), { numRuns: RUNS });
    expect(most.words).toBeLessThanOrEqual(350);
    expect(most.grade).toBeLessThanOrEqual(8);
  }, 240_000);

  it("asks for something wherever it says that we need to hear or to know more; how they reach us stands alone only below first aid", () => {
    fc.assert(fc.property(anyInput, (input) => {
      const { text, paragraphs } = composeDraft(input);
      const asked = (rug: number) => paragraphs.filter((p) => p.rug === rug && p.place === "asks").some(({ said }) => /\n– /.test(said ?? ""));
      for (const [, rug] of text.matchAll(/Of rug (\d) we need to know more first/g)) expect(asked(Number(rug) - 1)).toBe(true);
      const isAided = paragraphs.some((p) => p.place === "first-aid");
      if ((isAided ? /Once we have heard from you/ : /Once we have heard from you|To tell us more,|link in our first letter/).test(text)) expect(input.assessments.some((_, rug) => asked(rug))).toBe(true);
    }), { numRuns: RUNS });
  }, 240_000);

  it("says of one rug whether it is worth it before any price, and never refuses and offers the same work", () => {
    const seen = new Set<string>();
    fc.assert(fc.property(anyWorth, (input) => {
      const { assessment, answers } = input.assessments[0]!;
      if (answers.age === "antique") return;
      const { text, paragraphs } = composeDraft(input);
      for (const p of paragraphs) seen.add(p.id);
      if (isFlooded(answers)) {
        expect(text).not.toMatch(/\d\u00a0%|worth (?:the|its|today)|rather not take|£\d|\d\u00a0(?:more )?(?:years?|months?)/);
        return;
      }
      // Where nothing was answered there is nothing to weigh.
      const chance = assessment.findings.length > 0 ? assessment.beyondRepair ?? NaN : NaN;
      const places = paragraphs.map(({ id }) => shippedParagraph(id)?.place);
      expect(places[places.indexOf("fibre") + 1] === "worth").toBe(chance >= 0.66);
      expect(text).not.toMatch(/too wide/);
      for (const block of text.split("\n\n")) expect([count(block, /provisional/g) <= 1, count(block, /[^.\n]*\bworth (?:the|its|today)\b[^.\n]*\./g) <= 1]).toEqual([true, true]);
      if (/rather not take your money/.test(text)) expect(text).not.toMatch(/would cost about|We would clean it/);
      if (chance > 0.66) {
        const [answer, price] = [/ It is (?:very )?likely that (?:in money alone saving it is not worth its|(?:saving|cleaning) it is not worth the|cleaning would bring back too little to be worth its) [^\n]*an inspection could change it\./.exec(text)?.index ?? NaN, text.search(/£\d/)];
        expect(answer).toBeGreaterThan(0);
        expect(price < 0 || answer < price).toBe(true);
        expect(text).not.toMatch(/We would clean it|good news|Cleaning would cost/);
      }
      const known = !paragraphs.some((p) => p.id.startsWith("fibre-unknown"));
      expect(/may not be worth the money|as likely as not that saving it is not worth the cost,(?: for cleaning alone about £[^.]*,)? set against what it may be worth today(?:, very roughly £[^.]*)?\./.test(text)).toBe(chance >= 0.33 && chance < 0.66 && known);
      if (chance < 0.33) expect(text).not.toMatch(/worth the (?:cost|money)|rather not take/);
      expect([readingOf(text).words <= mostWords(1) || !paragraphs.some((p) => canWait(p.id) && !isChosen(input)(p)), readingOf(text).grade <= 8]).toEqual([true, true]);
    }), { numRuns: RUNS });
    expect(WORTH.filter((p) => !p.when.is?.inspection && !p.when.is?.rugs).map((p) => p.id).filter((id) => !seen.has(id))).toEqual([]);
  }, 240_000);
});
