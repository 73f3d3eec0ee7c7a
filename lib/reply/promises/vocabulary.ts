import { HOME } from "./vocabulary-home";
import { IMPLIED_WORDS } from "./vocabulary-implied";
import { PEOPLE } from "./vocabulary-people";
import { SURE_WORDS } from "./vocabulary-sure";
import { THINGS } from "./vocabulary-things";
import { list, nouns, verbs } from "./words";

/** What the words in capitals of a rule stand for; they may stand in one another. */
export const VOCABULARY: Readonly<Record<string, string>> = {
  ...THINGS, ...SURE_WORDS, ...HOME, ...PEOPLE, ...IMPLIED_WORDS,
  RUG: list(["(?:your|the|this|that) (?:rug|carpet|pile|runner)(?:'s pile)?", "(?:your|the|this) (?:rug's |whole )?(?:pile|fibre|yarn|outline|field)"]),
  FRINGE: list(["(?:your|the|its) (?:fringe|ground|foundation|back)"]),
  MARK: list(["(?:the|this|that|such|your|every|any)? ?(?:brown(?:ed)? |old |fresh |dark |wine |red |yellow )?(?:mark|stain|spot|ring|edge|smell|odour|browning|colour|spill|urine|patch|red|wine|tide line|ink)s?(?: marks?)?"]),
  NUMBER: list(["[0-9][0-9.,]*", "a hundred", "(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine|odd))?",
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "fifteen"]),
  AMOUNT: "(?:CURRENCY ?NUMBER|NUMBER(?: hundred| thousand)? ?(?:quid|pounds|euros|dollars|francs|grand)\\b)",
  /** Money back as a vow of ours; what a seller may owe is none. */
  MONEY_BACK: "(?<!\\b(?:entitled to|right to|owes? you|ask(?:ed|ing)? for|get|claim|want|due) (?:(?:some|all) of )?(?:your|the|their) )money[- ]back",
  /** What is done to a rug for money. */
  WORK: list([nouns("wash, clean, treatment, repair"), verbs("wash, clean, repair, refringe, reweave, restore, mend"), "(?:new|fresh) fringes?"]),
  CURRENCY: list(["€", "£", "\\$", "eur", "gbp", "usd", "chf"]),
  HARM: list(["fold marks?", "creases?", "moths?", "shrinkage", "fading", "halos?", "specks?", "crush marks?", "dents?", "bleeding", "dye bleed", "holes?", "repairs?", "dust", "dirt", "pet hair", "wax", "rust", "mould", "mildew"]),
  OUTCOME: list(["come (?:right )?(?:out|off|up|back)", "drop out", "fall out", "wash (?:right |straight |clean )?out", "bleach out", "brush out", "disappear", "vanish", "melt away", "fade away", "go away", "be gone", "100 ?% gone", "gone", "be nowhere", "immaculate", "flawless",
    "spotless", "pristine", "invisible", "unnoticeable", "undetectable", "unable to (?:find|see|tell)", "never know", "ever know", "look(?:ing)? brand[- ]new", "brand[- ]new", "good as new", "(?:mark|stain|fade|shrink) (?:it )?(?:ever )?again"]),
  LEADIN: "(?:please |kindly |feel free to |by all means |do |go ahead and |you are welcome to |all you (?:have|need) to do is |the best thing is to |what you want to do is |just |simply |then |now |first |next |also |and |or |so |gently |carefully |meanwhile |in the meantime |afterwards |tonight |today |you (?:can|could|may|should|might) (?:just |safely |simply |also )?|we (?:recommend|suggest|advise) (?:that )?(?:you |to )?|try to |make sure (?:to|you) |(?:were (?:it|that) mine |if (?:i were you|it were mine),? )?i would |what i would do is |my (?:advice|tip|suggestion)(?: is(?: to)?|:) |why not |(?:could|can|would|will) you |how about |if you like,? |perhaps |maybe |possibly )*",
};

const NAMES = new RegExp(`(?:${Object.keys(VOCABULARY).sort((a, b) => b.length - a.length).join("|")})(?![A-Z])`, "gu");
const filledIn = (pattern: string): string => {
  const filled = pattern.replace(NAMES, (word) => VOCABULARY[word] as string);
  return filled === pattern ? filled : filledIn(filled);
};

/**
 * A rule's pattern with its capitals filled in, made when it is first asked for. It meets a long text first: an engine that takes
 * an expression for rare (V8) otherwise writes byte code for its first text, which costs several times what machine code does.
 */
export function expression(pattern: string, flags = "u"): () => RegExp {
  let made: RegExp | null = null;
  return () => {
    if (made) return made;
    made = new RegExp(filledIn(pattern), flags);
    made.test(LONG_TEXT);
    return made;
  };
}
/** From a thousand characters on V8 compiles to machine code at once (from memory; `npm run bench -- promises` shows what it saves). */
const LONG_TEXT = " ".repeat(1024);
