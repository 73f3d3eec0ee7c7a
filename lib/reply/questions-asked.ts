import { ANSWER_HERE } from "./open-places";
import { PLACES } from "./paragraphs";
import { partsOf as partsOfText, says } from "./parts";
import type { SaidParagraph } from "./pieces";
import { answersBy, isOfCollecting, QUESTION_KINDS, type QuestionKind } from "./question-kinds";

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
const BEGINS_AS_QUESTION = /^(?:(?:hello|hi|please|so|and|but|also)\W+)?(?:(?:can|could|will|would|do|does|is|are|should|may|shall|r) (?:it|you|u|ya|this|that|these|i|we|the|my|our|there|they|any\w*)|(?:what|which) (?:time|days?|hours)|(?:what|how) (?:is|are|r|can|could|do|does|would|will|should|much|long|many))\b/iu;
const ASKS_TO_BE_TOLD = /\b(?:let (?:me|us) know|tell (?:me|us)|(?:like|want|need) to know|wonder(?:ing)?) (?:whether|what|how|when|who|why|where|if (?:it|this|that|the|there|i|we|my|you (?:can|could|do|would)))\b/iu;

/** Somebody asks through them: “His insurer asks what it would cost”, “My landlord would like a quote”. What they ask begins at `asked`. */
const ASKS_THROUGH = /^(?:\P{L}|(?:and|but|also|now|so)\b)*(?:(?:my|his|her|our|their|your|the|a|an|i|we|he|she|they)\b ?|(?=(?:insur\p{L}*|loss adjuster|landlord|landlady|seller|shop|wife|husband|customer|client)\b))(?:[\p{L}'’-]+ ){0,4}?(?:(?:asks?|asked|(?:is|are|has been|have been|keeps?) asking|wonders?|wondered|(?:wants?|wanted|needs?|needed|likes?) to know)(?: (?:me|us|you))?,? (?<asked>(?:whether|if|what|how|when|who|why|where|which)\b.*)|(?:asks?|asked|(?:is|are) asking|wants?|needs?|(?:would|['’]d) like)(?: (?:me|us|you))?(?: for)? (?<wanted>(?:an?|some|the|your)(?: [\p{L}-]+)? (?:quote|quotation|estimate|price|idea of (?:the|what) \p{L}+)\b.*|(?:something|anything|(?:a|some) (?:letter|note|report|paper|statement|document)s?)(?: in writing)? for (?:the|my|our|his|her|their) (?:\p{L}+ )?(?:insur\p{L}*|claim|landlord)\b.*))/isu;
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
/** One thing that a question asks of one rug, and what would answer it. */
export interface Need {
  /** Of which kind it is, as the table names it; null: of none. */
  readonly kind: string | null;
  /** The words of theirs, without endings, by which words of somebody's own are known to be about it. */
  readonly about: readonly string[];
  readonly by: readonly Answering[];
}
/** One question of a client, and what of our paragraphs would answer it. */
export interface AskedQuestion {
  readonly question: string;
  /** What it asks, of each rug it is asked of. */
  readonly needs: readonly Need[];
  /** The draft began with a place for the answer to what it stands in. */
  readonly hasPlace: boolean;
}
/** What the client asked that a letter has to answer. `begun`: the letter as the program wrote it, which a person went on from; `known`: what else it would write, which is nobody's own words either. */
export interface AskedOfUs { readonly questions: readonly AskedQuestion[]; readonly begun: string; readonly known?: string }
/** A letter as it is by now, and what the program has written for it. */
interface Written extends Pick<AskedOfUs, "begun" | "known"> { readonly text: string }

/** Where a question goes on to another: "Can it be saved, and what would that cost?" */
const NEXT_PART = /[,;]?\s+(?:and|but|also)\s+(?=(?:what|how|can|could|is|are|will|would|do|does|should|may|when|where|who|why|if)\b)/u;
/** Where one is only listed, after what asks too: "How long does it take, do you collect". */
const LISTED = /,\s+(?=(?:what|how|can|could|is|are|will|would|do|does|should|may)\b)/u;
const BEGINS_ASKING = /^(?:(?:roughly|so|please)\s+)?(?:what|how|can|could|is|are|will|would|do|does|should|may)\b/u;
const ASKS = /\b(?:what|how|can|could|is|are|will|would|do|does|should|may|when|where|who|why|whose|whether)\b/u;

const partsOf = (question: string): string[] => {
  const all = askedIn(question).toLowerCase().replace(/[’‘]/gu, "'").split(NEXT_PART).flatMap((part) => (BEGINS_ASKING.test(part) ? part.split(LISTED) : [part]));
  return all.filter((part) => all.length === 1 || ASKS.test(part));
};
const kindsOfPart = (part: string): QuestionKind[] => (part.split(/\s+/u).length > MOST_WORDS ? [] : QUESTION_KINDS.filter((k) => k.words.test(part)));

