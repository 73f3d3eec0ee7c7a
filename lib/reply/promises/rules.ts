/**
 * What a letter may not say when no more is known than it claims. Data: a pattern catches, the excuses let go. Elicited,
 * and held to tables of sentences in its tests. Patterns meet a clause in lower case, without what stands in quotation
 * marks; `FIBRE`, `RUG`, `NUMBER` and the like stand for lists in `vocabulary.ts`.
 */
export const RULE_IDS = ["certainty", "result", "safety", "number", "harm", "blame", "cover", "verdict"] as const;
export type RuleId = (typeof RULE_IDS)[number];

/** What takes the edge off a clause: see `excuses.ts`. */
export type Excuse = "negated" | "hedged" | "undecided" | "reported" | "ranged" | "ours";

export interface Pattern {
  /** A regular expression over one clause, written with the words of vocabulary.ts in capitals. */
  readonly catches: string;
  /** Excuses that hold for this pattern beside the rule's own. */
  readonly also?: readonly Excuse[];
  /** Excuses of the rule that do not hold: the pattern is a negation or a hedge itself. */
  readonly except?: readonly Excuse[];
}

export interface Rule {
  readonly id: RuleId;
  /** In the middle of a sentence: "this sentence …". */
  readonly what: string;
  readonly why: string;
  readonly suggest: string;
  readonly excuses: readonly Excuse[];
  readonly patterns: readonly Pattern[];
}

const p = (catches: string, rest: Omit<Pattern, "catches"> = {}): Pattern => ({ catches, ...rest });
/** The pattern denies something itself, so only a denial before it excuses. */
const own = (catches: string): Pattern => p(catches, { except: ["negated"] });

