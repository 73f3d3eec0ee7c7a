import { meant } from "./meant";
import { own, p, type Rule } from "./rule";

/** A fibre, and what a rug may have of it, in a sentence without a verb. */
const BARE_FIBRE = "(?:(?:an?|the|and|on|with|over|pure|real|genuine|good|fine|old|plain|best|mulberry|merino|hand-knotted|[a-z]+-spun|warps?|wefts?|pile|foundation|fringe|FIBRE),? )*FIBRE(?: (?:pile|warps?|wefts?|foundation|fringe|rug|carpet|through and through))*";
/** By somebody's word: "just as the label says". */
const AS_SAID = "(?:just |exactly |precisely )?(?:as|like|what) (?:(?:advertised|promised|described|labelled)|you were (?:told|sold|promised)|it says (?:on|in) the \\w+|(?:it says )?(?:on )?(?:the|your|its|their|that) (?:\\w+ )?(?:label|ticket|tag|receipt|invoice|listing|advert\\w*|seller|dealer|shop|auctioneer|back) ?(?:says?|said|has it|states?|reads|claims?|shows?|told you)?)";
/** What in a house may have done it. */
const CULPRIT_ITSELF = "(?:(?:the|an?|your|their|our|his|her) (?:\\w+ )?)?(?:dogs?|cats?|pupp(?:y|ies)|pups?|kittens?|pets?|rabbits?|toddlers?|radiators?|heaters?|heating(?: pipes?)?|hot pipes?|pipes?|boiler|sun(?:light|shine)?|underlay|(?:plant|flower) ?pots?|vases?|washing machine|dishwasher|leak|rain|moths?|beetles?|mice|mouse|candles?|stove|fireplace|shoes|castors?)";
/** The same with nothing behind it that makes it another thing: "the dog's place", "the radiator that stands there". */
const CULPRIT = `${CULPRIT_ITSELF}(?=$|[,;]|\\.| SURELY\\b| (?:who|which|that) (?:did|has|had|caused|made|left|got|leaked|faded|chewed|burst)\\b)`;

