import { FIBRES, type FibreId } from "../trade/fibres";
import { FIRST_AID, firstAidInShort } from "../trade/first-aid";
import type { Tone } from "../trade/tones";
import type { Assessment, MethodId } from "../triage/assessment";
import type { Strength } from "../triage/finding";
import { askLine, asksOf } from "./asks";
import { COLOUR_WORDS } from "./colour-word";
import { cleaning, labelFibre, likelyMechanisms, namedFibres, replacePrice, strengthsOf, type RugForDraft } from "./facts";
import type { ParagraphRow } from "./paragraphs/row";
import { fillWith, isSlot, slotsIn, type SlotName } from "./slot-words";
import { cappedWord, chancePhrase, improvementPhrase, likelihood, listed, moneyPhrase, yearsEnd, yearsPhrase } from "./phrases";

/** What a draft needs to know of the workshop. */
export interface WorkshopForDraft {
  name: string;
  telephone: string;
  /** ISO 4217. */
  currency: string;
  signature: string;
  emergencyNumber: string;
  /** How its letters sound; absent: plain. */
  tone?: Tone;
}
export interface SlotsInput {
  rug: RugForDraft;
  /** Counted from 1. */
  number: number;
  rugs: number;
  client: { name: string; isTrade: boolean };
  workshop: WorkshopForDraft;
}

const METHOD_WORDS: Record<MethodId, string> = {
  dusting: "by dusting", "at-home": "at home", "immersion-wash": "by a full wash in our workshop",
  "wet-hand-clean": "by hand with little water", "low-moisture": "nearly dry", "solvent-dry": "with a dry solvent", none: "not at all",
};
const EVIDENCE_WORDS: Record<Strength, string> = {
  laboratory: "a laboratory report", bench: "the test in our workshop", "label-photo": "the label in your photo",
  "label-typed": "the label as you typed it", photo: "your photos", told: "what you told us",
};
const SOLD_AS: Record<string, string> = { silk: "silk", "wool-and-silk": "wool and silk" };
/** How many methods a letter names. Elicited. */
const MOST_METHODS = 2;

/** Text of other people, safe to set into a letter: one line, no control characters, no braces. */
export const plain = (text: string): string => text.replace(/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069{}<>]+/gu, " ").replace(/\s+/g, " ").trim();

const fibre = (id: FibreId | undefined) => FIBRES.find((f) => f.id === id)?.short ?? "something else";

/** A label is quoted where it is short and nothing but words and shares. */
function labelQuote(text: string | undefined): string {
  const label = plain(text ?? "");
  return /^[\p{L}\p{M}\d %.,:/&-]{2,40}$/u.test(label) ? ` (“${label}”)` : "";
}

function evidence({ assessment, answers }: RugForDraft): string {
  const kinds = strengthsOf(assessment);
  const quoted = kinds.find((s) => s.startsWith("label-"));
  const said = kinds.map((s) => EVIDENCE_WORDS[s] + (s === quoted ? labelQuote(answers.labelText) : ""));
  return said.length ? listed(said) : "your message alone";
}

/** The colour that a rug's title begins with; null where it begins with none. */
export function colourIn(title: string): string | null {
  const first = plain(title).split(/[\s,]/)[0]?.toLowerCase() ?? "";
  return COLOUR_WORDS.includes(first) ? first : null;
}

/** "your grey rug" where the title begins with its colour, "your customer’s rug" for the trade, "this rug" among several. */
function rugPhrase({ rug: { title }, rugs, client }: SlotsInput): string {
  if (rugs > 1) return "this rug";
  if (client.isTrade) return "your customer’s rug";
  const colour = colourIn(title);
  return colour ? `your ${colour} rug` : "your rug";
}

/**
 * The cleaning a letter speaks of: what needs no more than the usual test first, then what needs testing; never more than
 * two. Where a full wash is ruled out, little water comes after the dry ways.
 */
function offeredMethods(a: Assessment): MethodId[] {
  const isWashed = a.methods.some((m) => m.method === "immersion-wash" && m.verdict !== "ruled-out");
  const last = (m: Assessment["methods"][number]) => Number(m.method === "wet-hand-clean" && !isWashed) * 2 + Number(m.verdict !== "suitable");
  const allowed = cleaning(a).filter((m) => m.verdict !== "ruled-out");
  return allowed.sort((x, y) => last(x) - last(y)).slice(0, MOST_METHODS).map((m) => m.method);
}

const lines = (sentences: readonly string[]) => sentences.map((s) => `– ${s}`).join("\n");

/** {chance} is that of the paragraph and stands in no rug's slots. */
export type Slots = Record<Exclude<SlotName, "chance">, string | null>;

/** The value of every slot for one rug, {chance} apart; null where the assessment has none. */
export function slotsOf(input: SlotsInput): Slots {
  const { rug, client, workshop, number } = input;
  const a = rug.assessment;
  const [leading, rival] = namedFibres(a);
  const money = (range: keyof NonNullable<Assessment["money"]>) => {
    const value = a.money?.[range];
    return value && typeof value !== "string" ? moneyPhrase(value, a.money?.currency ?? workshop.currency) : null;
  };
  const offered = offeredMethods(a);
  const asks = asksOf(a, likelyMechanisms(a));
  return {
    name: plain(client.name) || null, title: plain(rug.title), number: String(number), rug: rugPhrase(input),
    fibre: fibre(leading), rival: fibre(rival), likely: cappedWord(a.fibres.find((f) => f.fibre === leading)?.words ?? ""), labelSays: labelFibre(a) && fibre(labelFibre(a) ?? undefined),
    evidence: evidence(rug), soldAs: SOLD_AS[rug.answers.sellerSaid ?? ""] ?? null,
    improvement: a.improvement && improvementPhrase(a.improvement), life: a.lifeYears && yearsPhrase(a.lifeYears),
    lifeLow: a.lifeYears && yearsEnd(a.lifeYears.low, "low"), lifeHigh: a.lifeYears && yearsEnd(a.lifeYears.high, "high"),
    worse: a.worse === null ? null : chancePhrase(a.worse), beyond: a.beyondRepair === null ? null : likelihood(a.beyondRepair),
    methods: offered.length ? listed(offered.map((m) => METHOD_WORDS[m]), "or") : null,
    clean: money("clean"), cutDown: money("cutDown"), replace: replacePrice(a) && money("replace"),
    asks: [...asks.questions, ...asks.photos].map(askLine).join("\n") || null, ask: asks.one && askLine(asks.one),
    firstAid: a.firstAid && lines(a.firstAid), firstAidInShort: lines(firstAidInShort(workshop.emergencyNumber)),
    emergency: FIRST_AID.emergency(workshop.emergencyNumber),
    referTo: a.advice.referTo, telephone: workshop.telephone || null,
    signature: workshop.signature.trim() || workshop.name,
  };
}

/** {chance}: how probable the mechanism is that a paragraph speaks about; null where it speaks about none. */
export function chanceOf(a: Assessment, row: ParagraphRow): string | null {
  const chance = a.mechanisms.find((m) => m.mechanism === row.about)?.probability;
  return chance === undefined ? null : likelihood(chance);
}

/** A paragraph's text with its slots filled; null where one of them has no value here. */
export function filled(text: string, values: Record<SlotName, string | null>): string | null {
  return slotsIn(text).every((name) => isSlot(name) && values[name] !== null) ? fillWith(text, (name) => values[name]) : null;
}
