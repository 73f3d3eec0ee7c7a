/** Text for a header: one line, no control characters, no direction overrides that could make a name read as another. */
export const headerText = (text: string): string =>
  text.replace(/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069]+/gu, " ").replace(/\s+/g, " ").trim();

/** Longer than any address may be (RFC 5321 §4.5.3.1.3: 256 with its brackets). */
const MAX_ADDRESS_CHARS = 254;

/**
 * Whether the text is one plain address: a local part, one @, a domain, nothing that could begin a second address or
 * header. Quoted local parts are refused; domains in any script are not.
 */
export function isOneAddress(text: string): boolean {
  return text.length <= MAX_ADDRESS_CHARS && /^[^\s@,;:<>()[\]\\"\p{C}]+@[^\s@,;:<>()[\]\\"\p{C}]+$/u.test(text);
}

/** For Message-IDs where the workshop has no address yet; .invalid never resolves (RFC 2606 §2). */
const NO_DOMAIN = "plainpile.invalid";

/** The domain of an address in its ASCII form, or a reserved one where there is none. */
export function domainOf(address: string | null): string {
  if (!address || !isOneAddress(address)) return NO_DOMAIN;
  try {
    return new URL(`http://${address.slice(address.lastIndexOf("@") + 1)}`).hostname;
  } catch {
    return NO_DOMAIN;
  }
}
