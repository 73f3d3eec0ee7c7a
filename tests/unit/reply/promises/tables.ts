import { SHIPPED } from "../../../../lib/reply/library";
import { sentencesOf } from "../../../../lib/reply/promises/sentences";
import { fillWith, withExamples, type SlotName } from "../../../../lib/reply/slot-words";
import { FIBRE_IDS, fibreName } from "../../../../lib/trade/fibres";
import { FIRST_AID, firstAidSentences } from "../../../../lib/trade/first-aid";
import { PHOTO_KINDS, QUESTIONS } from "../../../../lib/trade/questions";
import { DOCUMENTS } from "../../../../lib/words/en/documents";
import { AGAINST_CLASSES } from "./against-classes";
import { CLASSES } from "./classes";
import { rowOf, type Row } from "./fit";
import { FORTY_VOICES, HINTS, MANNERS } from "./forty-voices";
import { HONEST } from "./honest";
import { OTHER_HONEST, OTHER_OVER_PROMISING } from "./other-voices";
import { OVER_PROMISING } from "./over-promising";
import { OWN_VOICES } from "./own-voices";
import { LATER_VOICES } from "./own-voices-later";
import { STRANGERS } from "./strangers";

export interface Table { readonly over: readonly string[]; readonly honest: readonly string[] }

const SHIPPED_TEXTS = [...SHIPPED.flatMap((row) => [row.text, ...Object.values(row.tones ?? {})]).map(withExamples), ...firstAidSentences(), ...firstAidSentences(undefined, true, true), ...FIRST_AID.inShort.map((line) => line.text), ...Object.values(QUESTIONS).map(({ ask }) => ask), ...Object.values(PHOTO_KINDS).flatMap(({ ask, hint }) => [ask, hint]), ...Object.values(DOCUMENTS).filter((text) => !text.includes("{"))];
const SHIPPED_SENTENCES = [...new Set(SHIPPED_TEXTS.flatMap((text) => sentencesOf(text)))];
/** The same sentences of every fibre, as surely as the program ever speaks. */
const SHIPPED_OF_FIBRES = [...new Set(SHIPPED.filter(({ text }) => text.includes("{fibre}")).flatMap(({ text }) => FIBRE_IDS.flatMap((f) =>
  sentencesOf(withExamples(fillWith(text, (slot) => ({ fibre: fibreName(f), likely: "very likely", evidence: "the label as you typed it", rug: "this rug" } as Partial<Record<SlotName, string>>)[slot] ?? null))))))];
/** What the program itself writes counts this often, because it has to pass. */
const SHIPPED_COUNTS = 4;

/** Every table of sentences as people write them: what a table held out of a fit tells is told by these. */
export const WRITTEN: readonly Table[] = [
  { over: OVER_PROMISING.map(([, say]) => say), honest: HONEST },
  ...[...STRANGERS, ...OWN_VOICES, ...LATER_VOICES, ...FORTY_VOICES, ...HINTS].map(({ overPromising, honest }) => ({ over: overPromising, honest })),
  { over: OTHER_OVER_PROMISING, honest: OTHER_HONEST },
];
/** What a fit is made from beside them: hard pairs, which are no measure of how people write, and what the shipped paragraphs say, which has to pass as honest. */
export const BESIDE: readonly Table[] = [...CLASSES, ...MANNERS.map(({ overPromising, honest }) => ({ over: overPromising, honest })), ...AGAINST_CLASSES.map(({ honest }) => ({ over: [], honest })), { over: [], honest: Array.from({ length: SHIPPED_COUNTS }, () => SHIPPED_SENTENCES).flat().concat(SHIPPED_OF_FIBRES) }];

/** A table as rows of a fit. */
export const rowsOf = ({ over, honest }: Table): Row[] => [...over.map((s) => rowOf(s, true)), ...honest.map((s) => rowOf(s, false))];
