import "server-only";
import type { Tx } from "../store/database";
import { database } from "../store/database";
import type { PrintedDocument } from "../reply/documents/blocks";
import { drawDocument, fileParts, photosIn } from "./draw-document";
import { contentOf } from "./stored-document";
import { toJson } from "./to-json";

/** A document of a rug that shows a photo, drawn anew with another in its place. */
export interface Redrawn { id: string; /** SHA-256 of the file as it was. */ was: string; content: PrintedDocument; pdf: Buffer }

const PARTS = { id: true, content: true, sha256: true, createdAt: true } as const;
const inPlace = (content: PrintedDocument, from: string, to: string): PrintedDocument =>
  ({ ...content, blocks: content.blocks.map((b) => (b.kind === "photo" && b.photoId === from ? { ...b, photoId: to } : b)) });

async function showing(db: Pick<Tx, "document">, { rugId, photoId }: { rugId: string; photoId: string }) {
  const all = await db.document.findMany({ where: { rugId }, select: PARTS });
  return all.map((d) => ({ ...d, content: contentOf(d.content) })).filter((d) => photosIn(d.content).includes(photoId));
}

/** Draws every document that shows the photo, with the blurred one in its place. Writes nothing. */
export async function redrawn({ rugId, photoId, blurredId }: { rugId: string; photoId: string; blurredId: string }): Promise<Redrawn[]> {
  const done: Redrawn[] = [];
  for (const { id, sha256, content: before, createdAt } of await showing(database(), { rugId, photoId })) {
    const content = inPlace(before, photoId, blurredId);
    done.push({ id, was: sha256, content, pdf: await drawDocument(content, createdAt) });
  }
  return done;
}

/** Puts them in place of the old ones, wherever they lie: with the draft, in a letter that waits, on the client's page. False where a document was made meanwhile that shows the photo as it was. */
export async function replaceDocuments(tx: Tx, documents: readonly Redrawn[], { rugId, photoId, why, now }: { rugId: string; photoId: string; why: string; now: Date }): Promise<boolean> {
  for (const { id, was, content, pdf } of documents) {
    const changed = await tx.document.updateMany({ where: { id, sha256: was }, data: { content: toJson(content), ...fileParts(pdf), alteredAt: now, alteredWhy: why } });
    if (changed.count !== 1) return false;
  }
  return (await showing(tx, { rugId, photoId })).length === 0;
}
