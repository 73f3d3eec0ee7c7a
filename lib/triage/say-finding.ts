import { COMPARED, comparedBy } from "../trade/compared";
import { fibreName, isFibreId, type FibreId } from "../trade/fibres";
import { CURRENCIES, QUESTIONS, UNSAID_PHOTO, type QuestionId } from "../trade/questions";
import type { WeightBalance } from "./assessment";
import { KEPT_WHOLE, SPOILT_PHOTO, type Finding, type FindingValue } from "./finding";
import { tellTest } from "./tell-test";

/** A finding as a clause that can stand in a sentence, once for staff and once for the client. */
export interface Told { readonly staff: string; readonly client: string }

const isQuestion = (what: string): what is QuestionId => Object.hasOwn(QUESTIONS, what);
const record = (value: FindingValue): Record<string, unknown> | null => (typeof value === "object" && !Array.isArray(value) ? (value as Record<string, unknown>) : null);
const both = (text: string): Told => ({ staff: text, client: text });

function answerText(id: QuestionId, value: FindingValue): string {
  const answers: Readonly<Record<string, { label: string }>> = QUESTIONS[id].answers;
  const ids = Array.isArray(value) ? (value as string[]) : [String(value)];
  return ids.map((a) => `“${Object.hasOwn(answers, a) ? answers[a]?.label : a}”`).join(", ");
}

/** "the label says viscose", or its wording where no fibre was read. */
function labelClause(value: Record<string, unknown>): Told {
  const says = String(value["says"]);
  const text = String(value["text"] ?? "").slice(0, 120);
  if (says === "art-silk") return both("the label has a trade word for imitation silk, not a fibre name");
  if (says === "other") return both("the label names a fibre that is rare in rugs");
  return both(isFibreId(says) ? `the label says ${String(value["pile"] ?? fibreName(says))}` : `no fibre could be read in the label’s words “${text}”`);
}

/** How measures and prices are written into a clause. */
export interface Tells {
  /** A price for a square metre; `currency` ISO 4217, null where it was not told. */
  readonly perM2: (amount: number, currency: string | null) => string;
  readonly total: (amount: number, currency: string | null) => string;
  readonly cm2: (cm2: number, significantFigures?: number) => string;
  readonly run: (metres: number) => string;
  readonly size: (widthCm: number, lengthCm: number) => string;
}

const number = (x: unknown) => Number(Number(x).toPrecision(3)).toLocaleString("en-GB");

/** "£192"; to three figures, and the bare number where no currency was told. */
const sum = (amount: number, currency: string | null) =>
  (CURRENCIES.some((c) => c === currency) && currency ? new Intl.NumberFormat("en-GB", { style: "currency", currency, maximumSignificantDigits: 3 }).format(amount) : `${number(amount)}${currency ? ` ${currency}` : ""}`);
/** In square metres and whole figures: as an assessment keeps them. */
const PLAIN: Tells = {
  perM2: (amount, currency) => `${sum(amount, currency)} a square metre`, total: sum, cm2: (cm2, figures = 3) => `${number(Number(cm2.toPrecision(figures)))} cm²`, run: (metres) => `${number(metres)} m`,
  size: (widthCm, lengthCm) => `${number(widthCm)} by ${number(lengthCm)} cm`,
};

const currencyIn = ({ currency }: Record<string, unknown>) => (typeof currency === "string" ? currency : null);
/** A price for a square metre; what was paid for a gift, somebody else paid. */
function priceClause(value: Record<string, unknown>, { perM2 }: Tells, isGift: boolean): Told {
  const [amount, currency] = [Number(value["amount"]), currencyIn(value)];
  const year = typeof value["year"] === "number" ? ` in ${value["year"]}` : "";
  const each = `about ${sum(amount, currency)} a square metre`;
  return { staff: `the price was ${perM2(amount, currency)}${year}`, client: isGift ? `as far as you know, ${each} was paid for it${year}` : `you paid ${each}${year}` };
}

const percentOf = (share: unknown) => `${number(100 * Number(share))} %`;

function changeClause(v: Record<string, unknown>): Told {
  const compared = COMPARED[comparedBy(v["direction"])];
  const [deltaE, sd] = [Number(v["deltaE"]), Number(v["uncertainty"])];
  return {
    staff: `in one photo the affected spot is ${compared} the untouched one (ΔE00 ${deltaE.toFixed(1)}${sd > 0 ? `, standard uncertainty ${sd.toFixed(1)}` : ""})`,
    client: `in your photo the changed spot is ${compared} the clean one`,
  };
}

