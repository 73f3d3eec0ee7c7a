import type { EnquiryAnswers } from "../trade/questions";
import type { Tone } from "../trade/tones";
import type { Assessment } from "../triage/assessment";
import type { Language } from "../words/locales";
import type { AreaUnit } from "../words/measures";
import type { Words } from "../words/words";
import { holds, type Facts } from "./condition";
import { factsOf, mergedFacts, type Came, type RugForDraft } from "./facts";
import { greetingName } from "./greeting-name";
import { isGasTold, isHandsOff, ownAidOf } from "./happened";
import { SHIPPED, textIn, type LibraryRow } from "./library";
import { PLACES, SAID_WET } from "./paragraphs";
import { partsOf, type Part } from "./parts";
import type { Place, PlaceId } from "./paragraphs/row";
import { colourIn, colourName, plain, sidesIn } from "./rug-title";
import { aidInShort, ownAidIn, chanceOf, seenIn, sharersIn, slotsOf, wordsOf, type Slots, type WorkshopForDraft } from "./slots";
import { filled } from "./slot-words";
import { isTradeAsking } from "./who-asks";

export interface DraftInput {
  /** One a rug, at least one, in the order of the letter. */
  assessments: readonly RugForDraft[];
  /** `email` null: they are reached by no mail, so that they have no page of their own; absent: they have one. */
  client: { name: string; isTrade: boolean; email?: string | null };
  workshop: WorkshopForDraft;
  enquiry: EnquiryAnswers;
  /** The workshop's paragraphs in the order in which they are tried; without them, those that are shipped. */
  library?: readonly LibraryRow[];
}

/** A paragraph as it was said: which version, whose, its words before they were filled and after. */
export interface SaidParagraph {
  language: Language; id: string; version: number; from: LibraryRow["from"]; text: string;
  place: PlaceId;
  /** Which rug it speaks of, counted from 0; null where it speaks of the whole letter. */
  rug: number | null;
  /** null of letters from before it was kept. */
  said: string | null;
  /** What of it stands under its own rug, where the rest, or all of it (null), is said once of several rugs; absent where it stands whole. */
  here?: string | null;
  /** Whether it stands in the letter; one that does not is known to the client already, or could wait. */
  stands: boolean;
  /** It was left out for length, and no letter before says it either: it waits for one with room. Absent of all else. */
  unsaid?: true;
  /** A letter before said it, and this one is silent on it: it neither says it again nor takes it back. Absent of all else. */
  earlier?: true;
}
/** `joins`: it stands in the block of the piece before it. `spare`: 1 goes first where a letter grows too long; null stays. `least`: what stands of it then; null: nothing. */
export interface Piece {
  text: string; parts: readonly Part[]; joins: boolean; spare: number | null; least: Piece | null; place: Place; rug: number | null; used: Omit<SaidParagraph, "stands">;
  /** What it says before and after what it goes by; null where it names nothing that it goes by. */
  besideEvidence: { before: string; after: string } | null;
}

interface Subject { facts: Facts; slots: Slots; assessment: Assessment; words: Words; rug: number | null }

/** Everything the assessments call for, in its order, before anything is left out. */
export interface Pieces {
  subject: string;
  pieces: Piece[];
  /** What a paragraph that was said would say with the facts of today; null where it would have nothing to say. */
  readsToday: (told: Pick<SaidParagraph, "id" | "rug" | "text">) => string | null;
  /** The heading of what is said once of several rugs, counted from 0; null where the workshop has none. */
  leadOf: (place: "shared-first" | "shared", of: readonly number[]) => Piece | null;
  /** A line of a list, with the rug it is of. */
  lineOfRug: (rug: number, line: string) => string;
  /** Whether a place of a rug is left empty until we know if it is wet: what was said there waits. */
  waits: (at: Pick<SaidParagraph, "rug" | "place">) => boolean;
}

const textOf = (row: LibraryRow, template: string, { slots, assessment, words }: Subject) => filled(template, (name) => (name === "chance" ? chanceOf(assessment, row, words) : slots[name]));

