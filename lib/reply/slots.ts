import type { FibreId } from "../trade/fibres";
import { FIRST_AID, firstAidSentences, type ShortLine } from "../trade/first-aid";
import type { Tone } from "../trade/tones";
import type { Assessment, MethodId } from "../triage/assessment";
import type { Strength } from "../triage/finding";
import { emergencyIn, firstAidIn, gasIn } from "../words/first-aid";
import type { Locale } from "../words/locales";
import type { AreaUnit } from "../words/measures";
import { referralIn } from "../words/referral";
import { wordsIn, type Words } from "../words/words";
import { askLine, asksOf } from "./asks";
import { cleaning, labelTextOf, keptByCut, likelyMechanisms, plannedCut, replacePrice, sawPhotos, strengthsOf, type Came, type HowMoved, type Moved, type RugForDraft } from "./facts";
import { beyondTold, unexplainedChanges } from "./damage-told";
import { aidFits, emergencyStands, isGasTold, wasCleanedAtHome, type Aided } from "./happened";
import { mendsPhrase, shareOf } from "./mended";
import { fibreInLetter } from "./greater-first";
import { greetingName } from "./greeting-name";
import { labelFibre, namedFibres } from "./label-said";
import type { ParagraphRow } from "./paragraphs/row";
import { type SlotName } from "./slot-words";
import { colourIn, colourName, plain, titleIn } from "./rug-title";
import { cutDownPhrase } from "./cut-down-price";
import { repairNamed } from "./repair-named";
import { rangeInHundred } from "./documents/chances";
import { AMOUNT_PHRASES, beyondLikely, cappedWord, chanceWord, harmRange, improvementPhrase, lifePhrase, likelihood, listed, percent, weeksPhrase, yearsEnd } from "./phrases";

/** What a draft needs to know of the workshop. */
export interface WorkshopForDraft {
  name: string;
  telephone: string;
  /** ISO 4217. */
  currency: string;
  signature: string;
  emergencyNumber: string;
  /** How its letters write figures, and in which language; absent: en-GB. */
  locale?: Locale;
  /** In which sizes are told; absent: centimetres. */
  areaUnit?: AreaUnit;
  /** How its letters sound; absent: plain. */
  tone?: Tone;
  /** How a rug comes to it, in its own sentences; absent or empty: not said. */
  collecting?: string;
  /** How many weeks its work usually takes; absent or null: not said. */
  workWeeks?: { low: number; high: number } | null;
}
/** The words its letters are written in. */
export const wordsOf = ({ locale = "en-GB" }: WorkshopForDraft): Words => wordsIn(locale);

export interface SlotsInput {
  rug: RugForDraft;
  /** Counted from 1. */
  number: number;
  rugs: number;
  /** `email` null: no letter can be answered by mail. */
  client: { name: string; isTrade: boolean; email?: string | null | undefined };
  workshop: WorkshopForDraft;
  /** What came since our last letter; null or absent in a first one. */
  came?: Came | null;
}

const SOLD_AS = ["silk", "wool-and-silk"] as const;
/** How many methods a letter names. Elicited. */
const MOST_METHODS = 2;

const fibre = (id: FibreId | undefined, a: Assessment, words: Words) => (id ? fibreInLetter(id, a, { words }) : words.say("letter.something-else"));

/** A fibre this many times as probable as the one that comes next fits best, and both do not fit alike. Elicited. */
const FAR_AHEAD = 2;
/** {fit}, {fitBetter}: the two most probable fibres, and whether one is far ahead. `beside`: set against what it was sold as. */
function fitIn(a: Assessment, words: Words, beside: boolean): string {
  const [leading, rival] = namedFibres(a);
  const chance = (id: FibreId | undefined) => a.fibres.find((f) => f.fibre === id)?.probability ?? 0;
  const isAhead = chance(leading) >= FAR_AHEAD * chance(rival);
  return words.say("letter.fits", { fibre: fibre(leading, a, words), rival: fibre(rival, a, words), ahead: isAhead ? "yes" : "no", better: beside ? "yes" : "no" });
}

/** What a label is quoted with: where it is short and nothing but words and shares, as it stands; else nothing. */
function labelQuote(text: string | undefined): string | null {
  const label = plain(text ?? "");
  return /^[\p{L}\p{M}\d %.,:/&-]{2,40}$/u.test(label) ? label : null;
}

