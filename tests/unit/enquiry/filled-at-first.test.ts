import { expect, it } from "vitest";
import { filledAtFirst, type DocumentFacts } from "../../../lib/enquiry/document-content";

it("leaves whom the letter is to open where only the place is known: it began with “Fez”", () => {
  const bought = (parties: object[]) => ({ answers: { boughtPlace: "Fez" }, assessment: { findings: [] }, parties, settings: { locale: "en-GB" } }) as unknown as DocumentFacts;
  expect(filledAtFirst("letter-to-seller", bought([])).sellerName).toBe("");
  expect(filledAtFirst("letter-to-seller", bought([{ kind: "seller", name: "Harrow & Daughters" }])).sellerName).toBe("Harrow & Daughters");
});

const facts = (label: object | null, typed: string, sellerWords?: string) =>
  ({ answers: { labelText: typed, sellerWords }, assessment: { findings: label ? [label] : [] }, parties: [], settings: { locale: "en-GB" } }) as unknown as DocumentFacts;

it("quotes a label of several lines in the letter to the seller with a space between them: a field of one line drops the break, and two words became one", () => {
  const read = { what: "label", strength: "label-photo", value: { text: "100% VISCOSE\nMADE IN INDIA" } };
  expect(filledAtFirst("letter-to-seller", facts(read, "typed")).labelWords).toBe("100% VISCOSE MADE IN INDIA");
  expect(filledAtFirst("letter-to-seller", facts(null, "80% wool\r\n20% viscose")).labelWords).toBe("80% wool 20% viscose");
});

it("quotes of what the client wrote down as the seller's words only those that are the seller's", () => {
  expect(filledAtFirst("letter-to-seller", facts(null, "", "pure silk, from Kashmir - he said it would last a lifetime")).saidWords).toBe("pure silk, from Kashmir");
  expect(filledAtFirst("letter-to-seller", facts(null, "")).saidWords).toBe("");
});
