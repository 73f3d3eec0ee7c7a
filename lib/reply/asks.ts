import type { LetterSign } from "../trade/letter-signs";
import { PHOTO_KINDS, QUESTIONS, type PhotoKind, type QuestionId } from "../trade/questions";
import type { Assessment, MechanismId } from "../triage/assessment";
import type { Words } from "../words/words";

type Next = Assessment["nextQuestions"][number];
/** How many things of a kind, questions or photos, a letter asks for at once. Elicited. */
const MOST_ASKS = 2;

/** Questions that only make sense on their page, worded for a letter. */
const IN_A_LETTER = ["household", "fringe", "fringeKind", "since", "treatedBy", "shine", "touch", "boughtWhere"] as const satisfies readonly QuestionId[];

/** Questions and photos for which the rug has to be handled: not while it is wet, and not where mould is likely. */
const HANDS_ON: readonly string[] = ["back", "pile", "touch", "footprints", "fringeKind"] satisfies (QuestionId | PhotoKind)[];

/** A label under a corner is not looked for where nobody may touch the rug. */
const NOBODY_TOUCHES: readonly string[] = [...HANDS_ON, "label" satisfies PhotoKind];

/** Asked of everybody for safety or handling: they tell nothing of fibre or damage, so that a letter never asks for one of them alone. */
const FOR_CARE: readonly string[] = ["household", "age", "wetNow"] satisfies QuestionId[];

/**
 * What a letter asks for, in the assessment's order: questions and photos. No photo of the trouble where there is none,
 * and nothing that means handling a wet or mouldy rug. `likely`: what has probably happened. `one`: the one thing that would
 * tell most, a photo if there is one; null where nothing left to ask would tell anything. `wetByWords`: by what the client
 * wrote, before anybody asked.
 */
export function asksOf(a: Assessment, likely: readonly MechanismId[], wetByWords: LetterSign["firstAid"] | null = null): { questions: Next[]; photos: Next[]; one: Next | null } {
  const trouble = likely.some((m) => m !== "soil-only");
  const handsOff = a.firstAid !== null || wetByWords !== null || likely.includes("mould");
  const barred = wetByWords === "hands-off" ? NOBODY_TOUCHES : handsOff ? HANDS_ON : [];
  const fits = ({ id }: Next) => (id !== "trouble" || trouble) && !barred.includes(id);
  const of = (kind: Next["kind"]) => a.nextQuestions.filter((q) => q.kind === kind && fits(q)).slice(0, MOST_ASKS);
  const [questions, photos] = [of("question"), of("photo")];
  return { questions, photos, one: photos[0] ?? questions.find((q) => !FOR_CARE.includes(q.id)) ?? null };
}

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** One line of a letter's list. */
export function askLine(q: Next, words: Words): string {
  if (q.kind === "photo" && q.id in PHOTO_KINDS) {
    const kind = q.id as PhotoKind;
    return `– ${words.say("letter.photo-asked", { what: lower(words.table(`photo.${kind}.ask`)), hint: words.table(`photo.${kind}.hint`) })}`;
  }
  const own = IN_A_LETTER.find((id) => id === q.id);
  if (own) return `– ${words.say(`ask.${own}`)}`;
  return `– ${q.kind === "question" && q.id in QUESTIONS ? words.table(`question.${q.id as QuestionId}.ask`) : q.ask}`;
}
