/**
 * What the letter to each client of the demo must say and must not say. Written from what the trade knows (lib/trade's care,
 * damage, first aid; common practice) and from the enquiry alone, before any of these letters was read. Each line has the
 * meaning in words and a pattern wide enough for any honest wording of it.
 */
export type Line = readonly [meaning: string, pattern: RegExp];
export interface MustSay { readonly client: string; readonly says: readonly Line[]; readonly never: readonly Line[] }

const says = (meaning: string, pattern: RegExp): Line => [meaning, pattern];

const TESTED_FIRST = says("nothing is cleaned before a test", /\btest\w*\b[^.]*\b(?:hidden|corner)|\b(?:hidden|corner)\b[^.]*\btest/i);
const PERCENTS = says("the improvement as a range in per cent", /\d+\s?[–-]\s?\d+\s?%/);
const NOT_AT_HOME = says("no cleaning at home", /\b(?:not|no|nothing|never)\b[^.]*\b(?:at home|yourself|on it|wet it|clean it)\b/i);
const NOT_WET = says("no wet cleaning, and that water harms this fibre", /\b(?:will not|would not|won’t|not)\b[^.]*\b(?:wash|wet)/i);
const WATER_WEAK = says("why: viscose is weak in water, mats or browns", /\b(?:weak|mat|brown|burst)\w*\b/i);
const CHILDREN_OFF = says("first aid: people, children and pets off", /children/i);
const PRESS = says("first aid: press with a plain white cloth, do not rub", /white cloth[^]*\b(?:not|never|no)\b[^.]*\brub/i);
const NO_PRODUCT = says("first aid: no product and no more water", /\b(?:no|nothing)\b[^]*\b(?:water)\b/i);
const ELECTRIC = says("first aid: keep off a wet plug, socket or heated floor", /plug|socket/i);
const EMERGENCY = says("first aid: the emergency number", /\b112\b/);
const INSPECTION = says("an inspection or a test decides", /inspect|test/i);
const LOCAL_LAW = says("local law decides", /local law/i);
const OWN_INTEREST = says("our own interest is said", /we earn|our living|our own interest|weigh our word/i);

const SILK_PROMISED = says("that it is silk, as a fact", /\bit is (?:real |pure )?silk\b/i);
const WASHED_BY_US = says("an offer to wash it", /\bwe (?:would|can|could|will) (?:wash|clean it (?:by hand|by a full wash|in water))/i);
const GOOD_NEWS = says("good news beside trouble", /good news/i);
const LIFE_YEARS = says("a figure for years left", /\b\d+½? (?:more )?years?\b/i);
const RECIPE = says("a product or a recipe", /\b(?:peroxide|enzyme|acetic|citric|ammonia|vinegar|shampoo|soda)\b/i);
const SELLER_BLAMED = says("blame of the seller", /\b(?:lied|cheat|deceiv|fraud|swindl|knew|misled you)\w*/i);
const COVERED = says("what an insurer or a court will decide", /\b(?:covered|must pay|will pay|entitled|liable|refund)\b(?![^.]*\b(?:cannot|not)\b)/i);
const SHAMED = says("blame of the client", /\byou should(?: not)? have\b|\byour (?:own )?(?:fault|mistake)\b|\bunfortunately you\b/i);
const SILK_SHAME = says("scorn of what was bought", /\b(?:fake|imitation|cheap|inferior|bargain)\b/i);
const OPEN_PRICE = says("a price to clean it", /£\d/);

const WET_AID = [CHILDREN_OFF, PRESS, NO_PRODUCT, ELECTRIC, EMERGENCY];
/** What does not fit a glass or a puddle in a dry room. */
const NOT_A_LEAK = [ELECTRIC, EMERGENCY, says("sewage", /sewage/i)];

