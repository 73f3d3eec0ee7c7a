import type { LabelPart } from "../trade/label-names";
import type { LabelWord } from "./label-text";
import type { LabelToken } from "./label-tokens";

/** A percentage or a fibre: what is shared out among the parts of the rug. */
export type Piece = Extract<LabelToken, { kind: "percent" | "fibre" }>;
const isPiece = (t: LabelToken | undefined): t is Piece => t?.kind === "percent" || t?.kind === "fibre";

/** Two neighbours with no other word and nothing that divides between them. */
const touching = (words: readonly LabelWord[], a: LabelToken | undefined, b: LabelToken | undefined) =>
  a !== undefined && b !== undefined && a.end >= b.at && (a.at === b.at || words[b.at]?.gap === "none");

/** What the label begins with, and for each place where the next part stands (the number of tokens where none does). */
interface Outline { readonly begins: "part" | "piece" | null; readonly nextPart: readonly number[] }

function outlineOf(tokens: readonly LabelToken[]): Outline {
  const nextPart: number[] = [];
  let next = tokens.length;
  for (let i = tokens.length - 1; i >= 0; i -= 1) {
    nextPart[i] = next;
    if (tokens[i]?.kind === "part") next = i;
  }
  const first = tokens.find((t) => isPiece(t) || t.kind === "part");
  return { begins: first === undefined ? null : first.kind === "part" ? "part" : "piece", nextPart };
}

/**
 * Whether a part stands before its fibres ("Backing: jute") or after them ("wool pile"). A colon after it or one side
 * that touches decides; where both or neither do, the label's first piece does.
 */
function heads(words: readonly LabelWord[], tokens: readonly LabelToken[], i: number, outline: Outline): boolean {
  const [before, part, after] = [tokens[i - 1], tokens[i] as LabelToken, tokens[i + 1]];
  if (words[part.end]?.gap === "colon") return true;
  const touchesBefore = isPiece(before) && touching(words, before, part);
  const touchesAfter = isPiece(after) && touching(words, part, after);
  return touchesBefore === touchesAfter ? outline.begins === "part" : touchesAfter;
}

/** Where a part that follows its fibres closes an open heading: only what comes after the last divide is its own. */
function ownOf(words: readonly LabelWord[], waiting: readonly Piece[]): number {
  return Math.max(0, waiting.findLastIndex((p) => words[p.at]?.gap !== "none"));
}

const shareOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, p) => sum + (p.kind === "percent" ? (p.value ?? 0) : 0), 0);
/**
 * Where a part that is not the pile follows its fibres, and nothing before was headed: “100% wool, cotton warp”. What comes after the last
 * divide is its own, and what stands before it the rug's, where either is whole by itself: a hundred, or fibres without a share beside such.
 * Shares that only together make a hundred are all the part's: “60% jute, 40% cotton ground”.
 */
function ownOfFoot(words: readonly LabelWord[], waiting: readonly Piece[]): number {
  const at = ownOf(words, waiting);
  const [before, own] = [waiting.slice(0, at), waiting.slice(at)];
  const named = [before, own].every((pieces) => pieces.some((p) => p.kind === "fibre"));
  return named && [shareOf(before), shareOf(own)].every((share) => share === 0 || share >= 100) ? at : 0;
}

/** Whether "on" or "with" sets the pile apart from what follows: fibres, and for "with" a ground or fringe that ends them. */
function divides(words: readonly LabelWord[], tokens: readonly LabelToken[], i: number, outline: Outline): boolean {
  const join = tokens[i];
  if (!isPiece(tokens[i + 1]) || join?.kind !== "join") return false;
  const at = outline.nextPart[i] as number;
  const ends = tokens[at];
  return join.word === "on" || (ends?.kind === "part" && ends.part !== "pile" && !heads(words, tokens, at, outline));
}

/**
 * Words that head a piece with a colon and are no part that we know, on a label that names parts: perhaps one misread,
 * whose fibres are now counted to the part before.
 */
export function strangeHeads(words: readonly LabelWord[], tokens: readonly LabelToken[]): string[] {
  if (!tokens.some((t) => t.kind === "part")) return [];
  const known = new Set(tokens.map((t) => t.end));
  return tokens.flatMap((t) => (isPiece(t) && t.at > 0 && words[t.at]?.gap === "colon" && !known.has(t.at) ? [words[t.at - 1]!.printed] : []));
}

/** Shares the pieces of a label among the parts of the rug; `whole` gets what no part claims. */
export function byPart(words: readonly LabelWord[], tokens: readonly LabelToken[]): Map<LabelPart, Piece[]> {
  const parts = new Map<LabelPart, Piece[]>();
  const outline = outlineOf(tokens);
  const put = (part: LabelPart, pieces: readonly Piece[]) => {
    const there = parts.get(part) ?? [];
    for (const piece of pieces) there.push(piece);
    if (there.length > 0) parts.set(part, there);
  };
  let open: LabelPart = "whole";
  let waiting: Piece[] = [];
  for (const [i, token] of tokens.entries()) {
    if (isPiece(token)) waiting.push(token);
    else if (token.kind === "part" && heads(words, tokens, i, outline)) {
      put(open, waiting);
      [open, waiting] = [token.part, []];
    } else if (token.kind === "part") {
      const own = open === token.part || (open === "whole" && token.part === "pile") ? 0 : (open === "whole" ? ownOfFoot : ownOf)(words, waiting);
      put(open, waiting.slice(0, own));
      put(token.part, waiting.slice(own));
      [open, waiting] = ["whole", []];
    } else if (token.kind === "join" && open === "whole" && (waiting.length > 0 || parts.has("pile")) && divides(words, tokens, i, outline)) {
      put("pile", waiting);
      [open, waiting] = [token.word === "on" ? "ground" : "whole", []];
    }
  }
  put(open, waiting);
  return parts;
}
