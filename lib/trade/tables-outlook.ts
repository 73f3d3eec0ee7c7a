import { answerInWords } from "./answer-words";
import {
  CARE_COLUMNS, CARE_COLUMNS_OF, CAUTIONS, LEFT_AS_IT_IS, METHODS, VERDICT_LIMITS, CONSTRUCTIONS, type CareColumn, type CautionRow, type Construction, type LeftRow, type MethodId, type Verdict,
} from "./care";
import { CARE_WORDS as OF_FIBRES, MAY_BE_FROM, type CareWords } from "./care-words";
import { COLUMNS } from "./columns";
import { HANDLED_AS, mechanismName, type DamageId } from "./damage";
import { DEPRECIATION_CLASS, HEAVY_WEAR, TABLES_END, USEFUL_LIVES, type DepreciationClass } from "./depreciation";
import { FIBRE_IDS, fibreName, type FibreId, type Source } from "./fibres";
import { BROUGHT_BACK, IMPROVEMENT, ROWS_OF, WORSE, WORSE_AFTER_TEST, WORSE_OLD_LATEX, type RowId, type WorseRow } from "./improvement";
import { AGES, LIFE, LIFE_FACTORS, SURVIVAL_TEMPER, WEAR_LEFT, type LifeRow } from "./life";
import { chance, factTable, fieldsOf, judged, number, placesIn, PRACTICE, text, type FactTable, type Place } from "./table";
import { columnName } from "./tables-happened";
import { TEXTURE, type TextureRow } from "./texture";
import { ODOUR, UNEXPLAINED_ODOUR, type OdourRow } from "./odour";
import { CLEANING_SPREAD, CUT_DOWN, LEAST_VALUE_SHARE, PAID_LOG_SD } from "./value";

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = { "ruled-out": "ruled out", "needs-testing-first": "test first", suitable: "suitable" };
const CARE_WORDS: Readonly<Record<CareColumn | "wool", string>> = {
  wool: "wool", "wool-knotted": "wool, knotted", "wool-tufted": "wool, tufted", silk: "silk", viscose: "viscose", "wool-viscose": "wool and viscose", cotton: "cotton and other plant fibre",
  jute: "jute and sisal", synthetics: "synthetics", unclear: "unclear",
};
/** Where a caution or a note names something that is no cause. */
const KNOWN_WORDS: Readonly<Record<string, string>> = { antique: "an antique", flood: "flood or waste water", "wet-now": "wet now", "latex-back": "a back that latex seems to hold", "dye-moved": "a colour moved in the dye test", "dye-doubtful": "the dye test left a doubt" };
const whenWords = (when: string) => KNOWN_WORDS[when] ?? mechanismName(when as DamageId);
const methodNames = (ids: readonly MethodId[]) => ids.map((m) => METHODS[m].name).join("; ");
/** One named number with the source of the object it stands in. */
const single = <K extends string>(of: Source & Readonly<Record<NoInfer<K>, number>>, names: Readonly<Record<K, string>>) =>
  ({ rows: fieldsOf<K, number>(of, names), cells: (x: number) => [x], source: { how: of.how, source: of.source } });

