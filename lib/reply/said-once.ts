import { isLine, joinedParts, partsOf, withoutDash, type Part } from "./parts";
import type { PlaceId } from "./paragraphs/row";
import { blocks, type Piece, type Pieces } from "./pieces";

/** A letter as it is laid out, and the paragraphs it was put together from. */
export interface Laid { readonly lines: readonly Line[]; readonly used: readonly Piece["used"][] }
export type Line = Pick<Piece, "text" | "joins" | "place">;
type Leads = Pick<Pieces, "leadOf" | "lineOfRug">;
type RugPiece = Piece & { readonly rug: number };

/** Sentences that lean on the one before them, or after: they stand only beside it, and nobody needs them twice. */
const LEANS = /^(?:It|They|This|Mostly they|The longer it|Whether it|If (?:it|one|that)) /u;
/** They limit the one before them, and stand beside each that they limit. */
const LIMITS = /^That is /u;
const LEANS_ON_NEXT = /^Thank you /u;
/** The short answer: what several rugs share of it stands before them. */
const ANSWER: readonly PlaceId[] = ["fibre", "worth", "cut-down", "outlook", "beyond"];
/** They limit what is said of the fibre, and stand beside it. */
const BESIDE_FIBRE: readonly PlaceId[] = ["evidence", "paid"];
/** Rugs that need different first aid are not the same in everything. */
const OWN_AID: PlaceId = "own-aid";
/** Cautions wait for no answer. */
const CAUTIONS: readonly PlaceId[] = ["safety", "refer"];
/** Of several rugs it is one list. */
const LIST: PlaceId = "asks";

/** What is said once of several rugs. `begins`: with it begins its paragraph. */
interface Shared { readonly of: readonly number[]; readonly piece: RugPiece; readonly parts: readonly Part[]; readonly begins: boolean }
/** A sentence of a paragraph with those that lean on it. */
type Unit = readonly Part[];
/** Which rugs something is said of, in the same words. */
type RugsOf = (piece: RugPiece, unit: Unit) => readonly number[];
/** Of some sentences those that still have to be said. */
type Unsaid = (parts: readonly Part[]) => Part[];

/** It stands among what is said of its rug. */
const isAtRug = (p: Piece): boolean => p.rug !== null && !p.place.ahead;
const isOfRug = (p: Piece): p is RugPiece => isAtRug(p) && p.place.id !== "heading";
const isSame = (a: readonly number[], b: readonly number[]): boolean => a.join() === b.join();

const unitsOf = ({ parts }: RugPiece): Unit[] => parts.reduce<Part[][]>((units, part, at) => {
  const before = units.at(-1);
  const leans = at > 0 && (LEANS.test(part.text) || LIMITS.test(part.text) || LEANS_ON_NEXT.test(parts[at - 1]?.text ?? ""));
  return before && leans ? [...units.slice(0, -1), [...before, part]] : [...units, [part]];
}, []);

function rugsBy(pieces: readonly RugPiece[]): RugsOf {
  const asked = [...new Set(pieces.filter((p) => p.place.id === LIST).map((p) => p.rug))];
  const by = new Map<string, number[]>();
  for (const piece of pieces) for (const unit of unitsOf(piece)) by.set(joinedParts(unit), [...new Set([...(by.get(joinedParts(unit)) ?? []), piece.rug])]);
  return (piece, unit) => (piece.place.id === LIST ? asked : (by.get(joinedParts(unit)) ?? []));
}

