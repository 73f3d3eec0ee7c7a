import type { PlaceId } from "./paragraphs/row";

/** A kind of question, the words it is known by, and what of a letter of ours plainly answers it, or says that it cannot be told yet. */
export interface QuestionKind {
  readonly id: string;
  /** Read against one part of a question in lower case, with straight apostrophes. */
  readonly words: RegExp;
  /** Any paragraph of these places answers it. */
  readonly places: readonly PlaceId[];
  /** But not these of them. */
  readonly except?: readonly string[];
  /** So do these paragraphs of other places. Neither a place nor a paragraph: a person has to look. */
  readonly ids: readonly string[];
  /** And those only where they say this. */
  readonly saying?: RegExp;
}

const SET_BACK = "set (?:me|us|him|her|them) back";
const COST = `(?:costs?|prices?|charge|quote|fee|how much|${SET_BACK})`;
/** Fetching a rug, in one word or two. */
const COLLECT = "(?:collect(?:s|ed|ing|ion|ions)?|pick(?:s|ed|ing)?(?: \\w+){0,2} up|pick-?ups?|fetch(?:ed|ing)?)";
/** That we fetch it, or that it is fetched. */
const WE_COLLECT = `(?:\\byour?\\b.*\\b${COLLECT}\\b|\\b(?:be|have (?:it|them|this|the rug)) (?:collected|picked up|fetched)\\b|\\b(?:is|offer|have|do|arrange|there)(?: an?y?)? collections?\\b|\\bcollection (?:service|possible|available)\\b)`;
/** Where a rug is fetched from without a word of which place that is. */
const THEIR_HOME = "(?:me|us|home|collect|pick|fetch|(?:my|our|the|your|a) (?:home|house|flat|apartment|door|doorstep|workshop|shop|customer|client)s?)\\b";
const CLAIMS = ["claim-gift", "claim-gift-of-silk", "claim-seller", "claim-seller-of-other", "claim-seller-of-silk", "claim"];
/** What says that nothing can be told of it yet. */
const NOTHING_YET = ["fibre-said-wet", "fibre-unknown-nothing"];
/** What says that it cannot be told how far: no answer to whether there is anything to be done. */
const CANNOT_TELL_HOW_FAR = ["outlook-antique-wide", "outlook-wet-wide", "outlook-wide-unsure", "outlook-wide-seen", "outlook-wide", "outlook-none"];
/** What calls for no cleaning, or is best left as it is. */
const LEAVE_IT = ["outlook-leave-alone", "outlook-sound", "keep", "keep-priced", "keep-short", "keep-short-priced", "keep-months-or-years", "keep-months-or-years-priced"];
/** They ask leave to do something themselves. */
const MAY_I = "\\b(?:can|may|should|could|shall|must|do|would|ought|am|are|let)\\b(?: \\w+){0,2}? ?\\b(?:i|we|me|us)\\b|\\b(?:ok(?:ay)?|all right|alright|fine|safe|good|any (?:good|use|help)|worth|enough|idea|harm) (?:\\w+ )?(?:to|if|in)\\b|\\b(?:does|do|will|would) \\w+(?: \\w+)? (?:help|work)\\b|\\b(?:what|how) about\\b";
/** What households put on a mark. */
const REMEDY = "\\b(?:vinegar|bleach|ammonia|baking (?:soda|powder)|bicarb\\w*|soda|salt|lemon|peroxide|oxi\\w*|soap|suds|washing-?(?: ?up)? (?:liquid|powder)|detergent|shampoo|stain removers?|(?:carpet|rug|household) (?:cleaner|spray|foam|powder)|talc\\w*|cornflour|alcohol|spirits?|vodka|white wine|nail (?:varnish|polish) remover|acetone|white spirit|petrol|hairspray|shaving foam|toothpaste|cat litter)\\b";
/** Before a remedy: that it is put on the rug, or how it would do. */
const PUT = "put|putting|us(?:e|ing)|try|trying|appl\\w+|dab\\w*|spray\\w*|sprinkl\\w*|pour\\w*|rub\\w*|treat\\w*|add\\w*|with|about|in|would|does|will|i|we";
/** That a remedy is put on the rug, or would do something to it. */
const PUT_ON = `\\b(?:${PUT})\\b(?: \\w+){0,3}? ${REMEDY}`;
/** What a remedy would do, asked of the remedy itself. */
const WOULD_IT = `\\b(?:does|do|will|would|can|could) (?:\\w+ )?${REMEDY}(?: \\w+){0,2}? (?:take|get|draw|lift|remove|shift|bring|do|help|work|kill|clean)\\b`;
/** What stays of a remedy once it was put on, and not the mark that it left. A wine or a soda may be what was spilled. */
const LEFT_IN = "(?:soap|soapsuds|suds|detergent|shampoo|washing-?(?: ?up)? (?:liquid|powder)|(?:carpet|rug|household) (?:cleaner|foam|powder)|vinegar|ammonia|baking (?:soda|powder)|bicarb\\w*|salt|peroxide|residues?|chemicals?)(?! (?:marks?|stains?|spots?|rings?|patch\\w*))\\b";
/** Only until they hear from us or we see it: the answer hangs on nothing. */
const MEANWHILE = "(?:then|(?:you|i|we|it|somebody|someone|they) (?:can |could |may |get to |are able to )?(?:comes?|get here|arrive|hears?|collect|fetch|pick|see|looks?|have (?:seen|looked|a look)|write|answer|reply|ring|call|goes to you|is (?:seen|looked at|inspected|with you)|bring))\\b";
const SELLER = "(?:seller|shop|dealer|store)s?";
/** What somebody who was sold something else wants of a seller, or says to them. */
const OWES = "(?:pays?|paid|owes?|liable|responsible|money|claim|complain\\w*|replace|exchange|rights?|ask|what (?:do|should|shall|can|could) (?:i|we) (?:say|tell|write)|against|to blame)";
const FLAME = "\\b(?:burn|burns|burning|singe|singeing|flame|lighter|match(?:es)?|set (?:fire|light) to)\\b";
const REPLACE = ["replace", "replace-priced", "replace-dear", "replace-dear-priced", "replace-seen", "replace-seen-priced"];
/** What it would fetch, and not whether the work is worth it. */
const VALUE = "\\b(?:what|how much)\\b.*\\bworth\\b|\\bworth (?:[£$€\\d]|anything\\b|a lot\\b|much\\b|that much\\b)|\\bvalu(?:e|ed|able|ation|er)s?\\b";
const MATERIALS = "(?:silk|wool|viscose|rayon|cotton|linen|jute|bamboo|nylon|polyester|synthetic|artificial|real|genuine|fake)";

