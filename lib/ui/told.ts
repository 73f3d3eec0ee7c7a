import { agreedLabels } from "../enquiry/label-view";
import type { CorrectedId } from "../trade/correcting-words";
import { QUESTIONS, type EnquiryAnswers, type QuestionId, type RugAnswers } from "../trade/questions";
import { money, ratePerArea, size, type Figures } from "../words/measures";
import { deskWords } from "../words/words";
import { QUESTION_HEADS } from "./heads";

/** One question in a word or two, and what was answered to it in the words the client saw. */
export interface Told { ask: string; says: string[] }

const NOT_SURE = "not sure";

/** The label of an answer; an id the tables no longer know is shown as it is, never dropped. */
export function labelOf(question: QuestionId, answer: string): string {
  const answers: Readonly<Record<string, { label: string }>> = QUESTIONS[question].answers;
  return answer === "unsure" ? NOT_SURE : (answers[answer]?.label ?? answer);
}

/** What was answered to the questions of one scope, in the order of the tables. Unanswered questions are left out. */
function answered(of: "enquiry" | "rug", answers: Readonly<Record<string, unknown>>, sinceToldOn: string | null = null): Told[] {
  const dated = (id: QuestionId, label: string) => (id === "since" && sinceToldOn !== null ? deskWords("en-GB").say("report.since", { since: label, day: sinceToldOn }) : label);
  return (Object.keys(QUESTIONS) as QuestionId[]).flatMap((id) => {
    const value = answers[id];
    if (QUESTIONS[id].of !== of || value === undefined) return [];
    const given = (Array.isArray(value) ? value : [value]) as string[];
    return given.length === 0 ? [] : [{ ask: QUESTION_HEADS[id], says: given.map((a) => dated(id, labelOf(id, a))) }];
  });
}

export const toldOfEnquiry = (answers: EnquiryAnswers): Told[] => answered("enquiry", { ...answers });

/** The labels in a rug's photos that were agreed on, as the desk tells them. */
export const labelsAtDesk = (photos: Parameters<typeof agreedLabels>[0]): string[] =>
  agreedLabels(photos).map(({ text, by }) => `“${text}”, read from the photo, agreed by the ${by === "client" ? "client" : "workshop"}`);

/** Everything told about a rug but its story, label first. `labels`: those that were read in its photos. `sinceToldOn`: the day on which it was told when it happened. */
export function toldOfRug(answers: RugAnswers, { labels = [], sinceToldOn = null }: { labels?: readonly string[]; sinceToldOn?: string | null } = {}): Told[] {
  const read = labels.length > 0 ? [{ ask: "The label", says: [...labels] }] : [];
  const free: [string, string | undefined][] = [["The label, as typed", labelSays(answers)], [answers.boughtWhere === "gift" ? "In words passed on" : "In the seller's words", answers.sellerWords]];
  return [...read, ...free.flatMap(([ask, says]) => (says ? [{ ask, says: [says] }] : [])), ...answered("rug", { ...answers }, sinceToldOn)];
}

/** One answer as it was given, whatever it is of; it says nothing where there is none. */
export function toldAnswer(of: CorrectedId, answers: EnquiryAnswers & RugAnswers, figures: Figures): Told {
  const { price, currency, boughtYear, widthCm, lengthCm } = answers;
  switch (of) {
    case "label": return { ask: "The label, as typed", says: [answers.labelText ?? []].flat() };
    case "price": return { ask: "The price", says: price === undefined ? [] : [currency ? money(price, currency, figures.locale) : String(price)] };
    case "boughtYear": return { ask: "The year it was bought", says: boughtYear === undefined ? [] : [String(boughtYear)] };
    case "size": return { ask: "The size", says: widthCm && lengthCm ? [size(widthCm, lengthCm, figures)] : [] };
    default: return { ask: QUESTION_HEADS[of], says: [answers[of] ?? []].flat().map((a) => labelOf(of, a)) };
  }
}

function labelSays({ labelText, labelFound }: RugAnswers): string | undefined {
  if (labelText) return `“${labelText}”`;
  if (labelFound === "none") return "There is no label";
  return labelFound === "unsure" ? NOT_SURE : undefined;
}

/** Where, when and for how much it was bought, and how large it is: "Bought 2024 for £4,200 at Harrow & Daughters. 170 × 240 cm, £1,029 a square metre." */
export function rugFacts(a: RugAnswers, figures: Figures): string {
  const { locale } = figures;
  const price = a.price !== undefined && a.currency ? money(a.price, a.currency, locale) : undefined;
  const bought = [a.boughtYear, price && `for ${price}`, a.boughtPlace ? `at ${a.boughtPlace}` : placeOf(a)].filter(Boolean).join(" ");
  const areaM2 = a.widthCm && a.lengthCm ? (a.widthCm * a.lengthCm) / 10_000 : undefined;
  const perArea = areaM2 && a.price && a.currency ? ratePerArea(a.price / areaM2, a.currency, figures) : undefined;
  const sides = [a.widthCm && a.lengthCm && size(a.widthCm, a.lengthCm, figures), perArea].filter(Boolean).join(", ");
  return [bought && `Bought ${bought}`, sides].filter(Boolean).map((s) => `${s}.`).join(" ");
}

/** Where it came from, to stand behind "Bought"; only what reads well there. */
function placeOf({ boughtWhere }: RugAnswers): string | undefined {
  const places: Partial<Record<NonNullable<RugAnswers["boughtWhere"]>, string>> = {
    specialist: "in a rug shop", furniture: "in a furniture store", online: "online", bazaar: "at a market or on a journey",
    auction: "at an auction or from a dealer", secondhand: "second-hand",
  };
  return boughtWhere && places[boughtWhere];
}
