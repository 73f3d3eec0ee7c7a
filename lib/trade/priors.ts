import { FIBRE_IDS, type FibreId, type Source } from "./fibres";

/**
 * Who writes in: the chance of each fibre before anything is known of the rug. Elicited from how a workshop's post
 * looks; a workshop in a town of old houses sees more wool and edits them. Worried owners over-represent viscose.
 */
export const PRIOR_SOURCE: Source = { how: "elicited", source: "Enquiries by web form, all reasons together, judged for this project; to be replaced by counts of outcomes" };

export const PRIORS: Readonly<Record<FibreId, number>> = {
  silk: 0.04, wool: 0.262, "wool-silk": 0.03, viscose: 0.2, "wool-viscose": 0.12, "silk-viscose": 0.02, "cotton-viscose": 0.02,
  lyocell: 0.015, acetate: 0.003, cotton: 0.03, "mercerised-cotton": 0.01, bast: 0.005, "hard-fibre": 0.025,
  polyamide: 0.04, polyester: 0.07, polypropylene: 0.06, acrylic: 0.02, other: 0.03,
};

/** A prior is an opinion: none may pass this, none may fall under `SMALLEST_PRIOR`, and "other" never under `LEAST_OTHER`. Elicited. */
export const LARGEST_PRIOR = 0.8;
export const SMALLEST_PRIOR = 0.001;
export const LEAST_OTHER = 0.03;

type Shift = Readonly<Partial<Record<FibreId, number>>>;

/**
 * Factors on the odds by why somebody writes. Only reasons that say nothing about the trouble move the prior: trouble
 * (just happened, older, after cleaning) is weighed as a finding and must not count twice. Elicited.
 */
export const REASON_SHIFTS: Readonly<Record<string, Shift>> = {
  routine: { wool: 1.25, viscose: 0.7, "wool-viscose": 0.85 },
  "what-is-it": { silk: 1.5, "wool-silk": 1.3, viscose: 1.15, "mercerised-cotton": 1.5 },
  "mis-sold": { viscose: 2, "silk-viscose": 1.6, "wool-viscose": 1.6, silk: 0.8, wool: 0.35, "hard-fibre": 0.2, polyamide: 0.4 },
  trade: { viscose: 1.7, "wool-viscose": 1.3, polyester: 0.7, polypropylene: 0.7 },
};

/** Factors by how the enquiry came: people with older rugs rather telephone. Elicited. */
export const CHANNEL_SHIFTS: Readonly<Record<"web" | "email" | "telephone", Shift>> = {
  web: {}, email: {}, telephone: { wool: 1.15, silk: 1.15, polypropylene: 0.8 },
};

/**
 * The prior of one enquiry; sums to 1. The workshop's own table replaces ours (classes it leaves out keep ours), then
 * reason and channel shift it. Odd numbers (negative, not finite) count as the smallest prior.
 */
export function priorFor(enquiry: { priors: Shift | null; reason: string | null; channel: "web" | "email" | "telephone" }): Record<FibreId, number> {
  const reason = (enquiry.reason !== null && Object.hasOwn(REASON_SHIFTS, enquiry.reason) && REASON_SHIFTS[enquiry.reason]) || {};
  const channel = CHANNEL_SHIFTS[enquiry.channel];
  const raw = FIBRE_IDS.map((f) => {
    const base = enquiry.priors?.[f] ?? PRIORS[f];
    return Number.isFinite(base) && base > 0 ? base * (reason[f] ?? 1) * (channel[f] ?? 1) : 0;
  });
  return Object.fromEntries(boundedPrior(raw).map((p, i) => [FIBRE_IDS[i] as FibreId, p])) as Record<FibreId, number>;
}

/**
 * Shares (in the order of FIBRE_IDS) scaled to sum 1 with every one between its bounds: shares at a bound are fixed, the
 * rest is scaled to what remains.
 */
export function boundedPrior(raw: readonly number[]): number[] {
  const least = (i: number) => (FIBRE_IDS[i] === "other" ? LEAST_OTHER : SMALLEST_PRIOR);
  const fixed = new Map<number, number>();
  for (;;) {
    const free = raw.map((_, i) => i).filter((i) => !fixed.has(i));
    const room = 1 - [...fixed.values()].reduce((a, b) => a + b, 0);
    const total = free.reduce((sum, i) => sum + (raw[i] as number), 0);
    const share = (i: number) => (total > 0 ? ((raw[i] as number) / total) * room : room / free.length);
    const high = free.filter((i) => share(i) > LARGEST_PRIOR);
    const out = high.length > 0 ? high : free.filter((i) => share(i) < least(i));
    if (out.length === 0) return raw.map((_, i) => fixed.get(i) ?? share(i));
    for (const i of out) fixed.set(i, high.length > 0 ? LARGEST_PRIOR : least(i));
  }
}
