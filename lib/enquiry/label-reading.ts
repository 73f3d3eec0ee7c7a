import "server-only";
import * as z from "zod/mini";
import type { LabelReading, Photo } from "../store/database";
import type { Finding } from "../triage/finding";
import { labelFinding } from "../triage/findings-from-answers";
import { readLabel } from "../triage/read-label";
import { LABEL_STATES, type LabelReadingView } from "./label-view";

/** What lies in the Json columns of a reading. */
const wordsSchema = z.array(z.array(z.object({ text: z.string(), confidence: z.number(), unsure: z.boolean() })));
export const cropSchema = z.object({ x: z.number(), y: z.number(), width: z.number(), height: z.number() });
const stateSchema = z.enum(LABEL_STATES);

const isFibre = (word: string): boolean => readLabel(word).components.length > 0;

const CLIENT = "client";

export function labelReadingView({ photoId, state, text, corrected, words, crop, answeredBy }: LabelReading, { width, height }: Pick<Photo, "width" | "height">): LabelReadingView {
  const lines = corrected === null ? wordsSchema.parse(words) : corrected.split("\n").map((l) => l.split(/\s+/u).filter(Boolean).map((w) => ({ text: w, unsure: false })));
  return {
    photoId, state: stateSchema.parse(state), by: answeredBy === null ? null : answeredBy === CLIENT ? "client" : "staff", text: corrected ?? text, crop: cropSchema.parse(crop), photo: { width, height },
    lines: lines.map((line) => line.map((w) => ({ text: w.text, unsure: w.unsure, isFibre: isFibre(w.text) }))),
  };
}

/**
 * The labels that a person agreed to. Words read from the photo, or put right by staff who see it, stand as a label seen in a
 * photo; what a client wrote instead of what was read, as a label they typed. A reading nobody agreed to says nothing.
 */
export const findingsOfLabels = (photos: readonly (Pick<Photo, "id"> & { label: LabelReading | null })[]): Finding[] =>
  photos.flatMap(({ label }) => {
    if (!label || label.answeredBy === null) return [];
    if (label.state === "confirmed") return labelFinding(label.text, "label-photo", label.answeredBy);
    if (label.state !== "corrected" || label.corrected === null) return [];
    return labelFinding(label.corrected, label.answeredBy === CLIENT ? "label-typed" : "label-photo", label.answeredBy);
  });
