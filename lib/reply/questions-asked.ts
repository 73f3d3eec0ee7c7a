import { ANSWER_HERE } from "./open-places";
import { PLACES } from "./paragraphs";
import { says } from "./parts";
import type { SaidParagraph } from "./pieces";
import { isOfCollecting, QUESTION_KINDS, type QuestionKind } from "./question-kinds";

/** So many of a client's questions are held against a letter; whoever asks more is read whole anyway. Elicited. */
export const MOST_QUESTIONS = 20;
/** A longer one is cut: it stands whole in what they wrote. Characters; elicited. */
export const QUESTION_CHARS = 300;
/** A part of a question with more words than this asks more than its kind. Elicited. */
const MOST_WORDS = 16;

/** Where a sentence ends as people type: not all of them begin the next one with a capital. */
const ENDS = /\n+|(?<=[.!?…？؟])\s+/u;
/** A line that a mail program broke goes on in small letters. */
const BROKEN_LINE = /(?<![.!?…？؟:;])[ \t]*\n(?=\p{Ll})/gu;
const ENDS_AS_QUESTION = /[?？؟]["”’)]*$/u;
/** Not everybody types the mark. */
const BEGINS_AS_QUESTION = /^(?:(?:hello|hi|please|so|and|but|also)\W+)?(?:(?:can|could|will|would|do|does|is|are|should|may|shall) (?:it|you|this|that|these|i|we|the|my|our|there|they|any\w*)|(?:what|how) (?:is|are|can|could|do|does|would|will|should|much|long|many))\b/iu;
const ASKS_TO_BE_TOLD = /\b(?:let (?:me|us) know|tell (?:me|us)|(?:like|want|need) to know|wonder(?:ing)?) (?:whether|what|how|when|who|why|where|if (?:it|this|that|the|there|i|we|my|you (?:can|could|do|would)))\b/iu;

/** Somebody asks through them: “His insurer asks what it would cost”, “My landlord would like a quote”. What they ask begins at `asked`. */
const ASKS_THROUGH = /^(?:\P{L}|(?:and|but|also|now|so)\b)*(?:(?:my|his|her|our|their|your|the|a|an|i|we|he|she|they)\b ?)(?:[\p{L}'’-]+ ){0,4}?(?:(?:asks?|asked|(?:is|are|has been|have been|keeps?) asking|wonders?|wondered|(?:wants?|wanted|needs?|needed|likes?) to know)(?: (?:me|us|you))?,? (?<asked>(?:whether|if|what|how|when|who|why|where|which)\b.*)|(?:asks?|asked|(?:is|are) asking|wants?|needs?|(?:would|['’]d) like)(?: (?:me|us|you))?(?: for)? (?<wanted>(?:an?|some|the|your)(?: [\p{L}-]+)? (?:quote|quotation|estimate|price|idea of (?:the|what) \p{L}+)\b.*))/isu;
/** What somebody asks through them, or the sentence itself. */
function askedIn(sentence: string): string {
  const { asked, wanted } = ASKS_THROUGH.exec(sentence)?.groups ?? {};
  return asked?.replace(/^if\b/iu, "whether") ?? wanted ?? sentence;
}

const isQuestion = (sentence: string): boolean =>
  /\p{L}/u.test(sentence) && (ASKS_THROUGH.test(sentence) || ENDS_AS_QUESTION.test(sentence) || BEGINS_AS_QUESTION.test(sentence) || ASKS_TO_BE_TOLD.test(sentence));

const cut = (sentence: string): string => (sentence.length <= QUESTION_CHARS ? sentence : `${sentence.slice(0, QUESTION_CHARS - 1)}…`);

/** What people asked in their own words: the sentences that are questions, as they wrote them, each once, in their order. */
export function questionsAsked(stories: readonly (string | undefined)[]): string[] {
  const sentences = stories.flatMap((story) => (story ?? "").replace(BROKEN_LINE, " ").split(ENDS)).map((s) => s.trim());
  return [...new Set(sentences.filter(isQuestion).map(cut))].slice(0, MOST_QUESTIONS);
}

/** A paragraph that answers a question as long as its words stand in the letter. `name`: of its place. */
export interface Answering { readonly name: string; readonly said: string }
/** One question of a client, and what of our paragraphs would answer it. */
export interface AskedQuestion {
  readonly question: string;
  /** For each thing that it asks, of each rug it is asked of, what would answer that; empty where no paragraph answers such a question. */
  readonly needs: readonly (readonly Answering[])[];
  /** The draft began with a place for the answer to what it stands in. */
  readonly hasPlace: boolean;
}
/** What the client asked that a letter has to answer. `begun`: the letter as the program wrote it, which a person went on from. */
export interface AskedOfUs { readonly questions: readonly AskedQuestion[]; readonly begun: string }

