import type { Source } from "./fibres";
import type { PhotoKind, QuestionId } from "./questions";

/**
 * What each question or photo could tell, where no table of likelihoods answers that: the share of what is open about
 * the damage that a sure answer settles. Elicited. Questions about the fibre are valued by their own likelihoods.
 */
export interface ValueRow extends Source { readonly settles: number }
const settles = (share: number): ValueRow => ({ settles: share, how: "elicited", source: "Elicited for this project" });

export const DAMAGE_QUESTIONS: Readonly<Partial<Record<QuestionId, ValueRow>>> = {
  incidents: settles(0.5), changes: settles(0.5), since: settles(0.25), treatments: settles(0.3), liquid: settles(0.2), treatedBy: settles(0.05), room: settles(0.04),
};
export const DAMAGE_PHOTOS: Readonly<Partial<Record<PhotoKind, ValueRow>>> = { trouble: settles(0.5), whole: settles(0.2) };

/** Photos that answer a question about the fibre, better than words do; `label` is the label finding. */
export const FIBRE_PHOTOS: Readonly<Partial<Record<PhotoKind, string>>> = { label: "label", back: "back", pile: "shine" };
/** Questions about the fibre that may be asked in words. */
export const FIBRE_QUESTIONS: readonly QuestionId[] = ["sellerSaid", "boughtWhere", "shine", "footprints", "touch", "back", "fringe", "fringeKind"];

/** Only worth asking once another answer is there. Common practice, no published source. */
export const ASKED_AFTER: Readonly<Partial<Record<QuestionId, { readonly anyOf: readonly string[] }>>> = {
  liquid: { anyOf: ["incidents:spill", "incidents:vomit", "incidents:spotted", "incidents:unknown"] },
  since: { anyOf: ["incidents:spill", "incidents:pet-urine", "incidents:vomit", "incidents:water", "incidents:flood", "incidents:washed-professional", "incidents:washed-home", "incidents:spotted", "reason:just-happened", "reason:after-cleaning"] },
  treatments: { anyOf: ["incidents:spill", "incidents:pet-urine", "incidents:vomit", "incidents:water", "incidents:flood", "incidents:washed-professional", "incidents:washed-home", "incidents:spotted", "reason:just-happened", "reason:after-cleaning"] },
  treatedBy: { anyOf: ["treatments:plain-water", "treatments:household-cleaner", "treatments:soap", "treatments:machine", "treatments:professional-wet", "treatments:professional-dry", "treatments:bleach", "treatments:solvent"] },
  fringeKind: { anyOf: ["fringe:part-of-rug", "fringe:sewn-on"] },
};

/** Always asked, whatever they are worth to the decision: safety, children and pets, moth, age. Common practice, no published source. */
export const ALWAYS_ASKED: readonly { readonly id: QuestionId; readonly why: string }[] = [
  { id: "wetNow", why: "Always asked, for safety: what is wet now cannot wait." },
  { id: "household", why: "Always asked, for safety: children, pets, moths and heated floors." },
  { id: "age", why: "Always asked: an old rug is handled as one." },
];
/** Contact is always asked; the questionnaire and the telephone sheet end with it. */
export const MOST_NEXT_QUESTIONS = 5;

/** Under this drop in expected loss (one clean) no single answer changes what we do, and questions are ranked by what they tell. Elicited. */
export const WORTH_ASKING = { drop: 0.002, how: "elicited", source: "Elicited for this project" } as const satisfies Source & { drop: number };

/**
 * A bench test costs the trouble of the loss table for so many minutes of work, and in proportion. It is proposed in any
 * case while the fibre stays open by `openFrom`: words and photos never settle it.
 */
export const BENCH_TEST = { minutes: 20, openFrom: 0.1, how: "elicited", source: "Elicited for this project" } as const satisfies Source & Record<"minutes" | "openFrom", number>;

/**
 * How much of the whole picture each answer is, in shares of one: what is not answered is open to asking. `label` and
 * `photo:<kind>` are findings too. Elicited.
 */
export const PICTURE: Readonly<Record<string, number>> = {
  label: 0.25, sellerSaid: 0.08, shine: 0.08, footprints: 0.04, touch: 0.08, back: 0.08, incidents: 0.14, changes: 0.14, since: 0.05, treatments: 0.06,
};
