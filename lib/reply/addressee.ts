/** Words that name nobody, in small letters: with one of them people begin to tell of a seller whose name they do not know, and none of them is a name by a capital. *elicited* */
const NAMELESS = [
  "the", "a", "an", "my", "our", "his", "her", "their", "this", "that", "some", "someone", "somebody", "one", "any", "no", "not", "none", "nobody", "i", "we", "it", "they", "he", "she",
  "shop", "store", "seller", "dealer", "salesman", "trader", "website", "site", "market", "bazaar", "auction", "showroom", "warehouse", "invoice", "receipt",
  "online", "internet", "unknown", "unsure", "don’t", "don't", "can’t", "can't", "cannot", "forgotten", "forgot",
] as const;
/** What follows one of these tells where the seller is, not what they are called. */
const WHERE = ["in", "on", "at", "from", "near", "by", "off", "round"] as const;

const isOneOf = (list: readonly string[], word: string): boolean => list.includes(word.toLowerCase());

/**
 * Whether somebody can be addressed by what a client wrote for a seller's name: "Kestrel Floors", "the House of Rugs", "kestrel floors". Not by a phrase that
 * only tells of them: "the shop on the invoice", "a dealer in Fez", "online".
 */
export function namesSomebody(told: string): boolean {
  const words = told.split(/[^\p{L}\p{N}’'&.-]+/u).filter((word) => /[\p{L}\p{N}]/u.test(word));
  const [first = ""] = words;
  if (!isOneOf([...NAMELESS, ...WHERE], first)) return words.length > 0;
  const place = words.findIndex((word, at) => at > 0 && isOneOf(WHERE, word));
  return words.slice(1, place === -1 ? undefined : place).some((word) => /^\p{Lu}/u.test(word) && !isOneOf(NAMELESS, word));
}
