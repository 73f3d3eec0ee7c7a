import "server-only";

const REPLACEMENT = "\ufffd";
const HALF_A_PAIR = /\p{Surrogate}/gu;

/** PostgreSQL stores neither the character NUL nor half a surrogate pair; SQLite would take both, and break on moving. */
const clean = (text: string): string => text.replaceAll("\0", REPLACEMENT).replace(HALF_A_PAIR, REPLACEMENT);

/**
 * The same value with every such character in any text replaced by U+FFFD, as decoders do. Values that are not plain
 * objects or lists (times, bytes, the client's own markers) are left as they are.
 */
export function withCleanText<T>(value: T): T {
  if (typeof value === "string") return clean(value) as T;
  if (Array.isArray(value)) return value.map(withCleanText) as T;
  if (value === null || typeof value !== "object" || Object.getPrototypeOf(value) !== Object.prototype) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [clean(key), withCleanText(inner)])) as T;
}