/** What it is, how it came about, its age and place, its state: known before a test. */
export const CERTAINTY: Rule = {
  id: "certainty", what: "states as certain what the evidence only makes likely",
  why: "Words and photos never settle a fibre or a cause; a test or an inspection does.",
  advise: "Say how likely it is, as in “it is probably …”, and what would settle it, or only:",
  instead: "Words and photos alone cannot make us sure; an inspection and a test would tell more.",
  excuses: ["negated", "hedged", "undecided", "reported", "disowned"],
  patterns: [
    // What it is
    p("(?:\\bPRON|\\bDET (?:\\w+ ){0,3}RUGPART)GAP (?:is|are|was|were|can only be|must be|has to be)(?: (?:just|only|simply|all|SURELY|WHOLLY|a|an|the|in fact|made (?:of|from|up of)|composed (?:of|entirely of)|woven (?:of|from)|knotted (?:in|from)|pure|real|genuine|true|authentic|finest|hand-spun|mulberry|kork|NUMBER ?(?:%|per ?cent)|of|from|in))* (?:\\w+ )?FIBRE\\b(?! than)", { also: ["softened"] }),
    // Somebody else's word taken for our own
    p("(?:\\bPRON|\\bRUG|\\bDET (?:\\w+ ){0,3}RUGPART)GAP (?:is|are) (?:(?:SURELY|WHOLLY|an?|the|in fact|pure|real|genuine|made|NUMBER ?(?:%|per ?cent)|of|from|in) )*(?:(?!called|sold|named|label\\w+|marked|described|supposed|meant|said|given|not)\\w+ )?FIBRE(?: \\w+)?,? (?:just |exactly |precisely |indeed )?(?:as|like|what) (?:(?:the|your|its|their|that) )?(?:\\w+ )?(?:label|ticket|tag|receipt|invoice|listing|advert\\w*|seller|dealer|shop|auctioneer|you were (?:told|sold|promised))\\b", { also: ["softened"], except: ["reported"], despiteCare: true }),
    p("\\b(?:certify|declare|pronounce|attest|confirm|vouch|determination|verdict|definitive|conclusion|established|authenticated?)\\b.*\\b(?:FIBRE|CAUSE|ORIGIN|RUGPART|TROUBLE)\\b", { also: ["softened"] }),
    p("\\b(?:(?:genuine|authentic|bona fide|the real (?:thing|mccoy|deal)) (?:FIBRE|ORIGIN|antique|article|rug))\\b", { also: ["softened"] }),
    p("(?:\\b(?:it|that|this|these|those|what (?:you|we) (?:have|see|describe|are \\w+ing)(?: \\w+){0,3}) (?:is|are)|\\byou (?:are (?:dealing with|looking at)|have (?:got )?)) (?:a |an |pure |plain |simple |just |only |classic |typical |clear |textbook |case of |old |some |your |ordinary |plainly |SURELY )*(?:CAUSE|TROUBLE) (?:damage|problem|trouble|staining|issue|attack|activity|stain|mark|case|rot)\\b", { also: ["softened"] }),
    p("\\b(?:i|we) (?:can|am (?:able|happy|pleased|delighted|glad) to|are (?:able|happy|pleased|delighted|glad|in a position) to|have to|must)(?: \\w+)? (?:tell|assure|promise|inform|confirm|report|announce|say|state|reassure)(?: to)?(?: you)?(?: \\w+){0,2} that (?!we\\b|i\\b|you\\b|this is good news)", { also: ["softened"], vague: true }),
    // In a word or two
    p(`^(?:(?:SURELY|certain)[,:]? )+${BARE_FIBRE}(?=$|[,;])|^${BARE_FIBRE}[,:;]? (?:SURELY|certain|a certainty)(?:,? (?:and|with) nothing else)?$`, { also: ["softened"] }),
    p(`\\bSUBJECT (?:is|are|was|were) (?:SURELY |only |just |all )*(?:from|off) ${CULPRIT}|\\bSUBJECT (?:comes?|came) off ${CULPRIT}|\\b(?:culprit|cause|reason) (?:is|was) (?:SURELY )?${CULPRIT}|^blame ${CULPRIT}|\\b${CULPRIT_ITSELF} (?:SURELY )?(?:did|caused|made|left) (?:this|that|it|these|those|DET TROUBLE)\\b`, { also: ["softened"] }),
    p(`^(?:and |so |well,? |then )?(?:it|this|that|these|those) (?:is|was|are|were) (?:SURELY |only |just |all )*(?:${CULPRIT}|(?:old |cold |red |white |spilt |spilled )?(?:wine|coffee|tea|urine|wee|vomit|bleach|tannin|juice|curry|milk|beer)(?:$|,))`, { also: ["softened"] }),
    // Somebody else's word taken for our own, in no sentence
    p(`^(?:so,? |and |well,? |yes,? )?${BARE_FIBRE}(?: indeed)?,? ${AS_SAID}$|^${AS_SAID}, ${BARE_FIBRE}$`, { except: ["reported"], despiteCare: true }),
    // How it came about
    p("\\bSUBJECT (?:is|are|was|were)(?: SURELY)? (?:only|just|simply|solely|merely|purely|nothing but|nothing more than|nothing other than|none other than|all|entirely|wholly) (?:a |an |the |some |old |dried |bit of |case of )*(?:[\\w-]+ ){0,2}(?:CAUSE|tired|dirty|dust|dirt|soil|surface)", { also: ["softened"], except: ["negated"] }),
    p("\\bSUBJECT (?:SURELY )?(?:comes?|came|arises?|arose|stems?|stemmed|results?|resulted|originates?|originated|derives?|derived) (?:\\w+ )?from\\b", { also: ["softened"] }),
    p("\\bSUBJECT (?:is|are|was|were|has been|have been|can only be) (?:SURELY |WHOLLY )*(?:caused|occasioned|brought about|triggered|produced|inflicted|made|done|left|attributable|due|owing|down|traceable)(?: (?:solely|entirely|wholly|purely|only|simply|SURELY))? (?:by|to)\\b", { also: ["softened"] }),
    p("\\bSUBJECT (?:is|are|was|were) (?:SURELY )?(?:the|a) (?:work|result|doing|product|effect|consequence|fault|handiwork|classic case|textbook case|clear case) of\\b(?! (?:an?|one|two) (?:moment|hour|morning|afternoon|day|week))", { also: ["softened"] }),
    p("\\b(?:SUBJECT) (?:has|have) been (?:in the (?:sun|wet|damp)|bleached|chemically|over-?washed|painted|cooked|scorched|burnt|shrunk)\\b", { also: ["softened", "reported"] }),
    own("\\b(?:and|or) (?:from )?(?:nothing|no) (?:else|other(?: (?:source|cause|reason))?)\\b|\\bno other (?:cause|source|explanation|reason)\\b"),
    p("\\b(?:dog|cat|puppy|moths?|beetles?|sun|water|cleaner|leak|pipe) (?:is|are|was) (?:SURELY )?(?:to blame|the culprits?|the cause|responsible|behind (?:it|this))\\b"),
    // How it is known
    p("(?:^|\\b(?:and|i|we) )(?:\\w+ly )?(?:can|could) (?:\\w+ )?(?:see|tell|spot|say|smell)\\b(?: straight away| already| right away| at once| instantly| a mile off)? (?:it|this|that|by|from|what|exactly|your|the)\\b", { also: ["softened"] }),
    p("\\b(?:i|we|anyone|anybody|you)(?: \\w+)? (?:see|tell|know|judge|say|spot|recognise|recognize|identify|read|date|place)\\b(?: \\w+){0,4} (?:from (?:here|where i|(?:your|the|that|a|two|these|those|this|one|its)(?: \\w+)? (?:photo|picture|snap|image|photograph|description|letter|email|message|close-up|sheen|shine|border|look)\\w*)|by (?:looking|the look|eye)|at a glance|without (?:seeing|touching))", { also: ["softened"] }),
    p("^(?:and )?that is (?:for sure|for certain|certain|definite)$", { vague: true }),
    p("\\b(?:photo|picture|snap|image|photograph|close-up|video|description|letter|email)s?\\b.*\\b(?:tells?|shows?|says?|gives?|is|are|leaves?|proves?|confirms?|establish\\w*|settles?|reveals?)(?: \\w+){0,2} (?:all|everything|enough|plain\\w*|clear\\w*|beyond|no doubt|conclusive\\w*|proof|definitely|that (?:it|the|your|this))\\b", { also: ["softened"] }),
    p("\\b(?:on the (?:evidence|strength|basis) of|as established from|going by|judging (?:by|from)) (?:\\w+ )?(?:\\w+ )?(?:photo|picture|image|photograph)\\w*\\b(?=.*\\b(?:certain|sure|is|are)\\b)", { also: ["softened"] }),
    p("\\b(?:certain|sure|positive|convinced|confident|satisfied|no doubt|SURELY|evident|plain|obvious|clear)\\b.{0,60}\\bthat (?:DET|it|they|this|we)\\b(?!.*\\b(?:may|might|could)\\b)", { also: ["softened"], vague: true }),
    p("\\b(?:can be stated|be in no doubt|without (?:reservation|fear of contradiction)|no hesitation in (?:saying|declaring|stating|calling))\\b", { except: ["negated"] }),
    p("\\b(?:stand by (?:that|it)|swear to it|swear (?:it|that)|(?:i|we) (?:will|would|can) put it in writing)\\b"),
    p("\\b(?:know|knows|recognise|recognize) (?:an? |good |real )?FIBRE (?:when|on sight|at sight|anywhere)\\b", { except: ["undecided"] }),
    p("\\b(?:that much|it|that|the case|the cause) is (?:\\w+ )?(?:obvious|plain|clear-cut|plain to see|open and shut|clear)(?: (?:enough|to anyone|to me))?$", { except: ["undecided"] }),
    p("\\b(?:blindfolded?|with (?:my|our) eyes (?:shut|closed))\\b|\\bany (?:fool|idiot|child) (?:can|could|would|will) (?:see|tell|know)\\b|^(?:this|that|it) is (?:SURELY )?not (?:an? |any )?(?:CAUSE|TROUBLE)$", { except: ["negated", "hedged", "undecided"] }),
    p("\\b(?:dyes?|colou?rs?|reds?|blues?|foundation|structure|knots?)\\bGAP (?:is|are) (?:\\w+ )?(?:rock[- ]solid|steadfast|bomb-?proof|as firm|unshakeable)\\b", { also: ["softened"] }),
    // No test needed
    own("\\b(?:no need|not need|need not|no reason|no point|pointless|needless|a waste(?: of \\w+)?)(?: in)?(?: to)? (?:test|check|look)(?:ing)? for\\b"),
    own("\\b(?:no|(?<!\\bnot .*)without(?: the need for)?(?: an?| any)?|save yourself|spare you\\w*|do away with|unnecessary|superfluous|pointless|waste of \\w+|forget(?: about)?|need not|(?:do|would) not (?:bother|need|require)(?: with)?|does not (?:need|require)|not (?:needed|necessary|required)|hardly worth)\\b(?:(?!\\bdecline|\\bnever\\b|\\bbeyond\\b|\\buntil\\b|\\bbefore\\b|\\bexcept\\b)[^.])*?\\b(?:dye[- ]?tests?|patch[- ]?tests?|tests?|testing|inspections?|inspect|examination|examine|physical examination|visit|looked at|look(?:ing)? at)\\b(?! (?:results?|is|until|we))"),
    own("\\b(?:tests?|testing|inspection|examination|visit)\\b(?: \\w+){0,6} (?:will be (?:omitted|skipped|waived)|(?:is|are|would be) (?:unnecessary|superfluous|pointless|a waste|not (?:needed|necessary|required))|can be (?:skipped|omitted|waived|dispensed))"),
    p("\\b(?:skip\\w*|omit\\w*|dispens\\w+ with|dispense with|forgo|waive\\w*|bypass\\w*|leave out)\\b(?: \\w+){0,5} (?:tests?|testing|inspections?|examination|look|visit)\\b", { also: ["denied"], except: ["negated"] }),
    own("\\b(?:not|no)(?: even)? need to (?:see|look|inspect|test|send|bring|touch|FEEL|handle)\\b(?! (?:until|before|a photo))"),
    own("\\bnothing (?:\\w+ ){0,2}(?:wrong|amiss|the matter) with (?:it|the|your|this|that)\\b"),
    p("\\b(?:i|we) know (?:(?:exactly|precisely|perfectly well|full well|just) )?(?:what it is|what (?:happened|caused|did)|exactly|precisely|which|from (?:your|the)|where it|who did)\\b", { also: ["softened"] }),
    p("\\b(?:is|are|age is|age of \\w+ \\w+ is)(?: about| around| roughly| some| nearly| over)? NUMBER(?: hundred)?(?: and \\w+)?[- ]years?\\b(?: old)?", { also: ["softened", "reported"] }),
    // Its state
    p("\\bDET (?:\\w+ ){0,2}(?:RUGPART|structure)GAP (?:is|are|remains?) (?:SURELY |WHOLLY |perfectly |quite |still |as )*(?:sound|intact|healthy|strong|unaffected|undamaged|unharmed|untouched|solid|colou?rfast|fast|stable|in (?:good|perfect|excellent|fine) (?:order|condition|shape))\\b", { also: ["softened"] }),
    own("\\bDET (?:\\w+ ){0,2}(?:RUGPART|TROUBLE|structure)GAP (?:has|have|is|are) (?:not|never) (?:affected|damaged|reached|touched|penetrated|gone|spread|harmed|rotten|weakened|got into)\\b"),
    p("\\b(?:only|just|merely) (?:on )?(?:the|at) (?:surface|top|tips?)\\b|\\b(?:is|are) (?:only |just |purely |merely )?(?:temporary|superficial|skin-deep|surface)\\b", { also: ["softened"] }),
    // Age and place
    p("\\b(?:PRON|DET (?:\\w+ ){0,2}(?:rug|carpet|piece|pile|item|article))GAP (?:is|are|was|were|dates?|comes?)(?: (?:SURELY|a|an|the|from|fine|old|early|late|rare|genuine|real|true|one of|beautiful|classic|good|made|woven|knotted|in|around|about))* (?:\\w+ )?(?:ORIGIN|(?:1[6-9]|20)[0-9][0-9]s?)\\b", { also: ["softened"] }),
    // Said in other words
    p("\\b(RUG|it|this|what you have|they|FRINGE) (is|are|'s|was|can only be|must be|has to be)( SURELY| clearly| plainly)?( made (of|from)| pure| real| genuine| true| a| an| the| in fact| NUMBER ?(%|per cent)| of)* ?FIBRE\\b(?!AFTERTHOUGHT)"),
    p("\\b(SURELY(?! (?:ring|call|ask|tell|write|let you|show|check|test)\\b)|(?:am|is|are|be|quite|absolutely) certain|prove[sd]?|proof that|identified|confirmed|clearly|we know that)\\b.*\\b(FIBRE|MARK|CAUSE)\\b"),
    p("\\bMARK (is|was|comes? from|came from|was caused by|is caused by|can only be) (the |a |an |old |fresh )?(CAUSE)"),
    p("\\b(can't|cannot|couldn't) (possibly )?be (anything (else|but)|FIBRE)\\b", { except: ["negated", "hedged"] }),
    p("\\b(dates? (from|back to)|was (woven|knotted|made) (in|by|around))\\b"),
    p("\\b(this|those|these|that|it|they|what you (have|see|describe)( there)?)( \\w+){0,3} (is|are|was|were) (SURELY |plainly |clearly |just |only |simply )?(a |an |the |old |some )?(moth (eggs|larvae|damage)|carpet beetles?|mildew|mould|dry rot|dye (transfer|bleed)|urine|rust|mothballs|cigarette|bleach)\\b"),
    p("\\b(has|have) only (touched|reached|affected)\\b|\\bonly (on )?the surface\\b|\\bis (only )?superficial\\b"),
    own("\\b(tell|say|know|judge|assure)\\b.*\\bwithout (even )?(seeing|having seen|looking at) (it|RUG|the back)"),
    p("\\bis always (colou?rfast|fast|safe|genuine|washable)\\b"),
    p("\\b(?:it|this|that|they) (?:is|are) (?:an? |the |old |plain )?(?:CAUSE|FIBRE|moths?|beetle),? (?:SURELY|and that is|plain and|pure and|end of|nothing (?:else|more))", { also: ["softened"] }),
    ...meant("certainty"),
  ],
};
