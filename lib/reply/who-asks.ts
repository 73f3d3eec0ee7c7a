import type { EnquiryAnswers } from "../trade/questions";
import type { Words } from "../words/words";

/** Whoever an enquiry came from, as a document names them. */
export interface Asker {
  readonly name: string;
  /** `trade`: somebody who cleans rugs, about a customer's rug; `unsaid`: nobody said whose it is, as in a letter that answers no question. */
  readonly as: "owner" | "trade" | "unsaid";
  /** The cleaner's customer, where a name was told; null for everybody else. */
  readonly customer: string | null;
}

/** Whether they ask about a rug of a customer's, and are not its owner. */
export const isTradeAsking = ({ isTrade }: { readonly isTrade: boolean }, { reason }: EnquiryAnswers): boolean => isTrade || reason === "trade";

/** Who asked, and as what; the question of the reason is put to owners and to cleaners. */
export function askerOf({ client, enquiry, parties }: { client: { readonly name: string; readonly isTrade: boolean }; enquiry: EnquiryAnswers; parties: readonly { readonly kind: string; readonly name: string }[] }): Asker {
  const { name } = client;
  if (isTradeAsking(client, enquiry)) return { name, as: "trade", customer: parties.find((p) => p.kind === "trade-customer")?.name ?? null };
  return { name, as: enquiry.reason === undefined || enquiry.reason === "unsure" ? "unsaid" : "owner", customer: null };
}

/** Who is who, in a sentence: "The client, Ana Example, asked about it as its owner." */
export const askedBy = ({ name, as, customer }: Asker, { say }: Words): string => say("who.asked", { client: name, as, named: customer === null ? "no" : "yes", customer: customer ?? "" });
