import { BEYOND_REPAIR_MEANS } from "../../words/beyond-repair";
import type { Condition } from "../condition";
import { TREATED } from "../treated-first";
import type { ParagraphRow } from "./row";
import { OURS } from "./sources";
import { CLEANING, HARDLY_WORTH, HARM, INSPECTED, LOOKS, OFFERED, PERHAPS_NOT_WORTH, REPAIRS, TELLS_NOTHING } from "./troubles";

/** Harm after which it no longer serves: of any other a letter speaks of cleaning, not of saving. */
const HARM_TO_USE = HARM.filter((m) => !LOOKS.includes(m));
const PROVISIONAL = "That is provisional: nobody here has inspected it, and an inspection could change it.";
/** What the work costs beside what the rug may be worth, where both are known: whoever reads that the one may be more than the other sees by how much. Where the two ranges do not meet, "may well" would be less than they say; nobody has seen it, so that they stay estimates. */
const MORE_THAN_WORTH = "more than the rug is worth today, very roughly {worthToday}.";
const COST_BESIDE_WORTH = `at about {clean} it may well cost ${MORE_THAN_WORTH}`;
const COST_OVER_WORTH = `at about {clean} it would by our estimates cost ${MORE_THAN_WORTH}`;
const SAVING_BESIDE_WORTH = "that saving it is not worth the cost, for cleaning alone about {clean}, set against what it may be worth today, very roughly {worthToday}.";
const INSTEAD = "advise-claim-or-replacement";
/** What an old piece is worth is a question for a valuer. */
const VALUED_ELSEWHERE: Condition["not"] = { age: ["antique"] };
/** Nothing is known of it: even odds would be those of any rug. */
const EVEN_ODDS: Pick<Condition, "atLeast" | "below" | "not"> = { atLeast: PERHAPS_NOT_WORTH, below: HARDLY_WORTH, not: { age: ["antique"], certainty: ["unknown"] } };
/** Nobody asks what the work costs here, or somebody else has to see it first. */
const UNWEIGHED: Condition["not"] = { age: ["antique"], certainty: ["unknown"], advice: ["leave-alone", "ask-for-more"], incidents: ["flood"] };
/** The same, and a cleaner asks, who is told no price of ours. */
const COST_UNASKED: Condition["not"] = { ...UNWEIGHED, who: ["trade"] };
/** Who inspected it does not judge it beyond repair; what the work costs speaks against it all the same. */
const COST_SEEN: Condition["is"] = { inspection: ["not-beyond"], has: ["costs-more"] };
/** They ask whether it is worth it, and nothing else answers that. Of which of several rugs they ask it nobody has read. */
const WORTH_OPEN: Condition = { is: { has: ["asked-worth"] }, not: { ...VALUED_ELSEWHERE, has: ["hardly-worth"], inspection: INSPECTED, advice: ["not-our-work", "leave-alone"] } };
const THEIRS_TO_DECIDE = "whether it is worth that to you is for you to decide.";
/** Something else comes first, little is gained, or cleaning is not what they ask about. */
const NO_PLAIN_YES: Condition["not"] = {
  age: ["antique"], certainty: ["unknown"], who: ["trade"], reason: ["what-is-it", "mis-sold"], wet: ["wet", "damp"], treated: TREATED, top: REPAIRS,
  has: ["costs-more", "little-hope", "short-life", "first-aid", "aid-known", "said-wet", "trouble-unjudged"],
};

/**
 * It is likely worth its cost. Below 33 in 100 that it is not leaves over 67 that it is: “likely” on the published scale begins at 66
 * (lib/trade/words-for-chance.ts).
 */
export const LIKELY_WORTH: Condition = { is: { advice: OFFERED, offered: CLEANING, has: ["price-beside-worth"] }, not: NO_PLAIN_YES, below: { ...PERHAPS_NOT_WORTH, ...TELLS_NOTHING } };

/**
 * Whether the work is worth its cost. Where it probably is not, that is the second sentence of the answer, with what could
 * change it, before how much may come back and before any price; at even odds it stands after the outlook, or before it where the client asked just that. It says what speaks
 * against the work: the cost, how little comes back, the years left; where what the rug is worth decides, and that is known
 * only roughly, it says so. Where the cost may be more than the worth, both stand there as ranges if they are known. Where we would rather not take the money, that stands beside a small range, or after a good one
 * beside what to do instead, and the work has no price but the one that speaks against it, or that they asked. Where it probably is worth it, and cleaning
 * is what we offer, that is said as plainly. One sentence of a paragraph speaks of worth. Once somebody here has inspected it, their
 * judgement stands there by their name, and no chance of the program's beside it; what the work costs against the worth is said after it as before.
 */