export const RULES: readonly Rule[] = [
  {
    id: "certainty", what: "states as certain what the evidence only makes likely",
    why: "Words and photos never settle a fibre or a cause; a test or an inspection does.",
    suggest: "Say how likely it is and what would settle it: “It is probably …; a test of a few fibres would tell.”",
    excuses: ["negated", "hedged", "undecided", "reported"],
    patterns: [
      p("\\b(RUG|it|this|what you have|they|FRINGE) (is|are|'s|was|can only be|must be|has to be)( SURELY| clearly| plainly)?( made (of|from)| pure| real| genuine| true| a| an| the| in fact| NUMBER ?(%|per cent)| of)* ?FIBRE\\b"),
      p("\\byou (own|have|bought)( a| an)? (genuine|real|pure|true)?( FIBRE) (rug|carpet)"),
      p("\\b(SURELY|certain|prove[sd]?|proof that|identified|confirmed|clearly|we know that)\\b.*\\b(FIBRE|MARK|CAUSE)\\b"),
      p("\\bMARK (is|was|comes? from|came from|was caused by|is caused by|can only be) (the |a |an |old |fresh )?(CAUSE)"),
      p("\\b(is|was|were|has been|have been) (SURELY |plainly |clearly |obviously |simply )?(caused|brought about) by\\b"), p("\\b(damage|harm|MARK|HARM) (is|was|were|has been) (SURELY |plainly |clearly |obviously )?(done|made|left) by\\b"),
      p("\\bfrom (the|your|these|one) (photo|picture|photograph)s? alone\\b|\\bat a glance\\b|\\bone look at\\b"),
      own("\\b(and|or) nothing else\\b|\\bonly (one )?(possible |conceivable )?(cause|explanation|reason|answer)\\b|\\b(can't|cannot|couldn't) (possibly )?be (anything (else|but)|FIBRE)\\b|\\bno way (that )?(this|it) is\\b"),
      p("\\btell you (flatly|straight|plainly|categorically|outright|here and now|for a fact|with confidence|without hesitation)\\b|\\b(i|we) (can )?assure you\\b|\\bwithout a shadow\\b|\\bthere is no mistaking\\b|\\bunmistakabl[ey]\\b|\\bobviously\\b"),
      p("\\b(dates? (from|back to)|was (woven|knotted|made) (in|by|around))\\b"),
      own("\\b(tell|say|know|judge|assure)\\b.*\\bwithout (even )?(seeing|having seen|looking at) (it|RUG|the back)"),
      p("\\b(photos?|pictures?|photographs?)\\b.*\\b(tells?|shows?|says?) (us |me )?(all|everything|enough)\\b"),
      own("\\bno (inspection|test|visit|further test\\w*) (is |will be )?(required|needed|necessary)\\b|\\bno need (for|of|to have) (an? |any |it )?(\\w+ )?(inspect\\w*|test\\w*|looked)|\\b(needn't|need not|don't need to|do not need to) (have it|bring it|get it|send it)|\\b(need|needs) no (inspection|test\\w*)\\b"),
      own("\\b(don't|do not|no need to|needn't) (worry about|bother|trouble)\\b.*\\b(inspect|test)"),
      own("\\b(is|are) nothing (more|else|other|but)\\b"),
      p("\\b(this|it|RUG|yours|what you (have|own)) (is|was) (SURELY )?(a |an )?(genuine |real |true |fine |old |early |late |vegetable-dyed )*ORIGIN"),
      p("\\b(dyes?|colours?) (are|is) (SURELY |all )?(vegetable|natural|synthetic|chrome|chemical|madder|indigo)\\b"),
      p("\\b(FRINGE|foundation|back(ing)?|warps?|knots?) (is|are) (SURELY |perfectly |quite )?(sound|healthy|intact|strong|as good as)\\b"),
    ],
  },
  {
    id: "result", what: "promises a result",
    why: "What comes back is known after a test in a hidden corner, and even then within limits.",
    suggest: "Give the range and the limit: “In most cases between … and … comes back; we cannot promise it.”",
    excuses: ["negated", "hedged", "undecided"],
    patterns: [
      p("\\b(MARK|RUG|it|they|this|all of it|everything) (will|'ll|shall|is going to|are going to)( SURELY| all| fully| completely| soon| simply)* (come (right )?(out|off|up)|go( away)?|disappear|vanish|lift|return|recover|be (gone|removed|fully removed|completely removed|restored|as new|spotless|perfect|clean again|saved|like new)|look (as|like) |stand up|come back|bounce back)"),
      p("\\bwe (will|'ll|shall|can|are going to|are able to|would)( SURELY| fully| completely| easily)* (remove|restore|save|cure|fix|rescue|make it perfect|get (it|this|that|the MARK|all of it|everything)( all)? out|bring (it|the colour|the pile) back)\\b"),
      p("\\b(can|could) be( SURELY| fully| completely| easily| wholly)+ (restored|removed|saved|cleaned|fixed|put right)"),
      p("\\b(MARK|it|RUG) can be (removed|cleaned|taken out)\\b.*\\b(trace|completely|fully)"),
      p("\\b(guarantee|guaranteed|we promise|i promise|you have (our|my) word|rest assured|(you can )?be sure that)\\b", { except: ["hedged"] }),
      p("\\b(as good as new|as new|like new|good as new|original state|perfect again|spotless|easily fixed)\\b"),
      p("\\b(cleaning|wash|treatment|method)\\b.*\\b(restores|cures|removes|takes out)\\b"),
      p("\\bwe always (get|remove|bring|save)\\b"),
      p("\\b(THING) (will|'ll|shall|is going to|are going to) (?!not\\b|never\\b|always be|cost|need|have to|take|tell|show|depend|stay|remain|be (seen|tested|inspected|looked|weighed|judged|kept|held|treated|washed|cleaned|dried|collected|returned|sent|there|the|a|an|ours|yours|for|in|with)\\b|help|settle|decide|go (to|back to|into|through)|leave|wait|stand in|lie|be (set|worse|weaker|lost))(\\w+ )*\\w+"),
      p("\\bexpect (the|your|it|them|every\\w*)\\b.*\\bto (OUTCOME|be (like|as|as good)|look)\\b"),
      p("\\b(repairs?|results?|our work|our cleaning|reweav\\w+)\\b.*\\b(is|are) (\\w+ and )?(invisible|permanent|lasting|perfect|undetectable)\\b"),
      p("\\b(outlast|outlive)s?\\b|\\bback to exactly\\b|\\bexactly as it was\\b|\\bjust as it was\\b|\\bthan the day you bought\\b|\\bthe day you (bought|got) it\\b"),
      own("\\bno exceptions?\\b|\\bnot an? (trace|hint|speck|sign|whiff|shadow)\\b|\\bnothing\\b.*\\bis beyond us\\b|\\bnever (once|yet|ever) (failed|lost|had)\\b"),
      p("\\bevery( single)? (stain|mark|rug|spot|case|one)\\b.*\\b(vanished|came out|come out|gone|went|saved|succeeded)\\b"),
      p("\\b(easy|simple|routine|straightforward) (one|job|fix|matter|case)\\b"),
      p("\\b(?<!\\b(we|i|you) )(will|'ll|shall|(is|are) (going|sure|bound|certain) to)\\b( \\w+ly)?( all| just| soon| simply| always| be| turn| look| by (it|them)sel(f|ves))* (OUTCOME)"),
      p("\\b(MARK|HARM|it|they|these things|those things|this sort of thing) (always|invariably|simply|just|in the end) (COMES)"),
      p("\\bcan (always|invariably) be\\b"),
      p("\\b(always|invariably|without exception|every single|every last|each and every)\\b.*\\b(COMES|save|saves|saved|rescue|succeed|reversed|removed|restored|gone)\\b"),
      p("\\b(save|saves|saved|rescue|remove|clean|restore|get)\\b.*\\b(every single|every last|each and every|without exception|all of them)\\b"),
      p("\\b(we|our \\w+( \\w+)?) (can |will |'ll )?(restore|restores|bring|brings|give|gives|gets?|return|returns)\\b.*\\b(the full|full (strength|colour|glory)|its (old|former|original)|the original|back to (life|new)|(it|them|that) back|as it was)\\b"),
      p("\\byou (will|'ll|shall|are going to)? ?(get|have|receive|be handed)( back)? a (PERFECT)"),
      p("\\b(PERFECT)\\b(?=.*\\b(again|wash|clean\\w*|when|unroll|return|back|after)\\b)"),
      p("\\b(money back|money-back|hand on heart|take (my|our) word|mark my words|walk in the park|piece of cake|child's play|a doddle|a cinch|no problem at all|leave it to us|consider it done|you have nothing to lose|easy as pie|as easy as|in safe hands|bread and butter)\\b"),
      p("\\b(stake|bet|wager|put)\\b.*\\b(reputation|name|house|shirt|money) on\\b"),
      own("\\beat my hat\\b"),
      own("\\b(lose|losing) (any |a )?sleep\\b|\\bnever (yet )?(met|seen|had|lost|failed|known)\\b.*\\b(couldn't|could not|can't|fail\\w*|beaten|defeat\\w*)\\b|\\bnever (yet )?(failed|lost)\\b|\\bfirst (failure|time we (have )?failed)\\b"),
      own("\\b(nobody|no one|not a soul|(not )?even (an expert|experts))\\b( \\w+)? (will|would|could|can)\\b.*\\b(know|see|tell|notice|find|spot|guess)\\b"),
      p("\\b(gone|away|forget (about )?\\w+|rid of \\w+|solved|cured) (for good|for ever|forever|once and for all)\\b"),
      p("\\b(nowhere to be seen|pleasantly surprised|every trace|all traces|every speck|every bit of|in one (wash|go)|with one wash|first time round)\\b"),
      p("\\b(in your case|for you) (i|we) (will|do|can)\\b|\\byou will say the same\\b|\\b(yours|your rug|this one) (will not|won't) be the first\\b", { except: ["negated"] }),
      p("\\b(fading|shrinkage|browning|bleaching|loss of (colour|shine|pile))\\b.*\\b(temporary|reversible|only on the surface)\\b"),
      p("\\b(in every case|success rate|every time)\\b"),
      own("\\b(without|no) (a |any )?trace\\b"),
      own("\\bnothing (will|is going to) (be left|remain)"),
      own("\\byou (will not|won't|will no longer|will never) (see|notice|smell)\\b"),
      own("\\b(will|does) (not|never) (run|bleed|come back|return)\\b.*\\b(when we|after (our|the|this)|once we|if we)\\b"),
      own("\\b(never|not) (comes?|come) back after (our|the|this)"),
      p("\\b(sure|certain|confident) (that )?(we|it) (can|will) (get|come|be|go|bring|remove)"),
    ],
  },
  {
    id: "safety", what: "calls something safe that carries a risk",
    why: "Every cleaning can make a rug worse, some piles in one case in four; mould and dyes are not judged from photos.",
    suggest: "Name the risk and what is done about it: “Cleaning always carries some risk, so every colour is tested first.”",
    excuses: ["negated", "hedged", "undecided"],
    patterns: [
      p("\\b(completely|perfectly|absolutely|totally|entirely|quite|100 ?%|wholly) (safe|harmless|risk.?free|without risk)\\b"),
      p("\\brisk.?free\\b"), p("\\b(dyes?|colours?) (is|are) (safe|fast|stable)\\b"), p("\\bmould is harmless\\b"), p("\\bwithout (any )?risk\\b", { except: ["negated"], also: [] }),
      own("\\bthere is no (risk|danger)\\b"), own("\\bnothing can (go wrong|happen)\\b"), own("\\b(cannot|can't|can never|will not|won't) (be )?(harm|harmed|damage|damaged|hurt|go wrong|shrink)\\b"),
      own("\\bguaranteed not to\\b"), own("\\b(never|not) (touch|come near|eat) (it|them|the rug) again\\b"), own("\\b(need not|needn't|don't need to|do not need to) worry\\b"),
      own("\\bnot (with|under|in) (us|our (hands|care|workshop))\\b|\\b(not|isn't|without) the slightest (risk|danger|chance|doubt)\\b|\\bno (risk|danger|harm) (at all|whatever|whatsoever|to)\\b|\\bnothing( \\w+)? (can|could|will) (go|be) (wrong|harmed|damaged)\\b|\\bnothing (to fear|to worry about)\\b"),
      own("\\b(can't|cannot|won't|will not|doesn't|does not|wouldn't|never) (do )?(any |it any |the rug any |the least )?(harm|hurt|damage)\\b"),
      own("\\b(zero|nil|no) (risk|danger)\\b|\\bno harm (can|will|could|is)\\b"),
      own("\\bno (spill|stain|mark|moth|dirt|water|wine) will (ever )?\\b|\\b(cannot|can't|will never|won't ever) (return|come back|happen again|mark|stain)\\b"),
      p("\\bsafe (for|on|with|to use on) (?!our\\b)\\w+"), p("\\b(bulletproof|foolproof|fool-proof|fail-safe|idiot-proof)\\b"),
      p("\\b(kills?|destroys?|removes?) (all|every|100 ?%)\\b"),
    ],
  },
  {
    id: "number", what: "gives one number where only a range is known",
    why: "An improvement, a life left, a price or a value is a range until the rug was inspected.",
    suggest: "Give the range: “between … and …”, with what it hangs on.",
    excuses: ["negated", "hedged", "ranged", "reported", "undecided"],
    patterns: [
      p("\\bNUMBER ?(%|per ?cent)( chance)?\\b|\\b(chance|improv\\w+|better|back|gone|fade|comes? out)\\b.*\\bNUMBER ?(%|per ?cent)"),
      p("\\b(half|(one|two|three|four|nine|seven|eight) (tenths?|quarters?|thirds?|fifths?))\\b.*\\b(gone|better|back|out|less)\\b|\\b(fade|improve|lighten|recover|go)\\w* by (a |NUMBER )?(half|thirds?|quarters?|tenths?|fifths?)"),
      p("\\b(last|lasts|live|lives|good for|left|remaining|enjoy it|has|have)\\b.*\\b(NUMBER( more)? years?|decades?|lifetime|rest of your life)\\b"),
      p("\\b(NUMBER|another NUMBER) years? (left|more|to go)\\b"),
      p("\\b(NUMBER|several|many) (more |good )?(years?|decades?) (out of|from|in) (it|this|RUG)"),
      p("\\b(price|charge|fee|quote|figure)\\b.*\\b(fixed|final|guaranteed|whatever)\\b"),
      p("\\b(twice|double|treble|three times|ten times) (what|its|the|your|as much)\\b|\\b(doubles?|trebles?) (in|its) value\\b|\\bonly (go|goes|going) up in value\\b", { except: ["ranged", "reported"] }),
      p("\\b(extend|extended|prolong|prolonged|add|adds|added|buys?|give|gives)\\b.*\\bNUMBER (more |extra |good )?years?\\b", { except: ["ranged"] }),
      p("^(?!.*\\b(inspection|tests?|testing|visit|collection|delivery|postage|laborator\\w+|report|estimate)\\b).*\\bcosts? (you )?(CURRENCY ?)?NUMBER"),
      p("\\bworth (CURRENCY ?)?NUMBER"),
    ],
  },
  {
    id: "harm", what: "advises something that can harm the rug or a person",
    why: "Water, heat, products and rubbing set marks and break weak fibres, and a wrong guess of the fibre must not hurt. First aid is one set, whatever the fibre.",
    suggest: "Leave it to first aid: press a plain white dry cloth, no product, no more water, no heat, let air get to it, and wait for us.",
    excuses: ["negated", "reported", "ours"],
    patterns: [
      p("^LEADIN(wash|rinse|rub|scrub|soak|shampoo|steam|iron|bleach|beat|wet|burn|sponge|hoover it wet|scrape|brush it)\\b"),
      p("^LEADIN(use|try|put|pour|dab|sprinkle|spray|mix|apply|add|work in|treat it with|clean it with|wash it with|blot it with|go over it with)\\b.*\\bAGENT\\b"),
      p("\\bAGENT\\b.*\\b(will do|works?( well)?|helps?|does the trick|will (take|lift|get|remove)|is (fine|best|good))\\b"),
      p("\\b(recommend|suggest|advise)\\b.*\\bAGENT\\b"),
      p("\\byou (can|could|may|should|might)( safely| simply| just| also)? (wash|rinse|rub|scrub|soak|shampoo|steam|iron|bleach|beat|wet|burn|put it in|use|try)\\b"),
      p("\\bturn (up )?(the )?(underfloor |floor )?heating (up|on|higher)|\\bturn (up|on) the\\b.*\\bheating"),
      p("^LEADIN(hang|lift|drag|carry|roll up) (the|your|a) (wet|soaked|damp)"),
      p("\\bmix\\w*\\b.*\\bAGENT\\b.*\\b(with|and|into|to)\\b.*\\bAGENT\\b(?!.*\\b(danger|fumes?|gas|toxic|poison))", { except: ["ours"] }),
      p("(^|, |and |then |: )(LEADIN)(wash|rinse|rub|scrub|soak|shampoo|steam|iron|bleach|beat|sponge|hose) (it|them|the (rug|pile|spot|stain|mark|patch|area|fringe)|with|through|down|out|off|over)\\b"),
      p("\\bAGENT\\b.*\\b(home remed(y|ies)|do try|try that|make a fine|make a good|is all (it|you) needs?)\\b"),
      p("\\b(a|the) (good |quick |thorough |proper |hard |light )*(beating|scrub(bing)?|soak(ing)?|hosing( down)?|rub(bing)?|hot wash|machine wash|steam(ing)?)\\b.*\\b(all (it|you) needs?|do (it|the)|does the|will (do|help|sort)|works?)\\b"),
      p("\\b(give|giving) (it|the rug|the pile|the spot|the mark|the patch) a (good |quick |hard |proper |thorough |gentle |light )*(scrub|wash|rinse|soak|shampoo|beating|hoovering|hose)"),
      p("(^|, |and |then |: )(LEADIN)(go over|pour|hold|put|lay|hang|drape|spread|dry|place|leave|blow|press|run|train|point)\\b.*\\b(HEAT)\\b"),
      p("\\b(pop|put|throw|stick|shove|bung|chuck|run) (it|the rug|your rug|this)( straight)? (in|into|through) (the|a|your) (washing |wash |tumble )?(machine|washer|dryer|drier|bath|shower|pressure)"),
      p("\\b(a|one|some) (squirt|shake|dash|drop|splash|spoonful|capful|sprinkl\\w+|spray|pinch|good dose|mix|mixture|paste|cupful|teaspoon\\w*|tablespoon\\w*|cloth soaked|cloth wrung) (of|in|with|out)\\b.*\\bAGENT\\b", { except: ["ours"] }),
      p("\\b(AGENT|HEAT)\\b.*\\b(lifts?|fizz\\w*|takes? (it|that|the \\w+) out|works? wonders|beautifully|a treat|like magic|never fails|all right on|fine on|kind to)\\b", { except: ["ours"] }),
      p("^LEADIN(scrub|brush|rub|work)\\b.*\\b(hard|firmly|stiff|vigorously|well in|into the pile)\\b"),
    ],
  },
  {
    id: "blame", what: "accuses somebody",
    why: "What a seller knew or a cleaner did cannot be judged from here, and such a sentence can be held against you.",
    suggest: "Say what was said and what was found, and leave the judgement out: “You told us that it was sold as …; what we see fits … better.”",
    excuses: ["negated", "undecided"],
    patterns: [
      p("\\b(cheated|swindled|deceived|lied|conned|tricked|defrauded|ripped off)\\b", { also: ["reported"] }),
      p("\\b(on purpose|deliberately|intentionally|knowingly)\\b"),
      p("\\bPARTY\\b.*\\b(ruined|destroyed|wrecked|spoil(ed|t)|botched|mishandled|mistreated|(used|put) (far |much )?too (much|hot|strong)|overdid|overwet|(got|did) it (all )?wrong|made a mess|should have known|didn't know what|is to blame|did this|(is|are) the (cause|culprit))", { also: ["hedged"] }),
      p("\\b(ruined|destroyed|wrecked|botched) it\\b|\\btell them so\\b|\\b(amateurs?|cowboys?|bodger|charlatan|shoddy|slapdash|botch(ed)? job)\\b", { also: ["reported"] }),
      p("\\b(fraud|fraudster|crook|fake on purpose|incompeten(t|ce)|careless(ness|ly)?|negligen(t|ce))\\b"),
      p("\\b(has |have )?(ruined|destroyed|wrecked|spoil(ed|t)|botched) (your|the|this) (rug|carpet|pile)", { also: ["reported"] }),
      p("\\b((?<!whose )fault|to blame|responsible for the damage)\\b"),
      p("\\b(they|he|she|seller|shop|dealer|cleaner) knew\\b", { also: ["hedged"] }),
    ],
  },
  {
    id: "cover", what: "says what an insurer, a court or a seller will decide",
    why: "Cover and fault are for others to decide, and local law decides.",
    suggest: "Leave it open: “Whether your insurer pays is for your insurer to decide.”",
    excuses: ["negated", "hedged", "undecided"],
    patterns: [
      p("\\b(insurance|insurer|policy)\\b.*\\b(will|must|has to|is bound to) (pay|cover|accept|settle|refund)"),
      p("\\byou (are|'re) (fully )?(covered|insured|entitled)\\b"),
      p("\\b(seller|shop|dealer|cleaner|manufacturer|they)\\b.*\\b(must|has to|have to|will have to|is obliged to|owes?)\\b.*\\b(refund|compensate|replace|pay|money)"),
      p("\\byou will (win|get your money back|be (paid|refunded|compensated))"), p("\\bthe law is on your side\\b"),
      p("\\b(cast[- ]iron|watertight|open[- ]and[- ]shut|strong|clear|good) (case|claim)\\b|\\byou (would |'d |will |'ll )?have a case\\b|\\byou (can|could|should) (sue|claim against|take them to court)\\b"),
      own("\\b(insurance|insurer|seller|shop)\\b.*\\b(cannot|can't|may not) (refuse|deny|decline)"),
    ],
  },
  {
    id: "verdict", what: "gives the rug up without an inspection",
    why: "“Beyond economic repair” needs a named person's inspection; from photos it is provisional.",
    suggest: "Say that it is provisional: “From photos it looks beyond economic repair; that is provisional until we have seen it.”",
    excuses: ["hedged", "undecided"],
    patterns: [
      p("\\bbeyond (economic )?(repair|saving|help|rescue)\\b", { also: ["negated"] }), p("\\b(write-off|a total loss|past saving|destroyed for good|ruined for good)\\b", { also: ["negated"] }),
      p("\\b(cannot|can't|can never) be (saved|rescued)\\b"), p("\\b(throw|chuck) it (away|out)\\b", { also: ["negated"] }),
      p("\\bnothing (to be done|can be done|more can be done)\\b"), p("\\bnot worth (cleaning|saving|repairing)\\b"),
    ],
  },
];
