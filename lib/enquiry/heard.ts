import "server-only";
import { ANSWER_HERE } from "../reply/open-places";
import type { Audit, Db, Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { refuse, type Refusal } from "./caller";
import { wordsToAnswer, type CameSince } from "./last-letter";

/** What a client did, on their own page or by a letter; whoever answers has to know of it. */
const DONE_BY_MAIL = ["mail-taken"];
const NO_WORD = ["copied"];

/** Whether a client did it. */
export const isByClient = ({ actorKind, action }: Pick<Audit, "actorKind" | "action">): boolean => DONE_BY_MAIL.includes(action) || (actorKind === "client" && !NO_WORD.includes(action));

/** Refuses where the client did something since the page was made that somebody approves from. `heard`: id of what they did last then, null: nothing yet; undefined: nobody looked. */
export async function unlessHeard(tx: Tx, enquiryId: string, heard: string | null | undefined): Promise<Refusal | null> {
  if (heard === undefined) return null;
  const where = { enquiryId, OR: [{ action: { in: DONE_BY_MAIL } }, { actorKind: "client", action: { notIn: NO_WORD } }] };
  const last = await tx.audit.findFirst({ where, orderBy: NEWEST_FIRST.at, select: { id: true } });
  if ((last?.id ?? null) === heard) return null;
  return refuse("changed-meanwhile", `${await nameOf(tx, enquiryId)} wrote, or sent something, after this page was opened. Nothing was sent, and your words are kept: read what came, then approve it again.`);
}

/** Whoever approved a letter, also one that never left, had answered by then what the client wrote, or said that they had read it. */
const APPROVED = ["reply-approved", "reply-waits", "reply-seconded"];

/**
 * Of those, what a draft has no place for: it came once somebody had begun to write, or there was no place when they began. Where there
 * was one, the letter cannot leave before something is written in its stead.
 */
export async function wordsWithoutPlace(db: Db | Tx, { enquiryId, number }: { enquiryId: string; number: number }): Promise<CameSince["messages"]> {
  const approvedLast = await db.audit.findFirst({ where: { enquiryId, action: { in: APPROVED } }, orderBy: NEWEST_FIRST.at, select: { at: true } });
  const messages = (await wordsToAnswer(db, enquiryId)).filter((m) => approvedLast === null || m.at > approvedLast.at);
  if (messages.length === 0) return [];
  const draft = await db.draft.findUnique({ where: { enquiryId }, select: { approvedNumber: true } });
  const approved = draft?.approvedNumber ?? 0;
  const written = await db.revision.findMany({ where: { draft: { enquiryId }, number: { lte: number, gt: approved < number ? approved : 0 } }, orderBy: { number: "asc" }, select: { text: true, authorId: true, createdAt: true } });
  const at = written.findIndex((r) => r.authorId !== null);
  const begun = written.at(at < 0 ? -1 : at - 1);
  const hasPlace = at !== 0 && begun?.text.includes(ANSWER_HERE);
  const first = written[at]?.createdAt;
  return messages.filter((m) => !hasPlace || (first !== undefined && m.at > first));
}

/** Refuses a letter whose draft has no place for what the client wrote, unless somebody says that they have read it. `readUntil`: until when they have. */
export async function unlessRead(tx: Tx, r: { enquiryId: string; number: number; readUntil: Date | null }): Promise<Refusal | null> {
  const { readUntil } = r;
  const open = (await wordsWithoutPlace(tx, r)).filter((m) => readUntil === null || m.at > readUntil);
  if (open.length === 0) return null;
  const who = open.some((m) => m.other === null) ? await nameOf(tx, r.enquiryId) : "Somebody with another address";
  const say = `${who} wrote while this letter was being written. Answer it in the letter, or leave the letter as it is, and say that you have read it. Nothing was sent.`;
  return refuse("invalid", say, { read: "Say that you have read it." });
}

/** The client's name, to begin a sentence with. */
export async function nameOf(tx: Tx, enquiryId: string): Promise<string> {
  const enquiry = await tx.enquiry.findUnique({ where: { id: enquiryId }, select: { client: { select: { name: true } } } });
  return enquiry?.client.name ?? "The client";
}
