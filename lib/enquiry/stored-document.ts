import * as z from "zod/mini";
import type { PrintedDocument } from "../reply/documents/blocks";
import { LOCALES } from "../words/locales";

const text = z.string();
const lines = z.array(text);
const point = z.object({ x: z.number(), y: z.number() });
const rectangle = z.object({ left: z.number(), top: z.number(), right: z.number(), bottom: z.number() });
const block = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("heading"), level: z.union([z.literal(2), z.literal(3)]), text }),
  z.object({ kind: z.literal("title"), text }),
  z.object({ kind: z.literal("part"), text }),
  z.object({ kind: z.literal("paragraph"), text }),
  z.object({ kind: z.literal("small"), text }),
  z.object({ kind: z.literal("list"), items: lines }),
  z.object({ kind: z.literal("table"), caption: text, head: lines, rows: z.array(lines) }),
  z.object({
    kind: z.literal("photo"), photoId: text, alternative: text, caption: text, shape: z.optional(z.object({ width: z.number(), height: z.number() })), quarters: z.optional(z.number()),
    marks: z.optional(z.array(z.object({ n: z.number(), outline: z.array(point) }))),
  }),
  z.object({
    kind: z.literal("plan"), widthCm: z.number(), lengthCm: z.number(), keep: z.array(rectangle),
    damaged: z.array(z.array(point)), alternative: text,
    sizes: z.optional(z.object({ across: text, along: text, kept: lines })),
    photoTop: z.optional(z.object({ edge: z.enum(["top", "right", "bottom", "left"]), words: text })),
  }),
  z.object({ kind: z.literal("signature"), lines }),
]);
const schema = z.object({ title: text, language: z.enum(LOCALES), head: z.nullable(z.object({ name: text, lines })), reference: z.optional(text), blocks: z.array(block), boxed: z.optional(lines) });

/** The blocks of a stored document. */
export const contentOf = (stored: unknown): PrintedDocument => schema.parse(stored);

const filled = z.record(z.string(), z.string());
/** What was filled in by hand for a stored document; null where it is not kept in fields of text. */
export const filledOf = (stored: unknown): Record<string, string> | null => filled.safeParse(stored).data ?? null;

/** The same text for the same value, whatever order a database gives its keys back in. */
const inOrder = (value: object): string =>
  JSON.stringify(value, (_, v: unknown) => (v !== null && typeof v === "object" && !Array.isArray(v) ? Object.fromEntries(Object.entries(v).sort(([a], [b]) => (a < b ? -1 : 1))) : v));

/** Whether a stored document holds these very blocks. Which of their characters no typeface has is no part of what they say. */
export const isSameText = (stored: unknown, content: PrintedDocument): boolean => inOrder({ ...contentOf(stored), boxed: [] }) === inOrder({ ...content, boxed: [] });
