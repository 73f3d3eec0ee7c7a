import "server-only";
import * as z from "zod/mini";
import { DOCUMENT_KINDS } from "../reply/documents/offered";
import type { Prisma } from "../store/database";
import type { DocumentView } from "./views";

/** What is read of a document for people; its file is left where it is. */
export const DOCUMENT_PARTS = {
  id: true, rugId: true, kind: true, title: true, version: true, bytes: true, createdAt: true, alteredAt: true, alteredWhy: true, madeBy: { select: { name: true } },
  enclosures: { select: { draftId: true, letter: { select: { state: true } } } },
} as const satisfies Prisma.DocumentSelect;
type Row = Prisma.DocumentGetPayload<{ select: typeof DOCUMENT_PARTS }>;

export const documentKindSchema = z.enum(DOCUMENT_KINDS);

/** A document as a page shows it. `draftId`: the reply that is being written; `overtaken`: those that would say otherwise now. */
export function documentView(row: Row, draftId: string | null, overtaken: readonly { id: string; judgedAt: Date; canMakeAnew: boolean }[]): DocumentView {
  const { id, rugId, title, version } = row;
  const outdated = overtaken.find((d) => d.id === id);
  const letters = row.enclosures.flatMap((e) => (e.letter && e.letter.state !== "taken_back" ? [e.letter] : []));
  return {
    id, rugId, title, version, kind: documentKindSchema.parse(row.kind), by: row.madeBy?.name ?? "Somebody who has left", at: row.createdAt.toISOString(), kilobytes: Math.ceil(row.bytes / 1024),
    isEnclosed: draftId !== null && row.enclosures.some((e) => e.draftId === draftId),
    altered: row.alteredAt ? { at: row.alteredAt.toISOString(), why: row.alteredWhy ?? "" } : null,
    judgedSince: outdated?.judgedAt.toISOString() ?? null,
    canMakeAnew: outdated?.canMakeAnew ?? true,
    letters: letters.length,
    heldLetters: letters.filter((l) => l.state === "held").length,
  };
}
