import "server-only";
import * as z from "zod/mini";
import type { LabelReading, Photo } from "../store/database";
import type { Finding } from "../triage/finding";
import { labelFinding } from "../triage/findings-from-answers";
import { maySilkBeLessThanRead } from "../triage/beside-silk";
import { markWords } from "../triage/label-marks";
import { labelsAgree, labelsDiffer } from "../triage/labels-differ";
import { isGuess, isRead, isSettled, LABEL_STATES, SETTLED_STATES, type LabelReadingView, type LabelState, type LabelWords } from "./label-view";

/** What lies in the Json columns of a reading. */
const wordsSchema = z.array(z.array(z.object({ text: z.string(), confidence: z.number(), unsure: z.boolean(), missed: z.optional(z.boolean()) })));
export const cropSchema = z.object({ x: z.number(), y: z.number(), width: z.number(), height: z.number() });
const stateSchema = z.enum(LABEL_STATES);
const agreedSchema = z.object({
  state: z.enum(SETTLED_STATES), text: z.string(), corrected: z.nullable(z.string()), words: wordsSchema, crop: cropSchema, degrees: z.number(), answeredBy: z.string(), answeredAt: z.nullable(z.iso.datetime()),
});
/** A reading that a person agreed to. */
export type AgreedLabel = z.infer<typeof agreedSchema>;

const CLIENT = "client";
const byOf = (answeredBy: string) => (answeredBy === CLIENT ? "client" : "staff");

/** What a person agreed to and counts still: as the row stands, or as it stood before its newest frame was drawn. */
export function agreedOf(row: LabelReading): AgreedLabel | null {
  const { state, text, corrected, words, crop, degrees, answeredBy, answeredAt } = row;
  if (answeredBy === null || !isSettled(state)) return agreedBefore(row);
  return agreedSchema.parse({ state, text, corrected, words, crop, degrees, answeredBy, answeredAt: answeredAt?.toISOString() ?? null });
}
/** What was agreed before the newest frame was drawn, as long as nobody has chosen. */
export const agreedBefore = ({ agreed }: Pick<LabelReading, "agreed">): AgreedLabel | null => (agreed === null ? null : agreedSchema.parse(agreed));

/** Whether a client may still say something of a label: nobody of the workshop has settled it. */
export const isOpenToClient = (row: LabelReading): boolean => [row.answeredBy, agreedOf(row)?.answeredBy].every((by) => by == null || by === CLIENT);

const quartersOf = (degrees: number): number => (Math.round(degrees / 90) + 4) % 4;

function wordsOf({ text, corrected, words, crop, degrees }: Pick<LabelReading, "text" | "corrected" | "words" | "crop" | "degrees">): LabelWords {
  const lines = corrected === null ? wordsSchema.parse(words) : corrected.split("\n").map((l) => l.split(/\s+/u).filter(Boolean).map((w) => ({ text: w, unsure: false })));
  const marks = markWords(lines.map((line) => line.map((w) => w.text)));
  const marked = lines.map((line, n) => line.map(({ text, unsure }, k) => ({ text, unsure, isFibre: marks[n]?.[k]?.fibre != null, goesOn: marks[n]?.[k]?.goesOn === true })));
  return { text: corrected ?? text, crop: cropSchema.parse(crop), quarters: quartersOf(degrees), lines: marked };
}

/** `told`: what was typed of the label, where anything was. */
export function labelReadingView(row: LabelReading, { width, height }: Pick<Photo, "width" | "height">, told: string | null): LabelReadingView {
  const before = agreedBefore(row);
  const by = before?.answeredBy ?? row.answeredBy;
  const [state, words] = [stateSchema.parse(row.state), wordsOf(row)];
  return {
    ...words, photoId: row.photoId, state, told: told !== null && isRead(state) && labelsDiffer(told, words.text) ? told : null, typed: told, by: by === null ? null : byOf(by), photo: { width, height },
    isSilkInDoubt: row.corrected === null && maySilkBeLessThanRead(wordsSchema.parse(row.words)),
    agreed: before && { ...wordsOf(before), state: before.state, by: byOf(before.answeredBy) },
  };
}

/**
 * The labels that a person agreed to. Words read from the photo, or put right by staff who see it, stand as a label seen in a
 * photo; what a client wrote instead of what was read, as a label they typed. A reading nobody agreed to says nothing, and
 * what was agreed before it goes on counting.
 */
export const findingsOfLabels = (photos: readonly (Pick<Photo, "id"> & { label: LabelReading | null })[]): Finding[] =>
  photos.flatMap(({ label }) => {
    const agreed = label && agreedOf(label);
    if (!agreed) return [];
    const { corrected, text, answeredBy } = agreed;
    return labelFinding(corrected ?? text, corrected !== null && answeredBy === CLIENT ? "label-typed" : "label-photo", answeredBy);
  });

/**
 * Whether a label that was read in one of these photos says what was typed of it. A letter says so; nothing is believed by it, and where nobody
 * has agreed to the words, silk that may be less than was read says nothing, nor does what is mostly guessed and shown to nobody.
 */
export const isTypedLabelShown = (typed: string | undefined, photos: readonly { label: LabelReading | null }[]): boolean =>
  photos.some(({ label }) => label?.state === ("read" satisfies LabelState) && !isGuess({ state: label.state, lines: wordsOf(label).lines }) && labelsAgree(typed ?? "", label.text) && !maySilkBeLessThanRead(wordsSchema.parse(label.words)));
