import * as z from "zod/mini";
import { FACT_VALUES, isNumberFact, isWordFact, LARGEST } from "../reply/condition-words";
import { NUMBER_FACTS, type Condition, type NumberFact } from "../reply/condition";
import type { Wording } from "../reply/library";
import { PLACES } from "../reply/paragraphs";
import type { PlaceId } from "../reply/paragraphs/row";
import { DAMAGE_IDS, type MechanismId } from "../trade/damage";

/** A paragraph of the workshop's own, as a form sends it and as it is kept: nothing but words of the fixed vocabulary passes. */

const strings = z.record(z.string(), z.array(z.string()).check(z.maxLength(40)));
const numbers = z.record(z.string(), z.number());
const known = (rule: Record<string, string[]> | undefined) =>
  Object.entries(rule ?? {}).every(([fact, values]) => isWordFact(fact) && values.every((v) => FACT_VALUES[fact].some(({ id }) => id === v)));
/** The first number of a rule whose bound is none or out of its range; null where all are within. */
const outside = (rule: Record<string, number> | undefined): NumberFact | null =>
  Object.entries(rule ?? {}).flatMap(([fact, bound]) => (isNumberFact(fact) && !(bound >= 0 && bound <= LARGEST[fact]) ? [fact] : []))[0] ?? null;
const areNumbers = (rule: Record<string, number> | undefined) => Object.keys(rule ?? {}).every(isNumberFact);

export const BROKEN = "This condition cannot be read. Please set it again.";
const shape = z.strictObject({ is: z.optional(strings), not: z.optional(strings), atLeast: z.optional(numbers), below: z.optional(numbers) }, BROKEN)
  .check(z.refine((c) => known(c.is) && known(c.not) && areNumbers(c.atLeast) && areNumbers(c.below), BROKEN))
  .check((ctx) => {
    const fact = outside(ctx.value.atLeast) ?? outside(ctx.value.below);
    if (fact) ctx.issues.push({ code: "custom", message: `“${NUMBER_FACTS[fact]}”: write a number from 0 to 100 per cent.`, input: ctx.value });
  });
/** When a paragraph is used. */
export const conditionSchema = shape as unknown as z.ZodMiniType<Condition>;

const PLACE_IDS = PLACES.map((p) => p.id) as [PlaceId, ...PlaceId[]];
const MECHANISM_IDS = ["soil-only", ...DAMAGE_IDS] as [MechanismId, ...MechanismId[]];
export const placeSchema = z.enum(PLACE_IDS, "Choose where it stands.");
export const aboutSchema = z.nullable(z.enum(MECHANISM_IDS, "Choose one of the list."));

const wording = z.strictObject({
  place: placeSchema, text: z.string(), tones: z.strictObject({ warm: z.optional(z.string()), brief: z.optional(z.string()) }),
  when: conditionSchema, about: aboutSchema, order: z.number(), off: z.boolean(),
});
export const wordingSchema = wording as unknown as z.ZodMiniType<Wording>;
