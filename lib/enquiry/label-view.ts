/** A part of a photo, in shares of its width and height, from its upper left corner. */
export interface Frame { x: number; y: number; width: number; height: number }

/**
 * What became of a label so far. `reading`: it is being read; `failed`: the reader did not answer; `unsure`: the person asked
 * could not tell; `withdrawn`: part of it was blurred since.
 */
export const LABEL_STATES = ["reading", "read", "unreadable", "failed", "confirmed", "corrected", "refused", "unsure", "withdrawn"] as const;
export type LabelState = (typeof LABEL_STATES)[number];

export const SETTLED_STATES = ["confirmed", "corrected"] as const satisfies readonly LabelState[];
type SettledState = (typeof SETTLED_STATES)[number];
/** A person agreed on the words. */
export const isSettled = (state: string): state is SettledState => SETTLED_STATES.some((s) => s === state);

/** Words were read, whatever people made of them since: it is known how the label lies. */
export const isRead = (state: LabelState): boolean => isSettled(state) || state === "read" || state === "unsure";

/** `unsure`: the reader may be wrong; `isFibre`: it names one, alone or with its neighbours; `goesOn`: it belongs to the name that the word before it began. */
export interface LabelWord { text: string; unsure: boolean; isFibre: boolean; goesOn: boolean }

/** Words of a label and where in the photo they stand. */
export interface LabelWords {
  /** As it counts: what a person wrote, else what was read. */
  text: string;
  lines: LabelWord[][];
  /** Of the label, in shares of the photo. */
  crop: Frame;
  /** How far its lines lie turned clockwise there, in quarters of a turn, 0 to 3. */
  quarters: number;
}
type By = "client" | "staff";

/** What was read of the label in a photo. */
export interface LabelReadingView extends LabelWords {
  photoId: string;
  state: LabelState;
  /** Who said so last, or agreed on what counts still; null where nobody has yet. */
  by: By | null;
  /** What was read as silk may be more: a word beside it was not read, or not well ("ART SILK"). */
  isSilkInDoubt: boolean;
  /** What was typed of the label, where it does not say the same; null where it does, or nothing was. */
  told: string | null;
  /** What was typed of the label, whatever was read; null where nothing was. */
  typed: string | null;
  /** What was agreed before the newest frame was drawn: it counts until somebody chooses. null: nothing, or no newer frame. */
  agreed: (LabelWords & { state: SettledState; by: By }) | null;
  /** Pixels of the photo. */
  photo: { width: number; height: number };
}

/** The question stands until somebody has answered it. */
export const isAsked = (state: LabelState): boolean => state === "read" || state === "unsure";
/** A word that the reader guessed, and that is neither a fibre nor a figure, by which it could be known again. */
const isScrap = ({ text, unsure, isFibre }: LabelWord): boolean => unsure && !isFibre && !/\p{Nd}/u.test(text);
/** From more scraps than other words on, there is nothing that somebody could be asked to agree to. Elicited. */
const MOST_SCRAPS = 0.5;
/** Whether what was read is mostly guessed: it is not shown, but asked for. What a person agreed to or wrote never is. */
export function isGuess({ state, lines }: Pick<LabelReadingView, "state" | "lines">): boolean {
  const words = lines.flat();
  return isAsked(state) && words.filter(isScrap).length > MOST_SCRAPS * words.length;
}
/** A reading as it counts now: without what a newer frame gave that nobody has agreed to. */
export const inForce = (reading: LabelReadingView): LabelReadingView => (reading.agreed ? { ...reading, ...reading.agreed, agreed: null } : reading);

/** The labels in photos of one rug whose words a person agreed to, as they count now. */
export const agreedLabels = (photos: readonly { label: LabelReadingView | null }[]): { text: string; by: By }[] =>
  photos.flatMap(({ label }) => {
    const counts = label && inForce(label);
    return counts && counts.by && isSettled(counts.state) ? [{ text: counts.text.replace(/\s+/gu, " "), by: counts.by }] : [];
  });
