import type { EnquiryAnswers } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import { holds, type Facts } from "./condition";
import { factsOf, mergedFacts, type RugForDraft } from "./facts";
import { PARAGRAPHS, PLACES } from "./paragraphs";
import type { ParagraphRow, Place } from "./paragraphs/row";
import { chanceOf, colourIn, filled, plain, slotsOf, type Slots, type WorkshopForDraft } from "./slots";

export interface DraftInput {
  /** One a rug, at least one, in the order of the letter. */
  assessments: readonly RugForDraft[];
  client: { name: string; isTrade: boolean };
  workshop: WorkshopForDraft;
  enquiry: EnquiryAnswers;
}
export interface ComposedDraft {
  subject: string;
  /** Blocks apart by an empty line. */
  text: string;
  /** The rows used, in order; a row used for two rugs stands twice. */
  paragraphs: { id: string; version: number }[];
}
interface Piece { text: string; joins: boolean; row: ParagraphRow }

interface Subject { facts: Facts; slots: Slots; assessment: Assessment }

function rowsFor(place: Place, { facts, assessment }: Subject): ParagraphRow[] {
  const rows = PARAGRAPHS.filter((row) => row.place === place.id && holds(row.when, facts));
  const chance = (row: ParagraphRow) => assessment.mechanisms.find((m) => m.mechanism === row.about)?.probability ?? 0;
  return (place.likeliestFirst ? rows.sort((a, b) => chance(b) - chance(a)) : rows).slice(0, place.take);
}

function pieces(place: Place, subject: Subject): Piece[] {
  const { slots, assessment } = subject;
  return rowsFor(place, subject).map((row, at) => ({
    text: filled(row, { ...slots, chance: chanceOf(assessment, row) }), joins: place.joins || at > 0, row,
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
function subjectOf(rugs: readonly RugForDraft[], trade: boolean): string {
  const whose = trade ? "Your customer’s" : "Your";
  if (rugs.length > 1) return `${whose} ${rugs.length} rugs`;
  const title = plain(rugs[0]?.title ?? "");
  const colour = colourIn(title);
  return [`${whose} ${colour ? `${colour} ` : ""}rug`, ...title.split(", ").slice(1)].join(", ");
}

/**
 * The letter that the assessments call for. The same input gives the same letter. It states no fibre without the
 * strength of its evidence, no improvement and no life but as the range of the assessment, and no number of its own.
 * @throws Error where there is no rug to write about.
 */
export function composeDraft({ assessments, client, workshop, enquiry }: DraftInput): ComposedDraft {
  const trade = client.isTrade || enquiry.reason === "trade";
  const inputs = assessments.map((rug, at) => ({
    rug, number: at + 1, rugs: assessments.length, client: { name: client.name, isTrade: trade }, workshop,
  }));
  const rugs: Subject[] = inputs.map((input) => ({
    slots: slotsOf(input), assessment: input.rug.assessment,
    facts: factsOf({ rug: input.rug, enquiry, isTrade: trade, rugs: input.rugs, hasTelephone: workshop.telephone !== "", hasName: plain(client.name) !== "" }),
  }));
  const first = rugs.find((r) => r.assessment.firstAid) ?? rugs[0];
  if (!first) throw new Error("Expected at least one assessment to write about but received none");
  const letter = { ...first, facts: mergedFacts(rugs.map((r) => r.facts)) };
  const all = runs().flatMap((run) => (run[0]?.of === "letter" ? [letter] : rugs).flatMap((subject) => run.flatMap((place) => pieces(place, subject))));
  return { subject: subjectOf(assessments, trade), text: blocks(all), paragraphs: all.map(({ row }) => ({ id: row.id, version: row.version })) };
}
