import { excused } from "./excuses";
import type { Excuse } from "./rule";
import { expression } from "./vocabulary";

/** A sign in a sentence that it speaks surely, or with care. `shows`: its words, for whoever asks why; null where it is no word. */
export interface SurenessMark { readonly id: string; readonly shows: (plain: string) => string | null; readonly holds: (plain: string) => boolean }

const byWords = (id: string, pattern: string): SurenessMark => {
  const re = expression(pattern);
  return { id, shows: (plain) => re().exec(plain)?.[0].trim() ?? null, holds: (plain) => re().test(plain) };
};
const byExcuse = (excuse: Excuse): SurenessMark => ({ id: `is-${excuse}`, shows: () => null, holds: (plain) => isExcused(excuse, plain) });
const isExcused = (excuse: Excuse, plain: string) => excused(excuse, { sentence: plain, clause: plain, start: plain.length, end: plain.length });
const isBare = (plain: string) => !plain.includes("?") && !(["hedged", "negated", "undecided"] as const).some((e) => isExcused(e, plain));

/** The lists of vocabulary.ts that carry weight by themselves. */
const LISTS = ["MUST", "SURELY", "WHOLLY", "IDIOM", "OATH", "PERFECT", "FORMER", "RESTORE", "COMES", "TROUBLE", "RUGPART", "AGENT", "PRODUCT", "HEAT", "HARMACT", "PARTY", "MISDEED", "LEGAL", "DECIDES", "BABY", "FIBRE", "CAUSE", "ORIGIN", "NUMBER", "PROCESS", "SUCCESS", "FULL"];
/** Small words that tell how a sentence stands. */
const SMALL: Readonly<Record<string, string>> = {
  please: "\\b(?:please|kindly)\\b", would: "\\bwould\\b", should: "\\bshould\\b", may: "\\b(?:may|might|could)\\b", can: "\\bcan\\b",
  "we-will": "\\bwe (?:will|shall)\\b", "you-will": "\\byou (?:will|shall)\\b", "it-will": "\\b(?:it|they|that) (?:will|shall)\\b", if: "\\bif\\b|\\bshould you\\b", test: "\\b(?:test|inspect|examin)\\w*", photo: "\\b(?:photo|picture|pic|image|snap)\\w*",
  asks: "\\b(?:send|tell us|let us know|bring|measure)\\b", sorry: "\\b(?:sorry|afraid|regret|unfortunately|sadly)\\b", thanks: "\\bthanks?\\b", i: "\\bi\\b", we: "\\bwe\\b", you: "\\byou\\b", your: "\\byour\\b", our: "\\bour\\b",
  is: "\\b(?:is|are)\\b", was: "\\b(?:was|were)\\b", has: "\\b(?:has|have)\\b", not: "\\bnot\\b", no: "\\b(?:no|nothing|nobody|none)\\b", never: "\\bnever\\b", cannot: "\\bcannot\\b", only: "\\bonly\\b", just: "\\bjust\\b", all: "\\b(?:all|every|any)\\b", some: "\\bsome\\b|^(?:certain|most|many|few)\\b",
  because: "\\b(?:because|since|as)\\b", so: "\\bso\\b", but: "\\b(?:but|though|although|however)\\b", risk: "\\b(?:risk|danger|harm|damage)\\w*", money: "[€£$]|\\b(?:pounds|euros|quid|dollars)\\b", percent: "%|per ?cent", often: "\\b(?:often|usually|sometimes|rarely|seldom)\\b",
  than: "\\bthan\\b", before: "\\b(?:before|until|after|once|when)\\b", again: "\\bagain\\b", out: "\\b(?:out|off|away|up|back)\\b", good: "\\b(?:good|better|best|great|lovely|beautiful\\w*|fine|easy|easily|safe)\\b", bad: "\\b(?:worse|bad|wrong|weak|ruin\\w*|lose|fail\\w*)\\b",
  know: "\\b(?:know|see|tell|say)\\b", need: "\\bneed\\w*\\b", quoted: "\\bquoted\\b", asked: "\\?", whether: "\\b(?:whether|how|what|which|who)\\b", like: "\\blike\\b", "it-is": "\\b(?:it|that|this) is\\b", loud: "!",
  forbids: "(?:^|\\band |, )LEADIN(?:never|do not|avoid|let nobody|refrain)\\b", "safe-act": "(?:^|, |\\band )LEADIN(?:press|blot|keep|let|leave|lift|vacuum|turn|roll|wait|send|call|ring|write|tell|bring|add|answer|live|ask|have|show|photograph)\\b", "you-will-hear": "\\byou will (?:hear|receive|be asked|be told|find|need|have to)\\b",
  "nobody-can": "^(?:no|nobody|no one|none|nothing)\\b", "will-not": "\\b(?:will|does|do|is|are|can) not\\b", "only-after": "\\b(?:only (?:after|when|once|if)|before any|after a test|hidden corner|in writing|white cloth|dry cloth)\\b", "when-it": "\\bwhen it\\b|\\bthe (?:longer|more|sooner)\\b", "made-of": "\\b(?:made (?:from|of)|means|is called|are called|stands for|is sold as|are sold as)\\b",
  "a-warning": "\\b(?:dangerous|worse|weak|tricky|too|tempting|poison\\w*|spoil\\w*|fumes|line|ring|edge|gloves|ventilated|isolated)\\b|\\bcan (?:alter|change|leave|bleed|return|go|weaken|hide|come back|make you)\\b",
  "of-any": "^(?!(?:the|this|that|these|those|your|yours|our|ours|we|i|you|it|its|they|there|he|she|my|all|every|any|no|not|nothing|nobody|one|what|here|just|so|of)\\b)(?!.*\\b(?:you|yours?|us|our)\\b)(?:an? )?[a-z-]+(?: [a-z-]+){0,3}? (?:is|are|can|leaves?|helps?|stays?|drops?|comes?|goes|go|gets?|takes?|sets?|hides?|bleach\\w*)\\b",
  practice: "^we (?:wash|remove|measure|dry|store|test|photograph|note|keep|use|work|write|ask|answer|open|file|log|like|want)\\b(?! (?:every|all|any|what|it|them)\\b)", "i-did": "^i (?:have (?:put|read|looked|written|shown|passed|noted|asked)|like|am|was|read|looked|put|passed|do have)\\b",
  "in-general": "^(?!.*\\b(?:you|your|yours|we|us|our|i|my|me)\\b)(?:(?:most|many|some|certain|few|old|household|damage in the) )?(?:\\w+ )?(?:FIBRE|RUGPART|TROUBLE|AGENT|CAUSE|damage)\\b",
  "bad-news": "\\b(?:chancy|brittle|no longer|gone under|worr(?:y|ies) (?:me|us)|not always|too (?:weak|late|far)|hides?|permanent(?:ly)?|cannot be (?:washed|undone)|more (?:\\w+ )?than (?:they|it) takes?|happens?|of no use|for good or ill)\\b",
  "of-the-house": "\\b(?:collect|collection|deliver|driver|van|appointment|inspection|written|note|report|firm equipped|conservator|valuer|pest control|insured|dry store|at no charge|free of charge)\\b",
};

