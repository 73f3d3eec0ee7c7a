import { says, type Told } from "./letter-of";
import type { Line } from "./lists";

/** What one kind of letter must say and must not. Written from the trade and from what was told alone, before the letter was read. */
export interface Kind { readonly kind: string; readonly told: Told; readonly must: readonly Line[]; readonly never: readonly Line[] }

const PERCENTS = says("the improvement as a range in per cent", /\d+\s?[–-]\s?\d+\s?%/);
const TESTED_FIRST = says("nothing is cleaned before a test", /\btest\w*\b[^.]*\b(?:hidden|corner)|\b(?:hidden|corner)\b[^.]*\btest/i);
const WORTH_TWICE = says("that it is not worth it, twice in one paragraph", /\bworth (?:the|its|today)\b[^.\n]*\.[^\n]*\b(?:not|more than)\b[^.\n]*\bworth\b/i);
const REFUSAL_BESIDE_RANGE = says("that we would not take the money, right after what may come back", /%\)[^\n]*rather not take your money/i);
const TOO_WIDE = says("a range beside the word that it is too wide", /too wide/i);

const DRY = { wetNow: "no", reason: "older-trouble" } as const;

export const KINDS: readonly Kind[] = [
  {
    kind: "a spill on polypropylene, dearer to clean than to replace",
    told: { answers: { labelText: "100% polypropylene", back: "machine", incidents: ["vomit"], liquid: "vomit", since: "week", widthCm: 160, lengthCm: 230, price: 120, currency: "GBP", boughtYear: 2023 }, enquiry: { wetNow: "no", reason: "just-happened" } },
    must: [PERCENTS, TESTED_FIRST, says("that cleaning is likely not worth it, with why", /likely that cleaning it is not worth the money[^.]*more than the rug is worth/i), says("what a new one costs", /new (?:one|rug)[^.]*£/i)],
    never: [WORTH_TWICE, REFUSAL_BESIDE_RANGE],
  },
  {
    kind: "a crumbling back and a pile walked flat",
    told: { answers: { labelText: "Pile: 100% wool. Backing: cotton, latex", back: "cloth", incidents: ["wear"], changes: ["crumbles", "flat"], age: "10-25", room: "busy", widthCm: 170, lengthCm: 240, price: 300, currency: "GBP", boughtYear: 2012 }, enquiry: DRY },
    must: [says("latex", /latex/i), says("that saving it is likely not worth it", /not worth/i)],
    never: [WORTH_TWICE, REFUSAL_BESIDE_RANGE],
  },
  {
    kind: "a mail of which nothing is known",
    told: { answers: { story: "Hello, how much do you charge for a rug of two by three metres?" }, channel: "email", photos: [] },
    must: [says("that how much comes back cannot be told yet", /(?:nobody|cannot|no)[^.]*(?:tell|say|figure)/i)],
    never: [PERCENTS, TOO_WIDE, says("a share in words", /\b(?:twentieth|tenths?|fifths?|nearly all)\b/i)],
  },
  {
    kind: "viscose or silk, brown and hard since a clean",
    told: { answers: { sellerSaid: "silk", shine: "satin", touch: "cool-slippery", incidents: ["washed-professional"], treatments: ["professional-wet"], treatedBy: "cleaner", since: "week", changes: ["browner", "stiff"], widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "after-cleaning" } },
    must: [PERCENTS, TESTED_FIRST], never: [TOO_WIDE],
  },
];
