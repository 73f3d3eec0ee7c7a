/** What a search looks through. */
export interface Searched { reference: string; title: string; client: { name: string; email: string | null; telephone: string | null } }

/** Capitals, accents and runs of spaces make no difference: "zoe" finds "Zoë". */
const plain = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/\s+/g, " ").trim();

/** Whether every word searched for stands somewhere in the enquiry's reference, title or client. No words: everything does. */
export function matches(text: string, { reference, title, client }: Searched): boolean {
  const where = plain([reference, title, client.name, client.email, client.telephone].filter(Boolean).join(" "));
  return plain(text).split(" ").every((word) => where.includes(word));
}