/** The rows of a library by their place, each in its order. */
function byPlace(library: readonly LibraryRow[]): (id: PlaceId) => readonly LibraryRow[] {
  const rows = new Map<PlaceId, LibraryRow[]>();
  for (const row of library) rows.set(row.place, [...(rows.get(row.place) ?? []), row]);
  return (id) => rows.get(id) ?? [];
}

/** A paragraph that could stand here: its condition holds and everything it leaves open has a value. */
interface Fit { row: LibraryRow; template: string; text: string; parts: readonly Part[]; chance: number; isTold: boolean }

// What fills a sentence ends none: a label may be quoted with its full stops.
const filledParts = (row: LibraryRow, template: string, subject: Subject): Part[] =>
  partsOf(template).flatMap(({ text: part, glue }) => (textOf(row, part, subject) ?? "").split("\n").map((line, at): Part => ({ text: line, glue: at > 0 ? "\n" : glue })));

function fits(row: LibraryRow, subject: Subject, tone: Tone): Fit[] {
  const { facts, assessment, words } = subject;
  if (row.off || !holds(row.when, facts)) return [];
  const template = words.mark(textIn(row, tone));
  const text = textOf(row, template, subject);
  const chance = assessment.mechanisms.find((m) => m.mechanism === row.about)?.probability ?? 0;
  return text === null ? [] : [{ row, template, text, parts: filledParts(row, template, subject), chance, isTold: row.told !== undefined && holds(row.told, facts) }];
}

/** A piece with what stands of it where the letter grows too long: of a list of what is asked for its first sentence and line, where its place wants that. */
function withLeast(piece: Piece, row: LibraryRow, subject: Subject): Piece {
  const { least } = piece.place.spare ?? {};
  const template = `${partsOf(piece.used.text)[0]?.text ?? ""}\n{ask}`;
  const text = least && holds(least, subject.facts) ? textOf(row, template, subject) : null;
  if (text === null) return piece;
  return { ...piece, least: { ...piece, text, parts: filledParts(row, template, subject), spare: null, used: { ...piece.used, text: template, said: text } } };
}

/** What else speaks of something that they told, of each thing one row; nothing of what is spoken of already. */
function toldBeside(taken: readonly Fit[], all: readonly Fit[]): Fit[] {
  const keyOf = ({ row }: Fit) => JSON.stringify(row.told);
  const said = new Set(taken.filter((f) => f.isTold).map(keyOf));
  const more = all.filter((f) => f.isTold && !taken.includes(f) && !said.has(keyOf(f)));
  return more.filter((f, at) => more.findIndex((o) => keyOf(o) === keyOf(f)) === at);
}

function piecesAt(place: Place, subject: Subject, rowsOf: ReturnType<typeof byPlace>, tone: Tone): Piece[] {
  if (place.when && !holds(place.when, subject.facts)) return [];
  const all = rowsOf(place.id).flatMap((row) => fits(row, subject, tone));
  const taken = (place.likeliestFirst ? all.sort((a, b) => b.chance - a.chance) : all).slice(0, place.take);
  const unsaid = toldBeside(taken, all);
  // Of what they told one row stands whatever the length, and the rest where there is room.
  const stands = taken.some((f) => f.isTold) ? 0 : 1;
  const { rug } = subject;
  const besideEvidence = (row: LibraryRow, template: string): Piece["besideEvidence"] => {
    const [before, after] = template.split("{evidence}").map((part) => textOf(row, part, subject));
    return before && after ? { before, after } : null;
  };
  return [...taken, ...(place.spare ? unsaid : unsaid.slice(0, stands))].map(({ row, row: { language, id, version, from }, template, text, parts, isTold }, at) => withLeast({
    text, parts, joins: (place.joins && !(place.ahead && rug === 0)) || at > 0, spare: place.spare && at >= place.spare.from && !(isTold && at < taken.length + stands) ? place.spare.rank : null, least: null, place, rug,
    besideEvidence: besideEvidence(row, template), used: { language, id, version, from, text: template, place: place.id, rug, said: text },
  }, row, subject));
}

