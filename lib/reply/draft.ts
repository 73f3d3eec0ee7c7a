import type { EnquiryAnswers } from "../trade/questions";
import type { Tone } from "../trade/tones";
import type { Assessment } from "../triage/assessment";
import type { Language } from "../words/locales";
import type { AreaUnit } from "../words/measures";
import type { Words } from "../words/words";
import { holds, type Facts } from "./condition";
import { factsOf, mergedFacts, type RugForDraft } from "./facts";
import { mostWords, shortened } from "./length";
import { SHIPPED, textIn, type LibraryRow } from "./library";
import { PLACES } from "./paragraphs";
import type { Place } from "./paragraphs/row";
import { colourIn, colourName, plain, sidesIn } from "./rug-title";
import { chanceOf, filled, slotsOf, wordsOf, type Slots, type WorkshopForDraft } from "./slots";

export interface DraftInput {
  /** One a rug, at least one, in the order of the letter. */
  assessments: readonly RugForDraft[];
  client: { name: string; isTrade: boolean };
  workshop: WorkshopForDraft;
  enquiry: EnquiryAnswers;
  /** The workshop's paragraphs in the order in which they are tried; without them, those that are shipped. */
  library?: readonly LibraryRow[];
}
/** A paragraph that a letter used: which version, whose, and its words before they were filled. */
export interface UsedParagraph { language: Language; id: string; version: number; from: LibraryRow["from"]; text: string }
export interface ComposedDraft {
  subject: string;
  /** Blocks apart by an empty line. */
  text: string;
  /** The rows used, in order; a row used for two rugs stands twice. */
  paragraphs: UsedParagraph[];
}
interface Piece { text: string; joins: boolean; spare: number | null; used: UsedParagraph }

interface Subject { facts: Facts; slots: Slots; assessment: Assessment; words: Words }

/** A paragraph that could stand here: its condition holds and everything it leaves open has a value. */
interface Fit { row: LibraryRow; template: string; text: string; chance: number }

function fits(row: LibraryRow, { facts, slots, assessment, words }: Subject, tone: Tone): Fit[] {
  if (row.off || !holds(row.when, facts)) return [];
  const template = words.mark(textIn(row, tone));
  const text = filled(template, { ...slots, chance: chanceOf(assessment, row, words) });
  const chance = assessment.mechanisms.find((m) => m.mechanism === row.about)?.probability ?? 0;
  return text === null ? [] : [{ row, template, text, chance }];
}

function pieces(place: Place, subject: Subject, library: readonly LibraryRow[], tone: Tone): Piece[] {
  if (place.when && !holds(place.when, subject.facts)) return [];
  const all = library.filter((row) => row.place === place.id).flatMap((row) => fits(row, subject, tone));
  const taken = (place.likeliestFirst ? all.sort((a, b) => b.chance - a.chance) : all).slice(0, place.take);
  return taken.map(({ row: { language, id, version, from }, template, text }, at) => ({
    text, joins: place.joins || at > 0, spare: place.spare && at >= place.spare.from ? place.spare.rank : null, used: { language, id, version, from, text: template },
  }));
}

/** Places that stand together: those of the letter alone, those of the rugs as one run a rug. */
function runs(): Place[][] {
  return PLACES.reduce<Place[][]>((all, place) => {
    const last = all[all.length - 1];
    if (last?.[0] && last[0].of === "rug" && place.of === "rug") last.push(place);
    else all.push([place]);
    return all;
  }, []);
}

/** Joins what belongs into one block; a list always begins a block's own lines. */
function blocks(all: readonly Piece[]): string {
  return all.map(({ text, joins }, at) => (at === 0 ? "" : joins ? " " : "\n\n") + text).join("");
}

/** "Your grey rug, 170 × 240"; the title of a rug is its colour or "Rug", then what else is known, apart by commas. */
function subjectOf(rugs: readonly RugForDraft[], trade: boolean, { words, areaUnit }: { words: Words; areaUnit: AreaUnit }): string {
  const { say } = words;
  const whose = trade ? "trade" : "owner";
  if (rugs.length > 1) return say("letter.subject-several", { whose, n: rugs.length });
  const title = plain(rugs[0]?.title ?? "");
  const colour = colourIn(title);
  return [colour ? say("letter.subject", { whose, colour: colourName(colour, words) }) : say("letter.subject-plain", { whose }), ...title.split(", ").slice(1).map((part) => sidesIn(part, words, areaUnit))].join(", ");
}

/**
 * The letter that the assessments call for. The same input gives the same letter. It states no fibre without the
 * strength of its evidence, no improvement and no life but as the range of the assessment, and no number of its own.
 * @throws Error where there is no rug to write about.
 */
export function composeDraft({ assessments, client, workshop, enquiry, library = SHIPPED }: DraftInput): ComposedDraft {
  const trade = client.isTrade || enquiry.reason === "trade";
  const inputs = assessments.map((rug, at) => ({
    rug, number: at + 1, rugs: assessments.length, client: { name: client.name, isTrade: trade }, workshop,
  }));
  const rugs: Subject[] = inputs.map((input) => ({
    slots: slotsOf(input), assessment: input.rug.assessment, words: wordsOf(workshop),
    facts: factsOf({ rug: input.rug, enquiry, isTrade: trade, rugs: input.rugs, hasTelephone: workshop.telephone !== "", hasName: plain(client.name) !== "" }),
  }));
  const first = rugs.find((r) => r.assessment.firstAid) ?? rugs[0];
  if (!first) throw new Error("Expected at least one assessment to write about but received none");
  const letter = { ...first, facts: mergedFacts(rugs.map((r) => r.facts)) };
  const whole = runs().flatMap((run) => (run[0]?.of === "letter" ? [letter] : rugs).flatMap((subject) => run.flatMap((place) => pieces(place, subject, library, workshop.tone ?? "plain"))));
  const all = shortened(whole, mostWords(rugs.length));
  return { subject: subjectOf(assessments, trade, { words: wordsOf(workshop), areaUnit: workshop.areaUnit ?? "m2" }), text: blocks(all), paragraphs: all.map(({ used }) => used) };
}
