import { answerInWords, findingInWords } from "./answer-words";
import { mechanismName, type MechanismId } from "./damage";
import { ONLY_INSPECTION } from "./inspection";
import { ACTIONS, FIRST_AID_MISDONE, LOSSES, NEEDS, REFERRALS, RISKS, SETTLES, type ActionId, type Factor, type LossRow } from "./losses";
import { PHOTO_KINDS, type PhotoKind } from "./questions";
import {
  ALWAYS_ASKED, ASKED_AFTER, BENCH_TEST, DAMAGE_PHOTOS, DAMAGE_QUESTIONS, FIBRE_PHOTOS, FIBRE_QUESTIONS, MOST_NEXT_QUESTIONS, PICTURE, WORTH_ASKING, type ValueRow,
} from "./questions-value";
import { chance, factTable, fieldsOf, judged, number, numberAt, placesIn, PRACTICE, text, type FactTable, type Place } from "./table";
import { CONDITIONS, URGENCY, type UrgencyRow } from "./urgency";
import { CHANCE_WORDS, CHANCE_WORDS_SOURCE } from "./words-for-chance";

const actionName = (id: string) => ACTIONS[id as ActionId].name;
const FACTOR_WORDS: Readonly<Record<string, string>> = {
  fails: "it fails", marked: "there is more than soil", worse: "it gets worse", sound: "there is no trouble", wet: "it is wet or fresh", specialist: "it is for a specialist",
  local: "the trouble is in one place", cheap: "cleaning costs more than it is worth", grounds: "a claim or a replacement fits", "as-sold": "it is what it was sold as", misdone: "first aid is misdone",
};
/** A chance of a risk row in words. */
export const factorInWords = (f: Factor): string => (f.startsWith("not:") ? `not: ${FACTOR_WORDS[f.slice(4)] ?? f}` : (FACTOR_WORDS[f] ?? f));
const photo = (kind: string) => PHOTO_KINDS[kind as PhotoKind].ask;

const decision: FactTable[] = [
  factTable<LossRow>({ id: "losses", part: "decision", name: "What a wrong answer costs", about: "In the unit of one ordinary clean; a workshop may set its own.", columns: [number("loss", "cleans")], rows: placesIn(LOSSES, (_, r) => r.what), cells: (r) => [r.loss] }),
  factTable({
    id: "risks", part: "decision", name: "What each action risks", about: "An action’s expected loss is the sum of these, each times the chances named.",
    columns: [text("loss"), text("where")], rows: placesIn(RISKS, (_, r) => actionName(r.action)), cells: (r) => [LOSSES[r.loss].what, r.when.map(factorInWords).join(" and ") || "always"],
    source: judged("which losses an action can bring"),
  }),
  factTable<readonly string[]>({
    id: "needs", part: "decision", name: "What must hold first", about: "An action is not advised at all before this holds.", columns: [text("needs")],
    rows: placesIn(NEEDS as Readonly<Record<string, readonly string[]>>, actionName), cells: (n) => [n.map((x) => (x === "placed" ? "size and place of the damage are known" : "it is no antique")).join("; ")], source: PRACTICE,
  }),
  factTable<number>({ id: "first-aid-misdone", part: "decision", name: "First aid misread", about: "Chance that it harms all the same.", columns: [chance("chance")], rows: fieldsOf(FIRST_AID_MISDONE, { chance: "It harms" }) as Place<number>[], cells: (x) => [x], source: { how: FIRST_AID_MISDONE.how, source: FIRST_AID_MISDONE.source } }),
  factTable<number>({
    id: "settles", part: "decision", name: "What asking and inspecting settle", about: "The share of what is open that they settle.", columns: [chance("share")], cells: (x) => [x], source: { how: SETTLES.how, source: SETTLES.source },
    rows: fieldsOf(SETTLES, { asking: "Asking", placing: "Asking for size and place", inspecting: "An inspection with tests", inspectingOutcome: "Whether a mark comes back, by an inspection", benchUnasked: "Piles that need a test though nobody asked" }) as Place<number>[],
  }),
  factTable({ id: "referrals", part: "decision", name: "Who it goes to", about: "The first row that holds from that chance on.", columns: [text("to"), chance("from")], rows: placesIn(REFERRALS, (_, r) => r.when), cells: (r) => [r.to, r.from], source: PRACTICE }),
  factTable({
    id: "inspection", part: "decision", name: "What only an inspection can settle", about: "Said always, or from that chance of a cause on.", columns: [text("where"), chance("from")],
    rows: placesIn(ONLY_INSPECTION, (_, r) => r.say), source: PRACTICE,
    cells: (r) => [r.when?.answer ? answerInWords(r.when.answer) : r.when?.mechanism ? mechanismName(r.when.mechanism as MechanismId) : "always", r.when?.from ?? null],
  }),
];

