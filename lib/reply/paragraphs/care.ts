import { WASHING } from "../../trade/care";
import { DAMAGE_IDS } from "../../trade/damage";
import type { Condition } from "../condition";
import { BY_FIRM, ONCE_TREATED, TREATED } from "../treated-first";
import { VISCOSE_LIKE, WATER_SHY } from "../viscose-like";
import type { ParagraphRow } from "./row";
import { OURS, TRADE, WET_LYOCELL, WET_VISCOSE } from "./sources";
import { CLEANING, HARDLY_WORTH, INSPECTED, LITTLE, LOOKS, LOST_USE, MARKS, REPAIRS } from "./troubles";

/** What old latex suffers from: the methods of its caution in lib/trade/care.ts. */
const HARMS_LATEX = [...WASHING, "solvent-dry"];
const LATEX_WEAKENS = "It weakens with age, in water and in solvents, so we would look at the back before anything else.";
/** To others in the trade, and where nobody is to vacuum or touch it, nothing is said of living with it. */
const NOT_LIVED_WITH: Condition["not"] = { who: ["trade"], treated: ["mould"], incidents: ["flood"] };
/** Where a letter names no way of cleaning yet. */
const NOT_CLEANED_YET: Condition["not"] = { treated: TREATED, handled: ["dye-bleed"], age: ["antique"], incidents: ["flood"], who: ["trade"] };
/** Where it can only be advised against, hardly be worth it, or wait. */
const AT_ALL = "If it is cleaned at all, then {methods}, and only after a test in a hidden corner.";
const ALL_THE_SAME = "If it is cleaned all the same, then {methods}, and only after a test in a hidden corner.";
/** Where no way of cleaning is offered before a test. */
export const OPEN_UNTIL_TESTED = "How it could be cleaned stays open until a test in a hidden corner.";
const IF_ANYBODY_CLEANS = "If anybody cleans it, then only after a test in a hidden corner.";
const WHEN_NEEDED = "When it needs a clean, then {methods}, and only after a test in a hidden corner.";
/** A way of cleaning is named for a dry rug: one that is told to be wet dries first. */
const WET: Condition["is"] = { offered: CLEANING, wet: ["wet", "damp"] };
const AT_ALL_DRY = "Once it is dry, if it is cleaned at all, then {methods}, and only after a test in a hidden corner.";
const ALL_THE_SAME_DRY = "Once it is dry, if it is cleaned all the same, then {methods}, and only after a test in a hidden corner.";
/** What it lost is looks alone: nothing that takes its use, and no bare patch. */
const KEEPS_USE: Condition["not"] = { age: ["antique"], changes: ["bare", "spots"], incidents: ["vomit"], mechanisms: LOST_USE, inspection: ["beyond"] };
const KEPT: Condition["is"] = { advice: ["advise-claim-or-replacement"], top: LOOKS };
/** The years of a rug that something still lives in count only from when nothing does. */
const guessOnce = (once: string) => `Until we know the fibre, the life it has left is an open guess: {life} in ordinary use, once ${once}.`;
const onlyOnce = (once: string) => `Only once ${once} would we expect it to serve {life} more in ordinary use.`;
const A_NEW_ONE = "Should you think of replacing it, a new rug like it costs very roughly {replace}.";
const RATHER_NOT = "We would rather not take your money for cleaning it.";
const LOOKS_GONE = "What it has lost is looks and not use: you could well keep it as it is and spend nothing.";
const AS_LONG_AS = "you could use it as it is for as long as it serves, and spend nothing.";
const USED_UP = `It may not have many years left: ${AS_LONG_AS}`;
/** How long that may be, the range of its years says. */
const MONTHS_OR_YEARS = "You could use it as it is for as long as it serves, and spend nothing.";
const WE_PROPOSE = "We would propose cutting it down";
const AT_ONE_SIDE = "if an inspection finds the damage at one side or end, beside sound ground, it could be cut away and bound again";
const AT_ONE_SIDE_SEEN = "where the damage lies at one side or end, beside sound ground, it could be cut away and bound again";
const CUT_DOWN_SEEN: Condition["is"] = { advice: ["advise-cut-down"], inspection: INSPECTED };
const WILL_NOT_DO = "If it will not do as it is, we would think about replacing it.";

