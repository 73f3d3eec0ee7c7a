/** Words between marks of quotation; a single mark that closes stands before no letter, as an apostrophe does. */
const QUOTED = /[“„"«]\s*([^“”„"«»\n]+?)\s*[”“"»]|(?<![\p{L}\p{N}])[‘']([^‘\n]+?)[’'](?![\p{L}\p{N}])/gu;
const TELLER = "(?:he|she|they|we|i|it|who|the\\s+(?:seller|shop|dealer|salesman|saleswoman|man|woman|owner|assistant)|my\\s+\\p{L}+)";
const TELLS = "(?:said|says|told|tells|promised|swore|claimed|called|assured|added|wrote|thought)";
/** A dash, a comma or a bracket, and then somebody who tells of it. */
const NARRATION = new RegExp(`\\s*(?:\\s[-–—]+\\s|[—,;(]\\s*)${TELLER}\\s+(?:\\p{L}+\\s+)?${TELLS}(?!\\p{L}).*$`, "isu");

/**
 * Of what a client wrote down as a seller's words, those that are the seller's: what stands in marks of quotation, else what stands
 * before the client begins to tell of it. Where neither can be told apart, the words as they are.
 */
export function sellersOwnWords(told: string): string {
  const quoted = [...told.matchAll(QUOTED)].map(([, double, single]) => (double ?? single ?? "").trim()).filter((words) => /\p{L}/u.test(words));
  if (quoted.length > 0) return quoted.join(" … ");
  const before = told.replace(NARRATION, "").trim();
  return /\p{L}/u.test(before) ? before : told.trim();
}