/** What hints rather than says, by what it does. Elicited, and weighed as the rest: honest people joke, too. */
const HINTS: Readonly<Record<string, string>> = {
  "boasts-of-years": "\\b(?:(?:NUMBER|many|all my|too many)(?:[- ]odd)? (?:\\w+ )?(?:years|winters|seasons|decades)\\b.*\\b(?:at|in|of|with|on|i|we)\\b|since (?:[0-9]{4}|the (?:war|seventies|eighties|nineties)|i was)|born (?:in|on|under|with)|(?:at|on) (?:the|this|my) (?:bench|loom|job|game|trade)\\b|in (?:the|this|my) (?:trade|game|business))",
  "haven-t-lost": "\\b(?:(?:have|has|had) (?:not|never|yet) (?:\\w+ )?(?:been (?:wrong|mistaken|beaten|caught)|lost|missed|failed|beaten|met|seen|had|known|found|let|sent|cried)|yet to (?:\\w+ )?(?:lose|see|meet|find|fail|be)|never (?:yet )?(?:lost|failed|missed|beaten|hurt|killed|harmed|cost|did|saw|met|been|gone|known))",
  "of-another-rug": "\\b(?:worse (?:than|before|ones?|cases?)|(?:the|a|one) (?:man|woman|lady|gentleman|chap|couple|client|vicar|neighbour|priest|one) (?:from|in|at|down|last|who|with)|(?:his|hers|theirs|ours|the last one|the one)\\b.*\\byours|the same (?:about|of|with)|last (?:week|month|year|spring|summer|autumn|winter)|same (?:story|again)|sister (?:to|of)|twin)",
  "asks-no-one": "^(?:now |and |but |so |well |ask yourself |tell me |i ask you )*(?:,? ?)(?:who (?:ever|else|would|could|needs|said)|what (?:else|do you suppose|on earth|sort|kind|leaves|turns|makes)|since when|when (?:did|has|was)|is (?:rain|the pope|water|snow|a)|(?:does|would|did|can|could|has|is) (?:a|an|any|one|anyone|somebody|the) )[^?]*\\?",
  "names-nobody": "\\b(?:(?:name|naming|mention\\w*) (?:no|nobody|no one)|no names|we (?:both|all) know|you and i (?:both )?know|know (?:full |very |perfectly )?well|did not hear it from|funny how|strange how|odd how|catch my (?:meaning|drift)|between (?:you and me|ourselves|us)|should not be saying|far be it from|would not tell you to|official answer|draw your own|say no more|i say (?:only|nothing)|if you (?:take|see) my|let me say only|say it quietly|strictly between|wink\\w*|nudge|whisper\\w*)",
  "buries": "\\b(?:coffin|funeral|hymn|hymns|undertaker|grave|graveyard|bury|buried|burial|vet|last rites|wake|mourn\\w*|wreath|priest|memory of|its memory|rest in|rip|obituary|skip|tip|dustbin|bonfire|bin day|farewell|eulogy|sing over|corpse|ashes|hospice|mercy|kindest|lived its|had its day|past saving)",
  "of-animals": "\\b(?:sheep|goats?|ewes?|tups?|lambs?|worms?|cocoons?|silkworms?|cats?|dogs?|puppy|mouse|mice|wings|whiskers|paws?|shepherd|flock|moths?)",
  "of-the-kitchen": "\\b(?:porridge|soup|pudding|gravy|tea towel|kitchen|cupboard|elbow grease|capful|splash|spoon\\w*|dab|glug|bucket|brown paper|hairdryer|iron|peroxide|fridge|larder)",
  "certain-by-oath": "\\b(?:i am (?:the|a) (?:duke|queen|king|pope|dutchman|dutchwoman|bishop|emperor)|set (?:your|a) (?:clock|watch)|without (?:blinking|looking|clearing|turning|breaking)|give or take|my (?:old )?(?:gaffer|master|boss|father|grandfather|granny|mother|uncle|teacher)|in my country|(?:used to|would|always) say|eyes (?:closed|shut)|blindfold\\w*|in my sleep|far out|before (?:breakfast|lunch|tea))",
  "takes-nothing-back": "\\b(?:might be (?:i am )?(?:mistaken|wrong)|may be wrong|could be wrong|i would not (?:say|tell|like)|cannot promise|must not promise|not (?:to|one to) (?:promise|boast|brag|say))\\b.*\\b(?:but|though|and yet|only|still|then again)\\b",
  "sets-at-ease": "\\b(?:worr(?:y|ies|ying)|fret\\w*|panic|sleep (?:well|easy|soundly)|breathe|rest (?:easy|assured|your)|at (?:rest|ease)|relax)\\b",
  "beside-others": "\\b(?:compared|beside|next to|than (?:yours|this|that|mine)|(?:ten|many|others|rugs|ones?) like (?:it|yours|this)|the one before|twice (?:this|that|as))\\b",
  "people-pleased": "\\b(?:glad|thank(?:ed|s)? us|cards?|lost for words|speechless|smil(?:e|ed|ing)|proud|envy|admir\\w+|guests?|christmas)\\b",
  "in-its-place-again": "\\b(?:back where it|put (?:the|your) \\w+ back|(?:which|the) room|where to (?:lay|put)|underfoot|your (?:floor|hall)|home again)\\b",
  "says-little": "\\b(?:says? (?:little|nothing)|tells? (?:us |you )?(?:little|nothing)|cannot (?:yet )?(?:say|tell|know)|could not (?:say|tell)|no surer|as yet|unknown|until we know|so little)\\b",
  "denies-twice": "\\bnot (?:\\w+ly |exactly |quite )?(?:un(?!til|less|der)\\w+|without|beyond|bad|the worst|the first|too (?:bad|shabby))\\b",
};

export const SURENESS_MARKS: readonly SurenessMark[] = [
  ...LISTS.map((name) => byWords(name, `\\b${name}\\b`)), ...Object.entries({ ...SMALL, ...HINTS }).map(([id, pattern]) => byWords(id, pattern)),
  ...(["negated", "hedged", "undecided", "reported", "ranged", "ours", "warned"] as const).map(byExcuse),
  { id: "nothing-holds-it-back", shows: () => null, holds: isBare },
];
