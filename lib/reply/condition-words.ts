import { METHODS } from "../trade/care";
import { DAMAGE_IDS, mechanismName, type MechanismId } from "../trade/damage";
import { FIBRES } from "../trade/fibres";
import { QUESTIONS, type QuestionId } from "../trade/questions";
import { NUMBER_FACTS, WORD_FACTS, type Condition, type NumberFact, type WordFact } from "./condition";
import { listed } from "./phrases";

/** A value that a fact can have, and how it reads after "is". */
export interface FactValue { readonly id: string; readonly says: string }
const values = (table: Readonly<Record<string, string>>): FactValue[] => Object.entries(table).map(([id, says]) => ({ id, says }));

const fibres = FIBRES.filter((f) => f.id !== "other").map(({ id, name }) => ({ id, says: name }));
const mechanisms: FactValue[] = ([...DAMAGE_IDS, "soil-only"] as MechanismId[]).map((id) => ({ id, says: mechanismName(id) }));
const methods: FactValue[] = Object.entries(METHODS).map(([id, { name }]) => ({ id, says: name }));
const answers = (q: QuestionId): FactValue[] => Object.entries(QUESTIONS[q].answers).map(([id, row]) => ({ id, says: (row as { label: string }).label.replace(/[“”]/g, "") }));

/** What every fact can be: the whole vocabulary of a condition. */
export const FACT_VALUES: Readonly<Record<WordFact, readonly FactValue[]>> = {
  leading: fibres, rival: fibres, mechanisms, handled: mechanisms, top: mechanisms, offered: methods, ruledOut: methods,
  treated: values({ mould: "mould, likely or seen as spots", insects: "insects that have likely fed on it" }),
  certainty: values({ firm: "firm (very likely or more)", likely: "likely", open: "open between two", unknown: "unknown" }),
  label: values({ agrees: "the same", differs: "something else", "art-silk": "a trade word for imitation silk", none: "nothing that was read" }),
  strongest: values({ told: "what was told", photo: "photos", "label-typed": "a label as typed", "label-photo": "a label in a photo", bench: "a bench test", laboratory: "a laboratory report" }),
  soldAs: answers("sellerSaid"), cameFrom: answers("boughtWhere"), reason: answers("reason"), wet: answers("wetNow"), incidents: answers("incidents"), changes: answers("changes"),
  matters: answers("matters"), age: answers("age"),
  who: values({ owner: "the owner of the rug", trade: "another cleaner" }),
  advice: values({
    "leave-alone": "leave it alone", "routine-clean": "clean it as usual", "first-aid": "first aid", "ask-for-more": "ask for more", "inspect-and-test": "inspect and test it",
    "quote-with-limits": "quote with limits", "advise-cut-down": "cut it down", "advise-claim-or-replacement": "keep, replace or claim", refer: "send it to somebody else", "not-our-work": "not our work",
  }),
  inspection: values({ none: "nothing: nobody here has inspected it", "not-beyond": "that it is not beyond economic repair", beyond: "that it is beyond economic repair" }),
  urgency: values({ hours: "it loses by the hour", "two-days": "it loses within two days", "a-week": "it loses within a week", "can-wait": "nothing" }),
  life: values({ both: "a narrow range", "at-least": "a wide range that begins after some years", "at-most": "a wide range that ends within some years", nothing: "a range too wide to tell anything" }),
  rugs: values({ one: "one", several: "several" }),
  has: values({
    improvement: "an improvement", "clean-price": "a price for cleaning", "cut-down-price": "a price for cutting down", "cut-down-way": "a way of cutting down, chosen on a plan, with its price", "replace-price": "the price of a new one", "sent-photos": "photos of theirs that can be judged by", photos: "photos to ask for",
    questions: "questions to ask", "one-ask": "one thing that would tell most", "lone-ask": "one thing to ask for and no more", "needs-more": "something to ask for, and a letter that says that we need to know more", "first-aid": "first aid", "aid-known": "first aid told in a letter of ours, or the client writes that it is dry", "aid-said-dry": "first aid, and the client writes that it is dry", "first-aid-gas": "first aid for bleach and something that it can give off gas with", "aid-known-gas": "first aid told so, for bleach and something that it can give off gas with", "aid-said-dry-gas": "first aid for those, and the client writes that it is dry", "said-wet": "water in the client’s own words, not asked about yet", "said-flood": "flood or waste water in them", "flood-unseen": "flood or waste water that got into it, and no inspection of ours", "flood-seen": "flood or waste water that got into it, and an inspection of ours", referral: "somebody to send it to", telephone: "the workshop’s telephone", name: "the client’s name",
    "costs-more": "a price for cleaning as high as the rug may be worth", "costs-clearly-more": "a price for cleaning over all that the rug may be worth today", "price-beside-worth": "a price for cleaning, and what the rug or a new one may be worth", "worth-overlaps": "a price for cleaning that may reach what the rug may be worth today", "falls-short": "an improvement that probably falls short of what counts as brought back", "price-against-silk": "a price paid that speaks against silk", "wet-unknown": "nobody has said whether it is wet", "dry-said": "that it is dry, in the client’s own words, and no answer about it",
    came: "something from the client since our last letter", tested: "a test or a report since our last letter", changed: "something in our last letter that reads otherwise today", gone: "something in our last letter that no longer holds", waits: "something in our last letter that waits until we know whether it is wet", "only-waits": "nothing else that moved", "only-more": "more than in our last letter, all of which still holds", unchanged: "something that came and changes nothing, and no more to say", "inspected-otherwise": "an inspection of ours since our last letter, and something in that which changed", "inspected-more": "an inspection of ours since then, and more to say, all of it still holding",
    "urine-told-fresh": "urine that they told us of, of this week", "urine-told-little": "such urine, and little improvement", "trouble-unjudged": "trouble told in the client’s own words, or as the reason why they write, and no answer about it", "change-unexplained": "a change they told us of that nothing likely explains; bare patches and a back that crumbles apart", "cleaned-home": "that it was cleaned at home before", "brown-washed-said": "brown after a wash in the client’s own words, and no answer about it", "brown-said": "brown, and no wash, in them", "stiff-washed-said": "stiffness after a wash in them", "pot-said": "a plant pot that may stand on the rug, in an answer or in them",
    "asked-collecting": "a question of theirs whether we collect", "asked-worth": "a question of theirs whether it is worth it", "asked-cost": "a question of theirs what it costs", "asked-how-long": "a question of theirs how long the work takes", "asked-remedy": "a question of theirs whether to put something on it", "asked-flame": "a question of theirs whether to burn a thread",
    "not-handled": "a rug that nobody is to handle yet: wet or just wet, flooded, or with mould", "mould-and-insects": "mould and insects, both likely enough to speak of", "latex-back": "a back that latex seems to hold", "latex-named": "latex named on its label", "label-mixture": "several fibres on its label that make no class of their own", "silk-said": "silk in what the seller or a label called it", "silk-asked": "a question about silk in the client’s own words",
    "doubtful-worth": "doubt that it is worth saving", "hardly-worth": "likely not worth its cost", "no-haste": "nothing that is lost by waiting, or likely not worth its cost", "set-or-not": "a stain of which it is open whether it has set", "no-page": "a client without an e-mail address, and so without a page of their own", "little-hope": "little improvement to hope for", "only-smell": "a smell, and no other change", "short-life": "few years left, by the range that the letter gives", "months-or-years": "months or years left, by that range",
  }),
};

