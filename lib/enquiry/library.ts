import "server-only";
import { libraryOf, readParagraphKey, type LibraryRow, type OwnVersion } from "../reply/library";
import { database, type Db, type Tx } from "../store/database";
import { languageOf } from "../words/locales";
import { readSettings } from "../workshop/settings";
import { wordingSchema } from "./wording-schema";

const parsed = (wording: unknown): OwnVersion["wording"] => (wording === null ? null : wordingSchema.parse(wording));

/** The newest version of every paragraph the workshop wrote. Inside a transaction pass its `tx`. */
export async function readOwnVersions(db: Db | Tx = database()): Promise<OwnVersion[]> {
  const rows = await db.paragraphVersion.findMany({ orderBy: { version: "asc" }, select: { paragraphId: true, version: true, wording: true } });
  const newest = new Map(rows.map((r) => [r.paragraphId, r]));
  return [...newest.values()].flatMap((r) => {
    const key = readParagraphKey(r.paragraphId);
    return key ? [{ ...key, version: r.version, wording: parsed(r.wording) }] : [];
  });
}

/** The paragraphs that letters are written from now. */
export async function readLibrary(db: Db | Tx = database()): Promise<LibraryRow[]> {
  const [own, { locale }] = [await readOwnVersions(db), await readSettings(db)];
  return libraryOf(own, languageOf(locale));
}
