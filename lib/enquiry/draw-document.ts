import "server-only";
import { createHash } from "node:crypto";
import { forPrint } from "../photo/server/for-print";
import { drawPdf } from "../print/draw-pdf";
import type { PrintedDocument } from "../reply/documents/blocks";
import { photoPath } from "../store/photo-files";

/** Ids of the photos in a document, in their order. */
export const photosIn = ({ blocks }: PrintedDocument): string[] => blocks.flatMap((b) => (b.kind === "photo" ? [b.photoId] : []));

/** A document as a file, with its photos as they lie here now. The same blocks, photos and time give the same bytes. */
export async function drawDocument(content: PrintedDocument, createdAt: Date): Promise<Buffer> {
  const photos = new Map<string, Buffer | null>();
  for (const b of content.blocks) if (b.kind === "photo") photos.set(b.photoId, await forPrint(photoPath(b.photoId, "1600"), b.quarters));
  return drawPdf(content, { photo: (id) => photos.get(id) ?? null, createdAt });
}

export const sha256Of = (bytes: Buffer): string => createHash("sha256").update(bytes).digest("hex");
/** How a file stands in a document's row. */
export const fileParts = (pdf: Buffer) => ({ pdf: pdf.toString("base64"), sha256: sha256Of(pdf), bytes: pdf.length });
