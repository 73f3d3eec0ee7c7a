import { xyzOf, type Lab } from "./colour";

/** Yellowness index YI of ASTM E313-15e1 for D65 and the 2° observer (coefficients read in an implementation's source). White of the light is about 0; higher is yellower. */
export const yellownessOfXyz = ([x, y, z]: readonly [number, number, number]): number => (100 * (1.2985 * x - 1.1335 * z)) / y;

/** The same of a Lab colour. Black has none: NaN. */
export const yellownessOf = (colour: Lab): number => yellownessOfXyz(xyzOf(colour));

/** The index is made for near-white specimens; of a blue or a red it is a number without a meaning. Least L* and most chroma: *elicited* */
const NEAR_WHITE = { lightness: 55, chroma: 20 } as const;
export const isNearWhite = ({ L, a, b }: Lab): boolean => L >= NEAR_WHITE.lightness && Math.hypot(a, b) <= NEAR_WHITE.chroma;
