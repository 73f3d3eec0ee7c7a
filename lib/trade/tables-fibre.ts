import { answerInWords, findingInWords } from "./answer-words";
import { ANCHORS, CAPS, CAPS_SOURCE, CONFLICT_RATIO, OLD_CEILING, SHORT_LIVED, SILK_CEILING, TEMPER, WHOLLY_MISLEADING, type EvidenceStrength } from "./evidence-caps";
import { FIBRE_IDS, fibreName, type FibreId, type Source } from "./fibres";
import { COMPONENT_LABEL_RIGHT, FRINGE_FEELS, GROUNDS, GROUND_SOURCE, GROUND_UNDER_SILK, SEWN_FRINGE } from "./ground-fringe";
import { LABEL, OTHER_LABELLED_OTHER, type LabelSays } from "./likelihoods-label";
import { LIKELIHOODS } from "./likelihoods";
import { ROW_STRENGTH, sourceOfRow, type LikelihoodTable, type NamedFibre } from "./likelihood-table";
import { WETTING_ANSWERS } from "./likelihoods-use";
import { PRICE_INDEX, PRICE_INDEX_SOURCES } from "./price-index";
import { LOOSE_LOG_SD, LOOSE_PLACES, PRICES, PRICE_CLIP_DB, PRICE_SOURCE, PRICE_STRENGTH, UNKNOWN_YEAR_LOG_SD } from "./prices";
import { CHANNEL_SHIFTS, LARGEST_PRIOR, LEAST_OTHER, PRIORS, PRIOR_SOURCE, REASON_SHIFTS, SMALLEST_PRIOR } from "./priors";
import { SELLER_CLAIMS } from "./seller-words";
import { SINGLE_FIBRES } from "./single-fibres";
import { chance, factTable, fieldsOf, judged, number, numberAt, placesIn, PRACTICE, text, type FactTable, type Place } from "./table";

const ofFibre = (key: string) => fibreName(key as FibreId);
const fibreColumns = (ids: readonly FibreId[], unit: "chance" | "times") => ids.map((f) => ({ name: fibreName(f), unit }));
const filled = (places: readonly Place<object>[]) => places.filter((p) => Object.keys(p.row).length > 0);

const sayLabel = (says: LabelSays) => (says === "art-silk" ? "imitation silk" : says === "other" ? "another fibre" : fibreName(says));
const WET: Readonly<Record<string, string>> = { stiffened: "stiffened or burst", browned: "browned", unharmed: "unharmed", otherwise: "changed otherwise" };
const answersOf = (t: LikelihoodTable): string[] =>
  t.answers.map((a) => (t === LABEL ? sayLabel(a as LabelSays) : t.what === "changes" ? (WET[a] as string) : answerInWords(`${t.what}:${a}`)));
const askedBy = (t: LikelihoodTable): string => (t === LABEL ? "What the label says" : t.what === "changes" ? "How it took getting wet" : findingInWords(t.what));

const evidence = LIKELIHOODS.map((t) => factTable<readonly number[]>({
  id: `likelihood-${t.what}`, part: "fibre", name: askedBy(t),
  about: `How often each answer is given where the pile is of this fibre${t === LABEL ? "; labels lie upward, hardly ever downward" : ""}.`,
  columns: answersOf(t).map(chance), rows: placesIn(t.rows, ofFibre), cells: (row) => row, source: (_, key) => sourceOfRow(t, key as NamedFibre),
}));

const STRENGTH_WORDS: Readonly<Record<EvidenceStrength, string>> = {
  told: "Only what was told", photo: "What photos show", "label-typed": "A label, typed by the client", "label-photo": "A label, seen in a photo and confirmed",
  bench: "A bench test", laboratory: "A laboratory’s report",
};
const GROUP_WORDS = { lustre: "Shine, feel, footprints and price", make: "Back and fringe", claim: "Label and seller" } as const;

const before: FactTable[] = [
  factTable<number>({
    id: "priors", part: "fibre", name: "Before anything is known", about: "The share of each fibre among the rugs people write in about; a workshop may set its own.",
    columns: [chance("share")], rows: placesIn(PRIORS, ofFibre), cells: (p) => [p], source: PRIOR_SOURCE,
  }),
  factTable<Readonly<Partial<Record<FibreId, number>>>>({
    id: "reasons", part: "fibre", name: "Why somebody writes", about: "By how much the reason for writing, or the way it came, moves the odds of a fibre before anything else is weighed.",
    columns: fibreColumns(FIBRE_IDS, "times"),
    rows: filled([...placesIn(REASON_SHIFTS, (r) => answerInWords(`reason:${r}`)), ...placesIn(CHANNEL_SHIFTS, (c) => `By ${c}`)]) as Place<Readonly<Partial<Record<FibreId, number>>>>[],
    cells: (row) => FIBRE_IDS.map((f) => row[f] ?? null), source: judged("worried owners over-represent viscose, people with older rugs rather telephone"),
  }),
  factTable<number>({
    id: "prior-bounds", part: "fibre", name: "Bounds of any opinion beforehand", about: "No share beforehand may lie outside these, the workshop’s own included.",
    columns: [chance("bound")], cells: (p) => [p], source: PRIOR_SOURCE,
    rows: [
      numberAt("priors", "LARGEST_PRIOR", LARGEST_PRIOR, "The largest of any fibre"), numberAt("priors", "SMALLEST_PRIOR", SMALLEST_PRIOR, "The smallest of any fibre"),
      numberAt("priors", "LEAST_OTHER", LEAST_OTHER, "The least for something else or unclear"),
    ],
  }),
];

