import { expect, it } from "vitest";
import { filledAtFirst, type DocumentFacts } from "../../../lib/enquiry/document-content";

it("leaves whom the letter is to open where only the place is known: it began with “Fez”", () => {
  const bought = (parties: object[]) => ({ answers: { boughtPlace: "Fez" }, assessment: { findings: [] }, parties, settings: { locale: "en-GB" } }) as unknown as DocumentFacts;
  expect(filledAtFirst("letter-to-seller", bought([])).sellerName).toBe("");
  expect(filledAtFirst("letter-to-seller", bought([{ kind: "seller", name: "Harrow & Daughters" }])).sellerName).toBe("Harrow & Daughters");
});

it("addresses the letter to the seller to nobody where the client only told of them: it was addressed to “the shop on the invoice”", () => {
  const addressed = (name: string) => filledAtFirst("letter-to-seller", { answers: {}, assessment: { findings: [] }, parties: [{ kind: "seller", name }], settings: { locale: "en-GB" } } as unknown as DocumentFacts).sellerName;
  for (const nobody of ["the shop on the invoice", "The shop on the invoice", "THE SHOP", "a dealer in Fez", "A Market on Mill Lane", "my local shop", "some website", "online", "Online, from a shop", "from a man at the door", "Shop in town", "I don’t know", "unknown", "?", ""]) expect(addressed(nobody), nobody).toBe("");
  for (const name of ["Kestrel Floors", "kestrel floors", "The Rug Barn", "the House of Rugs", "The Carpet Store in Fez", "A. Varga", "My Rugs Ltd", "Shop Direct", "At Hearth", "Müller & Söhne", "王小明"]) expect(addressed(name), name).toBe(name);
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
