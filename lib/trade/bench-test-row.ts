import type { Source } from "./fibres";

/** A reading chosen among answers. `partly`, where it is offered, means that one constituent of a mixed sample answered. */
export interface ChoiceReading {
  readonly kind: "choice";
  readonly ask: string;
  readonly hint?: string;
  readonly answers: Readonly<Record<string, { readonly label: string; readonly hint?: string }>>;
}
/** A measured number, within `least` and `most` in `unit`. */
export interface NumberReading {
  readonly kind: "number";
  readonly ask: string;
  readonly hint?: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
}
/** A name for people, such as which colour was tested. Never read as evidence. */
export interface NameReading {
  readonly kind: "name";
  readonly ask: string;
  readonly hint?: string;
}
export type Reading = ChoiceReading | NumberReading | NameReading;

/** What a workshop must have assessed and switched on before a test is offered. */
export type ReagentId = "flame" | "hypochlorite" | "acetone" | "formic-acid" | "formic-acid-zinc-chloride" | "sulphuric-acid-75" | "dye-test-acid" | "dye-test-alkali";

/**
 * A bench test, for trained staff. The finding is `{ what: "test:<id>", value: { <reading>: answer | number }, strength:
 * "bench", from: "bench:<row id>", of }`; a reading left out is not known.
 */
export interface BenchTestRow extends Source {
  readonly name: string;
  /** Its name to a client, where `name` says how strong something is: strengths are for trained people. */
  readonly told?: string;
  /** What it tells, in one sentence. */
  readonly tells: string;
  /** Null: needs none and is always offered. */
  readonly reagent: ReagentId | null;
  /** Readings that take a reagent of their own: offered only where that one is switched on too. */
  readonly readingReagents?: Readonly<Record<string, ReagentId>>;
  readonly readings: Readonly<Record<string, Reading>>;
  /** Sentences shown before and beside the test. */
  readonly cautions: readonly string[];
  /** What it takes of the rug, in words, and minutes of work. */
  readonly takes: { readonly fibres: string; readonly minutes: number };
  /** `yarn`: it speaks for the yarn or component sampled; `spot`: for a place or a colour of the rug. */
  readonly speaksFor: "yarn" | "spot";
}
