import { says, type Told } from "./letter-of";
import type { Line } from "./lists";

/** What one kind of letter must say and must not. Written from the trade and from what was told alone, before the letter was read. */
export interface Kind { readonly kind: string; readonly told: Told; readonly must: readonly Line[]; readonly never: readonly Line[] }

const PERCENTS = says("the improvement as a range in per cent", /\d+\s?[–-]\s?\d+\s?%/);
const TESTED_FIRST = says("nothing is cleaned before a test", /\btest\w*\b[^.]*\b(?:hidden|corner)|\b(?:hidden|corner)\b[^.]*\btest/i);
const WORTH_TWICE = says("that it is not worth it, twice in one paragraph", /\bworth (?:the|its|today)\b[^.\n]*\.[^\n]*\b(?:not|more than)\b[^.\n]*\bworth\b/i);
const REFUSAL_BESIDE_RANGE = says("that we would not take the money, right after what may come back", /%\)[^\n]*rather not take your money/i);
const TOO_WIDE = says("a range beside the word that it is too wide", /too wide/i);

const OF_SOIL = says("soil, of which nobody spoke", /\bsoil\b/i);
const YEARS = says("a figure for years left", /\b\d+½? (?:more )?years?\b/i);
const WORTH = says("what it is worth, or what a new one costs", /\bworth\b|new rug like it|£\d/i);
const UNTOUCHED = says("that nobody may touch it", /nobody touch[^.]*not even to blot/i);

const WET_WAYS = says("a way of cleaning with water, beside “keep it dry” or before a dye test", /full wash|with little water/i);
const NOT_AT_HOME = says("not to clean it at home", /not clean it (?:again )?at home/i);

const BLOT = says("first aid: press with a plain white cloth, do not rub", /white cloth[^.]*\bnot rub/i);
const CHILDREN_OFF = says("first aid: people, children and pets off", /children and pets off/i);
const NOTHING_ON_IT = says("first aid: nothing on it and no more water", /put nothing on it, and no more water/i);
const PLUGS = says("wet plugs and sockets", /\bplug|\bsocket/i);
const EMERGENCY = says("the emergency number", /\b112\b/);
const SEWAGE = says("sewage, chemicals or mould", /sewage|chemicals/i);
const SOAKED = says("a soaked rug", /soaked/i);
const MIXING = says("never to mix products", /never mix/i);

