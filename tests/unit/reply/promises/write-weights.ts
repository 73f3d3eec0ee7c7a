/** Fits the weights of sureness to the tables of sentences and writes them: `node --conditions=react-server --import tsx` this file. */
import { writeFileSync } from "node:fs";
import path from "node:path";
import { fit } from "./fit";
import { BESIDE, rowsOf, WRITTEN } from "./tables";

const { start, weights } = fit([...WRITTEN, ...BESIDE].flatMap(rowsOf));
const lines = [...new Set(weights.values())].sort((a, b) => b - a).map((weight) => `    ${JSON.stringify(String(weight))}: ${JSON.stringify([...weights].filter(([, w]) => w === weight).map(([sign]) => sign))}`);
writeFileSync(path.join(import.meta.dirname, "../../../../lib/reply/promises/sureness-weights.json"), `{\n  "start": ${start},\n  "signs": {\n${lines.join(",\n")}\n  }\n}\n`);
