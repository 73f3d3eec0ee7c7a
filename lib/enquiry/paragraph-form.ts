import * as z from "zod/mini";
import type { LibraryRow, Wording } from "../reply/library";
import type { FormValues } from "./step-schemas";
import { aboutSchema, BROKEN, conditionSchema, placeSchema } from "./wording-schema";

/** Where a paragraph is tried within its place: before all others, or after one of them. */
export const FIRST = "first";

/** A condition as it stands in a field: JSON, which the form writes. */
const typedCondition = z.pipe(z.pipe(z.string(), z.transform((text, ctx) => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    ctx.issues.push({ code: "custom", message: BROKEN, input: text });
    return z.NEVER;
  }
})), conditionSchema);
const line = z.pipe(z._default(z.string(), ""), z.transform((text) => text.replace(/\r\n?/g, "\n").trim()));

const form = z.object({
  place: placeSchema, text: line, warm: line, brief: line, when: typedCondition,
  about: z.pipe(z.pipe(z._default(z.string(), ""), z.transform((id) => id || null)), aboutSchema),
  after: z._default(z.string(), FIRST), off: z.pipe(z.optional(z.string()), z.transform((tick) => tick === "yes")), reason: line,
});
/** What a person wrote: `after` is the id of the paragraph it is tried after, or "first". */
export interface ParagraphInput extends Omit<Wording, "order" | "tones"> { warm: string; brief: string; after: string; reason: string }
export const paragraphForm = form as unknown as z.ZodMiniType<ParagraphInput, FormValues>;

/** Half way between the one it comes after and the next: rows are never renumbered. */
export function orderAfter(after: string, others: readonly Pick<LibraryRow, "id" | "order">[]): number {
  const at = others.findIndex((row) => row.id === after);
  const [before, next] = [others[at]?.order ?? 0, others[at + 1]?.order];
  return next === undefined ? before + 100 : (before + next) / 2;
}

/** The wording that was written, put into the library it belongs to. */
export function wordingOf({ warm, brief, after, reason: _, ...rest }: ParagraphInput, id: string, library: readonly LibraryRow[]): Wording {
  const others = library.filter((row) => row.place === rest.place && row.id !== id);
  return { ...rest, tones: { ...(warm && { warm }), ...(brief && { brief }) }, order: orderAfter(after, others) };
}

/** What stands in the fields when the page opens. */
export function paragraphValues(row: LibraryRow, library: readonly LibraryRow[]): FormValues {
  const place = library.filter((other) => other.place === row.place);
  const before = place[place.findIndex((other) => other.id === row.id) - 1];
  return {
    place: row.place, text: row.text, warm: row.tones?.warm ?? "", brief: row.tones?.brief ?? "", when: JSON.stringify(row.when), about: row.about ?? "",
    after: before?.id ?? FIRST, ...(row.off ? { off: "yes" } : {}), reason: "",
  };
}