const limits: FactTable[] = [
  factTable<number>({
    id: "caps", part: "fibre", name: "How far evidence can carry", about: "The greatest chance a fibre may reach on the best evidence that speaks for it.",
    columns: [chance("at most")], cells: (p) => [p], source: CAPS_SOURCE,
    rows: [
      ...placesIn(CAPS, (s) => STRENGTH_WORDS[s as EvidenceStrength]), numberAt("evidence-caps", "SILK_CEILING", SILK_CEILING, "Silk, until a bench test or a laboratory agrees"),
      numberAt("evidence-caps", "OLD_CEILING", OLD_CEILING, `A short-lived fibre (${SHORT_LIVED.map(fibreName).join("; ")}) in a rug of 25 years and more, until a label or a test agrees`),
    ],
  }),
  factTable<number>({
    id: "misleading", part: "fibre", name: "How evidence can mislead", about: "What keeps words and photos from certainty, and from when two findings are said to contradict each other.",
    columns: [number("value")], cells: (p) => [p], source: CAPS_SOURCE,
    rows: [
      numberAt("evidence-caps", "WHOLLY_MISLEADING", WHOLLY_MISLEADING, "Chance that words and photos together mislead wholly"),
      numberAt("evidence-caps", "CONFLICT_RATIO", CONFLICT_RATIO, "Times rarer with the claimed fibre than with the best fitting one: a conflict"),
      numberAt("likelihoods-label", "OTHER_LABELLED_OTHER", OTHER_LABELLED_OTHER, "Chance that a pile of some rare fibre is labelled as one"),
    ],
  }),
  factTable<readonly number[]>({
    id: "temper", part: "fibre", name: "Findings that carry the same news", about: "The power each finding of a group keeps where one, two, three or four of the group are present.",
    columns: ["one", "two", "three", "four"].map((n) => number(n)), rows: placesIn(TEMPER, (g) => GROUP_WORDS[g as keyof typeof GROUP_WORDS]),
    cells: (row) => [0, 1, 2, 3].map((i) => row[i] ?? null), source: CAPS_SOURCE,
  }),
  factTable<string>({
    id: "anchors", part: "fibre", name: "What keeps its full weight in its group", about: "The member of a group that the others of the group do not weaken.",
    columns: [text("finding")], rows: placesIn(ANCHORS as Readonly<Record<string, string>>, (g) => GROUP_WORDS[g as keyof typeof GROUP_WORDS]), cells: (w) => [findingInWords(w)], source: CAPS_SOURCE,
  }),
  factTable<FibreId>({
    id: "seller-claims", part: "fibre", name: "What a seller’s word claims", about: "The fibre a seller’s word names outright; “art silk” or “silk touch” claim none.",
    columns: [text("fibre")], rows: placesIn(SELLER_CLAIMS, (w) => answerInWords(`sellerSaid:${w}`)), cells: (f) => [fibreName(f)], source: judged("the plain sense of the word"),
  }),
  factTable<readonly string[]>({
    id: "wetting", part: "fibre", name: "What means that it got wet", about: "Only where one of these was told is a change of the pile read as evidence of the fibre.",
    columns: [text("answers")], rows: placesIn(WETTING_ANSWERS, findingInWords), cells: (row, key) => [row.map((a) => answerInWords(`${key}:${a}`)).join("; ")], source: PRACTICE,
  }),
  factTable<number>({
    id: "row-strength", part: "fibre", name: "How sure a row is", about: "How many cases a row counts for when the interval of a chance is drawn, by how the row is known.",
    columns: [number("cases")], rows: placesIn(ROW_STRENGTH, (how) => how), cells: (n) => [n], source: judged("a published row is surer than a judgement"),
  }),
];

