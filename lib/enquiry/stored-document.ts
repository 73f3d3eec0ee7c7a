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
