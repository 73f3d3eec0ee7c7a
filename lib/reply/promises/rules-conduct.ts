import { meant } from "./meant";
import { own, p, type Rule } from "./rule";

/** A fault of the thing itself, which lies open to see: "a weaving fault", "a fault in the weave". */
const OF_A_THING = "weav(?:e|ing)|loom|knots?|knotting|dye(?:ing)?|spinning|yarn|pile|warps?|wefts?|back(?:ing)?|foundation|ground|selvedge|structural";
const FAULT = `(?<!whose )(?<!at )(?<!\\b(?:${OF_A_THING}) )fault(?! (?:(?:lies|runs|is|sits) )?(?:in|of|on|along|across|through) (?:(?:the|its|one|two|several) )*(?:${OF_A_THING}|lower|upper|left|right|border|field|edges?|middle)\\b)`;
/** What a sentence can begin with that is no firm’s name. */
const NO_NAME = "(?:i|we|you|it|its|this|that|these|those|there|here|which|what|who|ones?|people|(?:no|some|any|every)(?:body| ?one|thing)|some|any|none|both|all|most|many|more|please|things?|products?|solvents?|tests?|inspections?|photos?|letters?|threads?|rain|floods?|flooding|light|age|time|feet|brush(?:es|ing)|rubbing|scrubbing|soaking|steaming|cats|dogs|puppies|mice|larvae|beetles?|furniture|rugs?|carpets?|colou?rs?|insurers?|RUGPART|LEGAL|CAUSE|TROUBLE|AGENT|PRODUCT|HEAT|FIBRE|BABY)";
/** What does harm to a rug without being somebody, where it stands after “by” with no word before it. */
const NO_DOER = `(?:${NO_NAME}|us|me|half|an?|the|your|our|my|his|its|another|others?|far|too|more|even|just|only|no|not|such|much|\\w+ing|\\w+ed|moths?|pets?|sun\\w*|daylight|ultraviolet|uv|waters?|seawater|moisture|damp\\w*|salt|urine|frost|fire|smoke|soot|wear|use|traffic|accident|mistake|chance|hands?|machines?|wind|air|mould|mildew|insects?|bacteria|acids?|alkalis?|chemicals?|detergents?|glues?|gravity|heels?|shoes|boots|claws|teeth|men|friction|pressure|(?:sea|year|month|week|decade)s?|grit|sand|dust|dirt|soil|roots?|plants?|pots?|pipes?|drains?|leaks?|sewage|floodwater|rainwater|radiators?|heaters?|embers?|sparks?|coals?|cigarettes?|candles?|food|wine|coffee|tea|milk|juice|ink|paint|wax|oil|grease|polish|rust|underlays?|rubber|latex|adhesives?|storage|neglect|weather|storms?|snow|ice|birds?|mites?|rats?|squirrels?|worms|spores?|nails|staples|tacks|blades?|scissors|castors|wheels?|chairs?|toys?|doors?|nature|(?:hot|cold|wet|dry|warm|long|old|strong|bright|direct|heavy|repeated|constant|frequent|previous|earlier|past|poor|rough|hard|harsh|excess\\w*|careless|last|next)|quoted|(?:mon|tues|wednes|thurs|fri|satur|sun)day|january|february|march|april|may|june|july|august|september|october|november|december|christmas|easter)`;
/** One word that a sentence begins with and that names no thing, nor us, nor them whom we write to: a firm, as a rule. In lower case a name has no other mark. */
const NAMED = `^(?:(?:and|so|then|clearly|plainly|obviously|sadly|it is (?:clear|plain|obvious) that|(?:we|i) can see that) )*(?!${NO_NAME}\\b)[a-z][a-z'-]+`;
/** Whoever had a rug in hand. */
const SOMEBODY = "(?:PARTY|weaver|housekeeper|home help|some(?:body|one)|whoever (?:\\w+ )(?:it|this|that|the \\w+|your \\w+))";
const TOO_MUCH = "(?:far |much |rather |way |a (?:bit|little) )?too (?:hard|roughly|harshly|vigorously|tight(?:ly)?|short|small|close(?:ly)?|low|thin(?:ly)?|long|fast|quickly|hot|wet)\\b";
/** What only people do to a rug, and badly; with an instrument or of somebody's rug where water does it too. */
const BADLY = `(?:\\w+ly |has |have |had )*(?:${[
  "(?:used|put|poured|applied) (?:\\w+ ){0,3}?(?:too (?:much|hot|strong|little|wet|harsh)|wrong)\\b",
  "left it (?:wet|damp|soaking|to dry)\\b",
  `(?:cut|trimmed|clipped|sheared|scrubbed|rubbed|scoured|brushed|beat|pulled|stretched|wrung|pressed|steamed|heated|washed|dried|rolled|folded|stored) (?:it|them|(?:the|this|that|your|their|her|his) \\w+)(?: \\w+)? ${TOO_MUCH}`,
  `(?:scrubbed|rubbed|scoured|brushed) ${TOO_MUCH}$`,
  "(?:should|ought to) (?:never |not )?have (?:never )?(?:tested|asked|known|told|warned|rinsed|checked|noticed|stopped|refused|used|washed|cleaned|scrubbed|soaked|bleached|left|put|sold)\\b",
  "(?:should|ought to|must|has to|have to|will have to) (?:pay|answer) for (?:this|that|it|the damage|your (?:rug|loss))\\b",
  "(?:did not|never|failed to|forgot to) (?:test(?:ed)?|rinsed?|dry|dried|check(?:ed)?|warn(?:ed)?|bother(?:ed)?)\\b",
  "(?:did not ask|never asked|did not know) (?:what|whether|how|about)\\b",
  "(?:MISDEED|soaked|flooded|drowned|bleached|felted) (?:(?:it|them|(?:the|this) \\w+) (?:\\w+ )?(?:with|through|by using)|(?:your|their|her|his) (?:rug|carpet|runner))\\b",
].join("|")})`;

