import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { LEVELS, type Level } from "../labels/conditions";
import { judgeLabel, type Judged } from "../labels/judge";
import type { LongCheck, Outcome } from "./check";

/** Labels of each level: so many that one more or less of a hundred shows. */
const EACH = 240;
/** Number of the first: labels from here on were never looked at while the reading of them was built. */
const FIRST = 38_400;
/** What the reader has to reach. */
const RIGHT: Readonly<Record<Level, number>> = { clean: 0.97, medium: 0.97, "whole frame": 0.9, hard: 0.6 };
const SILENT = 0.01;

/** Kralicek, Matas & Busta (2019), on real care labels; the figures at second hand, the paper itself was not read. Other photos: a point to compare with, no limit. */
const IN_THE_LITERATURE: Outcome = { name: "for comparison: 63 real care labels (Kralicek, Matas, Busta 2019)", measured: "precision and recall just over 0.6", required: "", holds: null };

const percent = (part: number, all: number) => `${((100 * part) / all).toFixed(1)} % of ${all}`;

function outcomesOf(level: Level, judged: readonly Judged[]): Outcome[] {
  const right = judged.filter((j) => j.right).length, silent = judged.filter((j) => j.silent).length;
  return [
    { name: `${level}: right fibres and per cents`, measured: percent(right, judged.length), required: `${100 * RIGHT[level]} % or more`, holds: right >= RIGHT[level] * judged.length },
    { name: `${level}: wrong, and nothing says so`, measured: percent(silent, judged.length), required: `${100 * SILENT} % or less`, holds: silent <= SILENT * judged.length },
    { name: `${level}: given up, and said so (counts as not right)`, measured: percent(judged.filter((j) => j.gaveUp).length, judged.length), required: "", holds: null },
  ];
}

async function run(progress: (share: number) => void): Promise<Outcome[]> {
  const folder = mkdtempSync(path.join(tmpdir(), "plainpile-labels-"));
  try {
    const outcomes: Outcome[] = [];
    for (const [at, level] of LEVELS.entries()) {
      const judged: Judged[] = [];
      for (let n = 0; n < EACH; n++) {
        judged.push(await judgeLabel(level, FIRST + n, folder));
        progress((at + (n + 1) / EACH) / LEVELS.length);
      }
      outcomes.push(...outcomesOf(level, judged));
    }
    return [...outcomes, IN_THE_LITERATURE];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const checks: LongCheck[] = [{ name: "Photos of labels, drawn in eight languages and twelve typefaces, read", run }];
