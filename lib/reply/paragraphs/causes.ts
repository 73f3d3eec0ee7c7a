import { CHANGE_IDS, DAMAGE_IDS, HANDLED_AS, type ChangeId, type MechanismId } from "../../trade/damage";
import { FIRST_AID } from "../../trade/first-aid";
import type { Condition } from "../condition";
import { WATER_SHY } from "../viscose-like";
import type { ParagraphRow } from "./row";
import { BROWN_LINES, OURS, TRADE, WET_VISCOSE } from "./sources";

/** Where one of these is likely, what the brown may be is said with its chance. */
const BROWNINGS: readonly MechanismId[] = ["browning-cleaning", "browning-use"];
/** “The brown” is called so only where they told us of one. */
const BROWNER: readonly ChangeId[] = ["browner"];
const BROWN_DRIES = "It is {chance} that the brown comes with drying: water draws brown matter up the pile.";
const DRAWN_UP = "It is {chance} that water has drawn brown matter up the pile, where it shows as it dries.";
const LONGER = "The longer it stays, the harder it is to move.";
/** Haste would gain nothing, or too little. */
const UNHURRIED: readonly string[] = ["no-haste", "little-hope"];
/** They told us of urine within the week: that is said beside whatever is likelier. */
const TOLD_FRESH: Condition = { is: { has: ["urine-told-fresh"] } };
/** How an owner says it changed: the first thing they ask about is not left out for what is likelier, nor for length. */
const toldBy = (change: ChangeId): Condition => ({ is: { changes: [change] }, not: { who: ["trade"] } });
/** They told us of a change that nothing likely explains: it is not passed over for length; beside first aid it waits for the next letter. */
const TOLD_OTHER = { is: { has: ["change-unexplained"] }, not: { who: ["trade"] } } satisfies Condition;
const TOLD_BARE = { is: { changes: ["bare"] }, not: { who: ["trade"] } } satisfies Condition;
/** They told us of moths or beetles, which do not eat every pile: beside bare patches, or where they have likely fed on it, that is said otherwise. */
const TOLD_INSECTS = { is: { incidents: ["insects"] }, not: { who: ["trade"] } } satisfies Condition;
/** First aid comes before what is only told. */
const AIDED: readonly string[] = ["first-aid", "aid-known"];
const NOT_TOLD_BARE = { mechanisms: ["insects"], incidents: ["flood"], has: AIDED } satisfies Condition["not"];
const NOT_TOLD_INSECTS = { ...NOT_TOLD_BARE, changes: ["bare"] } satisfies Condition["not"];
const BARE = "The bare patches may be eaten by moths or beetles, or worn through: we cannot tell which, and either is a matter for repair.";
/** What is handled as the work of one cause, once told, is not called soil beside that. */
const HANDLED = CHANGE_IDS.filter((id) => Object.hasOwn(HANDLED_AS, id));
/** Changes of the colour or the pile that somebody has seen. */
const SEEN_CHANGES = ["browner", "ring", "paler", "faded", "ran", "stiff", "rough", "spots", "bare", "flat"] as const satisfies readonly ChangeId[];
/** Said where no paragraph with its chance is: it is small, or too little comes back for “sooner is better”. */
const URINE_COUNTS = "The urine you told us of counts too: as it dries it sets, and it can change the dye.";

const URINE_CHANGED = "It is {chance} that urine has changed the dye or the fibre itself.";

/** Insects that eat wool eat what is made of it, whatever this pile is of. */
const APART = "apart from anything made of wool";
const LOOKED_AT = "until somebody has looked";
/** What people are told where it is likely, or was told; a letter in a person's own words has to say as much. */
export const CAUTION_WORDS = {
  flood: "Flood and waste water can make you ill. Please let nobody touch the rug, not even to blot it, and ask a flood-damage firm to see to the room first.",
  mould: FIRST_AID.mould,
  /** Who mends the holes is left open: it may be no work of ours. */
  insects: `Please use no insecticide. Keep the rug dry and ${APART}, in a closed bag, and have a pest control firm look at the room; the holes come after that.`,
  /** Nobody puts a rug into a bag that may be wet, or that nobody is to handle: that comes later. */
  insectsLater: `Please use no insecticide. Once it is dry and may be handled, keep it ${APART}, in a closed bag; a pest control firm sees to the room, and the holes come after that.`,
} as const;

