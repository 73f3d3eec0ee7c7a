import { ANCHORS, STRENGTHS, TEMPER } from "../trade/evidence-caps";
import { LABEL_SAYS, OTHER_LABELLED_CLASS, OTHER_LABELLED_OTHER, isLabelSays } from "../trade/likelihoods-label";
import { SMALLEST_CELL, strengthOfRow, type EvidenceGroup, type LikelihoodTable } from "../trade/likelihood-table";
import { LIKELIHOODS } from "../trade/likelihoods";
import { WETTING_ANSWERS } from "../trade/likelihoods-use";
import type { TestId } from "../trade/bench-tests";
import { pileEvidence } from "./bench-evidence";
import { NAMED, type NamedVector } from "./classes";
import { drawCell } from "./dirichlet";
import { distinctFindings, findingKey } from "./distinct-findings";
import { drawnLogs } from "./draws";
import type { Finding, FindingValue, Strength } from "./finding";
import { possibleTestFindings } from "./possible-tests";
import { priceLikelihood, pricesToExpect, readPrice } from "./price-evidence";

/** One piece of evidence on the fibre, from one or more findings of the same kind. */
export interface EvidenceItem {
  readonly what: string;
  readonly strength: Strength;
  readonly group: EvidenceGroup | null;
  /** P(finding | fibre) up to a common factor, for the named classes. */
  readonly likelihood: NamedVector;
  /** Its logarithms. */
  readonly logs: Float64Array;
  /** The logarithms drawn anew from its table, DRAWS vectors one after another; the same for the same seed. */
  readonly drawn: (seed: number) => Float64Array;
  /** Set where the class `other` has a likelihood of its own; null: the prior-weighted mean. */
  readonly other: number | null;
  /** The power on the likelihood, 0–1: below 1 where others of its group are present. */
  readonly power: number;
  /** The findings that bear it. */
  readonly findings: readonly Finding[];
}

/** What the price needs to know beside itself. */
export interface EvidenceContext { readonly currency: string; readonly year: number }

/** The findings by their kind, each once; of one kind in an order of their own, whatever order they came in. */
type ByWhat = ReadonlyMap<string, readonly Finding[]>;
function byWhat(findings: readonly Finding[]): ByWhat {
  const groups = new Map<string, Finding[]>();
  for (const f of findings) {
    const group = groups.get(f.what);
    if (group) group.push(f);
    else groups.set(f.what, [f]);
  }
  for (const [what, group] of groups) if (group.length > 1) groups.set(what, [...distinctFindings(group)]);
  return groups;
}

const listed = (value: FindingValue): readonly string[] => (Array.isArray(value) ? (value as string[]) : typeof value === "string" ? [value] : []);
const WETTING = Object.entries(WETTING_ANSWERS);
const gotWet = (all: ByWhat) => WETTING.some(([what, answers]) => all.get(what)?.some((f) => listed(f.value).some((v) => answers.includes(v))));

/** The row answer of `changes`, where the rug got wet. */
function wetBehaviour(value: FindingValue, all: ByWhat): string | null {
  const seen = listed(value);
  if (seen.length === 0 || !gotWet(all)) return null;
  if (seen.includes("stiff") || seen.includes("rough")) return "stiffened";
  if (seen.includes("browner")) return "browned";
  return seen.every((s) => s === "none" || s === "dirty") ? "unharmed" : "otherwise";
}

function answerOf(table: LikelihoodTable, finding: Finding, all: ByWhat): string | null {
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
  if (findings.length < 2) return findings;
  const best = Math.max(...findings.map((f) => STRENGTHS.indexOf(f.strength)));
  return findings.filter((f) => STRENGTHS.indexOf(f.strength) === best);
}

const mean = (vectors: readonly NamedVector[]): NamedVector =>
  vectors.length === 1 ? (vectors[0] as NamedVector) : NAMED.map((_, i) => vectors.reduce((sum, v) => sum + (v[i] as number), 0) / vectors.length);

type Untempered = Omit<EvidenceItem, "power">;
/** What a table says for one answer, or for several that were given at once. */
type Column = Pick<EvidenceItem, "likelihood" | "logs" | "drawn" | "other">;

/** Two answers to the same question that disagree count as either being right: their likelihoods are averaged. `answers` sorted. */
function columnOf(table: LikelihoodTable, answers: readonly string[]): Column {
  const places = answers.map((a) => table.answers.indexOf(a));
  const likelihood = mean(places.map((c) => NAMED.map((f) => table.rows[f][c] as number)));
  return {
    likelihood, logs: Float64Array.from(likelihood, Math.log),
    drawn: (seed) => drawnLogs(seed, `${table.what}=${answers.join("|")}`, (random) =>
      mean(places.map((c) => NAMED.map((f) => Math.max(SMALLEST_CELL, drawCell(random, table.rows[f][c] as number, strengthOfRow(table, f))))))),
    other: table.what === "label" ? answers.reduce((sum, a) => sum + (a === "other" ? OTHER_LABELLED_OTHER : OTHER_LABELLED_CLASS), 0) / answers.length : null,
  };
}
/** One answer of a table as a column over the classes, worked out once. */
const COLUMNS = new Map<LikelihoodTable, ReadonlyMap<string, Column>>(LIKELIHOODS.map((t) => [t, new Map(t.answers.map((a) => [a, columnOf(t, [a])]))]));
const columnFor = (table: LikelihoodTable, answers: readonly string[]): Column =>
  answers.length === 1 ? (COLUMNS.get(table)?.get(answers[0] as string) as Column) : columnOf(table, answers);

