import { CLASS_OF_FINE, REGENERATED, type FineFibre } from "../trade/label-fibres";
import type { Piece } from "./label-parts";
import type { FibreSays } from "./label-tokens";

/** A fibre as read, with what its name says beside it. */
export interface ReadFibre { readonly fibre: FineFibre; readonly percent: number | null; readonly says: readonly FibreSays[] }

type Share = Extract<Piece, { kind: "percent" }>;
type Name = Extract<Piece, { kind: "fibre" }>;

/** "80/20 wool/viscose", "wool/viscose 80/20": several percentages in a row and as many names, in the same order; else null. */
function listed(pieces: readonly Piece[]): ReadFibre[] | null {
  const half = pieces.length / 2;
  const first = pieces.slice(0, half);
  const alike = (part: readonly Piece[]) => part.every((p) => p.kind === part[0]?.kind);
  if (half < 2 || !Number.isInteger(half) || !alike(first) || !alike(pieces.slice(half)) || first[0]?.kind === pieces[half]?.kind) return null;
  return first.map((piece, i) => {
    const pair = [piece, pieces[half + i] as Piece];
    const name = pair.find((p) => p.kind === "fibre") as Name;
    return { fibre: name.fibre, percent: (pair.find((p) => p.kind === "percent") as Share).value, says: name.says };
  });
}

/** "100 % wool and silk": at most one word stands between two names that share a percentage. */
const neighbours = (a: Piece, b: Piece) => Math.max(a.at, b.at) - Math.min(a.end, b.end) <= 1;

const bare = (pieces: readonly Piece[]): ReadFibre[] => pieces.flatMap((p) => (p.kind === "fibre" ? [{ fibre: p.fibre, percent: null, says: p.says }] : []));

export interface Pairing { readonly fibres: readonly ReadFibre[]; readonly orphans: number; readonly together: boolean; readonly unclear: boolean }

/** "XYZ 60 % wool 40 %": with a first name that could not be read, each percentage may belong to the name on either side. */
function isUnclear(pieces: readonly Piece[]): boolean {
  const first = pieces[0];
  return first?.kind === "percent" && first.led && pieces[pieces.length - 1]?.kind === "percent" && pieces.some((p) => p.kind === "fibre");
}

/**
 * Gives each percentage its fibre: the first one after it, or, where the label puts names first, the last one before it.
 * `orphans`: percentages without a fibre;
 * `together`: 100 % is said of two different fibres at once, so neither has a share; `unclear`: no share is taken.
 */
export function paired(pieces: readonly Piece[]): Pairing {
  const inOrder = listed(pieces);
  if (inOrder) return { fibres: inOrder, orphans: 0, together: false, unclear: false };
  if (isUnclear(pieces)) return { fibres: bare(pieces), orphans: 0, together: false, unclear: true };
  const ordered = pieces[0]?.kind === "percent" ? pieces : [...pieces].reverse();
  const fibres: ReadFibre[] = [];
  let share: Share | null = null;
  let orphans = 0;
  let together = false;
  let last: Name | null = null;
  for (const piece of ordered) {
    const before = fibres[fibres.length - 1];
    if (piece.kind === "percent") {
      if (share !== null) orphans += 1;
      [share, last] = [piece, null];
    } else if (share !== null) {
      fibres.push({ fibre: piece.fibre, percent: share.value, says: piece.says });
      [share, last] = [null, piece];
    } else if (last === null || CLASS_OF_FINE[last.fibre] !== CLASS_OF_FINE[piece.fibre]) {
      if (before?.percent === 100 && last !== null && neighbours(last, piece) && ![last.fibre, piece.fibre].includes("art-silk")) {
        fibres[fibres.length - 1] = { ...before, percent: null };
        together = true;
      }
      fibres.push({ fibre: piece.fibre, percent: null, says: piece.says });
    }
  }
  return { fibres: ordered === pieces ? fibres : fibres.reverse(), orphans: orphans + (share === null ? 0 : 1), together, unclear: false };
}

/** The same said twice, in two languages say, counts once; a bare name beside the same name with a percentage is dropped. */
export function merged(fibres: readonly ReadFibre[]): ReadFibre[] {
  const stated = new Set(fibres.filter((f) => f.percent !== null).map((f) => f.fibre));
  const seen = new Set<string>();
  return fibres.filter((f) => {
    const key = `${f.fibre} ${f.percent}`;
    const again = seen.has(key) || (f.percent === null && stated.has(f.fibre));
    seen.add(key);
    return !again;
  });
}

/** "Art silk (viscose)": the fibre's name and the trade word are one fibre, with the percentage of either. */
export function withoutTradeWord(fibres: readonly ReadFibre[]): readonly ReadFibre[] {
  const trade = fibres.find((f) => f.fibre === "art-silk");
  const legal = fibres.find((f) => REGENERATED.includes(f.fibre) && (f.percent === null || trade?.percent === null));
  if (!trade || !legal) return fibres;
  return fibres.filter((f) => f !== trade).map((f) => (f === legal ? { ...f, percent: f.percent ?? trade.percent } : f));
}
