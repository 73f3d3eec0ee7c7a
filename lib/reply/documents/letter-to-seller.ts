import type { RugAnswers } from "../../trade/questions";
import { RIGHTS, type Jurisdiction } from "../../trade/rights";
import type { Locale } from "../../words/locales";
import { quotedInside } from "../../words/quoted";
import { wordsIn, type Words } from "../../words/words";
import { heading, list, paragraph, small, type Block, type PrintedDocument } from "./blocks";

/** A bench test or a laboratory's report as the letter names it. */
export interface Tested { readonly by: string; readonly on: string; readonly found: string; readonly kind: "bench" | "laboratory" }

export interface SellerLetter {
  readonly client: { readonly name: string; readonly address: string };
  readonly seller: { readonly name: string; readonly address: string };
  /** In the client's words: "a grey rug, 170 × 240 cm". */
  readonly rug: string;
  readonly bought: { readonly on: string | null; readonly price: string | null; readonly invoice: string | null };
  /** Word for word what was said or written about the fibre; null where nothing was. */
  readonly saidWords: string | null;
  /** What the client answered that it was sold as, from the list; it stands where nobody gave the words. */
  readonly sellerSaid: RugAnswers["sellerSaid"];
  /** Word for word what the label says; null where there is none or it could not be read. */
  readonly labelWords: string | null;
  /** Whether the client looked for a label and found none: of one that nobody looked for the letter says nothing. */
  readonly isUnlabelled: boolean;
  readonly tests: readonly Tested[];
  readonly jurisdiction: Jurisdiction;
  /** Today, in the client's way of writing dates. */
  readonly today: string;
  readonly locale: Locale;
}

/** Days a seller is given to answer. Common practice, no published source. */
const DAYS_TO_ANSWER = 14;

/**
 * The client's own letter to a seller, for their signature; never sent by us. It quotes what was said and what the label
 * says, and alleges no intent. Without a bench test or a laboratory's report it asks for the composition and for proof, and
 * for nothing else.
 */
export function letterToSeller(l: SellerLetter): PrintedDocument {
  const words = wordsIn(l.locale);
  const { say } = words;
  const title = say("to-seller.title", { rug: l.rug });
  return {
    title, language: l.locale, head: null,
    blocks: [
      { kind: "signature", lines: [l.client.name, ...linesOf(l.client.address)] },
      { kind: "signature", lines: [l.seller.name, ...linesOf(l.seller.address)] },
      paragraph(l.today),
      { kind: "title", text: title },
      ...letterBlocks(l, words),
      { kind: "signature", lines: ["", l.client.name] },
      { kind: "part", text: say("to-seller.information") },
      heading(say("to-seller.laboratory"), 3),
      paragraph(say("to-seller.laboratory-shows")),
      heading(say("to-seller.rights"), 3),
      ...rightsBlocks(l.jurisdiction, words),
      small(words.table("right.not-legal-advice")),
    ],
  };
}

/** From the salutation to the close. */
function letterBlocks(l: SellerLetter, words: Words): Block[] {
  const { say } = words;
  const isTested = l.tests.length > 0;
  return [
    paragraph(say("to-seller.dear")),
    paragraph(boughtSentence(l, words)),
    ...saidBlocks(l, words),
    ...labelBlocks(l, words),
    ...(isTested ? [paragraph(say("to-seller.tested")), ...list(l.tests.map(({ kind, by, on, found }) => say("to-seller.test", { kind, by, day: on, found })))] : []),
    paragraph(isTested ? say("to-seller.how-does-it-fit") : say("to-seller.not-sure")),
    paragraph(say("to-seller.please")),
    ...list([say("to-seller.composition"), say("to-seller.proof", { last: isTested ? "no" : "yes" }), ...(isTested ? [say("to-seller.propose")] : [])]),
    paragraph(say("to-seller.answer", { days: DAYS_TO_ANSWER })),
    paragraph(say("to-seller.yours")),
  ];
}

/** The answers that name what it was sold as: neither "something else" nor "nothing was said". */
const SOLD_AS = ["silk", "wool-and-silk", "art-silk", "viscose", "silk-look", "wool", "cotton"] as const satisfies readonly RugAnswers["sellerSaid"][];

/** "It was sold to me as wool and silk.", as the client answered from a list; null where the answer names nothing. */
export function soldAsSentence(sellerSaid: RugAnswers["sellerSaid"], { say }: Words): string | null {
  const sold = SOLD_AS.find((id) => id === sellerSaid);
  return sold ? say("to-seller.sold-as", { as: say(`sold.${sold}`) }) : null;
}

/** Word for word where the words are known, else by the client's answer. */
function saidBlocks({ saidWords, sellerSaid }: SellerLetter, words: Words): Block[] {
  const said = saidWords ? words.say("to-seller.said", { words: quotedInside(saidWords) }) : soldAsSentence(sellerSaid, words);
  return said === null ? [] : [paragraph(said)];
}

function labelBlocks({ labelWords, isUnlabelled }: SellerLetter, { say }: Words): Block[] {
  if (labelWords) return [paragraph(say("to-seller.label", { words: quotedInside(labelWords) }))];
  return isUnlabelled ? [paragraph(say("to-seller.no-label"))] : [];
}

/** A year, or a month of one: bought in it, not on it. */
const A_TIME = /^(?:[\p{L}.]+ )?\d{4}$/u;

const boughtSentence = ({ rug, bought: { on, price, invoice } }: SellerLetter, { say }: Words): string =>
  say("to-seller.bought", {
    rug, mid: rug.includes(",") ? "yes" : "no", on: on ?? "", when: on === null ? "unknown" : A_TIME.test(on) ? "in" : "on",
    price: price ?? "", priced: price === null ? "no" : "yes", invoice: invoice ?? "", invoiced: invoice === null ? "no" : "yes",
  });

function rightsBlocks(jurisdiction: Jurisdiction, words: Words): readonly Block[] {
  const rows = RIGHTS[jurisdiction].flatMap(({ about, source }, at) => (about === "service" ? [] : [words.say("to-seller.right", { right: words.table(`right.${jurisdiction}.${at}`), source })]));
  return rows.length > 0 ? list(rows) : [paragraph(words.say("to-seller.rights-elsewhere"))];
}

const linesOf = (address: string): string[] => address.split(/\r?\n/u).map((line) => line.trim()).filter((line) => line !== "");
