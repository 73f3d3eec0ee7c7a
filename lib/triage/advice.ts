import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { ROW_IDS, type RowId } from "../trade/improvement";
import { ACTIONS, FIRST_AID_MISDONE, LOSSES, NEEDS, REFERRALS, RISKS, SETTLES, type ActionId, type ChanceId, type Factor, type LossId, type ReferralId, type TerminalId } from "../trade/losses";
import type { Assessment } from "./assessment";
import { ofFibres } from "./of-fibres";
import { failsOn, type RulingRows } from "./prospects";

/** What the decision hangs on beside fibre and ruling row: chances 0–1 that hold for the whole rug. */
export interface Circumstances {
  readonly sound: number;
  readonly wet: number;
  readonly specialist: number;
  readonly local: number;
  /** Size of the rug and place of the trouble are known. */
  readonly placed: boolean;
  readonly antique: boolean;
  readonly cheap: number;
  readonly grounds: number;
  readonly asksName: number;
  /** It was sold as silk, or partly silk, and that is in doubt. */
  readonly soldAsSilk: boolean;
  /** Share of what could be asked that is still open, 0–1. */
  readonly open: number;
}
type Fibres = Readonly<Record<FibreId, number>>;
export interface Decision { readonly fibres: Fibres; readonly rows: RulingRows; readonly worse: Fibres; readonly circumstances: Circumstances; readonly losses: Partial<Record<string, number>> | null }
export interface Weighed { readonly action: ActionId; readonly loss: number }

const SILKS: readonly FibreId[] = ["silk", "wool-silk", "silk-viscose"];
const VISCOSES: readonly FibreId[] = ["viscose", "wool-viscose", "cotton-viscose", "lyocell", "acetate"];
const TERMINAL = (Object.keys(ACTIONS) as ActionId[]).filter((a): a is TerminalId => a !== "ask-for-more" && a !== "inspect-and-test");
/** Naming it is part of every action but first aid, which names nothing. */
const NAMES_IT: readonly TerminalId[] = TERMINAL.filter((a) => a !== "first-aid");

/** The actions that may be advised, by what is known now or, `once` the place was asked for, by what asking can settle. */
function allowed(c: Circumstances, once: "now" | "placed"): readonly boolean[] {
  const met = { placed: once === "placed" || c.placed, "no-antique": !c.antique };
  return TERMINAL.map((action) => (NEEDS[action] ?? []).every((need) => met[need]));
}

const lossOf = (losses: Decision["losses"], id: LossId): number => losses?.[id] ?? LOSSES[id].loss;

/** Chance-weighted cost of giving the pile the name that costs least if wrong. */
export function misnamingLoss(fibres: Fibres, losses: Decision["losses"]): number {
  const cost = (name: FibreId, truth: FibreId): number => {
    if (name === truth) return 0;
    if (SILKS.includes(name) && VISCOSES.includes(truth)) return lossOf(losses, "called-silk-was-viscose");
    if (VISCOSES.includes(name) && SILKS.includes(truth)) return lossOf(losses, "called-viscose-was-silk");
    return lossOf(losses, "misnamed-otherwise");
  };
  return Math.min(...FIBRE_IDS.map((name) => FIBRE_IDS.reduce((sum, truth) => sum + fibres[truth] * cost(name, truth), 0)));
}

/** One way things may stand: a fibre, whether more than soil is to be brought back, and whether that fails. */
interface State { readonly fibre: FibreId; readonly marked: number; readonly fails: number }

/** Everything a risk row may name. */
function chancesOf(d: Decision, { fibre, marked, fails }: State): Record<ChanceId, number> {
  const c = d.circumstances;
  return {
    fails, marked, worse: d.worse[fibre], sound: c.sound, wet: c.wet, specialist: c.specialist, local: c.local,
    cheap: c.cheap, grounds: c.grounds, "as-sold": c.soldAsSilk && SILKS.includes(fibre) ? 1 : 0, misdone: FIRST_AID_MISDONE.chance,
  };
}
const chanceOf = (chances: Record<ChanceId, number>, factor: Factor): number =>
  factor.startsWith("not:") ? 1 - chances[factor.slice(4) as ChanceId] : chances[factor as ChanceId];

