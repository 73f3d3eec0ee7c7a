import type { EnquiryAnswers, QuestionId, RugAnswers } from "../../trade/questions";
import { answerIn, askIn } from "../../words/asked";
import { quotedInside } from "../../words/quoted";
import type { Words } from "../../words/words";
import type { Asker } from "../who-asks";
import { paragraph, type Block } from "./blocks";

/** An answer whether it is wet, and its day, written out. */
export interface WetTold { readonly answer: NonNullable<EnquiryAnswers["wetNow"]>; readonly toldOn: string }

/** What the client answered and wrote of a rug. */
export interface Told {
  /** Whether any part of it was wet, and the day it was told, with what was told otherwise before, oldest first; null where that was not told. */
  readonly wet: (WetTold & { readonly before: readonly WetTold[] }) | null;
  readonly answers: RugAnswers;
  /** The questions that somebody of the workshop answered, having seen it in a photo. */
  readonly seen: readonly QuestionId[];
  /** The day on which it was told when it happened, written out; null where that was not told. */
  readonly sinceToldOn: string | null;
  /** The account in the client's own words, and whether the report quotes it; null where they gave none. */
  readonly account: { readonly text: string; readonly isQuoted: boolean } | null;
}
interface Telling { readonly told: Told; readonly asker: Asker }
/** `ofRugs`: how many rugs the enquiry is about. */
interface TellingOfAll extends Telling { readonly ofRugs: number }

const EVENT = ["incidents", "liquid", "since", "treatments", "treatedBy", "changes"] as const satisfies readonly QuestionId[];
const PILE = ["sellerSaid", "boughtWhere", "shine", "footprints", "touch", "back", "fringe", "fringeKind", "age"] as const satisfies readonly QuestionId[];
type Asked = (typeof EVENT)[number] | (typeof PILE)[number];

/** An answer in the words that were chosen; null where none was. Apart by semicolons: the answers have commas of their own. */
function answered(question: Asked, { told: { answers, sinceToldOn }, asker }: Telling, words: Words): string | null {
  const ids = [answers[question] ?? []].flat();
  if (ids.length === 0) return null;
  const said = ids.map((id) => answerIn(words, question, { id, isTrade: asker.as === "trade" })).join("; ");
  return question === "since" && sinceToldOn !== null ? words.say("report.since", { since: said, day: sinceToldOn }) : said;
}

const tableOf = (caption: string, rows: string[][], { say }: Words): Block[] =>
  (rows.length > 0 ? [{ kind: "table", caption, head: [say("report.asked"), say("report.answered")], rows }] : []);

/** A question with what was answered to it, for each that was. */
function answersTo(questions: readonly Asked[], telling: Telling, words: Words): string[][] {
  return questions.flatMap((question) => {
    const answer = answered(question, telling, words);
    if (answer === null) return [];
    return [[askIn(words, question, { isTrade: telling.asker.as === "trade" }), telling.told.seen.includes(question) ? words.say("report.by-sight", { answer }) : answer]];
  });
}

/** Wet changes within hours, so that the answer has its day, and what was told before it stays told; asked once, it is about every rug of the enquiry. */
function wetRow({ told: { wet }, asker, ofRugs }: TellingOfAll, words: Words): string[][] {
  if (!wet) return [];
  const asked = { isTrade: asker.as === "trade" };
  const said = ({ answer, toldOn }: WetTold) => ({ answer: answerIn(words, "wetNow", { id: answer, ...asked }), day: toldOn });
  const newest = words.say("report.wet-told", { ...said(wet), rugs: ofRugs, of: ofRugs > 1 ? "several" : "one" });
  return [[askIn(words, "wetNow", asked), wet.before.reduceRight((then, earlier) => words.say("report.wet-before", { ...said(earlier), then }), newest)]];
}

/** Answers by which no change was told. */
const NO_CHANGE: readonly string[] = ["none", "unsure"];
/** Whether a change was told, by the client and not by sight. */
export const isChangeTold = ({ answers: { changes = [] }, seen }: Told): boolean => changes.some((id) => !NO_CHANGE.includes(id)) && !seen.includes("changes");

/** Whether it is wet, what happened, when, what was done about it by whom and how the rug changed, as told; then the client's own words. */
export function toldBlocks(telling: TellingOfAll, words: Words): Block[] {
  const { say } = words;
  const { account, seen, wet } = telling.told;
  const event = answersTo(EVENT.filter((q) => !seen.includes(q)), telling, words);
  return [
    ...tableOf(say("report.told-caption"), [...wetRow(telling, words), ...event], words),
    ...(event.length > 0 ? [] : [paragraph(say("report.told-nothing"))]),
    ...(wet ? [] : [paragraph(say("report.wet-untold"))]),
    ...(account ? [paragraph(account.isQuoted ? say("report.quoted", { account: quotedInside(account.text.replaceAll(/(?:\r?\n){3,}/gu, "\n\n")) }) : say("report.account-kept"))] : []),
  ];
}

/** How the rug has changed, where somebody of the workshop saw it in a photo. */
export function changesSeen(telling: Telling, words: Words): Block[] {
  const changes = telling.told.seen.includes("changes") ? answered("changes", telling, words) : null;
  return changes === null ? [] : [paragraph(words.say("report.changes-seen", { changes }))];
}

/** What the judgement of the fibre was told, beside the label and tests. */
export const pileBlocks = (telling: Telling, words: Words): Block[] => tableOf(words.say("report.pile-caption"), answersTo(PILE, telling, words), words);
