import "server-only";
import { mailConfigured } from "../mail/outbox";
import { database } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { isReplaced, LETTER_ORDER } from "./letter-view";
import { byReadFirst, readFirst } from "./post-view";
import { byNeed, SLIP_PARTS, slipOf } from "./slip";
import { WAITING_FOR_US } from "./states";
import type { QueueView } from "./views";
import { lastEvening } from "./workshop-day";

/** What waits for the workshop, the most urgent first, and letters that have not gone. */
export async function readQueue(caller: Caller, now: Date): Promise<Result<QueueView>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const [rows, settings, letters, post] = await Promise.all([
    database().enquiry.findMany({ where: { state: { in: [...WAITING_FOR_US] } }, include: SLIP_PARTS }),
    readSettings(),
    lettersNotGone(),
    database().post.findMany({ where: { state: "waiting" }, select: { state: true, kind: true, subject: true, text: true }, orderBy: OLDEST_FIRST.arrivedAt }),
  ]);
  const waiting = rows.sort(byNeed);
  const since = lastEvening(now, settings.timeZone);
  return ok({
    waiting: waiting.map(slipOf),
    newSince: { count: waiting.filter((r) => r.submittedAt > since).length, since: since.toISOString() },
    letters,
    post: post.length,
    readFirst: post.map((p) => ({ readFirst: readFirst(p) })).sort(byReadFirst)[0]?.readFirst?.why ?? null,
  });
}

/** A letter to a client without an address cannot go by mail and is nobody's failure: it is left out, and so is one that was written anew. */
async function lettersNotGone(): Promise<QueueView["letters"]> {
  const isConfigured = mailConfigured();
  const { letter } = database();
  const [notSent, failed, unknown] = await Promise.all([
    letter.count({ where: { state: "waiting", toAddress: { not: "" }, ...(isConfigured ? { attempts: { gt: 0 } } : {}) } }),
    letter.findMany({ where: { state: "failed", toAddress: { not: "" } }, select: { ...LETTER_ORDER.select, enquiry: { select: { letters: LETTER_ORDER } } } }),
    letter.count({ where: { state: "unknown" } }),
  ]);
  return { notSent, failed: failed.filter((l) => !isReplaced(l, l.enquiry.letters)).length, unknown, mailConfigured: isConfigured };
}