/** Expected loss of every terminal action in one state, naming left out. */
function riskLosses(d: Decision, state: State): number[] {
  const chances = chancesOf(d, state);
  const out = TERMINAL.map(() => 0);
  for (const r of RISKS) {
    const k = TERMINAL.indexOf(r.action);
    out[k] = (out[k] as number) + r.when.reduce((loss, f) => loss * chanceOf(chances, f), lossOf(d.losses, r.loss));
  }
  return out;
}

/** The losses by fibre, for soil and for a mark: linear in the chance of failing, so its two ends suffice. */
interface Ends { readonly comesBack: readonly number[]; readonly fails: readonly number[] }
type LossTable = Readonly<Record<FibreId, { readonly soil: Ends; readonly mark: Ends }>>;
function lossTable(d: Decision): LossTable {
  const ends = (fibre: FibreId, marked: number): Ends => ({ comesBack: riskLosses(d, { fibre, marked, fails: 0 }), fails: riskLosses(d, { fibre, marked, fails: 1 }) });
  return ofFibres((f) => ({ soil: ends(f, 0), mark: ends(f, 1) }));
}

/** The least loss of the actions that may be advised. */
const least = (losses: readonly number[], open: readonly boolean[]): number => losses.reduce((min, l, k) => (open[k] && l < min ? l : min), Infinity);

/** The losses of one fibre under one ruling row. */
function lossesUnder(table: LossTable, fibre: FibreId, row: RowId): number[] {
  const { comesBack, fails } = table[fibre][row === "soil" ? "soil" : "mark"];
  const p = failsOn(fibre, row);
  return comesBack.map((l, k) => l + p * ((fails[k] as number) - l));
}

/** Mean losses of one fibre over its ruling rows. */
function meanLosses(d: Decision, table: LossTable, fibre: FibreId): number[] {
  const out = TERMINAL.map(() => 0);
  for (const row of ROW_IDS) {
    const weight = d.rows[fibre][row];
    if (weight > 0) lossesUnder(table, fibre, row).forEach((l, k) => { out[k] = (out[k] as number) + weight * l; });
  }
  return out;
}

/** What stays the same while only the fibres change: losses by fibre and row, and their means by fibre. */
export interface Priced { readonly table: LossTable; readonly means: Readonly<Record<FibreId, readonly number[]>> }
export function priced(d: Decision): Priced {
  const table = lossTable(d);
  return { table, means: ofFibres((f) => meanLosses(d, table, f)) };
}

/** Expected loss of every action that decides now, naming included, in the order of TERMINAL. */
function terminalLosses(d: Decision, means: Priced["means"]): number[] {
  const asks = d.circumstances.asksName;
  const naming = asks > 0 ? asks * misnamingLoss(d.fibres, d.losses) : 0;
  const now = TERMINAL.map((action) => (NAMES_IT.includes(action) ? naming : 0));
  for (const f of FIBRE_IDS) means[f].forEach((l, k) => { now[k] = (now[k] as number) + d.fibres[f] * l; });
  return now;
}

/** The least expected loss of the actions that decide now, for other fibres than those the decision was priced with. */
export const leastNow = (d: Decision, fibres: Fibres, { means }: Priced): number =>
  least(terminalLosses({ ...d, fibres }, means), allowed(d.circumstances, "now"));

/** The least that could be had knowing fibre and damage, or having tested as well. */
function ifKnown(d: Decision, { table }: Priced): { knowing: number; inspected: number } {
  let [knowing, inspected] = [0, 0];
  const open = allowed(d.circumstances, "placed");
  for (const f of FIBRE_IDS) {
    for (const r of ROW_IDS) {
      const weight = d.fibres[f] * d.rows[f][r];
      if (weight < 1e-6) continue;
      const known = least(lossesUnder(table, f, r), open);
      const { comesBack, fails } = table[f][r === "soil" ? "soil" : "mark"];
      const p = failsOn(f, r);
      knowing += weight * known;
      inspected += weight * (SETTLES.inspectingOutcome * (p * least(fails, open) + (1 - p) * least(comesBack, open)) + (1 - SETTLES.inspectingOutcome) * known);
    }
  }
  return { knowing, inspected };
}

