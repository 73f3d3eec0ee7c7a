import { SHIPPED } from "../../../../lib/reply/library";
import { sentencesOf } from "../../../../lib/reply/promises/sentences";
import { withExamples } from "../../../../lib/reply/slot-words";
import { HONEST } from "./honest";
import { OTHER_HONEST, OTHER_OVER_PROMISING } from "./other-voices";
import { OVER_PROMISING } from "./over-promising";
import { OWN_VOICES } from "./own-voices";
import { STRANGERS } from "./strangers";

export interface Table { readonly over: readonly string[]; readonly honest: readonly string[] }

const SHIPPED_SENTENCES = [...new Set(SHIPPED.flatMap((row) => [row.text, ...Object.values(row.tones ?? {})]).flatMap((text) => sentencesOf(withExamples(text))))];
/** What the program itself writes counts this often, because it has to pass. */
const SHIPPED_COUNTS = 2;

/** Every table of sentences as people write them, but for those of own-voices-later.ts (classes.ts is built of hard pairs, and is no measure of how people write), and what the shipped paragraphs say, which has to pass as honest. */
export const TABLES: readonly Table[] = [
  { over: OVER_PROMISING.map(([, say]) => say), honest: HONEST },
  ...[...STRANGERS, ...OWN_VOICES].map(({ overPromising, honest }) => ({ over: overPromising, honest })),
  { over: OTHER_OVER_PROMISING, honest: OTHER_HONEST },
  { over: [], honest: Array.from({ length: SHIPPED_COUNTS }, () => SHIPPED_SENTENCES).flat() },
];
