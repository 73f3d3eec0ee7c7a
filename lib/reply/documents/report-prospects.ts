import type { Assessment, Range } from "../../triage/assessment";
import { notStatedIn } from "../../words/judged";
import type { Words } from "../../words/words";
import { lifePhrase, lifeTold, likelihood } from "../phrases";
import { list, paragraph, small, type Block } from "./blocks";
import { inHundred } from "./chances";
import { changeIn, isDamageTold } from "./report-change";
import type { Inspection } from "./report-seen";

interface Judged { readonly assessment: Assessment; readonly inspection: Inspection | null }

/** What cleaning may bring back or make worse, the life left, and whether it is beyond economic repair. */
export function prospectBlocks({ assessment: a, inspection }: Judged, words: Words): Block[] {
  const { say } = words;
  return [
    ...list([
      improvement(a, words),
      ...(a.worse === null ? [] : [say("report.worse", { chance: inHundred(a.worse, words) })]),
      a.lifeYears ? life(a.lifeYears, words) : instead(a.why.lifeYears, say("report.no-life"), words),
    ]),
    paragraph(beyondRepair(a, inspection, words)),
    small(say("report.beyond-means")),
  ];
}

/** As the letters tell it; where the range tells nothing at all, that. */
const life = (years: Range, words: Words): string =>
  lifeTold(years) === "nothing" ? words.say("report.life-too-wide") : words.say("report.life", { years: lifePhrase(years, words) });

const instead = (why: string | undefined, otherwise: string, words: Words) => (why === undefined ? otherwise : notStatedIn(words, why));

/** A share of a change is stated only where there is a change to take it of. */
function improvement(a: Assessment, words: Words): string {
  const change = changeIn(a);
  if (change === "shading") return words.say("report.no-improvement-shading");
  if (!a.improvement) return instead(a.why.improvement, words.say("report.no-improvement"), words);
  if (change !== "told") return words.say("report.no-improvement-of", { change });
  return words.say("report.improvement", { low: Math.round(a.improvement.low), high: Math.round(a.improvement.high) });
}

/** The verdict is a person's; the chance is the program's and stays provisional, and there is none where no damage was told. */
function beyondRepair(a: Assessment, inspection: Inspection | null, words: Words): string {
  if (inspection) return words.say(inspection.isBeyondRepair ? "report.beyond" : "report.not-beyond", { by: inspection.by, day: inspection.on });
  if (!isDamageTold(a)) return words.say("report.beyond-no-damage", { change: changeIn(a) });
  return a.beyondRepair === null ? words.say("report.beyond-not-judged") : words.say("report.beyond-chance", { likely: likelihood(a.beyondRepair, words), chance: inHundred(a.beyondRepair, words) });
}