/** What knowing the damage would save where the fibre is known: mean over fibres, in expected loss. */
export const openDamageLoss = (d: Decision, p: Priced): number =>
  Math.max(0, FIBRE_IDS.reduce((sum, f) => sum + d.fibres[f] * least(p.means[f], allowed(d.circumstances, "placed")), 0) - ifKnown(d, p).knowing);

/** Expected loss of every action that may be advised, least first; equal ones in the order of ACTIONS. */
export function weighActions(d: Decision, p: Priced = priced(d)): Weighed[] {
  const terminal = terminalLosses(d, p.means);
  const { knowing, inspected } = ifKnown(d, p);
  const c = d.circumstances;
  const [now, placed] = [allowed(c, "now"), allowed(c, "placed")];
  const best = least(terminal, now);
  const bestPlaced = least(terminal, placed);
  const unplaced = bestPlaced < best ? 1 : 0;
  const bestAsked = best + SETTLES.placing * (bestPlaced - best);
  const urgent = c.wet * lossOf(d.losses, "urgent-left-a-day");
  const settled = SETTLES.asking * c.open;
  const askTrouble = lossOf(d.losses, "trouble-photo") + lossOf(d.losses, "trouble-question") + (1 - Math.max(c.open, unplaced)) * lossOf(d.losses, "asked-needlessly");
  const unsureOfFibre = 1 - Math.max(...FIBRE_IDS.map((f) => d.fibres[f]));
  const visit = lossOf(d.losses, "asked-needlessly") + unsureOfFibre * lossOf(d.losses, "trouble-bench") * Math.max(c.asksName, SETTLES.benchUnasked);
  const all: Weighed[] = [
    ...TERMINAL.flatMap((action, k) => (now[k] ? [{ action, loss: terminal[k] as number }] : [])),
    { action: "ask-for-more", loss: askTrouble + (1 - settled) * bestAsked + settled * Math.min(bestAsked, knowing) + urgent },
    { action: "inspect-and-test", loss: visit + (1 - SETTLES.inspecting) * best + SETTLES.inspecting * inspected + urgent },
  ];
  return all.sort((a, b) => a.loss - b.loss);
}

/** What each risk adds to the expected loss of its action: fibres and ruling rows weighed, naming left out. */
export function riskContributions(d: Decision): { action: TerminalId; loss: LossId; expected: number }[] {
  return RISKS.map(({ action, loss, when }) => ({
    action, loss,
    expected: FIBRE_IDS.reduce((sum, fibre) => sum + ROW_IDS.reduce((s, row) => {
      const weight = d.fibres[fibre] * d.rows[fibre][row];
      if (weight === 0) return s;
      const chances = chancesOf(d, { fibre, marked: row === "soil" ? 0 : 1, fails: failsOn(fibre, row) });
      return s + weight * when.reduce((product, f) => product * chanceOf(chances, f), lossOf(d.losses, loss));
    }, 0), 0),
  }));
}

/** Who it goes to, where it is a referral. */
export function referTo(holds: (when: ReferralId) => number): string | null {
  return REFERRALS.find((r) => holds(r.when) >= r.from)?.to ?? null;
}

/** The least loss. `to`: who it goes to; where there is nobody, it is no referral. */
export function advise(weighed: readonly Weighed[], to: string | null): Assessment["advice"] {
  const open = weighed.filter(({ action }) => action !== "refer" || to !== null);
  const best = open[0] as Weighed;
  return {
    action: best.action, why: ACTIONS[best.action].why, referTo: best.action === "refer" ? to : null,
    losses: open.map(({ action, loss }) => ({ action, loss })),
  };
}