/** What leans on something is said once a letter, as thanks are, and what first aid has said is not said again of a rug; the rest is looked at rug by rug. */
function unsaidAfter(letter: readonly Piece[]): Unsaid {
  const before = new Set(letter.flatMap(({ parts }) => parts.map(({ text }) => text)));
  const said = new Set<string>();
  return (parts) => parts.filter(({ text }, at) => {
    const leans = (at > 0 && LEANS.test(text)) || (parts.length > 1 && LEANS_ON_NEXT.test(text));
    const isSaid = before.has(text) || (leans && said.has(text));
    said.add(text);
    return !isSaid;
  });
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

/** What is said once, in the order of the places, what is said of most rugs first. */
function sharedIn(pieces: readonly RugPiece[], rugsOf: RugsOf, leads: Leads): Shared[] {
  return pieces.flatMap((piece) => {
    const units = unitsOf(piece);
    const once = units.filter((unit) => rugsOf(piece, unit).length > 1 && rugsOf(piece, unit)[0] === piece.rug);
    const sets = [...new Map(once.map((unit) => [rugsOf(piece, unit).join(), rugsOf(piece, unit)])).values()];
    return sets.map((of): Shared => {
      const here = once.filter((unit) => isSame(rugsOf(piece, unit), of));
      const parts = piece.place.id === LIST ? partsOf(oneList(pieces.filter((p) => p.place.id === LIST), leads)) : here.flat();
      return { of, piece, parts, begins: here[0] === units[0] };
    });
  }).sort((a, b) => b.of.length - a.of.length);
}

/** Whether it stands before the rugs: cautions, and of the answer what begins a paragraph, with its limits where the fibre is among it. */
function isBefore({ piece: { place }, of, begins }: Shared, all: readonly Shared[]): boolean {
  const isBesideFibre = BESIDE_FIBRE.includes(place.id) && all.some((o) => o.piece.place.id === "fibre" && o.begins && isSame(o.of, of));
  return CAUTIONS.includes(place.id) || isBesideFibre || (begins && ANSWER.includes(place.id));
}

/** Whether a piece stands in the block of one before it, also where what stands between them does so elsewhere. */
function isOneBlock(pieces: readonly RugPiece[], before: RugPiece | undefined, piece: RugPiece): boolean {
  if (before?.rug !== piece.rug) return false;
  return pieces.slice(pieces.indexOf(before) + 1, pieces.indexOf(piece) + 1).every((p) => p.joins);
}

/** What is shared under a lead for each set of rugs; the lead is kept with all that stands under it. */
function underLeads(shared: readonly Shared[], place: "shared-first" | "shared", { leads, unsaid, pieces }: { leads: Leads; unsaid: Unsaid; pieces: readonly RugPiece[] }): Laid {
  const sets = [...new Map(shared.map(({ of }) => [of.join(), of])).values()];
  const laid = sets.map((of) => {
    const lead = leads.leadOf(place, of);
    const here = shared.filter((s) => isSame(s.of, of));
    const under = here.map(({ piece, parts }, at): Line => ({ text: joinedParts(unsaid(parts)), place: piece.place, joins: isOneBlock(pieces, here[at - 1]?.piece, piece) }));
    const lines = lead ? [lead, ...under] : under;
    return { lines, used: lead ? [{ ...lead.used, said: blocks(lines) }] : [] };
  });
  return { lines: laid.flatMap((l) => l.lines), used: laid.flatMap((l) => l.used) };
}

/** What stands of a piece at its own rug; null where nothing does. */
function ownText(piece: RugPiece, rugsOf: RugsOf, unsaid: Unsaid): string | null {
  const own = unsaid(unitsOf(piece).filter((unit) => rugsOf(piece, unit).length < 2).flat());
  return own.length === piece.parts.length ? piece.text : joinedParts(own) || null;
}

/** One rug with what is its own; without a line where all of it is said under a lead. */
function laidRug(pieces: readonly Piece[], rugsOf: RugsOf, unsaid: Unsaid): Laid {
  const own = pieces.map((p) => ({ piece: p, text: isOfRug(p) ? ownText(p, rugsOf, unsaid) : p.text }));
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

/** Pieces as they are. */
const whole = (pieces: readonly Piece[]): Laid => ({ lines: pieces, used: pieces.map(({ used }) => used) });

/**
 * Lays out a letter so that what it says of several rugs in the same words stands once, under a lead that names them, and only what differs
 * stands under each rug's own name. What several share of the short answer, and cautions, come first, then each rug, then the rest. Where a
 * workshop has put the leads away, each rug has all of its own. A letter that says nothing at its rugs stands as it is.
 */
export function saidOnce(standing: readonly Piece[], leads: Leads): Laid {
  const rugs = [...new Set(standing.flatMap(({ rug }) => (rug === null ? [] : [rug])))];
  const ofRugs = standing.filter(isOfRug);
  if (!standing.some(isAtRug) || rugs.length < 2 || !leads.leadOf("shared-first", rugs) || !leads.leadOf("shared", rugs)) return whole(standing);
  const rugsOf = rugsBy(ofRugs);
  const shared = sharedIn(ofRugs, rugsOf, leads);
  const isAllShared = !standing.some((p) => p.place.id === OWN_AID) && ofRugs.every((p) => unitsOf(p).every((unit) => rugsOf(p, unit).length > 1));
  const before = isAllShared ? [] : shared.filter((s) => isBefore(s, shared));
  const [start, end] = [standing.findIndex(isAtRug), standing.findLastIndex(isAtRug) + 1];
  const unsaid = unsaidAfter(standing.slice(0, start));
  // Of rugs that are the same in everything none is named, so none is answered by its number either.
  const opening = (pieces: readonly Piece[]): Laid =>
    (isAllShared ? { lines: pieces.filter((p) => !p.place.ahead), used: pieces.map(({ place, used }) => (place.ahead ? { ...used, here: null } : used)) } : whole(pieces));
  const all = [
    opening(standing.slice(0, start)), underLeads(before, "shared-first", { leads, unsaid, pieces: ofRugs }),
    ...rugs.map((rug) => laidRug(standing.filter((p) => p.rug === rug && isAtRug(p)), rugsOf, unsaid)),
    underLeads(shared.filter((s) => !before.includes(s)), "shared", { leads, unsaid, pieces: ofRugs }), whole(standing.slice(end)),
  ];
  return { lines: all.flatMap((l) => l.lines), used: all.flatMap((l) => l.used) };
}
