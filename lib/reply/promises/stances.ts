import type { RuleId } from "./rule";
import type { Stance } from "./stance";
import { HELD_BACK } from "./stances-held-back";
import { WARNED } from "./stances-warning";
import { expression } from "./vocabulary";

const BOAST = "ours|with us|not us|like us|because we|we (?:can|know|deliver|do|will|always|never)|(?:has|have) not (?:yet )?(?:met|seen|tried) (?:us|our\\w*|me|mine|my work)|proves? you right";
const OUR_BOAST = `\\b(?:${BOAST}|wrong|mistaken)\\b`;
const OUR_NOT_KNOWING = "\\b(?:no (?:way|means) of (?:knowing|telling|saying)|(?:we|i|photos?|pictures?|anything we) (?:\\w+ )?(?:cannot|could not|can not|can neither|are not able to|do not|would not|were not|was not|are in no position|have (?:nothing|no (?:view|opinion|grounds|evidence))|had no part)|(?:and|or) (?:cannot|could not)|not (?:ours|for us|our place|something we|a thing we|anything we)|beyond (?:anything|what) we|only what can be known|neither confirm nor|take no side|leave that to others)\\b";
const SAYERS = "(?:any(?:one|body)|some(?:one|body)|whoever|people|folk|those|firms?|companies|cleaners|workshops?|an?y? (?:\\w+ )?(?:firm|company|cleaner|workshop|shop|man|person|letter|leaflet|website|advert)|advertisements?|adverts?|websites?)";
const SAYS = "(?:assur\\w+|promis\\w+|guarantee\\w*|says?|said|tells?|told|gives?|sells?|offers?|claims?|calls?|swears?|quot(?:es?|ing)|advertis\\w+|boasts?|vows?)";
const DOUBTED = "\\b(?:guess\\w*|sell\\w* (?:you )?(?:hope|dreams?|a dream|snake oil)|selling (?:you )?(?:hope|dreams?)|wary|beware|suspicious|sceptical|skeptical|careful|caution|pinch of salt|run a mile|walk (?:away|on)|worth (?:very )?(?:little|nothing)|not worth|not yet (?:turned|seen|met|held|touched|looked|opened)|(?:has|have) (?:not|never) (?:yet )?(?:seen|turned|met|held|touched|looked|opened)|fewer|stopped (?:looking|thinking|learning)|ask (?:them|him|her|it) |bluff\\w*|lying|fibbing|dreaming|should have (?:seen|met)|cannot (?:know|have (?:seen|looked|tested))|no way of knowing|more than (?:they|he|she|anyone) (?:can|could|knows?)|do not (?:believe|trust)|not (?:believe|trust)|doubt (?:it|them|him|her)|taking a chance|in a hurry|not being (?:straight|honest|fair)|mislead\\w*|question (?:them|him|her))\\b";
const DEED = "(?:(?:we|i|somebody|someone|one of us|two of us|both of us|our \\w+)(?: \\w+ly)? (?:will|shall|would|are going to|always)(?: \\w+ly| always| first| also)* (?:tell|ring|call|phone|write|ask|say|let you|inform|explain|stop|test|look|show|send|keep you|answer|reply|be (?:honest|frank|open|straight|careful)|treat|handle|do (?:our|my) best|try|take (?:care|photos?|our time|every care)|weigh|photograph|measure|give you an?|start no|do nothing|not (?:start|begin|touch|wash|charge|go ahead|proceed))|(?<=\\b(?:is|us|me|promise|undertake|pledge|guarantee|vow|word|and)) to (?:tell|ring|call|phone|write|ask|say so|say when|let you|inform|explain|stop|test|look|show|send|keep you|answer|reply|be (?:honest|frank|open|straight|careful)|do (?:our|my) best|try)|you (?:will|shall|can|may)(?: \\w+)? (?:hear|know (?:the|what|before|why|how)|get an? (?:\\w+ )?(?:estimate|quote|report|call|answer|letter|message|photo|reply)|receive|be (?:asked|told|given|shown|consulted|informed|kept|rung|called)|have (?:our|an?|the) (?:\\w+ )?(?:price|estimate|report|answer|last word|figures?|quote|say))|(?:no work|no washing|nothing|nobody|no one|not be (?:touched|washed|started|wetted)|no \\w+ (?:starts|begins|is done|touches|goes)).{0,40}\\b(?:before|until|without))\\b";
const OFFERED = "(?: you| is| of|,)*(?: only| simply| just)*(?: an?| our| my| every)?(?: \\w+)? (?:look|answer|phone call|call|estimate|report|care|try|reply|letter|opinion|test|effort|attention|honesty|best efforts?)\\b";
const VOW = "\\b(?:promis\\w+|guarantees?|guaranteed|(?:my|our) word|count on(?= us| me)|rely on(?= us| me)|be assured|rest assured|assure you|undertake|swear|vouch|pledge|certain of|sure of)\\b";
const OUTCOME_VOWED = "(?<!\\bnot (?:that|of|for) .*)(?<!\\b(?:cannot|not|nothing|never|no) .*)\\b(?:PERFECT|FORMER|IDIOM|gone|as new|like new|(?:RUGPART|TROUBLE|it|they)(?: \\w+){0,2} (?:will|is going to|shall) (?:COMES|hold|last|be (?:clean|out|back|saved|fine|safe))|(?:RUGPART|TROUBLE) (?:out|off|away|back))\\b";
const HARMS = "(?:turns? (?:an? |the |it |your )?(?:\\w+ ){0,2}(?:yellow|brown|grey|gray|dull|stiff)|leaves? (?:an? |the |its )?(?:[\\w-]+ ){0,3}(?:film|ring|residue|dust|patch|mark|line|crust|bloom|halo|shadow|wet|sticky|stiff|dull)|attracts? (?:more )?(?:dirt|soil|dust)|draws? (?:more )?dirt|holds? (?:moisture|water|damp)|wander|weakens?|(?:take|takes|took|taking|lose|loses|losing|lift|lifts|strip|strips|move|moves|shift|shifts) (?:the |its |your |some )?(?:dyes?|colou?rs?)|pity|shame|gamble|poor friend|no friend|not (?:kind|pretty)|unkind|last thing|nowhere near|stays? sticky|find it in|two (?:problems|troubles)|makes? (?:matters|things|it|them) worse|(?:can|may|could|might|would|will) spread|spreads|(?:should|must|ought to|and \\w+ should) never (?:meet|touch|go|come|be)|unused|unopened|stays? (?:shut|closed|in the(?! (?:room|house)\\b))|the (?:end|death|ruin) of|regret|no place|is for (?:hair|dishes|windows|cars|floors|clothes|teeth|salads?|chips|plates)|enem(?:y|ies)|(?:do|does) not (?:mix|get on|agree)|bad (?:pair|friends|company|mix)|crumbles?|brittle|yellows|burns|melts|swells|stiffens|dulls|flattens|tangles|(?:can|may|could|might|would|will) (?:bleach|yellow|burn|melt|swell|stiffen|dull|flatten|mat|tangle|break)|(?:more|further) (?:harm|trouble|damage) than|cost (?:you|us)|mistake|undo(?:es)?|worries me|does not forgive|unforgiving|horror stor(?:y|ies)|brown(?:s|ing)? (?:the|it)|beyond (?:mending|repair|help)|lasting harm|real harm|(?:do|does) (?:\\w+ ){0,4}harm|ruin\\w*|felts?|felted|felting|eats?|scorch\\w*|rots?|shrinks?|shrink|cockle|sets? (?:the |a |that )?(?:stain|mark|wine|spill|ink|colou?r|it\\b)|fix (?:the|a) (?:\\w+ )?(?:stain|mark)|too (?:much|hot|strong|harsh|wet) for|think again|do without|resist|leave (?:it|them|that) (?:be|alone)|leave the \\w+ in|not near|keep (?:it|them|that|\\w+) (?:away|off|out)|hold off|steer clear|belongs? in)";