const prospects: FactTable[] = [
  factTable({
    id: "improvement", part: "prospects", name: "How far it comes back", about: "Improvement of the affected spot with the best method the pile allows, in per cent of the difference in colour: one in ten lies under the first figure, half under the second, nine in ten under the third.",
    columns: COLUMNS.map((c) => number(columnName(c), "range")), rows: placesIn(IMPROVEMENT, (_, r) => r.name), cells: (r) => COLUMNS.map((c) => r.cells[c]),
  }),
  factTable<{ readonly fresh: RowId; readonly old: RowId }>({
    id: "rows-of", part: "prospects", name: "Which row answers which cause", about: "While it is fresh, and when it is older.",
    columns: [text("fresh"), text("older")], rows: placesIn(ROWS_OF, (m) => mechanismName(m as DamageId)).filter((p): p is Place<{ fresh: RowId; old: RowId }> => p.row !== null),
    cells: (r) => [IMPROVEMENT[r.fresh].name, IMPROVEMENT[r.old].name], source: judged("a water mark is a tide line and takes the rows of browning"),
  }),
  factTable<number>({ id: "brought-back", part: "prospects", name: "What counts as brought back", about: "Under this the owner still sees the same mark.", columns: [number("improvement", "percent")], ...single(BROUGHT_BACK, { leastPerCent: "The least improvement" }) }),
  factTable<TextureRow>({
    id: "texture", part: "prospects", name: "What happens to the texture", about: "The pile’s texture, judged apart from its colour: how badly it suffers, from 1 (a little flat or rough) to 4 (burst or matted through), and the chance that a grade stays after cleaning.",
    columns: [...[1, 2, 3, 4].map((g) => chance(`grade ${g}`)), ...COLUMNS.map((c) => chance(`stays, ${columnName(c)}`))],
    rows: placesIn(TEXTURE, (_, r) => r.name), cells: (r) => [...r.now, ...COLUMNS.map((c) => r.stays[c])],
  }),
  factTable<OdourRow>({
    id: "odour", part: "prospects", name: "What happens to the smell", about: "Judged apart from the colour: the chance that a cause smells, and that its smell comes back in damp weather.",
    columns: [chance("smells"), chance("comes back")], rows: placesIn(ODOUR as Readonly<Record<string, OdourRow>>, (m) => mechanismName(m as DamageId)), cells: (r) => [r.smells, r.returns],
  }),
  factTable<number>({ id: "odour-unexplained", part: "prospects", name: "A smell that nothing explains", about: "One that was told and that no cause of the table before carries.", columns: [chance("comes back")], ...single(UNEXPLAINED_ODOUR, { returns: "Chance that it comes back" }) }),
  factTable<WorseRow>({
    id: "worse", part: "prospects", name: "What a method can make worse", about: "The chance that cleaning with little moisture or solvent, or with water, makes it worse.",
    columns: [chance("gentle"), chance("wet")], rows: placesIn(WORSE, (c) => columnName(c as (typeof COLUMNS)[number])), cells: (r) => [r.gentle, r.wet],
  }),
  factTable<number>({ id: "old-latex", part: "prospects", name: "Old latex", about: "The same chance where a tufted back is old.", columns: [number("value")], ...single(WORSE_OLD_LATEX, { chance: "Chance that it gets worse", fromYears: "Old from so many years on" }) }),
  factTable<number>({ id: "after-test", part: "prospects", name: "Once a hidden corner was tested", about: "What remains of the chance of getting worse.", columns: [chance("share")], ...single(WORSE_AFTER_TEST, { share: "What remains" }) }),
];

