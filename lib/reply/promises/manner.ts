import { own, p, type Pattern, type RuleId } from "./rule";
import { COMFORT, IN_USE, LABELLED } from "./tellings";

/** A look at the rug, by whatever name. */
const LOOK = "(?:(?:dye |patch |burn |fibre |fiber )?(?:tests?|testing|check(?:s|ing)?|checking|trials?)|inspections?|inspectors?|examinations?|microscopy|microscopes?|laborator(?:y|ies)|carbon dating)";
/** What a small thing is called beside a great one. */
const TRIFLE = "(?:kitten|lamb|trifle|nothing|child's play|light work|small (?:thing|matter|job|beer)|minor (?:thing|matter)|(?:spilt|spilled) \\w+|cup of tea|\\w+'s work|holiday|picnic|pinprick|scratch|warm-up|easy (?:one|job)|afternoon|morning)";
const WELL = "(?:come (?:back|up|out|right|round|good)|comes? (?:back|up|out|right|round|good)|came (?:back|up|out|right|round|good)|recover(?:s|ed)?|walk(?:s|ed)? out|go(?:ne|es)? (?:home|out of)|went (?:home|out)|(?:is|are|was|were) (?:saved|lying|back)|turn(?:s|ed)? out (?:well|fine)|look(?:s|ed|ing)? (?:well|fine|fit))";
const LATER_ON = "(?!.*\\b(?:once|when|until|till|unless|if|(?<!as )before|after)\\b)";

/**
 * What is promised by the manner of saying it: by comfort, by a comparison, by a saying, by saying less than is meant. Data beside
 * `implied.ts`, and used by the same rules; held to the pairs of manners in its tests.
 */
