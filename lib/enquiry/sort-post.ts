import "server-only";
import { readMessage, type IncomingMessage } from "../mail/incoming/read-message";
import { senderOf } from "../mail/sender";
import { suppressedWhy } from "../mail/suppression";
import { ALLOWANCES, takeOne } from "../staff/rate-limit";
import { database, transact, type Post, type Prisma } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { readPostFile } from "../store/post-files";
import { readSettings } from "../workshop/settings";
import type { Caller } from "./caller";
import { isEnded } from "./client-standing";
import { enquiriesOfAddress } from "./enquiries-of-address";
import { fileBounce, sayBounce, sayFiledBounce } from "./file-bounce";
import { leftOutColumn } from "./left-out";
import { openLetter } from "./open-letter";
import { ourLetter, ourLetters } from "./our-letters";
import { withSoundPictures, type Sorted, type SortedMessage } from "./sound-pictures";
import { takeReply } from "./take-reply";
import { holdForPost } from "./waiting-in-post";

const SYSTEM: Caller = { kind: "system", what: "post" };
/** Reading is begun this often; a message that ends the program each time is then left to people. *elicited* */
const MOST_ATTEMPTS = 3;
/** Older letters open no enquiry by themselves: nobody expects an acknowledgement of them any more. *elicited* */
const FRESH_MS = 7 * 86_400_000;

/** Who has begun a message is left alone with it for so long; after that it died over it. *elicited*: a dozen large pictures on a small machine. */
const BEGUN_MS = 10 * 60_000;

/** Sorts every message that was kept and not sorted yet, the oldest first: what a process that died had begun, too. One that fails is tried again at the next call and holds up no other. */
export async function sortReceived(now: Date): Promise<void> {
  const received = await database().post.findMany({ where: { state: "received" }, orderBy: OLDEST_FIRST.arrivedAt, select: { id: true } });
  for (const { id } of received) await sortPost(id, now);
}

/** Reads one kept message and puts it where it belongs. Nothing happens to one that is sorted already, or that another process is at. */
export async function sortPost(postId: string, now: Date): Promise<void> {
  const post = await database().post.findUnique({ where: { id: postId } });
  if (post?.state !== "received") return;
  const isFree = { OR: [{ begunAt: null }, { begunAt: { lt: new Date(now.getTime() - BEGUN_MS) } }] };
  const { attempts } = post;
  const begun = await database().post.updateMany({ where: { id: postId, state: "received", attempts, ...isFree }, data: { attempts: attempts + 1, begunAt: now } });
  if (begun.count !== 1) return;
  try {
    await read(post, now);
  } catch (error) {
    console.error(JSON.stringify({ level: "error", event: "message not sorted", postId, message: (error as Error).message }));
    await settle(postId, { begunAt: null });
  }
}

async function read(post: Post, now: Date): Promise<void> {
  if (post.attempts >= MOST_ATTEMPTS) return settle(post.id, { kind: "unreadable", state: "waiting", says: "Reading it failed three times. The file is kept as it came." });
  const incoming = await withSoundPictures(await readMessage(await readPostFile(post.id), ourLetters));
  if (incoming.kind !== "unreadable") await settle(post.id, columnsOf(incoming.message));
  await place(post, incoming, now);
}

/** The columns of a message that reading it gives. */
function columnsOf(message: SortedMessage): Prisma.PostUpdateManyMutationInput {
  const { messageId, from, subject, sentAt, body, pictures } = message;
  return {
    messageId, fromName: from?.name ?? null, fromAddress: from?.address ?? null, subject, sentAt,
    text: body.own, quoted: body.quoted || null, pictures: pictures.length, leftOut: leftOutColumn(message),
  };
}

/** Changes a message that is still to be sorted. */
async function settle(id: string, data: Prisma.PostUncheckedUpdateManyInput): Promise<void> {
  await database().post.updateMany({ where: { id, state: "received" }, data });
}

async function place(post: Post, incoming: Sorted, now: Date): Promise<void> {
  switch (incoming.kind) {
    case "unreadable":
      return settle(post.id, { kind: "unreadable", state: "waiting", says: incoming.why });
    case "bounce":
      return placeBounce(post, incoming, now);
    case "automatic": {
      const letter = await ourLetter(database(), incoming.message.answers);
      return settle(post.id, { kind: "automatic", says: incoming.why, ...(letter ? { state: "filed", enquiryId: letter.enquiryId } : { state: "aside" }) });
    }
    case "letter":
      return placeLetter(post, incoming.message, now);
  }
}