/** What a letter says it goes by: one label once, by its photo; photos come last, and only where no label in one of them is named already. */
function evidenceKinds({ assessment: a, labelShown = false, labelHeard = false }: RugForDraft): Strength[] {
  const all = strengthsOf(a).filter((s) => s !== "photo");
  const kinds = all.filter((s) => s !== "label-typed" || !all.includes("label-photo"));
  const isLabelSeen = kinds.includes("label-photo") || (labelShown && !labelHeard && kinds.includes("label-typed"));
  return sawPhotos(a) && !isLabelSeen ? [...kinds, "photo"] : kinds;
}

/** More photos than one where nobody counted them. */
function evidenceWords(kind: Strength, { photos = 2, labelHeard = false, labelShown = false }: RugForDraft, { say }: Words): string {
  if (kind === "photo") return say("evidence.photo", { n: photos });
  return say(kind !== "label-typed" ? `evidence.${kind}` : labelHeard ? "evidence.label-heard" : labelShown ? "evidence.label-shown" : "evidence.label-typed");
}

function evidence(rug: RugForDraft, words: Words): string {
  const { assessment, answers } = rug;
  const kinds = evidenceKinds(rug);
  const quoted = kinds.find((s) => s.startsWith("label-"));
  const quote = labelQuote(labelTextOf(assessment) ?? answers.labelText);
  const said = kinds.map((s) => (s === quoted && quote ? words.say("letter.label-quoted", { label: evidenceWords(s, rug, words), words: quote }) : evidenceWords(s, rug, words)));
  return said.length ? listed(said, "and", words) : words.say("letter.message-alone");
}

/** "your grey rug" where the title begins with its colour, "your customer’s rug" for the trade, "this rug" among several. */
function rugPhrase({ rug: { title }, rugs, client }: SlotsInput, words: Words): string {
  const { say } = words;
  if (rugs > 1) return say("letter.this-rug");
  if (client.isTrade) return say("letter.customers-rug");
  const colour = colourIn(title);
  return colour ? say("letter.coloured-rug", { colour: colourName(colour, words) }) : say("letter.your-rug");
}

/**
 * The cleaning a letter speaks of: what needs no more than the usual test first, then what needs testing; never more than
 * two. Where a full wash is ruled out the letter says that we do not wash it, so an earlier assessment that still left washing by hand
 * to a test has it named only where no dry way is left.
 */
function offeredMethods(a: Assessment): MethodId[] {
  const isWashed = a.methods.some((m) => m.method === "immersion-wash" && m.verdict !== "ruled-out");
  const allowed = cleaning(a).filter((m) => m.verdict !== "ruled-out");
  const dry = allowed.filter((m) => m.method !== "wet-hand-clean");
  const last = (m: Assessment["methods"][number]) => Number(m.verdict !== "suitable");
  return (isWashed || dry.length === 0 ? allowed : dry).sort((x, y) => last(x) - last(y)).slice(0, MOST_METHODS).map((m) => m.method);
}

/** "your message, your answers and the new photo"; null where nothing came. */
function cameIn({ message, times = 1, answers, photos }: Came, words: Words): string | null {
  const all = [...(message ? [words.say("letter.came-message", { n: times })] : []), ...(answers ? [words.say("letter.came-answers")] : []), ...(photos > 0 ? [words.say("letter.came-photos", { n: photos })] : [])];
  return all.length > 0 ? listed(all, "and", words) : null;
}

/** A letter names so many subjects of what moved; the rest follows from them. Elicited. */
const MOST_TOPICS = 3;
/** "what it is made of, how far rug 2 may come back and what cleaning it costs"; null where nothing moved so. The rugs of topics that are not so of all are named once, after those that are. */
function topicsIn(how: HowMoved, moved: Moved | undefined, { words, most, rugs }: { words: Words; most: number; rugs: number }): string | null {
  const [topics, of] = [moved?.[how] ?? [], moved?.rugsOf?.[how] ?? {}];
  const named = topics.slice(0, most);
  const said = [undefined, ...new Map(named.flatMap((id) => (of[id] ? [[of[id].join(), of[id]] as const] : []))).values()].flatMap((which) => {
    const n = which?.length ?? 1;
    const name = which && sharersIn(which, { rugs, words });
    return named.filter((id) => of[id]?.join() === which?.join()).map((id, at) => {
      const isNamed = name !== undefined && at === 0;
      return words.say(`topic.${id}`, { n, which: which ? "some" : "all", they: isNamed ? name : words.say("topic.they", { n }), them: isNamed ? name : words.say("topic.them", { n }) });
    });
  });
  const all = [...said, ...(topics.length > most ? [words.say("topic.more")] : [])];
  return all.length > 0 ? listed(all, "and", words) : null;
}