const LEVEL_WORDS: Readonly<Record<UrgencyRow["level"], string>> = { hours: "within hours", "two-days": "within two days", "a-week": "within a week", "can-wait": "can wait" };
const conditionOf = (r: UrgencyRow): string => [
  ...(r.mayBeGas ? ["bleach, and what it can give off gas with"] : []),
  ...(r.all ?? []).map(answerInWords), ...(r.unanswered ?? []).map((q) => `nobody answered: ${findingInWords(q)}`),
  ...(r.likely ? [`${mechanismName(r.likely.mechanism as MechanismId)} from ${Math.round(r.likely.from * 100)} %`] : []),
].join("; ") || "otherwise";
const urgency: FactTable[] = [
  factTable<UrgencyRow>({ id: "urgency", part: "decision", name: "What cannot wait", about: "What is lost by waiting; the first row that holds rules.", columns: [text("where"), text("because")], rows: placesIn(URGENCY, (_, r) => LEVEL_WORDS[r.level]), cells: (r) => [conditionOf(r), r.why] }),
  factTable({
    id: "conditions", part: "decision", name: "What those conditions mean", about: "Any of the first, and, where there are any, one of the second.", columns: [text("any of"), text("and any of")],
    rows: placesIn(CONDITIONS, answerInWords), cells: (c) => [c.anyOf.map(answerInWords).join("; "), c.andAnyOf?.map(answerInWords).join("; ") ?? null], source: PRACTICE,
  }),
];

const asking: FactTable[] = [
  factTable<ValueRow>({
    id: "damage-questions", part: "decision", name: "What a question settles of the damage", about: "The share of what is open that a sure answer or a photo settles; those of the fibre are valued by their own tables.", columns: [chance("share")],
    rows: [...placesIn(DAMAGE_QUESTIONS as Readonly<Record<string, ValueRow>>, findingInWords), ...placesIn(DAMAGE_PHOTOS as Readonly<Record<string, ValueRow>>, (k) => `Photo: ${photo(k).toLowerCase()}`)], cells: (r) => [r.settles],
  }),
  factTable<string>({
    id: "fibre-photos", part: "decision", name: "Photos that answer a question of the fibre", about: "Better than words do.", columns: [text("answers")],
    rows: placesIn(FIBRE_PHOTOS as Readonly<Record<string, string>>, photo), cells: (q) => [findingInWords(q)], source: judged("what a photo shows"),
  }),
  factTable<string>({ id: "fibre-questions", part: "decision", name: "Questions of the fibre", about: "Those that may be asked in words.", columns: [], rows: placesIn(FIBRE_QUESTIONS as readonly string[], (_, q) => findingInWords(q)), cells: () => [], source: judged("what a layperson can tell") }),
  factTable({
    id: "asked-after", part: "decision", name: "Only asked after another answer", about: "Not worth asking before one of these is there.", columns: [text("any of")],
    rows: placesIn(ASKED_AFTER as Readonly<Record<string, { readonly anyOf: readonly string[] }>>, findingInWords), cells: (r) => [r.anyOf.map(answerInWords).join("; ")], source: PRACTICE,
  }),
  factTable({ id: "always-asked", part: "decision", name: "Always asked", about: "Whatever it is worth to the decision.", columns: [text("because")], rows: placesIn(ALWAYS_ASKED, (_, r) => findingInWords(r.id)), cells: (r) => [r.why], source: PRACTICE }),
  factTable<number>({
    id: "worth-asking", part: "decision", name: "When asking is worth it", about: "The drop in expected loss below which no single answer changes what we do, how many questions are proposed, and what a bench test takes.", columns: [number("value")], cells: (x) => [x],
    source: { how: WORTH_ASKING.how, source: WORTH_ASKING.source },
    rows: [
      ...(fieldsOf(WORTH_ASKING, { drop: "The least drop, in cleans" }) as Place<number>[]),
      ...(fieldsOf(BENCH_TEST, { minutes: "Minutes of a bench test that cost its trouble once", openFrom: "A test is proposed while the fibre is open by so much" }) as Place<number>[]),
      numberAt("questions-value", "MOST_NEXT_QUESTIONS", MOST_NEXT_QUESTIONS, "The most questions proposed at once"),
    ],
  }),
  factTable<number>({ id: "picture", part: "decision", name: "The whole picture", about: "How much of it each answer is; what is missing is open to asking.", columns: [chance("share")], rows: placesIn(PICTURE, findingInWords), cells: (x) => [x], source: judged("what a desk would want to know before it answers") }),
];

const words: FactTable[] = [
  factTable({ id: "chance-words", part: "words", name: "Words for a chance", about: "The word and the band of chances it covers.", columns: [number("from", "percent"), number("to", "percent")], rows: placesIn(CHANCE_WORDS, (_, r) => r.words), cells: (r) => [r.from, r.to], source: CHANCE_WORDS_SOURCE }),
];

/** What we advise and ask, what cannot wait, and the words for chances. First aid has its own page. */
export const DECISION_TABLES: readonly FactTable[] = [...decision, ...urgency, ...asking, ...words];
