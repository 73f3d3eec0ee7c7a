import "server-only";
import { createHash } from "node:crypto";
import { database, type Document } from "../store/database";
import { headerText } from "./address";
import type { Attachment } from "./message";

/** A file's name is cut here; longer ones are refused by some mail programs. *elicited* */
const NAME_CHARS = 80;

/** One line without what no file system takes. */
const fileSystemName = (name: string): string => headerText(name.replace(/[\\/:*?"<>|]+/g, " "));

/** Whole characters only: half of one is no text, and no header can hold it. */
const cutTo = (name: string, most: number): string => [...name].slice(0, most).join("").trim();

/** What a document is called as a file: its title, cut to what every program takes. */
export const fileNameOf = (title: string): string => `${cutTo(fileSystemName(title), NAME_CHARS) || "Document"}.pdf`;

/** A stranger's name of a file, as a name that is safe to save under: it hides no file and names no folder; a long one is cut before its ending. */
export function safeFileName(name: string): string {
  const plain = fileSystemName(name).replace(/^[.\s]+/u, "").replace(/[.\s]+$/u, "");
  const ending = /\.[A-Za-z0-9]{1,8}$/u.exec(plain)?.[0] ?? "";
  return plain === "" ? "enclosure" : `${cutTo(plain.slice(0, plain.length - ending.length), NAME_CHARS - ending.length)}${ending}`;
}

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
