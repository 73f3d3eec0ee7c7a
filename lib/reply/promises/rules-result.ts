import { meant } from "./meant";
import { own, p, type Rule } from "./rule";
import { allThatGoes } from "./shares";
import { GERMS, ON_TIME } from "./tellings";

const DAY = "(?:by|on|within|before|in time for|tomorrow|in (?:a|NUMBER))\\b(?! (?:the rug|the test|we|you agree)\\b)";
const WHERE = "(?: (?:home|here|with you|to you|at yours))?";
const BY_A_DAY = `(?:back|home)\\b${WHERE} ${DAY}`;
/** That the rug, not its colour or a mark, is ready or back by a day. */
const RUG_BY_A_DAY = `\\b(?:RUG|it|we|you|delivery|collection|completion|(?:the|our|all) work)\\b.{0,20}\\b(?:will|shall|is|are|have|be|get) (?:(?!(?:TROUBLE|colou?rs?|dyes?|clean)\\b)\\w+ ){0,4}(?:ready|back|done|finished|delivered|returned|home|complete|on your floor|in your (?:hands|home|hall))\\b${WHERE} ${DAY}`;

const GERM = "(?:germs?|bacteri\\w+|virus(?:es)?|microbes?|pathogens?)";

/** A colour that was lost, given back, and so well that nobody sees it. */
const COLOURED = "(?:made (?:\\w+ ){1,3}again|made as \\w+ as|(?:re-?)?(?:dy|colour|color|tint|paint)(?:ed|e|ing|s)?(?: over)?|touched (?:up|in)|(?:brought|given|put|dyed) back)";
const UNSEEN = "(?:(?<!\\bnever )without (?:leaving )?(?:a |any )?(?:trace|mark)|without any(?:one|body) (?:noticing|seeing|knowing)|invisibl[ey]|perfectly|(?:exactly|just) (?:as|like)|in full|as before|no trace|(?:nobody|no one) (?:will|would|can|could))\\b";