/** What only people fall short of. */
const BADLY_DONE = "(?:rinsed|dried|washed|cleaned|tested|checked|heated|pressed|stretched|rolled|wrapped|stored)";
const FELL_SHORT = `(?:not (?:been )?(?:\\w+ly ${BADLY_DONE}|${BADLY_DONE} (?:(?:\\w+ )?enough|\\w+ly))|${BADLY_DONE} too \\w+|(?:poorly|badly|carelessly|sloppily) ${BADLY_DONE})`;

/** Whom a letter accuses, what others will decide, and whom it gives up. */
export const CONDUCT: readonly Rule[] = [
  {
    id: "blame", what: "accuses somebody",
    why: "What a seller knew or a cleaner did cannot be judged from here, and such a sentence can be held against you.",
    advise: "Say what was said and what was found, as in “you told us that it was sold as …”, or only:",
    instead: "Who did what cannot be judged from here.",
    excuses: ["negated", "undecided"],
    patterns: [
      p("\\b(?:PARTY|plumber|builder|decorator|landlord|neighbou?r|shop) (?:\\w+ )?(?:should|must|has to|ought to) (?:answer|pay|account) for\\b", { despiteCare: true }),
      p("\\bPARTY\\b(?:(?!\\b(?:you|we|i)\\b)[^.])*\\b(?:MISDEED|liable|culpable|at fault|to blame|(?<!whose )responsible|negligen\\w*|careless\\w*|incompeten\\w*|dishonest\\w*|cheap|clueless|useless|hopeless|should (?:have (?:known|told|warned|tested)|pay|never)|must (?:have used|pay)|will (?:have to )?pay|have to pay|owes? you|had no (?:idea|business)|did not (?:know|bother|care|test|wrap|protect|dry|rinse|check|pack)|does not know|talking through|pulled the wool|took advantage|wrong (?:shampoo|detergent|product|method|chemical)|too much|too strong|too hot|too wet)\\b", { also: ["softened"] }),
      p("\\b(?:MISDEED|bleached|over-?wetted|soaked|caused|damaged|done|used|left|burnt|torn|ripped|(?<!\\b(?:parcel|form|card|label|letter|paper|note|van|list|number)s? (?:that |which )?)(?:came|comes)\\b(?!.{0,25}\\bby\\b))\\b.{0,25}\\b(?:by|from|at the hands of|on the part of) (?:your |the |that |whoever |a |this )?(?:previous |last |other |former |careless |negligent )*PARTY\\b(?!.{0,40}\\b(?:may|might|cannot|could)\\b)", { also: ["softened", "reported"] }),
      p("\\b(?:whose|their|his|her|your \\w+'s|\\w+'s|the (?:cleaner|seller|shop|landlord|dealer|mover|carrier)s?'?s?) (?:own )?(?:fault|doing|negligence|carelessness|mistake|error|blunder|incompetence|botch|failure|shoddy work|poor work|bad work|sloppiness)\\b(?!.*\\b(?:not|cannot)\\b)", { also: ["softened"] }),
      p("\\b(?:cowboys?|crooks?|charlatans?|sharks?|con men|con artists?|rogues?|rip-?off|scam|amateurs?|bodgers?|butchers?|talking through (?:their|his|her) hats?|have words with|give them what for|tell them (?:so|from me|i said)|tell (?:him|her) (?:so|i said)|prove (?:it|them wrong)|you were (?:had|done|robbed|sold a pup|taken for)|been had|misdescribed|missold|mis-sold|negligen\\w+|incompeten\\w+|negligent cleaning)\\b", { also: ["softened"] }),
      p("\\b(?:PARTY|most \\w+|these people|those people|that \\w+)\\b(?: \\w+){0,5} (?:should (?:never|not) have|has no (?:clue|idea|business)|have no (?:clue|idea|business)|had no (?:clue|idea|business)|did not (?:know|bother|care|test)|do(?:es)? not (?:know|care|understand)|did not (?:understand|think|read|look|trouble)|never (?:tested|asked|checked|bothered))\\b", { except: ["negated"], also: ["softened", "denied"] }),
      p("\\b(?:took|taken|taking) you for a (?:ride|fool|mug)|\\bpull\\w* (?:a fast one|the wool)|\\bsaw you coming\\b|\\bsold you (?:a lie|short|a story|down)|\\btaken (?:in(?! (?:daylight|good|natural|bright|full|strong|the|an?)\\b)|advantage)\\b|\\bpulled one over\\b", { also: ["softened"] }),
      p("\\byou (?:\\w+ly )?(?:ruined|caused|destroyed|wrecked|brought this|should (?:not|never) have|ought not to have|have only yourself)\\b|\\b(?:your own|entirely your|your) (?:fault|doing|mistake|carelessness)\\b", { also: ["softened"] }),
      p("\\b(?:unlike|better than|not like(?! to)|other than us|nobody else|no other (?:firm|workshop|cleaner)|other (?:firms?|cleaners?|workshops?|companies))\\b.{0,50}\\b(?:ruin\\w*|damage\\w*|cut corners|cannot|do not know|spoil\\w*|charge|fail\\w*|clueless|bungle\\w*|never|lack|guess)\\b", { except: ["negated", "hedged"], also: ["warned"] }),
      p("\\b(?:\\w+'s|their|his|her) (?:\\w+ )?(?:cleaning|wash|washing|shampoo|treatment|bath|laundry|machine|steaming|work|solvent|product)s? (?:that |which )?(?:SURELY |has |have |had )*(?:(?:is|was) what )?(?:(?:did|done|caused|shrank|shrunk|faded|stained|browned|stripped|bleached|ruined|felted|matted|burst|soaked|harmed|damaged|spoilt|spoiled) \\w+|(?:made|turned) (?:it|them|the \\w+) \\w+|(?:took|taken) (?:the|its|your) (?:colou?rs?|dyes?|pile|sheen|shine)\\b|left (?:this|that|these|those|an?|the) (?:\\w+ )?TROUBLE)\\b", { also: ["softened", "reported"] }),
      own(`${NAMED} ${BADLY}`, { also: ["softened", "reported"] }),
      own(`\\b(?:MISDEED|soaked|flooded|drowned|bleached|felted|over-?wetted|scrubbed|rubbed|${FELL_SHORT})(?: \\w+){0,2} by (?:(?:(?:the|your|an?|that|some|whoever|their|his|her) )?(?:previous |last |other |former )?PARTY\\b|(?!${NO_DOER}\\b)[a-z][a-z'&-]+)`, { also: ["softened", "reported"] }),
      own(`\\b${SOMEBODY} ${BADLY}`, { also: ["softened", "reported"] }),
      p(`\\b(?!(?:we|i|you|it|that|this)\\b)\\w+ (?:has |have |had )?(?:made|did|done) (?:an?|such an?) (?:\\w+ly )?(?:poor|bad|shoddy|sloppy|careless|terrible|dreadful|hopeless) job\\b|\\b${SOMEBODY} (?:has |have |had )?(?:did|done) (?:all )?(?:the|this|that) damage\\b`, { also: ["softened", "reported"] }),
      // Said in other words
      p("\\b(cheated|swindled|deceived|lied|conned|tricked|defrauded|ripped off)\\b", { also: ["reported"] }),
      p("\\b(is|are|was|were) the reason\\b|\\b(they|he|she) should pay\\b|\\b(used|put on|applied) the wrong\\b|\\bsold you (a|an) (fake|dud|lie|imitation|pup)\\b|\\b(a|is|was) fakes?\\b|\\bask for your money back\\b|\\bthanks to (their|his|her|your (cleaner|seller|landlord))\\b|\\b(their|his|her) (mistake|carelessness|sloppiness|bad work|poor work)\\b"),
      p("\\b(fraud|fraudster|crook|fake on purpose|incompeten(t|ce)|careless(ness|ly)?|negligen(t|ce))\\b"),
      p(`\\b(?:${FAULT}|to blame|responsible for the damage)\\b`),
      p("\\b(?<!what (?:the )?)(they|he|she|seller|shop|dealer|cleaner) knew\\b", { also: ["hedged"] }),
      ...meant("blame"),
    ],
  },
  {
    id: "cover", what: "says what an insurer, a court or a seller will decide",
    why: "Cover and fault are for others to decide, and local law decides.",
    advise: "Leave it open:",
    instead: "Whether an insurer or a seller pays is for them to decide.",
    excuses: ["negated", "hedged", "undecided"],
    patterns: [
      p("\\bLEGAL\\b(?:(?!\\b(?:decide|determine|interpret|depend)\\w*\\b)[^.])*\\bDECIDES\\b(?! (?:decide|determine|vary|differ|depend|want|ask|tell|say|need|require|let|send|look|judge|help|know|not|probably|be able)\\b)", { also: ["softened"] }),
      own("\\b(?:LEGAL|shop|seller|they)\\b.{0,30}\\b(?:will not|cannot|can not|could not|has no|have no)\\b.{0,30}\\b(?:argue|refuse|dispute|say no|wriggle|deny|object|leg to stand|choice|option|grounds)\\b"),
      p("\\byou (?:are|will be|would be|have)(?: \\w+ly)? (?:entitled|covered|insured(?! by us)|owed|due|(?:a|the) (?:right|legal right|statutory right|case|claim)|every right|the law|fully covered|able to (?:claim|sue))\\b", { also: ["softened"] }),
      p("\\b(?:PARTY|LEGAL)\\b.*\\b(?:must|has to|have to|is obliged|are obliged|is bound|are bound|is liable|are liable|is responsible|owes?|will have to|should)\\b.*\\b(?:refund|compensat\\w*|replace|pay|money|penny|reimburse|cost|meet|bear|foot|make good|cover|give you|back)\\b", { also: ["softened"] }),
      p("\\b(?:will|shall|going to|bound to|certain to|sure to) (?:\\w+ )?(?:succeed|win|prevail|be recovered|be reimbursed|be paid|be refunded|get (?:every|your|the) (?:penny|money)|pay up|pay out|cough up|foot the bill|stand up in court|hold up)\\b", { also: ["softened"] }),
      p("\\b(?:advise|urge|recommend|suggest|encourage)\\b.{0,25}\\b(?:demand|sue|claim against|withhold|take (?:them|him|her) to court|insist on|report (?:them|him|her))\\b|\\bput (?:that|it|this) on (?:your|the) claim\\b|\\b(?:demand|insist on) (?:a|your|the|every|full)\\b"),
      // Said in other words
      p("\\b(cast[- ]iron|watertight|open[- ]and[- ]shut|strong|clear|good) (case|claim)\\b|\\byou (would |'d |will |'ll )?have a case\\b|\\byou (can|could|should) (sue|claim against|take them to court)\\b"),
      ...meant("cover"),
    ],
  },
  {
    id: "verdict", what: "gives the rug up without an inspection",
    why: "“Beyond economic repair” needs a named person's inspection; from photos it is provisional.",
    advise: "Say that it is provisional:",
    instead: "From photos it looks beyond economic repair; that is provisional until we have seen it.",
    excuses: ["hedged", "undecided"],
    patterns: [
      p("\\b(?:RUG|it|this|this one|the \\w+) (?:is|are|has|looks) (?:SURELY |WHOLLY |just |now |simply |frankly |\\w+ly )*(?:toast|a goner|goners|a lost cause|dead|finished|done for|had it|had its day|past it|hopeless|scrap|rubbish|worthless|worn out|irretrievable|irreparable|irrecoverable|unsalvageable|unsaveable|ruined|destroyed|a write-?off|an insurance write-?off|past (?:saving|help|repair)|for the (?:bin|tip|skip|dump))\\b", { also: ["softened", "negated", "reported"] }),
      p("\\bbeyond (?:all |any |economic |economical )?(?:repair|salvage|saving|help|rescue|redemption|recovery|restoration|hope)\\b|(?:^|, |\\band )LEADIN(?:bin|scrap|dump|skip|replace|throw out|throw away|get rid of|dispose of) (?:it|the rug)\\b|\\b(?:take|send) it to the (?:tip|dump|skip)\\b|\\bwrite it off\\b|\\b(?:buy|get) (?:a new|another|yourself a new) (?:one|rug)\\b|\\b(?:no|any) hope\\b|\\bwaste (?:your|any|good) (?:money|time)\\b|\\b(?:not|never) (?:be )?worth (?:the (?:cost|money|effort|trouble)|a penny|paying|spending|mending|restoring|the bother)\\b", { also: ["softened", "denied", "reported"] }),
      // Said in other words
      p("\\b(cannot|can't|can never) be (saved|rescued)\\b"),
      p("\\bnothing (?:left )?(?:in (?:it|this) )?(to be done|can be done|more can be done|(?:left )?(?:to|worth) (?:save|saving|rescue|rescuing|keep|keeping))\\b"),
      p("\\bnot worth (cleaning|saving|repairing)\\b"),
      own("\\bnothing (?:that )?(?:anybody|anyone|any of us|we|you|one) (?:can|could) do (?:for|about|with) (?:it|this|that|them|RUG)\\b|\\b(?:nobody|no one|none of us|nothing) (?:\\w+ )?(?:can|could|will) (?:ever )?(?:help|save|mend|rescue) (?:it|this|that|them|RUG)\\b(?! (?:to|with|by|without|unless|until))|\\b(?:RUG|it|this|that|this one|such an? \\w+|the \\w+) (?:is|are) not (?:repairable|mendable|salvageable|restorable|saveable|savable)\\b"),
      p("\\b(?:bin|skip|tip|dump) job\\b|\\b(?:one|job|this is) for the (?:bin|skip|tip|dump)\\b"),
      ...meant("verdict"),
    ],
  },
];
