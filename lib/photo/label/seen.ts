/** A word as the reader saw it, and where it stands, in shares of the height and width of the label that was read. */
export interface SeenWord { readonly text: string; /** 0 guessed to 1 sure. */ readonly confidence: number; readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }
export type SeenLine = readonly SeenWord[];
/** One reading of a label. */
export type Seen = readonly SeenLine[];

/** A word of a label. `unsure`: the readings did not agree on it, or the reader guessed; `missed`: print stands straight before it that was not read. */
export interface LabelWord { readonly text: string; readonly confidence: number; readonly unsure: boolean; readonly missed?: boolean }
export type LabelLines = readonly (readonly LabelWord[])[];

export const textOf = (lines: LabelLines): string => lines.map((l) => l.map((w) => w.text).join(" ")).join("\n");

/** Mean confidence over the letters, 0 to 1; 0 of nothing. */
export function confidenceOf(lines: LabelLines): number {
  const words = lines.flat();
  const letters = words.reduce((n, w) => n + w.text.length, 0);
  return letters === 0 ? 0 : words.reduce((sum, w) => sum + w.confidence * w.text.length, 0) / letters;
}

/**
 * How much sense a text, read with this confidence, makes to whoever knows labels: 0 none, LIKELY and more: these are the words of a label, 1: it needs no
 * second look. Asked many times, so it must be quick.
 */
export type Sense = (text: string, confidence: number) => number;
export const LIKELY = 0.3;
