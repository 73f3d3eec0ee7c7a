import type { AnswerOf } from "../../trade/questions";
import type { Condition } from "../condition";
import { TREATED } from "../treated-first";
import { VISCOSE_LIKE } from "../viscose-like";
import type { ParagraphRow } from "./row";
import { OURS, TRADE } from "./sources";
import { CLEANING, HARDLY_WORTH, HARM, INSPECTED, LITTLE, OFFERED, REPAIRS } from "./troubles";

const VISITED = ["routine-clean", "inspect-and-test", "quote-with-limits", "advise-cut-down"];
const UNDECIDED = [...OFFERED, "advise-cut-down"];
/** Where a letter names no price for cleaning. */
const NO_PRICE: Condition["not"] = { treated: ["mould"], age: ["antique"], incidents: ["flood"], certainty: ["unknown"], who: ["trade"], reason: ["what-is-it", "mis-sold"] };

const ADVISED_AGAINST = "You ask what it costs: cleaning would be about {clean}, and as it looks we advise against spending that.";
/** Nobody here has had it in hand: where they have, a letter asks it in for no inspection. */
const UNSEEN: Condition["not"] = { inspection: INSPECTED };
/** Of every rug of the letter an inspection stands. */
const ALL_SEEN: Condition["not"] = { inspection: ["none"] };
/** Who inspected it after the flood has said what comes of it: nobody waits for the firm to hear that. */
const FLOOD_SEEN: Condition["not"] = { has: ["flood-seen"] };
/** Where an inspection has to find first that there is something to clean. */
const IF_WORTH_CLEANING = "If an inspection finds it worth cleaning, we estimate {clean}; price and limits are agreed with you first.";

/** Where somebody here has seen that there is, and little comes back by cleaning. */
const IF_IT_GOES_AHEAD = "If the work goes ahead, we estimate {clean}; price and limits are agreed with you first.";

/** They may have told some of it in words of their own. */
const WHAT_WE_ASK = "It would help us most to know or see this. Pass over what you have told us already.\n{asks}";

/** Who else should see it, where no other paragraph has said so. */
const REFERRED: Condition["is"] = { advice: ["refer"], has: ["referral"] };
const SAID_ELSEWHERE: Condition["not"] = { age: ["antique"], incidents: ["flood"] };
const IN_OTHER_HANDS = "This first belongs in the hands of {referTo}.";

/** Nothing in which mould is likely, or seen, is asked into a workshop before somebody who treats it has seen it. */
const MOULD_FIRST: Condition["is"] = { treated: ["mould"], advice: [...UNDECIDED, "advise-claim-or-replacement", "refer", "leave-alone", "ask-for-more"] };

/** What we do not take on is neither asked about nor asked in. */
const NOT_OURS = { advice: ["not-our-work"] };
/** The rug comes to us next. */
const TO_BE_BROUGHT: Condition = { is: { advice: VISITED }, not: { ...UNSEEN, has: ["said-wet"], who: ["trade"], wet: ["wet", "damp"], treated: TREATED, incidents: ["flood"] } };
const ASKED_COLLECTING: Condition["is"] = { has: ["asked-collecting"] };
const ASKED_COST: Condition = { is: { has: ["asked-cost"] } };
const COST_UNTOLD: Condition["not"] = { age: ["antique"], incidents: ["flood"], certainty: ["unknown"], who: ["trade"] };
/** What cleaning costs is told to who asks it where nobody has to know more first, and where no sentence on its worth has told it. */
const COST_ASKED: Condition = { ...ASKED_COST, not: { ...COST_UNTOLD, has: ["costs-more", "said-wet"] } };
/** What speaks against the work is how little comes back (“little-gain” of worth.ts), so that no price stands beside it. */
const COST_BESIDE_LITTLE: Condition = { ...ASKED_COST, not: { ...COST_UNTOLD, top: ["soil-only"], has: ["said-wet"] }, atLeast: HARDLY_WORTH, below: LITTLE };
/** They ask, and we can name no price yet. */
const COST_UNKNOWN: Condition = { ...ASKED_COST, not: { ...UNSEEN, age: ["antique"], incidents: ["flood"], who: ["trade"], ...NOT_OURS, has: ["clean-price", "said-wet", "first-aid"] } };
const ASKED_REMEDY: Condition = { is: { has: ["asked-remedy"] } };
const ASKED_FLAME: Condition = { is: { has: ["asked-flame"] } };
/** News of a rug that somebody hoped to save; from “very likely” not worth it on it is hard, below that it is open. */
const HARD_NEWS: Condition = { is: { certainty: ["firm", "likely"], rugs: ["one"], top: HARM }, not: { who: ["trade"], incidents: ["flood"], has: ["little-hope"] } };

