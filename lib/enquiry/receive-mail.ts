import "server-only";
import { randomUUID } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import { config } from "../config/config";
import { mailboxName, type ImapBox } from "../config/imap-url";
import { claimMailbox, leaveMailbox, noteRead, noteTrouble, type ReadSoFar } from "../mail/incoming/mailbox-place";
import { openMailbox, type OpenMailbox } from "../mail/incoming/mailbox";
import type { Caller } from "./caller";
import { keepPost } from "./keep-post";
import { sortPost, sortReceived } from "./sort-post";

const SYSTEM: Caller = { kind: "system", what: "mailbox" };
/** A mailbox that is read for the first time is read from a week back: what is older was answered by other means. *elicited* */
const FIRST_LOOK_MS = 7 * 86_400_000;
/** How often the mailbox is looked at when its server tells nothing by itself; the claim on it is renewed then too. Milliseconds. */
const LOOK_MS = 60_000;
/** A connection is made anew after this, so that a changed UIDVALIDITY is seen. */
const SESSION_MS = 25 * 60_000;
/** After a failure, the second in a row, and so on. *elicited* */
const PAUSES_MS = [5_000, 15_000, 60_000, 5 * 60_000] as const;

interface Claim { id: string; owner: string; clock: () => Date }
class LostClaim extends Error {}

/** Keeps every message behind the last one that is kept, in the order of its number, and sorts each. The number goes up only once the message is safe here. */
async function catchUp(box: OpenMailbox, { id, owner, clock }: Claim, from: number): Promise<number> {
  const note = async (lastUid: number) => {
    if (!(await noteRead(id, owner, { uidValidity: box.uidValidity, lastUid }, clock()))) throw new LostClaim();
    return lastUid;
  };
  let lastUid = await note(from);
  for (const uid of await box.uidsAfter(lastUid)) {
    const stream = await box.read(uid);
    const kept = stream ? await keepPost(SYSTEM, stream, clock()) : null;
    if (kept && !kept.ok) console.error(JSON.stringify({ level: "error", event: "message not kept", mailbox: id, uid, message: kept.say }));
    lastUid = await note(uid);
    if (kept?.ok) await sortPost(kept.value.postId, clock());
  }
  return lastUid;
}

/** Where to begin: behind what is kept; in a mailbox that is new, or whose numbers were given anew, a week back. What is here already is known by its bytes. */
const beginAt = (box: OpenMailbox, { uidValidity, lastUid }: ReadSoFar, now: Date): Promise<number> =>
  uidValidity === box.uidValidity ? Promise.resolve(lastUid) : box.lastUidBefore(new Date(now.getTime() - FIRST_LOOK_MS));

/**
 * Reads a mailbox until `stop`, the connection's end or a failure, holding its claim meanwhile. Answers false where another
 * process reads it. `isOnce`: only what is there now.
 * @throws Error where the mailbox cannot be read; the Post page says why
 */
export async function readMailbox(settings: ImapBox, { stop, isOnce = false, clock = () => new Date() }: { stop: AbortSignal; isOnce?: boolean; clock?: () => Date }): Promise<boolean> {
  const claim = { id: mailboxName(settings), owner: randomUUID(), clock };
  const soFar = await claimMailbox(claim.id, claim.owner, clock());
  if (!soFar) return false;
  let box: OpenMailbox | null = null;
  try {
    await sortReceived(clock());
    box = await openMailbox(settings);
    const until = Date.now() + SESSION_MS;
    let lastUid = await catchUp(box, claim, await beginAt(box, soFar, clock()));
    while (!isOnce && !stop.aborted && box.isOpen && Date.now() < until) {
      await box.untilMore(LOOK_MS, stop);
      if (stop.aborted || !box.isOpen) break;
      lastUid = await catchUp(box, claim, lastUid);
      await sortReceived(clock());
    }
    return true;
  } catch (error) {
    if (error instanceof LostClaim) return false;
    await noteTrouble(claim.id, claim.owner, (error as Error).message, clock());
    throw error;
  } finally {
    await box?.close();
    await leaveMailbox(claim.id, claim.owner);
  }
}

interface Receiving { stop(): Promise<void> }
// On globalThis: the server bundles its start-up hook and its routes apart.
const kept = globalThis as { plainpileReceiving?: Receiving };

function begin(settings: ImapBox | null): Receiving {
  const stop = new AbortController();
  const pause = (ms: number) => wait(ms, undefined, { signal: stop.signal, ref: false }).catch(() => undefined);
  const run = async () => {
    let failures = 0;
    while (!stop.signal.aborted) {
      try {
        const wasOurs = settings ? await readMailbox(settings, { stop: stop.signal }) : await sortReceived(new Date()).then(() => false);
        failures = 0;
        if (!wasOurs) await pause(LOOK_MS);
      } catch (error) {
        console.error(JSON.stringify({ level: "error", event: "mailbox not read", message: (error as Error).message }));
        await pause(PAUSES_MS[Math.min(failures++, PAUSES_MS.length - 1)] ?? LOOK_MS);
      }
    }
  };
  const running = run();
  return { stop: () => { stop.abort(); return running; } };
}

/** Reads the mailbox while the server runs, and sorts what was kept unsorted; a second call changes nothing. */
export function startReceiving(): void {
  kept.plainpileReceiving ??= begin(config.imap);
}

/** Ends after the message that is being kept. */
export async function stopReceiving(): Promise<void> {
  const receiving = kept.plainpileReceiving;
  delete kept.plainpileReceiving;
  await receiving?.stop();
}