const methods: FactTable[] = [
  factTable<(typeof METHODS)[MethodId]>({
    id: "methods", part: "prospects", name: "Which method for which pile", about: "Ruled out, to be tested first, or suitable.",
    columns: CARE_COLUMNS.map((c) => text(CARE_WORDS[c])), rows: placesIn(METHODS, (_, r) => r.name),
    cells: (r) => CARE_COLUMNS.map((c) => (r.dyeTestOnly.includes(c) ? "dye test first" : VERDICT_WORDS[r.cells[c]])),
  }),
  factTable<readonly (CareColumn | "wool")[]>({
    id: "care-columns", part: "prospects", name: "Which column speaks for which fibre", about: "Where several do, the strictest rules.",
    columns: [text("columns")], rows: placesIn(CARE_COLUMNS_OF, (f) => fibreName(f as FibreId)), cells: (cs) => [cs.map((c) => CARE_WORDS[c]).join("; ")], source: PRACTICE,
  }),
  factTable<number>({
    id: "verdict-limits", part: "prospects", name: "Where a verdict turns", about: "From which chance of a pile that forbids it a method is ruled out, and below which it is suitable.",
    columns: [chance("chance")], ...single(VERDICT_LIMITS, { ruledOutFrom: "Ruled out from", suitableBelow: "Suitable below" }),
  }),
  factTable<CautionRow>({
    id: "cautions", part: "prospects", name: "What asks for more care", about: "What was found on the rug itself, and what it makes of a method from that chance on.",
    columns: [text("methods"), text("at most"), chance("from")], rows: placesIn(CAUTIONS, (_, r) => whenWords(r.when)), cells: (r) => [methodNames(r.methods), VERDICT_WORDS[r.atMost], r.from],
  }),
  factTable<DamageId>({
    id: "handled-as", part: "prospects", name: "What a change is handled as", about: "A change that was told, as the work of this cause however unlikely it is, since water or a solvent may do what cannot be undone; a colour that ran no more once every colour has held in a dye test.",
    columns: [text("cause")], rows: placesIn(HANDLED_AS as Readonly<Record<string, DamageId>>, (change) => answerInWords(`changes:${change}`)), cells: (cause) => [mechanismName(cause)], source: PRACTICE,
  }),
  factTable<CareWords>({
    id: "care-words", part: "prospects", name: "What some fibres ask for", about: "What is said of a method where each of these may be in the pile.",
    columns: [text("where there may be"), text("what is said")], rows: placesIn(OF_FIBRES, (_, r) => METHODS[r.method].name), cells: (r) => [r.of.map((ids) => ids.map(fibreName).join(", ")).join("; "), r.say],
  }),
  factTable<number>({ id: "may-be", part: "prospects", name: "When a fibre may be in the pile", about: "From this chance of all that ask for the same care together.", columns: [chance("chance")], ...single(MAY_BE_FROM, { chance: "May be from" }) }),
  factTable<LeftRow>({
    id: "left-as-it-is", part: "prospects", name: "What goes on by itself", about: "What leaving it as it is means, from that chance on: ruled out where the trouble harms people, spreads or is wet.",
    columns: [text("verdict"), text("what is said"), chance("from")], rows: placesIn(LEFT_AS_IT_IS, (_, r) => whenWords(r.when)), cells: (r) => [VERDICT_WORDS[r.verdict], r.say, r.from],
  }),
];

const MADE = { knotted: "knotted", tufted: "tufted", machine: "by machine" } as const;
const isLife = (row: LifeRow | Readonly<Record<Construction, LifeRow>>): row is LifeRow => "medianYears" in row;
const lives = FIBRE_IDS.flatMap((f): Place<LifeRow>[] => {
  const row = LIFE[f];
  if (isLife(row)) return [{ in: LIFE, key: f, row, name: fibreName(f) }];
  return CONSTRUCTIONS.map((c) => ({ in: row, under: f, key: c, row: row[c], name: `${fibreName(f)}, ${MADE[c]}` }));
});

const life: FactTable[] = [
  factTable<LifeRow>({
    id: "life", part: "life", name: "Life from new", about: "Years in an ordinary living room until the owner would replace it, or restoring it would cost more than it is worth: the middle, and the shape of a Weibull law.",
    columns: [number("middle", "years"), number("shape")], rows: lives, cells: (r) => [r.medianYears, r.shape],
  }),
  factTable({
    id: "life-factors", part: "life", name: "What shortens or lengthens it", about: "Factor on the middle.",
    columns: [number("factor", "times"), text("only for")], rows: placesIn(LIFE_FACTORS, (_, r) => answerInWords(r.when)), cells: (r) => [r.times, r.only?.map(fibreName).join("; ") ?? null],
  }),
  factTable({
    id: "wear", part: "life", name: "Wear that is seen", about: "Outweighs age: the share of a new rug’s middle life that is left at most.",
    columns: [chance("share")], rows: placesIn(WEAR_LEFT, (_, r) => answerInWords(`changes:${r.change}`)), cells: (r) => [r.share],
  }),
  factTable({
    id: "ages", part: "life", name: "Ages behind an answer", about: "Years that an answer stands for, and their shares.",
    columns: [text("years and shares")], rows: placesIn(AGES, (a) => (a === "unknown" ? "Nobody said" : answerInWords(`age:${a}`))), cells: (r) => [r.years.map(([y, share]) => `${y} (${share})`).join("; ")],
  }),
  factTable<number>({ id: "survival", part: "life", name: "What age says of the fibre", about: "How far the chance of having lived so long reweighs the fibres, as a power.", columns: [number("power")], ...single(SURVIVAL_TEMPER, { power: "Power" }) }),
];

