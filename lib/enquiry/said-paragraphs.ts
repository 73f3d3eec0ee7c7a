import "server-only";
import * as z from "zod/mini";
import type { ComposedDraft } from "../reply/draft";
import type { SaidParagraph } from "../reply/pieces";
import type { PlaceId } from "../reply/paragraphs/row";
import { toJson } from "./to-json";

const saidSchema = z.array(z.object({
  language: z._default(z.literal("en"), "en"), id: z.string(), version: z.number(), from: z._default(z.enum(["shipped", "workshop"]), "shipped"), text: z._default(z.string(), ""),
  place: z._default(z.string(), ""), rug: z._default(z.nullable(z.number()), null), said: z._default(z.nullable(z.string()), null), here: z.optional(z.nullable(z.string())), stands: z._default(z.boolean(), true), unsaid: z.optional(z.literal(true)), earlier: z.optional(z.literal(true)),
}));

/** What a draft of the program was put together from, with what the assessments called for and it left out; empty where nothing was kept. */
export const saidOf = (stored: unknown): SaidParagraph[] => (stored === null ? [] : saidSchema.parse(stored).map(({ here, unsaid, earlier, ...p }) => ({ ...p, place: p.place as PlaceId, ...(here === undefined ? {} : { here }), ...(unsaid ? { unsaid } : {}), ...(earlier ? { earlier } : {}) })));

/** The same as it is kept with the draft. */
export const storedSaid = ({ paragraphs, leftOut }: ComposedDraft) => [...paragraphs, ...leftOut].map(toJson);