/** What each part of a question asks: of no kind where none is known, where it is too long to be just that, or asks of what was asked `before`. */
function asksIn(question: string, before: string): { about: readonly string[]; kinds: readonly (QuestionKind | null)[] }[] {
  const parts = partsOf(question);
  return parts.map((part, i) => {
    // "It" is the rug where the work was asked of before.
    const isOfWork = /\bit\b/u.test(part) && parts.slice(0, Math.max(0, i - 1)).some((p) => kindsOfPart(p).some((k) => k.id !== "collecting"));
    const isOpen = isOfCollecting(part, parts[i - 1] ?? before.toLowerCase()) && !isOfWork;
    const kinds = isOpen ? [] : kindsOfPart(part);
    return { about: aboutOf(part), kinds: kinds.length > 0 ? kinds : [null] };
  });
}

/** Words that say nothing of what is asked. Elicited. */
const COMMON = new Set(("a about all also am an and any are as at be been but by can could did do does else for from get got had has have he her him his how i if in is it its just kind know like long many may me might more much must my need no not now of off on one or our out own please put " +
  "rug rugs carpet say see shall she should so some still take tell than thank thanks that the their them then there these they thing think this time to too up us use very want was way we were what when where which who why will with without would yes you your").split(" "));
/** A word without its ending. */
const stem = (word: string): string => (word.length < 5 ? word.replace(/(?<=\p{L}{3})s$/u, "") : word.replace(/(?<=\p{L}{3})(?:ations?|ances?|ions?|ables?|ings?|e?rs?|ed|es|s|e)$/u, ""));
/** What a text is about: its words without what is common to all, and without endings. */
const aboutOf = (text: string): string[] => [...new Set((text.toLowerCase().match(/\p{L}+/gu) ?? []).filter((word) => word.length > 2 && !COMMON.has(word)).map(stem))];

/** The kinds that a letter answers because they are asked. */
const ANSWERED_WHEN_ASKED = ["collecting", "how-long-it-takes", "worth-it", "cost", "remedy", "flame"] as const;
/** Whether they ask something of a kind, whatever else they ask with it. */
export const asksOfKind = (stories: readonly (string | undefined)[], id: (typeof ANSWERED_WHEN_ASKED)[number]): boolean =>
  questionsAsked(stories).some((question) => partsOf(question).some((part) => kindsOfPart(part).some((k) => k.id === id)));

/** Whether a paragraph answers something of those kinds that is asked in these words. */
export function answersIn(words: readonly string[]): (paragraph: Pick<SaidParagraph, "id" | "place">) => boolean {
  const asked = QUESTION_KINDS.filter((kind) => ANSWERED_WHEN_ASKED.some((id) => id === kind.id && asksOfKind(words, id)));
  return (paragraph) => asked.some((kind) => answersBy(kind, paragraph) !== null);
}

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
  const answering = (kind: QuestionKind, of: number): Answering[] =>
    (["place", "itself"] as const).flatMap((by) => said.filter((p) => answersBy(kind, p) === by))
      .flatMap((p) => (p.said !== null && (p.rug === null || p.rug === of) && kind.saying?.test(p.said) !== false ? [{ name: nameOf(p.place), said: p.said }] : []));
  const needs = asksIn(question, before).flatMap(({ about, kinds }) => kinds.flatMap((kind) => asked.map((of): Need => ({ kind: kind?.id ?? null, about, by: kind ? answering(kind, of) : [] }))));
  return { question, hasPlace, needs };
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

const onOneLine = (text: string): string => text.replace(/\s+/gu, " ");
/** Blocks that somebody put into the letter themselves: no sentence of them is the program's. None where nobody knows what they began with. */
function ownBlocks({ begun, known = "", text }: Written): string[] {
  if (begun === "") return [];
  const ours = onOneLine(`${begun} ${known}`);
  return blocksOf(text).map(onOneLine).filter((block) => /\p{L}/u.test(block) && !partsOfText(block).some((sentence) => ours.includes(sentence.text)));
}

/** Whether a block of somebody's own is about what is asked: in its words, or by the words of its kind. */
function isAbout({ kind, about }: Need, block: string): boolean {
  const words = aboutOf(block);
  return about.some((word) => words.includes(word)) || QUESTION_KINDS.some((k) => k.id === kind && k.words.test(block.toLowerCase().replace(/[’‘]/gu, "'")));
}

/** What in the letter answers a question, each by its name once, and none where somebody wrote the answer themselves; null where nothing plainly does. */
export function answeredBy({ needs, hasPlace }: AskedQuestion, letter: Written): string[] | null {
  const { begun, text } = letter;
  if (hasPlace && isPlaceFilled(begun, text)) return [];
  const own = ownBlocks(letter);
  const found = needs.map((need) => need.by.find((a) => says(text, a.said)) ?? (own.some((block) => isAbout(need, block)) ? OWN : undefined));
  return found.length > 0 && found.every((a) => a !== undefined) ? [...new Set(found.flatMap((a) => (a === OWN ? [] : [a.name])))] : null;
}
/** Answered by words of somebody's own. */
const OWN: Answering = { name: "", said: "" };

/** The questions that the letter does not plainly answer: a person has to look at them before it leaves. As long as their place is open it does not leave anyway. */
export const openQuestions = ({ questions, ...written }: AskedOfUs, text: string): string[] =>
  questions.filter((q) => !(q.hasPlace && text.includes(ANSWER_HERE)) && answeredBy(q, { ...written, text }) === null).map((q) => q.question);
