import { LIKELY, type Sense } from "../photo/label/seen";
import { readLabel } from "../triage/read-label";

/** Sense of a text that names fibres and leaves doubts: less with each. Elicited on drawn labels. */
const DOUBTED = 0.9, EACH_DOUBT = 0.08, LEAST_DOUBTED = 0.5;
/** A text with a per cent figure, read with this confidence, is a label's even where no fibre's name is known. Elicited. */
const PERCENT_CONFIDENCE = 0.6;
const SOME_LETTERS = 0.1;

/** How much sense a text makes as a label's words: asked while a photo is read, so that it is read again where it makes little. */
export const labelSense: Sense = (text, confidence) => {
  const { components, doubts } = readLabel(text);
  if (components.length > 0) return doubts.length === 0 ? 1 : Math.max(LEAST_DOUBTED, DOUBTED - EACH_DOUBT * doubts.length);
  if (/\d ?%/u.test(text) && confidence >= PERCENT_CONFIDENCE) return LIKELY;
  return /\p{L}{3}/u.test(text) ? SOME_LETTERS * confidence : 0;
};