/** They chose that a claim is what matters to them: no length takes its paragraph out. */
const CLAIM_CHOSEN: Condition = { is: { matters: ["claim"] }, not: { who: ["trade"] } };

const NO_LEGAL_ADVICE = "We can set down what we find, but not what anyone owes you; your local law decides, and this is not legal advice. We earn our living from rug work, so weigh our word with that in mind.";
const NO_LEGAL_ADVICE_IN_SHORT = "What anyone owes you we cannot say: your local law decides; this is not legal advice. We earn our living from rug work, so weigh our word by that.";
/** They ask whether it was sold as something else than it is. */
const MIS_SOLD: Condition["is"] = { reason: ["mis-sold"] };
/** A claim matters to them, and what was sold as silk is probably none. */
const CLAIM_OF_SILK = { is: { matters: ["claim"], soldAs: ["silk", "wool-and-silk"], leading: VISCOSE_LIKE }, not: { certainty: ["unknown", "open"] } } satisfies Condition;
/** Given or inherited, and no other rug of the letter bought: the client has no seller to ask. */
const GIVEN: Condition = { is: { cameFrom: ["gift"] }, not: { cameFrom: ["specialist", "furniture", "online", "bazaar", "auction", "secondhand"] satisfies AnswerOf<"boughtWhere">[] } };
const OF_A_GIFT = "The receipt, and what was said of the fibre when it was bought, would be with whoever bought it, or among their papers.";
/** A test of ours or a laboratory has told of the fibre. */
const TESTED: Condition["not"] = { strongest: ["bench", "laboratory"] };
/** What a claim about the fibre needs, where nothing is wrong with the rug that asks for an inspection. */
const TEST_FIRST = "Before any claim comes a test of the fibre, ours or a laboratory’s: if you would like one, ";

