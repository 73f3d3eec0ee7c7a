import type { Tone } from "../trade/tones";
import type { Language } from "../words/locales";
import { PARAGRAPHS, PLACES } from "./paragraphs";
import type { ParagraphRow, PlaceId } from "./paragraphs/row";
import type { Condition } from "./condition";

/** What a workshop can say differently of a paragraph, or say in one of its own. */
export interface Wording {
  readonly place: PlaceId;
  readonly text: string;
  readonly tones: NonNullable<ParagraphRow["tones"]>;
  readonly when: Condition;
  readonly about: ParagraphRow["about"] | null;
  /** Within its place the lower is tried first. */
  readonly order: number;
  /** Kept, but used in no letter. */
  readonly off: boolean;
}
/** The newest version of a paragraph that the workshop wrote; without a wording it went back to the shipped text. */
export interface OwnVersion { readonly language: Language; readonly id: string; readonly version: number; readonly wording: Wording | null }

/** A paragraph as letters use it: shipped, or as the workshop has it. Versions of the two are counted apart. */
export interface LibraryRow extends ParagraphRow { readonly language: Language; readonly order: number; readonly off: boolean; readonly from: "shipped" | "workshop" }

const ENGLISH = "en";
/** Room between two shipped rows for the workshop's own. */
const STEP = 100;
function shippedRows(language: Language, rows: readonly ParagraphRow[]): LibraryRow[] {
  return rows.map((row) => ({ ...row, language, order: (rows.filter((p) => p.place === row.place).indexOf(row) + 1) * STEP, off: false, from: "shipped" }));
}
/** One whole set a language. A set is added here when somebody who speaks the language has reviewed all of it; letters are written in no other. */
const SHIPPED_IN: Readonly<Record<Language, readonly LibraryRow[]>> = { en: shippedRows("en", PARAGRAPHS) };
/** The shipped paragraphs in English, place by place. */
export const SHIPPED = SHIPPED_IN.en;
const byId = new Map(SHIPPED.map((row) => [row.id, row]));
export const shippedParagraph = (id: string): LibraryRow | null => byId.get(id) ?? null;

const OWN = { how: "elicited", source: "The workshop's own words" } as const;

/** What was told and is never left unsaid stays so in a workshop's own words. */
function ownRow({ language, id, version }: OwnVersion, wording: Wording): LibraryRow {
  const { about, ...rest } = wording;
  const told = SHIPPED_IN[language].find((row) => row.id === id)?.told;
  return { ...OWN, ...rest, ...(about ? { about } : {}), ...(told ? { told } : {}), language, id, version, from: "workshop" };
}

/** The language and the id that a paragraph is kept under: "greeting", or "cy:greeting" where it is not English; null where there is no set of that language. */
export function readParagraphKey(key: string): { language: Language; id: string } | null {
  const [, before, id = ""] = /^([a-z]{2}):(.+)$/.exec(key) ?? [null, ENGLISH, key];
  return before !== undefined && Object.hasOwn(SHIPPED_IN, before) ? { language: before as Language, id } : null;
}

/** The whole library of a workshop in one language, in the order in which it is tried: its own versions in place of the shipped ones, and those that are its own alone. */
export function libraryOf(own: readonly OwnVersion[], language: Language = ENGLISH): LibraryRow[] {
  const shipped = SHIPPED_IN[language];
  const isShipped = new Set(shipped.map((row) => row.id));
  const written = new Map(own.filter((o) => o.language === language).flatMap((o) => (o.wording ? [[o.id, ownRow(o, o.wording)] as const] : [])));
  const rows = [...shipped.map((row) => written.get(row.id) ?? row), ...[...written.values()].filter((row) => !isShipped.has(row.id))];
  const place = (row: LibraryRow) => PLACES.findIndex((p) => p.id === row.place);
  return rows.sort((a, b) => place(a) - place(b) || a.order - b.order);
}

/** A paragraph in a tone; in its own words where it has none of that tone. */
export const textIn = (row: ParagraphRow, tone: Tone): string => (tone === "plain" ? row.text : (row.tones?.[tone] ?? row.text));
