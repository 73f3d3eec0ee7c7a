import "server-only";
import { once } from "node:events";
import { availableParallelism } from "node:os";
import path from "node:path";
import { Worker } from "node:worker_threads";

/** Threads that decode; each holds some 60 MB. *elicited* */
const MOST_THREADS = Math.min(2, availableParallelism());
/** The decoder's memory grows with the largest picture and never shrinks: a thread that holds more than this serves no further picture. *elicited* */
const MOST_HELD_BYTES = 128 * 1024 * 1024;
/** Questions after which a thread is replaced, whatever it may have lost by then. *elicited* */
const MOST_SERVED = 1000;
/** Milliseconds without work after which a thread ends. *elicited* */
const IDLE_MS = 5 * 60_000;

interface Thread { worker: Worker; served: number; idle: NodeJS.Timeout | null }
interface Threads { free: Thread[]; busy: number; waiting: (() => void)[] }
// The built server may load this module once per route; the threads must be the same for all of them.
const SHARED = Symbol.for("photo.heic-threads");
const threads: Threads = ((globalThis as { [SHARED]?: Threads })[SHARED] ??= { free: [], busy: 0, waiting: [] });

export const PARTS = MOST_THREADS;
/** The decoder's answer to a picture that it cannot open. */
export class DamagedPicture extends Error {}

interface Answer<T> { value?: T; damaged?: string; heldBytes: number }

/** Asks a free thread; patience begins when it has its turn. Rejects where the picture is damaged, or the thread breaks or takes too long and is ended. */
export async function askDecoder<T>(question: object, patienceMs: number): Promise<T> {
  if (threads.busy < MOST_THREADS) threads.busy++;
  else await new Promise<void>((go) => threads.waiting.push(go));
  const thread = threads.free.pop() ?? started();
  let isGood = false;
  try {
    const answer = await answerOf<T>(thread, question, patienceMs);
    isGood = answer.heldBytes <= MOST_HELD_BYTES && ++thread.served < MOST_SERVED;
    if (answer.damaged !== undefined) throw new DamagedPicture(answer.damaged);
    return answer.value as T;
  } finally {
    if (isGood) rest(thread);
    else void thread.worker.terminate();
    const next = threads.waiting.shift();
    if (next) next();
    else threads.busy--;
  }
}

function started(): Thread {
  const script = path.join(process.cwd(), "lib", "photo", "server", "heic-worker.mjs");
  // Without execArgv the thread would inherit the loaders of the command that started us; what the decoder prints about
  // a stranger's file stays out of the log.
  const worker = new Worker(script, { execArgv: [], stdout: true, stderr: true });
  worker.stdout.resume();
  worker.stderr.resume();
  worker.on("error", () => undefined); // whoever waits for an answer hears of it as well
  return { worker, served: 0, idle: null };
}

async function answerOf<T>({ worker, idle }: Thread, question: object, patienceMs: number): Promise<Answer<T>> {
  clearTimeout(idle ?? undefined);
  worker.ref();
  const over = new AbortController();
  const timer = setTimeout(() => over.abort(new Error("HEIC: out of patience")), patienceMs);
  const ended = once(worker, "exit", over).then(([code]) => { throw new Error(`HEIC: the decoder ended with ${String(code)}`); });
  try {
    worker.postMessage(question);
    const [answer] = await Promise.race([once(worker, "message", over), ended]);
    return answer as Answer<T>;
  } catch (error) {
    throw over.signal.aborted ? over.signal.reason : error;
  } finally {
    clearTimeout(timer);
    over.abort();
  }
}

/** A thread without work keeps nobody's process from ending. */
function rest(thread: Thread): void {
  thread.worker.unref();
  thread.idle = setTimeout(() => {
    threads.free = threads.free.filter((t) => t !== thread);
    void thread.worker.terminate();
  }, IDLE_MS);
  thread.idle.unref();
  threads.free.push(thread);
}
