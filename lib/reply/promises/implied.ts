import { own, p, type Pattern, type RuleId } from "./rule";

const TELLING = "(?:told|sent|said|written|given|kept|mentioned|shown|it|the|a|an|any|no|time|room)\\b";
const ONLY = "(?:only|sole|one|hardest|biggest|last|chief) (?:\\w+ )?(?:difficulty|problem|trouble|worry|thing|question|part|sign|reminder|evidence|job|decision|task|challenge|surprise|clue|memory)";

/** What a sentence means without saying it outright, for the rule it breaks: by a sign, a joke, an old story, by what ought to have been. */
export const IMPLIED: Readonly<Partial<Record<RuleId, readonly Pattern[]>>> = {
  certainty: [
    // A sign that proves a fibre, or rules one out
    p("^(?!.*\\bCLOSER\\b).*\\bSIGN\\b.{0,60}?\\bSETTLES", { also: ["softened"] }),
    own("(?<!\\bwe )(?<!\\bi )\\b(?:there (?:is|are)|contains?|holds?|you have|has|have) (?:no|zero|not (?:an?|one|any)(?: \\w+)?(?: (?:strand|thread|fibre|trace|scrap|shred|hint|bit) of)?) (?:\\w+ )?FIBRE\\b(?! (?:label|sample|yarn))"),
    own("\\b(?:it|this|that|RUG) (?:is|are) (?:SURELY )*not (?:an? |any |real |pure |made of |made from )*FIBRE\\b(?! that\\b)"),
    own("\\bFIBRE (?:does|do) not (?:come|enter) into it\\b"),
    p("^(?!.*\\bCLOSER\\b).*\\b(?:(?:strike|cross|rule|count|scratch|write) (?:out |off )?FIBRE(?: (?:off|out)\\b)?|FIBRE can be (?:ruled out|struck off|crossed off|excluded|forgotten))", { also: ["softened"] }),
    p("^(?!.*\\bCLOSER\\b).*\\b(?:we|i|you|one|photos?|pictures?|SIGN) (?:have |has |can |may |could )?(?:\\w+ly )?(?:rules?|ruled|excludes?|exclude|excluded|discounts?|discounted|dismiss(?:ed)?) (?:out )?(?:FIBRE|CAUSE|TROUBLE)\\b|\\b(?:FIBRE|CAUSE|TROUBLE) (?:(?:we|i|you) can (?:discount|exclude|rule out|dismiss)|is (?:ruled out|excluded|out of the picture))\\b", { also: ["softened"] }),
    p("\\bFIBRE it is$", { except: ["reported"], also: ["softened"] }),
    p("\\bFIBRE is what (?:it|this|you|lies|we)\\b|\\b(?:answer|verdict|truth) is (?:\\w+ )?FIBRE\\b|\\byou (?:own|possess|are the (?:proud |lucky )?owner of) an? (?:\\w+ )?(?:FIBRE|ORIGIN)\\b", { also: ["softened"] }),
    p("^(?:\\w+ ){0,3}(?:FIBRE|ORIGIN|CAUSE|TROUBLE|dyes?|colou?rs?), (?:every (?:one|single)|each (?:one|and)|all of|the lot|through and through|without exception|and nothing|plain and simple|pure and simple|no more and)", { also: ["softened"] }),
    p("\\bas (?:any(?:body|one)|any fool|any \\w+|a child|a blind man|even a \\w+) (?:can|could|will|would) (?:see|tell|spot|know|say)\\b|\\b(?:you|any(?:body|one)|any fool|one|a child) can (?:see|tell|spot) (?:it |that |this )?(?:by|from) (?:the|its)\\b(?! (?:photo|picture))", { also: ["softened"] }),
    p("\\bSIGNs? (?:says?|speaks?|spells?|means?) (?:\\w+ )?(?:FIBRE|ORIGIN|NUMBER)\\b|\\bSIGN tells? its own story\\b|\\bSIGNs? speaks? for (?:itself|themselves)\\b", { also: ["softened"] }),
    // A mark named as a fact
    p("\\bTROUBLE\\bGAP (?:is|are|was|were) (?:SURELY |WHOLLY |all |just |the |an? |old |dried |fresh |some |your |plain )*(?:\\w+ )?(?!damp\\b|cleaning\\b|heat\\b|dye\\b)CAUSE\\b(?! (?:free|test|resistant))", { also: ["softened"] }),
    p("\\bno other (?:way|thing|reason) (?:it|that|this|for)\\b", { except: ["negated", "hedged"] }),
    p("^(?:(?:pure|real|genuine|proper|old|hand-knotted) )*FIBRE(?:,? (?:that|this|it is)|, (?:NUMBER|a hundred|one hundred|no question|all of it).*)?$", { also: ["softened"] }),
    p("\\b(?:it|they|that) (?:is|are) (?:\\w+ly )?(?:fast|colou?rfast)\\b", { also: ["softened"] }),
    // That nothing needs to be looked at
    p("\\b(?:no|not|not have|not having|without) (?:to |the )?need to (?:see|look|hold|touch|inspect|handle|feel|send)\\b.*\\b(?:know|tell|say|judge)\\b|\\bno need to (?:see|look at|hold|touch|inspect|handle|feel)\\b|\\bnot have to (?:see|look|hold|touch|inspect|handle|feel)\\b.*\\bto (?:know|tell|say|judge)\\b", { except: ["negated", "undecided"] }),
    p("\\b(?:tests?|testing|inspection) (?:is|are) (?:only|just|merely|purely|simply|no more than) (?:an? )?(?:formality|form|show|habit|paperwork)\\b|\\b(?:only|just) (?:test|inspect|look) because\\b|\\bwho needs an? (?:\\w+ )?(?:laborator\\w+|lab|test|microscope|inspection|expert)\\b|\\bwe know the answer already\\b|\\b(?:i|we) knew (?:what|it|at once|straight)\\b", { except: ["hedged"] }),
    p("\\bskip the (?:look\\w*|tests?|testing|visit|inspection|bench)\\b"),
    p("\\bnothing (?:an?|the) (?:inspection|test|visit|laborator\\w+|look|microscope) (?:would|could|will|can) (?:tell|show|add|teach|change)\\b|\\byour (?:words?|photos?|pictures?|description|letter) (?:is|are) (?:plenty|enough|all (?:i|we) need)", { except: ["negated", "undecided", "hedged"] }),
    p("\\bonly (?:be )?one (?:possible )?(?:culprit|cause|explanation|source|reason)\\b", { except: ["hedged"] }),
    p("\\bwhat (?:has )?happened(?: here)? (?:is|was) (?:that|this|simple|clear|plain)\\b", { also: ["softened"] }),
    // How far it goes
    own("\\b(?:TROUBLE|wet|water|moisture|PRON|DET (?:\\w+ ){0,2}RUGPART)\\bGAP (?:(?:goes|go|went|gets?|got|reach(?:es|ed)?|travel(?:s|led)?) no (?:deeper|further|farther)|(?:has|have|did) not (?:travel\\w*|spread|reach\\w*|go(?:ne)? (?:deep\\w*|far\\w*|further|through)|got? (?:deep\\w*|far\\w*|further|through))|(?:was|were|is|are) (?:never|not) (?:touched|reached|affected|harmed|involved))\\b"),
    p("\\b(?:TROUBLE|wet|water|PRON|burn)\\bGAP (?:(?:stops?|stopped|stays|stayed|ended|ends) (?:at|on|short of|before) (?:the|its)|(?:is|are|was|were) (?:SURELY |WHOLLY |only |just |all )*(?:confined to|limited to|skin[- ]deep|passing|short-lived))\\b", { also: ["softened"] }),
    own("\\b(?:TROUBLE|stiffness|PRON|DET \\w+)\\bGAP (?:is|are) not (?:permanent|serious|deep|lasting|structural|active|anything serious|(?:here|there) to stay|for ever|forever)\\b"),
    // How it was made or dyed
    p("\\b(?:dyes?|(?:the|these|those|every|all the|its|your) (?:colou?rs?|blues?|reds?|greens?|yellows?|browns?|oranges?|pinks?))\\bGAP (?:is|are|was|were) (?:SURELY |WHOLLY |all |an? |the |of )*(?:natural|vegetable|plant|synthetic|chemical|chrome|aniline|azo|indigo|madder|cochineal|set|fixed|steady)\\b", { also: ["softened"] }),
    p("\\b(?:it|this|RUG|she) was (?:\\w+ly )?(?:woven|knotted|made|tufted|dyed) (?:before|after|during|under|for|between|long)\\b", { also: ["softened"] }),
  ],
  safety: [
    p("\\bRISKY\\b(?: \\w+){0,6} (?:is|are|need|needs|will|does|do|should) (?:\\w+ly )?not (?:be )?(?:something (?:that )?(?:you |one |anyone )?(?:need|have|ought|should|will)\\b|an(?:ything|d)? (?:issue|you)|a (?:worry|concern|problem|thing)|on the cards|apply|arise|concern|trouble|bother|affect|enter into it|come into it|matter)\\b", { except: ["negated", "undecided", "hedged"] }),
    p("\\bRISKY\\b(?: \\w+){0,4} (?:is|are) (?:SURELY |WHOLLY )*(?:neither here nor there|off the table|a non-?issue|no (?:issue|problem|concern|worry|obstacle)|irrelevant|nil|zero|nothing to (?:worry|think|fear)|something (?:that |which )?happens? to (?:other|some)|academic|immaterial|negligible|beside the point|ruled out)\\b", { except: ["negated", "undecided", "hedged"] }),
    p("\\b(?:cross|strike|scratch|tick) (?:the |any )?(?:RISKY|TROUBLE) (?:off|out|from)\\b|\\bforget (?:all )?about (?:the |any )?RISKY\\b|\\b(?:give|spare) (?:the |any )?(?:RISKY|TROUBLE) (?:another|a second|a) thought\\b", { except: ["negated"] }),
    // Health
    p("\\b(?:spores?|mould|mold|mildew|black spots?|dust|mites?|moths?|eggs?|fumes?|breathing (?:it|them|that) in)\\b(?: \\w+){0,3} (?:is|are|does|do) (?:SURELY |WHOLLY |quite )*(?:harmless|safe|nothing|no harm|fine|dead|all dead|not dangerous)\\b", { except: ["negated"], also: ["softened"] }),
    p("\\bclean enough to\\b|\\b(?:asthma|allerg\\w+|cough\\w*|chest|breathing)\\b(?: \\w+)? (?:will|is going to) (?:improve|clear|go|get better|disappear)\\b|\\b(?:can|may) go (?:straight |right )?back (?:on|in|over|under|to) (?:the|your|its)\\b"),
    own("\\b(?:TROUBLE|dyes?|colou?rs?|reds?|blues?|greens?) (?:is|are) (?:going|moving) nowhere\\b"),
    // Every case alike
    p("\\b(?:makes? no|does not make (?:any|a)|do not make a) (?:difference|odds)\\b(?! to (?:the|our) (?:price|date))(?=.*\\b(?:FIBRE|treat|wash|clean|bath|cure|same|out)\\b)|\\bmakes? no (?:difference|odds) (?:if|whether)\\b(?=.*\\bFIBRE\\b)", { except: ["negated", "undecided"] }),
    own("\\b(?:does not|do not) matter (?:what|which|how (?:old|big|deep|bad|long))\\b(?=.*\\b(?:suits?|works?|out|comes?|same|safe|fine|clean|lifts?)\\b)|\\b(?:cause|fibre|age|dye) (?:does not matter|makes? no (?:odds|difference)|is irrelevant)\\b"),
    p("\\b(?:suits?|fits?|works? (?:on|for|with)|agrees? with|right for|kind to|good for|safe (?:on|for|with)) (?:them all|all|everything|anything|any \\w+|every \\w+|whatever|each and every)\\b", { except: ["hedged"], also: ["warned"] }),
    own("\\bthere is nothing (?:\\w+ )?(?:to|worth) (?:test|testing|fear|worry)\\b"),
  ],
  result: [
    // Sharp eyes that find nothing
    p("\\bSHARP_EYE\\b(?: \\w+){0,2} (?:would|could|will|can|is going to|are going to)(?: (?:not|never|struggle to|fail to|be hard (?:put|pressed) to|be able to|even|ever|so much as|need a \\w+ to))* FINDS\\b(?<=\\b(?:not|never|no|struggle|fail|hard|need)\\b.*)(?! (?:from|whether|what|how|why|if|which|us|you|FIBRE|the fibre))(?!.*\\b(?:photos?|pictures?|without seeing|inspection|tests?)\\b)", { except: ["negated", "hedged"] }),
    p("\\b(?:pass|inspect|examine|go over|goes over|look at|look over|walk past|walk over) (?:it|the|your|our|this)\\b.{0,40}\\b(?:without (?:a second (?:glance|look|thought)|noticing|seeing|spotting|knowing)|none the wiser|find nothing|be none)", { except: ["negated", "hedged"] }),
    p("\\b(?:need|needs|take|takes) an? (?:\\w+ )?(?:microscope|magnifying glass|loupe|bloodhound|detective|sniffer dog|forensic \\w+) to (?:find|see|spot|tell|smell|know|detect)\\b(?!.*\\bfibre)"),
    p("\\b(?:i|we) (?:would |will )?(?:defy|challenge|dare) (?:any(?:body|one)|you|your|the|an?)\\b", { except: ["negated"] }),
    p("\\b(?:friends|guests|visitors|neighbours|neighbors|people|everyone|everybody|family|your \\w+) (?:will|are going to|is going to) (?:all )?(?:ask|think|swear|want to know|assume|take it for|wonder|suppose)\\b.{0,30}\\b(?:new|bought|where you|replaced|another)\\b", { except: ["negated", "undecided"] }),
    own("\\byou will (?:\\w+ )?(?:have forgotten|forget|not (?:even )?remember|struggle to remember) (?:where|which|that|there|it (?:was|had)|what|all about)\\b"),
    // Surprise at any other ending
    p("(?<!\\bnot )(?<!\\bnot be )\\b(?:surpris\\w+|astonish\\w*|astound\\w*|amaze\\w*|shock\\w*|stagger\\w*)(?: \\w+){0,3} if\\b.*\\b(?:left|remain\\w*|still|trace|not (?:\\w+ )?(?:come|go|lift|shift|work|clean|be gone)|stay\\w*|fail\\w*|any(?:thing)?)\\b", { except: ["negated", "hedged", "undecided"] }),
    p("\\b(?:cannot|can not|could not) (?:see|imagine|think|remember|recall|name|picture)(?: of)? (?:it|that|this|them|us|one|any|anything|a (?:\\w+ )?TROUBLE)(?: \\w+){0,3} (?:fail\\w*|not|stayed|beat\\w*|defeat\\w*|go(?:ing)? wrong|resist\\w*|getting the better)\\b", { except: ["negated", "hedged"] }),
    own("\\b(?:no|not any|not a) (?:\\w+ )?(?:reason|cause|grounds)\\b.{0,12}\\b(?:why )?(?:it|they|that|this|we|yours|DET \\w+) (?:should|would|will|could|can)(?: not| never| fail)"),
    own("\\bnothing (?:\\w+ )?(?:stands?|comes?|gets?) (?:between|in the way)\\b|\\bnot a question of if\\b|\\bnot if but when\\b|\\byou will not (?:be sorry|regret|be disappointed)\\b|\\bnot (?:expect|intend|plan|mean)(?: to have)? to (?:disappoint|fail|let you down)\\b|\\bnot as if (?:we|i) (?:ever|had ever|have ever)\\b"),
    p("\\bwhat (?:could|can) (?:possibly )?go wrong\\b", { except: ["hedged"] }),
    p("\\b(?:stands?|stand|comes?|rises?|lies?) (?:up |flat |back )*(?:again )?(?:by itself|by themselves|of its own accord|on its own|all on its own)\\b", { also: ["softened"] }),
    p("\\bwould we (?:ever )?(?:let you down|lie|fail you)\\b|\\bwe have got (?:it|this|you)\\b|\\bthink no more (?:of|about) it\\b|^not (?:yours|this one)$|\\blook a picture\\b", { except: ["negated", "hedged"] }),
    p("\\b(?:money back|refund(?:ed)?|free of charge|no charge|nothing to pay|not pay|do it again)\\b.*\\b(?:if|unless|until)\\b.*\\b(?:not|perfect|spotless|gone|happy|clean)\\b|\\b(?:might|may|could) never have (?:been|happened|existed)\\b|\\bas (?:if|though) nothing (?:had )?(?:ever )?happened\\b", { except: ["negated", "undecided", "hedged"] }),
    p("(?:^|, )(?:\\w+ ){0,2}cleans? up (?:fine|well|nicely|lovely|beautifully|a treat)?$|\\bwhat others (?:leave|miss|fail|cannot|could not|ruin|give up)\\b", { also: ["softened"] }),
    p("\\b(?:has|have) not (?:yet )?(?:met|seen|tried) (?:us|ours|me|mine|our \\w+)\\b", { except: ["negated", "undecided"] }),
    own("\\b(?:you|they|nobody|no one) (?:cannot|could not|will not|would not|will never) (?:\\w+ )?(?:tell|see|find|know|have known|spot|say|guess) (?:where|that there|it was (?:ever|there)|there (?:ever )?was)\\b(?! .*\\b(?:photo|picture))"),
    p("\\b(?:undertake|pledge|vow|promise) to (?:return|bring|make|get|give|RESTORE) (?:it|them|your|the|that|every)\\b"),
    own("(?<!\\b(?:we|i|nobody) (?:will|shall|would) .*), (?:(?:i|we) (?:can )?|that (?:i|we) )(?:promise|swear|guarantee)(?: you)?$"),
    p("^(?:it|that) (?:always |just |simply )?comes? (?:straight |right |clean )?out$|^(?:and |because )?we can RESTORE it$", { except: ["hedged"] }),
    // After our work, for good
    own("\\b(?:after|once|following|since|with) (?:our|the|a|we have|it is|we are|treated|cleaned|that)\\b.*\\b(?:no TROUBLE (?:returns?|comes|survives?|is left)|(?:do|does|will) not (?:\\w+ )?(?:come back|return|survive|fray|soak|recur|reappear|get in|get through|take hold|stick|come again))\\b(?! (?:to you|until|unless))"),
    own("\\bTROUBLE (?:do|does|will) not (?:\\w+ )?(?:come back|return|recur|reappear)(?: \\w+){0,3} (?:after|once|to a rug|from|when) "),
    own("\\b(?:moths?|beetles?|TROUBLE)(?: \\w+)? (?:never gets in|nor ever|never ever)\\b"),
    p("\\b(?:stays|remains|is) free of TROUBLE\\b", { also: ["softened"] }),
    p("\\b(?:if|should|were) (?:it|the TROUBLE|that TROUBLE)(?: ever)? (?:\\w+ )?(?:shows?|smells?|come|comes|returns?|appears?|reappears?|back)\\b.*\\b(?:blame|not us|not our|it is (?:your|the)|wrong with|fault)\\b|\\bsomething is wrong with the\\b|^it is (?:your|the) \\w+ and not (?:us|our)\\b", { except: ["undecided", "negated", "hedged"] }),
    // Short forms
    p("\\bno \\w+,? no (?:fee|charge|pay|bill|money|cost)\\b|\\bout (?:it|they) (?:comes?|goes?)\\b|\\b(?:it is|they are|that is) (?:gone|sorted|done|clean) (?:by|in|within|before)\\b|\\bone \\w+ (?:fits|cures|suits|does) (?:all|everything|them all)\\b|^(?:dead |so |really |very |quite )?(?:easy|simple|straightforward|no problem|not a problem|no bother|no trouble|piece of cake|sorted|done deal)(?:,|$)", { except: ["negated", "hedged"] }),
    own("^(?:no|not a|not one|zero) (?:\\w+ )?TROUBLE (?:left|remaining|after|when|will)\\b"),
    // A joke that it is over
    own("\\bthe (?:only|hardest|biggest) (?:\\w+ ){1,6}(?:is|will be) (?:remembering|finding|recalling|pointing)\\b"),
    p(`\\b(?:your ${ONLY}(?: \\w+){0,3} will be|the ${ONLY} (?:\\w+ ){0,3}?(?:for you|you (?:will )?(?:have|face|see|notice)|left|remaining|of (?:the|that|your) (?:\\w+ )?(?:TROUBLE|flood|fire|leak|party|puppy))(?: \\w+){0,3}? (?:will be|is going to be|is|are))\\b(?! (?:the (?:inspection|price|cost)|whether))`, { also: ["softened"] }),
    p("\\bwe (?:say|tell you|answer) yes\\b|\\bof course (?:it|they|we|you|that) (?:can|will|is|are|does|do)(?:,|$)|\\b(?:they|it|these|we) always (?:can|do|does|will|have)$"),
    p("\\bwhen (?:the |your |that )TROUBLE (?:has|have|is|are) (?:\\w+ )?(?:gone|out|lifted)\\b"),
    // A trouble that is beaten
    p("\\bTROUBLE\\bGAP (?:will|shall|would|can|could|does|do|has|have|did) not(?: \\w+ly)? (?:see|live|last|survive|outlive|withstand|resist|hold out|linger|make it (?:past|to|through)|know what hit|stand a chance|have a (?:chance|prayer|hope)|got? (?:past|by|the better)|gotten|slip past|get past|get the better)\\b(?! of (?:going|coming|leaving|being))", { except: ["negated", "hedged"] }),
    p("\\bTROUBLE(?:'s?)?\\bGAP (?:(?:has|have) (?:finally |just )?met (?:its|their)|days are numbered|(?:is|are) (?:already )?(?:on (?:its|their) way out|living on borrowed time|no match for|no bother|nothing new)|stands? no chance|never (?:gets?|got|makes?) (?:past|it)|holds? no|is as good as)\\b", { except: ["negated"] }),
    own("\\bno (?:\\w+ )?TROUBLE(?: \\w+){0,3} (?:outlives?|outlasts?|survives?|leaves?|escapes?|lasts?|beats?|resists?|gets? (?:past|away)|stays|holds? out)\\b"),
    p("\\b(?:home|back|rug|returned?|leaves?|left|collected)\\b.{0,40}\\b(?:without|with no|with not|free (?:of|from)) (?:a |any |a single |the slightest )?TROUBLE\\b(?<!\\b(?:keep|bring|store|send)\\b.*)", { except: ["negated"] }),
    // An old success told as a promise
    p("\\b(?:we|i|they|he|she)(?: have| had)? (?:\\w+ly )?(?:seen off|seen|saved|fixed|had|handled|beaten|cleaned|rescued|shifted|dealt with|done|tackled|mended) (?:far |much |a lot |many )?(?:worse|tougher|harder|dirtier|older)\\b(?!,? (?:and|but|ones? (?:fail|stay)))", { also: ["denied"] }),
    p("\\bwhat (?:works?|worked|did it|saved|was good enough)(?: \\w+)? (?:for|on|with)\\b.*\\b(?:works?|work|do|saves?|does|is good enough) (?:for|on|with|in) (?:this|it|yours|your|that)\\b", { also: ["softened"] }),
    p("\\b(?:they|everyone|anyone|anybody|he|she) will (?:all )?(?:tell|say|vouch|swear)\\b.{0,30}\\b(?:what we did|how (?:good|well)|we (?:did|got|saved)|for theirs)\\b"),
    p("\\b(?:yours|this one|your (?:rug|case|stain|mark)) is (?:SURELY )?an? (?:\\w+ )?(?:easy|simple|straightforward|mild|textbook|gentle) (?:one|case|job)\\b|\\b(?:yours|this one|it|they|that) holds? no (?:terrors?|fears?|mysteries|surprises?|secrets?)\\b", { except: ["negated"], also: ["softened"] }),
    p("\\b(?:cried|wept|cry|weep) (?:for|with) joy\\b|\\btears of joy\\b|\\bcould not believe (?:her|his|their|my|your) (?:eyes|luck)\\b|\\bclean as a (?:whistle|pin|new pin)\\b", { except: ["negated"] }),
  ],
  harm: [
    p("\\b(?:AGENT|HEAT)\\b.*\\b(?:hardly|scarcely|barely|could not possibly) (?:do|does|cause|harm|hurt)\\b|^do not be (?:afraid|scared|shy) (?:of|with) (?:\\w+ )*(?:AGENT|HEAT|ACTING)\\b|\\bon (?:FIBRE|RUGPART|DET \\w+) it works (?:beautifully|nicely|well|wonders|fine)\\b", { except: ["negated"], also: ["ours"] }),
    p("\\b(?:AGENT|wash|suds|sponge|talc|damp cloth|wet cloth)\\b.*\\b(?:(?:will )?(?:keeps?|stops?|holds?|prevents?) (?:it|the|your) (?:(?!away)\\w+ ){0,3}?(?:from|fresh|soft|where|until|down|in place)|you will be fine)\\b", { also: ["ours", "undecided"] }),
    p("\\bAGENT\\b.*\\b(?:pulls?|draws?|lifts?|loosens?|dissolves?|kills?|floats?) (?:out )?(?:the|any|it|them)\\b", { also: ["ours", "warned", "undecided", "softened"] }),
    p("^(?!.*\\b(?:away from|keep\\w*|dry white|plain white|wait\\w*|leav\\w+|avoid\\w*)\\b)(?=.*\\b(?:AGENT|HEAT|ACTING)\\b).*\\b(?:(?:is|was|be|there is|see) (?:no (?:harm|danger)|nothing wrong) (?:in|with)|(?:does|do|did|will do|has done) (?:\\w+ )?no (?:harm|damage)|never (?:did|hurt|harmed|damaged|does|do)\\b|(?:will|would|does|do|can|could) not (?:\\w+ )?(?:hurt|harm|do (?:it |them |the rug )?any (?:harm|damage))|nobody (?:ever )?(?:hurt|harmed|ruined|damaged|spoilt|spoiled))\\b", { except: ["negated"], also: ["ours"] }),
    p("\\b(?:an?|some|one|two|any|the|all) (?:[\\w-]+ ){0,2}?MEASURE (?:[\\w-]+ ){0,4}?(?:AGENT|HEAT)\\b.*\\bWORKS\\b(?!.*\\b(?:worse|harm\\w*|damag\\w*|ruin\\w*|risk\\w*|ring|for good|permanent\\w*|yellow|felt\\w*|bleed|run)\\b)", { also: ["ours", "undecided"] }),
    p("\\b(?:any|some|ordinary|plain|supermarket|everyday) (?:\\w+ ){0,2}AGENT (?:\\w+ )?(?:does|do|will do|works?) (?:the (?:job|trick)|nicely|well|fine|wonders)\\b", { also: ["ours"] }),
  ],
  blame: [
    p("\\b(?:(?:PARTY|people|firm)\\b(?: (?!(?:you|we|i|and|may|might|could)\\b)[\\w&'-]+){0,6}|whoever \\w+ it\\b[^.]{0,80}?),? (?:has|(?<!\\b(?:may|might|could) )have|had) (?:\\w+ly )?(?:felted|stripped|torn|faded|bled|matted|frayed|stretched|warped|stained|taken the (?:colou?r|dye|pile|life)|washed out|left it)\\b"),
    p("\\b(?:PARTY|cleaner|firm)\\b(?: \\w+){0,6} (?:stripped|felted|tore|matted|left (?:it|the \\w+|behind)(?: \\w+){0,2} (?:in the (?:wet|damp|sun|rain)|wet|damp|soaking)|rush(?:es|ed) (?:the|a|it|every)|dri(?:es|ed) (?:\\w+ ){0,2}too)\\b", { also: ["hedged"] }),
    p("\\b(?:sold (?:it|this|that|you (?:\\w+ )?FIBRE) (?:and called|at the price of)|passed (?:it|this|that|FIBRE) off as|called it (?:\\w+ )?FIBRE and (?:knew|charged)|knew (?:better|full well|very well))\\b", { also: ["hedged"] }),
    p("\\bwhat happens when (?:an? |the |your )?(?:\\w+ )?(?:firm|shop|cleaner|company|somebody|someone|PARTY)|\\bthing you get when\\b|\\b(?:cleaning|carpets|PARTY)'s (?:handiwork|doing|work) (?:SURELY|and)|^(?:it|he|she|they) did$|\\b(?:rightly so|so (?:he|she|it|they) did$|you are right to (?:blame|suspect)|(?:he|she|they|it) (?:plainly|clearly|obviously) did$)", { also: ["softened"] }),
    p("\\b(?:PARTY|they|he|she) (?:has|have|had) no (?:licence|license|training|clue|business|qualifications?|experience)\\b", { except: ["negated"], also: ["softened"] }),
    p("\\b(?:nobody|no one|few|a child) (?:else )?could have (?:\\w+ )?(?:\\w+ ){0,2}(?:as badly|so badly|worse)\\b", { except: ["negated", "hedged"] }),
    own(`(?:^|\\b(?:and|but|because) )had (?:only )?(?:the |your |that |those |this |their )?(?:\\w+ ){0,3}?PARTY\\b(?: at \\w+ \\w+| \\w+){0,4}? (?!${TELLING})(?:\\w+ed|known|done|taken|thought|understood|bothered|cared|read)\\b`),
    own(`\\bif (?:only )?(?:the |your |that |those |this )?(?:\\w+ ){0,3}?PARTY (?:had|would have) (?:only |just |even |not )*(?!${TELLING})\\w+`),
    p("\\b(?:any|an?|every|no) (?:\\w+ )?(?:competent|decent|proper|good|careful|honest|reputable|half-decent|self-respecting|responsible|trained|qualified|real) (?:\\w+ )?(?:PARTY|person|professional|tradesman|workshop)\\b(?: \\w+){0,2} (?:would|should|could) (?:never |not |surely |\\w+ly )*(?:have \\w+|know better)\\b", { except: ["negated"] }),
    p("\\b(?:this|that) is what (?:happens|you get|comes)\\b.{0,12}\\b(?:when|from|if|of) (?:people|they|somebody|someone|he|she|you (?:let|trust|hire)|PARTY|amateurs)\\b|\\byou get what you pay for\\b|\\b(?:and )?they know who they are\\b|\\b(?:was|were|been) asleep\\b|\\btakes a special (?:sort|kind) of\\b|\\bknow (?:their|his|her) (?:hand|handiwork|work) (?:when|anywhere|by)\\b", { also: ["softened"], except: ["undecided"] }),
    p("\\b(?:PARTY|that (?:shop|firm|place|lot)) (?:has|have) (?:done|tried|sold|pulled|ruined) (?:this|it|that|the same)\\b(?!.*\\bquoted\\b)", { also: ["softened"] }),
    p("\\b(?:undoing|undo|put right|putting right|clear up|clearing up|cleaning up after|mend|mending|repair|fixing|fix)\\b.{0,25}\\b(?:what|after|work|mess|messes|damage|handiwork)\\b.{0,30}\\bPARTY\\b|\\bput right (?:\\w+ ){0,3}of PARTY's|\\b(?:sort|kind|type) of (?:mess|botch|damage|job|work|thing)\\b.{0,20}\\bPARTY\\b", { also: ["softened"] }),
    own("\\b(?:should|ought to) be (?:ashamed|struck off|closed down|shut down)\\b|\\b(?:should|ought) not (?:to )?be (?:let|allowed|trusted)\\b|\\bwould not (?:let|trust) (?:them|him|her|PARTY) (?:near|with)\\b|\\b(?:draw|reach) your own conclusions?\\b|\\bi should not say (?:so|this|it)\\b"),
  ],
  cover: [
    p("\\b(?:your|the|this) (?:claim|case) is (?:SURELY |WHOLLY )*(?:sound|good|solid|strong|valid|watertight|safe|as good as)\\b", { also: ["softened"] }),
    p("\\byou (?:will|would|shall|should|must) (?:\\w+ )?(?:win|be paid|get (?:it|the money|your money|every penny) back)\\b|(?<!\\bour )\\b(?:policy|insurance|cover|warranty|contract) (?:\\w+ )?(?:excludes?|includes?|covers?|does not cover|rules out|pays?)\\b|\\bdo not bother (?:claiming|asking them|with a claim|to claim)\\b", { except: ["negated"], also: ["softened"] }),
    p("\\b(?:no|any|every) (?:\\w+ )?(?:insurers?|insurance company|judge|court|tribunal|adjuster|policy|ombudsman|seller|shop|solicitor|lawyer)\\b(?: \\w+){0,4}? (?:would|will|could|is going to|dares?)(?: (?:not|dare|ever|never|have to|dream of))* RULES\\b", { except: ["negated", "hedged"] }),
    own("\\b(?:not|without) a leg to stand\\b|\\bnot an? (?:\\w+ )?leg to stand\\b"),
    p("\\bon the nod\\b|\\bas good as (?:in the bank|paid|settled|won)\\b|\\bsee it your way\\b|\\bexpect (?:an?|your|the) (?:\\w+ )?(?:cheque|check|payout|pay-?out|settlement|refund)\\b|\\b(?:claims?|losses|cases?)(?: like (?:this|that|yours|these))?(?: \\w+)? (?:goes?|sails?|gets?|get|is|are) (?:always )?(?:through|paid|settled|covered|approved|thrown out|turned down)\\b", { also: ["softened"] }),
    own("\\b(?:insurers?|insurance|adjuster|they|policy|company) (?:will|would) not (?:touch|wear|stand for|look at|entertain|budge)\\b"),
  ],
  verdict: [
    p("\\b(?:RUG|it|this|this one) (?:cannot|can not|can never|will never) be (?:\\w+ )?(?:mended|repaired|restored|cleaned|put right|fixed|brought back)\\b(?! (?:at home|until|before|with|by|in|without))", { except: ["negated"] }),
    p("\\bno (?:bringing|saving|mending|rescuing) (?:this|it|that|your|the)\\b|\\bgood money after bad\\b|\\bflogging a dead horse\\b|\\bnot long for this world\\b", { except: ["hedged"] }),
  ],
  number: [
    p("\\banother generation\\b|\\b(?:half|most|a third|two thirds|a quarter) (?:of )?the TROUBLE (?:goes|comes|lifts|will go)\\b", { also: ["softened"] }),
    p("\\b(?:has|have|with|got) (?:\\w+ ){0,2}(?:years|decades) (?:in|of life in|of wear in|left in) (?:it|them|her|the|that)\\b", { also: ["softened"] }),
    p("\\b(?:insur\\w+|valued?|worth \\w+ing) (?:it |that |this )?(?:for|at) (?:CURRENCY ?)?NUMBER\\b|\\bNUMBER(?: hundred| thousand)?(?: and NUMBER)?,? (?:all told|all in|in total|flat|and that is that|not a penny)\\b|\\bno surprises\\b", { also: ["softened"], except: ["negated"] }),
  ],
};
