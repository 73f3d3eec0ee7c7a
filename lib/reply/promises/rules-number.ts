import { meant } from "./meant";
import { p, type Rule } from "./rule";
import { PER_CENT, shareThatGoes } from "./shares";

const NO_SIDE_COST = "(?<=^(?!.*\\b(?:inspection|tests?|testing|visit|(?:collect|deliver)\\w*|laborator\\w+|report|estimate|a square|per square|an hour|paid|last (?:time|year|week))\\b).*)";

/** A number of years with both its ends is a range, whatever is said around it. */
const NO_TWO_ENDS = "(?<=^(?!.*\\bNUMBER(?: years?| months?)? ?(?:to|and|or|–|-) ?NUMBER (?:\\w+ )?years?\\b).*)";

const SHARE = `(?:half|(?:an?|one|two|three|four|nine|seven|eight) (?:tenths?|quarters?|thirds?|fifths?)|NUMBER ?${PER_CENT})`;
/** No money at all: nobody works for it, and no range begins with a price that is one. */
const NOUGHT = "(?:CURRENCY ?0(?:[.,]0+)?|(?:0|zero|nought|nil) (?:quid|pounds|euros|dollars|francs))(?![0-9.,]*[0-9])(?! ?(?:–|-|to|and|or)\\b)";