const CLASS_WORDS: Readonly<Record<DepreciationClass, string>> = { "hand-knotted": "knotted by hand", carpet: "carpet", light: "light carpet", "plant-fibre": "plant fibre", "short-lived": "short-lived" };
const classes = FIBRE_IDS.flatMap((f): Place<DepreciationClass>[] => {
  const row = DEPRECIATION_CLASS[f];
  if (typeof row === "string") return [{ in: DEPRECIATION_CLASS, key: f, row, name: fibreName(f) }];
  return CONSTRUCTIONS.map((c) => ({ in: row, under: f, key: c, row: row[c], name: `${fibreName(f)}, ${MADE[c]}` }));
});
const value: FactTable[] = [
  factTable({
    id: "useful-lives", part: "money", name: "Published useful lives", about: "Years over which a floor covering loses its price new, in a straight line; tables that contradict each other count alike.",
    columns: [number("years", "years")], rows: placesIn(USEFUL_LIVES, (_, r) => CLASS_WORDS[r.of]), cells: (r) => [r.years],
  }),
  factTable<DepreciationClass>({ id: "depreciation-class", part: "money", name: "Which table for which rug", about: "The class of a pile in those tables.", columns: [text("class")], rows: classes, cells: (c) => [CLASS_WORDS[c]], source: judged("which pile falls in which class") }),
  factTable<number>({ id: "heavy-wear", part: "money", name: "Heavy wear", about: "Counts as more years of use.", columns: [number("factor", "times")], rows: fieldsOf(HEAVY_WEAR, { times: "Years of use count" }) as Place<number>[], cells: (x) => [x], source: { how: HEAVY_WEAR.how, source: HEAVY_WEAR.source } }),
  factTable<readonly string[]>({ id: "worn", part: "money", name: "What counts as heavy wear", about: "Any of these.", columns: [text("changes")], rows: fieldsOf(HEAVY_WEAR as { changes: readonly string[] }, { changes: "Changes" }), cells: (cs) => [cs.map((c) => answerInWords(`changes:${c}`)).join("; ")], source: { how: HEAVY_WEAR.how, source: HEAVY_WEAR.source } }),
  factTable<number>({ id: "tables-end", part: "money", name: "Where the tables end", about: "Past this age a valuer says what a hand-knotted rug is worth.", columns: [number("years", "years")], ...single(TABLES_END, { years: "Knotted by hand" }) }),
  factTable<number>({ id: "cleaning-spread", part: "money", name: "What a clean costs", about: "Factors on the workshop’s own rate.", columns: [number("factor", "times")], ...single(CLEANING_SPREAD, { low: "At the least", median: "In the middle", high: "Hand work" }) }),
  factTable<number>({ id: "cut-down", part: "money", name: "New edges", about: "Centimetres of turn added to each edge that is bound anew.", columns: [number("cm")], ...single(CUT_DOWN, { turnCm: "Turn" }) }),
  factTable<number>({ id: "least-value", part: "money", name: "The least a rug is worth", about: "A rug that still serves keeps at least this share of its price new.", columns: [chance("share")], ...single(LEAST_VALUE_SHARE, { share: "Share" }) }),
  factTable<number>({ id: "paid-spread", part: "money", name: "What was paid", about: "Spread of the logarithm of a replacement’s price around what was once paid.", columns: [number("spread")], ...single(PAID_LOG_SD, { value: "Spread" }) }),
];

/** What cleaning can do, which method is allowed, how long it lasts and what it is worth. */
export const OUTLOOK_TABLES: readonly FactTable[] = [...prospects, ...methods, ...life, ...value];
