import { createReadStream } from "node:fs";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { text } from "node:stream/consumers";
import heic from "heic-decode";
import sharp from "sharp";
import { MAX_PIXELS } from "../../lib/photo/server/pictures";
import { receivePhoto } from "../../lib/photo/server/receive";
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
  ms: number;
  /** The most the process held so far. */
  megabytes: number;
}

const ENDINGS = /\.(jpe?g|png|webp|hei[cf]s?|avif|gif|tiff?|svg|bmp|jp2|jxl|psd|crw?|cr[23]|nef|orf|raf|rw2|pef|srw|arw|dng|mpo|ico|eps|pgf|tga|exv|xmp)$/i;
/** Anything that is named like a picture, or is not text. */
export const isPicture = (name: string, head: Uint8Array): boolean => ENDINGS.test(name) || head.includes(0);

const isForeign = (head: Buffer): boolean => /^(GIF8|II\*\0|MM\0\*|\s*<(\?xml|svg))/.test(head.toString("latin1"));

/** A bare decode of a file and how long it took; 0 for what cannot be decoded. */
async function decode(file: string): Promise<{ file: string; ms: number }> {
  const from = performance.now();
  try {
    if (/\.hei[cf]s?$/i.test(file)) await heic({ buffer: new Uint8Array(await readFile(file)) });
    else await sharp(file, { limitInputPixels: MAX_PIXELS, failOn: "error" }).raw().toBuffer();
    return { file, ms: performance.now() - from };
  } catch {
    return { file, ms: 0 };
  }
}

async function notesIn(folder: string, id: string): Promise<string[]> {
  const found = await Promise.all(PHOTO_SIZES.map(async (size) => {
    const { exif, xmp, iptc } = await sharp(path.join(folder, photoFileName(id, size))).metadata();
    return [exif && "exif", xmp && "xmp", iptc && "iptc"].filter((note): note is string => typeof note === "string");
  }));
  return [...new Set(found.flat())];
}

async function take(file: string): Promise<Taken> {
  const folder = await mkdtemp(path.join(tmpdir(), "plainpile-taken-"));
  const from = performance.now();
  try {
    const answer = await receivePhoto(createReadStream(file), { name: path.basename(file), type: "" }, folder);
    const ms = performance.now() - from;
    const megabytes = process.resourceUsage().maxRSS / 1024;
    const type = answer.ok ? answer.photo.receivedType : null;
    return {
      file, type, ms, megabytes, trouble: null, foreign: answer.ok && isForeign((await readFile(file)).subarray(0, 64)),
      notes: answer.ok ? await notesIn(folder, answer.photo.id) : [],
    };
  } catch (error) {
    return { file, type: null, foreign: false, notes: [], trouble: (error as Error).message, ms: performance.now() - from, megabytes: process.resourceUsage().maxRSS / 1024 };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

if (import.meta.filename === process.argv[1]) {
  const files = (await text(process.stdin)).split("\n").filter(Boolean);
  // What a server pays once at its start is not the picture's.
  await sharp({ create: { width: 64, height: 64, channels: 3, background: "#777" } }).jpeg().toBuffer();
  const work = process.argv[2] === "bare" ? decode : take;
  for (const file of files) console.log(JSON.stringify(await work(file)));
  process.exit(0);
}
