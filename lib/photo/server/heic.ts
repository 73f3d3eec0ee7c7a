import "server-only";
import path from "node:path";
import { Worker } from "node:worker_threads";
import { fromPixels, MAX_PIXELS, openPicture, type Pixels } from "./pictures";
import { tagPng } from "./tag-png";

/** Milliseconds until a HEIC picture is given up. A twelve-megapixel one takes one to three seconds on an idle machine. *elicited* */
const PATIENCE_MS = 60_000;

/**
 * Decodes a HEIC picture to sRGB pixels, by way of a PNG that carries its colour profile where it has one.
 * The pixels are already upright (libheif applies the container's own rotation), so the EXIF orientation must not be
 * applied again. Rejects where the picture is damaged or the decoder takes too long.
 */
export async function decodeHeic(file: string, patienceMs = PATIENCE_MS): Promise<Pixels> {
  const { icc, pagePrimary } = await openPicture(file).metadata();
  const pixels = await decode(file, pagePrimary ?? 0, patienceMs);
  const decoded = fromPixels({ ...pixels, channels: 4 }).removeAlpha();
  const tagged = icc ? openPicture(tagPng(await decoded.png({ compressionLevel: 0 }).toBuffer(), icc)).toColourspace("srgb") : decoded;
  return { data: await tagged.raw().toBuffer(), width: pixels.width, height: pixels.height, channels: 3 };
}

function decode(file: string, page: number, patienceMs: number): Promise<{ width: number; height: number; data: Uint8Array }> {
  return new Promise((resolve, reject) => {
    const script = path.join(process.cwd(), "lib", "photo", "server", "heic-worker.mjs");
    // Without execArgv the thread would inherit the loaders of the command that started us; what the decoder prints about
    // a stranger's file stays out of the log.
    const worker = new Worker(script, { workerData: { file, page, maxPixels: MAX_PIXELS }, execArgv: [], stdout: true, stderr: true });
    const timer = setTimeout(() => fail(new Error("HEIC: out of patience")), patienceMs);
    const end = () => {
      clearTimeout(timer);
      void worker.terminate();
    };
    // Ending the thread raises "exit" as well; by then the promise is settled and the second answer is nothing.
    const fail = (error: Error) => {
      reject(error);
      end();
    };
    worker.once("message", (m: { width: number; height: number; data: ArrayBuffer }) => {
      resolve({ width: m.width, height: m.height, data: new Uint8Array(m.data) });
      end();
    });
    worker.once("error", fail);
    worker.once("exit", (code) => fail(new Error(`HEIC: the decoder ended with ${code}`)));
  });
}
