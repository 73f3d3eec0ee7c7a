import { NOT_LEGAL_ADVICE, RIGHTS, type Jurisdiction } from "../../trade/rights";
import { heading, list, paragraph, small, type PrintedDocument } from "./blocks";
import type { Locale } from "../../words/locales";

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
  /** Word for word what the label says; null where there is none or it could not be read. */
  readonly labelWords: string | null;
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
  const isTested = l.tests.length > 0;
  return {
    title: `The fibre of ${l.rug}`, language: l.locale, head: null,
    blocks: [
      { kind: "signature", lines: [l.client.name, ...linesOf(l.client.address)] },
      { kind: "signature", lines: [l.seller.name, ...linesOf(l.seller.address)] },
      paragraph(l.today),
      { kind: "title", text: `The fibre of ${l.rug}` },
      paragraph("Dear Sir or Madam,"),
      paragraph(boughtSentence(l)),
      ...(l.saidWords ? [paragraph(`When I bought it, it was described to me as “${l.saidWords}”.`)] : []),
      paragraph(l.labelWords ? `The label on it reads “${l.labelWords}”.` : "I have found no label on it that names its fibres."),
      ...(isTested ? testedBlocks(l.tests) : []),
      paragraph(isTested ? "I should like to know how this fits the description." : "I am not sure what the pile is made of, and I should be glad if you could tell me."),
      paragraph("Please let me have, in writing:"),
      ...list([
        "what the pile, the ground and the fringe are made of, each with its share in per cent;",
        "how you know: the supplier's declaration, the invoice of purchase, or a laboratory's report;",
        ...(isTested ? ["what you propose, where the rug is not what it was described as."] : []),
      ]),
      paragraph(`I should be grateful for an answer within ${DAYS_TO_ANSWER} days. I make no accusation: a wrong name may have come from further up the line.`),
      paragraph("Yours faithfully,"),
      { kind: "signature", lines: ["", l.client.name] },
      { kind: "part", text: "For your own information, not part of the letter" },
      heading("What a laboratory shows", 3),
      paragraph(WHAT_A_LABORATORY_SHOWS),
      heading("What rights there are, in general", 3),
      ...rightsBlocks(l.jurisdiction),
      small(NOT_LEGAL_ADVICE),
    ],
  };
}

/** What a laboratory has to show and by which published method. */
const WHAT_A_LABORATORY_SHOWS =
  "A textile laboratory identifies fibres under the microscope and by what dissolves them, and measures the shares of a mixture by the methods of Regulation (EU) No 1007/2011, Annex VIII, or of AATCC TM20 and TM20A. " +
  "Its report should name the sample and where on the rug it was taken, the method, and every fibre with its per cent of mass. Ask beforehand what it costs and how much pile it needs.";

/** A year, or a month of one: bought in it, not on it. */
const A_TIME = /^(?:[\p{L}.]+ )?\d{4}$/u;

function boughtSentence({ rug, bought }: SellerLetter): string {
  const on = bought.on ? ` ${A_TIME.test(bought.on) ? "in" : "on"} ${bought.on}` : "";
  const price = bought.price ? ` for ${bought.price}` : "";
  const invoice = bought.invoice ? ` (invoice ${bought.invoice})` : "";
  return `I bought ${rug}${rug.includes(",") ? "," : ""} from you${on}${price}${invoice}.`;
}

function testedBlocks(tests: readonly Tested[]) {
  return [
    paragraph("It has been tested since:"),
    ...list(tests.map((t) => `${t.kind === "laboratory" ? "a laboratory's report" : "a test of a few fibres"} by ${t.by}, ${t.on}: ${t.found}.`)),
  ];
}

function rightsBlocks(jurisdiction: Jurisdiction) {
  const rows = RIGHTS[jurisdiction].filter((r) => r.about !== "service");
  return rows.length > 0 ? list(rows.map((r) => `${r.say} Source: ${r.source}.`)) : [paragraph("What rights you have where you live, a consumer advice centre or a lawyer there can say.")];
}

const linesOf = (address: string): string[] => address.split(/\r?\n/u).map((line) => line.trim()).filter((line) => line !== "");
