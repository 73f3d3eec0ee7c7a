import fitted from "./sureness-weights.json";

/**
 * How much each sign of sureness-signs.ts speaks for a sentence that promises too much, in decibans. Computed: a logistic
 * regression with a ridge over the tables of sentences in tests/unit/reply/promises, fitted again by their test; kept by weight,
 * so that a person can read which words weigh how much.
 */
export const SURENESS_WEIGHTS: ReadonlyMap<string, number> = new Map(Object.entries(fitted.signs).flatMap(([weight, signs]) => signs.map((sign) => [sign, Number(weight)] as const)));
/** What a sentence without any sign weighs, in decibans. */
export const SURENESS_START: number = fitted.start;
