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

/** Twelve megapixels as a phone takes them. */
async function phonePhoto(folder: string): Promise<string> {
  const file = path.join(folder, "phone.jpg");
  const drawn = await drawRug({ seed: 3, kind: "whole", weave: "knotted", colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"] }, 4032, 3024);
  await writeFile(file, await sharp(drawn).withExif({ IFD0: { Make: "Example" } }).jpeg({ quality: 92 }).toBuffer());
  return file;
}

const jpeg = (bare: (file: string) => Promise<unknown>) => () => inFolder(async (folder) => {
  const file = await phonePhoto(folder);
  const [ms = NaN, floorMs = NaN] = await turnByTurn(() => receive(file, folder), () => bare(file));
  return { ms, floorMs };
});

const copies = (file: string) => [
  sharp(file).autoOrient().resize(inside(1600)).jpeg().toBuffer(), sharp(file).autoOrient().resize(inside(320)).jpeg().toBuffer(), sharp(file).autoOrient().resize(inside(512)).raw().toBuffer(),
];

/** Of 8 × 5 tiles: 12.3 megapixels. */
async function phoneHeic(folder: string): Promise<string> {
  const file = path.join(folder, "phone.heic");
  await writeFile(file, gridHeic(8, 5));
  return file;
}
const heicRatio = () => inFolder(async (folder) => {
  const file = await phoneHeic(folder), buffer = new Uint8Array(await readFile(file));
  const [ms = NaN, floorMs = NaN] = await turnByTurn(() => receive(file, folder), () => heic({ buffer }));
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
  { name: "a JPEG of 12 MP taken in, all steps", floor: "bare sharp: 1600, 320 and 512 raw, and the full size written anew without notes", limit: null, measure: jpeg((file) => Promise.all([...copies(file), sharp(file).autoOrient().jpeg({ quality: 88, optimiseCoding: false }).toBuffer()])) },
  { name: "the same, held against copies only (aim 1.25 ×)", floor: "bare sharp: 1600, 320 and 512 raw, no full size", limit: null, measure: jpeg((file) => Promise.all(copies(file))) },
  { name: "a HEIC of 12 MP taken in, all steps (two idle processors)", floor: "a bare decode, which uses one", limit: 1.25, measure: heicRatio },
  { name: "the event loop held up meanwhile, p99", floor: `the ${HELD_UP_MS} ms that are allowed`, limit: 1, measure: heldUp },
];