/** What is claimed of the work: that it comes out, comes back, is ready in time. */
export const RESULT: Rule = {
  id: "result", what: "promises a result",
  why: "What comes back is known after a test in a hidden corner, and even then within limits.",
  advise: "Give the range, as in “in most cases between … and … comes back”, and its limit, or only:",
  instead: "How much comes back is known only after a test in a hidden corner, and we cannot promise it.",
  excuses: ["negated", "hedged", "undecided", "disowned"],
  patterns: [
    p(`(?:\\bSUBJECT|\\bPROCESS\\bGAP)(?: (?:all|just|simply|soon|SURELY|WHOLLY))* MUST (?:(?:\\w+ly|all|just|simply|soon|then|be) )*(?!OPEN)(?!${BY_A_DAY})(?:COMES|RESTORE|PERFECT|gone|as|look|good|back|out)\\b`, { also: ["softened"] }),
    p("(?:\\bSUBJECT|\\bPROCESS\\bGAP)(?: (?:all|just|simply|soon|SURELY|WHOLLY))* MUST (?:(?:\\w+ly|all|just|simply|soon|then|be) )*(?!OPEN)\\w+", { also: ["softened"], vague: true }),
    p("\\b(?:DET |our |this |that |a |one )?(?:treatment|process|wash|clean|cleaning|rinse|bath|procedure|method|service|repair|visit|appointment|technicians?|team|lads|people|specialists?|experts?|solution|formula|protector|protection|coating|proofing|finish|conditioner|wife|colleague)s?\\b(?: \\w+){0,4} (?:(?:will|shall|can|always|simply|just|SURELY) )*(?:RESTORE|render|renders|make|makes|protects?|seals?|guards?|puts?|brings?|gives?|leaves?|takes?) (?:[\\w.,%'-]+ ){0,4}(?:RUGPART|TROUBLE|it|them|any\\w*|every\\w*|all|out|back|right|off|away|impervious|proof|as new)\\b", { also: ["softened", "warned"] }),
    p("\\b(?:i|we|he|she|they|my \\w+|our (?:\\w+ )?(?:team|people|lads|technicians|experts|workshop|restorer|weaver)s?)(?: (?:SURELY|WHOLLY|always|also|soon|just|simply|\\w+ly))* (?:will|shall|can|are able to|are going to|am going to|know how to|possess the (?:means|skill\\w*) to|have the (?:means|skill|tools|know-how|experience) to|never fail to|always|do)(?: (?:SURELY|WHOLLY|always|also|soon|just|simply|easily|\\w+ly|then|be able to|not only|have))* RESTORE\\b(?! (?:in touch|an? (?:look|idea|appointment|price|estimate|quote|picture|photo)|the (?:risks?|results?|test|back to you)|you|to you))", { also: ["softened"] }),
    p("\\b(?:PRON|THING) (?:always|never fails? to|invariably|simply|just|every time|in the end|WHOLLY)(?: \\w+ly)? (?:COMES|RESTORE)\\b", { also: ["softened"] }),
    p("\\b(?:PRON|THING)(?: \\w+){0,3} COMES(?: \\w+){0,3} (?:WHOLLY|SURELY|every (?:single )?time|with (?:one|a|us|our)|in (?:the|our|one|a) (?:wash|bath|hour|day|rinse|go)|after (?:one|a|our)|overnight)\\b", { also: ["softened"] }),
    p("\\b(?:is|are|will be|shall be) (?:SURELY |WHOLLY |\\w+ly )*(?:salvageable|curable|treatable|removable|fixable|saveable|savable|restorable|recoverable|reversible|correctable|coming (?:out|back|off|up)|over the moment|as good as (?:gone|done|new|saved|out)|in good hands|a matter of (?:time|hours|days))\\b", { also: ["softened"] }),
    p("\\bFULL(?:,? (?:and )?\\w+)? SUCCESS\\b(?! (?:is|are|was|would be) (?:unlikely|rare|seldom|not))", { also: ["softened"] }),
    p("\\bSUCCESS(?: \\w+){0,4} (?:is|are) (?:SURELY |WHOLLY |\\w+ly )*(?:assured|guaranteed|certain|sure|inevitable|a certainty|a given|beyond|a formality|never in)\\b", { also: ["softened"] }),
    p("\\b(?:assured|certain|sure|guaranteed|confident|promised) of (?:a |an |the |your )?(?:\\w+ )?(?:SUCCESS|PERFECT|FULL)"),
    p("\\bPERFECT\\b(?!.*\\b(?:unlikely|rare|rarely|doubt\\w*)\\b)", { also: ["softened", "reported"] }),
    p("\\bFORMER\\b", { also: ["softened", "reported"] }),
    p("\\bIDIOM\\b", { also: ["softened", "denied"], except: ["negated"], vague: true }),
    own("\\bOATH\\b", { vague: true }),
    p("\\b(?:make|leave|hand|give|return) it (?:back )?(?:as|what|how|the way) it (?:was|used to be|were)\\b|\\byou will be (?:thrilled|delighted|amazed|over the moon|so pleased|very pleased)\\b", { except: ["undecided"], also: ["softened"] }),
    p("\\b(?:guarantee[ds]?|guaranteeing|warrant(?:s|ed)? (?:it|that|this|the|our|you)|pledge[sd]?|assurance|vouch|undertake that|certify|promise that|swear(?! by)|vow|assured?(?: you)? (?:that|of)|rest assured|be (?:assured|confident|in no doubt)|count on|rely on (?:us|it|that)|can be relied)\\b", { except: ["hedged"], vague: true }),
    p("\\b(?:every|each|any) (?:single |last |remaining )*(?:trace|bit|scrap|speck|drop|vestige|hint|particle|sign|shred|fibre|spot|mark|stain|grain|remnant|whiff|germ|egg|one)s?\\b(?=.*\\b(?:RESTORE|COMES|gone|out|eradicated|eliminated)\\b)|\\b(?:RESTORE|COMES)\\b.{0,30}\\b(?:every|each) (?:single |last )*(?:trace|bit|scrap|speck|drop|vestige|hint|particle|sign|shred|grain|remnant|whiff|germ|egg|one)s?\\b", { also: ["softened"] }),
    own("\\b(?:no|not a|not one|not a single|zero|nothing|not the (?:least|slightest|faintest)) (?:\\w+ ){0,3}(?:traces?|vestiges?|hints?|signs?|residues?|specks?|whiffs?|remnants?|shadows?|evidence|memory)\\b(?: \\w+){0,6} (?:will|shall|can|could|would|remains?|left|persists?|is|are)\\b"),
    own("(?<!\\b(?:corner|place|spot|side|where) )\\byou (?:will|shall|would|are going to|are not going to|can)(?: \\w+ly)? (?:not|never|no longer|be unable|struggle|hardly|be hard (?:put|pressed))(?: \\w+){0,4} (?:know|see|feel|notice|find|spot|tell|remember|recognise|recognize|believe|smell|think|guess|point|have|be troubled|worry)\\b(?! (?:that|what|how|whether))"),
    p(`\\byou (?:will|shall|are going to)(?: (?:be|just|simply|all|soon|\\w+ly))* (?:love|adore|amazed|delighted|thrilled|astonished|astounded|stunned|over the moon|proud|gobsmacked|surprised|pleased|impressed|wonder|swear|think it|cry with|have it looking|(?:have it|have (?:your|the) \\w+|get it) (?!${BY_A_DAY})(?:back|home)|see the last|have seen the last|be able to (?:walk|use|enjoy|show)|save)\\b`, { also: ["softened"] }),
    own("\\b(?:nobody|no one|no-one|not a soul|(?:not )?even (?:an? )?(?:experts?|you|trained eye)|your (?:\\w+[- ])*(?:visitors?|guests?|friends?|mother|mother-in-law|wife|husband|neighbours?|neighbors?|family|landlord)|visitors?|guests?) (?:\\w+ )?(?:will|would|could|can|is going to|are going to)(?: \\w+){0,4} (?:know|see|tell|notice|find|spot|guess|think|ask|believe|suspect)\\b"),
    own("(?<!\\b(?:should|(?:you|nobody|no one) could) )\\b(?!not what (?:we|i) )(?:never|not|yet to|has yet to|have yet to|not yet)(?: \\w+){0,2} (?:met|meet|lost|lose|failed|fail|seen|see|encounter\\w*|had|known|come across|been beaten|let (?:us|them|a \\w+) down|disappoint\\w*|defeated|sent)\\b(?! (?:the|your|it|this|that|any of|so|you)\\b)(?=.*\\b(?:a|an|one|any|single|failure|beat|not|complaint|us|failed|could|to)\\b|$)", { vague: true }),
    own("\\b(?:nothing|no (?:stain|mark|spill|rug|job|damage|problem|smell|moth|wine|odou?r|case|piece|challenge))\\b(?: \\w+){0,8} (?:cannot|could not|has (?:ever )?(?:beaten|defeated)|beyond (?:us|our|me)|too (?:much|big|difficult|hard|stubborn|old) for|we (?:cannot|have not)|defeats? us|beats? us|stands? a chance|will (?:beat|defeat|escape|resist|survive))"),
    own("\\bthere is (?:not|no|never) (?:an? )?(?:\\w+ )?(?:stain|mark|spill|rug|moth|smell|job|wine|problem|piece)\\w*(?: alive| on earth| yet| made| in the world)?(?:,? that)?\\b.*\\b(?:not|beat|cannot|could not|comes? back|survives?|escapes?|resists?)"),
    p("\\b(?:one|single|first|second|just a|after a|after one|a couple of|one more) (?:\\w+ )?(?:wash|treatment|visit|appointment|session|clean|soak|rinse|application|pass|go)\\b.*\\b(?:all|will|shall|needed|enough|suffic\\w+|takes|does it|out|cures?|ends?|finish\\w*|sees? off)\\b", { also: ["softened"] }),
    p("\\b(?:problem|trouble|matter|worr\\w+|moths?|smell|stain|damage|story)\\b(?: \\w+){0,3} (?:will|shall|is|are|can) (?:not |never |no longer )?(?:\\w+ )?(?:over|behind you|trouble you|bother you|be resolved|resolved|solved|dealt with|sorted|taken care of|put to bed|at an end|a thing of)\\b", { except: ["negated"] }),
    p("\\b(?:it is|its|your rug's|the rug's) (?:survival|recovery|future|restoration|rescue)\\b.*\\b(?:is|are|looks?|beyond|assured|certain|safe|rosy|bright|secure)\\b", { also: ["softened"] }),
    p("\\b(?:customers?|clients?|people|owners?|others)\\b.*\\b(?:always|without (?:fail|exception)|every (?:single )?(?:one|time)|invariably|have all|never)\\b.*\\b(?:delighted|happy|pleased|amazed|thrilled|satisfied|disappointed|complained|regretted|back|love)\\b", { except: ["negated"] }),
    own("\\b(?:your|yours|this|this one|your (?:\\w+ ){1,2}|it)(?: case)? (?:is|will|shall) (?:not |(?:be )?(?:no|not an?) )(?:\\w+ )*(?:exception|different|the first|the one|worse)\\b|\\b(?:yours|you|it) (?:will|may expect|can expect) (?:accordingly |certainly |surely )?(?:follow suit|be the same|be next|too|do the same|the same|be removed|go the same way)\\b"),
    p("\\b(?:so|and|because|that) (?:looking|as) (?:\\w+ )?(?:good|fresh|bright|clean|soft|new|lovely)\\b.{0,30}\\b(?:as|that|new|again)\\b|\\b(?:good|bright|soft|fresh|clean|strong|straight|flat|white|vivid) as (?:new|ever|the|a|when|it|they|she)\\b|\\b(?:brighter|softer|stronger|cleaner|fresher|fuller|better) than (?:ever|the day|when|new|before|it has|you)\\b", { also: ["softened"] }),
    p("\\b(?:expect|look forward to|anticipate|prepare for|picture|imagine|enjoy)\\b.*\\b(?:FULL SUCCESS|PERFECT|FORMER|as new|difference|back|again|delighted|returning it|like)\\b", { also: ["softened"] }),
    p("\\b(?:will|shall|can|going to) (?:\\w+ )?(?:match|blend|tone|fit|disappear into|merge)\\b.*\\b(?:exact\\w*|perfect\\w*|seamless\\w*|invisib\\w*|old|original|rest)\\b", { also: ["softened"] }),
    p("\\b(?:SUBJECT|this|such \\w+) can(?: SURELY| still| all| just| also| always| now| \\w+ly)* be(?: SURELY| WHOLLY| \\w+ly)* (?:RESTORE|stretched|corrected|remedied|put (?:back|right)|brought back|taken out)\\b", { also: ["softened"] }),
    p("\\bTROUBLE (?:just |simply |will )?(?:comes? (?:straight |right |clean )?(?:out|off|away|up|clean)|goes? (?:straight |right )?(?:out|away|for good)|wash(?:es)? (?:straight |right )?(?:out|off)|disappears?|vanish(?:es)?|lifts? (?:out|off|right|straight)|clears? up|drops? out|brush(?:es)? (?:out|off|away)|melts? away|evaporates?)\\b", { also: ["softened", "warned"] }),
    own("\\bthere (?:will|shall|is going to) (?:not )?be (?:no|not any|any|not an?|zero|not the) (?!(?:\\w+ )?(?:charge|need|obligation|guarantee|rush|time|cost|fee|hard feelings|certainty|way|pressure|hurry|one|other|more))\\w+"),
    p("\\b(?:i|we|my \\w+|our (?:\\w+ )?(?:team|people|lads|technicians|experts|workshop)) (?:SURELY |\\w+ly )*(?:will|shall|can|are able to|are going to|know how to)(?: \\w+ly| soon| just| always| all| easily)* (?:make|get|have|put|bring|return|turn|set|send|give|keep) (?:it|them|her|this|that|those|these|everything|(?:your|the|that|those|its) (?:[\\w-]+ ){0,3}[\\w-]+?)(?: \\w+){0,2}? (?:look\\w*|back|right|new|good|out|clean|again|straight|perfect|sorted|gone|sparkling|off|up)\\b(?! (?:to you\\b|to your (?:home|house|door)|with|on the|in touch|if|for inspection|a picture))", { also: ["softened"] }),
    p("\\b(?:(?<!leave (?:it|that|this) )with us|in our hands|at our workshop|under our (?:care|supervision|roof)|with our (?:\\w+ )?PROCESS)\\b.*\\b(?:is|are|will|cannot|no)\\b|\\b(?:is|are) (?:a certainty|a given|inevitable|guaranteed|certain|assured|a formality|never in (?:doubt|question))\\b(?! (?:whether|if|that it is not))", { also: ["softened"], vague: true }),
    p("\\bSUBJECT\\b.{0,40}\\bWHOLLY\\b.{0,30}\\b(?:our|we)\\b", { also: ["softened"] }),
    p("\\ball (?:it|that|this|the \\w+|your rug)(?: \\w+)? (?:needs?|is missing|takes?|wants?|requires?) is\\b|(?<!\\b(?:colou?rs?|dyes?|pile|wool|silk|dust|until|before|whether|if)\\b.*)\\b(?:is|are) (?:\\w+ )?(?:back|gone|out|fixed|sorted)(?: (?:again|already|for good|in))?$", { also: ["softened"] }),
    p("^(?:definitely|deffo|certainly|absolutely|guaranteed|easy|sorted|no problem|no sweat|for sure|of course|yep|yup|yes|yeah|sure|oh yes|aye|indeed)\\b,? (?!(?:we|i) (?:would|will|do|have)|please|thank|the (?:test|inspection))(?:.*\\b(?:FIBRE|COMES|RESTORE|coming|out|back|gone|fine|safe|saved?|sorted|easy|possible|new|fixable|doable)\\b|$)", { also: ["softened"], vague: true }),
    p("\\b(?:done|did|seen|had|cleaned|fixed|saved|treated|washed|handled|dealt with) (?:loads|hundreds|thousands|dozens|plenty|tons|millions|heaps|scores|countless|so many|more than enough|a (?:thousand|hundred|million)|NUMBER (?:hundred|thousand|dozen)|literally) ?(?:of |\\w+ )*(?:these|them|those|such|like|rugs|cases|times|stains|same|one)?\\b", { also: ["softened"], vague: true }),
    p("\\b(?:i|we|they|our \\w+) (?:will|can|are going to|am going to|literally|just|always|soon)(?: \\w+ly| just| soon| all| always)* (?!(?:ring|call|send|post|write|talk|take|let|leave|look|carry|turn|check|point|sort you|help|go|come|be|pick|drop|set|work|find|roll|dry|lay|ship)\\b)\\w+ (?:it|them|her|this|that|those|these|(?:the|your|that|those|every) (?:[\\w-]+ ){0,3}?[\\w-]+) (?:right |straight |all |clean )?(?:out|off|away|back|up)\\b(?! (?:to you|with|for|the|on|in touch|by (?:phone|letter|van)|a corner))", { also: ["softened"] }),
    p("(?<!\\b(?:moths?|smell|odou?r|stain|mark|mould|insects?|browning|ring|they)(?: \\w+)? )\\b(?:pops?|springs?|snaps?|bounces?|comes?|perks?|puffs?|plumps?|jumps?) (?:right |straight |all )?(?:back|up)\\b(?! dry)", { also: ["softened", "warned"] }),
    p("\\b(?:it|they|that) all (?:COMES)\\b", { also: ["softened"] }),
    own("\\b(?:nothing to pay|no charge|do not pay|pay nothing|pay us nothing|do it again|redo it|free of charge|not charge you|no fee)\\b(?=.*\\b(?:if|until|unless)\\b.*\\b(?:not|gone|perfect|spotless|happy|satisfied|delighted|works?|out)\\b)"),
    p("\\b(?:every|each) (?:single )?(?:rug|one|piece|carpet|job|client|customer) (?:\\w+ )?(?:leaves?|goes|comes?|returns?|went|left|gets?|has)\\b", { also: ["softened"] }),
    p("\\b(?:i|we|our \\w+) RESTORE\\b.{0,40}\\b(?:WHOLLY|SURELY)\\b", { also: ["softened"] }),
    p("\\bTROUBLE[- ]free\\b|\\byou will (?:soon |quickly )?(?:forget|be wondering)\\b", { also: ["softened"] }),
    p("\\b(?:takes|lifts|brings|gets|pulls|draws|works|floats|drives|pushes) (?:it|them|everything|any \\w+|(?:the|your|those|that) (?:[\\w-]+ ){0,2}TROUBLE) (?:right |straight |all |clean )?(?:out|off|away|up)\\b", { also: ["softened", "warned"] }),
    p("\\b(?:it|that|this|RUG) (?:only|just|simply|merely) (?:needs?|wants?|takes?|requires?)\\b", { also: ["softened"] }),
    p("\\b(?:astonish|amaze|surprise|shock|astound)\\w* (?:me|us|the \\w+) if\\b.*\\b(?:not|no|never)\\b|\\bnothing stands between\\b", { except: ["negated", "ranged"] }),
    p("\\b(?:rugs?|one|ones|carpets?|make|kind|sort|quality) (?:\\w+ )?(?:always|invariably|never fails? to|without exception) (?:wash|clean|come|respond|recover|dr[iy])\\w*\\b", { also: ["softened"] }),
    // All of it, however it is hoped for
    p(allThatGoes, { except: ["hedged"], despiteCare: true }),
    p("\\bnothing(?: of (?:it|the (?:\\w+ )?TROUBLE))? (?:will|is going to|should|ought to|to) (?:be left|remain|stay)\\b", { except: ["negated", "hedged"], despiteCare: true }),
    p(`\\b${COLOURED}\\b[^;]*\\b${UNSEEN}|\\bas (?:red|blue|green|bright|dark|strong) as before\\b`, { except: ["negated"], also: ["denied", "softened"] }),
    // What we would never say, so that it is as good as said
    p("\\b(?:(?:would|will|should|do|does) (?:not|never)|never|nobody|no one) (?:(?!can\\b)\\w+ ){0,4}?(?:say|tell (?:you|anyone)|claim)\\b(?: that)? .*(?:\\b(?:will|would|does|do) not (?:\\w+ ){0,2}?(?:COMES|go|work)\\b|\\b(?:is|are|be) not (?:as good as )?new\\b|\\b(?:could|would|might|may|will) fail\\b|\\bless than PERFECT|\\bif (?:it|that|they|we) (?:were|was|did) not\\b)", { except: ["negated", "hedged", "undecided"] }),
    // Germs
    p(`\\b(?:${GERM}[- ]free|free (?:of|from) (?:(?:all|any|every) )?(?:\\w+ (?:and|or) )?${GERM})\\b`, { also: ["softened"], tells: GERMS }),
    p(`\\b(?:no|not an?|without) (?:\\w+ )?${GERM}(?: \\w+){0,3}? (?:left|remain\\w*|survives?|in it)\\b|\\b(?:every|each|all(?: the)?) ${GERM}(?: \\w+){0,2} (?:dead|gone|killed)\\b|\\bkills? (?:off )?(?:all|every|any|the)(?: the)? ${GERM}`, { except: ["negated"], also: ["softened"], tells: GERMS }),
    p("^(?!.*\\bif (?:it|they|RUG) (?:has|have|needs?|must)\\b).*\\b(?:makes?|made|leaves?|comes?|be|is|are|gets?|keeps?|have)\\b(?: \\w+){0,4}? (?:hygienic(?:ally)?|sterile|sanitary|disinfected|sanitised|sterilised)\\b|\\b(?:we|i|it|PROCESS)\\b(?: \\w+){0,2}? (?:disinfect|saniti[sz]e|sterili[sz]e|decontaminate)s?\\b|\\b(?:fit|clean enough|good enough) for an? (?:\\w+ )?(?:hospital|operating|surgery|clinic)\\b|^(?:WHOLLY )?(?:hygienic(?:ally clean)?|sterile|disinfected|sanitised|sterilised)(?:,|$)", { also: ["softened"], tells: GERMS }),
    // When
    p(RUG_BY_A_DAY, { also: ["softened"], tells: ON_TIME }),
    p(`^(?!.*${RUG_BY_A_DAY}).*\\b(?:SUBJECT|you|we|delivery|collection|completion|work)\\b.*\\b(?:will|shall|is|are|have|be) (?:\\w+ ){0,5}(?:ready|back|done|finished|complete\\w*|confirmed|delivered|restored|returned|dry|clean|fixed|home|on your floor|in your (?:hands|home|hall))\\b.*\\b${DAY}`, { also: ["softened"] }),
    // Said in other words
    p("\\bwe (will|'ll|shall|can|are going to|are able to|would)( SURELY| fully| completely| easily)* (remove|restore|save|cure|fix|rescue|make it perfect|get (it|this|that|the MARK|all of it|everything)( all)? out|bring (it|the colour|the pile) back)\\b"),
    p("\\bwe always (get|remove|bring|save)\\b"),
    p("\\b(dramatic|huge|remarkable|enormous|amazing|incredible|spectacular|vast) (improvement|difference|change|results?)\\b|\\bthat much (i|we) can (promise|say|guarantee)\\b|\\b(i|we) (can )?promise( you)?\\b", { vague: true }),
    p("\\b(repairs?|results?|our work|our cleaning|reweav\\w+)\\b.*\\b(is|are) (\\w+ and )?(invisible|permanent|lasting|perfect|undetectable)\\b"),
    own("\\bno exceptions?\\b|\\bnot an? (trace|hint|speck|sign|whiff|shadow)\\b|\\bnothing\\b.*\\bis beyond us\\b|\\bnever (once|yet|ever) (failed|lost|had)\\b"),
    p("\\b(MONEY_BACK|hand on heart|take (my|our) word|mark my words|walk in the park|piece of cake|child's play|a doddle|a cinch|no problem at all|leave it to us|consider it done|you have nothing to lose|easy as pie|as easy as|in safe hands|bread and butter)\\b", { vague: true }),
    own("\\b(lose|losing) (any |a )?sleep\\b|\\bnever (yet )?(met|seen|had|lost|failed|known)\\b.*\\b(couldn't|could not|can't|fail\\w*|beaten|defeat\\w*)\\b|\\bnever (yet )?(failed|lost)\\b|\\bfirst (failure|time we (have )?failed)\\b"),
    own("\\b(nobody|no one|not a soul|(not )?even (an expert|experts))\\b( \\w+)? (will|would|could|can)\\b.*\\b(know|see|tell|notice|find|spot|guess)\\b|\\bnot even an expert\\b"),
    p("\\b(gone|away|forget (about )?\\w+|rid of \\w+|solved|cured) (for good|for ever|forever|once and for all)\\b"),
    p("\\b(nowhere to be seen|pleasantly surprised|every trace|all traces|every speck|every bit of|in one (wash|go)|with one wash|first time round)\\b"),
    own("\\b(in your case|for you) (i|we) (will|do|can)\\b|\\byou will say the same\\b|\\b(yours|your rug|this one) (will not|won't) be the first\\b"),
    own("\\b(will|does) (not|never) (run|bleed|come back|return)\\b.*\\b(when we|after (our|the|this)|once we|if we)\\b"),
    own("\\b(never|not) (comes?|come) back after (our|the|this)"),
    ...meant("result"),
  ],
};
