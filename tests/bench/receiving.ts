import { createReadStream } from "node:fs";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { monitorEventLoopDelay } from "node:perf_hooks";
import heic from "heic-decode";
import sharp from "sharp";
import { receivePhoto } from "../../lib/photo/server/receive";
import { drawRug } from "../../prisma/demo/draw-rug";
import { gridHeic } from "../heic-grid";
import { turnByTurn, type BenchRow } from "./measure";

/** Nanoseconds of a millisecond. */
const NS = 1e6;
/** What the loop may be held up for, 99 times in a hundred. */
const HELD_UP_MS = 20;
/** Pictures taken in while the loop is watched; the least counts, as of all times. */
const ROUNDS = 5;

async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(path.join(tmpdir(), "plainpile-bench-"));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

const receive = (file: string, folder: string) => receivePhoto(createReadStream(file), { name: path.basename(file), type: "" }, folder);
const inside = (side: number) => ({ width: side, height: side, fit: "inside" } as const);

/** Twelve megapixels as a phone takes them, upright or on their side (orientation 6 of CIPA DC-008). */
async function phonePhoto(folder: string, orientation: 1 | 6): Promise<string> {
  const file = path.join(folder, "phone.jpg");
  const drawn = await drawRug({ seed: 3, kind: "whole", weave: "knotted", colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"] }, 4032, 3024);
  const data = await sharp(drawn).withExif({ IFD0: { Make: "Example" } }).jpeg({ quality: 92 }).toBuffer();
  // The library writes 1, however it is asked: the tag, its type, one value, and the value.
  data[data.indexOf(Buffer.from([0x12, 0x01, 3, 0, 1, 0, 0, 0, 1, 0])) + 8] = orientation;
  await writeFile(file, data);
  return file;
}

const jpeg = (orientation: 1 | 6) => () => inFolder(async (folder) => {
  const file = await phonePhoto(folder, orientation);
  const [ms = NaN, floorMs = NaN] = await turnByTurn("processors", () => receive(file, folder), () => copies(file));
  return { ms, floorMs };
});

const COPIES = "bare sharp: 1600, 320 and 512 raw";
const copies = (file: string) => Promise.all([
  sharp(file).autoOrient().resize(inside(1600)).jpeg().toBuffer(), sharp(file).autoOrient().resize(inside(320)).jpeg().toBuffer(), sharp(file).autoOrient().resize(inside(512)).raw().toBuffer(),
]);

/** Of 8 × 5 tiles: 12.3 megapixels. */
async function phoneHeic(folder: string): Promise<string> {
  const file = path.join(folder, "phone.heic");
  await writeFile(file, gridHeic(8, 5));
  return file;
}
const heicRatio = () => inFolder(async (folder) => {
  const file = await phoneHeic(folder), buffer = new Uint8Array(await readFile(file));
  const [ms = NaN, floorMs = NaN] = await turnByTurn("clock", () => receive(file, folder), () => heic({ buffer }));
  return { ms, floorMs };
});

const heldUp = () => inFolder(async (folder) => {
  const file = await phoneHeic(folder);
  await receive(file, folder); // what is done once at a start is no picture's
  let least = Infinity;
  for (let n = 0; n < ROUNDS; n++) {
    const delay = monitorEventLoopDelay({ resolution: 1 });
    delay.enable();
    await receive(file, folder);
    delay.disable();
    least = Math.min(least, delay.percentile(99) / NS);
  }
  return { ms: least, floorMs: HELD_UP_MS };
});

export const rows: BenchRow[] = [
  { name: "a JPEG of 12 MP taken in, all steps, processor time", floor: COPIES, limit: 1.25, measure: jpeg(1) },
  { name: "the same on its side, coded anew", floor: COPIES, limit: null, measure: jpeg(6) },
  { name: "a HEIC of 12 MP taken in, all steps (two idle processors)", floor: "a bare decode, which uses one", limit: 1.25, measure: heicRatio },
  { name: "the event loop held up meanwhile, p99", floor: `the ${HELD_UP_MS} ms that are allowed`, limit: 1, measure: heldUp },
];