function tableItem(table: LikelihoodTable, all: ByWhat): Untempered | null {
  const findings = strongest((all.get(table.what) ?? []).filter((f) => answerOf(table, f, all) !== null));
  if (findings.length === 0) return null;
  const answers = findings.map((f) => answerOf(table, f, all) as string);
  const { likelihood, logs, drawn, other } = columnFor(table, answers.length === 1 ? answers : [...new Set(answers)].sort());
  return { what: table.what, group: table.group, findings, strength: (findings[0] as Finding).strength, likelihood, logs, drawn, other };
}

const BACK = LIKELIHOODS.find((t) => t.what === "back") as LikelihoodTable;

function priceItem(all: ByWhat, context: EvidenceContext): Untempered | null {
  const given = all.get("price-per-m2");
  if (!given) return null;
  const backs = all.get("back") ?? [];
  const made = backs.length > 0 ? tableItem(BACK, all)?.findings ?? [] : [];
  const make = made.length > 0 && made.every((f) => f.value === made[0]?.value) ? String(made[0]?.value) : null;
  const read = (f: Finding) => readPrice(f.value, { ...context, make });
  const findings = strongest(given.filter((f) => read(f) !== null));
  const prices = findings.flatMap((f) => read(f) ?? []).sort((a, b) => a.logPounds - b.logPounds);
  if (prices.length === 0) return null;
  const likelihood = mean(prices.map((p) => priceLikelihood(p)));
  const key = () => prices.map((p) => [p.logPounds, p.loosePlace, p.yearKnown, p.make].join()).join("|");
  return {
    what: "price-per-m2", group: "lustre", findings, strength: (findings[0] as Finding).strength, other: null, likelihood, logs: Float64Array.from(likelihood, Math.log),
    drawn: (seed) => drawnLogs(seed, `price=${key()}`, (random) => mean(prices.map((p) => priceLikelihood(p, random)))),
  };
}

/** Tests and reports of the workshop and of laboratories; each yarn's come as one chain, so none is tempered. */
function testedItems(findings: readonly Finding[]): EvidenceItem[] {
  return pileEvidence(findings).map((e) => ({
    ...e, group: null, logs: Float64Array.from(e.likelihood, Math.log),
    drawn: (seed) => drawnLogs(seed, `${e.group}=${e.findings.map(findingKey).sort().join("|")}`, e.draw),
  }));
}

function powerOf(item: Untempered, items: readonly Untempered[]): number {
  if (item.group === null || ANCHORS[item.group] === item.what) return 1;
  const powers = TEMPER[item.group];
  const present = items.reduce((n, i) => (i.group === item.group ? n + 1 : n), 0);
  return powers[Math.min(present, powers.length) - 1] as number;
}

/** Every piece of evidence on the fibre in the findings, in the order of `what`. Doubles and order change nothing. */
export function collectEvidence(findings: readonly Finding[], context: EvidenceContext): EvidenceItem[] {
  const all = byWhat(findings);
  const items = LIKELIHOODS.flatMap((t) => (all.has(t.what) ? tableItem(t, all) ?? [] : []));
  const price = priceItem(all, context);
  if (price) items.push(price);
  const told = items.map((item): EvidenceItem => ({ ...item, power: powerOf(item, items) }));
  return [...told, ...testedItems(findings)].sort((a, b) => (a.what < b.what ? -1 : a.what > b.what ? 1 : 0));
}

const TEST = "test:";

/**
 * What could be answered to a question, read on a label, paid, or found by a bench test (`test:<id>`), as findings with the
 * chance of each for every class; none for what says nothing of the fibre.
 */
export function possibleFindings(what: string): { finding: Finding; column: NamedVector }[] {
  if (what === "price-per-m2") return pricesToExpect();
  if (what.startsWith(TEST)) return possibleTestFindings(what.slice(TEST.length) as TestId);
  const table = LIKELIHOODS.find((t) => t.what === what);
  if (!table || what === "changes") return [];
  return table.answers.map((answer, c) => ({
    finding: what === "label"
      ? { what, value: { says: LABEL_SAYS[c] as string, text: "", pile: "" }, strength: "label-typed", from: "client" }
      : { what, value: answer, strength: "told", from: "client" },
    column: columnFor(table, [answer]).likelihood,
  }));
}
