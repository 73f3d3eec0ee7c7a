import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { createWorker, OEM, PSM } from "tesseract.js";
import { labelSense } from "../../lib/enquiry/label-sense";
import { readLabelPhoto } from "../../lib/photo/server/read-label-photo";
import { seeded } from "../../prisma/demo/canvas";
import { conditionsOf } from "../labels/conditions";
import { drawLabel } from "../labels/draw";
import { TYPEFACES } from "../labels/typefaces";
import type { BenchRow } from "./measure";

const ROUNDS = 30;
/** The whole of the picture, as a person frames a label. */
const CROP = { x: 0, y: 0, width: 1, height: 1 };
const LINES = ["Hand knotted", "Pile: 80% wool", "20% viscose", "Backing: 100% cotton", "160 x 230 cm"];

async function timeOf(work: () => Promise<unknown>): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}

/** The label cut out of its photo, read by the desk and by the bare reader turn by turn, both warm; the least of all rounds. */
async function measure(): Promise<{ ms: number; floorMs: number }> {
  const folder = mkdtempSync(path.join(tmpdir(), "plainpile-bench-"));
  const file = path.join(folder, "label.jpg");
  const random = seeded(5);
  const { data, width, height } = drawLabel(random, { language: "en", lines: LINES, says: [] }, TYPEFACES[6]!, conditionsOf(random, "clean"));
  await sharp(data, { raw: { width, height, channels: 3 } }).jpeg({ quality: 90 }).toFile(file);
  const workerPath = path.resolve("lib/photo/server/label-worker.mjs");
  const bare = await createWorker("eng", OEM.LSTM_ONLY, { workerPath, langPath: ".", cacheMethod: "none" });
  try {
    await bare.setParameters({ tessedit_pageseg_mode: PSM.SINGLE_BLOCK });
    let [ms, floorMs] = [Infinity, Infinity];
    for (let n = 0; n <= ROUNDS; n++) {
      const [ours, theirs] = [await timeOf(() => readLabelPhoto(file, { frame: CROP, sense: labelSense })), await timeOf(() => bare.recognize(file, {}, { text: true }))];
      if (n > 0) [ms, floorMs] = [Math.min(ms, ours), Math.min(floorMs, theirs)];
    }
    return { ms, floorMs };
  } finally {
    await bare.terminate();
    rmSync(folder, { recursive: true, force: true });
  }
}

export const rows: BenchRow[] = [
  { name: "the label in a photo read, found, levelled and made even", floor: "tesseract.js alone on the same picture", limit: 1.5, measure },
];
