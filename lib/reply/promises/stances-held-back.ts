import type { Stance } from "./stance";
import { expression } from "./vocabulary";

/** What a sentence holds back in the breath in which it says it. Data, elicited, as those of `stances.ts`. */
export const HELD_BACK: readonly Stance[] = [
  { // A claim taken back as it is made
    lifts: ["result", "certainty", "safety", "sureness"],
    shows: expression("\\bbut (?:i|we|that) would (?:just |only )?be (?:telling (?:tales|stories)|making (?:it|that) up|lying|fibbing|blowing smoke|guessing|dreaming)\\b|\\b(?:was|were|is|are) (?:quite |plainly )?wrong (?:about|in|on) (?:that|it|this)[.!]?$|^(?:as |(?:quite )?(?:as )?good )?as new (?:it|she) (?:will|would) not be\\b"),
    unless: expression("\\b(?:AGENT|HEAT|who (?:said|say|tell|told) otherwise)\\b"),
  },
  { // All of it, denied or doubted
    lifts: ["sureness"],
    shows: expression("^(?:not|hardly ever|(?:we|i) (?:doubt|do not expect)|(?:nobody|no one) (?:should|could|would) (?:expect|promise)) (?:does )?(?:that )?(?:all|every|the whole)\\b"),
    unless: expression("\\b(?:but|only|SURELY|WHOLLY|PERFECT|FORMER|IDIOM|OATH|LEGAL|PARTY)\\b|[;:]"),
  },
  { // What no work gives back
    lifts: ["harm", "sureness"],
    shows: expression("^(?:nobody|no one|no (?:dye|dyer|work|colou?r|paint|wash|product)) (?:can |could |will )?(?:makes?|puts?|gives?|brings?) (?:\\w+ ){1,6}(?:again|back)\\b|^(?:the )?colou?rs? (?:[\\w-]+ ){0,4}(?:does|do|will|can|could) (?:not|never) (?:come|be brought|be put|be given) back\\b|\\bcannot be (?:made|dyed|brought|put|given)\\b(?: \\w+){0,3} (?:again|back)\\b"),
    unless: expression("\\b(?:but|so|except|unless|until|like (?:us|we)|than (?:us|we)|we can|PERFECT|FORMER|IDIOM|OATH|SURELY)\\b|[;:]"),
  },
  { // What nobody need reproach themselves with
    lifts: ["certainty", "sureness"],
    shows: expression("\\b(?:no need to|need not|not need to) feel AT_FAULT\\b"),
    unless: expression("\\b(?:gone|PERFECT|FORMER|IDIOM|OATH|COMES|FIBRE|will|fine|safe|harmless|dyes?|colou?rs?)\\b"),
  },
  { // Whom we spoke to, and when
    lifts: ["sureness"],
    shows: expression("^(?:i|we|(?:my|our|your) \\w+|(?:mr|mrs|ms|miss|dr)\\.? \\w+(?: from the \\w+)?) (?:have |has )?(?:spoke|spoken|talked|rang|rung|telephoned|phoned|called|met|written|heard|had)\\b.*\\b(?:telephone|phone|(?:this|yesterday) \\w+|today|yesterday|last \\w+|on \\w+day|about the)\\b"),
    unless: expression("\\b(?:FIBRE|TROUBLE|MISDEED|PERFECT|FORMER|IDIOM|OATH|LEGAL|COMES|SURELY|gone|cannot|must|will|is|are|was|were|(?:he|she|they|it|that))\\b|[;:]"),
  },
  { // A risk told of all work alike, and what looks like something else
    lifts: ["sureness"],
    shows: expression("\\b(?:all(?: \\w+)+ have|every \\w+ has|always has) (?:(?:all|any|its|some) )?(?:risks?|danger)\\b|\\bFIBRE and FIBRE (?:can |may )?look (?:very )?(?:alike|the same)\\b"),
    unless: expression("\\b(?:but|except|unless|until|ours|with us|SURELY|PERFECT|FORMER|IDIOM|OATH)\\b|[;:]"),
  },
  { // That it is only likely
    lifts: ["sureness"],
    shows: expression("\\bin all (?:likelihood|probability)\\b"),
    unless: expression("\\b(?:SURELY|PERFECT|FORMER|IDIOM|OATH|MUST|COMES|PARTY|LEGAL|AGENT|HEAT)\\b"),
  },
  { // What we would never say of a rug
    lifts: ["result", "sureness"],
    shows: expression("^(?:and |but |so )?(?:(?:we|i) (?:(?:would|will|should|could|do) (?:not|never)|never)|(?:nobody|no one|none of us) here (?:would|will|could)) (?:ever |dream of )?(?:say|saying|claim|claiming|tell|telling|write|call|calling)\\b"),
    unless: expression("\\b(?:say|saying|claim|claiming|tell|telling|write|call|calling)\\b.*\\b(?:not|never|no|less|fail\\w*|if|unless|but|anything|stays?|remains?|PARTY|AGENT|HEAT)\\b|[;:]"),
  },
  { // A way of cleaning that may help once it was tested: whether it may be used is held against the assessment
    lifts: ["harm", "sureness"],
    shows: expression("^(?=.*\\btest)(?:an? |the )?(?:dry[- ]?clean(?:ing)?|(?:solvent |wet |hand )?cleaning)(?: (?:with|in) (?:an? )?(?:very )?(?:little |dry )?(?:solvents?|water|moisture))? (?:may |might |could |can |sometimes |often )+(?:\\w+ )?helps?\\b"),
    unless: expression("\\b(?:yourself|yourselves|at home|your own|shop|supermarket|chemist|no test|without|not test|SURELY|WHOLLY|PERFECT|FORMER|IDIOM|OATH)\\b"),
  },
  { // Who comes, and who rings
    lifts: ["result", "sureness"],
    shows: expression("\\b(?:(?:my|our) colleague|van|driver|courier|surveyor)\\b[^;:]*\\b(?:will|can) (?:\\w+ly )?(?:be with you|be there|call|come|arrive|ring|collect|fetch|pick it up|write|answer)\\b"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|OATH|gone|as new|clean|spotless|remove\\w*|saved?|restor\\w+)\\b"),
  },
  { // Papers that come by a day
    lifts: ["result", "sureness"],
    shows: expression("^(?:then |and |so )?(?:your|the|our|an?) (?:\\w+ )?(?:bills?|invoices?|estimates?|quotations?|quotes?|reports?|receipts?|papers?|forms?|letters?|certificates?|answers?)(?: (?!\\bsays?\\b)\\w+){0,3} (?:will|shall|should) (?:\\w+ly )?(?:be (?:in (?:your|the) (?:\\w+ )?(?:hands|box|post|parcel|inbox)|with you|back with you|sent|posted|on its way|ready)|reach you|arrive|come|follow|go (?:out|off))\\b"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|OATH|gone|as new|clean|spotless|remove\\w*|saved?|restor\\w+|TROUBLE)\\b"),
  },
  { // A call or a visit on the day that was agreed
    lifts: ["result", "sureness"],
    shows: expression("^(?:as (?:we |was )?(?:promised|agreed|arranged)\\b[^,]*, )?(?:we|i|our \\w+) (?:(?:will|shall|can|are going to) )?(?:bring|return|deliver|collect|fetch|ring|call|come|write|send|answer)\\b.*(?<=^as .*|.*\\bas (?:we )?(?:promised|agreed|arranged))[.!]?$"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|gone|as new|like new|looking|clean|spotless|remove\\w*|saved?|restor\\w+|fixed|TROUBLE|colou?rs?)\\b"),
  },
  { // A chance of harm, told: how great it is, is held against the assessment
    lifts: ["sureness"],
    shows: expression("\\bthere is an? (?:\\w+ )?(?:risk|chance)\\b[^;]*\\b(?:worse|harms?|damages?|fails?)\\b"),
    unless: expression("\\b(?:no|not|never|nothing|zero|nil|without|but|SURELY|WHOLLY|AGENT|HEAT)\\b"),
  },
  { // Hope, and in the same breath no promise
    lifts: ["result", "sureness"],
    shows: expression("\\b(?:hopes?|hoped|hopeful|chance|may|might|could|should|likely|probably|perhaps|expect|think|believe)\\b[^;]*\\b(?:but|though|although|yet|and)\\b[^;]*\\b(?:promise nothing|(?:cannot|could not|do not|will not|would not|no one can|nobody can) (?:\\w+ )?promise(?: (?:it|that|you that|anything|more))?)[.!]?$"),
    unless: expression("\\b(?:PERFECT|FORMER|IDIOM|OATH|SURELY|WHOLLY|AGENT|HEAT)\\b"),
  },
  { // A promise that nobody could keep, called so
    lifts: ["result", "safety", "certainty", "sureness"],
    shows: expression("\\b(?:only a (?:fool|liar|rogue|salesman) (?:would|could|will)|(?:it |that )?(?:would|might) be (?:\\w+ )?(?:misleading|rash|wrong|dishonest|foolish|unfair)(?: \\w+){0,3} to|(?:no (?:\\w+ ){1,5}|nobody (?:here |honest )?)(?:can|could|will|would|is going to) (?:honestly |ever |truthfully )?) ?(?:promise|guarantee|assure|swear|certify|give (?:any|you an?) assurance|tell you that)\\b|\\bthere is no guarantee\\b|\\b(?:does|do) not (?:issue|give|offer|make) (?:\\w+ )?(?:guarantees?|promises?|assurances?)\\b|^never guaranteed\\b"),
    unless: expression("\\b(?:but|however|although|though|unless|except|like (?:us|ours)|as (?:we|ours)|other|else)\\b|[;:]"),
  },
  { // A safety or a perfection that is not to be had
    lifts: ["safety", "result", "sureness"],
    shows: expression("\\b(?:no such thing as|(?:does|do) not exist|no \\w+ is (?:ever )?(?:completely|wholly|entirely|perfectly|quite|altogether|fully)|(?:is|are) not (?:automatically|necessarily|always|ever) an? \\w+|is a (?:rare|big|large) word|(?:is|are|would be) (?:the exception|off the table|too much to (?:ask|hope)))\\b"),
    unless: expression("\\b(?:but|except|unless|until|with us|at ours|ours|too \\w+ for us|TROUBLE|dirt)\\b(?<!\\b(?:exception|rare|table).*)"),
  },
  { // What is said in fairness of somebody who did the work before
    lifts: ["blame", "result", "safety", "sureness"],
    shows: expression("\\b(?:did|done|was doing|do) (?:his|her|their) best\\b|\\b(?:no reason to doubt|meant (?:it )?(?:well|kindly)|in good faith|had (?:a|their|his|her) reasons?|will not run (?:him|her|them) down)\\b"),
    unless: expression("\\b(?:but|not (?:good )?enough|too|still|ruin\\w*|fault|wrong|MISDEED|gone|as new|PERFECT|FORMER|OATH|our best|we can|and so)\\b"),
  },
  { // A decision that is somebody else's
    lifts: ["cover", "certainty", "sureness"],
    shows: expression("\\b(?:(?:make|makes|form|forms|reach|reaches|take|takes|make up|makes up) (?:its|their|his|her) own (?:\\w+ )?(?:decisions?|views?|minds?|judgements?)|(?:insurer|insurance company|surveyor|adjuster|court|tribunal|policy)(?: only)? (?:must|will|has to|can|alone can) (?:only )?decide|(?:insurer|insurance company|adjuster|court|tribunal|policy|(?:local|the) law)(?: (?:alone|only|who|that))* decides?\\b|only (?:the|your) (?:\\w+ ){1,2}can (?:tell|say|decide)|is (?:the one|one) to ask|is for an? (?:solicitor|lawyer|valuer|court))\\b"),
    unless: expression("\\b(?:must pay|has to pay|owes?|(?<!\\bmay be )entitled|in your favour|for you|on your side|PERFECT|FORMER|OATH|SURELY|no choice)\\b"),
  },
  { // What may be done later, after a look
    lifts: ["safety", "sureness"],
    shows: expression("\\b(?:you|they|BABY) (?:may|can)\\b[^;]*\\b(?:once|after|when|not until) (?:it is (?:quite |fully |really )?dry and )?(?:we have|it has been|somebody has) (?:seen|looked|tested|inspected)\\b"),
    unless: expression("\\b(?:clean\\w*|treated|gone|PERFECT|FORMER|OATH|SURELY|AGENT|HEAT)\\b"),
  },
];
