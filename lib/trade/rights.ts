import type { Source } from "./fibres";

/**
 * What the law of a place says in general about goods that are not what they were described as, and about a service.
 * General terms only: local law decides, and none of it is legal advice. What was read of a text under its heading alone is said beside its row.
 */
export type Jurisdiction = "EU" | "UK" | "IE" | "US" | "other";
export interface RightRow extends Source {
  /** What it is about: goods sold under a wrong description, the label itself, or work done on the rug. */
  readonly about: "goods" | "label" | "service";
  readonly say: string;
}
const read = (about: RightRow["about"], say: string, source: string): RightRow => ({ about, say, how: "read", source });
const memory = (about: RightRow["about"], say: string, source: string): RightRow => ({ about, say, how: "memory", source });

const EU_LABEL = read("label", "Textile products are to carry their fibre composition; false information about it falls under the rules against misleading commercial practices.", "Regulation (EU) No 1007/2011, recital 19");

export const RIGHTS: Readonly<Record<Jurisdiction, readonly RightRow[]>> = {
  EU: [
    read("goods", "A seller answers for a lack of conformity that was there at delivery and comes to light within two years.", "Directive (EU) 2019/771, Article 10(1); for contracts from 1 January 2022"),
    memory("goods", "Goods are to be of the description and kind agreed; the remedies are repair or replacement, then a lower price or ending the contract.", "Directive (EU) 2019/771, Articles 6, 7 and 13 to 16"),
    EU_LABEL,
  ],
  UK: [
    // Of section 11 the text was read, of the others the headings; the row says no more than they do.
    read("goods", "Goods are to be as described; the Act names the right to reject, repair or replacement, and a lower price or a final right to reject.", "Consumer Rights Act 2015, sections 11, 20 and 22 to 24"),
    read("label", "The Textile Products (Labelling and Fibre Composition) Regulations 2012 enforce the rules on fibre names; local weights and measures authorities see to it.", "SI 2012/1102, regulations 1 to 3"),
    memory("service", "A service is to be done with reasonable care and skill.", "Consumer Rights Act 2015, section 49"),
  ],
  IE: [
    // The headings were read; the row says no more than they do.
    read("goods", "Goods are to conform to the contract; the Act names the trader's liability, a short-term right to end the contract, repair or replacement, and a lower price or final ending.", "Consumer Rights Act 2022, sections 15 to 30"),
    EU_LABEL,
  ],
  US: [
    read("label", "Textile products are labelled by the fibres' generic names; rayon or viscose is to be called so.", "Textile Fiber Products Identification Act, 15 U.S.C. 70; 16 CFR 303"),
    memory("goods", "A description that became part of the bargain is a warranty that the goods fit it.", "Uniform Commercial Code, section 2-313(1)(b)"),
  ],
  other: [],
};

/** Stands under every mention of rights. */
export const NOT_LEGAL_ADVICE = "This is said in general terms. Your local law decides; this is not legal advice.";