/** It may be wet, or nobody is to handle it: it is moved nowhere, and goes into no closed bag, before. */
const NOT_MOVED_YET: readonly string[] = ["not-handled", "wet-unknown"];

/** What has happened: what is dangerous first, the rest by its probability. {chance} is the assessment's probability of the row's mechanism in words. */
export const CAUSES: readonly ParagraphRow[] = [
  { ...TRADE, id: "cause-flood", version: 3, place: "safety", when: { is: { incidents: ["flood"] }, not: { has: AIDED } },
    text: CAUTION_WORDS.flood },
  { ...TRADE, id: "cause-mould", version: 3, place: "safety", when: { is: { mechanisms: ["mould"], changes: ["spots"] } }, about: "mould",
    text: `It is {chance} that the spots are mould. ${CAUTION_WORDS.mould}` },
  { ...TRADE, id: "cause-mould-told", version: 2, place: "safety", when: { is: { changes: ["spots"] }, not: { mechanisms: ["mould"] } },
    text: "Furry or black spots may be mould, which can harm your health: please do not touch, brush or vacuum them, and keep everybody out of the room, children and anyone with weak lungs above all." },
  { ...TRADE, id: "cause-mould-unseen", version: 2, place: "safety", when: { is: { mechanisms: ["mould"] }, not: { changes: ["spots"] } }, about: "mould",
    text: `It is {chance} that mould grows in it. ${CAUTION_WORDS.mould}` },
  { ...TRADE, id: "cause-insects-later", version: 4, place: "safety", when: { is: { mechanisms: ["insects"], has: NOT_MOVED_YET } }, about: "insects",
    text: `It is {chance} that insects have fed on it. ${CAUTION_WORDS.insectsLater}` },
  { ...TRADE, id: "cause-insects", version: 5, place: "safety", when: { is: { mechanisms: ["insects"] }, not: { has: NOT_MOVED_YET } }, about: "insects",
    text: `It is {chance} that insects have fed on it. ${CAUTION_WORDS.insects}` },
  { ...TRADE, id: "cause-bleaching", version: 1, place: "cause", when: { is: { mechanisms: ["bleaching"] } }, about: "bleaching",
    text: "It is {chance} that something put on it took the colour out. Lost colour rarely comes back, whatever is done." },
  { ...WET_VISCOSE, id: "cause-distortion-open", version: 1, place: "cause", told: toldBy("stiff"), when: { is: { mechanisms: ["pile-distortion"], leading: WATER_SHY, certainty: ["unknown", "open"] } }, about: "pile-distortion",
    text: "It is {chance} that the pile was pushed out of shape where it got wet. If it holds viscose, it seldom lies right again." },
  { ...WET_VISCOSE, id: "cause-distortion-viscose", version: 2, place: "cause", told: toldBy("stiff"), when: { is: { mechanisms: ["pile-distortion"], leading: WATER_SHY }, not: { certainty: ["unknown", "open"] } }, about: "pile-distortion",
    text: "It is {chance} that the pile burst or matted where it got wet. This fibre seldom lies right again." },
  { ...TRADE, id: "cause-distortion", version: 1, place: "cause", told: toldBy("stiff"), when: { is: { mechanisms: ["pile-distortion"] }, not: { leading: WATER_SHY } }, about: "pile-distortion",
    text: "It is {chance} that the pile was pushed out of shape where it was wet or rubbed." },
  { ...BROWN_LINES, id: "cause-browning-cleaning-unseen", version: 1, place: "cause", when: { is: { mechanisms: ["browning-cleaning"] }, not: { changes: BROWNER, has: UNHURRIED } }, about: "browning-cleaning",
    text: `${DRAWN_UP} ${LONGER}` },
  { ...BROWN_LINES, id: "cause-browning-cleaning-unseen-unhurried", version: 1, place: "cause", when: { is: { mechanisms: ["browning-cleaning"], has: UNHURRIED }, not: { changes: BROWNER } }, about: "browning-cleaning",
    text: DRAWN_UP },
  { ...BROWN_LINES, id: "cause-browning-cleaning", version: 7, place: "cause", told: toldBy("browner"), when: { is: { mechanisms: ["browning-cleaning"], changes: BROWNER }, not: { has: UNHURRIED } }, about: "browning-cleaning",
    text: `${BROWN_DRIES} ${LONGER}` },
  { ...BROWN_LINES, id: "cause-browning-cleaning-unhurried", version: 5, place: "cause", told: toldBy("browner"), when: { is: { mechanisms: ["browning-cleaning"], changes: BROWNER, has: UNHURRIED } }, about: "browning-cleaning",
    text: BROWN_DRIES },
  { ...BROWN_LINES, id: "cause-browning-use", version: 2, place: "cause", told: toldBy("browner"), when: { is: { mechanisms: ["browning-use"] } }, about: "browning-use",
    text: "It is {chance} that damp in daily use has browned the pile." },
  { ...TRADE, id: "cause-dye-bleed-wet", version: 2, place: "cause", told: toldBy("ran"), when: { is: { mechanisms: ["dye-bleed"], wet: ["wet", "damp"] } }, about: "dye-bleed",
    text: "It is {chance} that a dye has run. While the rug is wet the dye may run on; please let no more water get to it." },
  { ...TRADE, id: "cause-dye-bleed", version: 3, place: "cause", told: toldBy("ran"), when: { is: { mechanisms: ["dye-bleed"] }, not: { wet: ["wet", "damp"] } }, about: "dye-bleed",
    text: "It is {chance} that a dye has run. Please keep it dry, so that the dye runs no further." },
  { ...TRADE, id: "cause-urine-fresh", version: 5, place: "cause", told: TOLD_FRESH, when: { is: { mechanisms: ["urine-fresh"] }, not: { has: ["little-hope", "no-haste"] } }, about: "urine-fresh",
    text: "It is {chance} that the urine is still fresh enough to work on. It sets within days, so sooner is better." },
  { ...TRADE, id: "cause-urine-fresh-unhurried", version: 3, place: "cause", told: TOLD_FRESH, when: { is: { mechanisms: ["urine-fresh"], has: ["no-haste"] }, not: { has: ["little-hope"] } }, about: "urine-fresh",
    text: "It is {chance} that the urine is still fresh enough to work on." },
  { ...TRADE, id: "cause-urine-told", version: 1, place: "cause", told: TOLD_FRESH, when: { ...TOLD_FRESH, not: { mechanisms: ["urine-fresh", "urine-old"] } },
    text: URINE_COUNTS },
  { ...TRADE, id: "cause-urine-told-little", version: 1, place: "cause", told: TOLD_FRESH, when: { is: { mechanisms: ["urine-fresh"], has: ["urine-told-little"], changes: ["smell"] } },
    text: URINE_COUNTS },
  { ...TRADE, id: "cause-urine-old-unseen", version: 1, place: "cause", told: TOLD_FRESH, when: { is: { mechanisms: ["urine-old"], changes: ["smell"] }, not: { changes: SEEN_CHANGES } }, about: "urine-old",
    text: "It is {chance} that the urine has set. It can change the dye or the fibre itself, and that may show only later." },
  { ...TRADE, id: "cause-urine-old", version: 3, place: "cause", told: TOLD_FRESH, when: { is: { mechanisms: ["urine-old"], changes: SEEN_CHANGES } }, about: "urine-old",
    text: URINE_CHANGED },
  { ...TRADE, id: "cause-urine-old-untold", version: 1, place: "cause", told: TOLD_FRESH, when: { is: { mechanisms: ["urine-old"] }, not: { changes: ["smell", ...SEEN_CHANGES] } }, about: "urine-old",
    text: URINE_CHANGED },
  { ...BROWN_LINES, id: "cause-water-mark-unseen", version: 1, place: "cause", when: { is: { mechanisms: ["water-mark"] }, not: { changes: ["ring"] } }, about: "water-mark",
    text: "It is {chance} that a water mark is left: water carries soil to the edge of the wet place and leaves it there." },
  { ...BROWN_LINES, id: "cause-water-mark", version: 2, place: "cause", when: { is: { mechanisms: ["water-mark"], changes: ["ring"] } }, about: "water-mark",
    text: "It is {chance} that the ring is a water mark: water carried soil to the edge of the wet place and left it there." },
  { ...TRADE, id: "cause-food-fresh", version: 4, place: "cause", when: { is: { mechanisms: ["food-fresh"] }, not: { has: ["little-hope", "no-haste", "set-or-not"] } }, about: "food-fresh",
    text: "It is {chance} that the stain has not set yet, so sooner is better." },
  { ...TRADE, id: "cause-food-fresh-unhurried", version: 2, place: "cause", when: { is: { mechanisms: ["food-fresh"], has: ["no-haste"] }, not: { has: ["little-hope"], mechanisms: ["food-old"] } }, about: "food-fresh",
    text: "It is {chance} that the stain has not set yet." },
  { ...TRADE, id: "cause-food-set-or-not", version: 1, place: "cause", when: { is: { has: ["set-or-not"] } }, about: "food-old",
    text: "It is {chance} that the stain has set, which makes it slow to move. If it has not, sooner is better." },
  { ...TRADE, id: "cause-food-old", version: 2, place: "cause", when: { is: { mechanisms: ["food-old"] }, not: { has: ["set-or-not"] } }, about: "food-old",
    text: "It is {chance} that the stain has set, which makes it slow to move." },
  { ...TRADE, id: "cause-matting", version: 3, place: "cause", when: { is: { mechanisms: ["matting"] } }, about: "matting",
    text: "It is {chance} that feet or furniture have pressed it flat or worn it down. It is wear, and cleaning lifts only a part of it." },
  { ...TRADE, id: "cause-fading", version: 2, place: "cause", when: { is: { mechanisms: ["fading"] } }, about: "fading",
    text: "It is {chance} that light has faded it. Lost colour does not come back by cleaning; a curtain, or turning the rug, slows the fading." },
  { ...TRADE, id: "cause-shrinkage", version: 1, place: "cause", told: toldBy("wavy"), when: { is: { mechanisms: ["shrinkage"] } }, about: "shrinkage",
    text: "It is {chance} that the rug has drawn in or gone out of shape. Whether it can be eased back shows only on the bench." },
  { ...TRADE, id: "cause-backing", version: 1, place: "cause", when: { is: { mechanisms: ["backing-failure"] } }, about: "backing-failure",
    text: "It is {chance} that the latex that holds the backing is breaking up. It sheds dust, and water would loosen it more." },
  { ...OURS, id: "cause-soil", version: 10, place: "cause", when: { is: { top: ["soil-only"], has: ["improvement"], urgency: ["can-wait"] }, not: { mechanisms: DAMAGE_IDS, incidents: ["insects"], certainty: ["unknown"], wet: ["wet", "damp"], reason: ["what-is-it", "mis-sold"], has: ["trouble-unjudged", "only-smell", "change-unexplained"], changes: ["bare", ...HANDLED, "none"] } }, about: "soil-only",
    text: "It is {chance} that what you see is soil and nothing worse." },
  { ...TRADE, id: "cause-told-bare-later", version: 1, place: "cause", told: TOLD_BARE, when: { is: { ...TOLD_BARE.is, has: NOT_MOVED_YET }, not: NOT_TOLD_BARE },
    text: `${BARE} Once the rug is dry and may be handled, please keep it ${APART} ${LOOKED_AT}.` },
  { ...TRADE, id: "cause-told-bare", version: 3, place: "cause", told: TOLD_BARE, when: { is: TOLD_BARE.is, not: { ...NOT_TOLD_BARE, has: NOT_MOVED_YET } },
    text: `${BARE} Please keep the rug ${APART} ${LOOKED_AT}.` },
  { ...TRADE, id: "cause-told-insects-later", version: 1, place: "cause", told: TOLD_INSECTS, when: { is: { ...TOLD_INSECTS.is, has: NOT_MOVED_YET }, not: NOT_TOLD_INSECTS },
    text: `You told us of moths or beetles: please use no insecticide. Once the rug is dry and may be handled, keep it ${APART} ${LOOKED_AT}.` },
  { ...TRADE, id: "cause-told-insects", version: 2, place: "cause", told: TOLD_INSECTS, when: { is: TOLD_INSECTS.is, not: { ...NOT_TOLD_INSECTS, has: NOT_MOVED_YET } },
    text: `You told us of moths or beetles: please use no insecticide, and keep the rug ${APART} ${LOOKED_AT}.` },
  { ...TRADE, id: "cause-told-back", version: 2, place: "cause", told: toldBy("crumbles"), when: { is: { changes: ["crumbles"] }, not: { mechanisms: ["backing-failure"], incidents: ["flood"], has: AIDED } },
    text: "You told us of the back that crumbles: the latex that holds it may be breaking up, which is a matter for repair, and water would loosen it more." },
  { ...TRADE, id: "cause-told-ran", version: 1, place: "cause", told: toldBy("ran"), when: { is: { changes: ["ran"], handled: ["dye-bleed"] }, not: { mechanisms: ["dye-bleed"], incidents: ["flood"], has: AIDED } },
    text: "You told us of the colour that ran: a dye may not hold, and water could let it run further. Please keep it dry." },
  { ...TRADE, id: "cause-told-ran-wet", version: 1, place: "cause", told: toldBy("ran"), when: { is: { changes: ["ran"], handled: ["dye-bleed"], has: AIDED }, not: { mechanisms: ["dye-bleed"], incidents: ["flood"] } },
    text: "You told us of the colour that ran: while the rug is wet a dye may run on, so please let no more water get to it." },
  { ...TRADE, id: "cause-told-shape", version: 2, place: "cause", told: toldBy("wavy"), when: { is: { changes: ["wavy"] }, not: { mechanisms: ["shrinkage", "backing-failure"], incidents: ["flood"], has: AIDED } },
    text: "You told us of its shape: the rug may have drawn in, and water could draw it in further. Its shape is a matter for repair." },
  { ...OURS, id: "cause-told", version: 1, place: "cause", told: TOLD_OTHER, when: { is: TOLD_OTHER.is, not: { incidents: ["flood"], has: AIDED } },
    text: "You told us of {unexplained}: what that comes from we cannot tell from here." },
  { ...BROWN_LINES, id: "cause-said-brown-washed", version: 1, place: "cause", when: { is: { has: ["brown-washed-said"] }, not: { mechanisms: BROWNINGS } },
    text: "The brown you write of may have come as the rug dried: from plant fibres, in the pile or in the back, water draws brown matter up." },
  { ...BROWN_LINES, id: "cause-said-brown", version: 2, place: "cause", when: { is: { has: ["brown-said"] }, not: { mechanisms: BROWNINGS } },
    text: "The brown you write of may be soil, or brown matter that water drew up as the rug dried: we cannot tell which." },
  { ...TRADE, id: "cause-said-stiff", version: 1, place: "cause", when: { is: { has: ["stiff-washed-said"] }, not: { mechanisms: ["pile-distortion"] } },
    text: "That it is stiff may come of cleaner left in the pile, or of a pile that matted in the wet." },
];
