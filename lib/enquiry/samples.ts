import type { Sample } from "../triage/finding";

/** What a test or a report can speak for, as it is chosen at the desk and kept beside the readings. */
export const SAMPLES = {
  "pile:field": { of: { part: "pile", yarn: "field" }, name: "the pile, its field", hint: "The yarn that makes up most of the face" },
  "pile:accent": { of: { part: "pile", yarn: "accent" }, name: "the pile, its accent", hint: "A second yarn, such as a shiny outline" },
  "pile:whole": { of: { part: "pile", yarn: "whole" }, name: "the pile as a whole", hint: "One yarn only, or a sample that may hold both" },
  "ground:whole": { of: { part: "ground", yarn: "whole" }, name: "the ground", hint: "Warp or weft, under the pile" },
  "fringe:whole": { of: { part: "fringe", yarn: "whole" }, name: "the fringe", hint: undefined },
} as const satisfies Record<string, { of: Sample; name: string; hint: string | undefined }>;

export type SampleId = keyof typeof SAMPLES;
export const SAMPLE_IDS = Object.keys(SAMPLES) as [SampleId, ...SampleId[]];
export const isSampleId = (text: string): text is SampleId => Object.hasOwn(SAMPLES, text);

/** The id under which a sample is kept. */
export const sampleIdOf = ({ part, yarn }: Sample): string => `${part}:${yarn}`;