/** The pieces, where one that joins only some places begins a block after any other. */
const besideItsOwn = (pieces: readonly Piece[]): Piece[] => pieces.map((p, at) => {
  const before = pieces[at - 1]?.place.id;
  return p.place.joinsOnly && before !== p.place.id && !p.place.joinsOnly.some((id) => id === before) ? { ...p, joins: false } : p;
});

/** Places that stand together: those of the letter alone, those ahead of the rugs alone, those of the rugs as one run a rug. */
function runs(places: readonly Place[]): Place[][] {
  return places.reduce<Place[][]>((all, place) => {
    const last = all[all.length - 1];
    if (last?.[0] && last[0].of === "rug" && !last[0].ahead && place.of === "rug") last.push(place);
    else all.push([place]);
    return all;
  }, []);
}

/** Places of a run as one of its rugs needs them: what the client asked comes sooner. */
const inOrder = (run: readonly Place[], { facts }: Subject): readonly Place[] => run.reduce<readonly Place[]>((order, place) => {
  if (!place.sooner || !holds(place.sooner.when, facts)) return order;
  const { before } = place.sooner;
  return order.filter((p) => p !== place).flatMap((p) => (p.id === before ? [place, p] : [p]));
}, run);

/** Joins what belongs into one block; a list always begins a block's own lines. */
export const blocks = (all: readonly Pick<Piece, "text" | "joins">[]): string =>
  all.map(({ text, joins }, at) => (at === 0 ? "" : joins ? " " : "\n\n") + text).join("");

/** "Your grey rug, 170 × 240"; the title of a rug is its colour or "Rug", then what else is known, apart by commas. */
function subjectOf(rugs: readonly RugForDraft[], trade: boolean, { words, areaUnit }: { words: Words; areaUnit: AreaUnit }): string {
  const { say } = words;
  const whose = trade ? "trade" : "owner";
  if (rugs.length > 1) return say("letter.subject-several", { whose, n: rugs.length });
  const title = plain(rugs[0]?.title ?? "");
  const colour = colourIn(title);
  return [colour ? say("letter.subject", { whose, colour: colourName(colour, words) }) : say("letter.subject-plain", { whose }), ...title.split(", ").slice(1).map((part) => sidesIn(part, words, areaUnit))].join(", ");
}

/** Of what stands before the rugs are spoken of at length, what is said of several in the same words stands once; and a rug whose own first aid has said what comes first is not answered so once more. */
const onceAhead = (pieces: readonly Piece[]): Piece[] => {
  const isAnswered = ({ place, rug }: Piece) => place.id === "in-short" && pieces.some((o) => o.place.id === "own-aid" && o.rug === rug);
  return pieces.filter((p, at) => !p.place.ahead || (!isAnswered(p) && pieces.findIndex((o) => o.place === p.place && o.text === p.text) === at));
};

/** First aid is due for it. */
const AID = ["first-aid", "aid-known"] as const;

/** What first aid says of single rugs: one that may be touched where another may not has lines of its own. `wet`: those that it is due for. */
function aidOfEach(wet: readonly Subject[], { assessments, workshop }: DraftInput): (at: number | null) => Partial<Slots> {
  const words = wordsOf(workshop);
  const due = wet.flatMap(({ rug, assessment }) => (rug === null ? [] : { at: rug, answers: assessments[rug]?.answers ?? {}, assessment }));
  const named = (of: typeof due) => sharersIn(of.map(({ at }) => at), { rugs: assessments.length, words });
  const own = ownAidOf(due);
  const shares = { sharers: due.length > 1 ? named(due) : null, untouched: own.length > 0 ? named(due.filter((r) => !own.includes(r))) : null };
  return (at) => {
    const rug = due.find((r) => r.at === at);
    return rug && own.includes(rug) ? { ...shares, untouched: null, ownAid: ownAidIn(rug, due, words) } : rug ? shares : {};
  };
}