export const WORTH: readonly ParagraphRow[] = [
  { ...OURS, id: "inspected-not-beyond", version: 1, place: "worth", when: { is: { inspection: ["not-beyond"] } },
    text: "{inspector}, who inspected it on {inspectedOn}, does not judge it beyond economic repair." },
  { ...OURS, id: "inspected-beyond", version: 2, place: "worth", when: { is: { inspection: ["beyond"] } },
    text: `{inspector}, who inspected it on {inspectedOn}, judges it beyond economic repair: ${BEYOND_REPAIR_MEANS}.` },

  { ...OURS, id: "little-gain", version: 2, place: "worth", against: "little", when: { is: { has: ["little-hope"] }, not: { ...VALUED_ELSEWHERE, top: ["soil-only"] }, atLeast: HARDLY_WORTH },
    text: "It is {beyond} that cleaning would bring back too little to be worth its cost; that is provisional: nobody here has inspected it, and an inspection could change it." },
  { ...OURS, id: "not-worth-saving-dear-priced", version: 1, place: "worth", against: "cost", when: { is: { has: ["costs-more"], top: HARM_TO_USE }, not: { ...VALUED_ELSEWHERE, advice: ["advise-cut-down"], who: ["trade"] }, atLeast: HARDLY_WORTH },
    text: `It is {beyond} ${SAVING_BESIDE_WORTH} ${PROVISIONAL}` },
  { ...OURS, id: "not-worth-saving-dear", version: 1, place: "worth", against: "cost", when: { is: { has: ["costs-more"], top: HARM_TO_USE }, not: { ...VALUED_ELSEWHERE, advice: ["advise-cut-down"] }, atLeast: HARDLY_WORTH },
    text: "It is {beyond} that saving it is not worth the cost, set against what it may be worth today; that is provisional: nobody here has inspected it, and an inspection could change it." },
  { ...OURS, id: "not-worth-saving", version: 3, place: "worth", against: "gain", when: { is: { has: ["falls-short"], top: HARM_TO_USE }, not: { ...VALUED_ELSEWHERE, advice: ["advise-cut-down"] }, atLeast: HARDLY_WORTH },
    text: `It is {beyond} that in money alone saving it is not worth its cost: cleaning may bring back too little. ${PROVISIONAL}` },
  { ...OURS, id: "not-worth-cleaning-dear-clearly", version: 1, place: "worth", against: "cost", when: { is: { has: ["costs-clearly-more"] }, not: COST_UNASKED, atLeast: HARDLY_WORTH },
    text: `It is {beyond} that cleaning it is not worth the money: ${COST_OVER_WORTH} ${PROVISIONAL}` },
  { ...OURS, id: "not-worth-cleaning-dear-priced", version: 1, place: "worth", against: "cost", when: { is: { has: ["costs-more"] }, not: COST_UNASKED, atLeast: HARDLY_WORTH },
    text: `It is {beyond} that cleaning it is not worth the money: ${COST_BESIDE_WORTH} ${PROVISIONAL}` },
  { ...OURS, id: "not-worth-cleaning-dear", version: 2, place: "worth", against: "cost", when: { is: { has: ["costs-more"] }, not: UNWEIGHED, atLeast: HARDLY_WORTH },
    text: `It is {beyond} that cleaning it is not worth the money: it may well cost more than the rug is worth today. ${PROVISIONAL}` },
  { ...OURS, id: "not-worth-cleaning", version: 2, place: "worth", against: "gain", when: { is: { has: ["falls-short"] }, not: VALUED_ELSEWHERE, atLeast: HARDLY_WORTH },
    text: `It is {beyond} that cleaning it is not worth the money: it may not gain enough. ${PROVISIONAL}` },
  { ...OURS, id: "not-worth-years", version: 1, place: "worth", against: "years", when: { is: { has: ["short-life"] }, not: VALUED_ELSEWHERE, atLeast: HARDLY_WORTH },
    text: `It is {beyond} that cleaning it is not worth the money, set against how long it may still serve. ${PROVISIONAL}` },
  { ...OURS, id: "not-worth-hangs", version: 1, place: "worth", against: "worth", when: { not: VALUED_ELSEWHERE, atLeast: HARDLY_WORTH },
    text: `It is {beyond} that cleaning it is not worth the money, but that hangs on what the rug is worth today, which we cannot tell well from here. ${PROVISIONAL}` },

  { ...OURS, id: "not-our-money", version: 3, place: "beyond", when: { is: { advice: [INSTEAD], has: ["little-hope"] }, not: { ...VALUED_ELSEWHERE, top: LOOKS }, atLeast: HARDLY_WORTH },
    text: "We would rather not take your money for cleaning it." },
  { ...OURS, id: "beyond-repair-priced", version: 1, place: "beyond", against: "cost", when: { ...EVEN_ODDS, is: { has: ["costs-more"], top: HARM_TO_USE }, not: { ...EVEN_ODDS.not, who: ["trade"] } },
    text: `It is {beyond} ${SAVING_BESIDE_WORTH} That is provisional: nobody here has inspected it.` },
  { ...OURS, id: "beyond-repair", version: 5, place: "beyond", against: "cost", when: { ...EVEN_ODDS, is: { has: ["costs-more"], top: HARM_TO_USE } },
    text: "It is {beyond} that saving it is not worth the cost, set against what it may be worth today. That is provisional: nobody here has inspected it." },
  { ...OURS, id: "perhaps-not-worth-it-dear-clearly", version: 1, place: "beyond", against: "cost", when: { ...EVEN_ODDS, is: { has: ["costs-clearly-more"] }, not: COST_UNASKED },
    text: `Cleaning it may not be worth the money: ${COST_OVER_WORTH}` },
  { ...OURS, id: "perhaps-not-worth-it-dear-priced", version: 1, place: "beyond", against: "cost", when: { ...EVEN_ODDS, is: { has: ["costs-more"] }, not: COST_UNASKED },
    text: `Cleaning it may not be worth the money: ${COST_BESIDE_WORTH}` },
  { ...OURS, id: "perhaps-not-worth-it-dear", version: 2, place: "beyond", against: "cost", when: { ...EVEN_ODDS, is: { has: ["costs-more"] }, not: UNWEIGHED },
    text: "Cleaning it may not be worth the money: it may well cost more than the rug is worth today." },
  { ...OURS, id: "perhaps-not-worth-it-smell", version: 1, place: "beyond", against: "gain", when: { ...EVEN_ODDS, is: { has: ["only-smell"] } },
    text: "Cleaning it may not be worth the money: that hangs on how far the smell goes, and only an inspection could tell." },
  { ...OURS, id: "perhaps-not-worth-it-hangs", version: 1, place: "beyond", against: "worth", when: { ...EVEN_ODDS, is: { has: ["worth-overlaps"] } },
    text: "Cleaning it may not be worth the money: that hangs on how much comes back and on what the rug is worth today." },
  { ...OURS, id: "perhaps-not-worth-it", version: 3, place: "beyond", against: "gain", when: EVEN_ODDS,
    text: "Cleaning it may not be worth the money: that hangs on how much comes back, and only an inspection could tell." },
  { ...OURS, id: "costs-more-seen-clearly", version: 1, place: "beyond", against: "cost", when: { is: { inspection: ["not-beyond"], has: ["costs-clearly-more"] }, not: COST_UNASKED },
    text: `At about {clean}, cleaning costs more than the rug is worth today, very roughly {worthToday}: ${THEIRS_TO_DECIDE}` },
  { ...OURS, id: "costs-more-seen-priced", version: 1, place: "beyond", against: "cost", when: { is: COST_SEEN, not: COST_UNASKED },
    text: `At about {clean}, cleaning may still cost more than the rug is worth today, very roughly {worthToday}: ${THEIRS_TO_DECIDE}` },
  { ...OURS, id: "costs-more-seen", version: 1, place: "beyond", against: "cost", when: { is: COST_SEEN, not: COST_UNASKED },
    text: `Cleaning may still cost more than the rug is worth today: ${THEIRS_TO_DECIDE}` },
  { ...OURS, id: "costs-more-clearly", version: 1, place: "beyond", against: "cost", when: { is: { has: ["costs-clearly-more"] }, not: { ...COST_UNASKED, top: HARM_TO_USE }, below: HARDLY_WORTH },
    text: `At about {clean}, cleaning would by our estimates cost ${MORE_THAN_WORTH}` },
  { ...OURS, id: "costs-more-priced", version: 1, place: "beyond", against: "cost", when: { is: { has: ["costs-more"] }, not: { ...COST_UNASKED, top: HARM_TO_USE }, below: HARDLY_WORTH },
    text: `At about {clean}, cleaning may well cost ${MORE_THAN_WORTH}` },
  { ...OURS, id: "costs-more", version: 3, place: "beyond", against: "cost", when: { is: { has: ["costs-more"] }, not: { ...COST_UNASKED, top: HARM_TO_USE }, below: HARDLY_WORTH },
    text: "Cleaning may well cost more than the rug is worth today." },
  { ...OURS, id: "likely-worth-it", version: 1, place: "beyond", when: LIKELY_WORTH,
    text: "It is likely that cleaning it is worth its cost; that is provisional: nobody here has inspected it." },
  { ...OURS, id: "worth-asked-open-several", version: 1, place: "beyond", when: { ...WORTH_OPEN, is: { ...WORTH_OPEN.is, rugs: ["several"] } },
    text: "Whether it is worth it we cannot tell from here, and only an inspection could." },
  { ...OURS, id: "worth-asked-open", version: 1, place: "beyond", when: WORTH_OPEN,
    text: "You ask whether it is worth it: from here we cannot tell, and only an inspection could." },
];
