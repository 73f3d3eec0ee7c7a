import "server-only";
import { randomUUID } from "node:crypto";
import { config } from "../config/config";
import { database, transact, type Letter } from "../store/database";
import { readSettings } from "../workshop/settings";
import { isOneAddress } from "./address";
import { attachmentsOf } from "./enclosures";
import { NO_MAIL } from "./last-word";
import { keepLease, leaseUntil } from "./lease";
import { messageOf, type Sender } from "./message";
import type { Outcome } from "./outcome";
import { record, type Claimed, type OnFailed } from "./record";
import { canSend, senderOf } from "./sender";
import { suppressedWhy } from "./suppression";
import { sendBySmtp, SMTP_TIMES, type SmtpTimes } from "./smtp";

/** Letters by what became of them in one run. */
export type Delivered = Record<Outcome["kind"], number>;
export interface DeliverOptions {
  times?: SmtpTimes;
  /** Ends the run between two letters. */
  stop?: AbortSignal;
  /** Told of each letter that fails for good. Default: nobody is. */
  onFailed?: OnFailed;
}

const NOBODY_TOLD: OnFailed = () => Promise.resolve();

/** A clock that starts at `now` and runs on by itself, whatever happens to the machine's. */
function clockFrom(now: Date): () => Date {
  const started = performance.now();
  return () => new Date(now.getTime() + (performance.now() - started));
}

/** Letters whose sender died or lost its lease: nobody knows whether they arrived. */
async function giveUpLostLeases(now: Date): Promise<void> {
  await database().letter.updateMany({
    where: { state: "sending", leaseUntil: { lt: now } },
    data: { state: "unknown", leaseOwner: null, leaseUntil: null, lastResponse: "Sending was cut short. It may have arrived; it goes out again under the same number." },
  });
}

/** Takes one due letter for ourselves by a conditional update; null when there is none. One whose address was corrected meanwhile is read anew. */
async function claimNext(now: Date, owner: string): Promise<Claimed | null> {
  const notBefore = { lte: now };
  for (;;) {
    const next = await database().letter.findFirst({
      where: { state: { in: ["held", "waiting", "unknown"] }, notBefore, toAddress: { not: NO_MAIL } }, orderBy: [{ notBefore: "asc" }, { id: "asc" }],
    });
    if (!next) return null;
    const { id, state, attempts, toAddress } = next;
    const claim = { leaseOwner: owner, leaseUntil: leaseUntil(now), attempts: attempts + 1 };
    const { count } = await database().letter.updateMany({ where: { id, state, attempts, notBefore, toAddress }, data: { state: "sending", ...claim } });
    if (count === 1) return { letter: { ...next, ...claim }, mayBeThere: state === "unknown" };
  }
}

async function refusedBefore(letter: Letter): Promise<string | null> {
  if (!isOneAddress(letter.toAddress)) return "Not sent: this is not one e-mail address.";
  const why = await suppressedWhy(database(), letter.toAddress);
  return why === null ? null : `Not sent: this address was refused before (${why}).`;
}

async function send(letter: Letter, { sender, url, clock, times }: { sender: Sender; url: string; clock: () => Date; times: SmtpTimes }): Promise<Outcome> {
  const never = await refusedBefore(letter);
  if (never) return { kind: "refused", said: never, addressRefused: false };
  const lease = keepLease(letter, clock);
  try {
    return await sendBySmtp(url, await messageOf(letter, { sender, date: clock(), attachments: await attachmentsOf(letter.id) }), times);
  } catch (error) {
    // The message could not be made, so no server has seen it.
    return { kind: "later", said: (error as Error).message };
  } finally {
    lease.end();
  }
}

/** What was held long enough but cannot go out by mail: it can no longer be taken back, and waits. */
async function letWait(now: Date, which: { toAddress?: string }): Promise<void> {
  await database().letter.updateMany({ where: { ...which, state: "held", notBefore: { lte: now } }, data: { state: "waiting" } });
}

/**
 * Sends what is due, one letter after the other, each claimed under a lease and sent outside any transaction. Safe in
 * two processes at once. Without a mail server nothing is sent and nothing counts as sent.
 */
export async function deliverDue(now: Date, { times = SMTP_TIMES, stop, onFailed = NOBODY_TOLD }: DeliverOptions = {}): Promise<Delivered> {
  const done: Delivered = { accepted: 0, later: 0, refused: 0, unknown: 0 };
  const clock = clockFrom(now);
  await giveUpLostLeases(now);
  const workshop = await readSettings();
  const smtp = canSend(workshop) ? config.smtp : null;
  await letWait(now, smtp ? { toAddress: NO_MAIL } : {});
  if (!smtp) return done;
  const [sender, url] = [senderOf(workshop), smtp.url];
  while (!stop?.aborted) {
    const owner = randomUUID();
    const claimed = await claimNext(clock(), owner);
    if (!claimed) break;
    const outcome = await send(claimed.letter, { sender, url, clock, times });
    await transact((tx) => record(tx, { ...claimed, outcome, now: clock() }, onFailed));
    done[outcome.kind] += 1;
  }
  return done;
}