const URGENT: readonly MustSay[] = [
  { client: "Tobias Ferrant", says: [
    says("to ring us before doing more", /\b(?:ring|call|telephone)\b[^.]*\b01632 960 200/i), CHILDREN_OFF, ELECTRIC,
    says("it is likely viscose, by the label", /likely viscose/i), says("the brown comes as it dries", /brown[^.]*(?:dri|water)|(?:dri|water)\w*[^.]*brown/i),
    says("no more wetting", /\bnot wet it\b|no more water/i), says("keep dated photos and notes for the insurer", /insurer[^.]*\b(?:photo|write|note)/i), LOCAL_LAW, PERCENTS, TESTED_FIRST],
    never: [RECIPE, says("that it is his fault", /your fault|you (?:have )?(?:ruined|caused|damaged)/i), COVERED, says("“your rug”: it is his customer's", /\byour rug\b/i), WASHED_BY_US, GOOD_NEWS] },
  { client: "Henrike Aldous", says: [CHILDREN_OFF, PRESS, NO_PRODUCT,
    says("it is likely silk, with what it rests on", /likely silk/i), PERCENTS, TESTED_FIRST, says("waiting costs", /sooner|soon|not set|hours|today/i), INSPECTION],
    never: [...NOT_A_LEAK, RECIPE, SILK_PROMISED, says("that the wine will come out", /\bwine will\b|will come out/i), SHAMED] },
  { client: "Marguerite Okonjo-Lindqvist of Upper Hallowmere Old Schoolhouse", says: [...WET_AID,
    says("viscose is named as what it may be", /viscose/i), says("bamboo silk is a trade name for viscose, or the fibre is still open", /bamboo|cannot tell|art silk/i),
    says("whatever it is, no wash while it may be viscose", /\bnot wash\b/i), says("asks for a photo, as none came", /\bphoto of\b/i), TESTED_FIRST, INSPECTION],
    never: [RECIPE, SILK_PROMISED, SHAMED, says("that there is a stain of soil", /of the soil/i), SILK_SHAME] },
  { client: "Joost Pemberley", says: [CHILDREN_OFF, ELECTRIC, EMERGENCY,
    says("drain water makes ill: do not touch", /(?:ill|sick|health)[^]*\bnot (?:touch|even)|\b(?:touch)\b/i), says("the dye is moving", /dye[^.]*(?:run|bleed|mov)/i), says("no more water", /no more water/i),
    says("not even blot it", /not even to blot|do not (?:touch|blot)|nobody touch/i), says("somebody for the room or flood damage first", /flood-damage|flood damage|professional/i), says("nothing on fault or payment of a claim", /cannot say|theirs to decide|your local law decides/i)],
    never: [RECIPE, GOOD_NEWS, COVERED, PERCENTS, LIFE_YEARS, says("whether it is worth it, before anybody may touch it", /worth the|may not be worth/i), says("to keep it at home and blot it yourself after touching", /\bsponge\b/i)] },
  { client: "Amaryllis Brookes", says: [
    says("it is likely viscose although sold as silk", /likely viscose[^.]*sold[^.]*silk/i), says("the label is quoted", /“[^”]*viscose[^”]*”/i), says("viscose shines like silk: an easy mix-up", /shines like silk/i), says("the urine that she told us of", /urine/i),
    NOT_WET, NOT_AT_HOME, WATER_WEAK, PERCENTS, TESTED_FIRST, says("lost colour rarely comes back", /colour[^.]*(?:rarely|seldom|not)[^.]*back|rarely comes back/i), LOCAL_LAW, OWN_INTEREST, INSPECTION],
    never: [SHAMED, SELLER_BLAMED, RECIPE, WASHED_BY_US, GOOD_NEWS, COVERED, says("the kitchen spray as a reproach", /kitchen spray/i)] },
  { client: "Casimir Holloway", says: [CHILDREN_OFF, PRESS, NO_PRODUCT,
    says("it is likely wool, by the label as typed", /likely wool/i), says("urine is fresh: sooner is better", /urine[^.]*fresh|sooner/i), PERCENTS, TESTED_FIRST, says("the smell may return in damp weather", /smell[^.]*(?:back|return|damp)/i)],
    never: [...NOT_A_LEAK, RECIPE, SHAMED, says("that the smell will go", /smell will (?:go|be gone|disappear)/i)] },
  { client: "ليلى الحداد", says: [says("her name, as she writes it", /ليلى الحداد/), says("polypropylene", /polypropylene/i), PERCENTS, TESTED_FIRST,
    says("what it would cost against a new one, or whether it is worth it", /worth|new (?:one|rug)|costs?/i)],
    never: [says("Dear Madam or the wrong order of words", /Dear (?:Sir|Madam)/i), RECIPE, SILK_PROMISED, says("viscose's weakness in water, which this fibre has not", /burst|wood pulp/i)] },
  { client: "Wren Abernathy-Quill", says: [says("wool and viscose, as the label says", /wool[^.]*viscose/i), says("milk: sooner is better or the stain has not set", /sooner|not set|fresh/i), PERCENTS, TESTED_FIRST, NOT_AT_HOME, INSPECTION],
    never: [RECIPE, SILK_PROMISED, SHAMED, WASHED_BY_US] },
];

