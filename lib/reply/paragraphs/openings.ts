import type { Condition } from "../condition";
import { TREATED } from "../treated-first";
import { VISCOSE_LIKE, WATER_SHY } from "../viscose-like";
import type { ParagraphRow } from "./row";
import { MOULD_SOON, OURS, TRADE, WET_VISCOSE } from "./sources";
import { TELLS_NOTHING } from "./troubles";

/** Trouble beside which a good fibre is no good news, as beside what is treated first. */
const GRAVE = ["dye-bleed", "pile-distortion", "backing-failure", "shrinkage"];

/** What stands beside no good news: doubt of its worth, few years left, or advice against the work. */
const NO_GOOD_NEWS: Condition["not"] = {
  age: ["antique"], incidents: ["flood"], mechanisms: GRAVE, treated: TREATED, has: ["doubtful-worth", "short-life"], advice: ["advise-cut-down", "advise-claim-or-replacement", "refer", "not-our-work"],
};

/** What silk, or some of it, is sold as, and the piles that hold some. */
const SOLD_AS_SILK = ["silk", "wool-and-silk"];
const PARTLY_SILK = ["silk", "wool-silk", "silk-viscose"];

const ANY_EVIDENCE = ["told", "photo", "label-typed", "label-photo", "bench", "laboratory"];

/** What may be gas may rise from a dry rug as from a wet one. */
const GAS_HOLDS = "What was put on it may still give off a harmful gas, wet or dry, and our first aid still holds. Keep everybody, children and pets too, out of the room, do not lean over it, and put nothing more on it.";

