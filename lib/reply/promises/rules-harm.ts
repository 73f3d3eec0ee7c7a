import { meant } from "./meant";
import { own, p, type Rule } from "./rule";
import { ELECTRICS, FROZEN } from "./tellings";

const WET = "(?:water|wet|wetness|puddles?|liquid|damp|dampness|moisture|suds)";
const DRAWS = "(?:suck|draw|pull|lift|get|take|bring|soak|clear)(?:s|ing)?";

const FROST = "(?:the|an?|your) (?:\\w+ )?(?:freezer|deep[- ]freeze|freezing \\w+|frost|frosty \\w+|snow|ice)\\b";
const NOT_OURS = "(?!.*\\b(?:here|by us|our|the workshop)\\b)";

/** What is, or may be, viscose by its name, and what water does with it. */
const VISCOSE = "(?:viscose|rayon|(?:art|artificial|bamboo|banana|vegan|faux) silk)";
const WATERED = "(?:(?:wash|shampoo|soak|steam|(?:steam|wet)[- ]clean)(?:ed)?|(?:rins|immers|bath)ed?)";
const WE = "(?:we|i|our (?:\\w+ )?(?:team|people|workshop|man|men)|my \\w+)(?: (?:will|would|can|could|shall|are going to|usually|often|always|also|happily|simply))*";
const AT_THEIRS = "(?:at home|at your (?:home|house|place)|in (?:your|the client's|people's|a client's) (?:own )?(?:\\w+ )?(?:home|house|hall|room|lounge|kitchen|garden)s?|on your (?:own )?floor|where it (?:lies|is)|on the spot|there$)";

