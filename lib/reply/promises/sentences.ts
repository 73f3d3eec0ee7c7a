/** Sentences and clauses of a letter, for the check of promises. */
import { asSaid } from "./answered";

/** Full stops that end no sentence: "e.g.", "Mr.", "No. 5", figures. */
const ABBREVIATED = /\b(?:e\.g|i\.e|mr|mrs|ms|dr|st|no|approx|ca|etc)\.$/iu;

/** A quotation begun and not closed: its full stops end no sentence of ours. */
const QUOTING = /“[^”]*$/u;

/** What a line of a list begins with: no part of its sentence, so that another sentence can take its place in the list. */
const LIST_MARK = /^\s*(?:[–—•*-]|\d{1,2}\))\s+/u;

/** The sentences as they stand, in order, without the mark of a list; a line break ends one too. A quotation stays whole where it is closed. */
export function sentencesOf(text: string): string[] {
  return text.split(/\n+/u).map((line) => line.replace(LIST_MARK, "")).flatMap((line) => {
    const closes = line.lastIndexOf("”");
    const parts = line.split(/(?<=[.!?…][”"’')]?)\s+(?=[\p{Lu}\p{N}“"‘'(])/u);
    const joined: string[] = [];
    let from = 0;
    for (const part of parts) {
      const last = joined[joined.length - 1];
      from = line.indexOf(part, from);
      if (last !== undefined && (ABBREVIATED.test(last) || (QUOTING.test(last) && from <= closes))) joined[joined.length - 1] = `${last} ${part}`;
      else joined.push(part);
    }
    return joined.map((s) => s.trim()).filter((s) => s !== "");
  });
}

/** What somebody else's words are replaced by: they are not ours to answer for. */
const QUOTED = " quoted ";
/** Between single quotation marks that stand at the edges of words; an apostrophe within a word closes nothing. */
const IN_SINGLE_QUOTES = /(?<=^|[\s([])'(?=\S)(?:[^']|(?<=\p{L})'(?=\p{L}))*(?<=\S)'(?![\p{L}\p{N}])/gu;

/** Short forms written out, so that a rule knows one form of each; "let's" and possessives stay. */
const WRITTEN_OUT: readonly (readonly [RegExp, string])[] = [
  // Scots and northern forms
  [/\bcan(?:nae|na)\b/gu, "cannot"], [/\b(?:wadnae|wadna)\b/gu, "would not"], [/\b(?:wi?ll?|win)(?:nae|na)\b/gu, "will not"], [/\b(?:din|do)(?:nae|na)\b/gu, "do not"], [/\bshan(?:nae|na)\b/gu, "shall not"], [/\b(is|are|was|were|has|have|had|does|did|could|would|should|might|must)(?:nae|na)\b/gu, "$1 not"],
  [/\bain'?t (?=(?:an?|any|no|one|nothing|the)\b)/gu, "is not "], [/\bain'?t\b/gu, "is not"], [/\b(could|would|should|are|was|were|has|have|had|did|must)nt\b/gu, "$1 not"], [/\b(could|would|should|might|must)(n't| not)? of\b/gu, "$1$2 have"], [/(?<=\b(?:i'm|am|'ll|will|could|would|is|are) )no (?=(?:\w+ing|promise|come|be|go|swear|say|run|leave|shrink|bleed|fade|guarantee|return|have|do|make|tell|bet)\b(?! (?:here|there)))/gu, "not "],
  [/\bnae\b/gu, "no"], [/\bye\b/gu, "you"], [/\btae\b/gu, "to"], [/\bfrae\b/gu, "from"], [/\bwi'(?=\s)/gu, "with"], [/\bthon\b/gu, "that"], [/\bnowt\b/gu, "nothing"], [/\bowt\b/gu, "anything"], [/\bsummat\b/gu, "something"], [/\bthem (?=(?:colou?rs|stains|marks|reds|blues|moths|dyes|holes)\b)/gu, "the "],
  [/\bcan't\b/gu, "cannot"], [/\bwon't\b/gu, "will not"], [/\bshan't\b/gu, "shall not"], [/(?<=[a-z])n't\b/gu, " not"], [/'ll\b/gu, " will"], [/'ve\b/gu, " have"], [/\bi'm\b/gu, "i am"], [/'re\b/gu, " are"],
  [/\b(i|we|you|he|she|they|it|that|who)'d\b/gu, "$1 would"], [/\b(it|that|this|there|what|he|she|who|where|here|everything|nothing|nobody|everybody|everyone)'s\b/gu, "$1 is"], [/\bgonna\b/gu, "going to"], [/\b(?:is|are|am) not going to\b/gu, "will not"], [/\bgotta\b/gu, "have to"], [/\bdont\b/gu, "do not"], [/\bdoesnt\b/gu, "does not"], [/\bdidnt\b/gu, "did not"], [/\bcant\b/gu, "cannot"], [/\bwont\b/gu, "will not"],
  [/\bisnt\b/gu, "is not"], [/\bthats\b/gu, "that is"], [/\btheres\b/gu, "there is"], [/\bim\b/gu, "i am"], [/\bits (?=(?:a|an|the|only|just|not|all|definitely|probably|going)\b)/gu, "it is "], [/\b(?:youre|ur)\b/gu, "you are"], [/\btheyre\b/gu, "they are"],
  [/(?<=[a-z])'s (?=(?:just|only|not|gone|dead|out|fine|going|a|an|been|all|actually|always|never|permanent|tricky|safe|easy|no|back|coming|definitely|probably|nothing|too|so|really|pretty|ruined|finished|sorted|done|final|paying|liable|certain|nailed|clearly|sound|perfect|simply)\b)/gu, " is "],
  [/\bfelt[- ]?tips?(?: pens?)?\b/gu, "marker pen"],
  [/\b(?:deffo|defo|def|defs|definately|100%|hundred percent)\b(?! (?:wool|silk|cotton|viscose|success|satisf\w+|of|chance|pure|rate|natural|gone|recyc\w+))/gu, "definitely"],
];
/** What is asked at the end of a sentence that says: "it works, doesn't it?". */
const TAG = /(?<!^(?:and |but |so )?(?:which|what|whose|how|when|where)\b.*),? (?:(?:is|are|was|were|do|does|did|has|have|will|would|can|could|should) ?(?:not )?(?:it|they|you|we|he|she|i|there|that)(?: (?:amazing|great|lovely|wonderful|marvellous|good))?|i ask you|right|eh|no)\?$/u;
/** Phrases that look like denials and are none: certainty, and comfort. */
const NO_DENIALS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:there is )?(?:no|not a|not the slightest|not any|without (?:a |any |the slightest )?)\s*(?:doubts?|question)(?: that| about it| whatever| whatsoever| at all)?\b(?! of)|\bno other explanation\b|\bno two ways about it\b/gu, "definitely"],
  [/\b(?:no|nothing|none)((?: \w+){0,3}) (?:is|are) without\b/gu, "all$1 have"],
  [/\b(?:no|nothing|none|neither|not one)((?: \w+){0,4}) (?:is|are) (?:(?:ever|quite|wholly|entirely|completely|fully|altogether) )*(?:without|free (?:of|from)) (?=(?:(?:all|any|its|some) )?(?:risks?|danger)\b)/gu, "all$1 have "],
  [/\bthere is not? (\w+) without (?=(?:(?:all|any|its|some) )?(?:risks?|danger)\b)/gu, "every $1 has "], [/\b(?:is|are) never (?:(?:quite|wholly|entirely|completely|fully|altogether) )*(?:without|free (?:of|from)) (?=(?:(?:all|any|its|some) )?(?:risks?|danger)\b)/gu, "always has "],
  [/\bwhy not (\w[^?]*)\?/gu, "$1."], [/\bwhy not (?=\w)/gu, ""],
  [/\bwhatever (?!the internet)(?:\w+ ){1,4}?(?:said|says?|told you|tells you|thinks?|thought|call(?:s|ed)? it)\b/gu, ""],
  [/\b(?:please )?(?:do not|(?<!\byou (?:can|may|could|might)(?: \w+)? )stop|never|no need to) (?:you )?(?:worry|worrying|fret|fear|panic|stress)(?: at all| about (?:it|that|a thing))?\b|\bno worries\b|\bno matter\b(?! (?:what|how|who|which|where))|\bwith no (?:bother|trouble|fuss)\b|\bwithout (?:bother|trouble|fuss|delay)\b/gu, ""],
];

/** Lower case, straight apostrophes, one space, quotations taken out, short forms written out, false denials made plain, what a question was answered with said outright. */
export function plainOf(sentence: string): string {
  const flat = sentence.replace(/“[^”]*”|"[^"]*"|«[^»]*»|„[^“”]*[“”]/gu, QUOTED).replace(/[’‘]/gu, "'").replace(IN_SINGLE_QUOTES, QUOTED).toLowerCase();
  return asSaid([...WRITTEN_OUT, ...NO_DENIALS].reduce((text, [what, by]) => text.replace(what, by), flat).replace(/\s+/gu, " ").trim().replace(TAG, "."));
}

/** Where a new clause begins, beside a full stop: a semicolon, a dash, a conjunction, a comma before a new subject. */
const NEW_CLAUSE = new RegExp([
  ";", ":\\s", "\\s[–—-]\\s", ",? then (?=(?:it|we|you|they|that|the|your)\\b)", ",?\\s\\b(?:but|though|although|however|whereas|yet(?= (?:it|we|they|the|you|i)\\b))\\b",
  ",?\\s(?:because|since|so(?: that)?|which is why|after which)\\s(?=(?:it|we|you|they|there|this|that|the|your|he|she|i|no|nothing|nobody|any|some|all)\\b)",
  ",\\s(?=so\\s(?!that|much|many|far|long|please|do|keep|leave|wait|tell|send))", "(?<=^(?:if you|instead of|rather than|in place of) [^,]{2,80}),\\s",
  ",\\s(?=(?:and |so |then )?(?:it|we(?! (?:would (?:say|think|guess)|(?:think|believe|suspect)(?=[.!]?$))\\b)|you(?! (?:told|wrote|said)\\b)|they|there|this|the law|that is|nothing|nobody|the pile|the rug|your|i (?:am|will|can|shall|would)|(?:the|these|those|every|its) (?:\\w+ ){1,3}(?:will|is|are|was|were|can))\\b)",
].join("|"), "u");

/** Questions that say or advise: "who needs a test?", "why not rinse it?", "could you just wash it first?". */
const SAYS_BY_ASKING = /^(?:(?:and|but|so) )?(?:who (?:needs|would|could|wants)|why (?:(?:would|should) (?:you|anyone|anybody|we) )?(?:not|wait|bother|worry|pay|risk|waste|spend|want|trouble)|(?:could|can|would|will) you (?:just|please|quickly|kindly|mind|perhaps|give|rinse|wash|run)|how (?:could|about)|have you (?:tried|thought of)|would we|do we ever|did we ever|is there (?:a|any) \w+ (?:we|that we) (?:cannot|have not)|what (?:could|can) |has (?:an?|any|one) \w+(?: \w+)? ever |(?:would|could|can|did|does) an? [^?]*\b(?:ever|end of the world|hurt)\b)/u;

/** Words that begin a clause in short forms: "gone by Saturday" says that it is. */
const SHORT_FORM = /^(?=(?:(?:perfectly|completely|totally|quite|absolutely|definitely|easily|well) )?(?:worth|safe|gone|colou?rfast|fast|harmless|guaranteed|ruined|finished|salvageable|fixable|good for|good as|beyond repair|fit for)\b)(?!gone from|finished with|worth a (?:look|try))/u;

/** Clauses: what a denial or a hedge reaches. What is asked is not said, so questions are left out. */
export function clausesOf(plain: string): string[] {
  return plain
    .split(/(?<=[a-z0-9)%'][.!?…]+)(?<!\b(?:mr|mrs|ms|dr|st|no|approx|e\.g|i\.e|a\.m|p\.m)\.?)\s+(?=[a-z(])/u)
    .filter((part) => !part.endsWith("?") || SAYS_BY_ASKING.test(part))
    .flatMap((part) => part.split(NEW_CLAUSE))
    .map((c) => c.trim().replace(/^[,.\s]+|[\s.!?…]+$/gu, ""))
    .filter((c) => c !== "")
    .map((c) => c.replace(SHORT_FORM, "it is "));
}
