import "server-only";
import { createHash } from "node:crypto";
import { database, type Document } from "../store/database";
import { headerText } from "./address";
import type { Attachment } from "./message";

/** A file's name is cut here; longer ones are refused by some mail programs. *elicited* */
const NAME_CHARS = 80;

/** What a document is called as a file: its title without what no file system takes. */
export const fileNameOf = (title: string): string => `${headerText(title).replace(/[\\/:*?"<>|]+/g, " ").slice(0, NAME_CHARS).trim() || "Document"}.pdf`;

/**
 * A stored document's file, the very bytes that were made.
 * @throws where they are not: a changed file goes to nobody.
 */
export function fileOf({ id, title, pdf, sha256 }: Pick<Document, "id" | "title" | "pdf" | "sha256">): Attachment {
  const bytes = Buffer.from(pdf, "base64");
  if (createHash("sha256").update(bytes).digest("hex") !== sha256) throw new Error(`The document ${id} is not as it was made.`);
  return { fileName: fileNameOf(title), bytes, type: "application/pdf" };
}

/** The files that go with a letter, in the order in which they were made. */
export async function attachmentsOf(letterId: string): Promise<Attachment[]> {
  return filesOf(await database().document.findMany({ where: { enclosures: { some: { letterId } } } }));
}

export const filesOf = (documents: readonly Document[]): Attachment[] =>
  [...documents].sort((a, b) => a.createdAt.getTime() - b.createdAt.getTime() || a.version - b.version).map(fileOf);