/** Asked of us, our days and our ways, or of what can hurt: no paragraph knows that, so these stay open whatever else the question asks. */
const FOR_A_PERSON: readonly QuestionKind[] = [
  { id: "safety", words: /\b(?:safe|safely|danger\w*|poison\w*|toxic|health\w*|harmful|allerg\w*|asthma|bab(?:y|ies)|child|children|electric\w*|fire)\b/u },
  { id: "when", words: /\bwhat time\b|\b(?:you|u) open\b|\b(?:when|today|tomorrow|tonight|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|(?<!\bhow many )weeks?|weekend|christmas|wedding|in time|appointment|opening hours)\b/u },
  { id: "where", words: /\b(?:where|address|parking)\b/u },
  { id: "how-long-otherwise", words: /\bhow long\b.*\b(?:wait\w*|dry|dries|drying|air|airing|inspect\w*|tests?|testing|look|repl\w+|answer\w*|hear|collect\w*|pick\w*|fetch\w*|deliver\w*|come|go|smell\w*|insur\w*|claim|repair\w*|mend\w*|fringes?|holes?|dye\w*|lab\w*|report|set|did|moths?|mou?ld\w*|i|we)\b|\bhow (?:soon|quickly|fast)\b/u },
  { id: "coming-or-sending", words: /\bcome (?:and|to|round|by)\b(?! (?:collect|pick|fetch))|\b(?:transport|courier|carrier|ship|post it)\b/u },
  { id: "collecting-otherwise", words: new RegExp(`^(?!.*${WE_COLLECT}).*\\b(?:collect\\w*|pick\\w*(?: \\w+){0,2} up|pick-?up|fetch\\w*)\\b|\\b(?:i|we|(?:my|our|his|her|their) \\w+)(?: \\w+)? ${COLLECT}`, "u") },
  { id: "collecting-there-or-then", words: new RegExp(`^(?=.*\\b${COLLECT}\\b).*(?:\\b(?:live|living|based|miles?|km|kilomet\\w*|far|distance|away|area|region|island|abroad|here|postcode|outside|beyond|upstairs|stairs|floor|next|mornings?|afternoons?|evenings?|weekends?|hours?|days?|months?|soon|early|late|deliver\\w*)\\b|${COLLECT}.*\\b(?:from|in|to|at|on|near|around|into|over)\\b (?!${THEIR_HOME}))`, "u") },
  { id: "collecting-cost", words: new RegExp(`^(?=.*\\b${COLLECT}\\b).*\\b(?:${COST}|free|extra|included?|pay)\\b`, "u") },
  { id: "our-insurance-or-shop", words: /\byour?\b.*\b(?:insur\w*|shop|store)\b|\binsured\b/u },
  { id: "other-prices", words: new RegExp(`\\bwho\\b.*\\bpays? for (?:the |an? |your |its )?(?:post(?:age|ing)?|carriage|transport\\w*|courier|deliver\\w*|collect\\w*|inspect\\w*|tests?|testing|laborator\\w*|lab)\\b|^(?=.*\\b${COST}\\b).*\\b(?:repair\\w*|mend\\w*|fringe|holes?|bind\\w*|restor\\w*|inspect\\w*|test\\w*|deliver\\w*|stor(?:e|age)|new|replac\\w*|cut\\w*|smell)\\b`, "u") },
  { id: "which-of-them", words: /\bwhich (?:one|of)\b|\bof the two\b/u },
  { id: "what-a-seller-knew", words: new RegExp(`\\b${SELLER}\\b.*\\b(?:know|knew|known|realised?)\\b`, "u") },
  { id: "residues", words: new RegExp(`\\b(?:get|take|wash|rinse|bring|draw)\\w* (?:\\w+ ){0,3}?${LEFT_IN}(?: \\w+){0,2}? (?:out|off)\\b|\\b${LEFT_IN}(?: \\w+){0,2}? (?:be |come|comes|wash|washes|rinse|rinses|go|goes)(?:(?:got|washed|rinsed|taken) )? ?(?:out|off)\\b`, "u") },
  { id: "on-a-condition", words: new RegExp(`\\b(?:unless|without|although|even though|instead)\\b|\\b(?:before|until|till)\\b(?! ${MEANWHILE})|(?<!\\b(?:know|see|say|tell me|tell us|wonder|wondering) )\\bif\\b`, "u") },
].map((kind) => ({ ...kind, places: [], ids: [] }));

