import "server-only";
import * as z from "zod/mini";
import type { Told } from "../reply/changes";
import type { Came } from "../reply/facts";
import type { SaidParagraph } from "../reply/pieces";
import type { Db, Prisma, Tx } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import { fromPost, messagesIn, OWNED_DEEDS, type Message } from "./messages";
import { TO_BE_READ_OUT } from "./to-be-read-out";
import { saidOf } from "./said-paragraphs";
import { MESSAGE } from "./stored";

/** The letter of ours that the next one follows. */
export interface LastLetter {
  at: Date;
  /** When it left; null where it has not, or nobody knows. */
  leftAt: Date | null;
  /** Whether it has left, or may have. */
  hasLeft: boolean;
  /** What the program wrote it from. */
  told: Told;
}

/** A letter that told the client what we think: it neither was taken back nor came back, nor waits to be read out. */
const TOLD = { kind: "reply", automatic: false, state: { notIn: ["taken_back", "failed"] }, NOT: TO_BE_READ_OUT } satisfies Prisma.LetterWhereInput;
const addedSchema = z.object({ photoId: z.string() });
const approvedSchema = z.object({ letterId: z.string(), number: z.number(), outdated: z.optional(z.array(z.object({ documentId: z.string() }))) });

/** The newest letter with an answer that the client has or will have; null where there is none. `besides`: id of a letter that is not counted. */
export const newestAnswer = (db: Db | Tx, enquiryId: string, besides = "") => db.letter.findFirst({ where: { enquiryId, id: { not: besides }, ...TOLD }, orderBy: NEWEST_FIRST.createdAt, select: { id: true, createdAt: true, sentAt: true, state: true, text: true } });

/** The words of every letter with an answer that the client has or will have. */
export const textsTold = async (db: Db | Tx, enquiryId: string): Promise<string[]> => (await db.letter.findMany({ where: { enquiryId, ...TOLD }, select: { text: true } })).map(({ text }) => text);

/** Whether a letter with an answer has left, or will: what was asked before it is answered. */
export const hasAnswered = async (db: Db | Tx, enquiryId: string): Promise<boolean> => (await newestAnswer(db, enquiryId)) !== null;

/** What the client wrote that no letter with an answer has followed, oldest first; before the first one, all that they wrote since they asked. `besides`: id of a letter that is not counted. */
export async function wordsToAnswer(db: Db | Tx, enquiryId: string, besides?: string): Promise<CameSince["messages"]> {
  const letter = await newestAnswer(db, enquiryId, besides);
  return (await cameSince(db, enquiryId, letter?.createdAt ?? new Date(0))).messages;
}

/** That letter with what it told; null too where nobody knows what it was written from. */
export async function lastLetter(db: Db | Tx, enquiryId: string, besides?: string): Promise<LastLetter | null> {
  const letter = await newestAnswer(db, enquiryId, besides);
  const approval = letter && (await approvalOf(db, { enquiryId, letterId: letter.id }));
  if (!approval) return null;
  const told = await writtenFrom(db, enquiryId, approval.number);
  return told && { at: letter.createdAt, leftAt: letter.sentAt, hasLeft: !["held", "waiting"].includes(letter.state), told: { ...told, paragraphs: told.paragraphs.map((p) => saidBy(letter.text, p)) } };
}
/** What the program left out for length was said all the same where somebody put it into the letter. */
const saidBy = (text: string, { unsaid, ...p }: SaidParagraph): SaidParagraph => (unsaid && !(p.said !== null && text.includes(p.said)) ? { ...p, unsaid } : p);

/** Of which revision a reply was made, and the ids of the documents with it that somebody said go as they are; null where that is not known. */
export async function approvalOf(db: Db | Tx, { enquiryId, letterId }: { enquiryId: string; letterId: string }): Promise<{ number: number; asItIs: string[] } | null> {
  const approvals = await db.audit.findMany({ where: { enquiryId, action: { in: ["reply-approved", "reply-seconded"] } }, select: { detail: true } });
  const approved = approvals.map((a) => approvedSchema.safeParse(a.detail)).find((a) => a.data?.letterId === letterId)?.data;
  return approved ? { number: approved.number, asItIs: (approved.outdated ?? []).map((d) => d.documentId) } : null;
}

/** What the program wrote a revision from: its own newest one up to there. */
export async function writtenFrom(db: Db | Tx, enquiryId: string, number: number): Promise<(Told & { subject: string; number: number }) | null> {
  const revision = await db.revision.findFirst({ where: { draft: { enquiryId }, authorId: null, number: { lte: number } }, orderBy: { number: "desc" }, select: { number: true, subject: true, text: true, paragraphs: true } });
  return revision && { number: revision.number, subject: revision.subject, text: revision.text, paragraphs: saidOf(revision.paragraphs) };
}

/** What the client wrote and sent since an instant, what came from other addresses, and what was tested. `message`: the client wrote themselves. */
export interface CameSince extends Came { messages: Message[] }

/** What came from then on; a photo that the workshop added itself did not come. */
export async function cameSince(db: Db | Tx, enquiryId: string, from: Date): Promise<CameSince> {
  const isTheirs = { OR: [{ from: "client" }, { from: { startsWith: fromPost("") } }] };
  const [answers, posts, photos, ours, tests, owned] = await Promise.all([
    db.answer.findMany({ where: { rug: { enquiryId }, ...isTheirs, at: { gte: from } }, orderBy: OLDEST_FIRST.at }),
    db.post.findMany({ where: { enquiryId }, select: { id: true, fromAddress: true, arrivedAt: true, leftOut: true, quoted: true } }),
    db.photo.findMany({ where: { rug: { enquiryId }, createdAt: { gte: from } }, select: { id: true } }),
    db.audit.findMany({ where: { enquiryId, at: { gte: from }, action: "photo-added", actorKind: "staff" }, select: { detail: true } }),
    db.benchTest.count({ where: { rug: { enquiryId }, at: { gte: from }, withdrawnAt: null } }),
    db.audit.findMany({ where: { enquiryId, ...OWNED_DEEDS }, orderBy: OLDEST_FIRST.at, select: { action: true, detail: true } }),
  ]);
  const messages = messagesIn(answers, { posts, audit: owned });
  const addedByUs = new Set(ours.map((a) => addedSchema.safeParse(a.detail).data?.photoId));
  const words = messages.filter((m) => m.other === null).map((m) => m.text);
  return { messages, words, message: words.length > 0, byOthers: messages.length > words.length, times: words.length, answers: answers.some((a) => a.question !== MESSAGE), photos: photos.filter((p) => !addedByUs.has(p.id)).length, tested: tests > 0 };
}
