// Runs in the reader's thread, so that a picture that hangs it can be stopped by ending the thread. It reads the language
// files from the packages that brought them and has neither a cache nor a network.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { parentPort } from "node:worker_threads";
import { gunzipSync } from "node:zlib";

const require = createRequire(import.meta.url);
const worker = require("tesseract.js/src/worker-script");
const getCore = require("tesseract.js/src/worker-script/node/getCore");
const nothing = async () => {};

worker.setAdapter({
  getCore,
  gunzip: gunzipSync,
  readCache: (file) => {
    const language = path.basename(file).split(".")[0];
    return readFile(path.join(path.dirname(require.resolve(`@tesseract.js-data/${language}/package.json`)), "4.0.0_best_int", `${language}.traineddata.gz`));
  },
  writeCache: nothing,
  deleteCache: nothing,
  checkCache: async () => true,
  fetch: () => Promise.reject(new Error("The reader of labels does not use the network")),
});
parentPort.on("message", (packet) => worker.dispatchHandlers(packet, (answer) => parentPort.postMessage(answer)));