/** Cautions, price, what we would like to see, the next step, claims, and how a letter ends. */
export const ENDS: readonly ParagraphRow[] = [
  { ...TRADE, id: "special-asked-flame", version: 1, place: "special", when: ASKED_FLAME, told: ASKED_FLAME,
    text: "You ask about a flame: please hold none to it, nor to a thread of it. It can set light to more than the thread, and tells little to an untrained eye." },
  { ...TRADE, id: "special-asked-remedy", version: 1, place: "special", when: ASKED_REMEDY, told: ASKED_REMEDY,
    text: "You ask about something to put on it: please put nothing of the kind on it. What takes one mark out can set another, or take the colour with it." },
  { ...TRADE, id: "special-urine-smell-told", version: 1, place: "special", when: { is: { mechanisms: ["urine-fresh", "urine-old"], has: ["urine-told-little"] }, not: { changes: ["smell"] } },
    text: "Urine counts too: its smell may come back in damp weather, even after cleaning." },
  { ...TRADE, id: "special-urine-smell", version: 4, place: "special", when: { is: { mechanisms: ["urine-fresh", "urine-old"] }, not: { changes: ["smell"], has: ["urine-told-little"] } },
    text: "A smell of urine may come back in damp weather, even after cleaning." },
  { ...TRADE, id: "special-smell", version: 3, place: "special", when: { is: { changes: ["smell"] }, not: { who: ["trade"], has: ["only-smell"] } },
    text: "The smell is another matter: after cleaning it may still come back in damp weather." },
  { ...TRADE, id: "special-antique", version: 1, place: "special", when: { is: { age: ["antique"] } },
    text: "What it is worth is a question for a valuer, and we give no figure for the years an old piece has left." },
  { ...OURS, id: "special-refer", version: 3, place: "refer", when: { is: REFERRED, not: { mechanisms: ["insects", "mould"], ...SAID_ELSEWHERE } }, text: IN_OTHER_HANDS },
  { ...OURS, id: "special-refer-mould", version: 1, place: "refer", when: { is: { ...REFERRED, mechanisms: ["mould"] }, not: { mechanisms: ["insects"], offered: CLEANING, ...SAID_ELSEWHERE } }, text: IN_OTHER_HANDS },
  { ...OURS, id: "special-not-ours", version: 2, place: "special", when: { is: { advice: ["not-our-work"] } },
    text: "This is not work that we take on: we think it would cost you more than it is worth." },
  { ...TRADE, id: "special-pot", version: 1, place: "special", when: { is: { has: ["pot-said"] }, not: { who: ["trade"], incidents: ["flood"], treated: ["mould"], has: ["said-flood"] } },
    text: "If a plant pot still stands on it, please lift it off and put none back: damp gathers under pots." },
  { ...TRADE, id: "special-shading", version: 1, place: "special", when: { is: { changes: ["shaded"] }, not: { wet: ["wet", "damp"], who: ["trade"] } },
    text: "Where it is lighter from one side only, the pile may simply lie another way: cleaning does not change that for good." },

  { ...OURS, id: "price-clean-doubtful", version: 2, place: "price", told: ASKED_COST, when: { is: { advice: OFFERED, has: ["clean-price"] }, not: { ...NO_PRICE, ...UNSEEN }, atLeast: HARDLY_WORTH },
    text: IF_WORTH_CLEANING },
  { ...OURS, id: "price-clean-little", version: 2, place: "price", told: ASKED_COST, when: { is: { advice: OFFERED, has: ["little-hope"] }, not: { ...NO_PRICE, ...UNSEEN } },
    text: IF_WORTH_CLEANING },
  { ...OURS, id: "price-clean-repair", version: 2, place: "price", told: ASKED_COST, when: { is: { advice: OFFERED, top: REPAIRS }, not: { ...NO_PRICE, ...UNSEEN, has: ["improvement"] } },
    text: IF_WORTH_CLEANING },
  { ...OURS, id: "price-clean-seen-little", version: 1, place: "price", told: ASKED_COST, when: { is: { advice: OFFERED, inspection: ["not-beyond"], has: ["little-hope"] }, not: NO_PRICE },
    text: IF_IT_GOES_AHEAD },
  { ...OURS, id: "price-clean-seen-repair", version: 1, place: "price", told: ASKED_COST, when: { is: { advice: OFFERED, inspection: ["not-beyond"], top: REPAIRS }, not: { ...NO_PRICE, has: ["improvement"] } },
    text: IF_IT_GOES_AHEAD },
  { ...OURS, id: "price-clean", version: 4, place: "price", told: ASKED_COST, when: { is: { advice: OFFERED, has: ["clean-price"] }, not: { ...NO_PRICE, inspection: ["beyond"] } },
    text: "Cleaning would cost about {clean}. The price is an estimate; we agree price and limits with you before we begin." },
  { ...OURS, id: "price-asked-against", version: 1, place: "price", told: ASKED_COST, when: { ...COST_ASKED, atLeast: HARDLY_WORTH },
    text: ADVISED_AGAINST },
  { ...OURS, id: "price-asked-little", version: 1, place: "price", told: ASKED_COST, when: COST_BESIDE_LITTLE,
    text: ADVISED_AGAINST },
  { ...OURS, id: "price-asked", version: 1, place: "price", told: ASKED_COST, when: COST_ASKED,
    text: "You ask what it costs: if it can be cleaned, we estimate about {clean}. Price and limits are agreed with you first." },
  { ...OURS, id: "price-asked-unknown", version: 1, place: "price", told: ASKED_COST, when: COST_UNKNOWN,
    text: "You ask what it costs: that goes by its size, and by what an inspection finds. Its length and width would help us." },

  { ...OURS, id: "asks-said-wet", version: 1, place: "asks", when: { is: { has: ["said-wet"] } },
    text: "To help you well, we need to know, even where your letter has said it:\n{asks}" },
  { ...OURS, id: "asks-lone", version: 3, place: "asks", when: { is: { has: ["lone-ask"], certainty: ["unknown", "open"] }, not: NOT_OURS },
    text: "This would help us most:\n{ask}" },
  { ...OURS, id: "asks-first", version: 5, place: "asks", when: { is: { has: ["photos", "questions"], certainty: ["unknown", "open"] }, not: NOT_OURS },
    text: WHAT_WE_ASK },
  { ...OURS, id: "asks-for-more", version: 4, place: "asks", when: { is: { has: ["photos", "questions"], advice: ["ask-for-more"] } },
    text: WHAT_WE_ASK },
  { ...OURS, id: "asks-one-more", version: 3, place: "asks", when: { is: { has: ["one-ask"], certainty: ["likely"], advice: ["inspect-and-test", "first-aid", "quote-with-limits"] } },
    text: "This would tell us more:\n{ask}" },

  { ...TRADE, id: "wet-unknown", version: 1, place: "wet-unknown", when: { is: { has: ["wet-unknown"] }, not: { who: ["trade"] } },
    text: "If any part of it is wet now, please tell us first of all: that cannot wait." },
  { ...TRADE, id: "wet-said-dry", version: 1, place: "wet-unknown", when: { is: { has: ["dry-said"] }, not: { who: ["trade"] } },
    text: "You write that it is dry. Should any of it get wet, please tell us first of all: that cannot wait." },

  { ...TRADE, id: "claim-trade", version: 3, place: "claim", when: { is: { who: ["trade"] } },
    text: "For your insurer, keep dated photos and a note of what was used, when and how long. We can set down what we find. What is covered or whose fault it is we cannot say: your local law decides." },
  { ...OURS, id: "claim-gift", version: 1, place: "claim", when: { ...GIVEN, is: { ...GIVEN.is, ...MIS_SOLD } }, told: CLAIM_CHOSEN,
    text: `${OF_A_GIFT} ${NO_LEGAL_ADVICE}` },
  { ...OURS, id: "claim-gift-of-silk", version: 1, place: "claim", when: { is: { ...GIVEN.is, ...CLAIM_OF_SILK.is }, not: { ...GIVEN.not, ...CLAIM_OF_SILK.not } }, told: CLAIM_CHOSEN,
    text: `${OF_A_GIFT} ${NO_LEGAL_ADVICE_IN_SHORT}` },
  { ...OURS, id: "claim-seller", version: 3, place: "claim", when: { is: { ...MIS_SOLD, has: ["silk-said"] } }, told: CLAIM_CHOSEN,
    text: `A fair first step is to ask the seller in writing what the pile is made of and how they know. ${NO_LEGAL_ADVICE}` },
  { ...OURS, id: "claim-seller-of-other", version: 3, place: "claim", when: { is: MIS_SOLD, not: { has: ["silk-said"] } }, told: CLAIM_CHOSEN,
    text: `Please keep the invoice, the label and whatever was said or written of the fibre when it was bought. ${NO_LEGAL_ADVICE}` },
  { ...OURS, id: "claim-seller-of-silk", version: 2, place: "claim", when: CLAIM_OF_SILK, told: CLAIM_CHOSEN,
    text: `You could first ask the seller in writing what the pile is made of and how they know. ${NO_LEGAL_ADVICE_IN_SHORT}` },
  { ...OURS, id: "claim", version: 3, place: "claim", when: { is: { matters: ["claim"] } }, told: CLAIM_CHOSEN,
    text: "We can set down what we find for your claim. Whose fault it is, and what anyone will pay, we cannot say; your local law decides. We earn our living from rug work, so weigh our word by that." },

  { ...OURS, id: "customer", version: 2, place: "customer", when: { is: { who: ["trade"] } },
    text: "You can tell your customer: nobody can be sure how much comes back, and nothing more is done before a test." },

  { ...OURS, id: "takes-seen", version: 1, place: "takes", when: { is: { has: ["asked-how-long"] }, not: { ...ALL_SEEN, has: ["said-wet"], ...NOT_OURS, incidents: ["flood"] } },
    text: "Our work usually takes {weeks} from the day a rug reaches us; we confirm it before we begin." },
  { ...OURS, id: "takes", version: 1, place: "takes", when: { is: { has: ["asked-how-long"] }, not: { has: ["said-wet"], ...NOT_OURS, incidents: ["flood"] } },
    text: "Our work usually takes {weeks} from the day a rug reaches us; we confirm it after the inspection." },

  { ...OURS, id: "next-step-trade-seen", version: 1, place: "next-step", when: { is: { who: ["trade"] }, not: ALL_SEEN },
    text: "Only tests settle the rest." },
  { ...OURS, id: "next-step-trade", version: 2, place: "next-step", when: { is: { who: ["trade"] } },
    text: "Only an inspection and tests settle the rest." },
  { ...OURS, id: "next-step-said-wet", version: 1, place: "next-step", when: { is: { has: ["said-wet"] } },
    text: "If it is still wet, please ring us on {telephone}: that is quicker than a letter. Or answer this letter, in a line or two." },
  { ...OURS, id: "next-step-flood-call", version: 2, place: "next-step", when: { is: { incidents: ["flood"], has: ["telephone"], rugs: ["one"] }, not: FLOOD_SEEN },
    text: "Once the firm has been, {reach}: an inspection and tests then tell what can be done." },
  { ...OURS, id: "next-step-flood", version: 1, place: "next-step", when: { is: { incidents: ["flood"], rugs: ["one"] }, not: FLOOD_SEEN },
    text: "Once the firm has been, answer this letter: an inspection and tests then tell what can be done." },
  { ...OURS, id: "next-step-flood-several-call", version: 3, place: "next-step", when: { is: { incidents: ["flood"], has: ["telephone"], rugs: ["several"] }, not: FLOOD_SEEN },
    text: "For a rug that the flood got into, {reach} once the firm has been. For any other, an inspection and tests decide, so ask us for one." },
  { ...OURS, id: "next-step-flood-several", version: 2, place: "next-step", when: { is: { incidents: ["flood"], rugs: ["several"] }, not: FLOOD_SEEN },
    text: "For a rug that the flood got into, answer this letter once the firm has been. For any other, an inspection and tests decide, so ask us for one." },
  { ...OURS, id: "next-step-ask-call", version: 3, place: "next-step", when: { is: { has: ["needs-more"], advice: ["ask-for-more"] }, not: { has: ["no-page"] } },
    text: "The link in our first letter opens your own page, where you can add photos. Or answer this letter, or ring us on {telephone}." },
  { ...OURS, id: "next-step-ask", version: 3, place: "next-step", when: { is: { has: ["needs-more"], advice: ["ask-for-more"] }, not: { has: ["no-page"] } },
    text: "The link in our first letter opens your own page, where you can add photos. Or answer this letter." },
  { ...OURS, id: "next-step-ask-no-page-call", version: 2, place: "next-step", when: { is: { has: ["needs-more"], advice: ["ask-for-more"] } },
    text: "To tell us more, ring us on {telephone} or write to us, whichever is easier." },
  { ...OURS, id: "next-step-ask-no-page", version: 2, place: "next-step", when: { is: { has: ["needs-more"], advice: ["ask-for-more"] } },
    text: "To tell us more, write to us." },
  { ...OURS, id: "next-step-mould-call", version: 1, place: "next-step", when: { is: { ...MOULD_FIRST, has: ["telephone"], rugs: ["one"] }, not: UNSEEN },
    text: "We would inspect and test it only once a firm that treats mould has seen it: then {reach}." },
  { ...OURS, id: "next-step-mould", version: 1, place: "next-step", when: { is: { ...MOULD_FIRST, rugs: ["one"] }, not: UNSEEN },
    text: "We would inspect and test it only once a firm that treats mould has seen it: then answer this letter." },
  { ...OURS, id: "next-step-mould-several-call", version: 1, place: "next-step", when: { is: { ...MOULD_FIRST, has: ["telephone"], rugs: ["several"] }, not: UNSEEN },
    text: "For a rug that mould may grow in, {reach} once a firm that treats mould has seen it. For any other, an inspection and tests decide, so ask us for one." },
  { ...OURS, id: "next-step-mould-several", version: 1, place: "next-step", when: { is: { ...MOULD_FIRST, rugs: ["several"] }, not: UNSEEN },
    text: "For a rug that mould may grow in, answer this letter once a firm that treats mould has seen it. For any other, an inspection and tests decide, so ask us for one." },
  { ...OURS, id: "next-step-seen-call", version: 1, place: "next-step", when: { is: { advice: UNDECIDED, inspection: ["not-beyond"] }, not: ALL_SEEN },
    text: "Only tests settle the rest. If you would like us to go on, {reach}." },
  { ...OURS, id: "next-step-seen", version: 1, place: "next-step", when: { is: { advice: UNDECIDED, inspection: ["not-beyond"] }, not: ALL_SEEN },
    text: "Only tests settle the rest. If you would like us to go on, answer this letter." },
  { ...OURS, id: "next-step-seen-otherwise-call", version: 1, place: "next-step", when: { not: ALL_SEEN },
    text: "Only tests settle the rest. If you have a question about this, {reach}." },
  { ...OURS, id: "next-step-seen-otherwise", version: 1, place: "next-step", when: { not: ALL_SEEN },
    text: "Only tests settle the rest. If you have a question about this, answer this letter." },
  { ...OURS, id: "next-step-some-seen-call", version: 1, place: "next-step", when: { is: { advice: [...UNDECIDED, "advise-claim-or-replacement"], inspection: INSPECTED } },
    text: "For a rug that nobody here has inspected, an inspection and tests decide. To arrange one, or to ask about the other, {reach}." },
  { ...OURS, id: "next-step-some-seen", version: 1, place: "next-step", when: { is: { advice: [...UNDECIDED, "advise-claim-or-replacement"], inspection: INSPECTED } },
    text: "For a rug that nobody here has inspected, an inspection and tests decide. To arrange one, or to ask about the other, answer this letter." },
  { ...OURS, id: "next-step-look-call", version: 3, place: "next-step", when: { is: { advice: OFFERED, has: ["telephone"], rugs: ["one"] }, atLeast: HARDLY_WORTH, not: { age: ["antique"] } },
    text: "Only an inspection and tests could change our answer. If you would like one, ask first what it costs: {reach}." },
  { ...OURS, id: "next-step-look", version: 3, place: "next-step", when: { is: { advice: OFFERED, rugs: ["one"] }, atLeast: HARDLY_WORTH, not: { age: ["antique"] } },
    text: "Only an inspection and tests could change our answer. If you would like one, answer this letter and ask first what it costs." },
  { ...OURS, id: "next-step-inspect-call", version: 3, place: "next-step", when: { is: { advice: UNDECIDED, has: ["telephone"] } },
    text: "From here nobody can be sure: an inspection and tests decide. To arrange one, {reach}.",
    tones: {
      warm: "From here nobody can be sure: an inspection and tests decide. We would be glad to see it: {reach}.",
      brief: "An inspection and tests decide: {reach}.",
    } },
  { ...OURS, id: "next-step-inspect", version: 2, place: "next-step", when: { is: { advice: UNDECIDED } },
    text: "From here nobody can be sure: an inspection and tests decide. To arrange one, answer this letter.",
    tones: { warm: "From here nobody can be sure: an inspection and tests decide. We would be glad to see it: answer this letter.", brief: "An inspection and tests decide. To arrange one, answer this letter." } },
  { ...OURS, id: "next-step-before-deciding-call", version: 2, place: "next-step", when: { is: { advice: ["advise-claim-or-replacement"], has: ["telephone"] } },
    text: "From here nobody can be sure. If you would like it inspected and tested before you decide, {reach}." },
  { ...OURS, id: "next-step-before-deciding", version: 2, place: "next-step", when: { is: { advice: ["advise-claim-or-replacement"] } },
    text: "From here nobody can be sure. If you would like it inspected and tested before you decide, answer this letter." },
  { ...OURS, id: "next-step-not-ours-call", version: 1, place: "next-step", when: { is: { ...NOT_OURS, has: ["telephone"], rugs: ["one"] } },
    text: "If you have a question about this, {reach}." },
  { ...OURS, id: "next-step-not-ours", version: 1, place: "next-step", when: { is: { ...NOT_OURS, rugs: ["one"] } },
    text: "If you have a question about this, answer this letter." },
  { ...OURS, id: "next-step-mis-sold-call", version: 1, place: "next-step", when: { is: { ...MIS_SOLD, has: ["telephone"] }, not: TESTED },
    text: `${TEST_FIRST}{reach}.` },
  { ...OURS, id: "next-step-mis-sold", version: 1, place: "next-step", when: { is: MIS_SOLD, not: TESTED },
    text: `${TEST_FIRST}answer this letter.` },
  { ...OURS, id: "next-step-claim-of-silk-call", version: 1, place: "next-step", when: { is: { ...CLAIM_OF_SILK.is, has: ["telephone"] }, not: { ...CLAIM_OF_SILK.not, ...TESTED } },
    text: `${TEST_FIRST}{reach}.` },
  { ...OURS, id: "next-step-claim-of-silk", version: 1, place: "next-step", when: { is: CLAIM_OF_SILK.is, not: { ...CLAIM_OF_SILK.not, ...TESTED } },
    text: `${TEST_FIRST}answer this letter.` },
  { ...OURS, id: "next-step-call", version: 2, place: "next-step", when: { is: { has: ["telephone"] } },
    text: "If anything changes, or you would like us to look at it, {reach}." },
  { ...OURS, id: "next-step", version: 1, place: "next-step", when: {},
    text: "If anything changes, or you would like us to look at it, answer this letter." },

  { ...OURS, id: "visit-told", version: 2, place: "visit", when: TO_BE_BROUGHT, told: { is: ASKED_COLLECTING },
    text: "{collecting} If you bring it, roll it and do not fold it.", tones: { warm: "{collecting} If you bring it, please roll it and do not fold it." } },
  { ...OURS, id: "visit-asked", version: 2, place: "visit", when: { is: ASKED_COLLECTING, not: { has: ["said-wet"], ...NOT_OURS, treated: ["mould"], incidents: ["flood"] } }, told: { is: ASKED_COLLECTING },
    text: "{collecting}" },
  { ...TRADE, id: "visit", version: 3, place: "visit", when: TO_BE_BROUGHT,
    text: "Bring it rolled and not folded, or ask us whether we can collect it.",
    tones: { warm: "You can bring it, rolled and not folded. If that is hard for you, ask us whether we can collect it." } },

  { ...OURS, id: "closing-hard-news", version: 6, place: "closing", when: { ...HARD_NEWS, atLeast: { beyondRepair: 0.9 } },
    text: "We know that you hoped for better news.", tones: { warm: "We know that you hoped for better news, and are sorry not to have it." } },
  { ...OURS, id: "closing-open-news", version: 2, place: "closing", when: { ...HARD_NEWS, atLeast: HARDLY_WORTH },
    text: "We wish that we could be surer from here.", tones: { warm: "We wish that we could be surer from here, and are sorry that we cannot." } },

  { ...OURS, id: "closing-asked", version: 2, place: "closing", when: { is: { advice: ["ask-for-more"], has: ["needs-more"] }, not: { who: ["trade"], has: ["said-wet"] } },
    text: "Once we have heard from you, we can tell you more." },

  { ...OURS, id: "signature", version: 1, place: "signature", when: {}, text: "With kind regards,\n{signature}",
    tones: { warm: "With warm regards,\n{signature}", brief: "Kind regards,\n{signature}" } },
];
