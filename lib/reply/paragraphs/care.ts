import { VISCOSE_LIKE, WATER_SHY } from "../facts";
import type { ParagraphRow } from "./row";
import { OURS, TRADE, WET_LYOCELL, WET_VISCOSE } from "./sources";
import { HARDLY_WORTH, LOOKS } from "./troubles";

/** Cleaning costs what the rug is worth, or gains little. */
const NOT_WORTH_IT = ["costs-more", "little-hope"];
const WET = ["immersion-wash", "wet-hand-clean"];
const CLEANING = ["immersion-wash", "wet-hand-clean", "low-moisture", "solvent-dry"];

/** What can be done and only after which test; what we will not do, and why; repair, cutting down, life left. */
export const CARE: readonly ParagraphRow[] = [
  { ...TRADE, id: "care-antique", version: 1, place: "care", when: { is: { age: ["antique"] } },
    text: "Please have a textile conservator see it before anyone cleans, mends or cuts it. If it is cleaned at all, then only after a test in a hidden corner." },
  { ...TRADE, id: "care-flood", version: 1, place: "care", when: { is: { incidents: ["flood"], offered: CLEANING } },
    text: "Whether it can be cleaned at all, the firm that sees to the flood has to say first; then only after a test in a hidden corner." },
  { ...TRADE, id: "care-unknown", version: 1, place: "care", when: { is: { offered: CLEANING, certainty: ["unknown"] } },
    text: "Whatever it turns out to be, we clean nothing before a test in a hidden corner." },
  { ...TRADE, id: "care-reluctant", version: 1, place: "care", when: { is: { offered: CLEANING, advice: ["advise-cut-down", "advise-claim-or-replacement", "not-our-work", "refer"] } },
    text: "If it is cleaned at all, then {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care-doubtful", version: 1, place: "care", when: { is: { offered: CLEANING }, atLeast: HARDLY_WORTH },
    text: "If it is cleaned all the same, then {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care-later", version: 1, place: "care", when: { is: { offered: CLEANING, advice: ["leave-alone", "ask-for-more"] } },
    text: "When it needs a clean, then {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care", version: 1, place: "care", when: { is: { offered: CLEANING } },
    text: "We would clean it {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care-none", version: 1, place: "care", when: { is: { ruledOut: CLEANING } },
    text: "There is no way of cleaning it that we would put our name to." },

  { ...TRADE, id: "dye-test", version: 1, place: "dye-test", when: { is: { mechanisms: ["dye-bleed"], offered: WET } },
    text: "Where a dye has run, that is a dye test of each colour: if any comes off on a damp white cloth, no water goes on the rug." },

  { ...WET_LYOCELL, id: "refuse-wet-lyocell", version: 1, place: "refuse", when: { is: { ruledOut: WET, leading: ["lyocell"] }, not: { certainty: ["unknown", "open"], who: ["trade"] } },
    text: "We will not wash it, and please do not clean it at home: where this fibre is rubbed while it is wet, its surface splits and frays." },
  { ...WET_LYOCELL, id: "refuse-wet-lyocell-trade", version: 1, place: "refuse", when: { is: { ruledOut: WET, who: ["trade"], leading: ["lyocell"] } },
    text: "We would not wet it again: where this fibre is rubbed while it is wet, its surface splits and frays." },
  { ...WET_VISCOSE, id: "refuse-wet-viscose", version: 1, place: "refuse", when: { is: { ruledOut: WET, leading: WATER_SHY }, not: { certainty: ["unknown", "open"], who: ["trade"] } },
    text: "We will not wash it, and please do not clean it at home: in water this fibre grows weak, and can burst, mat and turn brown." },
  { ...WET_VISCOSE, id: "refuse-wet-trade", version: 2, place: "refuse", when: { is: { ruledOut: WET, who: ["trade"], leading: VISCOSE_LIKE } },
    text: "We would not wet it again: in water viscose grows weak, and can burst, mat and turn brown." },
  { ...WET_VISCOSE, id: "refuse-wet-trade-fibre", version: 1, place: "refuse", when: { is: { ruledOut: WET, who: ["trade"], leading: WATER_SHY } },
    text: "We would not wet it again: this fibre grows weak in water." },
  { ...WET_VISCOSE, id: "refuse-wet-trade-perhaps", version: 1, place: "refuse", when: { is: { ruledOut: WET, who: ["trade"] }, atLeast: { waterShy: 0.2 } },
    text: "As long as it may hold viscose, we would not wet it again: in water that fibre grows weak, and can burst, mat and turn brown." },
  { ...WET_VISCOSE, id: "refuse-wet-perhaps", version: 1, place: "refuse", when: { is: { ruledOut: WET }, atLeast: { waterShy: 0.2 } },
    text: "As long as it may hold viscose, we will not wash it, and please do not clean it at home: in water that fibre grows weak, and can burst, mat and turn brown." },
  { ...TRADE, id: "refuse-wet-jute", version: 1, place: "refuse", when: { is: { ruledOut: WET, leading: ["hard-fibre"] } },
    text: "We will not wash it, and please do not clean it at home: water leaves brown rings in plant fibres like this." },
  { ...TRADE, id: "refuse-wet", version: 1, place: "refuse", when: { is: { ruledOut: WET } },
    text: "We will not wash it, and please do not clean it at home." },
  { ...TRADE, id: "refuse-home-again", version: 1, place: "refuse", when: { is: { ruledOut: ["at-home"], incidents: ["washed-home"] }, not: { who: ["trade"] } },
    text: "Please do not clean it again at home: that sets more marks than it takes out." },
  { ...TRADE, id: "refuse-home", version: 2, place: "refuse", when: { is: { ruledOut: ["at-home"] }, not: { who: ["trade"], incidents: ["flood"] } },
    text: "Please do not clean it at home: a machine or a spray is how most harm is done." },
  { ...TRADE, id: "refuse-home-label", version: 1, place: "refuse", when: { not: { ruledOut: ["at-home"], who: ["trade"], certainty: ["unknown", "open"], mechanisms: ["mould"], wet: ["wet", "damp"] }, atLeast: { improvementHigh: 25 } },
    text: "At home, do only what the maker’s own care label allows, and try it in a corner first." },

  { ...OURS, id: "worse", version: 1, place: "worse", when: { is: { offered: CLEANING }, not: { age: ["antique"], certainty: ["unknown"] }, atLeast: { worse: 0.1 } },
    text: "There is a real chance, {worse}, that cleaning makes it worse." },

  { ...TRADE, id: "cut-down-priced", version: 3, place: "repair", when: { is: { advice: ["advise-cut-down"], has: ["cut-down-price"] }, not: { age: ["antique"] } },
    text: "If an inspection finds the damage at one side or end, and sound ground beside it, it could be cut away and bound again, for {cutDown}." },
  { ...TRADE, id: "cut-down", version: 3, place: "repair", when: { is: { advice: ["advise-cut-down"] }, not: { age: ["antique"] } },
    text: "If an inspection finds the damage at one side or end, and sound ground beside it, it could be cut away and bound again." },
  { ...OURS, id: "keep-priced", version: 1, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], top: LOOKS, has: ["replace-price"] }, not: { age: ["antique"] } },
    text: "What it has lost is looks and not use: you could well keep it as it is and spend nothing. If that will not do, a new rug like it costs very roughly {replace}." },
  { ...OURS, id: "keep", version: 1, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], top: LOOKS }, not: { age: ["antique"] } },
    text: "What it has lost is looks and not use: you could well keep it as it is and spend nothing." },
  { ...OURS, id: "replace-priced", version: 4, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], has: NOT_WORTH_IT }, not: { age: ["antique"] }, atLeast: HARDLY_WORTH },
    text: "A new rug like it costs very roughly {replace}." },
  { ...OURS, id: "replace", version: 4, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], has: NOT_WORTH_IT }, not: { age: ["antique"] }, atLeast: HARDLY_WORTH },
    text: "We would think about replacing it." },
  { ...OURS, id: "replace-doubtful", version: 1, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"] }, not: { age: ["antique"] } },
    text: "Please do not spend money on cleaning before someone has seen it and told you what it can gain." },

  { ...TRADE, id: "living-viscose", version: 1, place: "living", when: { is: { reason: ["what-is-it", "mis-sold"], leading: WATER_SHY }, not: { who: ["trade"], certainty: ["unknown"] } },
    text: "To live with it, vacuum gently without a beater, keep water and every product off it, and press spills dry with a plain white cloth." },
  { ...TRADE, id: "living", version: 1, place: "living", when: { is: { reason: ["what-is-it"], advice: ["leave-alone"] }, not: { who: ["trade"] } },
    text: "To live with it, vacuum gently, turn it round now and then, and press spills dry with a plain white cloth." },

  { ...OURS, id: "life-unknown", version: 2, place: "life", when: { is: { life: ["both"], certainty: ["unknown", "open"] }, not: { age: ["antique"] } },
    text: "Until we know the fibre, the life it has left is an open guess: {life} in ordinary use." },
  { ...OURS, id: "life-unknown-wide", version: 1, place: "life", when: { is: { life: ["at-least", "at-most", "nothing"], certainty: ["unknown", "open"] }, not: { age: ["antique"] } },
    text: "How long it will serve hangs on the fibre, so we would rather give no number of years yet." },
  { ...OURS, id: "life-at-least", version: 2, place: "life", when: { is: { life: ["at-least"] }, not: { age: ["antique"] } },
    text: "In ordinary use we would expect it to serve at least {lifeLow} more; how many beyond that, photos cannot tell." },
  { ...OURS, id: "life-at-most", version: 1, place: "life", when: { is: { life: ["at-most"] }, not: { age: ["antique"] } },
    text: "In ordinary use we doubt that it has more than {lifeHigh} left, and it may be far less." },
  { ...OURS, id: "life-wide", version: 1, place: "life", when: { is: { life: ["nothing"] }, not: { age: ["antique"] } },
    text: "How many years it has left we cannot tell from here: it could be few or many." },
  { ...OURS, id: "life", version: 3, place: "life", when: { is: { life: ["both"] }, not: { age: ["antique"] } },
    text: "In ordinary use we would expect it to serve {life} more." },
];