export const MANNER: Readonly<Partial<Record<RuleId, readonly Pattern[]>>> = {
  certainty: [
    p("\\bwe have (?:now |already )?(?:identified|established|determined) (?:it|the|your|this)\\b(?!.*\\b(?:test|inspect|laborator|microscop|sample)\\w*)", { also: ["softened"], despiteCare: true }),
    own(`\\b(?:no|without|not (?:an?|any)) (?:\\w+ )?${LOOK} (?:is|are|was|will be|would be|to be)? ?(?:\\w+ )?(?:needed|required|necessary|wanted|called for)\\b(?! (?:to|until|before|for))`),
    own(`\\b${LOOK} (?:is|are|would be|was|will be)? ?(?:\\w+ly )?(?:quite )?(?:not (?:needed|required|necessary|wanted)|waived|omitted|unnecessary|superfluous|redundant|wasted|pointless)\\b`),
    p(`\\bskip (?:the |an? |any )?${LOOK}\\b`, { also: ["undecided"] }),
    p(`\\b(?:do not (?:even )?(?:bother|fret|fuss|check)(?: \\w+)?|not need(?: to be)?|no need to be) (?:the |an? |any |about |over |with )?${LOOK}\\b(?! (?:in|on) )|\\bfuss\\w* (?:with|over|about) ${LOOK}\\b|\\b${LOOK} (?:is|are) for (?:people|those|them|amateurs|beginners)\\b`, { except: ["negated"], also: ["undecided"] }),
    p("\\b(?:any(?:body|one)|even i|a child) (?:can|could|will) (?:\\w+ )?(?:tell|see|say)(?: you)?(?: that)? (?:it|this|that|yours) (?:is|are|was)\\b(?! (?:not|too|only|still))", { also: ["softened"] }),
    p("\\bproves? (?:the|it|this|that|your) (?:\\w+ )?to be\\b", { also: ["softened"], despiteCare: true }),
    p("\\b(?:i|we) could have told you\\b", { except: ["hedged", "negated"] }),
    own("\\byou (?:can|may|could|might)(?: now| all| just| safely)* (?:stop|quit|give up) wondering\\b"),
    own(`\\bnot (?:trouble|bother|burden|worry) you with (?:\\w+ ){0,3}${LOOK}\\b`),
    // What the price or the seller gives away
    p("\\bnobody (?:buys|sells|gets|gives) (?:\\w+ )?FIBRE (?:at|for) (?:that|this|such)\\b|\\bFIBRE is (?:not )?what (?:you|they|he|she) (?:\\w+ ){1,4}(?:clean|wash|sold|bought|paid)\\b", { except: ["negated"] }),
  ],
  result: [
    p("^has (?:an?|any|one) (?:\\w+ )?TROUBLE ever (?:\\w+ )?(?:beaten|beat|defeated|stopped|got|resisted)\\b"),
    p("(?<!\\bwhere it )\\b(?:fade|go|clear|lift|come|wear|disappear|drop)(?:s|es)?(?: out| away| off| up)? (?:all )?(?:by (?:itself|themselves)|of (?:its|their) own accord)\\b", { also: ["softened"] }),
    p("\\bnot (?:one|a single) (?:\\w+ )?TROUBLE (?:can|could|will|would) (?:survive|live|last|remain|stay)\\b", { except: ["negated", "hedged"] }),
    // Something worse that went well
    p(`\\b(?:seen|had|known|handled) (?:far |much |many |a lot |even )*(?:worse|poorer|blacker|dirtier|older|sadder)\\b(?: \\w+){0,3}? ${WELL}\\b(?!.*\\b(?:and|but|while|yet)\\b.*\\b(?:fail|better|others?|stay|not|lost)\\b)`, { despiteCare: true }),
    p(`\\b(?:worse|blacker|dirtier|older|sadder|sorrier|twice (?:this|that|as \\w+))\\b(?: \\w+){0,5}? (?:than yours )?(?:has |have |and )?(?:\\w+ )?${WELL}\\b(?!.*\\b(?:but|worse|not|stayed|failed)\\b)`, { also: ["softened"] }),
    p("\\bif (?:we|they|he|she|the|an?|that|my|one) (?!rug\\b)[^,]*\\b(?:could|can|did|came|comes|worked|survived)\\b[^,]*, (?:then )?(?:surely |certainly )?(?:yours|your rug|we|this one)(?: surely| certainly)? (?:can|could|will)\\b(?! (?:not|tell|ring|call|write|say|let|test|stop|send|need|may))", { except: ["undecided", "hedged"] }),
    p(`^(?:next to|beside|compared (?:with|to)|against|set against) .*\\b(?:this|yours|it) is (?:only |just |hardly |hardly more than |but )?(?:an? )?(?:\\w+ )?${TRIFLE}\\b|\\b(?:this|yours|it) is (?:only |just )?an? ${TRIFLE} (?:beside|next to|compared|against)\\b`, { also: ["softened"] }),
    own("\\b(?:as|what) (?:we|i) (?:did|do|have done) for (?:\\w+'?s? ){1,4}(?:we|i) (?:can |will |shall )?do for (?:yours|you)\\b|\\b(?:gets?|get|have|has) the same result\\b"),
    p("\\b(?:they|both|all of them) (?:all )?come (?:out|back|up)(?: \\w+){0,4} (?:the same|alike)\\b(?!.*\\bphoto)", { also: ["softened"] }),
    // A new one that will not be needed, and a place that is ready for the old one
    p("\\b(?:not|never|no need to|hold off|without) (?:\\w+ ){0,3}?(?:order|buy|sav\\w+|shop\\w*|look\\w*|ordering|buying) (?:up )?(?:for )?(?:an?|another|the|any) (?:replacement|new (?:one|rug|carpet)|successor)(?: \\w+){0,2}? (?:yet|just yet|so soon)\\b(?! (?:before|until))", { except: ["negated"] }),
    p("\\bstart (?:thinking|planning|deciding) (?:about )?(?:of )?(?:which|where|what)\\b|\\b(?:it|rug|carpet) (?:is|will be) (?:going|coming|on its way) (?:straight |right )?(?:back )?(?:home|where it (?:came from|belongs|lay))\\b", { except: ["hedged"] }),
    // Less said than meant
    own("\\bnot (?:exactly|entirely|altogether|wholly|quite) (?:without|unhappy|displeased|disappointed|an? (?:challenge|problem|mystery)|beyond|strangers?|hopeless|new)\\b(?! (?:risk|danger|doubt|cost))"),
    own("\\bnot be (?:altogether |entirely |wholly |too |at all )+(?:unhappy|displeased|disappointed|sorry|ashamed)\\b"),
    p("\\b(?:astonished|surprised|amazed|astounded) (?:, \\w+ ){0,3}?to (?:find|see|hear of) (?:anything|any|a trace|so much as|it (?:still|left))\\b|\\b(?:astonished|amazed|surprised)\\b.*\\bif you (?:were able to|could|can|ever) (?:find|see|spot)\\b", { except: ["hedged", "negated"] }),
    p("\\bnot (?:be )?the first time (?:that )?(?:we|i)(?: have| had)? (?:left|surprised|astonished|amazed|proved|saved|brought|made somebody happy)\\b|\\b(?:we|i) have been known to (?:get|bring|make|save|rescue|surprise)\\b", { except: ["negated"], also: ["denied"] }),
    p("\\b(?:somewhat|rather|a little|quite|fairly|a trifle|not easy) (?:hard|difficult|tricky)? ?to (?:find|spot|see|stop)\\b(?<=\\b(?:repair|mend|join|patch|place|TROUBLE)\\b.*)", { except: ["hedged", "negated"], also: ["undecided"] }),
    // Sayings
    p("^where there is (?:\\w+ )?there is (?:a way|hope)\\b|\\bwhat (?:has run|(?:the )?\\w+ (?:brought|gave|did|took|bore))\\b.*\\b(?:(?:can|will) be made to|takes?|gives?|undoes|brings?) (?:\\w+ )?(?:away|back|again|home)\\b|\\b(?:all|everything) is well that ends (?:in|at|with) (?:our|us|my)\\b|\\bevery (?:cloud|dark cloud)\\b.*\\byours (?:comes|will|is|has)\\b", { also: ["softened"] }),
    own("\\b(?:old \\w+|rugs?|good wool|they) never dies?\\b"),
  ],
  safety: [
    p("\\bno (?:[\\w-]+ ){1,4}(?:could|can|will|would) (?:possibly |ever )?(?:hurt|harm|damage)\\b(?! (?:if|unless|until))", { except: ["negated", "hedged"] }),
    // Comfort
    own("\\byou (?:can|may|could|might)(?: now| all| just| safely)* (?:stop|quit|give up) (?:worrying|fretting|fearing)\\b|\\b(?:quit|put away your|banish (?:your|all)) worr(?:y|ies|ying)\\b|\\boff your worry list\\b", { tells: COMFORT }),
    p("\\b(?:rest|set|put) (?:your|her|his) (?:mind|heart|thoughts)(?: \\w+)?(?: at (?:rest|ease))?,? (?:for |because |as |there |the |it |nothing |no |your |all )|\\bset your (?:heart|mind) at (?:ease|rest)\\b|\\bthe (?:hard|worst|difficult) (?:part|bit) is (?:over|behind you|done)\\b|\\bfar (?:more dreadful|worse|graver) than it is\\b|\\bworse than it is\\b", { except: ["negated"], also: ["undecided"], tells: COMFORT }),
    own("\\bnothing (?:has |that )?(?:\\w+ )?(?:happened|here|was done)(?: \\w+){0,2} (?:that )?(?:cannot|can not|could not) be (?:put right|undone|mended|reversed|made good)\\b"),
    // Use it, leave it
    p(`\\byou (?:can|may|could|might)(?: still| safely| now| well| happily)* (?:keep|carry on|go on|continue)(?: on)? (?:to )?(?:walk|us|play|sit|liv|stand|tread|eat)\\w*\\b${LATER_ON}`, { except: ["hedged"], also: ["denied"], tells: IN_USE }),
    p(`\\b(?:BABY|they|everybody|everyone) (?:can|may) (?:still |safely |happily )*(?:go on|carry on|keep|continue)(?: on)? (?:playing|crawling|sleeping|lying|using|to play)\\b${LATER_ON}|\\b(?:carry|go) on using (?:it|the rug|your rug)\\b${LATER_ON}`, { except: ["hedged"], also: ["denied"], tells: IN_USE }),
    p(`\\byou (?:can|may)(?: \\w+ly| now| then)? (?:walk|stand|sit|play|tread|lie)(?: on)? (?:it|the rug|your rug|there)\\b${LATER_ON}`, { except: ["hedged"], also: ["denied"], tells: IN_USE }),
    own("\\b(?:no need to|need not|not have to) (?:keep|stay) off\\b", { tells: IN_USE }),
    own("\\b(?:takes?|suffers?|comes? to|take|suffer|come to) no (?:hurt|harm)\\b(?! (?:if|until|unless))", { tells: IN_USE }),
    p("\\b(?:damp|wet|dampness|moisture|wet patch)\\b.*\\b(?:dr(?:y|ies)(?: out)? by itself|looks? after itself|sees? to itself|goes? by itself|takes? care of itself)\\b|\\bwet\\b.*\\bdr(?:y|ies) (?:itself|on its own)\\b", { also: ["undecided"], except: ["hedged", "negated"], tells: IN_USE }),
    own("\\bnot (?:at all )?(?:dangerous|risky|harmful|a problem) to (?:leave|keep|let|use|walk|store)\\b(?! (?:it )?(?:dry|flat|where))", { tells: IN_USE }),
    own("\\byou (?:have|did) not (?:do|done) (?:it )?any (?:harm|damage)\\b"),
    // A piece cut off, said to cost nothing
    own("\\b(?:cut(?:ting)?|trim(?:ming)?|remov(?:al|ing)|tak(?:e|ing)|inches|centimetres|feet)\\b.{0,60}\\b(?:not|neither|nor|none|no|without)\\b.{0,40}\\b(?:value|price|worth|strength)\\b(?! (?:is|depends|of it is))|\\bcut\\b.*\\b(?:price|value|worth)\\b.*\\b(?:stays|remains) the same\\b"),
    own("\\bno (?:possible )?(?:injury|mishap|hurt)(?: \\w+){0,3} (?:can|could|will|shall) (?:befall|come|happen|reach)\\b|\\b(?:cannot|can not|will not|would not)(?: \\w+)? (?:go mouldy|go amiss|happen with us)\\b"),
  ],
  harm: [
    p("^(?:would|could|can|did|does|has|have) (?:an? |the |any |one )?.*\\b(?:AGENT|HEAT|beating|hosing)\\b.*\\b(?:ever (?:hurt|harmed|ruined|spoilt|do|done|did)|be the end of the world|come to grief|(?:really |truly )?hurt)\\b", { except: ["negated"] }),
    // A label to be ignored
    p("\\b(?:ignore|disregard|forget(?: about)?|pay no (?:heed|attention) to|take no notice of|never mind|do not (?:mind|heed|worry about|fret about|have to worry about)(?: about)?|not have to (?:mind|worry about)|invite you to disregard) (?:\\w+ ){0,3}?(?:(?:care |washing )?labels?|tags?|warnings?|cautions?|instructions|small print)\\b|\\b(?:may|can|should|could) (?:\\w+ )?(?:disregard|ignore) (?:it|them|that|this)\\b", { except: ["negated"], tells: LABELLED }),
    p("\\bdo (?:a (?:great deal|lot) |far |much )?worse than (?:to )?(?:an? |some |the |use |try |hang |put )*(?:\\w+ ){0,4}?(?:AGENT|HEAT|line|hosing|beating)\\b", { except: ["negated", "softened"] }),
    p("\\bAGENT\\b.*\\b(?:is|that is|was) all (?:my|your|our|his|her|the|you|i|we) (?:\\w+ )?(?:\\w+ )?(?:ever )?(?:need\\w*|used)\\b", { also: ["ours"] }),
  ],
  blame: [
    p("(?:^|, )(?:has|have|had) (?:\\w+ly )?(?:stripped|ruined|felted|drowned|wrecked|spoilt|spoiled) (?:the|your|its|it)\\b"),
    p("\\b(?:dealer|seller|shop|he|she|they|cleaner|salesman)\\b.*\\b(?:not born yesterday|knew what (?:he|she|they) (?:had|was|were|sold|did)|knew (?:\\w+ )?(?:perfectly|full|very) well)\\b|\\b(?:must|will) have known (?:perfectly|full|very) well\\b", { except: ["negated"], despiteCare: true }),
    p("\\b(?:not|never|hardly) (?:\\w+ )?(?:the )?(?:sharpest|brightest|most careful|cleverest) (?:\\w+ )?(?:knife|tool|in the|of|person|man|cleaner)\\b", { except: ["negated"] }),
  ],
  cover: [
    own("\\bfind in your favou?r\\b|\\bno grounds? (?:on|for) (?:which|declin\\w+|refus\\w+)\\b"),
    p("\\b(?:LEGAL|shop|seller|dealer|they)\\b.{0,40}\\b(?:hard|difficult|tricky|awkward|uphill|twice)\\b.{0,20}\\b(?:say no|refus\\w+|argu\\w+|declin\\w+|wriggl\\w+|turn|contest|deny)\\b", { except: ["hedged", "negated"], also: ["undecided"] }),
    own("\\bno (?:\\w+ )?(?:underwriter|insurer|adjuster|assessor|judge|court|seller|shop)\\b.{0,30}\\b(?:contest|wriggle|refuse|argue|object|decline|deny|dispute)\\w*\\b"),
  ],
  verdict: [
    p("\\b(?:past|beyond) (?:all )?(?:redemption|recall)\\b|\\b(?:should|may|ought to|must) be (?:disposed of|thrown (?:away|out))\\b|\\bnever any good (?:after|again)\\b", { also: ["softened", "undecided"] }),
    p("\\btoo (?:\\w+ )?(?:poorly|far|weak|rotten|old|ill|damaged) to be (?:saved|mended|restored|rescued)\\b|\\ba flooded rug is (?:an? )?(?:dead|rubbish|lost)\\b|\\b(?:go|goes|went|off|take it|send it|put it|leave it) (?:\\w+ )?(?:to|in|on|out for) (?:the )?(?:landfill|verge|bonfire|local tip|rubbish)\\b|\\bunsalvageable\\b", { except: ["negated"], also: ["softened", "undecided"] }),
  ],
  number: [
    p("\\b(?:fetch|bring(?: you)?|value (?:it|this|that),?|put (?:its|the|a) (?:value|price)|insure (?:it|this)) (?:(?:at|on|for|about|easily|madam|sir|no|less|than|around|it|of|some|six|seven|or)[, ]+)*(?:NUMBER (?:hundred|thousand|grand)|AMOUNT|thousands)\\b", { except: ["ranged", "hedged", "negated"] }),
    own("\\b(?:(?:a )?few more|several more|many more|two more|three more) (?:decades?|generations?)\\b.*\\bnot (?:\\w+ )?(?:too much|asking)\\b"),
    p("\\bsee (?:\\w+'s? ){0,4}(?:\\w+ )?out\\b(?<=\\b(?:it|rug|carpet|edge|binding|fringe) will see .*)", { also: ["softened"] }),
  ],
};