const UNTRUE = "(?:not (?:quite |strictly |really )?(?:true|so|the case)|untrue|wrong|a myth|too simple)";
const SWEEPING = "(?:never|always|every|all|none|nothing|cannot|at all)";

/** What a claim is worth in a sentence that holds it off. */
const STANCES: readonly Stance[] = [
  ...HELD_BACK,
  ...WARNED,
  { // A vow of what we shall do, and not of what comes of it
    lifts: ["result", "certainty", "safety", "sureness"],
    shows: expression(`${VOW}(?:.{0,70}\\b${DEED}|${OFFERED})|\\bguarantee (?:covers|is (?:only )?for|extends (?:only )?to)\\b.*\\b(?:not|only|no)\\b`), unless: expression(OUTCOME_VOWED),
  },
  { // No promise, in so many words
    lifts: ["result", "certainty", "sureness"],
    shows: expression("\\b(?:not|never|nobody|no one|cannot|sooner \\w+ it than|rather \\w+ it than|rather than|less of) (?:\\w+ ){0,4}?(?:promis\\w+|guarantee|swear|vouch|certify|assure|say (?:for (?:sure|certain)|in good conscience)|bet|commit)\\b|\\b(?:am|is|are) not (?:saying|certain|sure)\\b(?! enough)|\\b(?:sooner|rather)\\b.*\\bthan (?:to )?(?:promise|guarantee|swear|bet)\\b"),
    unless: expression("\\b(?:but|however|although|though|still|yet|unless|because|hesitate|need (?:not|to)|SURELY|OATH|nobody else|no one else)\\b|[;:]|(?<!\\b(?:that|if|it|than|promise|guarantee) .*)\\b(?:IDIOM|PERFECT|FORMER)\\b"),
  },
  { // Other people's promises, and how little they are worth
    lifts: ["result", "certainty", "safety", "number", "sureness"],
    shows: expression(`\\b(?:${SAYERS} (?:who |that |which )?(?:will |would |has |have |can |\\w+ly )?${SAYS}\\b.*${DOUBTED}|${DOUBTED}.*\\b${SAYERS} (?:who |that |which )?(?:will |would |\\w+ly )?${SAYS}\\b|(?:promise|guarantee|claim|talk|offer)s? of\\b.*${DOUBTED}|(?:easy|cheap|tempting|simple enough) (?:enough )?to (?:promise|guarantee|say|claim|tell)\\b.*\\b(?:when|before|without|if|and|until)\\b)`),
    unless: expression(OUR_BOAST),
  },
  { // What the client says of somebody, of which we know nothing
    lifts: ["blame", "sureness"],
    shows: expression(`^(?:(?:as|that|when|if|i understand that|i see that|i know that|we read that|we understand that) )?(?:you|he|she|they|your \\w+)(?: \\w+ly| also)? (?:say|said|says|tell|told|tells|think|thinks|thought|believe|believes|believed|feel|feels|felt|wrote|write|writes|suspect|suspects|suspected|blame|blames|fear|are (?:sure|certain|angry|convinced)|mention|mentioned|report|reported|hold|ask|asked|reckon|reckons|suppose)\\b.*${OUR_NOT_KNOWING}`),
    unless: expression("\\b(?:rightly|proves|so (?:he|she|it|they) did|plainly|clearly|you are right|definitely)\\b"),
  },
  { // A fibre or a cause that is still to be found or ruled out
    lifts: ["certainty", "sureness"],
    shows: expression("\\b(?:to (?:\\w+ly )?(?:rule|exclude|eliminate|check for|test for|tell \\w+ from|look for)|ruling (?:out|it)|let us (?:rule|exclude|check|test|eliminate)|has to be (?:ruled|excluded|eliminated)|(?:would|will|always|first) (?:\\w+ )?(?:test|check|look) for|need (?:an?|the) (?:thread|fibre|strand|test|tuft)|needs? (?:\\w+ )?(?:ruling out|excluding)|first thing to)\\b"),
    unless: expression("\\b(?:no need|need not|not need|waste|pointless|no point|unnecessary|written all over|SURELY|picture shows|photos? shows?|never (?:run|bleed|shrink|fade)|(?:able|possible|easy|enough|enough for (?:me|us)) to (?:rule|tell)|it is (?:plainly |clearly )?FIBRE)\\b"),
  },
  { // A warning of what heat, water or a product does
    lifts: ["harm", "sureness"],
    shows: expression(`^(?!LEADIN(?:ACT|HARMACT)\\b(?! (?:from|of|on|in|alone|can|could|may|might|will|would|is|has|only|at home|leaves|takes|sets|eats|holds|ruins|makes|weakens)\\b))(?=.*\\b(?:AGENT|HEAT|PRODUCT|water|heat|sun|warmth)\\b).*\\b${HARMS}\\b`),
    unless: expression(`\\b(?:not|no|never|nothing|nobody|cannot|hardly|scarcely|without) (?:\\w+ ){0,3}?(?:${HARMS}|hurt|harm|damage)\\b|\\bso (?:please )?(?:give|go|be|sponge|use|try|rinse|hang|put|lay|dab|run|leave it (?:out|in|on|under))\\b|\\b(?:works?|lifts?|cleans?|shifts?) (?:beautifully|nicely|well|wonders|it|the stain)\\b|\\b(?:keeps?|stops?|prevents?) (?:it|the|a|any)\\b.*\\bfrom\\b|\\b(?:before|so that|otherwise|or else|to stop|lest)\\b(?=.*\\b(?:sets?|rots?|ruin)\\b)`),
  },
  { // First aid, which is dry, white and patient
    lifts: ["sureness"],
    shows: expression("\\b(?:(?:dry|plain|white|clean) (?:white |dry |cotton |plain )*(?:cloth|towel|paper)|(?:was|is) (?:always |simply |just |only )?to (?:wait|leave it)|do nothing|nothing wet|worth (?:asking|keeping|looking|a photo)|leave it (?:be|alone)|away from (?:the|your|it)|nowhere near|(?:tape|trim|cut|rub|touch) nothing)\\b|^(?:please )?(?:lay|keep|leave) it flat\\b"),
    unless: expression("\\b(?:gone|PERFECT|PRODUCT|HEAT|as new)\\b(?<!\\bno .*)(?<!\\bnot .*)"),
  },
  { // A vacuum cleaner used with care
    lifts: ["harm", "safety", "sureness"],
    shows: expression("\\b(?:hoover|vacuum)\\w*\\b.*\\b(?:gently|slowly|low(?:est)?|without (?:the|a|its) (?:\\w+ )?(?:brush|beater|bar)|(?:brush|beater|bar) (?:turned |switched )?off|suction only|from the back)\\b|\\b(?:airing|shade|waiting|turning it|leaving it|resting it|dry cloth)\\b.*\\bno harm\\b"), unless: expression("\\b(?:hard|full|PRODUCT|wet|damp|water|TROUBLE (?:will|comes?|goes?))\\b"),
  },
  { // Praise for leaving a product alone
    lifts: ["harm", "sureness"],
    shows: expression("\\b(?:right|wise|sensible|quick|good) (?:of \\w+ )?to (?:stop|keep|leave|wait|avoid|put (?:it|them) away|take (?:it|them) away)\\b"), unless: expression("\\b(?:rinse|scrub|rub|sponge|soak)\\b"),
  },
  { // A limit told: what stays, what is lost
    lifts: ["sureness"],
    shows: expression("\\b(?:can (?:still )?be seen|(?:will|may|might) (?:still |always )?show|(?:remains?|stays?) visible|has lost|seldom|so far|for now|as yet|without being (?:conclusive|certain)|not conclusive|is (?:suggestive|encouraging)|(?:no|nothing) more than that|(?:we|i) (?:have )?turned (?:\\w+ )?(?:down|away)|(?:more|very) cautious|(?:harder|slower|dearer|older|weaker) than|(?:more|as much) harm (?:than|as)|no (?:bath|wash|test|photo\\w*) (?:can|has|will)|cannot be (?:undone|put back|given back)|not (?:small|cheap|quick|easy|simple))\\b"),
    unless: expression("\\b(?:cannot be seen|PERFECT|FORMER|IDIOM|OATH|PRODUCT|HEAT|MISDEED|LEGAL|SURELY)\\b"),
  },
  { // An answer in writing, which is ours to promise
    lifts: ["sureness"],
    shows: expression("\\b(?:you will (?:have|get|receive)|(?:we|i) (?:will|shall) (?:answer|send|write|reply)|(?:have|got) your)\\b.*\\b(?:e-?mail|letter|message|note|report|estimate|quote|answer|tonight|today|tomorrow|day|week)\\b"),
    unless: expression("\\b(?:RUGPART|TROUBLE|PERFECT|FORMER|OATH|gone|back|clean|proof|proves?)\\b"),
  },
  { // A range of years, money or shares: what is known of it is held against the assessment
    lifts: ["sureness"],
    shows: expression("\\bbetween [€£$]?[0-9]|[0-9] ?(?:–|-|to) ?[€£$]?[0-9]"),
    unless: expression("\\b(?:SURELY|WHOLLY|PERFECT|FORMER|IDIOM|OATH|worth|[0-9]{4})\\b"),
  },
  { // What nobody could offer
    lifts: ["sureness"],
    shows: expression("\\b(?:is|are) not (?:a thing|something|anything|what) (?:i|we|any(?:body|one)) (?:could|can|would|dare)(?: ever)? (?:offer|promise|give|say)\\b"),
    unless: expression("\\b(?:but|however|although|though|still|yet|unless|because)\\b|[;:]"),
  },
  { // A rug kept safe in our store, which is ours to promise
    lifts: ["result", "safety", "sureness"],
    shows: expression("\\b(?:RUG|rug|it|carpet|runner|she|they) (?:will |shall |is |are )(?:be |stay |stays |lie |lies |kept |be kept |wait )?(?:quite |perfectly |dry and )?safe(?:ly)? (?:and dry )?(?:with us|here|in our (?:store|care|keeping|workshop)|in the (?:dry )?(?:store|workshop))\\b"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM(?<!in safe hands)|OATH|RESTORE|COMES|TROUBLE|dyes?|colou?rs?|gone|clean|wash\\w*|bath|steam)\\b"),
  },
  { // What a look costs, which is ours to say
    lifts: ["number", "sureness"],
    shows: expression("^(?=.*\\b(?:inspect\\w*|looked at|looking (?:it|at)|look at|looked over|looking (?:\\w+ )?over|assess\\w*|seen|estimate|opinion|collect\\w*)\\b).*\\b(?:costs? (?:you )?(?:nothing|(?:AMOUNT))|(?:is|are) free|no charge|free of charge|without charge)\\b"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|OATH|TROUBLE|SUCCESS|always|never|clean\\w*|wash\\w*|repair\\w*|gone|FIBRE|result|because)\\b"),
  },
  { // What an insurer or a seller decides, left to them
    lifts: ["cover", "sureness"],
    shows: expression("^(?:what|whether|how|if|who)\\b.*\\b(?:policy|insurers?|insurance|seller|shop|court|dealer|landlord)\\b.*\\b(?:is|are) (?:a (?:question|matter|thing) (?:only )?for|between you and|up to|for (?:them|him|her)|theirs)\\b"),
    unless: expression("\\b(?:must|has to|have to|pays?|SURELY|no doubt|liable|owes?)\\b"),
  },
  { // A product left where it is
    lifts: ["harm", "result", "sureness"],
    shows: expression("\\b(?:keep|kept|leave|left) (?:it|the [\\w-]+|your [\\w-]+|all|them)(?: \\w+){0,3} in (?:the|its|their|your) (?:cupboard|drawer|box|bottle|shed|kitchen|garage)\\b|^(?:please )?(?:skip|shelve|forget|put away|put down) (?:the|that|your) (?:\\w+ ){0,2}(?:AGENT|HEAT|PRODUCT)\\b"),
    unless: expression("\\b(?:but|except|instead|then|use|rinse|PERFECT|FORMER|COMES|test)\\b(?<!\\btested)"),
  },
  { // A rule without exception, denied: neither always nor never
    lifts: ["result", "certainty", "safety", "verdict", "sureness"],
    shows: expression(`\\b${UNTRUE} (?:to (?:say|claim|think|believe) )?that\\b.*\\b${SWEEPING}\\b|\\b${SWEEPING}\\b.*\\b(?:that|this|which)? ?(?:is|are|would be) (?:not (?:quite |strictly |really )?(?:true|so)|untrue|too simple)[.!]?$`),
    unless: expression(`\\b(?:${BOAST}|yours|your rug|this one|PERFECT|FORMER|IDIOM)\\b`),
  },
  { // What became of several others, some well and some badly
    lifts: ["result", "number", "sureness"],
    shows: expression("^(?:(?:we|i) have (?:seen|had|known)\\b.*\\b(?:and|while) (?:others?|some|we have seen (?:them|others|some))\\b|(?:some|one|a few)\\b.*(?:,|\\band|\\bwhile) (?:others?|another|some|most)\\b|(?:i|we) have seen worse\\b.*\\b(?:and|while) better\\b|(?:i|we) have (?:had|seen)\\b.*\\bone\\b.*\\b(?:and|while) (?:one|another)\\b.*\\bnot\\b|(?:rugs?|pieces?|carpets?)\\b.*\\bin one (?:house|home|room)\\b.*\\bin (?:the next|another)\\b)"),
    unless: expression("(?<!\\b(?:like|as) )\\b(?:yours|your rug|ours|this one|both|all)\\b|\\b(?:PERFECT|FORMER|IDIOM|OATH)\\b"),
  },
  { // A size: what is known of it is held against the enquiry
    lifts: ["sureness"],
    shows: expression("[0-9] ?(?:cm|m|ft|feet|in|inches)? ?(?:x|×|by) ?[0-9]|[0-9] ?(?:m²|sq ?(?:m|ft)|square (?:metres?|feet))"),
    unless: expression("\\b(?:SURELY|WHOLLY|PERFECT|FORMER|IDIOM|OATH|FIBRE|TROUBLE (?:\\w+ ){0,3}(?:gone|out)|will|worth|PRODUCT|HEAT|PARTY|LEGAL)\\b"),
  },
  { // What no work undoes
    lifts: ["sureness"],
    shows: expression("^(?:i|we|nobody|no one|no \\w+|cleaning|washing|mending|repair) (?:cannot|will not|does not|can) (?:undo|mend|put back|bring back|give back|bring|stop|replace)\\b"),
    unless: expression("\\b(?:but|because|unless|except|like (?:us|we)|as (?:well|we)|PERFECT|FORMER|IDIOM|OATH|SURELY|we (?:can|will))\\b|[;:]"),
  },
  { // An appointment
    lifts: ["result", "sureness"],
    shows: expression("\\byour (?:appointment|visit|slot|booking|collection) is (?:now )?(?:confirmed|booked|set|fixed) for\\b"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|OATH|RESTORE|spotless|gone|as new|by (?:the|then|tea|night|evening)|FIBRE)\\b"),
  },
  { // What is asked for, to judge by
    lifts: ["sureness"],
    shows: expression("\\b(?:i|we) (?:would )?need to (?:see|count|know|look|measure|read)\\b.*\\b(?:please|if you can)\\b"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|OATH|FIBRE|will|gone|SURELY)\\b"),
  },
  { // A product refused in one word, or left in its cupboard
    lifts: ["harm", "certainty", "sureness"],
    shows: expression("(?:^|\\band )\\w+, no\\b|^(?:please )?leave the \\w+ (?:and the \\w+ )?in (?:the|its|their) (?:cupboard|drawer|box|bottle|shed|kitchen|garage)\\b"),
    unless: expression("\\b(?:yes|but|no (?:problem|worries|doubt|trouble)|FIBRE|take|use|rub|scrub)\\b"),
  },
  { // What somebody else said, by the client's account
    lifts: ["result", "certainty", "safety", "sureness"],
    shows: expression("^(?:as |that )?(?:(?:you|the \\w+ you sent) (?:wrote|write|told us|said|say|says|mention|mentioned|mentions|report|reported|heard|quote)\\b.*\\b(?:said|says|told|assured|promised|claimed|called|swears?|swore|vowed|it is|it was|that)|you were (?:told|promised|assured))\\b"),
    unless: expression("\\b(?:right|rightly|correct(?:ly)?|true|so (?:it|they|we) (?:is|are|will)|which it is|and (?:it|so|we|that) (?:is|will|can|are)|we agree|agree|indeed|SURELY(?<!completely))\\b|[;:]"),
  },
  { // What a name does not make of a rug
    lifts: ["certainty", "sureness"],
    shows: expression("\\b(?:does|do|did|would|will|need) not make (?:it|this|that|them|RUG|an? (?:rug|pile|yarn)) (?:FIBRE|so|one|better|older|an? \\w+)\\b"),
    unless: expression("\\b(?:but|it is only|this is|yours is|because)\\b"),
  },
  { // What even the best work leaves
    lifts: ["result", "sureness"],
    shows: expression("\\beven (?:an?|the|our) (?:most )?(?:\\w+ )?(?:PERFECT|careful|gentle|best|finest|PROCESS)(?: \\w+){0,3} (?:would|will|can|could|may) ?not (?:bring|give|put|restore|undo|remove|reverse|take|make|return|mend|lift|hide|reach)\\b"),
    unless: expression("\\b(?:but|only we|ours|we can|any harm)\\b"),
  },
  { // What we do not believe will come of it
    lifts: ["result", "certainty", "sureness"],
    shows: expression("\\b(?:we|i) (?:do|would|should|could) not (?:think|believe|expect|suppose|imagine) (?:that )?(?:it|they|this|RUG|the \\w+) (?:will|would|can|could|is|are|was) (?:ever )?(?!not\\b|no\\b|harm|hurt|run|bleed|shrink|fade|fail|need|cost|take|come back|return)\\w+"),
    unless: expression("\\b(?:but|nothing|nobody|no one|a single|any (?:trouble|problem|harm|risk|need))\\b"),
  },
  { // What it will not be again
    lifts: ["result", "sureness"],
    shows: expression("\\b(?:it|RUG|they) (?:will|would|can) (?:probably )?(?:never|not) (?:ever )?(?:be|look|become|come out) (?:quite |again |exactly )?(?:PERFECT|FORMER|new|as (?:good|bright|soft|fresh|clean) as)|\\b(?:it|RUG|they) (?:will|would) not (?:\\w+ ){1,3}as (?:it|they) (?:did|was|were|once)\\b"),
    unless: expression("\\b(?:but|until|unless|nobody|no one|anything less|worse)\\b|[;:]"),
  },
  { // How long it is with us, and what is done to it before anything else
    lifts: ["result", "sureness"],
    shows: expression("\\bRUG will (?:be|stay) with us (?:for|until|till|about)\\b|\\bwill (?:first |always |also )?be (?:tested|inspected|looked at|examined|photographed|measured|weighed)\\b"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|OATH|gone|as new|spotless|and (?:then )?(?:come|be) )\\b"),
  },
  { // Leaving it in peace
    lifts: ["safety", "sureness"],
    shows: expression("\\bsafe (?:enough )?to (?:leave|keep) (?:it|RUG) (?:where it is|as it is|there|be|alone|flat|rolled|in the (?:shade|dark))\\b"),
    unless: expression("\\b(?:wet|damp|soaked|moist|heater|heating|radiator|sun|weeks|months|years|SURELY|WHOLLY|any (?:trouble|harm|risk))\\b"),
  },
  { // What the client told, given back
    lifts: ["sureness"],
    shows: expression("^(?:as )?you (?:bought|paid|told us|wrote|mentioned|sent|asked|used)\\b"),
    unless: expression("\\b(?:will|shall|SURELY|WHOLLY|PERFECT|FORMER|IDIOM|OATH|MISDEED|so it is|so we know|proves?)\\b"),
  },
  { // Thanks, praise and comfort for what the client did
    lifts: ["sureness"],
    shows: expression("\\b(?:full marks|well done|(?:my|our) (?:\\w+ )?sympath\\w+|condolences|good thinking|thanks?|thank you|(?:glad|pleased|grateful|sorry) (?:that )?(?:you|to (?:hear|read))|(?:kind|good|wise|sensible|right|quick) of you|you (?:did|were|have done) (?:right|well|wise|the right thing)|patience|your (?:own )?(?:choice|decision)|up to you|not the (?:first|only one))\\b"),
    unless: expression("\\b(?:gone|PERFECT|FORMER|IDIOM|OATH|PRODUCT|HEAT|as new|FIBRE|will|PARTY)\\b(?<!\\bno .*)(?<!\\bwhoever)"),
  },
  { // What the workshop does with rugs in its care, and what it charges for that
    lifts: ["sureness", "number"],
    shows: expression("\\b(?:(?:we|our \\w+|the workshop) (?:charge|ask|take|accept|deduct)|(?:inspection|call-out|collection|delivery|storage|laboratory|lab|minimum|booking|test|testing) (?:fee|charge|price|cost)s?|(?:a|the|your|our) deposit (?!scheme)|invoice|receipts?|price list|cost (?:more|less)\\b.*\\b(?:if|when)|fee\\b.*\\b(?:covers?|includes?|is for|taken off|comes? off|refund\\w*|goes towards)|an hour|per hour|a square (?:metre|foot|meter)|stairs|(?:will|can|shall) (?:carry|fetch|collect|pick it up|drop (?:it|them) off|park|call at)|slip\\b|lab(?:oratory)? (?:will |would )?(?:want|need|take|ask|send|write)|lift to|bus|ring the bell|up (?:\\w+ )?steps|(?:we|i) (?:will |shall |always )?(?:write down|note|list|record|log|photograph)\\b|you (?:will|would|may) (?:need|have|want) to (?:bring|come|ask|send|ring|wait|sign|measure|lift|tell|hold|decide|choose)|(?:nobody|no one) (?:is going to|will|would) (?:laugh|mind|hurry|press|judge|rush|think (?:less|the worse))|easily (?:confused|mistaken)|mistaken for|hard to tell apart|train|gate|car park|entrance|price is an? (?:range|guess|estimate)|(?:needs?|takes?|took) (?:\\w+ ){0,4}(?:days?|weeks?)|per (?:mile|week|month|fibre|sample)|a (?:mile|week|month)\\b|(?:stored?|kept|rolled|wrapped|labelled|labeled|numbered|tagged|hung|shelved|booked in|insured by us|insured while)|(?:days?|hours?) to dry|store|store-?room|shelves|alarm|courier|parcel|envelope)\\b"),
    unless: expression("\\b(?:(?<!\\bany )TROUBLE (?:\\w+ ){0,3}(?:gone|out|in it)|PERFECT|FORMER|IDIOM|OATH|spotless|gone|last word|in all|whatever|worth|clean(?:ing)? it|the (?:repair|cleaning|wash|work) (?:costs?|comes|is)|never|nothing will|for good|guarantee|fixed|final|extra|even if|lasts?|years?)\\b|AMOUNT (?:for|to) (?:\\w+ ){0,3}?WORK\\b|\\bWORK (?:we|i) (?:ask|charge|want)(?: \\w+)? AMOUNT"),
  },
];

/** The rules that do not hold for a sentence, for how it holds off what it says. `plain`: in plain words. */
export const liftedByStance = (plain: string): ReadonlySet<RuleId> =>
  new Set(STANCES.filter(({ shows, unless }) => shows().test(plain) && !unless().test(plain)).flatMap(({ lifts }) => lifts));
