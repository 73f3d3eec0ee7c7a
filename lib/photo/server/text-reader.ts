import "server-only";
import path from "node:path";
import type { Worker as Thread } from "node:worker_threads";
import { createWorker, OEM, PSM, type Worker } from "tesseract.js";

/** Languages whose letters and words the reader knows, by the codes of ISO 639-2. */
export type ReadingLanguage = "eng" | "deu" | "fra" | "ita" | "spa" | "nld" | "por" | "pol";
/** A word and where it stands in the picture that was read, in pixels. */
export interface BlockWord { readonly text: string; /** 0 guessed to 1 sure. */ readonly confidence: number; readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }
export type BlockLine = readonly BlockWord[];

/** Milliseconds until a reading is given up and its thread ended; an ordinary label takes less than one second. *elicited* */
const PATIENCE_MS = 30_000;
/** Milliseconds after which a thread without work ends, and gives back its memory (about 200 MB). *elicited* */
const IDLE_MS = 5 * 60_000;
export class ReaderTrouble extends Error {}

interface Reader { worker: Worker; thread: Thread; idle: NodeJS.Timeout | null }
interface Shared { readers: Map<string, Promise<Reader>>; last: Promise<unknown> }
// The built server may load this module once per route; the readers must be the same for all of them.
const SHARED = Symbol.for("photo.text-readers");
const shared: Shared = ((globalThis as { [SHARED]?: Shared })[SHARED] ??= { readers: new Map(), last: Promise.resolve() });

/** Reads one block of print in an encoded picture. One picture at a time; rejects where the reader fails or takes too long. */
export function readBlock(picture: Buffer, languages: readonly ReadingLanguage[], patienceMs = PATIENCE_MS): Promise<BlockLine[]> {
  const turn = shared.last.then(() => readNow(picture, languages, patienceMs));
  shared.last = turn.catch(() => undefined);
  return turn;
}

async function readNow(picture: Buffer, languages: readonly ReadingLanguage[], patienceMs: number): Promise<BlockLine[]> {
  const key = languages.join("+");
  const opening = shared.readers.get(key) ?? openReader(key);
  shared.readers.set(key, opening);
  try {
    return await within(patienceMs, opening.then((reader) => recognise(reader, picture, key)));
  } catch (error) {
    end(key);
    throw new ReaderTrouble(error instanceof Error ? error.message : String(error));
  }
}

async function openReader(key: string): Promise<Reader> {
  const workerPath = path.join(process.cwd(), "lib", "photo", "server", "label-worker.mjs");
  const worker = await createWorker(key, OEM.LSTM_ONLY, { workerPath, langPath: ".", cacheMethod: "none", errorHandler: () => undefined });
  await worker.setParameters({ tessedit_pageseg_mode: PSM.SINGLE_BLOCK, user_defined_dpi: "300" });
  return { worker, thread: (worker as unknown as { worker: Thread }).worker, idle: null };
}

async function recognise(reader: Reader, picture: Buffer, key: string): Promise<BlockLine[]> {
  clearTimeout(reader.idle ?? undefined);
  reader.thread.ref();
  const { data } = await reader.worker.recognize(picture, {}, { text: false, blocks: true });
  // A reader without work keeps nobody's process from ending.
  reader.thread.unref();
  reader.idle = setTimeout(() => end(key), IDLE_MS);
  reader.idle.unref();
  return (data.blocks ?? []).flatMap((b) => b.paragraphs).flatMap((p) => p.lines).map((line) => line.words.map(({ text, confidence, bbox }) =>
    ({ text, confidence: confidence / 100, left: bbox.x0, top: bbox.y0, right: bbox.x1, bottom: bbox.y1 })));
}

function end(key: string): void {
  const reader = shared.readers.get(key);
  shared.readers.delete(key);
  void reader?.then(({ worker, idle }) => { clearTimeout(idle ?? undefined); return worker.terminate(); }).catch(() => undefined);
}

async function within<T>(ms: number, work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const tooLong = new Promise<never>((_, reject) => { timer = setTimeout(() => reject(new Error(`The reader took longer than ${ms} ms`)), ms); });
  return Promise.race([work, tooLong]).finally(() => clearTimeout(timer));
}
