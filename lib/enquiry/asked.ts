import "server-only";
import { ANSWER_HERE } from "../reply/open-places";
import { askedQuestion, openQuestions, questionsAsked, type AskedOfUs } from "../reply/questions-asked";
import type { Db, Tx } from "../store/database";
import { ownLines } from "../words/quoted-lines";
import { ok, refuse, type Result } from "./caller";
import { draftToday, type DraftToday } from "./draft-today";
import { nameOf, wordsWithoutPlace } from "./heard";
import { hasAnswered, writtenFrom } from "./last-letter";

/** What stands in the audit beside a letter that left past questions which it does not plainly answer: how many somebody had looked at. Empty where there were none. */
export interface Looked { readonly asked?: number }

interface Of { enquiryId: string; number: number }

/**
 * What a client asked that revision `number` of a reply has to answer: in the enquiry, until a letter of ours has answered it, and in what came
 * since. Of messages that the draft has no place for somebody says anyway that they have read them.
 */
export async function askedOfUs(db: Db | Tx, { enquiryId, number }: Of, today: DraftToday): Promise<AskedOfUs> {
  const { input: { assessments }, composed, words } = today.next;
  const [isAnswered, before, unplaced] = await Promise.all([hasAnswered(db, enquiryId), writtenFrom(db, enquiryId, number), wordsWithoutPlace(db, { enquiryId, number })]);
  const begun = before?.text ?? "";
  const said = [...(before?.paragraphs ?? []), ...composed.paragraphs];
  const placed = words.filter((m) => m.other === null && !unplaced.some((u) => u.at.getTime() === m.at.getTime() && u.text === m.text));
  const told = isAnswered ? [] : assessments.flatMap(({ answers }, rug) => inTurn(questionsAsked([answers.story])).map((q) => ({ ...q, rug: assessments.length > 1 ? rug : null, hasPlace: begun.includes(ANSWER_HERE) })));
  const asked = [...told, ...inTurn(questionsAsked(placed.map((m) => ownLines(m.text)))).map((q) => ({ ...q, rug: null, hasPlace: true }))];
  const once = asked.filter(({ question }, i) => asked.findIndex((a) => a.question === question) === i);
  return { questions: once.map((a) => askedQuestion(a, { said, rugs: assessments.length })), begun, known: [composed, ...(today.next.follows ? [today.next.follows.whole] : [])].map((written) => written.text).join("\n\n") };
}

/** Each question with the one right before it. */
const inTurn = (questions: readonly string[]) => questions.map((question, i) => ({ question, before: questions[i - 1] ?? "" }));

/** Refuses a letter that does not plainly answer what the client asked, unless somebody says that they have looked at just that. */
export async function unlessAsked(tx: Tx, r: Of & { text: string; hasLookedAt: (open: readonly string[]) => boolean; isFirstLook: boolean }): Promise<Result<Looked>> {
  const today = await draftToday(tx, r);
  const open = today ? openQuestions(await askedOfUs(tx, r, today), r.text) : [];
  if (open.length === 0) return ok({});
  if (r.hasLookedAt(open)) return ok({ asked: open.length });
  const [first = "", ...more] = open;
  const rest = more.length > 0 ? ` and ${more.length === 1 ? "one more question" : `${more.length} more questions`}` : "";
  const say = `${await nameOf(tx, r.enquiryId)} asks “${first}”${rest}. No paragraph of the letter plainly answers that. Nothing was sent, and your words are kept: see that the letter answers it or says when we will, and say that you have read it.`;
  return refuse(r.isFirstLook ? "invalid" : "changed-meanwhile", say, { asked: "Say that you have read what they ask." });
}
