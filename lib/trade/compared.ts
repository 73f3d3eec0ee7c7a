/** How an affected spot compares with an untouched one, by the direction of its change as the photo's arithmetic names it. */
export const COMPARED = {
  none: "no different from", "yellower-darker": "browner than", yellower: "yellower than", "lighter-paler": "lighter and paler than", darker: "darker than",
  greyer: "darker and duller than", "lightness-only": "lighter or darker, and nothing else, than", "another-hue": "of another hue than", unknown: "different from",
} as const;
export type Compared = keyof typeof COMPARED;
/** The direction that a finding names; one that is not known as such. */
export const comparedBy = (direction: unknown): Compared => (typeof direction === "string" && Object.hasOwn(COMPARED, direction) ? (direction as Compared) : "unknown");
