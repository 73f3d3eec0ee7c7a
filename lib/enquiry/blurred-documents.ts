import "server-only";
import { database, type Measurement, type Tx } from "../store/database";
import type { PrintedDocument } from "../reply/documents/blocks";
import { drawDocument, fileParts, photosIn } from "./draw-document";
import { contentOf } from "./stored-document";
import { measuredIn } from "./measurement-result";
import { toJson } from "./to-json";

/** A document of a rug that shows a photo, drawn anew with another in its place. */
export interface Redrawn { id: string; /** SHA-256 of the file as it was. */ was: string; content: PrintedDocument; pdf: Buffer }

const PARTS = { id: true, content: true, sha256: true, createdAt: true } as const;
/** With other photos in the place of some; without those that nothing takes the place of. `instead`: by the photo's id. */
const inPlace = (content: PrintedDocument, instead: ReadonlyMap<string, string | null>): PrintedDocument => ({
  ...content,
  blocks: content.blocks.flatMap((b) => {
    const to = b.kind === "photo" ? instead.get(b.photoId) : undefined;
    return to === null ? [] : [b.kind === "photo" && to !== undefined ? { ...b, photoId: to } : b];
  }),
});

async function showing(db: Pick<Tx, "document">, { rugId, photoIds }: { rugId: string; photoIds: readonly string[] }) {
  const all = await db.document.findMany({ where: { rugId }, select: PARTS });
  return all.map((d) => ({ ...d, content: contentOf(d.content) })).filter((d) => photosIn(d.content).some((id) => photoIds.includes(id)));
}

/** Draws every document that shows one of the photos, with the one that takes its place, or without it (null). Writes nothing. */
export async function redrawn({ rugId, instead }: { rugId: string; instead: ReadonlyMap<string, string | null> }): Promise<Redrawn[]> {
  const done: Redrawn[] = [];
  for (const { id, sha256, content: before, createdAt } of await showing(database(), { rugId, photoIds: [...instead.keys()] })) {
    const content = inPlace(before, instead);
    done.push({ id, was: sha256, content, pdf: await drawDocument(content, createdAt) });
  }
  return done;
}

/** Puts them in place of the old ones, wherever they lie: with the draft, in a letter that waits, on the client's page. False where a document was made meanwhile that shows one of the photos as it was. */
export async function replaceDocuments(tx: Tx, documents: readonly Redrawn[], { rugId, photoIds, why, now }: { rugId: string; photoIds: readonly string[]; why: string; now: Date }): Promise<boolean> {
  for (const { id, was, content, pdf } of documents) {
    const changed = await tx.document.updateMany({ where: { id, sha256: was }, data: { content: toJson(content), ...fileParts(pdf), alteredAt: now, alteredWhy: why } });
    if (changed.count !== 1) return false;
  }
  return (await showing(tx, { rugId, photoIds })).length === 0;
}

/** Documents of a cut-down whose plan no longer counts say so, and why; those made before it was drawn rest on another. */
export async function markPlans(tx: Tx, gone: readonly Measurement[], { rugId, why, now }: { rugId: string; why: string; now: Date }): Promise<void> {
  for (const row of gone) {
    const measured = measuredIn(row);
    if (measured?.kind !== "plan" || !measured.result.chosen) continue;
    await tx.document.updateMany({ where: { rugId, kind: "cut-down-plan", createdAt: { gte: row.at }, alteredAt: null }, data: { alteredAt: now, alteredWhy: why } });
  }
}
