import { nouns, verbs, words } from "./words";

/** Words of what is meant without being said outright: signs, sharp eyes, measures, what a risk is called. */
export const IMPLIED_WORDS: Readonly<Record<string, string>> = {
  /** What shows in a photo and is taken for proof. */
  SIGN: nouns("sheen, shine, gloss, lustre, luster, nap, pile, knot, weave, fringe, back, border, edge, selvedge, photo, picture, snap, image, close-up, shot, light, look, glance, colour, color, feel, drape, texture, pattern, softness, red, blue, orange, green"),
  SETTLES: words("settles? (?:it|the|that|this)\\b, proves? (?:it|that|the|this)\\b, clinch\\w* (?:it|the|that), confirms? (?:it|that)\\b, gives? (?:it|itself|that|them|themselves|the game) away, gave it away, says? (?:it all|as much|so|enough), tells? (?:me|us|you) (?:it is|that it is|that this is|all|everything|enough|plainly|what (?:it|this) is), leaves? (?:only one|no other|no room|us in no), (?:is|are) (?:all the |the )?(?:proof|proof enough|a (?:dead )?giveaway|unmistakable|conclusive|the answer)"),
  /** What nobody need feel of what they did or asked. */
  AT_FAULT: "(?:bad|badly|guilty|foolish|sorry|ashamed|rushed|silly|awkward|embarrassed|stupid|pressed|obliged|hurried)",
  /** By the hand; "no need to feel bad" speaks of no pile. */
  FEEL: "feel(?! AT_FAULT\\b)",
  /** After a claim, that it was only likely. */
  AFTERTHOUGHT: ",? (?:in all (?:likelihood|probability)|(?:we|i) (?:would )?(?:think|believe|suspect|say|guess)|as far as (?:we|i) can (?:tell|see|say)|probably|perhaps|most likely)(?=[,.;]|$)",
  /** What looks closer than a photo: its say is allowed. */
  CLOSER: "(?:tests?|tested|microscope|laborator\\w+|inspection|inspected|quoted)",
  /** What may go wrong in the work. */
  RISKY: nouns("bleeding, bleed, dye bleed, colour run, color run, colour loss, run, running, migration, shrinkage, shrinking, felting, fading, distortion, browning, rot, dry rot, mould, mold, mildew, moth, beetle, glue, glue problem, latex problem, damage, risk, danger, dye question, dye problem, dye loss"),
  /** Those whose eye is taken to be sharp. */
  SHARP_EYE: "(?:(?:even )?(?:your|the|an?|any|my|our|her|his|some) (?:[\\w-]+ ){0,2}?(?:mother(?:-in-law)?|grandmother|grandma|gran|nan|mum|mom|father|dad|sister|brother|aunt|uncle|wife|husband|neighbou?r|friend|guest|visitor|valuer|dealer|expert|appraiser|weaver|knotter|maker|buyer|auctioneer|inspector|surveyor|detective|trained eye|sharp eye|sharpest eye|keenest eye|restorer|child|stranger|(?:man|woman|person|hands?|people) (?:who|that) \\w+ it|bloodhound)s?|sherlock(?: holmes)?|not (?:a|one) (?:guest|visitor|friend|soul|person)|friends|guests|visitors|no (?:guest|visitor|friend|buyer|valuer|expert|eye)s?)",
  FINDS: "(?:tell|see|spot|find|pick (?:it |them |that )?out|guess|know|suspect|believe|notice|point (?:to|out)|recognise|recognize|detect|smell|say where)",
  /** A little of something, as home advice has it. */
  MEASURE: "(?:(?:drop|dash|splash|spritz|dab|dot|cup|cupful|capful|spoonful|teaspoon|tablespoon|touch|pinch|handful|squirt|mist|lick|bowl|bucket|sprinkle|sprinkling|minute|going-over|once-over|wipe|rinse|brush|brushing|rub|sponge)s?(?: or two)? (?:of|with|over|under|from|in)|(?:little|bit of|few minutes (?:of|with|under|over)))",
  WORKS: words("lifts?, brings?, gets?, takes?, draws?, shifts?, softens?, makes?, does it, does the, does wonders, will do, will get, will lift, will bring, will take, will shift, will see, wants, works?, helps?, clears?, loosens?, freshens?, sorts?, cures?, revives?, is all, is plenty, is enough, is fine, goes a long way"),
  /** Outcomes of an insurer's or a court's deciding. */
  RULES: verbs("turn, refuse, argue, deny, reject, quibble, pay, accept, touch, cover, dispute, fight, say, side, see, question, object, approve, settle, find"),
};
