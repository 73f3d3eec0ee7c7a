import type { Assessment, Range } from "../../triage/assessment";
import { notStatedIn } from "../../words/judged";
import type { Words } from "../../words/words";
import { answersTo, beyondTold, changeIn, isHarmTold, isWorthAsked } from "../damage-told";
import { givesYears, isFibreOpen, likelyMechanisms } from "../facts";
import { isMouldyAsJudged } from "../happened";
import { verdictIn } from "../inspected";
import { harmRange, lifePhrase, likelihood } from "../phrases";
import { treatedFirst, treatedOf } from "../treated-first";
import { list, paragraph, small, type Block } from "./blocks";
import { inHundred, rangeInHundred } from "./chances";
import { isFlooded } from "./report-cautions";
import type { Inspection } from "./report-seen";

interface Judged { readonly assessment: Assessment; readonly inspection: Inspection | null }

/** What cleaning may bring back or make worse, the life left, and whether it is beyond economic repair. */
export function prospectBlocks({ assessment: a, inspection }: Judged, words: Words): Block[] {
  const { say } = words;
  return [
    ...list(isFlooded(a) ? [say(inspection ? "report.flooded-seen" : "report.flooded")] : [
      improvement(a, words),
      ...(a.worse === null ? [] : [say("report.worse", { chance: rangeInHundred(harmRange(a.worse), words) })]),
      ...smell(a, words),
      a.lifeYears ? life(a, a.lifeYears, words) : instead(a.why.lifeYears, say("report.no-life"), words),
    ]),
    ...beyondRepair(a, inspection, words),
  ];
}

/** As the letters tell it: while the fibre is open a narrow range alone, and as a guess; where the range tells nothing at all, that. */
function life(a: Assessment, range: Range, words: Words): string {
  const years = { years: lifePhrase(range, words), once: treatedFirst(treatedOf({ isMouldy: isMouldyAsJudged(a), likely: likelyMechanisms(a) })) ?? "nothing" };
  if (isFibreOpen(a)) return givesYears(a) ? words.say("report.life-guess", years) : words.say("report.life-open");
  return givesYears(a) ? words.say("report.life", years) : words.say("report.life-too-wide");
}

/** A smell is told, never seen: without the answer nothing is said of one. */
const smell = (a: Assessment, words: Words): string[] =>
  (a.odour && answersTo(a, "changes").includes("smell") ? [words.say("report.smell", { chance: inHundred(a.odour.returns, words) })] : []);

const instead = (why: string | undefined, otherwise: string, words: Words) => (why === undefined ? otherwise : notStatedIn(words, why));

/** A share of a change is stated only where there is a change to take it of. */
function improvement(a: Assessment, words: Words): string {
  const change = changeIn(a);
  if (change === "shading") return words.say("report.no-improvement-shading");
  if (change !== "told") return words.say("report.no-improvement-of", { change });
  if (!a.improvement) return instead(a.why.improvement, words.say("report.no-improvement"), words);
  return words.say("report.improvement", { low: Math.round(a.improvement.low), high: Math.round(a.improvement.high) });
}

/** Whether it is beyond economic repair, with what that means; without harm the words are not used, and it is said of the work what the letters say. */
function beyondRepair(a: Assessment, inspection: Inspection | null, words: Words): Block[] {
  const chance = inspection || isFlooded(a) || isHarmTold(a) ? null : beyondTold(a);
  if (chance !== null) return [paragraph(words.say("report.work-chance", { change: changeIn(a), ...chanceIn(chance, words) }))];
  return [paragraph(verdict(a, inspection, words)), small(words.say("report.beyond-means"))];
}
const chanceIn = (chance: number, words: Words) => ({ likely: likelihood(chance, words), chance: inHundred(chance, words) });

/** The verdict is a person's; the chance is the program's and stays provisional, and there is none where the letters tell none. */
function verdict(a: Assessment, inspection: Inspection | null, words: Words): string {
  if (inspection) return verdictIn(inspection, words);
  if (isFlooded(a)) return words.say("report.beyond-not-judged");
  if (!isWorthAsked(a)) return words.say("report.beyond-no-damage", { change: changeIn(a) });
  const chance = beyondTold(a);
  return chance === null ? words.say("report.beyond-not-judged") : words.say("report.beyond-chance", { change: changeIn(a), ...chanceIn(chance, words) });
}
