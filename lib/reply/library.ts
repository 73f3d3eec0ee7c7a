import type { Tone } from "../trade/tones";
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
export interface OwnVersion { readonly id: string; readonly version: number; readonly wording: Wording | null }

/** A paragraph as letters use it: shipped, or as the workshop has it. Versions of the two are counted apart. */
export interface LibraryRow extends ParagraphRow { readonly order: number; readonly off: boolean; readonly from: "shipped" | "workshop" }

/** Room between two shipped rows for the workshop's own. */
const STEP = 100;
const shippedRow = (row: ParagraphRow): LibraryRow => {
  const inPlace = PARAGRAPHS.filter((p) => p.place === row.place);
  return { ...row, order: (inPlace.indexOf(row) + 1) * STEP, off: false, from: "shipped" };
};
/** The shipped paragraphs, place by place. */
export const SHIPPED: readonly LibraryRow[] = PARAGRAPHS.map(shippedRow);
const byId = new Map(SHIPPED.map((row) => [row.id, row]));
export const shippedParagraph = (id: string): LibraryRow | null => byId.get(id) ?? null;

const OWN = { how: "elicited", source: "The workshop's own words" } as const;

function ownRow({ id, version }: OwnVersion, wording: Wording): LibraryRow {
  const { about, ...rest } = wording;
  return { ...OWN, ...rest, ...(about ? { about } : {}), id, version, from: "workshop" };
}

/** The whole library of a workshop in the order in which it is tried: its own versions in place of the shipped ones, and those that are its own alone. */
export function libraryOf(own: readonly OwnVersion[]): LibraryRow[] {
  const written = new Map(own.flatMap((o) => (o.wording ? [[o.id, ownRow(o, o.wording)] as const] : [])));
  const rows = [...SHIPPED.map((row) => written.get(row.id) ?? row), ...[...written.values()].filter((row) => !byId.has(row.id))];
  const place = (row: LibraryRow) => PLACES.findIndex((p) => p.id === row.place);
  return rows.sort((a, b) => place(a) - place(b) || a.order - b.order);
}

/** A paragraph in a tone; in its own words where it has none of that tone. */
export const textIn = (row: ParagraphRow, tone: Tone): string => (tone === "plain" ? row.text : (row.tones?.[tone] ?? row.text));