/** How the plan calls the way of cutting the rug down that was chosen on it; null where none was. */
function cutWay(a: Assessment, words: Words): string | null {
  const key = plannedCut(a);
  const kept = keptByCut(a);
  return key && words.say("letter.cut-way", { way: words.table(key), share: kept === null ? "no" : percent(Math.round(kept * 100)) });
}

const lines = (sentences: readonly string[]) => sentences.map((s) => `– ${s}`).join("\n");

/** Whom to call, by what was told of any of these rugs. */
const emergencyOf = (rugs: readonly RugForDraft[], workshop: WorkshopForDraft): string => (rugs.some(({ answers }) => isGasTold(answers)) ? gasIn : emergencyIn)(wordsOf(workshop), workshop.emergencyNumber);

const shortIn = (line: ShortLine, words: Words): string => words.table(`first-aid.short.${FIRST_AID.inShort.indexOf(line)}`);
/** The lines of first aid that let somebody touch the rug. */
export const mayTouchIn = (words: Words): string[] => FIRST_AID.inShort.filter(({ fits }) => fits === "may-touch").map((line) => shortIn(line, words));
/** What may be done to one of the rugs that first aid is due for, and not to all of them. */
export const ownAidIn = (rug: Aided, due: readonly Aided[], words: Words): string => {
  const all = aidFits(due);
  return lines(aidFits([rug]).filter((line) => !all.includes(line)).map((line) => shortIn(line, words)));
};
/** First aid in a few lines, those that fit what was told of all of these rugs: whom to call stands first where something told can hurt, or nobody has been asked yet, and nowhere where nothing can. */
export function aidInShort(rugs: readonly RugForDraft[], workshop: WorkshopForDraft): string {
  const words = wordsOf(workshop);
  const short = aidFits(rugs).map((line) => shortIn(line, words));
  const call = rugs.some(({ wetByWords }) => wetByWords) ? "first" : emergencyStands(rugs.map(({ answers }) => answers));
  const emergency = emergencyOf(rugs, workshop);
  return lines([...(call === "first" ? [emergency] : []), ...short, ...(call === "last" ? [emergency] : [])]);
}

/** {chance} is that of the paragraph and stands in no rug's slots. */
export type Slots = Record<Exclude<SlotName, "chance">, string | null>;

