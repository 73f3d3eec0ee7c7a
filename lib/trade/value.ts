import type { Source } from "./fibres";

/** Spread of a cleaning price around the workshop's rate, by what the pile and the trouble ask for. Elicited. */
export const CLEANING_SPREAD = { low: 1, median: 1.15, high: 1.6, how: "elicited", source: "Elicited for this project: rate as it stands for a plain rug, up to 1.6 for hand work" } as const satisfies Source & Record<"low" | "median" | "high", number>;

/**
 * New edges of a cut-down in lengths of the rug's sides: one end off (low), an end and a side (median), all round (high);
 * and centimetres of turn added to each. Common practice, no published source.
 */
export const CUT_DOWN = { turnCm: 2, how: "common practice", source: "Common practice, no published source" } as const satisfies Source & { turnCm: number };

/** A second-hand rug that serves keeps at least this share of what it costs new. Elicited. */
export const LEAST_VALUE_SHARE = { share: 0.05, how: "elicited", source: "Elicited for this project" } as const satisfies Source & { share: number };

/** Log-standard deviation of a replacement's price around the price once paid for this rug. Elicited. */
export const PAID_LOG_SD = { value: 0.25, how: "elicited", source: "Elicited for this project: shops and years differ" } as const satisfies Source & { value: number };