const FIBRE: readonly MustSay[] = [
  { client: "Rosalind Tey", says: [says("wool and viscose", /wool[^.]*viscose/i), says("the damp where the dog lies browned the pile", /damp[^.]*(?:brown|pile)|brown[^.]*damp/i), PERCENTS, TESTED_FIRST, NOT_AT_HOME, says("whether it is worth it", /worth|cost/i)],
    never: [SILK_PROMISED, SHAMED, RECIPE, WASHED_BY_US, says("that the dog is to blame", /your dog (?:has|did|ruined)/i)] },
  { client: "Ishbel Crane", says: [says("likely viscose", /viscose/i), says("art or bamboo silk is a trade name for viscose", /silk[^.]*(?:trade name|name for|called)/i), says("how to live with it: vacuum without a beater", /vacuum/i), says("keep water off it", /water/i), says("years as a range or one end", LIFE_YEARS[1]), says("a test would settle it", /test/i)],
    never: [SILK_SHAME, says("an urgent visit", /at once|immediately|urgent/i), OPEN_PRICE, says("trouble that she does not have", /stain|mould|dye has run/i), WASHED_BY_US] },
  { client: "Bertrand Osei-Vale", says: [says("it is hardly silk, or we cannot tell", /sold to you as silk|cannot tell/i), says("what it rests on", /you told us|photos/i), TESTED_FIRST, PERCENTS, says("what would tell more", /label|photo|test/i), says("that the price speaks too", /paid/i)],
    never: [SELLER_BLAMED, SILK_SHAME, SILK_PROMISED, says("that the price was too good", /too good|that price|for that money/i)] },
  { client: "Philippa Gaunt", says: [says("likely viscose although sold as silk", /likely viscose[^.]*sold[^.]*silk/i), says("the label as typed is quoted", /“[^”]*VISKOSE/i), says("labels can be wrong: a test settles it", /label\w*[^.]*wrong[^]*test/i), says("ask the seller in writing what it is made of", /seller[^.]*writing/i),
    says("not legal advice", /not legal advice/i), LOCAL_LAW, OWN_INTEREST, says("the years it has left as a range or end, or that it cannot be told", /years?|months?/i)],
    never: [SELLER_BLAMED, COVERED, says("what she lost in money", /€3|3600|3,600|overpaid/i), says("certain proof", /proves?\b/i)] },
  { client: "Leopold Sandiford", says: [says("likely silk, by the label", /likely silk/i), says("good news: silk cleans well in careful hands", /good news/i), PERCENTS, TESTED_FIRST, says("the price is an estimate", /estimate/i)],
    never: [SILK_PROMISED, says("viscose talk", /wood pulp|although it was sold/i), says("sorry", /\bsorry\b/i)] },
  { client: "Odd Nilsen-Farrow", says: [says("we cannot tell yet", /cannot tell|too little/i), says("asks for photos or facts, the label among them", /label/i), says("asks for the photos once more that came out dark and blurred, and says why", /(?:dark|blurred)[^]*(?:dark|blurred)/i), says("that more is needed before a judgement", /help us|rather ask/i), says("nothing is cleaned before a test, or nothing is offered", /test|ask/i)],
    never: [says("a likely fibre", /\blikely (?:wool|silk|viscose|cotton)/i), OPEN_PRICE, LIFE_YEARS, GOOD_NEWS] },
  { client: "Seraphine Wolcott", says: [says("lyocell, as the label says, with what it rests on", /lyocell/i), says("damp under the pot browned it, or it is a water mark", /damp|water mark/i), PERCENTS, TESTED_FIRST, NOT_WET, INSPECTION],
    never: [says("that the pot leaked", /pot (?:has )?leaked/i), SHAMED, RECIPE, WASHED_BY_US, SILK_PROMISED] },
  { client: "Dorothea Lindqvist-Amari", says: [says("viscose comes to mind although sold as silk, or it is open", /viscose/i), says("what happened to the pile or the brown", /pile|brown/i), PERCENTS, TESTED_FIRST, says("we can set down what we find", /set down|write down|report/i), LOCAL_LAW, OWN_INTEREST, INSPECTION],
    never: [says("that the cleaner is to blame", /cleaner (?:ruined|is (?:to blame|at fault|responsible)|should)/i), COVERED, WASHED_BY_US, RECIPE, SILK_PROMISED, SELLER_BLAMED] },
];

