import "server-only";
import { ImapFlow } from "imapflow";
import { isLoopback, type ImapBox } from "../../config/imap-url";

/** A mailbox that is open for reading. Every call throws where the connection breaks; `close` never does. */
export interface OpenMailbox {
  /** RFC 3501, section 2.3.1.1: while it stays the same, a UID means one message for ever. */
  readonly uidValidity: string;
  /** The UID behind which messages count that arrived from `since` on (its day, in the server's time). */
  lastUidBefore(since: Date): Promise<number>;
  /** UIDs greater than `lastUid`, ascending. */
  uidsAfter(lastUid: number): Promise<number[]>;
  /** The bytes of one message; null where it is gone meanwhile. */
  read(uid: number): Promise<AsyncIterable<Uint8Array> | null>;
  /** Until something arrives, the connection ends, `ms` are over or `stop` says so. */
  untilMore(ms: number, stop: AbortSignal): Promise<void>;
  readonly isOpen: boolean;
  close(): Promise<void>;
}

/** Milliseconds. *elicited*: a server that does not answer within these is away. */
const TIMES = { connectionTimeout: 30_000, greetingTimeout: 30_000, socketTimeout: 5 * 60_000 };
/** Bytes asked for at once. */
const CHUNK = 1024 * 1024;

/**
 * Opens a mailbox with EXAMINE: nothing in it can be changed from here, so no message is marked as read, moved or deleted. The
 * password is never said over an open line, except to this very machine.
 * @throws Error with the server's words
 */
export async function openMailbox(box: ImapBox): Promise<OpenMailbox> {
  const client = new ImapFlow({
    host: box.host, port: box.port, secure: box.isTls, auth: { user: box.user, pass: box.password }, logger: false,
    ...(box.isTls || isLoopback(box.host) ? {} : { doSTARTTLS: true }), ...TIMES,
  });
  // Without a listener an error between two commands would end the process; the next command tells of it.
  client.on("error", () => undefined);
  try {
    await client.connect();
    const { uidValidity, uidNext } = await client.mailboxOpen(box.folder, { readOnly: true });
    return opened(client, { uidValidity: String(uidValidity), uidNext });
  } catch (error) {
    client.close();
    throw new Error(sayError(error), { cause: error });
  }
}

function opened(client: ImapFlow, { uidValidity, uidNext }: { uidValidity: string; uidNext: number }): OpenMailbox {
  const found = async (query: Parameters<ImapFlow["search"]>[0]): Promise<number[]> => {
    const uids = await client.search(query, { uid: true });
    if (!Array.isArray(uids)) throw new Error("The server did not answer which messages there are.");
    return uids.sort((a, b) => a - b);
  };
  return {
    uidValidity,
    lastUidBefore: async (since) => ((await found({ since }))[0] ?? uidNext) - 1,
    // "n:*" always names the last message too, however small its UID is.
    uidsAfter: async (lastUid) => (await found({ uid: `${lastUid + 1}:*` })).filter((uid) => uid > lastUid),
    read: async (uid) => {
      const download = await client.download(String(uid), undefined, { uid: true, chunkSize: CHUNK });
      return "content" in download && download.content ? (download.content as AsyncIterable<Uint8Array>) : null;
    },
    untilMore: (ms, stop) => untilMore(client, ms, stop),
    get isOpen() { return client.usable; },
    close: async () => { await client.logout().catch(() => client.close()); },
  };
}

function untilMore(client: ImapFlow, ms: number, stop: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const end = () => {
      clearTimeout(timer);
      client.off("exists", end);
      client.off("close", end);
      stop.removeEventListener("abort", end);
      resolve();
    };
    const timer = setTimeout(end, ms);
    timer.unref();
    client.on("exists", end);
    client.on("close", end);
    stop.addEventListener("abort", end);
    if (stop.aborted || !client.usable) return end();
    // IDLE (RFC 2177), or what the server offers instead; it ends at the next command. A connection that breaks in it closes.
    client.idle().catch(() => undefined);
  });
}

/** What went wrong, as a sentence for people at the desk, with the server's own words where it said some. */
function sayError(error: unknown): string {
  const { message, responseText, authenticationFailed } = error as { message: string; responseText?: string; authenticationFailed?: boolean };
  const itself = responseText?.replace(/\.$/u, "");
  if (authenticationFailed) return `The mail server does not take the user name or the password${itself ? ` (${itself})` : ""}.`;
  return itself ? `The mail server refuses: ${itself}.` : `The mail server cannot be reached (${message.replace(/\.$/u, "")}).`;
}
