import { answerInWords } from "./answer-words";
import { CONSTRUCTIONS, CONSTRUCTION_BY_BACK } from "./care";
import { COLUMNS, COLUMNS_OF, type Column } from "./columns";
import { BROWNS_FROM_BELOW, BY_MAKE, CHANGES, DAMAGE_IDS, MEASURED_CHANGE, MECHANISMS, SILENCE_COUNTS, WICKING_BY_GROUND, mechanismName, type DamageId, type MechanismRow } from "./damage";
import { fibreName, type FibreId } from "./fibres";
import { FRESH, NEVER_FRESH, STILL_DAMP, TAKES_TIME, TRIGGERS, WHO, WHO_BEARS_ON } from "./triggers";
import { chance, factTable, fieldsOf, judged, number, placesIn, text, type FactTable, type Place } from "./table";

/** A column of the trade's experience; `olefin` stands for polyester, polypropylene and acrylic. */
export const columnName = (c: Column): string => (c === "olefin" ? "other synthetics" : c === "cotton" ? "cotton and other plant fibre" : fibreName(c));
const damageName = (id: string) => mechanismName(id as DamageId);
const MAKE_WORDS = { knotted: "knotted", tufted: "tufted", machine: "by machine" } as const;
const makes = CONSTRUCTIONS.map((c) => MAKE_WORDS[c]);
const SINCE = ["hour", "day", "two-days", "week", "month", "longer", "unknown"] as const;
const since = SINCE.map((s) => (s === "unknown" ? "nobody said" : answerInWords(`since:${s}`)));
const times = (name: string) => number(name, "times");

const causes: FactTable[] = [
  factTable<MechanismRow>({
    id: "mechanisms", part: "happened", name: "Causes", about: "The chance of a cause where what was told does not point to it, where nothing was told, and how readily it marks each pile.",
    columns: [chance("not pointed to"), chance("nothing told"), ...COLUMNS.map((c) => chance(columnName(c)))], rows: placesIn(MECHANISMS, damageName),
    cells: (r) => [r.leak, r.unasked, ...COLUMNS.map((c) => r.hits[c])],
  }),
  factTable({
    id: "triggers", part: "happened", name: "What brings a cause about", about: "The chance that something that was told has brought the cause about, on a pile that takes it worst; tellings of one event count once.",
    columns: [text("told"), text("event"), chance("chance")], rows: placesIn(TRIGGERS, (_, r) => damageName(r.mechanism)), cells: (r) => [answerInWords(r.when), r.event, r.chance],
  }),
  factTable({
    id: "who", part: "happened", name: "Who did it", about: "The strength to which the harm of washing and treating is raised.",
    columns: [number("strength")], rows: placesIn(WHO, (_, r) => answerInWords(r.when)), cells: (r) => [r.strength],
  }),
  factTable<readonly string[]>({
    id: "who-bears-on", part: "happened", name: "What it matters for who did it", about: "The events and the causes that the table before bears on.",
    columns: [text("these")], rows: fieldsOf(WHO_BEARS_ON as Readonly<Record<keyof typeof WHO_BEARS_ON, readonly string[]>>, { events: "Events", mechanisms: "Causes" }),
    cells: (row, key) => [row.map((x) => (key === "events" ? x : damageName(x))).join("; ")], source: judged("the harm that water, rubbing and cleaners do"),
  }),
  factTable({
    id: "takes-time", part: "happened", name: "What takes time", about: "The share of the full chance so soon after the event.",
    columns: SINCE.map((_, i) => chance(since[i] as string)), rows: placesIn(TAKES_TIME, (_, r) => damageName(r.mechanism)), cells: (r) => SINCE.map((s) => r.by[s] ?? null),
  }),
  factTable({
    id: "by-make", part: "happened", name: "How the make bears on it", about: "Factor on the chance of a cause by how the rug is made.",
    columns: makes.map(times), rows: placesIn(BY_MAKE, (k) => (k === "wicking" ? "browning that comes up from the ground" : damageName(k))), cells: (r) => CONSTRUCTIONS.map((c) => r[c]),
  }),
  factTable({
    id: "wicking", part: "happened", name: "Browning from a ground that a label names", about: "The same factor where the ground is known.",
    columns: [times("factor")], rows: placesIn(WICKING_BY_GROUND, (i) => (["jute or hemp", "cotton or linen", "synthetic or wool"])[Number(i)] as string), cells: (r) => [r.times],
  }),
  factTable<Column>({
    id: "browns-from-below", part: "happened", name: "Piles that do not brown by themselves", about: "On these, browning comes up from the ground.",
    columns: [], rows: placesIn(BROWNS_FROM_BELOW, (_, c) => columnName(c)), cells: () => [], source: judged("after Dupont, Restaurator 17 (1996) 1–21: it is cellulose that browns"),
  }),
  factTable({
    id: "constructions", part: "happened", name: "How it is made, by its back", about: "What a back, as a layperson describes it, turns out to be.",
    columns: makes.map(chance), rows: placesIn(CONSTRUCTION_BY_BACK, (b) => (b === "unknown" ? "Nobody looked" : answerInWords(`back:${b}`))), cells: (r) => CONSTRUCTIONS.map((c) => r.share[c]),
  }),
  factTable<readonly Column[]>({
    id: "columns", part: "happened", name: "Which experience stands for which fibre", about: "A fibre without a column of its own takes the worst of these.",
    columns: [text("columns")], rows: placesIn(COLUMNS_OF, (f) => fibreName(f as FibreId)), cells: (cs) => [cs.map(columnName).join("; ")],
    source: judged("lyocell, modal and acetate behave wet much as viscose does; jute and sisal as the weaker of cotton and viscose"),
  }),
];