/** What may harm the rug or a person at home. */
export const HARM: Rule = {
  id: "harm", what: "advises something that can harm the rug or a person",
  why: "Water, heat, products and rubbing set marks and break weak fibres, and a wrong guess of the fibre must not hurt. First aid is one set, whatever the fibre.",
  advise: "Leave it to first aid, which is one set whatever the fibre, or only:",
  instead: "Please put nothing on it: no cleaner, no soap, no powder, no heat, and no more water.",
  excuses: ["negated", "reported", "ours"],
  patterns: [
    p("(?:^|, |\\band |\\bthen |: |\\bor )LEADINACT\\b(?:(?!\\b(?:dry white|plain white|plain dry)\\b)[^.])*\\b(?:AGENT|HEAT)\\b(?!.*\\b(?:switched off|turned off|off and)\\b)", { also: ["ours"] }),
    p("(?:^|, |\\band |\\bthen |: )LEADINHARMACT\\b(?! (?:test|both|result|marks?|damage|with|is|can|in the|may|would)\\b)(?= (?:it|them|that|the|your|this|any|out|down|over|off|at|away|gently|well|hard|in|through|both|those|these|a|with|on|until|briskly|vigorously|from|back|everything|\\w+ly)\\b)", { also: ["ours"] }),
    p("\\b(?:(?:recommend|suggest|advise|advocate|encourage|favour)(?! (?:you )?(?:\\w+ly )?against)|swear by|swears by|swore by|worth (?:a try|trying)|fine to|fine for|okay to|ok to|all right to|alright to|safe to|acceptable to|permissible to|happy for you to|welcome to|free to|feel free|appropriate to|sensible to|best to|good idea to|do well to|helps? to|ideal|suitable for|will suffice|is enough|does? the (?:trick|job)|tip is|trick is|remedy|(?<!\\b(?:the|our|this|that|your|of|repair) )works?(?! of (?:this|that) (?:sort|kind))(?: \\w+)?|wonders|effective)\\b(?=.*\\b(?:AGENT|HEAT|ACTING)\\b)|\\b(?:PRODUCT|HEAT|ACTING)\\b.*\\b(?:fine|okay|all right|suitable|recommended|acceptable|permissible|ideal|perfect|does? the (?:trick|job)|will (?:do|suffice|help|work|bring|lift|shift|clear|kill|remove|whiten|restore|sort|expedite|take|get|loosen|dissolve|deal)|works?|helps?|expedite\\w*|is all (?:it|you))\\b", { also: ["ours"] }),
    p("\\b(?:may|can|could|might|should|ought to|must|needs? to) (?:SURELY |\\w+ly |simply |just )*(?:be )(?:SURELY |\\w+ly )*(?:saturated|soaked|scrubbed|steamed|bleached|ironed|hosed|tumble[- ]?dried|machine[- ]?washed|boiled|combined|mixed|poured|immersed|drenched|sponged|shampooed|rubbed|sprinkled|sprayed|rinsed|beaten|put (?:in|through|on|over|near)|placed (?:in|on|over|near|beside))\\b", { also: ["ours", "warned", "undecided"] }),
    p("\\byou (?:can|could|may|might|should|must|need to|ought to|will want to|would do well to)(?: \\w+ly| just| simply| also| always| even)* (?:ACT|HARMACT)\\b.*\\b(?:AGENT|HEAT|machine|bath|shower|patio|lawn|garden)\\b", { also: ["ours"] }),
    p("\\bPRODUCT\\b", { also: ["ours", "warned", "softened", "undecided"], vague: true }),
    p("(?:^|, |\\band |\\bthen |: |\\bto )LEADIN(?:roll|fold|store|put|leave|cover|wrap|seal|lay|keep) (?:it|the(?: \\w+){1,3}|them|everything|that)\\b.{0,40}\\b(?:damp|wet|soaking|plastic|cling ?film|polythene|bin ?(?:bag|liner)s?|tarpaulin|overnight to soak)\\b", { also: ["ours"] }),
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?:spritz|spray|dab|wipe|sponge|mist|rub|douse|treat|clean|wash|scrub|soak|blot|dampen|moisten|wet|rinse|saturate|drench) (?:it|the \\w+|them|that|those|this|any \\w+)(?: \\w+){0,3} (?:with|in|using|under) (?!DRYCLOTH\\b)", { also: ["ours"] }),
    p("\\b(?:pop|put|throw|toss|stick|shove|bung|chuck|run|wash|place|dry|spin) (?:it|them|the \\w+|your rug|this|that one)(?: \\w+){0,3} (?:in|into|through|on) (?:the|a|your|an) (?:\\w+ )?(?:machine|cycle|wash|washer|dryer|drier|bath|bathtub|tub|shower|sink|line|oven|lawn|patio)\\b", { also: ["ours"] }),
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?!(?:keep|handle|compare|photograph|show|send|bring|deal|live|leave|wait|press|lift|help|provide|start|come|go|be|roll|store|turn|carry|if|when|once|unless|we|i|it|you|they)\\b)\\w+ (?:it|the (?:\\w+ )?TROUBLE|the pile|the fringe|the rug|that|them) (?:\\w+ ){0,2}with (?!DRYCLOTH\\b|(?:care|us|you|gloves)\\b)", { also: ["ours"] }),
    p("\\b(?:put|leave|hang|lay|stand|take|drag|spread) (?:it|them|the rug|that)(?: \\w+){0,2} (?:outside|outdoors|in the (?:rain|sun|snow|frost)|on the (?:lawn|grass|line|balcony|patio))\\b", { also: ["ours"] }),
    p("\\b(?:so |and |just )?(?:crack on|go for it|knock yourself out|be my guest|do your worst|give it (?:some|plenty of|a bit of) (?:welly|elbow))\\b"),
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?:put|move|place|set|push) (?:the |your )?(?:furniture|sofa|settee|table|chairs?|bed|cabinet|wardrobe)\\b.*\\b(?:back|on (?:it|top|the rug))\\b", { also: ["ours"] }),
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?:fold (?:it|the rug|them)|(?:brush|shake|sweep|wipe|pick|scrape|chip|knock|flick) (?:it|the (?:\\w+ )?TROUBLE|off|out|away|that|those|any|them)|give (?:it|the \\w+|them|that) (?:a|an|another|one) (?!(?:\\w+ )?(?:photo|picture|call|ring|rest|chance|miss|berth|day|week|try us)\\b)(?:\\w+ ){0,3}\\w+)\\b", { also: ["ours"] }),
    p("\\b(?:vacuum|hoover)\\w*\\b.{0,60}\\b(?:beater|brush bar|rotating brush|power head|full (?:power|suction)|highest|strongest|maximum|both sides|fringe|hard|vigorously|while (?:it is )?(?:damp|wet))\\b(?!.*\\b(?:off|without|raised|disengaged)\\b)", { also: ["ours"] }),
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?!(?:dye|colou?r) that\\b|glue in\\b)(?:cut|snip|trim|pull|tug|pluck|yank|burn|singe|glue|superglue|tape|staple|nail|tack|stitch|sew|stretch|paint|dye|colour|color|touch) (?:it|them|out|off|up|in|down|away|the|any|that|those|over|at|loose)\\b(?!.*\\b(?:photo|picture)\\b)", { also: ["ours"] }),
    p("(?:^|, |\\band |\\bthen )LEADIN(?:pop|hang|put|lay|drape|throw|stretch) (?:it|them|the rug|that) (?:out )?over (?:the|a|your) (?:banister|radiator|fence|line|rail|railing|balcony|wall|chair|door|hedge)\\b|\\bwith the (?:heating|heater|radiator|fire) (?:on|up|full)\\b", { also: ["ours"] }),
    p("\\b(?:keep|leave|store|stow) (?:it|them|the \\w+|that) (?:rolled|folded|wrapped)\\b.{0,30}\\b(?:wet|damp|soaking)\\b|(?:^|, |\\band |\\bthen |: )LEADIN(?:leave|keep|have|set|run|point|stand) (?:the |a |your )?(?:\\w+ )?HEAT (?:on|running|near|by|over|at|pointed|under)\\b", { also: ["ours"] }),
    p("^if you (?:do |must |have to |really must |want to )?(?:sponge|wash|rinse|wet|scrub|soak|shampoo|steam|rub|dab) (?:it|them|the \\w+|that)\\b", { also: ["warned"] }),
    p("\\b(?:two|both|several|three) (?:\\w+ )?(?:cleaners|products|sprays|powders)\\b(?=.*\\b(?:together|mixed|combined)\\b).*\\b(?:better|stronger|well|wonders|best)\\b"),
    p("\\b(?:switch|turn|unplug|pull)\\b.{0,30}\\b(?:off|out|plug)\\b.*\\b(?:quickly|with (?:a )?dry hands?|anyway)\\b"),
    p("\\bAGENT (?:does|do|works?|will (?:do|work)|did) (?:wonders|miracles|marvels|magic)\\b"),
    // A household product that is said to have done it, or to be gentle
    p("\\bAGENT\\b(?: \\w+){0,5}? (?:takes? care of|sees? to|deals? with|does it\\b|(?:gets?|got|takes?|took|lifts?|shifts?) (?:it|them|that|(?:my|our|her|his|the) (?:\\w+ ){0,3}?\\w+) (?:off|out|away|clean|up)\\b|(?:is|are) (?:\\w+ )?(?:gentle|mild|kind|harmless|safe)(?: enough)?\\b|(?:is|are|would be) what (?:i|we|you) (?:would|should|want|need|reach|use)\\b|never (?:hurt|harmed|did))", { also: ["ours", "warned", "undecided"] }),
    // Household cleaners that give off poisonous gas together (NIOSH Pocket Guide, chlorine and chloramine, from memory)
    p("^(?=.*\\b(?:bleach|chlorine|hypochlorite)\\b).*\\b(?:ammonia|vinegar|acid|toilet cleaner|limescale remover|descaler|acetone|surgical spirit|lemon juice)\\b", { also: ["warned", "undecided", "disowned"], except: ["hedged", "softened", "ours"] }),
    p("\\b(?:AGENT|cleaners|products)\\b.*\\b(?:brings? (?:the \\w+|it|them) (?:back|up)|(?:is|are) what (?:takes?|lifts?|cleans?|whitens?|shifts?))\\b"),
    p("(?<!\\bnot )\\blet (?:it|them|(?:the )?AGENT(?: and AGENT)?) (?:do (?:the|its|their) )?work\\b", { except: ["negated"] }),
    // Mould that is touched: it is spread in the room, where people breathe it in (EPA, mould in the home, from memory)
    p("(?:^|, |\\band |\\bthen |: |\\bor )LEADIN(?:blot|dab|wipe|brush|press|pat|vacuum|hoover|sweep|shake|scrape|touch|lift|rub|pick)(?: (?:off|up|out|away|at))? (?:(?:the|any|all|those|these|that|your|spots?|patch(?:es)?|bits|black|furry|dry|loose|of) )*(?:mould|mold|mildew|spores)\\b", { also: ["ours"] }),
    // A gas made light of, and help put off
    own("\\b(?:gas|fumes|chlorine)\\b.{0,40}\\b(?:is|are|will|does|do|can) not (?:\\w+ ){0,2}(?:danger\\w*|harm\\w*|poison\\w*|toxic|hurt)\\b"),
    own("\\b(?:no (?:need|reason|cause)|need not|nobody (?:needs|has)|not (?:need|have))(?: \\w+)? (?:leave (?:the|that) (?:room|house)|keep out|go out(?:side)?|air the room|open (?:the|a) windows?|(?:ring|call) (?:999|112|911|any(?:body|one)|for help|an ambulance))\\b"),
    own("\\b(?:not|never|instead of|rather than) (?:(?:ring|call|phone)(?:ing)? )?(?:999|112|911|an ambulance)\\b"),
    // Colour and powder
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?:(?:re-?)?(?:dye|dyeing|colour|color|colouring|tint|tinting|paint|painting)|touch|fill|draw) (?:it|them|in|the|that|your)\\b(?: [\\w-]+){0,4}? (?:in|back|over|yourself|at home|with)\\b", { also: ["ours"] }),
    p("\\btry (?:re-?)?(?:dyeing|colouring|tinting|painting) (?:it|them|the|that)\\b|\\bfill in (?:it|them|the|that)\\b.*\\bAGENT", { also: ["ours", "warned"] }),
    p("\\bAGENT\\b(?: [\\w-]+){0,6}? (?:(?:will|would|may|might|could) )?(?:(?:hides?|covers?) (?:it|them|the|that)|hide$|soaks? (?:up|it|the)|absorbs?|would do\\b)", { also: ["ours", "warned", "undecided"] }),
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?:shake|strew|scatter|tip|sift|dust|sprinkle|put|throw|toss|cover|rub) (?:(?!(?:under|from|off|away|aside)\\b)[\\w-]+ ){0,5}?POWDER\\b(?! (?:away|back in|out of))", { also: ["ours"] }),
    // Viscose in water, and water in their home
    p(`\\b${WE} ${WATERED} (?:\\w+ ){0,3}?${VISCOSE}\\b|\\b${VISCOSE}(?: \\w+){0,2} (?:can|could|may|will|should) (?:\\w+ )?(?:be ${WATERED}|go (?:straight )?into (?:our|the|a) (?:bath|wash))\\b`, { except: ["ours"], also: ["undecided"] }),
    p(`\\b${WE}(?: come(?: \\w+){0,4} and)? ${WATERED} (?:it|this|that|RUG|(?:the|your) \\w+(?: \\w+)?|\\w+ rugs)(?: \\w+)? ${AT_THEIRS}`, { except: ["ours"], also: ["undecided"] }),
    // Mains electricity and water
    p(`\\b(?:hoover|vacuum)\\w*(?: (?:up|out|off|away|over|the|all|that|any|most|of|standing))* ${WET}\\b|\\b${DRAWS}\\b.{0,40}\\b${WET}\\b.{0,40}\\b(?:hoover|vacuum)|\\b(?:hoover|vacuum)\\w*\\b.{0,30}\\b${DRAWS}\\b.{0,30}\\b${WET}\\b`, { also: ["undecided"], tells: ELECTRICS }),
    p("\\bDAMAGING\\b", { also: ["ours", "warned", "softened", "undecided"] }),
    p("\\b(?:a|one|some|the) (?:good |quick |thorough |proper |hard |light |decent |brisk )*(?:beating|scrub|scrubbing|soak|soaking|hosing|rub|rubbing|wash|steam|steaming|shampoo|rinse|blast|dunk|spin|press)\\b.{0,40}\\b(?:at home|yourself|in the (?:bath|garden|shower|machine)|on the (?:patio|lawn|line)|all (?:it|you)|will (?:bring|do|sort|get|shift|help)|before (?:you|we)|tonight)\\b", { also: ["ours", "warned"] }),
    // A little heat, said to be no more than that
    p("\\b(?:a |the |some )?(?:light|gentle|little|quick|soft|cool|warm|hot|low|whisper of|touch of|bit of|breath of|puff of)(?: (?:bit |touch |cool |warm |low |dry |household |domestic )?(?:of )?)?(?:steam\\w*|iron\\w*|heat|blow-?dry|hair ?dr[iy]er)\\b.*\\b(?:WORKS|relax\\w*|eases?|straightens?|flattens?|will (?:\\w+ )?(?:stand|relax|do|ease|help|straighten|dry|lift)|would (?:\\w+ )?(?:relax|ease|help|straighten|do|lift|see|sort)|never (?:hurt|harmed|did)|dries)\\b", { also: ["ours", "warned", "undecided"] }),
    p("\\b(?:fan heater|heater|hair ?dr[iy]er|dehumidifier on heat|radiator)s?\\b(?: \\w+){0,4}? (?:will|would|can|should) (?:\\w+ )?(?:dry|have it dry|see to|sort|finish|do)\\b", { also: ["ours", "warned", "undecided"] }),
    // A damp rug in a parcel
    p("(?:^|, |\\band |\\bthen |: )LEADIN(?:post|send|ship|parcel|courier|mail|bring|wrap|pack|bag) (?:it|them|the \\w+|your rug|that)(?: \\w+){0,4}? (?:while |whilst |when |still |as it is |even if )*(?:it is )?(?:still )?(?:damp|wet|soaking|dripping)\\b(?! (?:cloth|towel|tissue|patch|spot))", { also: ["ours"] }),
    // Freezing at home; what the workshop freezes, it has looked at
    p(`(?:^|, |\\band |\\bthen |: )LEADIN(?:deep[- ])?freeze\\b (?:it|them|this|the|your|small|any|rugs?)\\b`, { tells: FROZEN }),
    p(`\\byou (?:can|could|may|might|should|must|will want to|need to|ought to)(?: \\w+)? (?:deep[- ])?freeze\\b|\\b(?:can|could|may|might|should|ought to|needs? to) (?:\\w+ )?be (?:deep[- ])?frozen\\b${NOT_OURS}`, { tells: FROZEN }),
    p(`\\b(?:recommend|suggest|advise|try|by) (?:\\w+ly )?freezing\\b|^freezing (?:it|them|the \\w+|your \\w+)\\b.*\\b(?:helps?|enough|kills?|deals?|sorts?|rids?|cures?)\\b${NOT_OURS}`, { tells: FROZEN }),
    p(`(?<!\\b(?:we|i|workshop|would|us) (?:\\w+ )?)\\b(?:put|pop|lay|leave|stick|place|hang|go|roll|stand|shove|bung)\\b(?: (?!(?:we|our|us)\\b)[\\w,]+){0,6}? (?:in|into|out in|on|to) ${FROST}`, { tells: FROZEN }),
    p(`\\b(?:nights?|days?|weeks?|fortnight|hours?|spell) in ${FROST}(?!.{0,20}\\bnot\\b)`, { tells: FROZEN }),
    // Said in other words
    p("\\bAGENT\\b.*\\b(will do|works?( well)?|(?<!\\bthan it )helps?|does the trick|will (take|lift|get|remove)|is (fine|good|best(?! avoided| left)))\\b"),
    p("\\bturn (up )?(the )?(underfloor |floor )?heating (up|on|higher)|\\bturn (up|on) the\\b.*\\bheating"),
    ...meant("harm"),
  ],
};
