import { METHODS } from "../trade/care";
import { mechanismName, mechanismRow, standsUnder } from "../trade/damage";
import { FIBRE_IDS, fibreName } from "../trade/fibres";
import { IMPROVEMENT, ROW_IDS, improvementCell } from "../trade/improvement";
import { LIKELIHOODS } from "../trade/likelihoods";
import { ACTIONS, LOSSES, type ActionId } from "../trade/losses";
import { TRIGGERS } from "../trade/triggers";
import { riskContributions } from "../triage/advice";
import { decisionOf } from "../triage/assess";
import type { Assessment, Range, TriageSettings } from "../triage/assessment";
import { believe } from "../triage/belief";
import type { Finding } from "../triage/finding";
import { lifetimesOf } from "../triage/life";
import { worthOfAsking } from "../triage/next-question";
import type { Told } from "../triage/told";

export interface Reasons { readonly title: string; readonly findings: readonly Finding[]; readonly settings: TriageSettings; readonly assessment: Assessment }

const WIDTH = 100;
/** What weighs less than this, as a chance, gets no line. */
const WORTH_A_LINE = 0.02;

/** The whole chain of reasoning of one rug as text: what was told, what each finding weighs, and what follows, in order. */
export function explain({ title, findings, settings, assessment: a }: Reasons): string {
  const { told, decision } = decisionOf(findings, settings, a.asOf);
  const sections: [string, string[]][] = [
    ["Findings, and what each weighs", a.findings.flatMap((f) => [`${signed(f.decibans)} dB  ${f.staff}`, ...sourceOf(f.what)])],
    [`How the weights add up: ${fibreName(a.balance.leading)} against ${fibreName(a.balance.rival)}`, balance(a)],
    ["Fibre of the pile, with its 80 % interval", a.fibres.filter((f) => f.probability >= WORTH_A_LINE).map((f) => `${percent(f.probability)}  ${percent(f.low)} to ${percent(f.high)}  ${fibreName(f.fibre)}, ${f.words}`)],
    ["Ground, fringe and yarns", a.components.map((c) => c.says)],
    ["What does not fit together", a.conflicts.map((c) => c.staff)],
    ["What happened", a.mechanisms.filter((m) => m.probability >= WORTH_A_LINE).flatMap((m) => [`${percent(m.probability)}  ${mechanismName(m.mechanism)}`, ...causes(told, m.mechanism)])],
    ["Which row of the improvement table rules", rulingRows(decision)],
    ["Prospects", prospects(a)],
    ["How long it has left", lifetimes(told, a)],
    ["Money", money(a)],
    ["Methods", a.methods.map((m) => `${METHODS[m.method].name}: ${m.verdict.replaceAll("-", " ")}. ${m.why}`)],
    ["What each action would be regretted, in ordinary cleans", actions(a, riskContributions(decision))],
    ["What to ask next", asking(told, decision, { findings, settings, asOf: a.asOf })],
    ["Urgency", [`${a.urgency.level.replaceAll("-", " ")}: ${a.urgency.why}`]],
  ];
  const head = `${title}\nModel ${a.modelVersion}, ages counted from ${a.asOf.slice(0, 10)}`;
  return [head, ...sections.filter(([, lines]) => lines.length > 0).map(([name, lines]) => [name, ...lines.map(wrapped)].join("\n"))].join("\n\n");
}

const percent = (p: number) => `${(p * 100).toFixed(1).padStart(5)} %`;
const signed = (db: number) => `${db < 0 ? "−" : "+"}${Math.abs(db).toFixed(1)}`.padStart(6);
const spread = (r: Range, unit: string, digits = 1) => `${r.low.toFixed(digits)} – ${r.median.toFixed(digits)} – ${r.high.toFixed(digits)} ${unit}`;

/** Lines of at most WIDTH characters, the later ones set in. */
function wrapped(line: string): string {
  const indent = "  " + " ".repeat(line.search(/\S/u));
  const words = line.trim().split(" ");
  const lines: string[] = [];
  let current = indent;
  for (const word of words) {
    if (current.trim() !== "" && current.length + word.length + 1 > WIDTH) { lines.push(current); current = `${indent}  ${word}`; }
    else current = current.trim() === "" ? `${current}${word}` : `${current} ${word}`;
  }
  return [...lines, current].join("\n");
}

/** Where the table comes from that weighs a finding. */
function sourceOf(what: string): string[] {
  const table = LIKELIHOODS.find((t) => t.what === what);
  return table ? [`    ${table.source.how}: ${table.source.source}`] : [];
}

function balance({ balance: b }: Assessment): string[] {
  return [
    `${signed(b.prior)} dB  before any evidence`, `${signed(b.findings)} dB  all findings`, `${signed(b.damping)} dB  held back: words and photos can mislead as a whole`,
    `${signed(b.cap)} dB  held back: evidence of this kind carries no further`, `${signed(b.total)} dB  altogether`,
  ];
}

