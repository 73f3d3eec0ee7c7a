import { isLine, joinedParts, withoutDash, type Part } from "./parts";
import type { PlaceId } from "./paragraphs/row";
import { blocks, type Piece, type Pieces } from "./pieces";
import { readingOf } from "./reading";

/** A letter as it is laid out, and the paragraphs it was put together from. */
export interface Laid { readonly lines: readonly Line[]; readonly used: readonly Piece["used"][] }
export type Line = Pick<Piece, "text" | "joins" | "place">;
type Leads = Pick<Pieces, "leadOf" | "lineOfRug">;
type RugPiece = Piece & { readonly rug: number };

/** A sentence with fewer words says nothing by itself: where the rest of its paragraph is not shared, the first rug alone has it. Elicited. */
const FEWEST_WORDS = 6;
/** The short answer: what several rugs share of it stands before them. */
const ANSWER: readonly PlaceId[] = ["fibre", "worth", "outlook", "beyond"];
/** They limit what is said of the fibre, and stand beside it. */
const BESIDE_FIBRE: readonly PlaceId[] = ["evidence", "paid"];
/** Cautions wait for no answer. */
const CAUTIONS: readonly PlaceId[] = ["safety", "refer"];
/** Of several rugs it is one list. */
const LIST: PlaceId = "asks";

/** What is said once of several rugs. `begins`: with it begins its paragraph. */
interface Shared { readonly of: readonly number[]; readonly piece: RugPiece; readonly text: string; readonly begins: boolean }
/** Which rugs a sentence or a line is said of, in the same words. */
type RugsOf = (piece: RugPiece, part: Part) => readonly number[];

const isOfRug = (p: Piece): p is RugPiece => p.rug !== null && p.place.id !== "heading";
const isSame = (a: readonly number[], b: readonly number[]): boolean => a.join() === b.join();
const isLong = ({ text }: Part): boolean => readingOf(text).words >= FEWEST_WORDS;

function rugsBy(pieces: readonly RugPiece[]): RugsOf {
  const asked = [...new Set(pieces.filter((p) => p.place.id === LIST).map((p) => p.rug))];
  const by = new Map<string, number[]>();
  for (const { rug, parts } of pieces) for (const { text } of parts) by.set(text, [...new Set([...(by.get(text) ?? []), rug])]);
  return (piece, { text }) => (piece.place.id === LIST ? asked : (by.get(text) ?? []));
}

/** Whether a sentence stands under a lead: it is said of several rugs, and says something by itself or beside another that does. */
function isUnderLead(piece: RugPiece, part: Part, rugsOf: RugsOf): boolean {
  const of = rugsOf(piece, part);
  return of.length > 1 && piece.parts.some((p) => isLong(p) && isSame(rugsOf(piece, p), of));
}

/** One list of all that is asked of whichever rug: in the words of the longest, each line once, with the rug it is of where it is not of all. */
function oneList(lists: readonly RugPiece[], { lineOfRug }: Leads): string {
  const longest = lists.reduce((most, p) => (p.parts.length > most.parts.length ? p : most));
  const lines = [...new Set(lists.flatMap((p) => p.parts.filter(isLine).map(({ text }) => text)))];
  const said = lines.flatMap((line) => {
    const of = lists.filter((p) => p.parts.some(({ text }) => text === line));
    return of.length === lists.length ? [line] : of.map(({ rug }) => `– ${lineOfRug(rug, withoutDash(line))}`);
  });
  return [joinedParts(longest.parts.filter((p) => !isLine(p))), ...said].join("\n");
}

/** What is said once, in the order of the places. */
function sharedIn(pieces: readonly RugPiece[], rugsOf: RugsOf, leads: Leads): Shared[] {
  return pieces.flatMap((piece) => {
    const parts = piece.parts.filter((part) => rugsOf(piece, part)[0] === piece.rug && isUnderLead(piece, part, rugsOf));
    const sets = [...new Map(parts.map((part) => [rugsOf(piece, part).join(), rugsOf(piece, part)])).values()];
    return sets.map((of): Shared => {
      const once = parts.filter((part) => isSame(rugsOf(piece, part), of));
      const text = piece.place.id === LIST ? oneList(pieces.filter((p) => p.place.id === LIST), leads) : joinedParts(once);
      return { of, piece, text, begins: once[0] === piece.parts[0] };
    });
  });
}