/** Where a question goes on to another: "Can it be saved, and what would that cost?" */
const NEXT_PART = /[,;]?\s+(?:and|but|also)\s+(?=(?:what|how|can|could|is|are|will|would|do|does|should|may|when|where|who|why|if)\b)/u;
const ASKS = /\b(?:what|how|can|could|is|are|will|would|do|does|should|may|when|where|who|why|whose|whether)\b/u;

const partsOf = (question: string): string[] => {
  const all = askedIn(question).toLowerCase().replace(/[’‘]/gu, "'").split(NEXT_PART);
  return all.filter((part) => all.length === 1 || ASKS.test(part));
};
const kindsOfPart = (part: string): QuestionKind[] => (part.split(/\s+/u).length > MOST_WORDS ? [] : QUESTION_KINDS.filter((k) => k.words.test(part)));

/** What each part of a question asks; null where a part is of no kind that is known, too long to be just that, or of what was asked `before`. */
function kindsOf(question: string, before: string): QuestionKind[] | null {
  const parts = partsOf(question);
  const isOpen = parts.some((part, i) => isOfCollecting(part, parts[i - 1] ?? before.toLowerCase()));
  const kinds = parts.map(kindsOfPart);
  return isOpen || kinds.some((k) => k.length === 0) ? null : kinds.flat();
}

/** Whether they ask something of a kind, whatever else they ask with it. */
export const asksOfKind = (stories: readonly (string | undefined)[], id: "collecting" | "how-long-it-takes" | "worth-it" | "cost" | "remedy" | "flame"): boolean =>
  questionsAsked(stories).some((question) => partsOf(question).some((part) => kindsOfPart(part).some((k) => k.id === id)));

interface OfRugs {
  /** What the draft was put together from, and what the program would put into it today. */
  said: readonly Pick<SaidParagraph, "id" | "place" | "rug" | "said">[];
  rugs: number;
}
const nameOf = (id: SaidParagraph["place"]) => PLACES.find((p) => p.id === id)?.name ?? id;

/** A question with what would answer it. `rug`: which it is asked of, counted from 0; null where that is open, so that it is asked of each. `before`: the question right before it; absent: none. */
export function askedQuestion({ question, rug, hasPlace, before = "" }: { question: string; rug: number | null; hasPlace: boolean; before?: string }, { said, rugs }: OfRugs): AskedQuestion {
  const asked = rug === null ? Array.from({ length: rugs }, (_, n) => n) : [rug];
  // What a whole place is for is named before a single paragraph of another.
  const answering = ({ places, except = [], ids }: QuestionKind, of: number): Answering[] =>
    [said.filter((p) => places.includes(p.place) && !except.includes(p.id)), said.filter((p) => ids.includes(p.id))].flat()
      .flatMap((p) => (p.said !== null && (p.rug === null || p.rug === of) ? [{ name: nameOf(p.place), said: p.said }] : []));
  return { question, hasPlace, needs: (kindsOf(question, before) ?? []).flatMap((kind) => asked.map((of) => answering(kind, of))) };
}

const blocksOf = (text: string): string[] => text.split(/\n{2,}/u).map((b) => b.trim()).filter(Boolean);

/** Whether words stand between what stood right above and right below the place that a draft left. */
function isWrittenBetween(begun: string, text: string): boolean {
  const [over = "", under] = begun.split(ANSWER_HERE);
  if (under === undefined) return false;
  const [above, below] = [blocksOf(over).at(-1), blocksOf(under)[0]];
  const from = above === undefined ? 0 : text.indexOf(above);
  const begin = from + (above?.length ?? 0);
  const end = below === undefined ? text.length : text.indexOf(below, begin);
  return from >= 0 && /\p{L}/u.test(text.slice(begin, Math.max(begin, end)));
}

/** Whether somebody wrote in the place that a draft left for their answer: it is gone, and words stand where it was; or a block of their own stands elsewhere in the letter, and no block went with it. */
function isPlaceFilled(begun: string, text: string): boolean {
  const [before, now] = [blocksOf(begun), blocksOf(text)];
  const isElsewhere = now.length >= before.length && now.some((b) => /\p{L}/u.test(b) && !before.includes(b));
  return !text.includes(ANSWER_HERE) && (isElsewhere || isWrittenBetween(begun, text));
}

/** What in the letter answers a question, each by its name once, and none where somebody wrote the answer themselves; null where nothing plainly does. */
export function answeredBy({ needs, hasPlace }: AskedQuestion, { begun, text }: { begun: string; text: string }): string[] | null {
  if (hasPlace && isPlaceFilled(begun, text)) return [];
  const found = needs.map((need) => need.find((a) => says(text, a.said)));
  return found.length > 0 && found.every((a) => a !== undefined) ? [...new Set(found.map((a) => a.name))] : null;
}

/** The questions that the letter does not plainly answer: a person has to look at them before it leaves. As long as their place is open it does not leave anyway. */
export const openQuestions = ({ questions, begun }: AskedOfUs, text: string): string[] =>
  questions.filter((q) => !(q.hasPlace && text.includes(ANSWER_HERE)) && answeredBy(q, { begun, text }) === null).map((q) => q.question);
