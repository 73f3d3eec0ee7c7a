import { ANCHORS, STRENGTHS, TEMPER } from "../trade/evidence-caps";
import { LABEL_SAYS, OTHER_LABELLED_OTHER, isLabelSays } from "../trade/likelihoods-label";
import { SMALLEST_CELL, strengthOfRow, type EvidenceGroup, type LikelihoodTable } from "../trade/likelihood-table";
import { LIKELIHOODS } from "../trade/likelihoods";
import { WETTING_ANSWERS } from "../trade/likelihoods-use";
import { NAMED, type NamedVector } from "./classes";
import { drawCell } from "./dirichlet";
import type { Finding, FindingValue, Strength } from "./finding";
import { priceLikelihood, readPrice } from "./price-evidence";
import type { Random } from "./random";

/** One piece of evidence on the fibre, from one or more findings of the same kind. */
export interface EvidenceItem {
  readonly what: string;
  readonly strength: Strength;
  readonly group: EvidenceGroup | null;
  /** P(finding | fibre) up to a common factor, for the named classes. */
  readonly likelihood: NamedVector;
  /** The same drawn anew from its table. */
  readonly draw: (random: Random) => NamedVector;
  /** Set where the class `other` has a likelihood of its own; null: the prior-weighted mean. */
  readonly other: number | null;
  /** The power on the likelihood, 0–1: below 1 where others of its group are present. */
  readonly power: number;
  /** The findings that bear it. */
  readonly findings: readonly Finding[];
}

/** What the price needs to know beside itself. */
export interface EvidenceContext { readonly currency: string; readonly year: number }

const canonical = (value: FindingValue): string =>
  typeof value === "object" && !Array.isArray(value) ? JSON.stringify(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) : JSON.stringify(value);
/** Equal for equal findings, whatever the order of their fields. */
export const findingKey = (f: Finding): string => [f.what, f.strength, f.from, canonical(f.value)].join("\u0000");

const listed = (value: FindingValue): readonly string[] => (Array.isArray(value) ? (value as string[]) : typeof value === "string" ? [value] : []);
const gotWet = (all: readonly Finding[]) => all.some((f) => listed(f.value).some((v) => WETTING_ANSWERS[f.what]?.includes(v)));

/** The row answer of `changes`, where the rug got wet. */
function wetBehaviour(value: FindingValue, all: readonly Finding[]): string | null {
  const seen = listed(value);
  if (seen.length === 0 || !gotWet(all)) return null;
  if (seen.includes("stiff") || seen.includes("rough")) return "stiffened";
  if (seen.includes("browner")) return "browned";
  return seen.every((s) => s === "none" || s === "dirty") ? "unharmed" : "otherwise";
}

function answerOf(table: LikelihoodTable, finding: Finding, all: readonly Finding[]): string | null {
  if (table.what === "changes") return wetBehaviour(finding.value, all);
  const value = table.what === "label" ? labelSays(finding.value) : finding.value;
  return typeof value === "string" && table.answers.includes(value) ? value : null;
}
function labelSays(value: FindingValue): string | null {
  const says = typeof value === "object" && !Array.isArray(value) ? (value as Record<string, unknown>)["says"] : null;
  return typeof says === "string" && isLabelSays(says) ? says : null;
}

/** Of findings of one kind the strongest are kept: a label that was photographed replaces the wording typed from it. */
function strongest(findings: readonly Finding[]): readonly Finding[] {
  const best = Math.max(...findings.map((f) => STRENGTHS.indexOf(f.strength)));
  return findings.filter((f) => STRENGTHS.indexOf(f.strength) === best);
}

const mean = (vectors: readonly NamedVector[]): NamedVector => NAMED.map((_, i) => vectors.reduce((sum, v) => sum + (v[i] as number), 0) / vectors.length);

type Untempered = Omit<EvidenceItem, "power">;

/** Two answers to the same question that disagree count as either being right: their likelihoods are averaged. */
function tableItem(table: LikelihoodTable, all: readonly Finding[]): Untempered | null {
  const findings = strongest(all.filter((f) => f.what === table.what && answerOf(table, f, all) !== null));
  const answers = [...new Set(findings.map((f) => answerOf(table, f, all) as string))].sort();
  if (answers.length === 0) return null;
  const columns = answers.map((a) => table.answers.indexOf(a));
  const cell = (fibre: (typeof NAMED)[number], column: number) => table.rows[fibre][column] as number;
  return {
    what: table.what, group: table.group, findings, strength: (findings[0] as Finding).strength,
    likelihood: mean(columns.map((c) => NAMED.map((f) => cell(f, c)))),
    draw: (random) => mean(columns.map((c) => NAMED.map((f) => Math.max(SMALLEST_CELL, drawCell(random, cell(f, c), strengthOfRow(table, f)))))),
    other: table.what === "label" && answers.includes("other") ? OTHER_LABELLED_OTHER / answers.length : null,
  };
}

function priceItem(all: readonly Finding[], context: EvidenceContext): Untempered | null {
  const back = tableItem(LIKELIHOODS.find((t) => t.what === "back") as LikelihoodTable, all);
  const makes = back ? [...new Set(back.findings.map((f) => f.value))] : [];
  const make = makes.length === 1 ? String(makes[0]) : null;
  const read = (f: Finding) => (f.what === "price-per-m2" ? readPrice(f.value, { ...context, make }) : null);
  const findings = strongest(all.filter((f) => read(f) !== null));
  const prices = findings.flatMap((f) => read(f) ?? []).sort((a, b) => a.logPounds - b.logPounds);
  if (prices.length === 0) return null;
  return {
    what: "price-per-m2", group: "lustre", findings, strength: (findings[0] as Finding).strength, other: null,
    likelihood: mean(prices.map((p) => priceLikelihood(p))),
    draw: (random) => mean(prices.map((p) => priceLikelihood(p, random))),
  };
}

function powerOf(item: Untempered, items: readonly Untempered[]): number {
  if (item.group === null || ANCHORS[item.group] === item.what) return 1;
  const powers = TEMPER[item.group];
  const present = items.filter((i) => i.group === item.group).length;
  return powers[Math.min(present, powers.length) - 1] as number;
}

/** Every piece of evidence on the fibre in the findings, in the order of `what`. Doubles and order change nothing. */
export function collectEvidence(findings: readonly Finding[], context: EvidenceContext): EvidenceItem[] {
  const all = [...new Map(findings.map((f) => [findingKey(f), f])).entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, f]) => f);
  const items = [...LIKELIHOODS.map((t) => tableItem(t, all)), priceItem(all, context)].filter((i): i is Untempered => i !== null);
  return items.map((item) => ({ ...item, power: powerOf(item, items) })).sort((a, b) => (a.what < b.what ? -1 : 1));
}

/** The answers a table can give as findings told by the client; none for what is no table. */
export function possibleFindings(what: string): { finding: Finding; column: NamedVector }[] {
  const table = LIKELIHOODS.find((t) => t.what === what);
  if (!table || what === "changes") return [];
  return table.answers.map((answer, c) => ({
    finding: what === "label"
      ? { what, value: { says: LABEL_SAYS[c] as string, text: "", pile: "" }, strength: "label-typed", from: "client" }
      : { what, value: answer, strength: "told", from: "client" },
    column: NAMED.map((f) => table.rows[f][c] as number),
  }));
}
