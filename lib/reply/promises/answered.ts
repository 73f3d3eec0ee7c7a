/** Questions that a sentence repeats and answers in a word, so that it says what was asked: “you asked if it can be saved: yes” says that it can be saved. */

const ASKS = "(?:(?:and|so|as|then),? )?(?:you (?:also |then )?(?:ask(?:ed)?|wonder(?:ed)?|were (?:asking|wondering)|want(?:ed)? to know|wish(?:ed)? to know)(?: us| me)?|your (?:\\w+ )?question(?: was| is|,)?|to your (?:\\w+ )?question(?:,| of| as to)?|as (?:for|to)|to|on|the answer to(?: your question)?)";
const AUXILIARY = "can|could|will|would|shall|should|may|is|are|was|were|do|does|did|has|have";
const REPEATED = `(?:it|they|we|i|you|that|this|she|he) (?:${AUXILIARY})`;
const SURE = "(?:certainly|definitely|absolutely|of course|indeed|naturally|very much so|always|every time)";
const LEADS = "(?:and |so |then |well,? |oh,? |happily,? |luckily,? |sadly,? |(?:the (?:short |simple |plain )?answer|it) is (?:an? )?(?:simple |plain |clear |short )?)*";
const YES = `${LEADS}(?:(?:yes|yep|aye|${SURE})(?:,? ${REPEATED})?(?:,? ${SURE})?|${REPEATED}(?:,? ${SURE})?)`;
const NO = `${LEADS}(?:no|nope|never|not at all|${SURE} not|(?:no,? )?(?:it|they|we|you|that|this) (?:cannot|(?:${AUXILIARY}) not))`;
/** What follows an answer and takes nothing of it back. */
const MORE = "(?<more>,? (?:and|because|since) .+?)?";
const PARTED = ",?(?: you (?:ask(?:ed)?|wonder(?:ed)?))? ?[?:;,–—-]+ ?";

/** `says`: what was asked, as if it were said. `aux` and `who`: of a question in its own order. */
const FORMS: readonly string[] = [
  `^${ASKS} ?(?:if|whether) (?<says>.+?)${PARTED}`, `^(?:and )?whether (?<says>.+?)${PARTED}`, `^(?:the|my|our) answer to (?:your question )?(?:if|whether) (?<says>.+?) is (?:an? )?(?:simple |plain |clear |short )?`,
  `^(?:(?:and|so|you ask(?:ed)?|your question)[,:]? )?(?<aux>${AUXILIARY}) (?<who>it|they|we|i|you|this|that|(?:the|your|my|our|its|this|that) \\w+) (?<says>.+?)${PARTED}`,
];
const ANSWERED = ([["yes", YES], ["no", NO]] as const).flatMap(([answer, is]) => FORMS.map((form) => ({ answer, re: new RegExp(`${form}${is}${MORE}[.!]*$`, "u") })));
const FIRST_VERB = new RegExp(`\\b(?:${AUXILIARY})\\b`, "u");

/** A sentence in plain words as what it says; one that answers no question of its own, or not outright, stays as it is. */
export function asSaid(plain: string): string {
  for (const { answer, re } of ANSWERED) {
    const { says, aux, who, more = "" } = re.exec(plain)?.groups ?? {};
    if (says === undefined) continue;
    const said = aux ? `${who} ${aux} ${says}` : says;
    return `${answer === "yes" ? said : said.replace(FIRST_VERB, "$& not").replace(/\bcan not\b/u, "cannot")}${more}.`;
  }
  return plain;
}
