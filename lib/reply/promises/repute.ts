import { own, p, type Pattern, type RuleId } from "./rule";
import { PRICE_PAID } from "./tellings";

const NOBODY = "(?:nobody|no one|none of (?:our|my|the|those) (?:\\w+ )?\\w+|(?:no|not (?:a|one)(?: single)?) (?:\\w+ )?(?:client|customer|owner|person|family|household|soul)s?|(?:we|i) (?:know|can think) of no(?:body| one| \\w+) (?:who|that))";
const UNHAPPY = "(?:complain(?:ed|s|ing)?|cause (?:to complain|for complaint)|complaints?|regret(?:ted|s)?|grumbled?|found fault|disappointed|unhappy|dissatisfied|displeased|(?:asked|wanted) (?:for )?(?:their|his|her|the) money(?: back)?)";
const PLEASED = "(?:delighted|happy|pleased|thrilled|satisfied|overjoyed|over the moon)";

const BY_THEIR_WORD = "^(?!.*\\byou (?:told|wrote|said|say|feel|felt|think|thought|believe|ask|asked|mention\\w*)\\b)";
const TOO_DEAR = "(?:too (?:much|dear(?:ly)?|high)|over the odds|through the nose|(?:far |much |a lot |way )?more than (?:it (?:is|was)|the rug (?:is|was)|you (?:should|need))|(?:twice|(?:three|four|five|ten|several|many) times) (?:what|its|the (?:price|value)))";
const SHAMELESS = "(?:scandal\\w*|outrage\\w*|(?:daylight )?robbery|rip-?off|shocking|absurd|ridiculous|extortion\\w*|silly|daft|disgrace\\w*|theft|a con|inflated|unfair|indecent|(?:far |much |way )?too (?:much|high|dear))";
/** Whoever sold it; PARTY would be sought at every word. */
const SELLER = "(?:they|he|she|(?:the|your|that|this) \\w+)";
const PAID = "(?:the |that )?(?:price|sum|amount|figure|money)? ?(?:that |which |what )?(?:you|they|(?:the|your|that) \\w+) (?:have |had )?(?:paid|gave|asked|charged|took|were (?:asked|charged))(?: you)?(?: for (?:it|this|the \\w+|your \\w+))?";

/** What a sentence makes of the good name of a workshop, which tells nothing of this rug, and of the price a seller took, which is a valuer's to judge. Data, elicited. */
export const REPUTE: Readonly<Partial<Record<RuleId, readonly Pattern[]>>> = {
  result: [
    own(`\\b${NOBODY}\\b(?! (?:should|needs?|will|has to|have to|can|may))(?!.*\\b(?:to|with) you\\b)(?: \\w+){0,8}? ${UNHAPPY}\\b`),
    own("\\b(?:we|i|our (?:\\w+ )?\\w+) (?:have |has |had )?(?:never|not|yet to|no|had no|heard no|received no)\\b(?: (?!your\\b|about\\b)\\w+){0,4}? complaints?\\b(?! (?:from|of) (?:you|yours)\\b)"),
    own("\\b(?:clients|customers|owners|people|those|families)\\b(?: \\w+){0,8} (?:never|not once)(?: \\w+){0,3}? (?:complain(?:ed)?|cause (?:to complain|for complaint)|regret(?:ted)?|(?:been|come back|left|gone away) (?:disappointed|unhappy|dissatisfied))\\b"),
    p(`\\b(?:every|each|all (?:of )?(?:our|the|those)|everybody|everyone)\\b(?: (?!here\\b)\\w+){0,6}? (?:was|were|is|are|has been|have been|left|leaves?|went|goes|go|came|come)(?: \\w+){0,2}? ${PLEASED}\\b(?! (?:to|that|if|you|when we)\\b)`, { also: ["undecided"] }),
  ],
  blame: [
    p(`${BY_THEIR_WORD}.*\\byou (?:have |had )?(?:\\w+ly )?(?:paid|spent|gave|parted with)(?: \\w+){0,3}? ${TOO_DEAR}`, { tells: PRICE_PAID, despiteCare: true }),
    p(`${BY_THEIR_WORD}.*\\b(?:you (?:were|have been|got) (?:\\w+ly )?(?:over-?charged|fleeced|stung)|you (?:have )?(?:\\w+ly )?over-?paid|${SELLER} (?:\\w+ )?over-?charged)\\b`, { tells: PRICE_PAID, despiteCare: true }),
    p(`${BY_THEIR_WORD}(?!.*\\b(?:whether|if)\\b).*\\b${PAID} (?:is|was) (?:\\w+ ){0,3}?${SHAMELESS}\\b`, { tells: PRICE_PAID, despiteCare: true, except: ["undecided"] }),
    p(`${BY_THEIR_WORD}.*\\b${SELLER} (?:have |has |had )?(?:charged|asked) (?:you )?(?:through the nose|over the odds|(?:far |much |way )?too much)\\b`, { tells: PRICE_PAID, despiteCare: true }),
    own("\\b(?:never|not|nowhere near|far from)(?: \\w+)? worth (?:what|the (?:price|money|sum)|half (?:what|the price))(?: that)? (?:you|they) (?:have )?(?:paid|gave|asked|charged|were (?:asked|charged))\\b", { tells: PRICE_PAID }),
    own("\\b(?:should|ought|could|might) (?:never |not |to )?have (?:asked|charged|paid|had) (?:\\w+ ){0,4}?(?:(?:that|so|half so|half as) much|for (?:half|a (?:third|quarter|fifth|tenth)|less|far less|much less))\\b", { tells: PRICE_PAID }),
    p(`\\b(?:asked|charged|took|wanted|paid) (?:you )?(?:such )?an? ${SHAMELESS} (?:price|sum|amount|figure)\\b|\\bdaylight robbery\\b|\\bmade (?:an? )?(?:\\w+ )?(?:good|fine|handsome|tidy|nice|fat) (?:living|profit|sum|penny) (?:out of|from|off) you\\b`, { tells: PRICE_PAID }),
  ],
};