/** The value of every slot for one rug, {chance} apart; null where the assessment has none. */
export function slotsOf(input: SlotsInput): Slots {
  const { rug, client, workshop, number, came = null } = input;
  const a = rug.assessment;
  const words = wordsOf(workshop);
  const sold = SOLD_AS.find((id) => id === rug.answers.sellerSaid);
  const [leading, rival] = namedFibres(a);
  const says = labelFibre(a);
  const money = (amount: keyof typeof AMOUNT_PHRASES) => {
    const value = a.money?.[amount];
    return value ? AMOUNT_PHRASES[amount](value, a.money?.currency ?? workshop.currency, words) : null;
  };
  const offered = offeredMethods(a);
  const isGas = isGasTold(rug.answers);
  const asks = asksOf(rug, likelyMechanisms(a));
  const asked = { words, hasPage: client.email !== null };
  return {
    name: greetingName(client.name), title: titleIn(plain(rug.title), words, workshop.areaUnit ?? "m2"), number: String(number), sharers: null, untouched: null, rug: rugPhrase(input, words),
    fibre: fibre(leading, a, words), rival: fibre(rival, a, words), fit: fitIn(a, words, false), fitBetter: fitIn(a, words, true), likely: chanceWord(cappedWord(a.fibres.find((f) => f.fibre === leading)?.words ?? ""), words),
    labelSays: says && fibreInLetter(says, a, { words, by: "label" }),
    evidence: evidence(rug, words), soldAs: sold ? words.say(`sold.${sold}`) : null,
    improvement: a.improvement && improvementPhrase(a.improvement, words), mends: mendsPhrase(a, words), ofWhat: a.improvement && shareOf(a, words), unexplained: unexplainedIn(a, words), life: a.lifeYears && lifePhrase(a.lifeYears, words),
    lifeLow: a.lifeYears && yearsEnd(a.lifeYears.low, words), lifeHigh: a.lifeYears && yearsEnd(a.lifeYears.high, words),
    worse: a.worse === null ? null : rangeInHundred(harmRange(a.worse), words), beyond: beyondIn(rug, words), ...seenIn(rug),
    atHome: words.say(wasCleanedAtHome(rug.answers) ? "letter.at-home-again" : "letter.at-home"),
    methods: offered.length ? listed(offered.map((m) => words.say(`method.${m}`)), "or", words) : null,
    clean: money("clean"), cutDown: a.money && cutDownPhrase(a, a.money.currency, words), cutWay: cutWay(a, words), replace: replacePrice(a) && money("replace"), worthToday: money("valueToday"), repair: repairNamed(a, rug.answers, words),
    asks: asks.listed.map((q) => askLine(q, a, asked)).join("\n") || null, ask: asks.one && askLine(asks.one, a, asked),
    firstAid: a.firstAid && lines(firstAidIn(words, isGas ? firstAidSentences(workshop.emergencyNumber, true, true) : a.firstAid, workshop.emergencyNumber)), firstAidInShort: aidInShort([rug], workshop), ownAid: null,
    emergency: emergencyOf([rug], workshop),
    referTo: a.advice.referTo && referralIn(words, a.advice.referTo), came: came ? cameIn(came, words) : null,
    changed: topicsIn("changed", came?.moved, { words, most: MOST_TOPICS, rugs: input.rugs }), gone: topicsIn("gone", came?.moved, { words, most: Infinity, rugs: input.rugs }), waits: topicsIn("waits", came?.moved, { words, most: MOST_TOPICS, rugs: input.rugs }), telephone: workshop.telephone || null, reach: workshop.telephone === "" ? null : words.say(client.email === null ? "letter.ring" : "letter.ring-or-answer", { telephone: workshop.telephone }),
    collecting: workshop.collecting || null, weeks: workshop.workWeeks ? weeksPhrase(workshop.workWeeks, words) : null,
    signature: workshop.signature.trim() || workshop.name,
  };
}

/** Who inspected it, and when; null where nobody did. */
export const seenIn = ({ inspection }: Pick<RugForDraft, "inspection">): Pick<Slots, "inspector" | "inspectedOn"> =>
  ({ inspector: inspection ? plain(inspection.by) : null, inspectedOn: inspection?.on ?? null });

/** {unexplained}: null where there is none. */
function unexplainedIn(a: Assessment, words: Words): string | null {
  const changes = unexplainedChanges(a, likelyMechanisms(a));
  return changes.length > 0 ? listed(changes.map((id) => words.say(`change.${id}`)), "and", words) : null;
}

/** {beyond}: null where nothing is told of it, as of an old piece, whose worth is a question for a valuer, and once a person has judged it. */
function beyondIn({ assessment, inspection, answers }: RugForDraft, words: Words): string | null {
  const chance = inspection || answers.age === "antique" ? null : beyondTold(assessment);
  return chance === null ? null : beyondLikely(chance, words);
}

/** {sharers}: "the two rugs", or "rugs 1 and 3" of more, or "rug 1". `which`: counted from 0. */
export const sharersIn = (which: readonly number[], { rugs, words }: { rugs: number; words: Words }): string =>
  which.length === rugs ? words.say("letter.all-rugs", { n: rugs }) : words.say("letter.some-rugs", { n: which.length, numbers: listed(which.map((at) => String(at + 1)), "and", words) });

/** {chance}: how probable the mechanism is that a paragraph speaks about; null where it speaks about none. */
export function chanceOf(a: Assessment, row: ParagraphRow, words: Words): string | null {
  const chance = a.mechanisms.find((m) => m.mechanism === row.about)?.probability;
  return chance === undefined ? null : likelihood(chance, words);
}
