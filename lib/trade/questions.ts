import type { QuestionRow } from "./question-row";
import { ABOUT_WHAT_HAPPENED } from "./questions-happened";
import { ABOUT_THE_RUG } from "./questions-rug";

/** Every question, in the order of the pages. */
export const QUESTIONS = {
  wetNow: {
    kind: "one", of: "enquiry", trouble: 0.02,
    ask: "Is any part of the rug wet right now?",
    hint: "If it is, we tell you first what to do. The questions can wait.",
    answers: {
      wet: { label: "Yes, it is wet", hint: "A spill just now, a leak, or it was washed and has not dried" },
      damp: { label: "Damp, or wet underneath", hint: "Cool or clammy when you lay the back of your hand on it" },
      no: { label: "No, it is dry" },
    },
  },
  reason: {
    kind: "one", of: "enquiry", trouble: 0.02,
    ask: "What brings you here?",
    answers: {
      "just-happened": { label: "Something happened to it just now", hint: "In the last two days" },
      "older-trouble": { label: "It has a mark or damage", hint: "From longer ago, or I don’t know since when" },
      "after-cleaning": { label: "It changed after it was cleaned", hint: "Colour, feel or shape, whoever cleaned it" },
      routine: { label: "It could do with a clean", hint: "Nothing in particular has happened" },
      "what-is-it": { label: "I would like to know what it is made of" },
      "mis-sold": { label: "I think it was sold as something it is not" },
      "trade": { label: "I clean rugs myself and need advice", hint: "A customer’s rug, something has gone wrong" },
    },
  },
  ...ABOUT_THE_RUG,
  ...ABOUT_WHAT_HAPPENED,
  room: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "How much is it walked on?",
    answers: {
      busy: { label: "A lot", hint: "A hall, a family room" },
      ordinary: { label: "An ordinary living room" },
      little: { label: "Hardly", hint: "A bedroom, or it hangs on a wall" },
      furniture: { label: "Mostly under a table or a bed" },
    },
  },
  household: {
    kind: "many", of: "rug", trouble: 0.02,
    ask: "Does any of this apply?",
    answers: {
      pets: { label: "A cat or a dog lives here" },
      children: { label: "Small children play on it" },
      "floor-heating": { label: "The floor under it is heated" },
      humid: { label: "The room is damp or often steamed up" },
      pots: { label: "Plant pots stand on it or beside it" },
      moths: { label: "We have seen moths" },
      none: { label: "None of these" },
    },
  },
  age: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Roughly how old is the rug itself?",
    hint: "Not how long you have had it.",
    answers: {
      "under-2": { label: "Under two years" },
      "2-5": { label: "Two to five years" },
      "5-10": { label: "Five to ten years" },
      "10-25": { label: "Ten to twenty-five years" },
      "25-80": { label: "Older than twenty-five years" },
      antique: { label: "Antique, or dated in the weave" },
    },
  },
  matters: {
    kind: "many", of: "rug", trouble: 0.02,
    ask: "What matters most to you?",
    answers: {
      keep: { label: "Keeping it: it means something to me" },
      look: { label: "That it looks right again" },
      safe: { label: "That it is clean and safe" },
      cost: { label: "Not spending more than it is worth" },
      know: { label: "Knowing what it is" },
      claim: { label: "A claim against a seller, cleaner or insurer" },
    },
  },
} as const satisfies Record<string, QuestionRow>;

export type QuestionId = keyof typeof QUESTIONS;

/** What a trained eye can see in a photo, where a client only tells of it. Common practice, no published source. */
export const SEEN_IN_A_PHOTO: readonly QuestionId[] = ["shine", "back", "fringe", "changes"];

/** An answer to one question, `unsure` included. */
export type AnswerOf<Q extends QuestionId> = (keyof (typeof QUESTIONS)[Q]["answers"] & string) | "unsure";

/** The photos asked for, in order. `trouble` as above. */
export const PHOTO_KINDS = {
  whole: { ask: "The whole rug", hint: "From above, all four corners in the picture", trouble: 0.1, fills: true, white: false },
  label: { ask: "The label", hint: "Usually sewn under a corner; close enough to read it", trouble: 0.1, fills: false, white: true },
  back: { ask: "The back of a folded corner", hint: "Close, in daylight", trouble: 0.1, fills: false, white: false },
  pile: { ask: "The pile, parted with two fingers", hint: "As close as your phone stays sharp", trouble: 0.1, fills: false, white: false },
  trouble: { ask: "The trouble", hint: "With some untouched rug around it, in the same picture", trouble: 0.1, fills: false, white: false },
} as const satisfies Record<string, { ask: string; hint: string; trouble: number; fills: boolean; white: boolean }>;
export type PhotoKind = keyof typeof PHOTO_KINDS;
/** What a photo shows that came by mail, until somebody says: it stands for none of the kinds that are asked for. */
export const UNSAID_PHOTO = "unsaid";
export type ShownKind = PhotoKind | typeof UNSAID_PHOTO;
/** How a photo is called, and by which rules its quality is judged; of one nobody has named, by those that find the least fault. */
export const shownAs = (kind: ShownKind): { ask: string; fills: boolean; white: boolean } => (kind === UNSAID_PHOTO ? { ask: "A photo", fills: false, white: true } : PHOTO_KINDS[kind]);

/** Currencies (ISO 4217) that the price tables can bring together. */
export const CURRENCIES = ["EUR", "GBP", "USD", "AUD", "CAD", "NZD"] as const;
export type Currency = (typeof CURRENCIES)[number];

/**
 * What one person told about one rug. Absent: not asked or not answered. Lengths in centimetres, price as paid
 * in whole or part units of `currency` (ISO 4217), `boughtYear` a calendar year.
 */
export interface RugAnswers {
  labelText?: string | undefined;
  labelFound?: "typed" | "none" | "unsure" | undefined;
  sellerSaid?: AnswerOf<"sellerSaid"> | undefined;
  sellerWords?: string | undefined;
  boughtWhere?: AnswerOf<"boughtWhere"> | undefined;
  boughtPlace?: string | undefined;
  boughtYear?: number | undefined;
  price?: number | undefined;
  currency?: Currency | undefined;
  widthCm?: number | undefined;
  lengthCm?: number | undefined;
  shine?: AnswerOf<"shine"> | undefined;
  footprints?: AnswerOf<"footprints"> | undefined;
  touch?: AnswerOf<"touch"> | undefined;
  back?: AnswerOf<"back"> | undefined;
  fringe?: AnswerOf<"fringe"> | undefined;
  fringeKind?: AnswerOf<"fringeKind"> | undefined;
  incidents?: AnswerOf<"incidents">[] | undefined;
  liquid?: AnswerOf<"liquid"> | undefined;
  since?: AnswerOf<"since"> | undefined;
  treatments?: AnswerOf<"treatments">[] | undefined;
  treatedBy?: AnswerOf<"treatedBy"> | undefined;
  changes?: AnswerOf<"changes">[] | undefined;
  room?: AnswerOf<"room"> | undefined;
  household?: AnswerOf<"household">[] | undefined;
  age?: AnswerOf<"age"> | undefined;
  matters?: AnswerOf<"matters">[] | undefined;
  /** In the client's own words; never interpreted as evidence, always shown to staff. */
  story?: string | undefined;
}
/** What was told about the enquiry as a whole. */
export interface EnquiryAnswers {
  wetNow?: AnswerOf<"wetNow"> | undefined;
  reason?: AnswerOf<"reason"> | undefined;
}