/** The kinds that a letter's own paragraphs answer. Where a question is of several, each has to be answered. The words are elicited. */
const ANSWERED: readonly QuestionKind[] = [
  { id: "saving", words: /\b(?:sav(?:e|ed|ing|able)|rescued?|salvage\w*|restored?|any hope|hopeless|ruined|too late|(?:come|comes|coming) (?:out|off|back|up)|(?:get|take|wash|bring) (?!(?:my|our|the) money)(?:\w+ ){1,3}(?:out|off|back)|go away|disappear|be (?:removed|fixed)|(?:as good as|like) new|as it was|(?:be|feel|look|get|go|become|lie)(?: \w+)? (?:soft|silky|smooth|shiny|bright|white|flat|right|normal|clean|nice|lovely|beautiful|the same|usable|itself) again)\b/u,
    places: ["outlook", "worth"], ids: ["beyond-repair", "beyond-repair-priced", "care-none", ...NOTHING_YET] },
  { id: "anything-to-be-done", words: /\b(?:be done|(?:do|done) (?:anything|something)|(?:anything|something|what) (?:you|we|i|one) can do|what (?:can|could) you do)\b/u,
    places: ["outlook", "worth"], except: CANNOT_TELL_HOW_FAR, ids: ["beyond-repair", "beyond-repair-priced", "care-none"] },
  { id: "cleaning", words: /\b(?:be|you) (?:clean|cleaned|wash|washed)\b/u, places: ["care"], ids: [...LEAVE_IT, ...NOTHING_YET] },
  { id: "value", words: new RegExp(VALUE, "u"), places: [], ids: ["special-antique"] },
  { id: "worth-it", words: new RegExp(`^(?!.*(?:${VALUE})).*\\bworth\\b`, "u"), places: ["worth", "beyond"], ids: [...LEAVE_IT, ...REPLACE, "replace-doubtful"] },
  // As the other half of "or" it is answered with what it is set against.
  { id: "keeping-it", words: /(?<!\bor (?:do|should|must|shall|can|will) (?:we|i)(?: just)? )\b(?:live with it|keep it|leave it|throw (?:it )?(?:away|out)|replace it|a new one)\b/u, places: ["worth", "living"], ids: [...LEAVE_IT, ...REPLACE] },
  { id: "cost", words: new RegExp(`\\b(?:costs?|prices?|charge|quote|quotation|estimate|${SET_BACK})\\b|\\bhow much\\b(?! (?:of|longer|life|better|will|would|can|could)\\b)|\\bhow much (?:will|would) (?:it|that|this) be\\b`, "u"), places: ["price"], ids: [] },
  { id: "life-left", words: /\bhow (?:long|many (?:more )?years)\b.*\b(?:last|hold|serve|live|left|good for)\b|\bhow much (?:longer|life)\b/u, places: ["life"], ids: ["special-antique"] },
  { id: "fibre", words: new RegExp(`\\bmade (?:of|from|out of)\\b|\\bwhat (?:it|this) (?:really )?is\\b(?! worth)|\\bwhat (?:i|we) (?:own|have|bought)\\b|\\b(?:what|which) (?:fibre|fiber|material)\\b|\\b(?:is|was|be|it's)(?: (?:it|this|that|they|the (?:rug|pile|carpet)))?(?: (?:really|actually|even|a|an|all|of|pure|100%))* ${MATERIALS}\\b`, "u"), places: ["fibre"], ids: [] },
  { id: "bringing", words: /\b(?:bring it|bring the (?:rug|carpet)|bring (?:it|them) (?:in|to you|over)|drop (?:it|the rug) (?:off|by|in|round))\b/u, places: ["visit"], except: ["visit-asked"], ids: [] },
  { id: "collecting", words: new RegExp(WE_COLLECT, "u"), places: [], ids: ["visit-told", "visit-asked"] },
  { id: "how-long-it-takes", words: /\bhow (?:long|many weeks)\b(?: (?!did\b)\w+)? (?:it|this|that|you|all|everything|(?:(?:the|your|an?) )?(?:work|clean|cleaning|wash|washing|job|process|treatment)|(?:the|my|our) (?:rug|carpet))\b.*\b(?:takes?|need|away|gone)\b/u, places: ["takes"], ids: [] },
  { id: "write-off", words: /\bwrit(?:e|ten)[- ]?off\b|\btotal loss\b/u, places: ["worth"], ids: [...REPLACE, "beyond-repair"] },
  { id: "heat", words: /\b(?:heat|heater|heating|radiator|fan heater|hair ?dryer|tumble ?dr(?:y|ier|yer))\b/u, places: ["first-aid", "first-aid-list"], ids: [], saying: /\bno heat\b/iu },
  { id: "insurance", words: new RegExp(`\\b(?:insurance|insurers?)\\b|\\bclaim\\b(?! (?:\\w+ ){0,3}?(?:money|refund|back)\\b)(?!.*\\b${SELLER}\\b)`, "u"), places: [], ids: ["claim", "claim-trade"] },
  { id: "seller", words: new RegExp(`\\b(?:money back|claim (?:\\w+ ){0,3}?back|refund\\w*|compensat\\w*|send it back|return it|take it back|mis-?sold|cheated|conned)\\b|\\b${SELLER}\\b.*\\b${OWES}\\b|\\b${OWES}\\b.*\\b${SELLER}\\b`, "u"), places: [], ids: CLAIMS },
  { id: "fault", words: /\bwhose fault\b|\bwho(?:'s| is| was)? (?:at fault|liable|responsible|to blame)\b|\bwho (?:pays|should pay|will pay|has to pay)\b/u, places: [], ids: [...CLAIMS, "claim-trade"] },
  // What is to be put on it is a remedy, wherever it is done.
  { id: "at-home", words: new RegExp(`^(?!.*(?:${PUT_ON})).*\\b(?:at home|myself|ourselves|(?:can|may|should|could|shall|must) (?:i|we) (?:just )?(?:clean|wash|scrub|rinse|hose|treat|use|try|put|shampoo|soak))\\b`, "u"), places: ["refuse"], ids: [] },
  { id: "remedy", words: new RegExp(`^(?=.*(?:${MAY_I})).*${PUT_ON}|${WOULD_IT}`, "u"), places: [], ids: ["special-asked-remedy"] },
  { id: "flame", words: new RegExp(`^(?=.*(?:${MAY_I})).*${FLAME}.*\\b(?:thread|fibre|fiber|strand|tuft|yarn|bit|piece|fringe|it)\\b|\\bburn test\\b`, "u"), places: [], ids: ["special-asked-flame"] },
  { id: "what-now", words: /\bwhat (?:should|shall|can|do|must|could) (?:i|we) do\b|\bwhat (?:do|would) you (?:suggest|advise|recommend)\b|\bwhat (?:now|next)\b/u, places: ["first-aid", "trade-call", "next-step"], ids: [] },
  { id: "their-customer", words: /\btell (?:her|him|them|my (?:customer|client))\b/u, places: ["customer"], ids: [] },
  { id: "cause", words: /\bwhat (?:has |have |could have |may have )?(?:(?:happened|caused|went wrong)\b|(?:made|turned) (?:it|this|that|them|(?:the|my|our|its|his|her) )(?!.*\byou\b))/u, places: ["cause"], ids: ["cause-mould", "cause-mould-unseen", "cause-insects"] },
  { id: "mould", words: /\bmou?ldy?\b/u, places: [], ids: ["cause-mould", "cause-mould-told", "cause-mould-unseen"] },
  { id: "insects", words: /\b(?:moths?|insects?|beetles?)\b/u, places: [], ids: ["cause-insects"] },
  { id: "mending", words: /\b(?:mend\w*|repair\w*|re-?weav\w*|fringes?|holes?|tears?|torn|re-?bind\w*)\b/u, places: [], ids: ["outlook-repair", "outlook-repair-seen", "outlook-repair-first", "beyond-repair", "beyond-repair-priced", "cut-down", "cut-down-priced", "cut-down-planned", "cut-down-seen", "cut-down-seen-priced", "cut-down-seen-planned"] },
  { id: "smell", words: /\b(?:smell\w*|odou?rs?|stink\w*)\b/u, places: [], ids: ["outlook-smell", "outlook-smell-antique", "special-smell", "special-urine-smell", "special-urine-smell-told"] },
  { id: "harm", words: /\b(?:(?:make|makes) \w+ worse|harm it|damage it|shrink)\b/u, places: ["worse", "refuse"], ids: [] },
  { id: "a-look", words: /\b(?:look at it|have a look|see it first|inspect it)\b/u, places: ["next-step"], ids: [] },
  { id: "help", words: /\b(?:can|could) (?:you|anybody|anyone) (?:please )?help(?: me| us)?(?: with (?:it|this|that))?\W*$|\bwhat do you think\W*$/u, places: ["outlook", "first-aid", "trade-call"], ids: NOTHING_YET },
];

const [ASKS_COLLECTING, ASKS_COST, NAMES_THE_WORK] = [new RegExp(WE_COLLECT, "u"), new RegExp(`\\b${COST}\\b|\\bhow long\\b.*\\bthat\\b`, "u"), /\b(?:clean\w*|wash\w*|work)\b/u];
/** Asked right after whether we collect, a price, or how long “that” takes, is of collecting, unless the work is named: no paragraph knows it. Both in lower case. */
export const isOfCollecting = (part: string, before: string): boolean => ASKS_COLLECTING.test(before) && ASKS_COST.test(part) && !NAMES_THE_WORK.test(part);

/** By what a paragraph answers a kind of question: by its place, which is for just that, or by itself; null where it does not. */
export const answersBy = ({ places, except = [], ids }: QuestionKind, { place, id }: { readonly place: PlaceId; readonly id: string }): "place" | "itself" | null =>
  (places.includes(place) && !except.includes(id) ? "place" : ids.includes(id) ? "itself" : null);

export const QUESTION_KINDS: readonly QuestionKind[] = [...FOR_A_PERSON, ...ANSWERED];
