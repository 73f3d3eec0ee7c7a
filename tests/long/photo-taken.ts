import { createReadStream, readFileSync, writeFileSync } from "node:fs";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { text } from "node:stream/consumers";
import heic from "heic-decode";
import sharp from "sharp";
import { MAX_PIXELS } from "../../lib/photo/limits";
import { receivePhoto } from "../../lib/photo/server/receive";
import { HEAD_BYTES, sniff } from "../../lib/photo/server/sniff";
import { photoFileName, PHOTO_SIZES } from "../../lib/store/photo-layout";

/** What became of one file that was sent in as a photo. */
export interface Taken {
  file: string;
  /** What it was taken as; null where it was refused. */
  type: string | null;
  /** Whether it is, by its own first bytes, what is never taken: SVG, GIF or TIFF. */
  foreign: boolean;
  /** Notes that its kept copies still carry: exif, xmp, iptc. */
  notes: string[];
  /** Why it was neither taken nor refused; null where it was. */
  trouble: string | null;
  /** By the clock. */
  ms: number;
  /** By the processors, all threads together; what other programs take of the machine does not count. */
  processorMs: number;
  /** The most the process held meanwhile, above what it held before. */
  megabytes: number;
}

const ENDINGS = /\.(jpe?g|png|webp|hei[cf]s?|avif|gif|tiff?|svg|bmp|jp2|jxl|psd|crw?|cr[23]|nef|orf|raf|rw2|pef|srw|arw|dng|mpo|ico|eps|pgf|tga|exv|xmp)$/i;
/** Anything that is named like a picture, or is not text. */
export const isPicture = (name: string, head: Uint8Array): boolean => ENDINGS.test(name) || head.includes(0);

const isForeign = (head: Buffer): boolean => /^(GIF8|II\*\0|MM\0\*|\s*<(\?xml|svg))/.test(head.toString("latin1"));

/** Starts two watches; the answer reads them. */
function watch(): () => { ms: number; processorMs: number } {
  const from = performance.now(), used = process.cpuUsage();
  return () => { const { user, system } = process.cpuUsage(used); return { ms: performance.now() - from, processorMs: (user + system) / 1000 }; };
}

/** A bare decode of a file and how long it took, until it failed where it does. */
export type Bare = { file: string; ms: number; processorMs: number };
async function decode(file: string): Promise<Bare> {
  const taken = watch();
  const bytes = new Uint8Array(await readFile(file));
  const found = sniff(bytes.subarray(0, HEAD_BYTES));
  const pixels = "type" in found && found.type === "image/heic" ? heic({ buffer: bytes }) : sharp(file, { limitInputPixels: MAX_PIXELS, failOn: "error" }).raw().toBuffer();
  await pixels.catch(() => undefined);
  return { file, ...taken() };
}

/** Megabytes of this process by Linux's own books (proc_pid_status(5)): now, or the most since `forgetPeak`. */
const held = (what: "VmRSS" | "VmHWM"): number => Number(new RegExp(`${what}:\\s+(\\d+)`).exec(readFileSync("/proc/self/status", "latin1"))?.[1]) / 1024;
/** Sets the most to what is held now (proc_pid_clear_refs(5)). */
const forgetPeak = (): void => writeFileSync("/proc/self/clear_refs", "5");

async function notesIn(folder: string, id: string): Promise<string[]> {
  const found = await Promise.all(PHOTO_SIZES.map(async (size) => {
    const { exif, xmp, iptc } = await sharp(path.join(folder, photoFileName(id, size))).metadata();
    return [exif && "exif", xmp && "xmp", iptc && "iptc"].filter((note): note is string => typeof note === "string");
  }));
  return [...new Set(found.flat())];
}

async function take(file: string): Promise<Taken> {
  const folder = await mkdtemp(path.join(tmpdir(), "plainpile-taken-"));
  forgetPeak();
  const before = held("VmRSS"), taken = watch();
  try {
    const answer = await receivePhoto(createReadStream(file), { name: path.basename(file), type: "" }, folder);
    const times = taken();
    const megabytes = held("VmHWM") - before;
    const type = answer.ok ? answer.photo.receivedType : null;
    return {
      file, type, ...times, megabytes, trouble: null, foreign: answer.ok && isForeign((await readFile(file)).subarray(0, 64)),
      notes: answer.ok ? await notesIn(folder, answer.photo.id) : [],
    };
  } catch (error) {
    return { file, type: null, foreign: false, notes: [], trouble: (error as Error).message, ...taken(), megabytes: held("VmHWM") - before };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

if (import.meta.filename === process.argv[1]) {
  const files = (await text(process.stdin)).split("\n").filter(Boolean);
  console.log = console.error; // the bare decoder prints what it thinks of a picture
  // What a server pays once at its start is not the picture's: a picture of each kind is taken before.
  const work = process.argv[2] === "bare" ? decode : take;
  const first = await sharp({ create: { width: 64, height: 64, channels: 3, background: "#777" } }).jpeg().toBuffer();
  const folder = await mkdtemp(path.join(tmpdir(), "plainpile-first-"));
  writeFileSync(path.join(folder, "first.jpg"), first);
  for (const file of [path.join(folder, "first.jpg"), path.resolve("tests/fixtures/rug.heic")]) await work(file);
  await rm(folder, { recursive: true });
  for (const file of files) process.stdout.write(`${JSON.stringify(await work(file))}\n`);
  process.exit(0);
}
