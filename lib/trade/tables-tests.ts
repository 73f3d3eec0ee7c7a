import { signInWords } from "./answer-words";
import { BENCH_RESPONSES, LEADING_READING, READING_POWERS } from "./bench-responses";
import { VOTE_WEIGHT, type ResponseTable } from "./bench-responses-rule";
import { BENCH_TESTS, type BenchTestRow, type TestId } from "./bench-tests";
import { mechanismName, type DamageId } from "./damage";
import { FIBRE_IDS, fibreName, type FibreId } from "./fibres";
import type { NamedFibre } from "./likelihood-table";
import { SIGNS, SIGN_LIMITS } from "./signs";
import { chance, factTable, fieldsOf, judged, number, numberAt, placesIn, text, type FactTable, type Place } from "./table";
import { COMPOSITION_TOLERANCE_PERCENT, LABORATORY_RIGHT, OTHER_YARN, YARNS, YARNS_SOURCE, YARN_IDS, type YarnRows } from "./yarns";

/** The name of a test for the public: what it is called, without strength or warmth. */
export const testName = (test: string): string => (BENCH_TESTS[test as TestId].name.split(",")[0] as string);
const readingOf = (t: ResponseTable) => (BENCH_TESTS[t.test as TestId] as BenchTestRow).readings[t.reading];
const labelOf = (t: ResponseTable, answer: string): string => {
  const reading = readingOf(t);
  return (reading?.kind === "choice" ? reading.answers[answer]?.label : undefined) ?? answer;
};

const responses = BENCH_RESPONSES.map((t) => factTable<readonly number[]>({
  id: `response-${t.test}-${t.reading}`, part: "tests", name: `${testName(t.test)}: ${readingOf(t)?.ask.replace(/\?$/u, "") ?? t.reading}`,
  about: "How often this is seen where the sample is of this fibre; statements that contradict each other all count, so the row is as wide as they are.",
  columns: t.answers.map((a) => chance(labelOf(t, a))), rows: placesIn(t.rows, (f) => fibreName(f as FibreId)), cells: (row) => row,
  source: (_, key) => t.rowSources[key as NamedFibre],
}));

const NAMED = FIBRE_IDS.filter((f): f is NamedFibre => f !== "other");
const YARN_WORDS = { whole: "a sample of the whole", field: "the field", accent: "the accent" } as const;
const yarnPlaces = NAMED.flatMap((f) => YARN_IDS.map((y): Place<YarnRows[typeof y]> => ({ in: YARNS[f], under: f, key: y, row: YARNS[f][y], name: `${fibreName(f)}: ${YARN_WORDS[y]}` })));

const samples: FactTable[] = [
  factTable({
    id: "yarns", part: "tests", name: "What a sample turns out to be", about: "A test speaks for the yarn that was sampled, and through this table for the pile; what is left is spread evenly.",
    columns: NAMED.map((f) => chance(fibreName(f))), rows: yarnPlaces, cells: (row) => NAMED.map((f) => row[f] ?? null), source: YARNS_SOURCE,
  }),
  factTable<{ readonly ofNamed: number; readonly ofOther: number }>({
    id: "other-yarn", part: "tests", name: "Yarns of something else", about: "Chance that a yarn is of no fibre we name, by whether the pile is.",
    columns: [chance("a pile of a named fibre"), chance("a pile of something else")], rows: placesIn(OTHER_YARN, (y) => YARN_WORDS[y as "field" | "accent"]), cells: (r) => [r.ofNamed, r.ofOther], source: YARNS_SOURCE,
  }),
  factTable<number>({
    id: "reading-powers", part: "tests", name: "Several readings of one test", about: "The power each reading keeps where so many were taken by the same eyes at the same time.",
    columns: [number("power")], rows: placesIn(READING_POWERS, (i) => `${Number(i) + 1} readings`), cells: (p) => [p], source: judged("readings of one test go wrong together"),
  }),
  factTable<number>({
    id: "laboratory", part: "tests", name: "Laboratory reports", about: "How far a report is believed, and when its figures count as a composition.",
    columns: [number("value")], cells: (x) => [x], source: judged("a report may be of another rug, another yarn, or hold a slip of the pen"),
    rows: [
      numberAt("yarns", "LABORATORY_RIGHT", LABORATORY_RIGHT, "Chance that it is of this sample, and right"),
      numberAt("yarns", "COMPOSITION_TOLERANCE_PERCENT", COMPOSITION_TOLERANCE_PERCENT, "Per cent by which the sum may miss a hundred"),
    ],
  }),
  factTable<string>({
    id: "leading-readings", part: "tests", name: "The reading that tells most", about: "What a test that has not been made yet is expected to tell.",
    columns: [text("reading")], rows: placesIn(LEADING_READING as Readonly<Record<string, string>>, testName),
    cells: (reading, test) => [(BENCH_TESTS[test as TestId] as BenchTestRow).readings[reading]?.ask ?? reading], source: judged("of the readings of a test, the one that separates best"),
  }),
  factTable<number>({
    id: "vote-weights", part: "tests", name: "How much a statement counts", about: "The weight of one statement among those a response is worked out from, by how it is known.",
    columns: [number("weight")], rows: placesIn(VOTE_WEIGHT, (how) => how), cells: (w) => [w], source: judged("a published text counts for two that are only remembered or of the trade"),
  }),
  factTable<BenchTestRow>({
    id: "bench-tests", part: "tests", name: "The tests", about: "What trained staff can test, what it tells, and what it takes of the rug.",
    columns: [text("tells"), text("takes"), number("minutes", "minutes")], rows: placesIn(BENCH_TESTS, testName), cells: (t) => [t.tells, t.takes.fibres, t.takes.minutes],
  }),
];

const MECHANISMS = Object.keys(SIGNS.alkaline.by).concat(...Object.values(SIGNS).map((s) => Object.keys(s.by))).filter((m, i, all) => all.indexOf(m) === i) as DamageId[];
const spots: FactTable[] = [
  factTable({
    id: "signs", part: "tests", for: "workshop", name: "What tests of a place show", about: "How often a sign is found where a cause holds, and where none that explains it does.",
    columns: [chance("none of them"), ...MECHANISMS.map((m) => chance(mechanismName(m)))], rows: placesIn(SIGNS, signInWords), cells: (r) => [r.none, ...MECHANISMS.map((m) => r.by[m] ?? null)],
  }),
  factTable<number>({
    id: "sign-limits", part: "tests", for: "workshop", name: "Where a reading becomes a sign", about: "From which reading on a place counts as alkaline, acid or wet.",
    columns: [number("reading")], cells: (x) => [x], source: { how: SIGN_LIMITS.how, source: SIGN_LIMITS.source },
    rows: fieldsOf(SIGN_LIMITS, {
      alkalineFrom: "Alkaline from this pH on", acidUpTo: "Acid up to this pH", differsBy: "Only where it differs by so much from an untouched place",
      wetterBy: "Wet where the meter shows so much more than in an untouched place", wetFrom: "Wet by itself from this reading on",
    }) as Place<number>[],
  }),
];

/** Tests, what they show by fibre and by cause, and what a sample speaks for. Those of places hold readings that are for the workshop only. */
export const TEST_TABLES: readonly FactTable[] = [...samples, ...responses, ...spots];
