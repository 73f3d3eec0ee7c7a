import { METHODS } from "../trade/care";
import { mechanismName } from "../trade/damage";
import { fibreName } from "../trade/fibres";
import { ACTIONS } from "../trade/losses";
import type { Range } from "../triage/assessment";
import type { TriagedFile } from "./triage";

type TriagedRug = TriagedFile["rugs"][number];

const percent = (p: number) => `${Math.round(p * 100)} %`;
const bar = (p: number) => "█".repeat(Math.round(p * 20)).padEnd(20, "·");
const spread = (r: Range | null, unit: string, digits = 0) =>
  (r ? `${r.low.toFixed(digits)} to ${r.high.toFixed(digits)}, middle ${r.median.toFixed(digits)} ${unit}` : null);
/** From this chance on a fibre or a mechanism gets a line. */
const WORTH_A_LINE = 0.02;
const NAME_WIDTH = 37;

const row = (name: string, p: number, more = "") => `  ${name.padEnd(NAME_WIDTH)}${bar(p)} ${percent(p).padStart(5)}${more}`;

/** One finding with its weight, in decibans for the first fibre against the second. */
const finding = ({ decibans, staff }: TriagedRug["findings"][number]) => `  ${`${decibans > 0 ? "+" : "−"}${Math.abs(decibans).toFixed(1)}`.padStart(5)}  ${staff}`;

function rugTable(rug: TriagedRug): string {
  const stated = (name: string, value: string | null, why: string | undefined) => `  ${name.padEnd(NAME_WIDTH)}${value ?? `not stated. ${why ?? ""}`.trim()}`;
  return [
    rug.title,
    "", "Fibre of the pile (80 % interval)",
    ...rug.fibres.filter((f) => f.probability >= WORTH_A_LINE).map((f) => row(fibreName(f.fibre), f.probability, `  ${percent(f.low)} to ${percent(f.high)}  ${f.words}`)),
    "", "What happened",
    ...rug.mechanisms.filter((m) => m.probability >= WORTH_A_LINE).map((m) => row(mechanismName(m.mechanism), m.probability)),
    "", "What speaks for it (decibans)",
    ...rug.findings.filter((f) => f.decibans !== 0).sort((a, b) => Math.abs(b.decibans) - Math.abs(a.decibans)).map(finding),
    "", "Prospects (provisional, not inspected)",
    stated("improvement", spread(rug.improvement, "per cent"), rug.why.improvement),
    stated("beyond economic repair", rug.beyondRepair === null ? null : percent(rug.beyondRepair), rug.why.beyondRepair),
    stated("made worse by it", rug.worse === null ? null : percent(rug.worse), rug.why.worse),
    stated("life left", spread(rug.lifeYears, "years", 1), rug.why.lifeYears),
    "", "Methods",
    ...rug.methods.map((m) => `  ${METHODS[m.method].name.padEnd(NAME_WIDTH)}${m.verdict.replaceAll("-", " ")}`),
    "",
    `Advice: ${ACTIONS[rug.advice.action].name}. ${rug.advice.why}`,
    `Urgency: ${rug.urgency.level.replaceAll("-", " ")}. ${rug.urgency.why}`,
    ...(rug.nextQuestions[0] ? [`Next: ${rug.nextQuestions[0].ask}`] : []),
  ].join("\n");
}

/** The assessment for people, in plain text: one block a rug, then the letter, which speaks of all of them. */
export const triageTable = (file: TriagedFile): string =>
  [...file.rugs.map(rugTable), ...file.rugs.slice(0, 1).map(({ subject, draft }) => `Draft\n\n${subject}\n\n${draft}`)].join("\n\n");