/** What is read of each rug, and of the letter as a whole: its facts are those of any of its rugs, its first aid that of all that are wet, its other words those of the first that is wet, else of the first; among these one that may give off gas leads, then one that nobody may touch. */
function subjectsOf(input: DraftInput, trade: boolean, came: Came | null): { letter: Subject; rugs: Subject[] } {
  const { assessments, client, workshop, enquiry } = input;
  const photosCame = (came?.photos ?? 0) > 0;
  const read = assessments.map((told) => ({ ...told, photosCame, among: assessments })).map((rug, at): Subject => ({
    slots: slotsOf({ rug, number: at + 1, rugs: assessments.length, client: { ...client, isTrade: trade }, workshop, came }), assessment: rug.assessment, words: wordsOf(workshop), rug: at,
    facts: factsOf({ rug, enquiry, isTrade: trade, rugs: assessments.length, hasTelephone: workshop.telephone !== "", hasName: greetingName(client.name) !== null, hasPage: client.email !== null, came }),
  }));
  const wet = read.filter(({ facts }) => AID.some((due) => facts.words.has.includes(due)));
  const aidOf = aidOfEach(wet, input);
  const rugs = read.map((r) => ({ ...r, slots: { ...r.slots, ...aidOf(r.rug) } }));
  const leads = (wet.length > 0 ? wet : read).flatMap(({ rug }) => (rug === null ? [] : { at: rug, told: assessments[rug] as RugForDraft }));
  const first = (leads.find(({ told }) => isGasTold(told.answers)) ?? leads.find(({ told }) => isHandsOff(told)) ?? leads[0])?.at ?? 0;
  const leading = rugs[first];
  if (!leading) throw new Error("Expected at least one assessment to write about but received none");
  // The letter names the inspection that it did not know before.
  const seen = seenIn(assessments[came?.inspected ?? first] ?? {});
  return { rugs, letter: { ...leading, rug: null, slots: { ...leading.slots, ...seen, firstAidInShort: aidInShort(leads.map(({ told }) => told), workshop) }, facts: mergedFacts(rugs.map((r) => r.facts)) } };
}

/**
 * The pieces of a first letter; with `came`, what came since the last one, those of a letter that follows it.
 * @throws Error where there is no rug to write about.
 */
export function piecesOf(input: DraftInput, came: Came | null = null): Pieces {
  const { assessments, client, workshop, enquiry, library = SHIPPED } = input;
  const trade = isTradeAsking(client, enquiry);
  const { letter, rugs } = subjectsOf(input, trade, came);
  const places = PLACES.filter((p) => !p.leads && (came || !p.follows));
  const [tone, words, rowsOf] = [workshop.tone ?? "plain", wordsOf(workshop), byPlace(library)];
  return {
    subject: subjectOf(assessments, trade, { words, areaUnit: workshop.areaUnit ?? "m2" }),
    pieces: besideItsOwn(onceAhead(runs(places).flatMap((run) => (run[0]?.of === "letter" ? [letter] : rugs).flatMap((s) => inOrder(run, s).flatMap((place) => piecesAt(place, s, rowsOf, tone)))))),
    leadOf: (id, of) => {
      const sharers = sharersIn(of, { rugs: assessments.length, words });
      return PLACES.filter((p) => p.id === id).flatMap((place) => piecesAt(place, { ...letter, slots: { ...letter.slots, sharers } }, rowsOf, tone))[0] ?? null;
    },
    lineOfRug: (rug, line) => words.say("letter.line-of-rug", { number: rug + 1, line }),
    readsToday: (told) => {
      const row = library.find((r) => r.id === told.id);
      const subject = told.rug === null ? letter : rugs[told.rug];
      return row && subject ? textOf(row, told.text, subject) : null;
    },
    waits: ({ rug, place }) => {
      const facts = (rug === null ? letter : rugs[rug])?.facts;
      const when = places.find((p) => p.id === place)?.when;
      return facts !== undefined && when !== undefined && holds(SAID_WET, facts) && !holds(when, facts);
    },
  };
}
