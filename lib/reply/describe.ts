import type { EnquiryAnswers, RugAnswers } from "../trade/questions";
import { colourWord } from "./colour-word";
import { changeWords, happenedWords, reasonWords, soldAsWords } from "./happened";
import { capital } from "../words/capital";
import { size, type Figures } from "../words/measures";
import { wordsIn } from "../words/words";
import { colourName, plain, sidesIn } from "./rug-title";

export interface RugSketch {
  answers: RugAnswers;
  /** Measured colours with their share of the rug, 0–1, in any order; empty where nothing was measured. */
  colours: readonly { hex: string; share: number }[];
}
/** A slip's sentence has room for this many characters. */
export const MAX_SENTENCE_CHARS = 110;


/** A rug's own name: "Grey, 170 × 240", "Grey rug", "Rug, 170 × 240" or "A rug". Sizes in cm, as told. */
export function rugTitleOf({ answers, colours }: RugSketch): string {
  const main = [...colours].sort((a, b) => b.share - a.share)[0];
  const colour = main ? capital(colourWord(main.hex)) : null;
  const size = answers.widthCm && answers.lengthCm ? `${Math.round(answers.widthCm)} × ${Math.round(answers.lengthCm)}` : null;
  if (size) return `${colour ?? "Rug"}, ${size}`;
  return colour ? `${colour} rug` : "A rug";
}

/** A rug inside a sentence of a document: "a grey rug, 170 × 240 cm". */
export function rugWordsOf({ answers, colours }: RugSketch, figures: Figures): string {
  const words = wordsIn(figures.locale);
  const main = [...colours].sort((a, b) => b.share - a.share)[0];
  const sides = answers.widthCm && answers.lengthCm ? size(Math.round(answers.widthCm), Math.round(answers.lengthCm), figures) : null;
  if (!main) return sides ? words.say("rug.a-size", { size: sides }) : words.say("rug.a");
  const word = colourWord(main.hex);
  const coloured = { an: /^[aeiou]/.test(word) ? "yes" : "no", colour: colourName(word, words) };
  return sides ? words.say("rug.a-colour-size", { ...coloured, size: sides }) : words.say("rug.a-colour", coloured);
}

/** What a slip is headed with: "Grey 170 × 240, urine, then household cleaner". */
export function titleOf({ answers, enquiry, colours }: RugSketch & { enquiry: EnquiryAnswers }, { locale, areaUnit }: Figures): string {
  const trade = enquiry.reason === "trade";
  const rug = trade ? "A cleaner’s customer’s rug" : rugTitleOf({ answers, colours }).split(", ").map((part) => sidesIn(part, wordsIn(locale), areaUnit)).join(" ");
  const [happened, change] = [happenedWords(answers), changeWords(answers)[0] ?? null];
  const trouble = (trade ? change ?? happened : happened ?? change) ?? reasonWords(enquiry, answers);
  return trouble ? `${rug}, ${trouble}` : rug;
}

function labelWords(answers: RugAnswers): string | null {
  const label = plain(answers.labelText ?? "").replace(/[.;]+(?=\s)/g, ",").replace(/[\s.,;]+$/, "");
  if (label) return `label ${label.length > 40 ? `${label.slice(0, 39).trimEnd()}…` : label}`;
  return answers.labelFound === "none" ? "no label" : null;
}

/** Whether no question was answered; words of one's own answer none. */
const isUnanswered = ({ story: _, ...answers }: RugAnswers, enquiry: EnquiryAnswers): boolean => Object.values({ ...answers, ...enquiry }).every((a) => a === undefined);

/** What it is, in at most 110 characters: "Label 100 % viscose, sold as silk. Paler, stiff." */
export function sentenceOf({ answers, enquiry }: { answers: RugAnswers; enquiry: EnquiryAnswers }): string {
  const sold = soldAsWords(answers);
  const known = [labelWords(answers), sold && `sold as ${sold}`].filter((w) => w !== null);
  const wet = enquiry.wetNow === "wet" ? ["wet now"] : enquiry.wetNow === "damp" ? ["still damp"] : [];
  const parts = [known, [...wet, ...changeWords(answers).slice(0, 3)]].filter((p) => p.length > 0).map((p) => `${capital(p.join(", "))}.`);
  if (parts.length === 0) return isUnanswered(answers, enquiry) ? "Nothing was answered about it yet." : "Neither its label, nor what it was sold as, nor a change in it is known.";
  return parts.reduce((said, part) => (`${said} ${part}`.length <= MAX_SENTENCE_CHARS ? `${said} ${part}` : said));
}