/** Greeting, first aid, and the answer to "what is it", with the strength of its evidence. */
export const OPENINGS: readonly ParagraphRow[] = [
  { ...OURS, id: "greeting", version: 1, place: "greeting", when: { is: { has: ["name"] } }, text: "Dear {name}," },
  { ...OURS, id: "greeting-nameless", version: 1, place: "greeting", when: {}, text: "Good day," },

  { ...MOULD_SOON, id: "first-aid-said-flood", version: 4, place: "first-aid", when: { is: { has: ["said-flood"] } },
    text: "We are sorry to read this. Flood and waste water can make you ill. If any of it is still wet, please let nobody touch the rug, not even to blot it, and ask a flood-damage firm to see to the room first, today if you can. Mould can start within two days. Until the firm has been:\n– {emergency}\n– Keep everybody, children and pets too, out of the room. Keep off a wet plug, socket or heated floor.\n– No more water, no product and no heat. Leave the rug lying where it is." },
  { ...TRADE, id: "first-aid-said", version: 3, place: "first-aid", when: { is: { has: ["said-wet"] } },
    text: "We are sorry to read this. If any of it is still wet, hours count, so please do this first:\n{firstAidInShort}" },
  { ...TRADE, id: "first-aid-known-flood", version: 2, place: "first-aid", when: { is: { has: ["aid-known"], incidents: ["flood"] } },
    text: "Flood and waste water can make you ill, once it is dry too: please let nobody touch the rug, and keep children and pets away. If any of it is still wet, hours count: no more water, no product and no heat." },
  { ...TRADE, id: "first-aid-said-dry-gas", version: 1, place: "first-aid", when: { is: { has: ["aid-said-dry-gas"] } }, text: `You write that it is dry. ${GAS_HOLDS}` },
  { ...TRADE, id: "first-aid-said-dry", version: 1, place: "first-aid", when: { is: { has: ["aid-said-dry"] } },
    text: "You write that it is dry. If any of it is still wet, underneath too, hours count and our first aid still holds: keep people, children and pets off it, and put nothing on it." },
  { ...TRADE, id: "first-aid-known-gas", version: 1, place: "first-aid", when: { is: { has: ["aid-known-gas"] } }, text: GAS_HOLDS },
  { ...TRADE, id: "first-aid-known", version: 2, place: "first-aid", when: { is: { has: ["aid-known"] } },
    text: "If any of it is still wet, hours count and our first aid still holds: keep people, children and pets off it, and put nothing on it." },
  { ...MOULD_SOON, id: "first-aid-flood", version: 4, place: "first-aid", when: { is: { has: ["first-aid"], incidents: ["flood"] } },
    text: "Flood and waste water can make you ill. Please let nobody touch the rug, not even to blot it, and ask a flood-damage firm to see to the room first, today if you can. Mould can start within two days. Until the firm has been:\n– {emergency}\n– Keep everybody, children and pets too, out of the room. Keep off a wet plug, socket or heated floor.\n– No more water, no product and no heat. Leave the rug lying where it is." },
  { ...TRADE, id: "first-aid-gas", version: 1, place: "first-aid", when: { is: { has: ["first-aid-gas"] } },
    text: "Please do this first, and at once, if you have not yet:\n{firstAidInShort}" },
  { ...TRADE, id: "first-aid", version: 4, place: "first-aid", when: { is: { has: ["first-aid"], urgency: ["hours"] } },
    text: "Please do this first, if you have not yet; hours count:\n{firstAidInShort}" },
  { ...TRADE, id: "first-aid-day", version: 1, place: "first-aid", when: { is: { has: ["first-aid"] } },
    text: "Please do this first, if you have not yet:\n{firstAidInShort}" },

  { ...TRADE, id: "own-aid", version: 1, place: "own-aid", when: { is: { has: ["first-aid", "aid-known"] } },
    text: "Only if rug {number} lies in a room that no flood water, mould or fumes reached:\n{ownAid}" },
  { ...TRADE, id: "own-aid-untouched", version: 1, place: "own-aid", when: { is: { has: ["first-aid", "aid-known"] } },
    text: "Please let nobody touch {untouched}." },

  { ...OURS, id: "first-aid-list", version: 1, place: "first-aid-list", when: { is: { has: ["first-aid", "said-wet"] }, not: { has: ["no-page"] } },
    text: "The whole list, “First aid for a wet rug”, stands on your own page: the link is in our first letter." },

  { ...OURS, id: "trade-call", version: 3, place: "trade-call", when: { is: { who: ["trade"], has: ["telephone"] } },
    text: "Please ring us on {telephone} before you do anything more to your customer’s rug; we take your call first." },
  { ...OURS, id: "trade-call-letter", version: 3, place: "trade-call", when: { is: { who: ["trade"] } },
    text: "Please send us your telephone number, and do nothing more to your customer’s rug until we have spoken." },

  { ...OURS, id: "heading", version: 1, place: "heading", when: { is: { rugs: ["several"] } }, text: "Rug {number}: {title}" },
  { ...OURS, id: "shared-first", version: 1, place: "shared-first", when: { is: { rugs: ["several"] } }, text: "First, for each of {sharers}" },
  { ...OURS, id: "shared", version: 1, place: "shared", when: { is: { rugs: ["several"] } }, text: "For each of {sharers}" },

  { ...OURS, id: "fibre-said-wet", version: 1, place: "fibre", when: { is: { certainty: ["unknown"], has: ["said-wet"] } },
    text: "What {rug} is made of, and what can be done for it, we cannot tell yet, and that can wait. First we would like to know how it stands now." },
  { ...OURS, id: "fibre-unknown-photos", version: 1, place: "fibre", when: { is: { certainty: ["unknown"], has: ["sent-photos"] }, not: { strongest: ANY_EVIDENCE } },
    text: "Thank you for writing. Going by your message and {evidence}, we cannot tell yet what {rug} is made of, and would rather ask than guess." },
  { ...OURS, id: "fibre-unknown-nothing", version: 1, place: "fibre", when: { is: { certainty: ["unknown"] }, not: { strongest: ANY_EVIDENCE } },
    text: "Thank you for writing. Your message is all we have so far: too little to tell what {rug} is or what can be done, and we would rather ask than guess." },
  { ...OURS, id: "fibre-mixture", version: 1, place: "fibre", when: { is: { certainty: ["unknown"], has: ["label-mixture"] } },
    text: "Going by {evidence}, {rug} would be a mixture, and how a mixture cleans only a test can show. We would rather ask than guess.",
    tones: { warm: "Thank you for writing. Going by {evidence}, {rug} would be a mixture, and how a mixture cleans only a test can show. We would rather ask you than guess." } },
  { ...OURS, id: "fibre-unknown", version: 1, place: "fibre", when: { is: { certainty: ["unknown"] } },
    text: "Going by {evidence}, we cannot tell yet what {rug} is made of, and would rather ask than guess.",
    tones: { warm: "Thank you for writing. Going by {evidence}, we cannot tell yet what {rug} is made of, and would rather ask you than guess." } },
  { ...OURS, id: "fibre-open-hardly-silk-gift", version: 2, place: "fibre", when: { is: { certainty: ["open"], soldAs: SOLD_AS_SILK, cameFrom: ["gift"] }, not: { leading: PARTLY_SILK, rival: PARTLY_SILK } },
    text: "Going by {evidence}, we cannot tell yet what {rug} is made of: it was described as {soldAs}, but {fitBetter}." },
  { ...OURS, id: "fibre-open-perhaps-silk-gift", version: 2, place: "fibre", when: { is: { certainty: ["open"], soldAs: SOLD_AS_SILK, cameFrom: ["gift"] } },
    text: "Going by {evidence}, we cannot tell yet whether {rug} is {soldAs}, as it was described: {fit}." },
  { ...OURS, id: "fibre-open-hardly-silk", version: 4, place: "fibre", when: { is: { certainty: ["open"], soldAs: SOLD_AS_SILK }, not: { leading: PARTLY_SILK, rival: PARTLY_SILK } },
    text: "Going by {evidence}, we cannot tell yet what {rug} is made of: it was sold as {soldAs}, but {fitBetter}." },
  { ...OURS, id: "fibre-open-perhaps-silk", version: 2, place: "fibre", when: { is: { certainty: ["open"], soldAs: SOLD_AS_SILK } },
    text: "Going by {evidence}, we cannot tell yet whether {rug} is {soldAs}, as it was sold: {fit}." },
  { ...OURS, id: "fibre-open", version: 2, place: "fibre", when: { is: { certainty: ["open"] } },
    text: "Going by {evidence}, we cannot tell yet what {rug} is made of: {fit}." },
  { ...OURS, id: "fibre-against-label", version: 1, place: "fibre", when: { is: { label: ["differs"] } },
    text: "Going by {evidence}, {rug} is {likely} {fibre}, although the label says {labelSays}." },
  { ...OURS, id: "fibre-sold-as-silk-gift", version: 1, place: "fibre", when: { is: { soldAs: SOLD_AS_SILK, cameFrom: ["gift"] }, not: { leading: ["silk", "wool-silk"] } },
    text: "Going by {evidence}, {rug} is {likely} {fibre}, although it was described as {soldAs}." },
  { ...OURS, id: "fibre-sold-as-silk-trade", version: 1, place: "fibre", when: { is: { soldAs: SOLD_AS_SILK, who: ["trade"] }, not: { leading: ["silk", "wool-silk"] } },
    text: "Going by {evidence}, {rug} is {likely} {fibre}, although it was sold as {soldAs}." },
  { ...OURS, id: "fibre-sold-as-silk", version: 1, place: "fibre", when: { is: { soldAs: SOLD_AS_SILK }, not: { leading: ["silk", "wool-silk"] } },
    text: "Going by {evidence}, {rug} is {likely} {fibre}, although it was sold to you as {soldAs}." },
  { ...OURS, id: "fibre", version: 1, place: "fibre", when: {},
    text: "Going by {evidence}, {rug} is {likely} {fibre}." },

  { ...OURS, id: "evidence-laboratory", version: 1, place: "evidence", when: { is: { strongest: ["laboratory"] } },
    text: "A laboratory report speaks for the sample that was sent in." },
  { ...OURS, id: "evidence-bench", version: 1, place: "evidence", when: { is: { strongest: ["bench"] } },
    text: "A test speaks only for the yarn it was made on." },
  { ...OURS, id: "evidence-label-photo", version: 2, place: "evidence", when: { is: { strongest: ["label-photo"] } },
    text: "Labels can be wrong, so only a test of the fibre would settle it." },
  { ...OURS, id: "evidence-label-typed", version: 4, place: "evidence", when: { is: { strongest: ["label-typed"] } },
    text: "Labels can be wrong: only a test of the fibre would settle it." },
  { ...OURS, id: "evidence-told", version: 3, place: "evidence", when: { is: { strongest: ["told", "photo"] }, not: { certainty: ["unknown"] } },
    text: "Words and photos can mislead, so the fibre stays a careful guess until it has been tested.",
    tones: { brief: "The fibre is a careful guess until it has been tested." } },

  { ...TRADE, id: "paid-little", version: 4, place: "paid", when: { is: { soldAs: ["silk"], has: ["price-against-silk"] }, not: { leading: ["silk", "wool-silk"], who: ["trade"] } },
    text: "What was paid for it speaks against silk: a silk rug mostly costs far more." },

  { ...WET_VISCOSE, id: "art-silk-label", version: 1, place: "sold-as", when: { is: { label: ["art-silk"], leading: WATER_SHY }, not: { who: ["trade"] } },
    text: "Words like “art silk” on a label name no fibre. Mostly they stand for viscose, which is made from wood or plant pulp. It shines like silk but is weak when wet, and by eye the two are easily taken for each other." },
  { ...WET_VISCOSE, id: "art-silk-pulp", version: 1, place: "sold-as", when: { is: { leading: ["lyocell"], soldAs: ["art-silk"] }, not: { who: ["trade"] } },
    text: "“Art silk”, like bamboo or banana silk, is a trade name for fibres made from wood or plant pulp. They shine like silk, but water does them more harm." },
  { ...WET_VISCOSE, id: "art-silk", version: 1, place: "sold-as", when: { is: { leading: VISCOSE_LIKE, soldAs: ["art-silk"] }, not: { who: ["trade"] } },
    text: "“Art silk”, like bamboo or banana silk, is mostly a trade name for viscose: a fibre made from wood or plant pulp. It shines like silk but is weak when wet." },
  { ...WET_VISCOSE, id: "sold-as-silk-look", version: 1, place: "sold-as", when: { is: { leading: VISCOSE_LIKE, soldAs: ["silk-look"] }, not: { who: ["trade"], certainty: ["unknown", "open"] } },
    text: "“Silk look” names how a pile shines, not what it is made of. Viscose is made from wood pulp, and is weak when wet." },
  { ...WET_VISCOSE, id: "sold-as-silk", version: 4, place: "sold-as", when: { is: { leading: VISCOSE_LIKE, soldAs: ["silk", "wool-and-silk"] }, not: { who: ["trade"], certainty: ["unknown", "open"] } },
    text: "Viscose is made from wood pulp. It shines like silk but is weak when wet. By eye silk and viscose are easily taken for each other." },
  { ...WET_VISCOSE, id: "silk-asked", version: 1, place: "sold-as", when: { is: { leading: VISCOSE_LIKE, has: ["silk-asked"] }, not: { who: ["trade"], certainty: ["unknown"] } },
    text: "Viscose, often sold as “art silk”, is made from wood pulp. It shines like silk but is weak when wet, and by eye the two are easily taken for each other." },
  { ...WET_VISCOSE, id: "what-viscose-is", version: 1, place: "sold-as", when: { is: { leading: ["viscose"], reason: ["what-is-it", "mis-sold"] }, not: { who: ["trade"], certainty: ["unknown", "open"] } },
    text: "Viscose is made from wood pulp. It shines like silk but is weak when wet." },
  { ...TRADE, id: "silk-good", version: 7, place: "sold-as", when: { is: { leading: ["silk", "wool-silk"], certainty: ["firm", "likely"] }, not: NO_GOOD_NEWS, atLeast: { improvementHigh: 50 }, below: TELLS_NOTHING },
    text: "Should it be silk, that is good news: silk is a strong fibre, and in careful hands it mostly cleans well.",
    tones: { warm: "Should it be silk, we are glad to say, that is good news: silk is a strong fibre, and in careful hands it mostly cleans well." } },
  { ...TRADE, id: "wool-good", version: 7, place: "sold-as", when: { is: { leading: ["wool"], certainty: ["firm", "likely"] }, not: NO_GOOD_NEWS, atLeast: { improvementHigh: 50 }, below: TELLS_NOTHING },
    text: "Should it be wool, that is good news: wool is a forgiving fibre and mostly cleans well.",
    tones: { warm: "Should it be wool, we are glad to say, that is good news: wool is a forgiving fibre and mostly cleans well." } },
];
