import { meant } from "./meant";
import { own, p, type Rule } from "./rule";
import { IN_USE } from "./tellings";

const INSECT = "(?:moths?|(?:moth )?(?:grubs?|larvae|larva)|(?:carpet )?beetles?|insects?|they)";
/** Where insects go next. */
const NEXT = "(?:(?:your|the|any|other|clean|woollen|wool) )*(?:clothes|clothing|jumpers?|knitwear|coats?|wardrobes?|cupboards?|drawers?|sofas?|woollens|rooms?|(?<=\\bother )rugs?|wool)\\b";
const SEEN_ONLY = "(?! (?:\\w+ )?(?:to be seen|visible|(?:that )?(?:we|i|one|you) (?:can|could)|(?:in|on) (?:the|your|these) (?:photo|picture)))";

/** That nothing can go wrong. */
export const SAFETY: Rule = {
  id: "safety", what: "calls something safe that carries a risk",
  why: "Every cleaning can make a rug worse, some piles in one case in four; mould and dyes are not judged from photos.",
  advise: "Name the risk and what is done about it:",
  instead: "Cleaning always carries some risk, so every colour is tested first.",
  excuses: ["negated", "hedged", "undecided", "disowned"],
  patterns: [
    p("\\b(?:WHOLLY|entirely|all|SURELY|so|very|as|extremely|exceptionally|100 ?%)(?: \\w+)? (?:safe|harmless|gentle|mild|risk-free|non-toxic|innocuous|natural and safe|kind)\\b(?! (?:side|place))"),
    p("\\b(?:is|are|be)(?: \\w+){0,2} (?:(?:safe|harmless|gentle|innocuous|suitable|kind) (?:for|to|on|with|around|enough)|(?:fit|fine|ready|good) for (?:\\w+ ){0,3}(?:BABY|nursery|crawling))\\b", { also: ["softened", "reported"] }),
    p("\\bBABY\\b(?: \\w+)? (?:can|may|could|is free to|are free to|will be able to|will be safe)\\b(?: \\w+){0,3} (?:crawl|lie|play|sleep|roll|walk|sit|lick|nap|back on)", { also: ["warned"], tells: IN_USE }),
    p("\\b(?:let|turn|set) (?:your|the) \\w+ loose on (?:it|the)\\b", { tells: IN_USE }),
    p("\\b(?:let|permit|allow) (?:your|the) (?:\\w+ )?BABY\\b.*\\b(?:on it|on the rug|crawl|lie|play|back|again)\\b", { also: ["warned"], tells: IN_USE }),
    own("\\b(?:no|not the (?:slightest|least)|zero|nil|without(?: the (?:slightest|least)| any)?|not any|never any|free of(?: any)?|free from(?: any)?|little or no|absolutely no|not an?) (?:[\\w-]+,? (?:and |or |of )?){0,4}?(?:risk|danger|harm|damage|shrinkage|migration|bleeding|bleed|run|running|fading|distortion|loss|adverse effects?|ill effects?|side effects?|chance|worry|worries|fear|cause for concern|consequence)\\b(?! (?:of (?:it )?(?:coming|success|a)|that it will|assessment|to your|to (?:wait|ask|leave|let|look)|in (?:waiting|asking|leaving|looking|calling|thinking)))(?!.*\\b(?:if|until|unless)\\b)"),
    own("\\b(?:nothing|no (?:harm|damage|shrinkage|colou?r migration|loss|bleeding)|none of)\\b(?: \\w+){0,8} (?:will|can|could|shall|would|is going to) (?:\\w+ )?(?:go wrong|happen|occur|arise|harm|hurt|damage|spoil|come (?:to|of)|result|follow|run|bleed|shrink|fade)\\b"),
    own("\\b(?:will|shall|can|could|would|is going to|are going to)(?: \\w+ly)? (?:not|never|no way|no longer)(?: (?:possibly|ever|even|going to|do (?:it |them |the \\w+ )?(?:any |the slightest )?))* ?(?:harm|hurt|damage|run|bleed|shrink|fade|come back|return|recur|happen again|trouble you(?! with)|move|budge|stretch|warp|distort|felt|go wrong|mark|stain again|happen|occur|arise|go (?:brown|yellow|stiff|hard|wrong)|brown|yellow|cause|flatten|shed|crush|fray|unravel|smell|peel|crumble|be (?:a problem|an issue|harmed|damaged|affected)|spoil|affect|suffer|lose)\\b(?! (?:well|to you|until|if|unless|from))"),
    own("\\bnothing (?:\\w+ ){0,2}(?:is|are|was) (?:ever )?(?:permanent|impossible|lost|beyond|too|set|for ever|forever|unfixable)\\b"),
    own("\\b(?:cannot|could not|will not|would not|can never|never|not going to)(?: \\w+){0,2} (?:make|get|go|do|be|turn out|come to) (?:it |this |that |things |the rug |any |you )?(?:any )?(?:worse|wrong|harm|damage|trouble|mischief)\\b"),
    p("\\b(?:FIBRE|RUG|PRON|DET RUGPART|RUGPART) (?:is|are|will be) (?:SURELY |WHOLLY |\\w+ly |just )*(?:fine|ok|okay|happy|all right|alright|good|grand|great|brilliant|tough|forgiving enough|hard as nails|bombproof|unkillable)(?: (?:wet|in|with|to be|for|under|when|as|enough)\\b|$)", { also: ["softened", "warned"] }),
    own("\\bnot the (?:kind|sort|type) (?:of \\w+ )?(?:that|to|which) (?:\\w+ )?(?:bleed|run|shrink|fade|stain|shed|felt|break)s?\\b"),
    p("\\byou can (?:then )?(?:spill|drop|throw|walk|do|pour) (?:whatever|anything|what|all)\\b", { also: ["softened"] }),
    p("\\b(?:FIBRE|it|wool rugs?|RUG) (?:just |really |simply |positively )?(?:loves?|likes?|enjoys?|thrives? on|can take|takes|handles?|shrugs? off|does not mind|do not mind|is used to) (?:a |the |it |some |any |plenty of |being )?(?:\\w+ )?(?:water|wash\\w*|soak\\w*|hose|rain|steam|scrub\\w*|heat|sun|rough|hot|wet|treatment)\\b", { except: ["negated"] }),
    own("\\b(?:people|they|everyone|everybody|others|folk) (?:just |only |always |simply )?(?:panic|fuss|worry|exaggerate|overreact|overdo it|scare)\\b"),
    own("\\b(?:these|those|they|it|colou?rs|dyes?|reds?|blues?|old \\w+ ones|rugs?(?: like (?:this|that|yours))?|pieces) never (?:run|bleed|shrink|fade|move|come back|return|fail|felt)\\b"),
    own("\\b(?:there is|there are)? ?no (?:way(?! of)|chance|possibility|earthly way|prospect|likelihood)\\b(?: \\w+){0,6} (?:can|could|will|shall|would|run|shrink|bleed|fade|harm|return|happen|coming)\\b(?!.*\\b(?:telling|knowing|saying|judging|to (?:tell|know|say|judge))\\b)"),
    p("\\b(?:impervious|immune|impenetrable|waterproof|stain[- ]?proof|moth[- ]?proof|fade[- ]?proof|child[- ]?proof|pet[- ]?proof|invulnerable|bulletproof|foolproof|indestructible|unsinkable|repels? (?:any|every|all))\\b(?! (?:bag|cover|container|spray))"),
    own("\\bnever (?!have (?:i|we)\\b)(?:again )?(?:be |need |have |worry|suffer|see|get)\\b.*\\b(?:again|moths?|stain\\w*|worry|trouble|problem)\\b|\\b(?:moth|stain|spill|problem|infestation|smell)\\w*\\b(?: \\w+){0,3} (?:cannot|can never|will never|could never) (?:\\w+ )?(?:return|come|recur|happen|take hold|touch|mark|get)\\b"),
    p("\\b(?:with|in) (?:full|complete|total|absolute|every|perfect|all) (?:confidence|safety)\\b|\\bwithout (?:adverse|ill|any adverse|any ill) effects?\\b|\\b(?:lifetime|lifelong|permanent) (?:protection|assurance|guarantee|warranty|cover|shield)\\b", { except: ["negated"] }),
    own("\\bno (?:need|reason|cause|call) (?:to|for) (?:\\w+ )?(?:worry|concern|alarm|fear|panic|caution|care)\\b|\\b(?:nothing|not a thing) (?:to (?:worry|fear|fret)|for you to (?:worry|fear))|\\bneed (?:not|never) (?:\\w+ )?(?:worry(?! about (?:the|our|your) (?:date|price|cost|form|parking|collection|delivery|day|time|address|papers?|deposit)s?\\b)|fear|fret|trouble|take (?:any )?(?:further )?(?:action|care|precautions?))"),
    p("\\b(?:worrying|worries) to us\\b|\\bbless you for worrying\\b"),
    p("\\b(?:let|have|seen?|watched) (?:my|our) own (?:\\w+ ){0,2}?(?:BABY|grand\\w+|children|child|dog|cat|puppy|mother)\\b.*\\b(?:on|off|it|fringe|pile)\\b", { also: ["undecided"], despiteCare: true }),
    // Insects and mould that keep away
    own(`\\b${INSECT}(?: like (?:this|these))? (?:(?:do|does|will|would|can|could) not|cannot|never)(?: ever)? (?:go (?:for|near|into|to)|eat|touch|spread (?:to|into)|attack|get (?:into|to)|harm|bother|like|reach|move (?:to|into)|feed on) ${NEXT}|\\b${INSECT} never leave (?:the|their) rug\\b`),
    p(`\\b${INSECT} leaves? ${NEXT} alone\\b`),
    own(`\\b${NEXT} (?:has|have) nothing to fear\\b`),
    own(`\\bthere (?:is|are|can be|could be|will be) (?:no|not any) (?:mould|mildew|moths?|grubs|beetles)\\b${SEEN_ONLY}|\\bthere (?:cannot|could not|will not) be (?:any )?(?:mould|mildew|moths?|grubs|beetles)\\b|\\bno mould (?:can|could|will|has)\\b|\\bmould (?:cannot|could not|will not|can never) (?:grow|form|start|live|survive|take hold|be)\\b|\\bhas no mould\\b${SEEN_ONLY}|\\bcannot go mouldy\\b`),
    p("\\bmould is (?:\\w+ )?(?:impossible|out of the question|ruled out)\\b", { except: ["undecided"] }),
    // That it is risky or hard, denied
    own("^(?!.*\\b(?:never|always|every|all|none|nothing|cannot|at all)\\b).*\\b(?:not (?:quite |strictly |really )?(?:true|so|the case)|untrue|a myth|nonsense|an old wives' tale) that\\b.*\\b(?:harm\\w*|hurts?|damages?|hard|difficult|stubborn|bleeds?|runs?|shrinks?|fades?|stains?|needs? care|delicate|risky?|spoils?)\\b"),
    // Said in other words
    p("\\brisk.?free\\b"),
    p("\\b(dyes?|colours?) (is|are) (safe|fast|stable)\\b"),
    p("\\bmould is harmless\\b"),
    own("\\bguaranteed not to\\b"),
    own("\\bnot (with|under|in) (us|our (hands|care|workshop))\\b|\\b(not|isn't|without) the slightest (risk|danger|chance|doubt)\\b|\\bno (risk|danger|harm) (at all|whatever|whatsoever|to(?! (?:wait|ask|send|look|leave|keep|let)))\\b|\\bnothing( \\w+)? (can|could|will) (go|be) (wrong|harmed|damaged)\\b|\\bnothing (to fear|to worry about)\\b"),
    own("\\b(can't|cannot|won't|will not|doesn't|does not|wouldn't|never) (do )?(any |it any |the rug any |the least )?(harm|hurt|damage)\\b"),
    p("\\bnothing\\b.*\\b(could|can|will|would) (possibly |ever )?(hurt|harm|damage|spoil|go wrong)\\b", { except: ["negated", "hedged"] }),
    own("\\b(cannot|can't|won't|will not|never) (possibly |ever )?(bleed|run|shrink|fade|budge|felt|move|brown|yellow)\\b"),
    p("\\b(non-?toxic|child-?safe|pet-?safe|baby-?safe|perfectly gentle|harmless (on|to|for))\\b|\\ball harmless\\b"),
    p("\\b(baby|children|kids|pets?|dog|cat) can\\b", { tells: IN_USE }),
    own("\\bno (spill|stain|mark|moth|dirt|water|wine) will (ever )?\\b|\\b(cannot|can't|will never|won't ever) (return|come back|happen again|mark|stain)\\b"),
    ...meant("safety"),
  ],
};