const seen: FactTable[] = [
  factTable({
    id: "changes", part: "happened", name: "What people see of it", about: "How often each change is named where the cause holds, and where nothing that explains it does.",
    columns: [chance("no cause of these"), ...DAMAGE_IDS.map((m) => chance(mechanismName(m)))], rows: placesIn(CHANGES, (c) => answerInWords(`changes:${c}`)),
    cells: (r) => [r.none, ...DAMAGE_IDS.map((m) => r.by[m] ?? null)],
  }),
  factTable<number>({
    id: "silence", part: "happened", name: "What was not named", about: "How much it counts that somebody who answered did not name a change.",
    columns: [number("weight")], rows: fieldsOf(SILENCE_COUNTS, { value: "A change that was not named" }) as Place<number>[], cells: (x) => [x], source: SILENCE_COUNTS as { how: "elicited"; source: string },
  }),
  factTable<number>({
    id: "measured-change", part: "happened", name: "A colour change that was measured", about: "A difference of colour in a photo counts as a change in the degree to which it is sure to be over the middle.",
    columns: [number("ΔE00")], rows: fieldsOf(MEASURED_CHANGE, { middleDeltaE: "The middle", pileNoise: "How much one pile varies by itself" }) as Place<number>[], cells: (x) => [x], source: { how: MEASURED_CHANGE.how, source: MEASURED_CHANGE.source },
  }),
  factTable<string>({
    id: "measured-shows", part: "happened", name: "What a direction of colour shows", about: "The change that a measured direction counts as.",
    columns: [text("change")], rows: placesIn(MEASURED_CHANGE.shows, (d) => d.replaceAll("-", ", ")), cells: (c) => [answerInWords(`changes:${c}`)], source: judged("yellower is browning, lighter and paler is loss of dye"),
  }),
  factTable({
    id: "fresh", part: "happened", name: "What still counts as fresh", about: "The chance that trouble of this kind is still fresh, by when it happened.",
    columns: since.map(chance), rows: placesIn(FRESH, (k) => (k === "dye" ? "a colour that ran" : k === "food" ? "food and drink" : k)), cells: (r) => SINCE.map((s) => r.by[s]),
  }),
  factTable<number>({
    id: "still-damp", part: "happened", name: "Colours that ran, still damp", about: "The same where it is wet or damp by the client’s word.",
    columns: [chance("chance")], rows: fieldsOf(STILL_DAMP, { chance: "Still damp" }) as Place<number>[], cells: (x) => [x], source: STILL_DAMP as { how: "elicited"; source: string },
  }),
  factTable<readonly string[]>({
    id: "never-fresh", part: "happened", name: "What sets at once", about: "Counts as old from the start.",
    columns: [text("liquids")], rows: fieldsOf(NEVER_FRESH as { liquids: readonly string[] }, { liquids: "Liquids" }), cells: (l) => [l.map((x) => answerInWords(`liquid:${x}`)).join("; ")], source: NEVER_FRESH as typeof NEVER_FRESH & { how: "elicited" },
  }),
];

/** Causes, what brings them about, and what is seen of them. */
export const HAPPENED_TABLES: readonly FactTable[] = [...causes, ...seen];