/** The largest value of each number, as it is kept; in a form all of them are per cent. */
export const LARGEST: Readonly<Record<NumberFact, number>> = { waterShy: 1, beyondRepair: 1, worse: 1, improvementHigh: 100, improvementWidth: 100 };
export const inPercent = (fact: NumberFact, value: number): number => (value / LARGEST[fact]) * 100;

export const isWordFact = (name: string): name is WordFact => Object.hasOwn(WORD_FACTS, name);
export const isNumberFact = (name: string): name is NumberFact => Object.hasOwn(NUMBER_FACTS, name);

const valueSays = (fact: WordFact, id: string) => FACT_VALUES[fact].find((v) => v.id === id)?.says ?? id;
const wordLines = (rule: Condition["is"], before = "") =>
  (Object.entries(rule ?? {}) as [WordFact, readonly string[]][]).map(([fact, ids]) => `${WORD_FACTS[fact]}: ${before}${listed(ids.map((id) => valueSays(fact, id)), "or")}`);
const numberLines = (rule: Condition["atLeast"], verb: string) =>
  (Object.entries(rule ?? {}) as [NumberFact, number][]).map(([fact, bound]) => `${NUMBER_FACTS[fact]}: ${verb} ${Math.round(inPercent(fact, bound))} per cent`);

/** A condition as people read it, a line for each thing that must hold; an empty list where it always holds. */
export const conditionLines = (when: Condition): string[] =>
  [...wordLines(when.is), ...wordLines(when.not, "not "), ...numberLines(when.atLeast, "at least"), ...numberLines(when.below, "below")];

/** Why a condition can never hold, in a sentence; null where it can. */
export function neverHolds({ is = {}, not = {}, atLeast = {}, below = {} }: Condition): string | null {
  for (const [fact, ids] of Object.entries(is) as [WordFact, readonly string[]][]) {
    if (ids.length === 0) return `“${WORD_FACTS[fact]}” has nothing chosen.`;
    if (ids.every((id) => not[fact]?.includes(id))) return `“${WORD_FACTS[fact]}” must be and must not be the same.`;
  }
  for (const [fact, bound] of Object.entries(atLeast) as [NumberFact, number][])
    if (bound >= (below[fact] ?? Infinity)) return `“${NUMBER_FACTS[fact]}” cannot be at least the one and below the other.`;
  for (const [fact, bound] of Object.entries(below) as [NumberFact, number][])
    if (bound <= 0) return `“${NUMBER_FACTS[fact]}” is never below nothing.`;
  return null;
}