const WHAT_HAPPENED = says("what happened, asked once more", /what happened to it/i);
const HOW_CHANGED = says("how it changed, asked once more", /how has the rug changed/i);
const TOLD_US = says("what they told us of the rug, who told nothing of it", /what you told us/i);
const A_PHOTO = says("a photo, as the next thing we need", /photo of the/i);

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
  {
    kind: "a jute runner walked flat, that could do with a clean",
    told: { answers: { labelText: "jute", back: "flat", touch: "coarse", incidents: ["wear"], changes: ["flat"], age: "5-10", room: "busy", widthCm: 70, lengthCm: 250 }, enquiry: { wetNow: "no", reason: "routine" } },
    must: [PERCENTS, says("what the pile, or the rug, may regain of what it lost", /regain|come back/i), says("that it is wear", /wear|pressed/i)], never: [OF_SOIL],
  },
  {
    kind: "a wool rug faded by the sun",
    told: { answers: { labelText: "wool", incidents: ["sun"], changes: ["faded"], widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "routine" } },
    must: [PERCENTS, says("that lost colour is what may hardly come back", /lost colour[^.]*come back/i)], never: [OF_SOIL, says("a mark, where there is none", /\bof the mark\b/i)],
  },
  ...(["no", "wet"] as const).map((wetNow) => ({
    kind: `waste water, ${wetNow === "wet" ? "wet now" : "dry since"}`,
    told: { answers: { labelText: "wool", back: "knots", incidents: ["flood"], changes: ["stiff", "smell"], since: wetNow === "wet" ? "hour" : "month", widthCm: 170, lengthCm: 240, price: 300, currency: "GBP", boughtYear: 2015 }, enquiry: { wetNow, reason: "older-trouble" } } satisfies Told,
    must: [UNTOUCHED, says("the flood-damage firm first", /flood-damage firm[^.]*first/i), TESTED_FIRST, says("what we do once that firm has been", /once (?:that|the) firm has been[^.]*ring us/i)],
    never: [PERCENTS, YEARS, WORTH, says("the firm twice over", /belongs in the hands/i), says("that the rug is brought to us", /bring it rolled/i)],
  })),
  {
    kind: "wool whose red ran in a machine at home",
    told: { answers: { labelText: "wool", back: "knots", incidents: ["washed-home"], treatments: ["machine"], since: "week", changes: ["ran"], widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "after-cleaning" } },
    must: [says("a dye test of each colour", /dye test of each colour/i), TESTED_FIRST, says("keep it dry", /keep it dry/i), NOT_AT_HOME], never: [WET_WAYS],
  },
  {
    kind: "acrylic whose colours ran",
    told: { answers: { labelText: "acrylic", incidents: ["washed-home"], treatments: ["machine"], since: "week", changes: ["ran"], widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "after-cleaning" } },
    must: [says("a dye test of each colour", /dye test of each colour/i), NOT_AT_HOME], never: [WET_WAYS, says("that the label’s way may be tried at home", /maker’s own care label/i)],
  },
  {
    kind: "wool that moths have eaten",
    told: { answers: { labelText: "wool", back: "knots", incidents: ["insects"], changes: ["bare"], widthCm: 170, lengthCm: 240 }, enquiry: DRY },
    must: [says("dry and apart", /dry and apart/i), TESTED_FIRST], never: [WET_WAYS],
  },
  {
    kind: "cotton with mould",
    told: { answers: { labelText: "cotton", incidents: ["damp"], changes: ["spots", "smell"], widthCm: 170, lengthCm: 240 }, enquiry: DRY },
    must: [says("not to touch it", /not touch/i), says("whoever treats the mould has the first word", /mould[^.]*first/i), TESTED_FIRST], never: [WET_WAYS],
  },
  {
    kind: "nylon that a bleach has paled",
    told: { answers: { labelText: "100% polyamide", back: "felt", incidents: ["spotted"], treatments: ["bleach"], treatedBy: "owner", since: "month", changes: ["paler"], widthCm: 170, lengthCm: 240 }, enquiry: DRY },
    must: [NOT_AT_HOME, says("lost colour rarely comes back", /lost colour rarely comes back/i)], never: [says("the bleach as a reproach", /should not have|mistake/i)],
  },
  ...([["a glass of wine", "spill", "wine"], ["a dog’s puddle", "pet-urine", "urine"], ["a cup of coffee", "spill", "coffee-tea"]] as const).map(([kind, incident, liquid]) => ({
    kind: `${kind} an hour ago`,
    told: { answers: { labelText: "wool", back: "knots", incidents: [incident], liquid, since: "hour", treatments: ["blotted"], widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "wet", reason: "just-happened" } } satisfies Told,
    must: [CHILDREN_OFF, BLOT, NOTHING_ON_IT, says("where the whole list stands", /whole list/i), PERCENTS, TESTED_FIRST], never: [PLUGS, EMERGENCY, SEWAGE, SOAKED, MIXING],
  })),
  {
    kind: "urine with a household cleaner on it",
    told: { answers: { labelText: "wool", back: "knots", incidents: ["pet-urine"], liquid: "urine", since: "hour", treatments: ["household-cleaner"], widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "wet", reason: "just-happened" } },
    must: [EMERGENCY, MIXING, CHILDREN_OFF, BLOT, NOTHING_ON_IT], never: [PLUGS, SEWAGE, SOAKED],
  },
  {
    kind: "a leak, wet now",
    told: { answers: { labelText: "wool", back: "knots", incidents: ["water"], liquid: "water", since: "hour", widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "wet", reason: "just-happened" } },
    must: [PLUGS, EMERGENCY, SOAKED, CHILDREN_OFF, BLOT, NOTHING_ON_IT], never: [SEWAGE, MIXING],
  },
  {
    kind: "wine on a rug over a heated floor",
    told: { answers: { labelText: "wool", incidents: ["spill"], liquid: "wine", since: "hour", household: ["floor-heating"] }, enquiry: { wetNow: "wet", reason: "just-happened" } },
    must: [says("keep off the heated floor", /heated floor/i), BLOT], never: [SEWAGE, MIXING],
  },
  {
    kind: "a wet rug, and nothing else said",
    told: { answers: {}, enquiry: { wetNow: "wet" }, photos: [] },
    must: [EMERGENCY, PLUGS, SEWAGE, SOAKED, CHILDREN_OFF, BLOT, NOTHING_ON_IT], never: [PERCENTS],
  },
  {
    kind: "viscose that was sold as having a silk look",
    told: { answers: { labelText: "100% viscose", sellerSaid: "silk-look", shine: "satin", touch: "cool-slippery", widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "what-is-it" } },
    must: [says("that a silk look is not silk", /silk look[^.]*not what it is made of/i), says("likely viscose", /likely viscose/i)],
    never: [says("that it was sold as silk, or mixed up with it", /sold (?:to you )?as silk|taken for each other/i), says("the seller, whom nobody blames", /\bseller\b/i)],
  },
  {
    kind: "a mail that tells of a dog’s mess and a mark, with a photo",
    told: { answers: { story: "My dog was sick on the rug last week and there is a yellow stain. Can you clean it?" }, channel: "email", photos: ["unsaid"] },
    must: [A_PHOTO, says("that it goes by the message and the photo", /message and your photos?/i)], never: [WHAT_HAPPENED, HOW_CHANGED, TOLD_US],
  },
  {
    kind: "a mail that tells of an old coffee stain",
    told: { answers: { story: "There is an old coffee stain on our wool rug from Christmas. What would it cost?" }, channel: "email", photos: [] },
    must: [A_PHOTO, says("that a message is all there is", /your message is all we have/i)], never: [WHAT_HAPPENED, HOW_CHANGED],
  },
  {
    kind: "a mail that tells of moths",
    told: { answers: { story: "Moths have eaten a hole into my grandmother's rug." }, channel: "email", photos: [] },
    must: [A_PHOTO], never: [WHAT_HAPPENED, HOW_CHANGED],
  },
  {
    kind: "a mail that asks for a price and tells nothing, with a photo",
    told: { answers: { story: "Hello, how much do you charge for a rug of two by three metres?" }, channel: "email", photos: ["unsaid"] },
    must: [WHAT_HAPPENED, says("that it goes by the message and the photo", /message and your photos?/i)], never: [TOLD_US, PERCENTS],
  },
  {
    kind: "a form with its size and nothing else, and a photo",
    told: { answers: { widthCm: 170, lengthCm: 240, room: "ordinary" }, enquiry: { wetNow: "no", reason: "routine" } },
    must: [WHAT_HAPPENED], never: [TOLD_US],
  },
  {
    kind: "acrylic that moths may have eaten",
    told: { answers: { labelText: "acrylic", incidents: ["insects"], changes: ["bare"], age: "10-25", room: "ordinary" }, enquiry: DRY },
    must: [says("insects may have fed on it", /insects have fed on it/i)], never: [says("soil and nothing worse, beside something worse", /nothing worse/i)],
  },
  {
    kind: "viscose walked bare",
    told: { answers: { labelText: "100% viscose", incidents: ["wear"], changes: ["flat", "bare"], age: "2-5", room: "busy", widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "routine" } },
    must: [PERCENTS, says("that it is wear", /wear/i)], never: [says("that it lost looks alone, where it is bare", /looks and not use/i)],
  },
];
