import { checkSentence, WORDS_AND_PHOTOS } from "./promises/check";
import { notesOf } from "./promises/notes";
import type { RuleId } from "./promises/rule";
import { sentencesOf } from "./promises/sentences";

/** What nobody sees on a rug, however long they look: who is to blame, what others will decide, what cleaning will bring. What was seen may be said as surely as it was seen. */
const NOT_SEEN: readonly string[] = ["blame", "cover", "result", "safety", "harm"] satisfies RuleId[];
/** Advice: told to somebody, or of what would come of it. What was used on a rug, or smells of it, is only named. */
const ADVISES = new RegExp([
  "(?:^|[,;:]\\s*)(?:(?:and|then|or|please|just|first|never) )*(?:use|put|pour|apply|wash|rinse|soak|scrub|rub|clean|dab|spray|treat|try|add|mix|take|let|leave|iron|vacuum|dry|hose|shampoo|wipe|sponge)\\b",
  "\\b(?:you|please|should|can|could|would|will|may|might|must|try|recommend\\w*|advis\\w*|best|needs?)\\b",
].join("|"), "iu");
/** The judgement that is asked for by itself, so that it stands in one place, by a name. */
const JUDGEMENT = /\b(?:write-?offs?|written[- ]off|writ(?:e|ing) it off|total loss|beyond (?:[a-z]+ )?(?:repair|salvage|saving|restoration))\b/iu;
const PARTY = "(?:cleaners?|retailers?|sellers?|dealers?|shops?|stores?|owners?|clients?|customers?|makers?|manufacturers?|tenants?|landlords?|neighbours?|carriers?|compan(?:y|ies)|whoever(?: \\w+){1,4}?)";
const TOLD = "\\b(?:says?|said|tells?|told|writes?|wrote|reports?|reported|according to)\\b";
const DID = "(?:did|does|do|has|have|had|used|uses|left|put|took|let|knew|sold|cut|tore|burnt?|(?:scrub|rub|wash|clean|pull|mis-?\\w|over-?\\w|spoil|ruin|soak|rins|drag|bleach|dye|treat|appl|pour|damag|destroy|neglect)\\w*)";
/** Somebody who is said to have done something, which no rug shows; what the owner tells may be told as theirs. */
const DOINGS = new RegExp(`(?<!${TOLD}.*)\\b${PARTY} (?:\\w+ly )?${DID}\\b`, "iu");
/** What an insurer or a policy is to do. */
const COVER = /\b(?:covered|insured) (?:by|under|for)\b|\b(?:policy|insurance|insurers?)\b[^.]*\b(?:should|must|ought|has to|have to|will|would|covers?|owes?|pays?)\b/iu;
/** What no other rule sees, with what to say instead. */
const ASIDE: readonly (readonly [RegExp, string])[] = [
  [DOINGS, "Who did what is not seen on a rug. Write what is there: where it is, how large, and of what kind."],
  [COVER, "Cover and what anybody owes are for others to decide. Write only what was seen."],
  [JUDGEMENT, "Whether it is beyond economic repair is asked below, and stands in the report by this person’s name. Write here only what was seen."],
];

/** Why words cannot stand in a report as what was seen, beginning with the first such sentence; null where they can. Quoted lines are read too: a report prints them. */
export function wrongWithFound(text: string): string | null {
  const sentences = sentencesOf(text.replace(/^[ \t]*>+/gmu, ""));
  const found = sentences.flatMap((s) => checkSentence(s, WORDS_AND_PHOTOS)).filter(({ rule, sentence }) => NOT_SEEN.includes(rule) && (rule !== "harm" || ADVISES.test(sentence)));
  const [first, ...more] = notesOf(found);
  if (first) {
    const others = more.length > 0 ? ` There ${more.length === 1 ? "is one more such sentence" : `are ${more.length} more such sentences`}.` : "";
    return [`“${first.sentence}”`, ...first.reasons.map(({ why, suggestion }) => `${why} ${suggestion}`)].join(" ") + others;
  }
  const aside = sentences.flatMap((s) => ASIDE.filter(([words]) => words.test(s)).map(([, say]) => `“${s}” ${say}`));
  return aside[0] ?? null;
}
