import "server-only";
import { config } from "../config/config";
import { mailboxName } from "../config/imap-url";
import { LOOKED_BYTES, rawWords } from "../mail/incoming/raw-words";
import { forbids } from "../staff/deeds";
import { database } from "../store/database";
import { readPostStart } from "../store/post-files";
import { NEWEST_FIRST } from "../store/row-order";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { enquiriesOfAddress, type EnquiryOfAddress } from "./enquiries-of-address";
import { peopleNames } from "./people-names";
import { byReadFirst, postView } from "./post-view";
import type { PostView } from "./views";

/** How many messages that are settled stand on the page; what waits is shown wholly. */
export const SETTLED_SHOWN = 100;
const ENQUIRY = { enquiry: { select: { id: true, reference: true, title: true } } } as const;

/** An address that refused for good: nothing more is sent there. */
export interface SuppressedView { address: string; name: string; why: string; since: string }
export interface MailboxView {
  name: string;
  /** null: not looked at yet. */
  lookedAt: string | null;
  trouble: string | null;
  troubleSince: string | null;
}
export interface PostPageView {
  open: PostView[];
  settled: PostView[];
  suppressed: SuppressedView[];
  /** null: no mailbox is set up. */
  mailbox: MailboxView | null;
  mayLift: boolean;
}

/** What came by mail: everything that waits, what its words make urgent first, the newest of what is settled, addresses that take no mail, and how the mailbox is. */
export async function readPost(caller: Caller): Promise<Result<PostPageView>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const orderBy = NEWEST_FIRST.arrivedAt;
  const { post } = database();
  const [open, settled, suppressed, mailbox] = await Promise.all([
    post.findMany({ where: { state: { in: ["received", "waiting"] } }, include: ENQUIRY, orderBy }),
    post.findMany({ where: { state: { in: ["filed", "aside"] } }, include: ENQUIRY, orderBy, take: SETTLED_SHOWN }),
    readSuppressed(),
    readMailboxState(),
  ]);
  const nameOf = await peopleNames([...open, ...settled].map((p) => p.broughtById));
  const views = (rows: typeof open) => rows.map((row) => postView(row, nameOf));
  return ok({ open: views(open).sort(byReadFirst), settled: views(settled), suppressed, mailbox, mayLift: forbids(caller, "lift-suppression") === null });
}

/** What stands in bytes that could not be read as a message: their number, in kB, and the first words that can be made out. */
export interface RawView { kilobytes: number; words: string }

/** One message, the enquiries its sender's address suggests, and of one that could not be read what its bytes hold. */
export async function readPostItem(caller: Caller, id: string): Promise<Result<{ post: PostView; suggested: EnquiryOfAddress[]; raw: RawView | null }>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const row = await database().post.findUnique({ where: { id }, include: ENQUIRY });
  if (!row) return NOT_THERE;
  const [nameOf, suggested] = await Promise.all([peopleNames([row.broughtById]), row.fromAddress === null ? [] : enquiriesOfAddress(database(), row.fromAddress)]);
  return ok({ post: postView(row, nameOf), suggested: suggested.slice(0, 5), raw: row.kind === "unreadable" ? await rawOf(row) : null });
}

const rawOf = async ({ id, bytes }: { id: string; bytes: number }): Promise<RawView> => ({ kilobytes: Math.ceil(bytes / 1024), words: rawWords(await readPostStart(id, LOOKED_BYTES)) });

async function readSuppressed(): Promise<SuppressedView[]> {
  const clients = await database().client.findMany({
    where: { suppressedAt: { not: null }, email: { not: null } }, orderBy: { suppressedAt: "desc" }, select: { name: true, email: true, suppressedAt: true, suppressedWhy: true },
  });
  const one = new Map<string, SuppressedView>();
  for (const { name, email, suppressedAt, suppressedWhy } of clients) {
    if (email !== null && suppressedAt !== null) one.set(email, { address: email, name, why: suppressedWhy ?? "no reason kept", since: suppressedAt.toISOString() });
  }
  return [...one.values()];
}

async function readMailboxState(): Promise<MailboxView | null> {
  if (!config.imap) return null;
  const name = mailboxName(config.imap);
  const row = await database().mailbox.findUnique({ where: { id: name } });
  return { name, lookedAt: row?.lookedAt?.toISOString() ?? null, trouble: row?.trouble ?? null, troubleSince: row?.troubleSince?.toISOString() ?? null };
}
