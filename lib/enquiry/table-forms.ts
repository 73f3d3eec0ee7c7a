import * as z from "zod/mini";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { LOSSES, type LossId } from "../trade/losses";
import { LARGEST_PRIOR, LEAST_OTHER, SMALLEST_PRIOR } from "../trade/priors";
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

/** Reads the fields of a table; what is wrong with one is said beside it. */
function read<Id extends string>(ids: readonly Id[], values: Fields, ctx: Issues, { bounds, wrong }: { bounds: string; wrong: (value: number, id: Id) => string | null }): Partial<Record<Id, number>> {
  const own: Partial<Record<Id, number>> = {};
  for (const id of ids) {
    const value = typed(values[id]);
    if (value === undefined) continue;
    const message = value < 0 ? "Not below zero." : Number.isNaN(value) ? `Write a number ${bounds}.` : wrong(value, id);
    if (message) ctx.issues.push({ code: "custom", message, path: [id], input: value });
    own[id] = value;
  }
  return own;
}

export const LOSS_IDS = Object.keys(LOSSES) as LossId[];
/** Broken promises and harm always cost something. */
const NEVER_FREE: readonly LossId[] = ["promised-and-failed", "made-worse", "home-advice-harms"];
const lossForm = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): WorkshopSettings["losses"] => {
  const most = SETTING_LIMITS.maxLoss.toLocaleString("en");
  const wrong = (v: number, id: LossId) => (v > SETTING_LIMITS.maxLoss ? `At most ${most}.` : v === 0 && NEVER_FREE.includes(id) ? "This cannot cost nothing: advice would stop minding it. Leave the field empty for the figure of the table." : null);
  const own = read(LOSS_IDS, values, ctx as Issues, { bounds: `from 0 to ${most}`, wrong });
  return Object.keys(own).length > 0 ? own : null;
}));
/** What a wrong answer costs in this workshop; null: the table's throughout. */
export const lossesForm = lossForm as unknown as z.ZodMiniType<WorkshopSettings["losses"], FormValues>;

/** Per cents typed to one decimal may be off together by this much; they are scaled to the whole. */
const SUM_TOLERANCE_PERCENT = 0.05;
const SMALLEST = SMALLEST_PRIOR * 100, LARGEST = LARGEST_PRIOR * 100, OTHER = LEAST_OTHER * 100;
const wrongShare = (percent: number, fibre: FibreId): string | null => {
  if (percent > LARGEST) return `At most ${LARGEST} per cent: before any evidence nothing is surer.`;
  const least = fibre === "other" ? OTHER : SMALLEST;
  return percent < least ? `At least ${least} per cent: nothing is ruled out before any evidence.` : null;
};

/** The sum of the per cents that are numbers, as it stands in the fields. */
export const percentSum = (values: Fields): number => FIBRE_IDS.reduce((sum, f) => sum + Math.max(0, typed(values[f]) || 0), 0);
export const isHundred = (percent: number): boolean => Math.abs(percent - 100) <= SUM_TOLERANCE_PERCENT;
/** To at most two decimals. */
export const sayPercent = (percent: number): string => String(Math.round(percent * 100) / 100);

const fibreForm = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): WorkshopSettings["priors"] => {
  const issues = ctx as Issues;
  if (FIBRE_IDS.every((f) => typed(values[f]) === undefined)) return null;
  const own = read(FIBRE_IDS, values, issues, { bounds: `from ${SMALLEST} to ${LARGEST}`, wrong: wrongShare });
  const say = (message: string, field: string) => issues.issues.push({ code: "custom", message, path: [field], input: values });
  for (const f of FIBRE_IDS) if (own[f] === undefined) say("Write a share for every fibre, or leave all empty.", f);
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
