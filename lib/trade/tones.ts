/** How the workshop's letters sound: a paragraph's own words, or a variant of them where it has one. */
export const TONES = { plain: "Plain", warm: "Warmer", brief: "Shorter" } as const;
export type Tone = keyof typeof TONES;
export const TONE_IDS = Object.keys(TONES) as [Tone, ...Tone[]];