async function placeBounce(post: Post, { bounce, message }: Sorted & { kind: "bounce" }, now: Date): Promise<void> {
  await transact(async (tx) => {
    const letter = await ourLetter(tx, [bounce.about, ...message.answers]);
    const says = letter ? `${sayBounce(bounce)} ${sayFiledBounce(bounce, letter)}` : sayBounce(bounce);
    const to = letter ? { state: "filed" as const, enquiryId: letter.enquiryId } : { state: "waiting" as const };
    const unfound = letter ? says : `${says} Which of our letters it is about does not stand in it.`;
    const { count } = await tx.post.updateMany({ where: { id: post.id, state: "received" }, data: { kind: "bounce", says: unfound, ...to } });
    if (count === 1 && letter) await fileBounce(tx, SYSTEM, { bounce, letter, postId: post.id }, now);
  });
}

async function placeLetter(post: Post, message: SortedMessage, now: Date): Promise<void> {
  const sender = message.from?.address ?? "";
  if (sender === senderOf(await readSettings()).address.toLowerCase()) return settle(post.id, { kind: "letter", state: "aside", says: "It comes from our own address." });
  if (await cameBefore(post, message)) return settle(post.id, { kind: "letter", state: "aside", says: "The same letter came before, by another way." });
  const letter = await ourLetter(database(), message.answers);
  const why = letter ? null : await whyWaits(post, message, now);
  if (why !== null) return letWait(post, { sender, why }, now);
  const common = { postId: post.id, from: ["received"] as const, message };
  const done = letter
    ? await takeReply(SYSTEM, { ...common, enquiryId: letter.enquiryId, kind: "reply", says: sayReply(sender, emailOf(letter)), notTheirs: sender === "" || sender !== emailOf(letter) }, now)
    : await openLetter(SYSTEM, { ...common, kind: "letter", isAnswered: true }, now);
  if (!done.ok) await settle(post.id, { kind: "letter", state: "waiting", says: done.say });
}

/** It waits for a person, and with it whatever of ours was about to leave to its sender: nobody has read yet what it says. */
async function letWait(post: Post, { sender, why }: { sender: string; why: string }, now: Date): Promise<void> {
  await transact(async (tx) => {
    const { count } = await tx.post.updateMany({ where: { id: post.id, state: "received" }, data: { kind: "letter", state: "waiting", says: why } });
    if (count === 1) await holdForPost(tx, sender, now);
  });
}

/** Where the client is reached today, in small letters; the number of a letter can be anybody's who was sent it on. */
const emailOf = ({ enquiry }: { enquiry: { client: { email: string | null } } }): string => (enquiry.client.email ?? "").toLowerCase();

const sayReply = (sender: string, known: string): string | null =>
  sender === known ? null : sender === "" ? "It answers our letter, and names no sender." : `It answers our letter, from another address than the one we know: ${sender}.`;

/** A letter dropped on the desk and fetched too has other bytes, but one number and one text. */
async function cameBefore(post: Post, { messageId, body }: IncomingMessage): Promise<boolean> {
  if (messageId === null) return false;
  return (await database().post.count({ where: { messageId, text: body.own, id: { not: post.id }, state: { not: "received" } } })) > 0;
}

/** Why a new letter opens no enquiry by itself and waits for a person; null where it does. */
async function whyWaits(post: Post, { from, pictures, brokenPictures, sentAt }: SortedMessage, now: Date): Promise<string | null> {
  const broken = brokenPictures.length;
  if (!from) return "It names no sender.";
  if ((await enquiriesOfAddress(database(), from.address)).some((e) => !isEnded(e.state))) return "Its sender has an open enquiry; it may belong there.";
  if (pictures.length === 0 && broken > 0) return `${broken === 1 ? "Its photo" : `None of its ${broken} photos`} could ${broken === 1 ? "not " : ""}be opened, so a person decides whether it is an enquiry.`;
  if (pictures.length === 0) return "It carries no photo, so a person decides whether it is an enquiry.";
  if ((sentAt ?? post.arrivedAt).getTime() < now.getTime() - FRESH_MS) return "It was written more than a week ago.";
  if ((await suppressedWhy(database(), from.address)) !== null) return "Letters to its address came back.";
  const isFree = (await takeOne(`mail:${from.address}`, ALLOWANCES.mailAddress, now)) && (await takeOne("mail:all", ALLOWANCES.mailAll, now));
  return isFree ? null : "Many letters have come; this one waits for a person.";
}
