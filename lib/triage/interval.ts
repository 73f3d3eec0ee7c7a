import { CAPS_SOURCE, WHOLLY_MISLEADING } from "../trade/evidence-caps";
import { ROW_STRENGTH } from "../trade/likelihood-table";
import { PRIOR_SOURCE, boundedPrior } from "../trade/priors";
import type { ClassVector } from "./classes";
import { drawCell, drawDirichlet } from "./dirichlet";
import type { EvidenceItem } from "./evidence";
import { seededRandom, type Random } from "./random";
import { posterior } from "./weigh";

/** Draws of all tables for one interval. 300 put the ends of an 80 % interval within about .02. */
export const DRAWS = 300;

/** The value below which a share `q` of the sorted numbers lies, interpolated linearly (Hyndman and Fan's type 7, from memory). */
export function quantile(sorted: readonly number[], q: number): number {
  const at = (sorted.length - 1) * q;
  const below = sorted[Math.floor(at)] as number;
  const above = sorted[Math.ceil(at)] as number;
  return below + (above - below) * (at - Math.floor(at));
}

/** A prior drawn as a row of so many cases, within the bounds of any prior. */
const drawnPrior = (random: Random, prior: ClassVector): number[] => boundedPrior(drawDirichlet(random, prior, ROW_STRENGTH[PRIOR_SOURCE.how]));

/** The caps drawn as judgements too, downwards only: no draw may believe more than a cap allows. */
const drawnCaps = (random: Random, caps: ClassVector): number[] => caps.map((cap) => Math.min(cap, drawCell(random, cap, ROW_STRENGTH[CAPS_SOURCE.how])));

/**
 * The 80 % interval of every class: priors, likelihood rows, caps and the chance of being misled are drawn, each from its own
 * stream, and the belief is worked out anew. The interval always holds the point itself.
 */
export function intervals(model: { prior: ClassVector; items: readonly EvidenceItem[]; caps: ClassVector; point: ClassVector; seed: number }): { low: number; high: number }[] {
  const priorStream = seededRandom(model.seed, "prior");
  const misleadingStream = seededRandom(model.seed, "misleading");
  const capStream = seededRandom(model.seed, "caps");
  const streams = model.items.map((item) => seededRandom(model.seed, item.what));
  const drawn = Array.from({ length: DRAWS }, () => posterior({
    prior: drawnPrior(priorStream, model.prior),
    evidence: model.items.map((item, i) => ({ item, likelihood: item.draw(streams[i] as Random) })),
    misleading: drawCell(misleadingStream, WHOLLY_MISLEADING, ROW_STRENGTH[CAPS_SOURCE.how]),
    caps: drawnCaps(capStream, model.caps),
  }));
  return model.point.map((point, i) => {
    const sorted = drawn.map((d) => d[i] as number).sort((a, b) => a - b);
    return { low: Math.min(quantile(sorted, 0.1), point), high: Math.max(quantile(sorted, 0.9), point) };
  });
}
