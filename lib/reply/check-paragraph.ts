import { conditionLines, neverHolds } from "./condition-words";
import { shippedParagraph, type Wording } from "./library";
import type { ParagraphRow } from "./paragraphs/row";
import { checkSentences, WORDS_AND_PHOTOS, type Overpromise } from "./promises/check";
import { readingOf, type Reading } from "./reading";
import { isSlot, SLOTS, slotsIn, withExamples } from "./slot-words";

/** The fields of a paragraph a person writes text in. */
export const TEXT_FIELDS = ["text", "warm", "brief"] as const;
export type TextField = (typeof TEXT_FIELDS)[number];
/** What is wrong with a paragraph, at the field where it is put right. */
export interface Fault { readonly field: TextField | "when" | "off" | "about"; readonly say: string }

export const MOST_PARAGRAPH_CHARS = 1_500;

/** What keeps a letter honest: a text that shipped with one of these keeps it. */
const HONEST: readonly string[] = ["evidence", "likely", "improvement", "mends", "life", "lifeLow", "lifeHigh", "worse", "beyond", "chance", "firstAidInShort", "ownAid", "emergency"];

/** Without these a letter would greet nobody, say nothing of the rug, lead nowhere, or keep a caution to itself. */
export const isNeeded = (row: Pick<ParagraphRow, "place" | "when">): boolean =>
  row.place === "first-aid" || row.place === "safety" || (["greeting", "fibre", "next-step", "signature"].includes(row.place) && conditionLines(row.when).length === 0);

export const textsOf = ({ text, tones }: Pick<Wording, "text" | "tones">): Record<TextField, string> => ({ text, warm: tones.warm ?? "", brief: tones.brief ?? "" });

function textFaults(field: TextField, text: string, { wording, shipped }: { wording: Wording; shipped: ParagraphRow | null }): Fault[] {
  const say = (message: string): Fault => ({ field, say: message });
  if (text === "") return field === "text" ? [say("Write what the paragraph says.")] : [];
  const open = slotsIn(text);
  const unknown = open.filter((name) => !isSlot(name));
  const kept = shipped ? slotsIn(shipped.text).filter((name) => HONEST.includes(name)) : wording.place === "fibre" ? ["evidence"] : [];
  const lost = kept.filter((name) => !open.includes(name));
  return [
    ...(text.length > MOST_PARAGRAPH_CHARS ? [say(`At most ${MOST_PARAGRAPH_CHARS.toLocaleString("en")} characters.`)] : []),
    ...unknown.map((name) => say(`There is no {${name}}. Choose one of those listed below.`)),
    ...(/[{}]/.test(text.replace(/\{[^{}]*\}/g, "")) ? [say("A brace stands open. Write what is to be filled in as {rug}.")] : []),
    ...lost.map((name) => say(`Keep {${name}}: ${isSlot(name) ? SLOTS[name].says : name} belongs in this paragraph.`)),
    ...(open.includes("chance") && !wording.about ? [say("{chance} needs something to speak of. Choose what happened, below.")] : []),
  ];
}

/** Everything that keeps a paragraph from being kept, in the order of the form. `id` of a shipped one, or of one of the workshop's own. */
export function faultsOf(id: string, wording: Wording): Fault[] {
  const shipped = shippedParagraph(id);
  const never = neverHolds(wording.when);
  const needed = shipped !== null && isNeeded(shipped);
  const changed = needed && JSON.stringify(conditionLines(shipped.when)) !== JSON.stringify(conditionLines(wording.when));
  return [
    ...Object.entries(textsOf(wording)).flatMap(([field, text]) => textFaults(field as TextField, text, { wording, shipped })),
    ...(never ? [{ field: "when" as const, say: never }] : []),
    ...(changed ? [{ field: "when" as const, say: "This one is used as it stands: without it some letters would say too little." }] : []),
    ...(needed && wording.off ? [{ field: "off" as const, say: "This one stays: a letter needs it, or it keeps somebody from harm." }] : []),
  ];
}

/** The sentences of a paragraph, in all its tones, that say more than words and photos can know, with examples in its slots. */
export const overpromisesOf = (wording: Pick<Wording, "text" | "tones">): Overpromise[] =>
  Object.values(textsOf(wording)).flatMap((text) => checkSentences(withExamples(text), WORDS_AND_PHOTOS));

/** Words and grade of a paragraph with examples in its slots. */
export const paragraphReading = (text: string): Reading => readingOf(withExamples(text));