const MAKE = (m: string | null) => (m === null ? "any other make" : answerInWords(`back:${m}`));
const JUDGED_PRICE = judged("prices are one-sided: a low one speaks against silk, a high one says next to nothing");
const prices: FactTable[] = [
  factTable({
    id: "prices", part: "money", name: "Prices new", about: "Shop price of a square metre, as pounds of 2024: the middle, and the spread of its logarithm.",
    columns: [text("back"), number("middle", "pounds"), number("spread")], rows: placesIn(PRICES, (_, r) => fibreName(r.fibre)),
    cells: (r) => [MAKE(r.make), r.median, r.logSd], source: PRICE_SOURCE,
  }),
  factTable<number>({
    id: "price-clip", part: "money", name: "What a price can say of the fibre", about: "Bounds of the weight of a price, for a fibre against viscose.",
    columns: [number("decibans", "decibans")], cells: (x) => [x], source: JUDGED_PRICE,
    rows: fieldsOf(PRICE_CLIP_DB, { least: "At the least", most: "At the most", mostWithSilk: "At the most for silk and its blends" }) as Place<number>[],
  }),
  factTable<number>({
    id: "price-spread", part: "money", name: "Prices that tell less", about: "How widely a price is read where the place or the year leaves it open.",
    columns: [number("value")], cells: (x) => [x], source: JUDGED_PRICE,
    rows: [
      numberAt("prices", "LOOSE_LOG_SD", LOOSE_LOG_SD, "Spread of the logarithm where the place says little"),
      numberAt("prices", "UNKNOWN_YEAR_LOG_SD", UNKNOWN_YEAR_LOG_SD, "More spread where the year is not told"),
      numberAt("prices", "PRICE_STRENGTH", PRICE_STRENGTH, "Cases a row of prices counts for"),
    ],
  }),
  factTable<string>({
    id: "loose-places", part: "money", name: "Places whose prices say little", about: "Where what was paid is far from a shop’s price.",
    columns: [], rows: placesIn(LOOSE_PLACES, (_, p) => answerInWords(`boughtWhere:${p}`)), cells: () => [], source: JUDGED_PRICE,
  }),
  factTable({
    id: "price-index", part: "money", name: "Money of other years", about: "UK consumer prices (2015 is 100) and mean rates of exchange, which bring every purchase to pounds of 2024.",
    columns: [number("consumer prices"), number("dollars a pound"), number("pounds a euro"), number("Australian dollars a US dollar"), number("Canadian dollars a US dollar"), number("New Zealand dollars a US dollar")], rows: placesIn(PRICE_INDEX, (_, r) => String(r.year)),
    cells: (r) => [r.cpi, r.usdPerGbp, r.gbpPerEur, r.audPerUsd, r.cadPerUsd, r.nzdPerUsd], source: (r) => indexSource(r.year),
  }),
];
function indexSource(year: number): Source {
  const [cpi, later, rates, dollars] = PRICE_INDEX_SOURCES as readonly [Source, Source, Source, Source];
  const prices = year === PRICE_INDEX[PRICE_INDEX.length - 1]?.year ? later : cpi;
  return { how: prices.how, source: `${prices.source}; ${rates.source}; ${dollars.source}` };
}

const FEELS = ["cottony", "shiny", "woolly"] as const;
const singles = fibreColumns(SINGLE_FIBRES, "chance");
const components: FactTable[] = [
  factTable<Readonly<Partial<Record<FibreId, number>>>>({
    id: "grounds", part: "fibre", name: "Grounds and fringes", about: "What the ground is made of by the look of the back, and a fringe that was sewn on; what is left is spread evenly.",
    columns: singles, cells: (row) => SINGLE_FIBRES.map((f) => row[f] ?? null), source: GROUND_SOURCE,
    rows: [
      ...placesIn(GROUNDS, (b) => (b === "unknown" ? "The back was not described" : answerInWords(`back:${b}`))), ...placesIn({ GROUND_UNDER_SILK }, () => "Knotted, under a pile of silk"),
      ...placesIn({ SEWN_FRINGE }, () => "A fringe sewn on"),
    ],
  }),
  factTable<Readonly<Record<(typeof FEELS)[number], number>>>({
    id: "fringe-feels", part: "fibre", name: "How a fringe feels", about: "How often a fringe of this fibre is described so.",
    columns: FEELS.map((f) => chance(answerInWords(`fringeKind:${f}`))), rows: placesIn(FRINGE_FEELS, ofFibre), cells: (row) => FEELS.map((f) => row[f]), source: GROUND_SOURCE,
  }),
  factTable<number>({
    id: "component-label", part: "fibre", name: "Labels of ground and fringe", about: "How often a label that names the ground or the fringe names its fibre rightly.",
    columns: [chance("right")], rows: [numberAt("ground-fringe", "COMPONENT_LABEL_RIGHT", COMPONENT_LABEL_RIGHT, "The label is right")], cells: (p) => [p],
    source: judged("nobody gains by lying about the ground"),
  }),
];

/** What is known of the fibre beforehand, what each answer says of it, and how far it can carry. */
export const FIBRE_TABLES: readonly FactTable[] = [...before, ...evidence, ...limits, ...components];
export const PRICE_TABLES: readonly FactTable[] = prices;
