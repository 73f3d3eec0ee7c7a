/** How much a person may tell us; the schemas and what is said of them share it. Lengths in characters and centimetres. */
export const LIMITS = {
  nameChars: 200, shortTextChars: 500, labelChars: 2_000, storyChars: 8_000, telephoneChars: 40,
  maxRugs: 12, maxPhotos: 12,
  minCm: 20, maxCm: 2_000, maxPrice: 10_000_000, firstYear: 1850,
} as const;
