import { generateCases } from "../simulation/generate";
import { judge, verdictsOf, type Judged, type Verdicts } from "../simulation/judge";
import type { LongCheck, Outcome } from "./check";

export const SIMULATED = { cases: 10_000, worlds: 20, seed: 1763 } as const;
const DRAWS = { seed: 1763, times: 1000 } as const;

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const holdsEighty = (name: string, range: { held: number; cases: number }): Outcome =>
  ({ name, measured: `${percent(range.held)} of ${range.cases}`, required: "75 to 90 %", holds: range.held >= 0.75 && range.held <= 0.9 });

/** What is required of 10,000 cases by a generator that is not the model. */
export function outcomesOf(v: Verdicts): Outcome[] {
  const outsideBand = v.band.filter((b) => b.observed < b.low || b.observed > b.high);
  return [
    { name: "Log score of the fibre better than base rates", measured: `${v.betterThanBaseRates.toFixed(3)} nat`, required: "at least 0.3 nat", holds: v.betterThanBaseRates >= 0.3 },
    { name: "Leading fibre stated .8 or more", measured: percent(v.sure.share), required: "at least 25 %", holds: v.sure.share >= 0.25 },
    { name: "Stated minus observed there", measured: `${percent(v.sure.gap)} (${percent(v.sure.low)} to ${percent(v.sure.high)})`, required: "at most 5 points", holds: v.sure.gap <= 0.05 },
    holdsEighty("Ranges of improvement hold", v.improvement),
    holdsEighty("Ranges of life left hold", v.life),
    { name: "Brier score of the leading fibre, MCB, DSC, UNC", measured: [v.reliability.score, v.reliability.miscalibration, v.reliability.discrimination, v.reliability.uncertainty].map((x) => x.toFixed(4)).join(" "), required: "reported", holds: null },
    { name: "Calibration error, and of a perfect forecaster", measured: `${v.reliability.ece.toFixed(3)} against ${v.reliability.eceNoise.mean.toFixed(3)}, p95 ${v.reliability.eceNoise.p95.toFixed(3)}`, required: "reported", holds: null },
    ...v.band.map((b): Outcome => ({ name: `Observed where ${b.stated} is stated`, measured: b.observed.toFixed(3), required: `null band ${b.low.toFixed(3)} to ${b.high.toFixed(3)}${outsideBand.includes(b) ? ", outside" : ""}`, holds: null })),
  ];
}

/** Ten thousand judged cases. */
export function judgeAll(progress: (share: number) => void): Judged[] {
  const cases = generateCases(SIMULATED);
  return cases.map((one, i) => { if (i % 50 === 0) progress(i / cases.length); return judge(one, i); });
}

export const checks: LongCheck[] = [{ name: "Simulation by a generator that is not the model", run: (progress) => outcomesOf(verdictsOf(judgeAll(progress), DRAWS)) }];
