import { LIKELY, type Sense } from "../photo/label/seen";
import type { LabelRuleId } from "../trade/label-rules";
import { hasStrangerBeforeSilk } from "../triage/beside-silk";
import { readLabel, type LabelReading } from "../triage/read-label";

/** Sense of a text that names fibres and leaves doubts: less with each. Elicited on drawn labels. */
const DOUBTED = 0.9, EACH_DOUBT = 0.08, LEAST_DOUBTED = 0.5;
/** A text with a per cent figure, read with this confidence, is a label's even where no fibre's name is known. Elicited. */
const PERCENT_CONFIDENCE = 0.6;
const SOME_LETTERS = 0.1;
/** What the law says of a name that stands there. The name was read well: counted as a doubt, it would give way to a reading that lost "art" before "silk". */
const OF_THE_NAME: readonly LabelRuleId[] = ["silk-word", "bamboo"];

/** How many doubts there are that this is what stands on the label. */
function doubtsOfReading(text: string, { components, doubts, rules }: LabelReading): number {
  const ofNames = new Set(rules.filter((r) => r.broken && OF_THE_NAME.includes(r.rule)).map((r) => `${r.says} (${r.article})`));
  const namesSilk = components.some((c) => c.fibres.some((f) => f.fibre === "silk"));
  const isStrange = namesSilk && hasStrangerBeforeSilk(text.split("\n").map((line) => line.split(" ")));
  return doubts.filter((d) => !ofNames.has(d)).length + (isStrange ? 1 : 0);
}

/** How much sense a text makes as a label's words: asked while a photo is read, so that it is read again where it makes little. */
export const labelSense: Sense = (text, confidence) => {
  const reading = readLabel(text);
  const doubts = doubtsOfReading(text, reading);
  if (reading.components.length > 0) return doubts === 0 ? 1 : Math.max(LEAST_DOUBTED, DOUBTED - EACH_DOUBT * doubts);
  if (/\d ?%/u.test(text) && confidence >= PERCENT_CONFIDENCE) return LIKELY;
  return /\p{L}{3}/u.test(text) ? SOME_LETTERS * confidence : 0;
};
