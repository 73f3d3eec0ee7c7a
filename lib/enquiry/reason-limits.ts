// Apart from their schemas, so that a page that only needs the length of a field ships no schema.

/** Characters of the reason for sending a letter that says more than is known. *elicited* */
export const REASON_CHARS = { least: 10, most: 500 } as const;
/** Characters of the reason why something that was recorded does not count. *elicited* */
export const WITHDRAWAL_CHARS = 500;
