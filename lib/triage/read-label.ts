import { CLASS_OF_FINE, REGENERATED, type FineFibre } from "../trade/label-fibres";
import type { LabelPart } from "../trade/label-names";
import { byPart, type Piece } from "./label-parts";
import { labelTokens } from "./label-tokens";

/** A fibre on a label; `percent` 0–100, null where the label gives none. */
export interface LabelFibre { readonly fibre: FineFibre; readonly percent: number | null }
export interface LabelComponent { readonly part: LabelPart; readonly fibres: readonly LabelFibre[] }
export interface LabelReading {
  readonly components: readonly LabelComponent[];
  /** What is not as it should be, each a sentence. */
  readonly doubts: readonly string[];
  /** Words on it that suggest a fibre without naming one: `silk-look`, `art-silk`. */
  readonly suggests: readonly string[];
}

/** "80/20 wool/viscose", "wool/viscose 80/20": several percentages in a row and as many names, in the same order; else null. */
function listed(pieces: readonly Piece[]): LabelFibre[] | null {
  const half = pieces.length / 2;
  const first = pieces.slice(0, half);
  const alike = (part: readonly Piece[]) => part.every((p) => p.kind === part[0]?.kind);
  if (half < 2 || !Number.isInteger(half) || !alike(first) || !alike(pieces.slice(half)) || first[0]?.kind === pieces[half]?.kind) return null;
  return first.map((piece, i) => {
    const pair = [piece, pieces[half + i] as Piece];
    const name = pair.find((p) => p.kind === "fibre") as Extract<Piece, { kind: "fibre" }>;
    const share = pair.find((p) => p.kind === "percent") as Extract<Piece, { kind: "percent" }>;
    return { fibre: name.fibre, percent: share.value };
  });
}

/** Gives each percentage its fibre: the first one after it, or, where the label puts names first, the last one before it. */
function paired(pieces: readonly Piece[]): { fibres: LabelFibre[]; orphans: number } {
  const inOrder = listed(pieces);
  if (inOrder) return { fibres: inOrder, orphans: 0 };
  const ordered = pieces[0]?.kind === "percent" ? pieces : [...pieces].reverse();
  const fibres: LabelFibre[] = [];
  let percent: number | null = null;
  let orphans = 0;
  let last: FineFibre | null = null;
  for (const piece of ordered) {
    if (piece.kind === "percent") {
      if (percent !== null) orphans += 1;
      percent = piece.value;
      last = null;
    } else if (percent !== null) {
      fibres.push({ fibre: piece.fibre, percent });
      percent = null;
      last = piece.fibre;
    } else if (last === null || CLASS_OF_FINE[last] !== CLASS_OF_FINE[piece.fibre]) fibres.push({ fibre: piece.fibre, percent: null });
  }
  return { fibres: ordered === pieces ? fibres : fibres.reverse(), orphans: orphans + (percent === null ? 0 : 1) };
}

/** The same said twice, in two languages say, counts once; a bare name beside the same name with a percentage is dropped. */
function merged(fibres: readonly LabelFibre[]): LabelFibre[] {
  return fibres.filter((f, i) => {
    const earlier = fibres.slice(0, i).some((g) => g.fibre === f.fibre && g.percent === f.percent);
    const better = f.percent === null && fibres.some((g) => g.fibre === f.fibre && g.percent !== null);
    return !earlier && !better;
  });
}

/** "Art silk (viscose)": the fibre's name and the trade word are one fibre, with the percentage of either. */
function withoutTradeWord(fibres: readonly LabelFibre[]): readonly LabelFibre[] {
  const trade = fibres.find((f) => f.fibre === "art-silk");
  const legal = fibres.find((f) => REGENERATED.includes(f.fibre) && (f.percent === null || trade?.percent === null));
  if (!trade || !legal) return fibres;
  return fibres.filter((f) => f !== trade).map((f) => (f === legal ? { fibre: f.fibre, percent: f.percent ?? trade.percent } : f));
}

const PART_NAMES: Readonly<Record<LabelPart, string>> = { pile: "pile", ground: "ground", fringe: "fringe", whole: "rug" };
/** Rounding on labels: whole per cents of several fibres may miss 100 by this much. Elicited. */
const SUM_SLACK = 1;

function doubtsOf(part: LabelPart, fibres: readonly LabelFibre[], orphans: number): string[] {
  const name = PART_NAMES[part];
  const known = fibres.filter((f) => f.percent !== null);
  const sum = known.reduce((total, f) => total + (f.percent as number), 0);
  const doubts: string[] = [];
  if (known.length > 0 && Math.abs(sum - 100) > SUM_SLACK) doubts.push(`The percentages of the ${name} add up to ${Number(sum.toFixed(1))}, not 100.`);
  if (known.length > 0 && known.length < fibres.length) doubts.push(`A fibre of the ${name} stands without its percentage.`);
  if (orphans > 0) doubts.push(`A percentage of the ${name} stands without a fibre that could be read.`);
  if (fibres.some((f) => f.fibre === "synthetic" || f.fibre === "other-fibres")) doubts.push(`Part of the ${name} is named only in general terms.`);
  if (fibres.some((f) => f.fibre === "art-silk")) doubts.push("A trade word for imitation silk stands where the law wants a fibre’s name.");
  if (fibres.some((f) => f.fibre === "bamboo")) doubts.push("Bamboo is a plant; the fibre made of it is nearly always viscose.");
  return doubts;
}

/**
 * Reads the fibres of a label in any of the languages of the table, percentages before or after the names. Never throws;
 * a text without a fibre gives no components. Longer texts cost time in proportion.
 */
export function readLabel(text: string): LabelReading {
  const { words, tokens } = labelTokens(text);
  const components: LabelComponent[] = [];
  const doubts: string[] = [];
  for (const [part, pieces] of byPart(words, tokens)) {
    const { fibres, orphans } = paired(pieces);
    const distinct = withoutTradeWord(merged(fibres));
    doubts.push(...doubtsOf(part, distinct, orphans));
    if (distinct.length > 0) components.push({ part, fibres: distinct });
  }
  const looks = tokens.flatMap((t) => (t.kind === "look" && t.look === "silk-look" ? ["silk-look"] : t.kind === "fibre" && t.fibre === "art-silk" ? ["art-silk"] : []));
  return { components, doubts: [...new Set(doubts)], suggests: [...new Set(looks)] };
}