/** The tellings that make a mechanism likely, or that nothing points to it. */
function causes(told: Told, mechanism: Assessment["mechanisms"][number]["mechanism"]): string[] {
  if (mechanism === "soil-only") return [];
  const fired = TRIGGERS.filter((t) => t.mechanism === standsUnder(mechanism) && told.has(t.when) && !t.unless?.some((u) => told.has(u)));
  if (fired.length === 0) return [`    nothing told points here: chance ${mechanismRow(mechanism).leak} by itself (${mechanismRow(mechanism).how})`];
  return fired.map((t) => `    ${t.when}: ${t.chance} on a pile that takes it fully (${t.how}: ${t.source})`);
}

function rulingRows(d: ReturnType<typeof decisionOf>["decision"]): string[] {
  return FIBRE_IDS.flatMap((f) => ROW_IDS.map((r) => ({ f, r, weight: d.fibres[f] * d.rows[f][r] }))).filter((x) => x.weight >= WORTH_A_LINE).sort((x, y) => y.weight - x.weight)
    .map(({ f, r, weight }) => { const q = improvementCell(r, f); return `${percent(weight)}  ${fibreName(f)}, ${IMPROVEMENT[r].name}: ${q.low}–${q.median}–${q.high} per cent (${IMPROVEMENT[r].how})`; });
}

const byGrade = (chances: readonly number[]) => chances.map((p, grade) => `${grade}: ${percent(p).trim()}`).join(", ");
function prospects({ improvement, texture, odour, worse, beyondRepair, why, onlyInspection }: Assessment): string[] {
  return [
    `improvement: ${improvement ? spread(improvement, "per cent") : why.improvement}`,
    ...(texture ? [`texture by grade, 0 as it was made to 4 gone, now: ${byGrade(texture.now)}; after the best method still allowed: ${byGrade(texture.after)}`] : []),
    ...(odour ? [`smells: ${percent(odour.now).trim()}; the smell comes back in damp weather: ${percent(odour.returns).trim()}`] : []),
    ...(worse === null ? [] : [`made worse by the best method still allowed: ${percent(worse).trim()}`]),
    ...(beyondRepair === null ? [] : [`beyond economic repair, provisional, not inspected: ${percent(beyondRepair).trim()}`]),
    ...onlyInspection.map((s) => `only an inspection settles: ${s}`),
  ];
}

function lifetimes(told: Told, a: Assessment): string[] {
  if (!a.lifeYears) return [a.why.lifeYears ?? ""];
  const fibres = Object.fromEntries(a.fibres.map((f) => [f.fibre, f.probability])) as Record<(typeof FIBRE_IDS)[number], number>;
  const all = lifetimesOf(told, fibres, Number(a.asOf.slice(0, 4))).filter((l) => l.weight >= WORTH_A_LINE).sort((x, y) => y.weight - x.weight);
  return [`years left: ${spread(a.lifeYears, "years")}`,
    ...all.map((l) => `${percent(l.weight)}  ${fibreName(l.fibre)}, ${l.age} years old, of a kind that lives ${l.life.medianYears.toFixed(1)} years in this use (${l.life.how})`)];
}

function money({ money: m, why }: Assessment): string[] {
  const rows = m ? ([["cleaning", m.clean], ["cutting down", m.cutDown], ["a new one", m.replace], ["value today", m.valueToday]] as const).flatMap(([name, r]) => (r ? [`${name}: ${spread(r, m.currency, 0)}`] : [])) : [];
  return [...rows, ...(why.money ? [why.money] : [])];
}

/** Least regretted first, with the risks that make it up. */
function actions(a: Assessment, risks: ReturnType<typeof riskContributions>): string[] {
  return a.advice.losses.flatMap(({ action, loss }) => [
    `${loss.toFixed(2).padStart(6)}  ${ACTIONS[action as ActionId].name}`,
    ...risks.filter((r) => r.action === action && r.expected >= WORTH_A_LINE).sort((x, y) => y.expected - x.expected).map((r) => `      ${r.expected.toFixed(2)}  ${LOSSES[r.loss].what}`),
  ]);
}

function asking(told: Told, decision: ReturnType<typeof decisionOf>["decision"], { findings, settings, asOf }: { findings: readonly Finding[]; settings: TriageSettings; asOf: string }): string[] {
  const worths = worthOfAsking(told, decision, { ...believe(findings, settings, asOf), benchTests: settings.benchTests });
  return worths.slice(0, 8).map((w) => `${w.kind.replace("-", " ")} ${w.id}: saves ${w.drop.toFixed(3)} and tells ${w.bits.toFixed(2)} bits for a trouble of ${w.trouble}`);
}
