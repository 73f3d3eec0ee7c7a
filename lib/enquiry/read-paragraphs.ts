import "server-only";
import { isNeeded } from "../reply/check-paragraph";
import { NUMBER_FACTS, WORD_FACTS, type NumberFact, type WordFact } from "../reply/condition";
import { conditionLines, FACT_VALUES, LARGEST } from "../reply/condition-words";
import { libraryOf, shippedParagraph, type LibraryRow } from "../reply/library";
import { PLACES } from "../reply/paragraphs";
import { SLOTS, type SlotName } from "../reply/slot-words";
import { database } from "../store/database";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { readLibrary, readOwnVersions } from "./library";
import { paragraphValues } from "./paragraph-form";
import type { ParagraphLine, ParagraphView, PlaceOfParagraphs } from "./paragraph-views";
import { peopleNames } from "./people-names";
import { wordingSchema } from "./wording-schema";

const lineOf = ({ id, text, when, from, version, off, tones }: LibraryRow): ParagraphLine =>
  ({ id, text, when: conditionLines(when), from, version, off, tones: Object.keys(tones ?? {}).length });

/** Every paragraph the workshop has, place by place in the order of a letter. */
export async function readParagraphs(caller: Caller): Promise<Result<PlaceOfParagraphs[]>> {
  const no = authorise(caller, "change-paragraphs");
  if (no) return no;
  const library = await readLibrary();
  return ok(PLACES.map(({ id, name, of }) => ({ id, name, ofEachRug: of === "rug", paragraphs: library.filter((row) => row.place === id).map(lineOf) })));
}

/** One paragraph as its form shows it, with every version of it; a new one where `id` is null. */
export async function readParagraph(caller: Caller, id: string | null): Promise<Result<ParagraphView>> {
  const no = authorise(caller, "change-paragraphs");
  if (no) return no;
  const own = await readOwnVersions();
  const library = libraryOf(own);
  const row = library.find((r) => r.id === id);
  if (id !== null && !row) return NOT_THERE;
  const shipped = id === null ? null : shippedParagraph(id);
  return ok({
    id, seen: own.find((o) => o.id === id)?.version ?? 0,
    values: row ? paragraphValues(row, library) : { place: "notes", when: "{}", after: library.findLast((r) => r.place === "notes")?.id ?? "first" },
    shippedText: shipped && row?.from === "workshop" ? shipped.text : null,
    isNeeded: shipped !== null && isNeeded(shipped),
    versions: id === null ? [] : await versionsOf(id),
    ...vocabulary(library, id),
  });
}

const BEGINS_CHARS = 60;
const begins = (text: string) => (text.length > BEGINS_CHARS ? `${text.slice(0, BEGINS_CHARS).trimEnd()}…` : text).replace(/\s+/g, " ");

/** Everything a form of a paragraph offers to choose from. */
function vocabulary(library: readonly LibraryRow[], id: string | null): Pick<ParagraphView, "places" | "facts" | "numbers" | "mechanisms" | "slots"> {
  const others = (place: string) => library.filter((r) => r.place === place && r.id !== id).map((r) => ({ id: r.id, begins: begins(r.text) }));
  return {
    places: PLACES.map((p) => ({ id: p.id, name: p.name, paragraphs: others(p.id) })),
    facts: (Object.keys(WORD_FACTS) as WordFact[]).map((fact) => ({ id: fact, says: WORD_FACTS[fact], values: FACT_VALUES[fact] })),
    numbers: (Object.keys(NUMBER_FACTS) as NumberFact[]).map((fact) => ({ id: fact, says: NUMBER_FACTS[fact], largest: LARGEST[fact] })),
    mechanisms: [...FACT_VALUES.mechanisms],
    slots: (Object.keys(SLOTS) as SlotName[]).map((name) => ({ name, says: SLOTS[name].says })),
  };
}

async function versionsOf(id: string): Promise<ParagraphView["versions"]> {
  const rows = await database().paragraphVersion.findMany({ where: { paragraphId: id }, orderBy: { version: "desc" } });
  const nameOf = await peopleNames(rows.map((r) => r.staffId));
  return rows.map(({ version, staffId, at, wording, reason }) => ({
    version, by: nameOf(staffId), at: at.toISOString(), reason, text: wording === null ? null : wordingSchema.parse(wording).text,
  }));
}
