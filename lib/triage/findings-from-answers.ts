import { QUESTIONS, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../trade/questions";
import type { Finding, FindingValue, Strength } from "./finding";
import { classOfLabel, pileOf, sayComponent } from "./label-class";
import { readLabel } from "./read-label";
import { readSellerWords } from "./seller-reading";

const CM2_PER_M2 = 10_000;

/** Text is read up to here; a label holds a few dozen words. Elicited. */
const MOST_LABEL_CHARS = 4_000;

/** An answer that says something: neither absent, nor "unsure", nor an empty list. */
function said(answer: string | readonly string[] | undefined): FindingValue | null {
  if (answer === undefined) return null;
  if (typeof answer === "string") return answer === "unsure" || answer === "" ? null : answer;
  const sure = [...new Set(answer)].filter((a) => a !== "unsure").sort();
  return sure.length > 0 ? sure : null;
}

function labelValue(text: string): FindingValue | null {
  const words = text.slice(0, MOST_LABEL_CHARS).trim();
  if (words === "") return null;
  const reading = readLabel(words);
  const part = (name: string) => reading.components.find((c) => c.part === name);
  const pile = pileOf(reading);
  const [ground, fringe] = [part("ground"), part("fringe")];
  return {
    says: classOfLabel(reading), text: words.slice(0, 500),
    pile: pile ? sayComponent(pile) : null, ground: ground ? sayComponent(ground) : null, fringe: fringe ? sayComponent(fringe) : null,
    doubts: reading.doubts.join(" ") || null, suggests: reading.suggests.join(", ") || null,
  };
}

/** The words of a label as a finding; none where they are empty. */
export function labelFinding(text: string, strength: Extract<Strength, "label-typed" | "label-photo">, from: string): Finding[] {
  const value = labelValue(text);
  return value === null ? [] : [{ what: "label", value, strength, from }];
}

const positive = (x: number | undefined): x is number => x !== undefined && Number.isFinite(x) && x > 0;

/** Size in m², and the price by it where both are known; a price without a size stays a price. */
function moneyValues(rug: RugAnswers): [string, FindingValue][] {
  const { widthCm, lengthCm, price } = rug;
  const m2 = positive(widthCm) && positive(lengthCm) ? (widthCm * lengthCm) / CM2_PER_M2 : null;
  const place = said(rug.boughtWhere);
  const terms = { currency: rug.currency ?? null, year: rug.boughtYear ?? null, place: typeof place === "string" ? place : null };
  return [
    ...(m2 === null ? [] : [["size", { widthCm: widthCm as number, lengthCm: lengthCm as number, m2 }] as [string, FindingValue]]),
    ...(rug.boughtYear === undefined ? [] : [["boughtYear", rug.boughtYear] as [string, FindingValue]]),
    ...(!positive(price) ? [] : [(m2 === null
      ? ["price", { priceTotal: price, ...terms }]
      : ["price-per-m2", { amount: price / m2, priceTotal: price, ...terms }]) as [string, FindingValue]]),
  ];
}

/** The seller's word: the answer chosen; where that is "something else" or missing, what can be read in the words typed. */
function sellerValue(rug: RugAnswers): FindingValue | null {
  const chosen = said(rug.sellerSaid);
  const read = rug.sellerWords && (chosen === null || chosen === "other") ? readSellerWords(rug.sellerWords) : null;
  return read ?? chosen;
}

const BY_QUESTION = Object.keys(QUESTIONS).filter((q) => q !== "sellerSaid") as Exclude<QuestionId, "sellerSaid">[];

/**
 * Every answer as a finding, named by its question's id; beside them `label`, `size`, `boughtYear`, `price-per-m2` or
 * `price`. "Unsure" and absent give none, and the client's story is never read as evidence. `seen`: questions whose answer
 * the workshop saw in a photo with its own eyes.
 */
export function findingsFromAnswers(rug: RugAnswers, enquiry: EnquiryAnswers, seen: readonly QuestionId[] = []): Finding[] {
  const answers = { ...rug, ...enquiry };
  const label = rug.labelText === undefined ? [] : labelFinding(rug.labelText, "label-typed", "client");
  const told = (what: string, value: FindingValue | null, strength: Strength = "told"): Finding[] => (value === null ? [] : [{ what, value, strength, from: strength === "photo" ? "staff" : "client" }]);
  return [
    ...BY_QUESTION.flatMap((q) => told(q, said(answers[q]), seen.includes(q) ? "photo" : "told")),
    ...told("sellerSaid", sellerValue(rug)),
    ...label,
    ...told("labelFound", label.length === 0 && rug.labelFound === "none" ? "none" : null),
    ...moneyValues(rug).flatMap(([what, value]) => told(what, value)),
  ];
}
