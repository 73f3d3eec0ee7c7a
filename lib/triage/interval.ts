import { CAPS_SOURCE, WHOLLY_MISLEADING } from "../trade/evidence-caps";
import { strengthBy } from "../trade/likelihood-table";
import { PRIOR_SOURCE, boundedPrior } from "../trade/priors";
import { CLASSES, type ClassVector } from "./classes";
import { drawCell, drawDirichlet } from "./dirichlet";
import { DRAWS, drawnOnce } from "./draws";
import type { EvidenceItem } from "./evidence";
import type { Random } from "./random";
import { capInto, weighInto } from "./weigh";

/** The value below which a share `q` of the sorted numbers lies, interpolated linearly (Hyndman and Fan's type 7, from memory). */
export function quantile(sorted: ArrayLike<number>, q: number): number {
  const at = (sorted.length - 1) * q;
  const below = sorted[Math.floor(at)] as number;
  const above = sorted[Math.ceil(at)] as number;
  return below + (above - below) * (at - Math.floor(at));
}

const WIDTH = CLASSES.length;
const rows = (width: number, row: (random: Random) => readonly number[]) => (random: Random) => {
  const out = new Float64Array(DRAWS * width);
  for (let d = 0; d < DRAWS; d += 1) out.set(row(random), d * width);
  return out;
};

/** Priors drawn as rows of so many cases, within the bounds of any prior. */
const drawnPriors = (seed: number, prior: ClassVector): Float64Array =>
  drawnOnce(seed, `prior ${prior.join()}`, rows(WIDTH, (random) => boundedPrior(drawDirichlet(random, prior, strengthBy(PRIOR_SOURCE.how)))));

/** The caps drawn as judgements too, downwards only: no draw may believe more than a cap allows. */
const drawnCaps = (seed: number, caps: ClassVector): Float64Array =>
  drawnOnce(seed, `caps ${caps.join()}`, rows(WIDTH, (random) => caps.map((cap) => Math.min(cap, drawCell(random, cap, strengthBy(CAPS_SOURCE.how))))));

const drawnMisleading = (seed: number): Float64Array =>
  drawnOnce(seed, `misleading ${WHOLLY_MISLEADING}`, rows(1, (random) => [drawCell(random, WHOLLY_MISLEADING, strengthBy(CAPS_SOURCE.how))]));

/**
 * The 80 % interval of every class: priors, likelihood rows, caps and the chance of being misled are drawn, each from its own
 * stream, and the belief is worked out anew. The interval always holds the point itself.
 */
export function intervals(model: { prior: ClassVector; items: readonly EvidenceItem[]; caps: ClassVector; untestedCaps: ClassVector; point: ClassVector; seed: number }): { low: number; high: number }[] {
  const { items, seed } = model;
  const [priors, caps, untestedCaps] = [drawnPriors(seed, model.prior), drawnCaps(seed, model.caps), drawnCaps(seed, model.untestedCaps)];
  const misleading = drawnMisleading(seed);
  const logs = items.map((item) => item.drawn(seed));
  const out = new Float64Array(WIDTH);
  const drawn = Array.from({ length: WIDTH }, () => new Float64Array(DRAWS));
  for (let d = 0; d < DRAWS; d += 1) {
    const tables = { prior: priors, priorAt: d * WIDTH, logs, at: d * (WIDTH - 1), misleading: misleading[d] as number, untestedCaps };
    weighInto(out, items, tables);
    capInto(out, tables, caps, d * WIDTH);
    for (let i = 0; i < WIDTH; i += 1) (drawn[i] as Float64Array)[d] = out[i] as number;
  }
  return model.point.map((point, i) => {
    const sorted = (drawn[i] as Float64Array).sort();
    return { low: Math.min(quantile(sorted, 0.1), point), high: Math.max(quantile(sorted, 0.9), point) };
  });
}
