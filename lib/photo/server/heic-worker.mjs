// Runs in a worker thread of its own, so that a picture that hangs the decoder can be stopped by ending the thread.
// Plain JavaScript: it is started by its path, from tests, commands and the built server alike.
import { readFile } from "node:fs/promises";
import { parentPort, workerData } from "node:worker_threads";
import heic from "heic-decode";

const { file, page, maxPixels } = workerData;
const pictures = await heic.all({ buffer: new Uint8Array(await readFile(file)) });
const picture = pictures[page] ?? pictures[0];
if (picture.width * picture.height > maxPixels) throw new RangeError("too many pixels");
const { width, height, data } = await picture.decode();
parentPort.postMessage({ width, height, data: data.buffer }, [data.buffer]);