/** What has to be looked at first; what can be done and only after which test; what we will not do, and why; repair, cutting down, life left. */
export const CARE: readonly ParagraphRow[] = [
  { ...TRADE, id: "back-first-failing", version: 3, place: "back-first", when: { is: { handled: ["backing-failure"], offered: CLEANING }, not: NOT_CLEANED_YET },
    text: "Before anything else we would look at its back: it may not stand cleaning." },
  { ...TRADE, id: "back-first-named", version: 2, place: "back-first", when: { is: { has: ["latex-named"], offered: HARMS_LATEX }, not: NOT_CLEANED_YET },
    text: `By its label latex holds its back. ${LATEX_WEAKENS}` },
  { ...TRADE, id: "back-first", version: 3, place: "back-first", when: { is: { has: ["latex-back"], offered: HARMS_LATEX }, not: NOT_CLEANED_YET },
    text: `Latex seems to hold its back. ${LATEX_WEAKENS}` },

  { ...TRADE, id: "care-antique", version: 1, place: "care", when: { is: { age: ["antique"] } },
    text: "Please have a textile conservator see it before anyone cleans, mends or cuts it. If it is cleaned at all, then only after a test in a hidden corner." },
  { ...TRADE, id: "care-flood", version: 1, place: "care", when: { is: { has: ["flood-unseen"], offered: CLEANING } },
    text: "Whether it can be cleaned at all, the firm that sees to the flood has to say first; then only after a test in a hidden corner." },
  { ...TRADE, id: "care-mould", version: 1, place: "care", when: { is: { treated: ["mould"], offered: CLEANING } },
    text: `Whether it can be cleaned at all, ${BY_FIRM.mould} has to say first; then only after a test in a hidden corner.` },
  { ...TRADE, id: "care-insects", version: 2, place: "care", when: { is: { mechanisms: ["insects"], offered: CLEANING } },
    text: "Whether and how it could be cleaned is a matter for later, once no insects live in it, and only after a test in a hidden corner." },
  { ...TRADE, id: "care-flood-beyond", version: 1, place: "care", when: { is: { has: ["flood-seen"], inspection: ["beyond"], offered: CLEANING } },
    text: IF_ANYBODY_CLEANS },
  { ...TRADE, id: "care-flood-seen", version: 1, place: "care", when: { is: { has: ["flood-seen"], offered: CLEANING } },
    text: OPEN_UNTIL_TESTED },
  { ...TRADE, id: "care-dye", version: 2, place: "care", when: { is: { handled: ["dye-bleed"], offered: CLEANING } },
    text: OPEN_UNTIL_TESTED },
  { ...TRADE, id: "care-shrunk", version: 2, place: "care", when: { is: { handled: ["shrinkage"], offered: WASHING } },
    text: OPEN_UNTIL_TESTED },
  { ...TRADE, id: "care-trade-wet", version: 1, place: "care", when: { is: { offered: CLEANING, who: ["trade"], wet: ["wet", "damp"] } },
    text: "How it could be cleaned stays open until it is dry, and then until a test in a hidden corner." },
  { ...TRADE, id: "care-trade", version: 1, place: "care", when: { is: { offered: CLEANING, who: ["trade"] } },
    text: OPEN_UNTIL_TESTED },
  { ...OURS, id: "care-unjudged", version: 1, place: "care", when: { is: { has: ["trouble-unjudged"], offered: CLEANING }, not: { top: DAMAGE_IDS } },
    text: "How it could be cleaned stays open until we know more, and then until a test in a hidden corner." },
  { ...TRADE, id: "care-unknown", version: 1, place: "care", when: { is: { offered: CLEANING, certainty: ["unknown"] } },
    text: "Whatever it turns out to be, we clean nothing before a test in a hidden corner." },
  { ...TRADE, id: "care-not-ours", version: 1, place: "care", when: { is: { offered: CLEANING, advice: ["not-our-work"] } },
    text: IF_ANYBODY_CLEANS },
  { ...TRADE, id: "care-reluctant-wet", version: 1, place: "care", when: { is: { ...WET, advice: ["advise-cut-down", "advise-claim-or-replacement", "refer"] } },
    text: AT_ALL_DRY },
  { ...TRADE, id: "care-reluctant", version: 2, place: "care", when: { is: { offered: CLEANING, advice: ["advise-cut-down", "advise-claim-or-replacement", "refer"] } },
    text: AT_ALL },
  { ...TRADE, id: "care-repair-wet", version: 1, place: "care", when: { is: { ...WET, top: REPAIRS }, not: { has: ["improvement"] } },
    text: AT_ALL_DRY },
  { ...TRADE, id: "care-repair", version: 1, place: "care", when: { is: { offered: CLEANING, top: REPAIRS }, not: { has: ["improvement"] } },
    text: AT_ALL },
  { ...TRADE, id: "care-doubtful-said-wet", version: 1, place: "care", when: { is: { offered: CLEANING, has: ["said-wet"] }, atLeast: HARDLY_WORTH },
    text: AT_ALL },
  { ...TRADE, id: "care-little-said-wet", version: 1, place: "care", when: { is: { offered: CLEANING, has: ["said-wet"] }, not: { advice: ["leave-alone", "ask-for-more"] }, below: LITTLE },
    text: AT_ALL },
  { ...TRADE, id: "care-doubtful-wet", version: 1, place: "care", when: { is: WET, atLeast: HARDLY_WORTH },
    text: ALL_THE_SAME_DRY },
  { ...TRADE, id: "care-doubtful", version: 1, place: "care", when: { is: { offered: CLEANING }, atLeast: HARDLY_WORTH },
    text: ALL_THE_SAME },
  { ...TRADE, id: "care-little-wet", version: 1, place: "care", when: { is: { ...WET, has: ["little-hope"] }, not: { advice: ["leave-alone", "ask-for-more"] } },
    text: ALL_THE_SAME_DRY },
  { ...TRADE, id: "care-little", version: 1, place: "care", when: { is: { offered: CLEANING, has: ["little-hope"] }, not: { advice: ["leave-alone", "ask-for-more"] } },
    text: ALL_THE_SAME },
  { ...TRADE, id: "care-later-wet", version: 1, place: "care", when: { is: { ...WET, advice: ["leave-alone", "ask-for-more"] } },
    text: "Once it is dry and needs a clean, then {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care-asked", version: 1, place: "care", when: { is: { offered: CLEANING, advice: ["ask-for-more"] }, not: { urgency: ["can-wait"] } },
    text: "If we clean it, then {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care-later", version: 1, place: "care", when: { is: { offered: CLEANING, advice: ["leave-alone", "ask-for-more"] } },
    text: WHEN_NEEDED },
  { ...TRADE, id: "care-unasked", version: 1, place: "care", when: { is: { offered: CLEANING, top: ["soil-only"], reason: ["what-is-it", "mis-sold"], urgency: ["can-wait"] } },
    text: WHEN_NEEDED },
  { ...TRADE, id: "care-wet", version: 1, place: "care", when: { is: WET },
    text: "Once it is dry, we would clean it {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care", version: 1, place: "care", when: { is: { offered: CLEANING } },
    text: "We would clean it {methods}, and only after a test in a hidden corner." },
  { ...TRADE, id: "care-none", version: 1, place: "care", when: { is: { ruledOut: CLEANING } },
    text: "There is no way of cleaning it that we would put our name to." },

  { ...TRADE, id: "dye-test", version: 2, place: "dye-test", when: { is: { handled: ["dye-bleed"], offered: WASHING } },
    text: "Where a dye has run, that is a dye test of each colour: if any comes off on a damp white cloth, no water goes on the rug." },

  { ...WET_LYOCELL, id: "refuse-wet-lyocell", version: 2, place: "refuse", when: { is: { ruledOut: WASHING, leading: ["lyocell"] }, not: { certainty: ["unknown", "open"], who: ["trade"] } },
    text: "We will not wash it, and please do not clean it {atHome}: where this fibre is rubbed while it is wet, its surface splits and frays." },
  { ...WET_LYOCELL, id: "refuse-wet-lyocell-trade", version: 1, place: "refuse", when: { is: { ruledOut: WASHING, who: ["trade"], leading: ["lyocell"] } },
    text: "We would not wet it again: where this fibre is rubbed while it is wet, its surface splits and frays." },
  { ...WET_VISCOSE, id: "refuse-wet-viscose", version: 3, place: "refuse", when: { is: { ruledOut: WASHING, leading: VISCOSE_LIKE }, not: { certainty: ["unknown", "open"], who: ["trade"] } },
    text: "We will not wash it, and please do not clean it {atHome}: in water this fibre can burst, mat and turn brown." },
  { ...WET_VISCOSE, id: "refuse-wet-fibre", version: 2, place: "refuse", when: { is: { ruledOut: WASHING, leading: WATER_SHY }, not: { certainty: ["unknown", "open"], who: ["trade"] } },
    text: "We will not wash it, and please do not clean it {atHome}: this fibre grows weak in water." },
  { ...WET_VISCOSE, id: "refuse-wet-trade", version: 2, place: "refuse", when: { is: { ruledOut: WASHING, who: ["trade"], leading: VISCOSE_LIKE } },
    text: "We would not wet it again: in water viscose grows weak, and can burst, mat and turn brown." },
  { ...WET_VISCOSE, id: "refuse-wet-trade-fibre", version: 1, place: "refuse", when: { is: { ruledOut: WASHING, who: ["trade"], leading: WATER_SHY } },
    text: "We would not wet it again: this fibre grows weak in water." },
  { ...WET_VISCOSE, id: "refuse-wet-trade-perhaps", version: 1, place: "refuse", when: { is: { ruledOut: WASHING, who: ["trade"] }, atLeast: { waterShy: 0.2 } },
    text: "As long as it may hold viscose, we would not wet it again: in water that fibre grows weak, and can burst, mat and turn brown." },
  { ...TRADE, id: "refuse-wet-trade-jute", version: 1, place: "refuse", when: { is: { ruledOut: WASHING, who: ["trade"], leading: ["hard-fibre"] } },
    text: "We would not wet it again: water leaves brown rings in plant fibres like this." },
  { ...TRADE, id: "refuse-wet-trade-plain", version: 1, place: "refuse", when: { is: { ruledOut: WASHING, who: ["trade"] } },
    text: "We would not wet it again." },
  { ...WET_VISCOSE, id: "refuse-wet-perhaps", version: 3, place: "refuse", when: { is: { ruledOut: WASHING }, atLeast: { waterShy: 0.2 } },
    text: "As long as it may hold viscose, we will not wash it, and please do not clean it {atHome}: in water that fibre can burst, mat and turn brown." },
  { ...TRADE, id: "refuse-wet-jute", version: 2, place: "refuse", when: { is: { ruledOut: WASHING, leading: ["hard-fibre"] } },
    text: "We will not wash it, and please do not clean it {atHome}: water leaves brown rings in plant fibres like this." },
  { ...TRADE, id: "refuse-wet", version: 2, place: "refuse", when: { is: { ruledOut: WASHING } },
    text: "We will not wash it, and please do not clean it {atHome}." },
  { ...TRADE, id: "refuse-home-again", version: 2, place: "refuse", when: { is: { ruledOut: ["at-home"], has: ["cleaned-home"] }, not: { who: ["trade"] } },
    text: "Please do not clean it again at home: that sets more marks than it takes out." },
  { ...TRADE, id: "refuse-home", version: 3, place: "refuse", when: { is: { ruledOut: ["at-home"] }, not: { who: ["trade"], incidents: ["flood"] } },
    text: "Please do not clean it at home: a machine, a hose or a spray is how most harm is done." },
  { ...TRADE, id: "refuse-home-label", version: 4, place: "refuse", when: { not: { ruledOut: ["at-home"], who: ["trade"], certainty: ["unknown", "open"], treated: TREATED, mechanisms: ["bleaching"], handled: ["dye-bleed", "backing-failure", "shrinkage"], wet: ["wet", "damp"], incidents: ["flood"], has: ["first-aid", "aid-known"] }, atLeast: LITTLE },
    text: "At home, do only what the maker’s own care label allows, and try it in a corner first." },

  { ...TRADE, id: "refuse-home-mark", version: 2, place: "refuse", when: { is: { mechanisms: MARKS }, not: { who: ["trade"], treated: ["mould"], wet: ["wet", "damp"], incidents: ["flood"] } },
    text: "Please do not clean it {atHome}: what is put on a mark can set it, or take the colour out." },

  { ...OURS, id: "worse", version: 2, place: "worse", when: { is: { offered: CLEANING }, not: { age: ["antique"], certainty: ["unknown"] }, atLeast: { worse: 0.1 } },
    text: "There is a real chance, {worse}, that cleaning makes it worse." },

  { ...TRADE, id: "cut-down-seen-planned", version: 1, place: "cut-down", when: { is: { ...CUT_DOWN_SEEN, has: ["cut-down-way"] }, not: { age: ["antique"] } },
    text: `${WE_PROPOSE}, on a plan drawn from the photo: {cutWay}, where the ground beside the damage is sound. It would cost about {cutDown}, confirmed before anything is cut.` },
  { ...TRADE, id: "cut-down-seen-priced", version: 1, place: "cut-down", when: { is: { ...CUT_DOWN_SEEN, has: ["cut-down-price"] }, not: { age: ["antique"] } },
    text: `${WE_PROPOSE}: ${AT_ONE_SIDE_SEEN}, for about {cutDown}.` },
  { ...TRADE, id: "cut-down-seen", version: 1, place: "cut-down", when: { is: CUT_DOWN_SEEN, not: { age: ["antique"] } },
    text: `${WE_PROPOSE}: ${AT_ONE_SIDE_SEEN}.` },
  { ...TRADE, id: "cut-down-planned", version: 3, place: "cut-down", when: { is: { advice: ["advise-cut-down"], has: ["cut-down-way"] }, not: { age: ["antique"] } },
    text: `${WE_PROPOSE}, on a plan drawn from the photo: {cutWay}, if an inspection finds sound ground beside the damage. It would cost about {cutDown}, confirmed when we have seen it.` },
  { ...TRADE, id: "cut-down-priced", version: 5, place: "cut-down", when: { is: { advice: ["advise-cut-down"], has: ["cut-down-price"] }, not: { age: ["antique"] } },
    text: `${WE_PROPOSE}: ${AT_ONE_SIDE}, for about {cutDown}.` },
  { ...TRADE, id: "cut-down", version: 4, place: "cut-down", when: { is: { advice: ["advise-cut-down"] }, not: { age: ["antique"] } },
    text: `${WE_PROPOSE}: ${AT_ONE_SIDE}.` },
  { ...OURS, id: "keep-months-or-years-priced", version: 3, place: "repair", when: { is: { ...KEPT, has: ["months-or-years"] }, not: KEEPS_USE },
    text: `${MONTHS_OR_YEARS} ${A_NEW_ONE}` },
  { ...OURS, id: "keep-months-or-years", version: 3, place: "repair", when: { is: { ...KEPT, has: ["months-or-years"] }, not: KEEPS_USE },
    text: MONTHS_OR_YEARS },
  { ...OURS, id: "keep-short-priced", version: 2, place: "repair", when: { is: { ...KEPT, has: ["short-life"] }, not: KEEPS_USE },
    text: `${USED_UP} ${A_NEW_ONE}` },
  { ...OURS, id: "keep-short", version: 2, place: "repair", when: { is: { ...KEPT, has: ["short-life"] }, not: KEEPS_USE },
    text: USED_UP },
  { ...OURS, id: "keep-priced", version: 4, place: "repair", when: { is: { ...KEPT, has: ["replace-price"] }, not: KEEPS_USE },
    text: `${LOOKS_GONE} If that will not do, a new rug like it costs very roughly {replace}.` },
  { ...OURS, id: "keep", version: 4, place: "repair", when: { is: KEPT, not: KEEPS_USE },
    text: LOOKS_GONE },
  { ...OURS, id: "replace-priced", version: 6, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], has: ["little-hope"] }, not: { age: ["antique"] }, atLeast: HARDLY_WORTH },
    text: A_NEW_ONE },
  { ...OURS, id: "replace", version: 6, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], has: ["little-hope"] }, not: { age: ["antique"] }, atLeast: HARDLY_WORTH },
    text: WILL_NOT_DO },
  { ...OURS, id: "replace-dear-priced", version: 2, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], has: ["costs-more"] }, not: { age: ["antique"] }, atLeast: HARDLY_WORTH },
    text: `${RATHER_NOT} ${A_NEW_ONE}` },
  { ...OURS, id: "replace-dear", version: 2, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], has: ["costs-more"] }, not: { age: ["antique"] }, atLeast: HARDLY_WORTH },
    text: `${RATHER_NOT} ${WILL_NOT_DO}` },
  { ...OURS, id: "replace-seen-priced", version: 1, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], inspection: INSPECTED }, not: { age: ["antique"] } },
    text: A_NEW_ONE },
  { ...OURS, id: "replace-seen", version: 1, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"], inspection: INSPECTED }, not: { age: ["antique"] } },
    text: WILL_NOT_DO },
  { ...OURS, id: "replace-doubtful", version: 1, place: "repair", when: { is: { advice: ["advise-claim-or-replacement"] }, not: { age: ["antique"] } },
    text: "Please do not spend money on cleaning before someone has seen it and told you what it can gain." },

  { ...TRADE, id: "living-viscose", version: 2, place: "living", when: { is: { reason: ["what-is-it", "mis-sold"], leading: WATER_SHY }, not: { ...NOT_LIVED_WITH, certainty: ["unknown"] } },
    text: "To live with it, vacuum gently without a beater, keep water and every product off it, and press spills dry with a plain white cloth." },
  { ...TRADE, id: "living", version: 2, place: "living", when: { is: { reason: ["what-is-it"], advice: ["leave-alone"] }, not: NOT_LIVED_WITH },
    text: "To live with it, vacuum gently, turn it round now and then, and press spills dry with a plain white cloth." },

  { ...TRADE, id: "life-mould-insects-unknown", version: 1, place: "life", when: { is: { life: ["both"], has: ["mould-and-insects"], certainty: ["unknown", "open"] }, not: { age: ["antique"] } },
    text: guessOnce(ONCE_TREATED.both) },
  { ...TRADE, id: "life-mould-unknown", version: 1, place: "life", when: { is: { life: ["both"], treated: ["mould"], certainty: ["unknown", "open"] }, not: { age: ["antique"] } },
    text: guessOnce(ONCE_TREATED.mould) },
  { ...TRADE, id: "life-insects-unknown", version: 1, place: "life", when: { is: { life: ["both"], mechanisms: ["insects"], certainty: ["unknown", "open"] }, not: { age: ["antique"] } },
    text: guessOnce(ONCE_TREATED.insects) },
  { ...OURS, id: "life-unknown", version: 2, place: "life", when: { is: { life: ["both"], certainty: ["unknown", "open"] }, not: { age: ["antique"] } },
    text: "Until we know the fibre, the life it has left is an open guess: {life} in ordinary use." },
  { ...OURS, id: "life-unknown-wide", version: 2, place: "life", when: { is: { life: ["at-least", "at-most", "nothing"], certainty: ["unknown", "open"] }, not: { age: ["antique"] } },
    text: "How long it will serve depends on the fibre, so we would rather give no number of years yet." },
  { ...OURS, id: "life-wide", version: 2, place: "life", when: { is: { life: ["nothing"] }, not: { age: ["antique"] } },
    text: "How many years it has left we cannot tell: it could be few or many." },
  { ...TRADE, id: "life-mould-insects", version: 1, place: "life", when: { is: { has: ["mould-and-insects"] }, not: { age: ["antique"] } },
    text: onlyOnce(ONCE_TREATED.both) },
  { ...TRADE, id: "life-mould", version: 1, place: "life", when: { is: { treated: ["mould"] }, not: { age: ["antique"] } },
    text: onlyOnce(ONCE_TREATED.mould) },
  { ...TRADE, id: "life-insects", version: 1, place: "life", when: { is: { mechanisms: ["insects"] }, not: { age: ["antique"] } },
    text: onlyOnce(ONCE_TREATED.insects) },
  { ...OURS, id: "life-as-it-is", version: 1, place: "life", when: { is: { has: ["hardly-worth"] }, not: { age: ["antique"] } },
    text: "As it is now, and in ordinary use, we would expect it to serve {life} more." },
  { ...OURS, id: "life-at-least", version: 5, place: "life", when: { is: { life: ["at-least"] }, not: { age: ["antique"], inspection: INSPECTED } },
    text: "In ordinary use we would expect it to serve {life} more; from here we cannot tell it closer." },
  { ...OURS, id: "life", version: 3, place: "life", when: { not: { age: ["antique"] } },
    text: "In ordinary use we would expect it to serve {life} more." },
];