const EVERYDAY: readonly MustSay[] = [
  { client: "Gwendolen Mar", says: [says("likely wool", /likely wool/i), says("the coffee has set, or may have", /set|slow/i), PERCENTS, TESTED_FIRST, says("a price as an estimate, or its limits", /estimate|price|worth/i)],
    never: [RECIPE, says("viscose's weakness", /burst|wood pulp/i), SHAMED] },
  { client: "Ottoline Speke", says: [says("insects have fed on it", /insect|moth/i), says("no insecticide", /no insecticide/i), says("apart in a closed bag, dry", /closed bag|sealed bag/i), says("see to the room: pest control", /pest/i), says("the holes are a repair, later", /repair|mend|holes/i)],
    never: [says("a poison", /naphthal|permethrin|spray it/i), PERCENTS, says("that it is worth nothing", /worthless|nothing left/i)] },
  { client: "Ambrose Thackley", says: [says("mould is likely, with caution for health", /mould[^]*health/i), says("do not touch or brush it; children and weak lungs away", /not touch[^]*children/i), TESTED_FIRST, PERCENTS, says("cotton", /cotton/i)],
    never: [RECIPE, says("brush or vacuum it", /please (?:brush|vacuum)/i), GOOD_NEWS, says("photos that mean handling a mouldy rug", /folded corner|pile, parted/i)] },
  { client: "Cordelia Ash", says: [says("the latex of the back is breaking up", /latex/i), says("no water on it", /\bwater\b|not wash/i), says("a matter for repair, or what it costs against its worth", /repair|worth|replac|new rug/i), says("likely wool", /wool/i)],
    never: [says("viscose's weakness", /wood pulp|burst, mat/i), GOOD_NEWS, WASHED_BY_US] },
  { client: "Evander Pryce", says: [says("light has faded it", /light|sun/i), says("faded colour does not come back by cleaning", /not come back/i), says("next to nothing to gain, as a range", /\d+\s?[–-]\s?\d+\s?%/), says("keep it, turn it, or a curtain", /turn|curtain|keep it/i)],
    never: [GOOD_NEWS, says("a pitch for cleaning", /cleaning would cost/i), SILK_PROMISED] },
  { client: "Isolde Merriweather", says: [says("a dye has run", /dye has run|dye[^.]*run/i), says("keep it dry", /keep it dry|no more water/i), says("likely wool, by what was told", /likely wool/i), PERCENTS, TESTED_FIRST, INSPECTION],
    never: [SHAMED, says("the machine as a reproach", /hired machine|your machine/i), RECIPE, says("that the red will come out", /red will/i)] },
  { client: "Barnaby Fenwick-Osman", says: [says("polyamide", /polyamide|nylon/i), says("lost colour rarely comes back", /colour[^.]*(?:out|rarely|not)/i), PERCENTS, says("keep it or replace it, and what that costs", /keep it|new (?:one|rug)|worth/i)],
    never: [says("the bleach as a reproach", /should not have|bleach was a mistake/i), GOOD_NEWS, RECIPE] },
  { client: "Lavinia Trescott", says: [says("a conservator first", /conservator/i), says("value is for a valuer", /valuer/i), TESTED_FIRST, says("no figure for the years of an old piece", /no figure|cannot say how long/i)],
    never: [LIFE_YEARS, OPEN_PRICE, says("cutting it", /cut away|cut down/i), says("its value in money", /worth (?:about )?[£€$]/i)] },
  { client: "Hollis Grane", says: [says("likely viscose, by the label", /likely viscose/i), says("urine has changed it, or the brown", /urine/i), PERCENTS, says("the smell may come back in damp weather", /smell[^.]*(?:back|damp)/i), NOT_AT_HOME, NOT_WET, says("whether it is worth saving", /worth|new rug|replac/i)],
    never: [SHAMED, RECIPE, WASHED_BY_US, GOOD_NEWS, says("that the dog's mess is dangerous", /toxic|poison/i)] },
  { client: "Thea and Magnus Bellwether", says: [says("both rugs, each under its heading", /Rug 1[^]*Rug 2/), says("jute: plant fibre that rings brown in water", /(?:jute|plant|hard) ?fib|brown rings|jute/i), says("the wool one mostly cleans well", /wool/i), PERCENTS, says("a test for each", /test[^]*test/i)],
    never: [says("one judgement for both", /both rugs are/i), says("sorry for the wool one", /better news/i), RECIPE] },
];

export const MUST_SAY: readonly MustSay[] = [...URGENT, ...FIBRE, ...EVERYDAY];

/** Of every letter. */
export const ALWAYS: readonly Line[] = [
  says("what the judgement rests on", /going by [^.]*(?:you told us|photos|label|message|test|report)|message is all we have/i),
  says("that photos and words have limits", /(?:can|may|might|could) (?:still )?mislead|careful guess|only a test|(?:inspection|test)[^.]*(?:decide|settle|tell|show)|(?:photo|picture|word)[^.]*cannot|cannot (?:tell|say)|speaks only/i),
  says("a signature of a person", /Nell Harrow/),
];
/** Of no letter. */
export const NEVER: readonly Line[] = [
  says("the item", /\bthe (?:item|article|object)\b/i),
  says("a promise", /\b(?:guarantee|good as new|will come out|definitely|without doubt|risk-free|100 % (?:clean|back))\b/i),
  says("a chance as a decimal", /\b0\.\d/),
  says("jargon", /\b(?:cellulosic|mechanism|ΔE|decibel|decibans|posterior|probability|Bayes)\b/i),
  says("a dose or pH", /\bpH\b|\d+ ?ml\b/),
];
