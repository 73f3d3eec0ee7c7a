import { BEFORE_THAT, BETWEEN_CLAUSES, DRY_AGAIN, GOES_ON, LETTER_SIGNS, LONG_AGO, type LetterSign } from "../trade/letter-signs";
import type { Assessment } from "./assessment";
import { isOtherLanguage } from "./letter-language";
import { before, isDenied, isFound, isToldAt, NEAR_CHARS, pattern, sentencesOf, type Sentence } from "./sentences";

/** What a letter says that has it read before others: the sign's urgency, why, with the letter's own words, and the first aid it needs; “unread” where it may need any. */
export type LetterUrgency = Assessment["urgency"] & { readonly firstAid: NonNullable<LetterSign["firstAid"]> | "unread" | null };

/** How much of a sentence is quoted, in characters. *elicited* */
const QUOTED_CHARS = 90;
const READ_BY: Readonly<Record<LetterSign["level"], string>> = { hours: "read it now", "two-days": "read it today", "a-week": "read it this week" };

const COMPILED = LETTER_SIGNS.map((sign) => ({ sign, words: pattern(sign.words, sign.notBefore), beside: sign.beside ? pattern(sign.beside) : null }));
/** The part of a sentence around a place; “and” parts what happened then from what happened since. */
function around(plain: string, at: number): string {
  const parts = (text: string) => text.split(BETWEEN_CLAUSES).flatMap((clause) => clause.split(" and "));
  return `${parts(before(plain, at)).at(-1) ?? ""}${parts(plain.slice(at, at + NEAR_CHARS))[0] ?? ""}`;
}

interface Spot { readonly at: number; readonly from: number }
/** Where the letter last tells that it is dry: sentence and place in it. */
function lastDry(sentences: readonly Sentence[]): Spot | null {
  for (let at = sentences.length - 1; at >= 0; at -= 1) {
    const { plain } = sentences[at] as Sentence;
    const said = [...plain.matchAll(DRY_AGAIN)].findLast(({ index }) => isToldAt(plain, index));
    if (said) return { at, from: said.index };
  }
  return null;
}

/** Whether water named at this spot is over: long ago, dry since, or told of the time before it was dry. */
function isOver({ at, from }: Spot, plain: string, dry: Spot | null): boolean {
  const part = around(plain, from);
  if (dry && (at < dry.at || (at === dry.at && from < dry.from))) return true;
  return !GOES_ON.test(part) && (LONG_AGO.test(part) || (dry !== null && BEFORE_THAT.test(part)));
}

function isSaid({ sign, words, beside }: (typeof COMPILED)[number], sentences: readonly Sentence[], at: number, dry: Spot | null): boolean {
  const { plain } = sentences[at] as Sentence;
  const holds = ({ index: from }: { index: number }) => !isDenied(plain, from) && !(sign.endsDry && isOver({ at, from }, plain, dry));
  if (![...plain.matchAll(words)].some(holds)) return false;
  return beside === null || [at - 1, at, at + 1].some((n) => sentences[n] !== undefined && isFound(beside, sentences[n].plain));
}

/**
 * The most urgent sign in a letter, or null where there is none; a letter in a language that is not looked through is read today. `isAnswered`: whether somebody has answered the question by now,
 * so that its words no longer count.
 */
export function letterUrgency(text: string, isAnswered: (question: string) => boolean): LetterUrgency | null {
  const sentences = sentencesOf(text);
  const dry = lastDry(sentences);
  for (const row of COMPILED) {
    if (row.sign.unless.some(isAnswered)) continue;
    const at = sentences.findIndex((_, n) => isSaid(row, sentences, n, dry));
    if (at >= 0) return { level: row.sign.level, why: `They write “${quoted((sentences[at] as Sentence).own)}”: ${READ_BY[row.sign.level]}.`, firstAid: row.sign.firstAid ?? null };
  }
  return isAnswered("wetNow") || !isOtherLanguage(text) ? null : UNREAD;
}
/** What a letter says of water, in English words alone: that there is some still, else that it is dry again; null where it says neither. */
export function saidOfWater(text: string): "wet" | "dry" | null {
  const sentences = sentencesOf(text);
  const dry = lastDry(sentences);
  const isWet = COMPILED.some((row) => row.sign.firstAid !== undefined && sentences.some((_, at) => isSaid(row, sentences, at, dry)));
  return isWet ? "wet" : dry && "dry";
}
/** Nobody could have found a sign in it, so it may be wet: what is harmless for any rug is told at once. */
const UNREAD: LetterUrgency = { level: "two-days", why: "Not in a language whose words we look for: read it today.", firstAid: "unread" };

/** A sentence as it is quoted: without what no reader sees, its end mark and what is too long. */
function quoted(sentence: string): string {
  const seen = sentence.replace(/\s+/gu, " ").replace(/[\p{Cc}\p{Cf}]/gu, "").replace(/[.;\s]+$/u, "");
  return seen.length <= QUOTED_CHARS ? seen : `${seen.slice(0, QUOTED_CHARS).replace(/\s+\S*$/u, "")} …`;
}
