import * as z from "zod/mini";
import { FIBRE_IDS, fibreName, type FibreId } from "../trade/fibres";
import { LOSSES, type LossId } from "../trade/losses";
import { LARGEST_PRIOR, LEAST_OTHER, SMALLEST_PRIOR } from "../trade/priors";
import { capital } from "../words/capital";
import { SETTING_LIMITS, type WorkshopSettings } from "../workshop/settings-schema";
import { parseDecimal, typedNumber } from "./amounts";
import type { FormValues } from "./step-schemas";

/** The owner's own figures in place of a table's: an empty field keeps the table's. */
type Issues = { issues: { push: (issue: { code: "custom"; message: string; path: string[]; input: unknown }) => void } };
type Fields = Readonly<Record<string, unknown>>;

/** A number of a field; undefined where it is empty, −1 for any below zero, NaN where it is none. */
const typed = (value: unknown): number | undefined => {
  const text = typeof value === "string" ? value.trim().replace(/\s*%$/, "") : "";
  return text === "" ? undefined : typedNumber(text, parseDecimal);
};

/** What each row is called above its field and where something is wrong with it. */
interface Rows<Id extends string> { readonly ids: readonly Id[]; readonly nameOf: (id: Id) => string }

/** Reads the fields of a table; what is wrong with one is said beside it, by its name, since it stands at the top of the page too. */
function read<Id extends string>({ ids, nameOf }: Rows<Id>, values: Fields, ctx: Issues, { bounds, wrong }: { bounds: string; wrong: (value: number, id: Id) => string | null }): Partial<Record<Id, number>> {
  const own: Partial<Record<Id, number>> = {};
  for (const id of ids) {
    const value = typed(values[id]);
    if (value === undefined) continue;
    const message = value < 0 ? "not below zero." : Number.isNaN(value) ? `write a number ${bounds}.` : wrong(value, id);
    if (message) ctx.issues.push({ code: "custom", message: `${nameOf(id)}: ${message}`, path: [id], input: value });
    own[id] = value;
  }
  return own;
}

export const LOSS_IDS = Object.keys(LOSSES) as LossId[];
const LOSS_ROWS: Rows<LossId> = { ids: LOSS_IDS, nameOf: (id) => capital(LOSSES[id].what) };
const FIBRE_ROWS: Rows<FibreId> = { ids: FIBRE_IDS, nameOf: (id) => capital(fibreName(id)) };
export const { nameOf: lossName } = LOSS_ROWS, { nameOf: shareName } = FIBRE_ROWS;

/** Broken promises and harm always cost something. */
const NEVER_FREE: readonly LossId[] = ["promised-and-failed", "made-worse", "home-advice-harms"];
const lossForm = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): WorkshopSettings["losses"] => {
  const most = SETTING_LIMITS.maxLoss.toLocaleString("en");
  const wrong = (v: number, id: LossId) => (v > SETTING_LIMITS.maxLoss ? `at most ${most}.` : v === 0 && NEVER_FREE.includes(id) ? "this cannot cost nothing, or advice would stop minding it. Leave the field empty for the figure of the table." : null);
  const own = read(LOSS_ROWS, values, ctx as Issues, { bounds: `from 0 to ${most}`, wrong });
  return Object.keys(own).length > 0 ? own : null;
}));
/** What a wrong answer costs in this workshop; null: the table's throughout. */
export const lossesForm = lossForm as unknown as z.ZodMiniType<WorkshopSettings["losses"], FormValues>;

/** Per cents typed to one decimal may be off together by this much; they are scaled to the whole. */
const SUM_TOLERANCE_PERCENT = 0.05;
const SMALLEST = SMALLEST_PRIOR * 100, LARGEST = LARGEST_PRIOR * 100, OTHER = LEAST_OTHER * 100;
const wrongShare = (percent: number, fibre: FibreId): string | null => {
  if (percent > LARGEST) return `at most ${LARGEST} per cent. Before any evidence nothing is surer.`;
  const least = fibre === "other" ? OTHER : SMALLEST;
  return percent < least ? `at least ${least} per cent. Nothing is ruled out before any evidence.` : null;
};

/** The sum of the per cents that are numbers, as it stands in the fields. */
export const percentSum = (values: Fields): number => FIBRE_IDS.reduce((sum, f) => sum + Math.max(0, typed(values[f]) || 0), 0);
export const isHundred = (percent: number): boolean => Math.abs(percent - 100) <= SUM_TOLERANCE_PERCENT;
/** To at most two decimals. */
export const sayPercent = (percent: number): string => String(Math.round(percent * 100) / 100);

const fibreForm = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): WorkshopSettings["priors"] => {
  const issues = ctx as Issues;
  if (FIBRE_IDS.every((f) => typed(values[f]) === undefined)) return null;
  const own = read(FIBRE_ROWS, values, issues, { bounds: `from ${SMALLEST} to ${LARGEST}`, wrong: wrongShare });
  const say = (message: string, field: string) => issues.issues.push({ code: "custom", message, path: [field], input: values });
  for (const f of FIBRE_IDS) if (own[f] === undefined) say(`${shareName(f)}: write a share for every fibre, or leave all empty.`, f);
  const sum = percentSum(values);
  if (!isHundred(sum)) say(`Together they make ${sayPercent(sum)} per cent. They must make 100.`, "form");
  return Object.fromEntries(FIBRE_IDS.map((f) => [f, (own[f] ?? 0) / sum]));
}));
/** Who writes in to this workshop, as shares of each fibre that sum to 1; null: the table's. */
export const priorsForm = fibreForm as unknown as z.ZodMiniType<WorkshopSettings["priors"], FormValues>;

/** What stands in the fields of the losses when the page opens. */
export const lossValues = ({ losses }: WorkshopSettings): FormValues =>
  Object.fromEntries(LOSS_IDS.map((id) => [id, losses?.[id] === undefined ? "" : String(losses[id])]));
/** What stands in the fields of the fibres when the page opens. */
export const priorValues = ({ priors }: WorkshopSettings): FormValues =>
  Object.fromEntries(FIBRE_IDS.map((f) => [f, priors?.[f] === undefined ? "" : sayPercent(priors[f] * 100)]));
