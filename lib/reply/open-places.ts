/** What stands where only a person can write: the answer to what the client wrote. It never leaves. */
export const ANSWER_HERE = "{Your answer to what they wrote}";

const OPEN_PLACE = /\{[^{}\n]{1,200}\}/gu;

/** What a letter still leaves open, as it stands there, in order; a letter leaves with none. Anything in braces is one. */
export const openPlaces = (text: string): string[] => text.match(OPEN_PLACE) ?? [];

/** Why a letter with open places does not leave, in a sentence; null where it has none. */
export function openPlacesSay(text: string): string | null {
  const [first, ...more] = openPlaces(text);
  if (!first) return null;
  return `This letter still has ${more.length > 0 ? `${more.length + 1} open places` : "an open place"}: ${first}. Write what belongs there, or take it out.`;
}
