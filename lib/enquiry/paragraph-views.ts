import type { FactValue } from "../reply/condition-words";
import type { Overpromise } from "../reply/promises/check";
import type { FormValues } from "./step-schemas";

/** What the pages of paragraphs are given. */
export interface ParagraphLine {
  id: string;
  text: string;
  /** When it is used, a line for each thing that must hold; empty: always. */
  when: string[];
  /** Whose words these are, and in which version. */
  from: "shipped" | "workshop";
  version: number;
  off: boolean;
  tones: number;
}
export interface PlaceOfParagraphs { id: string; name: string; ofEachRug: boolean; paragraphs: ParagraphLine[] }

export interface ParagraphView {
  /** null: a new one. */
  id: string | null;
  /** The newest of the workshop's own versions; 0 where there is none. */
  seen: number;
  values: FormValues;
  /** The shipped text, where the workshop has written another. */
  shippedText: string | null;
  isNeeded: boolean;
  places: { id: string; name: string; paragraphs: { id: string; begins: string }[] }[];
  facts: { id: string; says: string; values: readonly FactValue[] }[];
  numbers: { id: string; says: string; largest: number }[];
  mechanisms: FactValue[];
  slots: { name: string; says: string }[];
  versions: { version: number; by: string; at: string; text: string | null; reason: string | null }[];
}

export interface ParagraphPreview {
  faults: { field: string; say: string }[];
  over: Overpromise[];
  words: number;
  grade: number;
  /** When it is used, in words. */
  when: string[];
  /** How many past enquiries were tried, newest first, and those whose letter would use it. */
  tried: number;
  used: number;
  /** The newest few of those: the letter as it would read, what the paragraph says in it (of each rug it speaks of), and whether the letter reads otherwise today. */
  letters: { enquiryId: string; reference: string; title: string; client: string; after: string; says: string[]; isChanged: boolean }[];
}