/** The findings that are no answers to a question, by their `what`. */
const CLAUSES: Readonly<Record<string, (fields: Record<string, unknown>, tells: Tells, isGift: boolean) => Told>> = {
  label: labelClause,
  "price-per-m2": priceClause,
  price: (v, { total }) => both(`the price was ${total(Number(v["priceTotal"]), currencyIn(v))}`),
  "colour-change": changeClause,
  "damaged-area": (v, { cm2 }) => both(`the damaged places drawn on the photo take ${cm2(Number(v["cm2"]))} (${percentOf(v["share"])} of the rug, give or take ${cm2(Number(v["uncertainty"]), 2)})`),
  "cut-down": (v, { run }) => both(`the rug was planned to be cut down, with ${run(Number(v["bindingM"]))} of new edges${typeof v["shareKept"] === "number" ? ` and ${percentOf(v["shareKept"])} of it kept` : ""}`),
  size: (v, { size }) => both(`it measures ${size(Number(v["widthCm"]), Number(v["lengthCm"]))}`),
};

/** What it was called when it was sold; of a gift, by whoever passed it on. */
function calledClause(value: FindingValue, isGift: boolean): Told {
  if (value === "nothing") return both(isGift ? "nothing was passed on of what it is made of" : "the seller did not say what it is made of");
  return both(`${isGift ? "it was passed on as" : "the seller called it"} ${answerText("sellerSaid", value)}`);
}

/** What was found, as a clause without capital or full stop. `isGift`: of a rug that its owner did not buy. */
export function tellFinding(finding: Finding, tells: Tells = PLAIN, isGift = false): Told {
  const tested = tellTest(finding);
  if (tested) return tested;
  const fields = record(finding.value);
  const clause = Object.hasOwn(CLAUSES, finding.what) ? CLAUSES[finding.what] : undefined;
  if (clause && fields) return clause(fields, tells, isGift);
  if (finding.what === "boughtYear") return both(`it was bought in ${finding.value}`);
  if (finding.what === "sellerSaid") return calledClause(finding.value, isGift);
  if (isQuestion(finding.what)) {
    const answer = answerText(finding.what, finding.value);
    return { staff: `“${QUESTIONS[finding.what].ask}” was answered ${answer}`, client: `you answered ${answer} to “${QUESTIONS[finding.what].ask}”` };
  }
  if (finding.what === KEPT_WHOLE) return both("it was decided on the rug’s plan not to cut it down");
  if (finding.what === "labelFound") return both("no label was found on it");
  if (finding.what === "photo") return both(`photos came with it: ${kindsOf(finding.value)}`);
  if (finding.what === SPOILT_PHOTO) return both(`photos came out too dark, too light or too blurred to judge by: ${kindsOf(finding.value)}`);
  const plain = fields ? Object.entries(fields).map(([k, v]) => `${k} ${v}`).join(", ") : String(finding.value);
  return both(`${finding.what}: ${plain.slice(0, 200)}`);
}

/** The kinds of photos; of one that nobody has named, so much. */
const kindsOf = (value: Finding["value"]): string => [value].flat().map((kind) => (kind === UNSAID_PHOTO ? "not named yet" : kind)).join(", ");

/** How much a weight says, in a word; the steps (1, 4, 8 dB: odds × 1.3, 2.5, 6) are elicited. */
function force(decibans: number): string | null {
  const size = Math.abs(decibans);
  if (size < 1) return null;
  return size < 4 ? "a little" : size < 8 ? "clearly" : "strongly";
}

/** A blend is called one, so that "wool against wool and viscose" cannot be misread. */
const pileName = (id: FibreId) => (/ and /.test(fibreName(id)) ? `a blend of ${fibreName(id)}` : fibreName(id));
const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The year a finding names, where that year has not come yet: such a year is a slip, and what hangs on it is not weighed. */
function yearToCome(finding: Finding, yearNow: number): number | null {
  const year = finding.what === "boughtYear" ? finding.value : record(finding.value)?.["year"];
  return typeof year === "number" && year > yearNow ? year : null;
}

/** A finding and its weight as two sentences. `decibans` null: it says nothing about the fibre. `yearNow`: the year of the assessment. `isGift`: of a rug that its owner did not buy. */
export function sayFinding(finding: Finding, { decibans, yearNow, isGift = false }: { decibans: number | null; yearNow: number; isGift?: boolean }, pair: Pick<WeightBalance, "leading" | "rival">): Told {
  const told = tellFinding(finding, PLAIN, isGift);
  const close = (text: string) => sentence(/[.?!]”?$/u.test(text) ? text : `${text}.`);
  const slip = yearToCome(finding, yearNow);
  if (slip !== null) {
    const says = `The year ${slip} has not come yet, so this is not weighed.`;
    return { staff: `${close(told.staff)} ${says}`, client: `${close(told.client)} ${says}` };
  }
  if (decibans === null) return { staff: `${close(told.staff)} Not weighed for the fibre.`, client: close(told.client) };
  const [to, from] = decibans >= 0 ? [pair.leading, pair.rival] : [pair.rival, pair.leading];
  const how = force(decibans);
  if (how === null) return { staff: `${close(told.staff)} Says little between ${pileName(to)} and ${pileName(from)}.`, client: close(told.client) };
  return {
    staff: `${close(told.staff)} Speaks ${how} for ${pileName(to)} against ${pileName(from)} (${Math.abs(decibans).toFixed(1)} dB).`,
    client: `${close(told.client)} That points ${how} to ${pileName(to)} rather than ${pileName(from)}.`,
  };
}