/** Whether it stands before the rugs: cautions, and of the answer what begins a paragraph, with its limits where the fibre is among it. */
function isBefore({ piece: { place }, of, begins }: Shared, all: readonly Shared[]): boolean {
  const isBesideFibre = BESIDE_FIBRE.includes(place.id) && all.some((o) => o.piece.place.id === "fibre" && o.begins && isSame(o.of, of));
  return CAUTIONS.includes(place.id) || isBesideFibre || (begins && ANSWER.includes(place.id));
}

/** What is shared under a lead for each set of rugs; the lead is kept with all that stands under it. */
function underLeads(shared: readonly Shared[], place: "shared-first" | "shared", { leadOf }: Leads): Laid {
  const sets = [...new Map(shared.map(({ of }) => [of.join(), of])).values()];
  const laid = sets.map((of) => {
    const lead = leadOf(place, of);
    const under = shared.filter((s) => isSame(s.of, of)).map(({ piece, text }, at): Line => ({ text, place: piece.place, joins: at > 0 && piece.joins }));
    const lines = lead ? [lead, ...under] : under;
    return { lines, used: lead ? [{ ...lead.used, said: blocks(lines) }] : [] };
  });
  return { lines: laid.flatMap((l) => l.lines), used: laid.flatMap((l) => l.used) };
}

/** What stands of a piece at its own rug; null where nothing does. A short sentence that is not shared stands with the first rug alone. */
function ownText(piece: RugPiece, rugsOf: RugsOf): string | null {
  const own = piece.parts.filter((part) => !isUnderLead(piece, part, rugsOf) && (rugsOf(piece, part)[0] === piece.rug || isLong(part)));
  return own.length === piece.parts.length ? piece.text : joinedParts(own) || null;
}

/** One rug with what is its own; without a line where all of it is said under a lead. */
function laidRug(pieces: readonly Piece[], rugsOf: RugsOf): Laid {
  const own = pieces.map((p) => ({ piece: p, text: isOfRug(p) ? ownText(p, rugsOf) : p.text }));
  const lines: Line[] = [];
  let joins = true;
  for (const { piece, text } of own) {
    joins &&= piece.joins;
    if (text === null) continue;
    lines.push({ text, place: piece.place, joins: joins && lines.at(-1)?.place.id !== "heading" });
    joins = true;
  }
  const isBare = !own.some(({ piece, text }) => isOfRug(piece) && text !== null);
  const used = own.filter(({ piece }) => isOfRug(piece) || !isBare).map(({ piece, text }) => (text === piece.text ? piece.used : { ...piece.used, here: text }));
  return { lines: isBare ? [] : lines, used };
}

/**
 * Lays out a letter so that what it says of several rugs in the same words stands once, under a lead that names them, and only what differs
 * stands under each rug's own name. What several share of the short answer, and cautions, come first, then each rug, then the rest.
 */
export function saidOnce(standing: readonly Piece[], leads: Leads): Laid {
  const rugs = [...new Set(standing.flatMap(({ rug }) => (rug === null ? [] : [rug])))];
  const ofRugs = standing.filter(isOfRug);
  const rugsOf = rugsBy(ofRugs);
  const shared = sharedIn(ofRugs, rugsOf, leads);
  if (shared.length === 0 && rugs.length < 2) return { lines: standing, used: standing.map(({ used }) => used) };
  const own = rugs.map((rug) => laidRug(standing.filter((p) => p.rug === rug), rugsOf));
  const isAllShared = own.every(({ lines }) => lines.length === 0);
  const before = isAllShared ? [] : shared.filter((s) => isBefore(s, shared));
  const [start, end] = [standing.findIndex((p) => p.rug !== null), standing.findLastIndex((p) => p.rug !== null) + 1];
  const letter = (pieces: readonly Piece[]): Laid => ({ lines: pieces, used: pieces.map(({ used }) => used) });
  const all = [letter(standing.slice(0, start)), underLeads(before, "shared-first", leads), ...own, underLeads(shared.filter((s) => !before.includes(s)), "shared", leads), letter(standing.slice(end))];
  return { lines: all.flatMap((l) => l.lines), used: all.flatMap((l) => l.used) };
}
