/** Pieces of expressions for how much of a mark goes. */

export const PER_CENT = "(?:%|per ?cent)";

/** The mark; the pile and the price have shares of their own. */
const MARK = "(?:(?:it|this|that|what (?:you|we) (?:can )?see)\\b|(?:the|your|this|that) (?:\\w+ )?(?:marks?|stain(?:s|ing)?|spots?|rings?|patch(?:es)?|browning|yellowing|damage|trouble|fading|colour|spill|tide ?line|discolou?ration)\\b)";
const WHATEVER = "(?: (?:may|might|could|can|will|would|should|ought|to|is|are|be|has|have|likely|perhaps|maybe|probably|possibly|well|also|then|still|hopefully))*";
const GOES = "(?:lifts?|go(?:es)?(?! (?:to|towards|into|on|through|under)\\b)|gone|comes? (?:away|off|out|up|back)(?! worse\\b)|(?:drops?|wash(?:es)?) out|fades?|disappears?|vanish(?:es)?|clears?|improves?|lightens?|recovers?|removed|reduced|lifted|taken (?:out|off|away)|put right|cleared|saved|better|fainter|lighter)\\b";
const LESSENS = "\\b(?:lighten|fade|improve|shrink|reduce|lessen|weaken)\\w*(?: \\w+){0,3}? (?:by|to) (?:(?:about|around|some|roughly|nearly|almost|up to|as much as|perhaps|maybe) )*";
const TAKES = "\\b(?:takes?|gets?|lifts?|removes?|brings?|shifts?|clears?|draws?|wash(?:es)?|saves?)(?: (?:out|off|away|back|up))?(?: (?:about|around|some|roughly|nearly|almost|up to|as much as|perhaps|maybe))* ";
const ALL_OF_IT = "(?:(?:all(?: of)?|(?:the )?(?:whole|entire)(?: of)?|(?:every|each) (?:last |single )*(?:trace|bit|scrap|speck|hint|shred) of) (?:it|this|that|(?:(?:the|your|that) )?(?:\\w+ )?(?:TROUBLE|patch(?:es)?)))";
const SURE_TO = "(?: (?:will|would|should|shall|ought to|is|are|be|to|going|expected|likely|have|has|then|also|soon|just|simply|usually))*";
/** All of the mark that is said or expected to go; what only may, is left open. In words of vocabulary.ts. */
export const allThatGoes = `(?<!\\b(?:nearly|almost|practically|virtually|before|until|after|once) )\\b${ALL_OF_IT}${SURE_TO} ${GOES}|\\b(?:expect|believe|think|trust)\\w* (?:it|this|that|(?:the|your) (?:\\w+ )?(?:TROUBLE|patch)) (?:to|will|should|would) (?:${GOES}(?: \\w+)? WHOLLY|WHOLLY ${GOES})`;
/** A share of the mark that goes, however surely it is said: "half of it may lift", "fades by a third", "takes out a quarter of it". `share`: an expression. */
export const shareThatGoes = (share: string): string =>
  `\\b${share}(?: (?:or so|or more))?(?: (?:of )?${MARK})?${WHATEVER} ${GOES}|${LESSENS}${share}|${TAKES}${share} (?:of )?${MARK}|\\bimprove\\w* of (?:\\w+ )?${share}`;