/** One figure for years, money or per cent. */
export const NUMBER: Rule = {
  id: "number", what: "gives one number where only a range is known",
  why: "An improvement, a life left, a price or a value is a range until the rug was inspected.",
  advise: "Give the range, as in “between … and …”, with what it hangs on, or only:",
  instead: "We can say more about figures once it has been inspected.",
  excuses: ["negated", "hedged", "ranged", "reported", "undecided", "disowned"],
  patterns: [
    p("\\bgood for (?:life|years|decades|ever|a lifetime|generations|another|NUMBER|ages)\\b", { also: ["softened"], except: ["ranged"] }),
    p("\\b(?:long|good|many|full|plenty of) (?:\\w+ )?(?:life|years) (?:ahead|left|in it|to come|still)\\b", { also: ["softened"] }),
    p(`\\b(?:another|a further|further|extra|additional|good|easily|least|serve\\w*|last\\w*|left|see (?:you|it) (?:through|right)|stay\\w*|expect)\\b${NO_TWO_ENDS}.{0,30}\\b(?:NUMBER(?:[- ]odd)?|several|many|a few|a couple of|a good few) (?:\\w+ )?(?:years?|decades?|generations?|lifetimes?)\\b`, { except: ["ranged"], also: ["softened"] }),
    p("\\b(?:NUMBER|several|many|decades?|generations?)(?: more| further| good)? (?:years?|decades?|generations?)(?: \\w+){0,3} (?:in|out of|off|from|of (?:use|wear|life|service|pleasure|enjoyment)|ahead) ?(?:it|this|that|her|RUG|of it)?\\b", { also: ["softened"] }),
    p("\\b(?:a lifetime|lifetimes?|generations|for generations|for decades|outlive|outlast|outlasts|see us all out|see you out)\\b", { also: ["softened"] }),
    p("(?:CURRENCY ?NUMBER|\\bNUMBER(?: hundred| thousand)? ?(?:quid|pounds|euros|dollars|francs|grand|thousand|k\\b))(?=.*\\b(?:worth|value|valu\\w+|all in|total|fixed|final|flat|exactly|and not|not a penny|no more|whatever|will be|insure|fetch\\w*|sell|claim|penny)\\b)", { also: ["softened"], except: ["negated"] }),
    p("\\b(?:worth|value[sd]?|valuation|price|charge|fee|cost|bill|total|figure|quote)\\b(?:(?!\\b(?:inspection|test|collection|delivery|report|estimate)\\b)[^.])*(?:is|are|of|at|be|was|,) (?:exactly |only |just |SURELY |fixed at |set at |still |easily |at least |well over |no more than )*(?:CURRENCY ?NUMBER|NUMBER(?: hundred| thousand)? ?(?:quid|pounds|euros|dollars|francs|grand|thousand))(?! ?(?:–|-|to|and|or) )", { also: ["softened"] }),
    p("\\b(?:worth|fetch\\w*|insure it for) (?:easily |at least |SURELY )*(?:a (?:grand|fortune|small fortune|bomb|packet|mint)|thousands|hundreds)\\b", { also: ["softened"] }),
    p("\\b(?:worth|valued at) (?:every bit of |at least |easily |a good |well over |SURELY )*(?:CURRENCY ?)?NUMBER(?: (?:hundred|thousand|grand|million|quid))?", { except: ["ranged"], also: ["softened"] }),
    p("\\b(?:price|charge|fee|quote|figure|cost|sum|bill|total)\\b.*\\b(?:fixed|final|firm|guaranteed|whatever (?:we|happens)|will not (?:change|be revised|rise|go up)|under any|no matter what|to the penny|locked)\\b", { except: ["negated", "ranged"] }),
    p("\\b(?:doubles?|doubling|trebles?|triples?|quadruples?)\\b (?:the|its|what|your|in)\\b", { also: ["softened"] }),
    p("\\b(?:will|shall|can|going to|is bound to) (?:\\w+ )?(?:add|increase|double|treble|raise|boost|improve|enhance)\\b.{0,30}\\b(?:value|price|worth|resale)\\b|\\b(?:worth|value) (?:\\w+ )?(?:twice|double|more than (?:ever|you|before))\\b|\\b(?:good|safe|sound) investment\\b|\\bgain\\w*\\b.{0,25}\\bin value\\b", { also: ["softened"] }),
    // One amount for the work itself; what looking, fetching or keeping costs is ours to say
    p(`\\b(?=(?:WORK|pay|charge|ask|costs?|price|do it)\\b)${NO_SIDE_COST}(?:WORK\\b(?: \\w+){0,4}? (?:is|are|costs?|comes? to|will be|would be|you pay|(?:we|i) (?:ask|charge|want))(?: \\w+){0,2}? AMOUNT|(?:pay|charge|ask|costs?|price) (?:\\w+ ){0,3}?AMOUNT (?:for|to) (?:\\w+ ){0,3}?WORK\\b|do it for AMOUNT)`, { also: ["softened"], except: ["hedged"], despiteCare: true }),
    p("CURRENCY ?NUMBER\\b.*\\b(?:not|never) (?:\\w+ ){0,2}(?:ask|charge|pay|bill|be asked|be charged)\\b.*\\b(?:more|extra|a penny|else)\\b", { except: ["negated", "ranged"] }),
    p(`\\b(?:price|costs?|charge|fee|bill|total|quote|ask|WORK)\\b${NO_SIDE_COST}(?: \\w+){0,6}? (?:${NOUGHT}|(?:is|of|to|at) (?:0|zero|nought|nil)$)`, { except: ["hedged"], despiteCare: true }),
    p(shareThatGoes(SHARE), { also: ["softened"] }),
    // A lid on the price
    p(`\\b(?:costs?|price|bill|fee|charge|total|we|you|it|WORK)${NO_SIDE_COST} (?:(?:will|shall|would|can|could|is going to) (?:not|never)|cannot|never) (?:\\w+ ){0,4}?(?:more than|above|over|beyond|exceed|higher than) AMOUNT(?!.*\\b(?:without|unless|until|before)\\b)`, { except: ["negated", "ranged"], despiteCare: true }),
    p(`\\b(?:will|shall)${NO_SIDE_COST} (?:\\w+ ){0,2}?(?:costs?|pay|come to|be) (?:you )?no more than AMOUNT|\\btotal (?:stays?|remains?) (?:\\w+ )?(?:under|below) AMOUNT`, { except: ["negated", "ranged"] }),
    p("AMOUNT (?:at (?:the )?very most|(?:is|would be|will be) the most (?:that )?(?:you|it) (?:will|would))", { except: ["ranged"] }),
    // Said in other words
    p("\\bNUMBER ?(%|per ?cent)( chance)?\\b|\\b(chance|improv\\w+|better|back|gone|fade|comes? out)\\b.*\\bNUMBER ?(%|per ?cent)"),
    p("\\b(half|(one|two|three|four|nine|seven|eight) (tenths?|quarters?|thirds?|fifths?))\\b.*\\b(gone|better|(?<!\\b(?:the|its|be) )back|out|less)\\b|\\b(fade|improve|lighten|recover|go)\\w* by (a |NUMBER )?(half|thirds?|quarters?|tenths?|fifths?)"),
    p("\\b(last|lasts|live|lives|good for|left|remaining|enjoy it|has|have)\\b.*\\b(NUMBER( more)? years?|decades?|lifetime|rest of your life)\\b", { vague: true }),
    p("\\b(extend|extended|prolong|prolonged|add|adds|added|buys?|give|gives)\\b.*\\bNUMBER (more |extra |good )?years?\\b", { except: ["ranged"] }),
    p("^(?!.*\\b(inspection|tests?|testing|visit|(?:collect|deliver)\\w*|postage|laborator\\w+|report|estimate)\\b).*\\bcosts? (you )?(CURRENCY ?)?NUMBER"),
    ...meant("number"),
  ],
};
