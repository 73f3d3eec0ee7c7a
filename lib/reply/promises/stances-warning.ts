import type { Stance } from "./stance";
import { expression } from "./vocabulary";

const GAS = "(?:gas(?:es)?|fumes?|vapours?|chlorine|chloramines?)";
const GIVES_OFF = "(?:(?:gives?|giving|given) off|mak(?:es?|ing)|releas(?:es?|ing)|sets? (?:\\w+ )?free|forms?|produc(?:es?|ing)|turns? into)";
const DANGER = "(?:danger\\w*|harmful|poison\\w*|toxic|deadly|kills?(?! (?:the |any |all )?(?:moths?|moulds?|germs?|mites?|eggs?|beetles?|smells?)\\b)|hurts?|burns?|lungs|heavier than air)";
const ROOM = "(?:the|that|this) (?:room|house|building)";
const LEAVE = `(?:leave ${ROOM}|(?:out of|back in(?:to)?|go in(?:to)?) ${ROOM}|go outside|into (?:the )?fresh air)`;
const KEEP_OUT = "(?:(?:keep|stay)(?: [a-z]+){0,3} out|(?:go|get|everybody|everyone) out|go (?:back )?in)";
const RING = "(?:ring|call|phone|dial) (?:999|112|911|an ambulance|for (?:help|an ambulance)|the emergency \\w+|a doctor)";
const AIR = "(?:air (?:the|that|this) room|open(?:ing)? (?:the|a|all the|every) windows?)";

/** Words that deny an act right after them: "do not try to rinse it". */
const NOT_DONE = "(?<!\\b(?:do not|never|nobody should|must not|before you)(?: (?:try|attempt|want|be tempted) to)? )";
/** What one does with a product, where it is no noun ("the mix"). */
const USE = `${NOT_DONE}(?<!\\b(?:the|this|that|a|any|such|its|rotating) )\\b(?:uses?|using|try|put|pour|dab|apply|add|sprinkle|spray|mix(?:es)?|combine|work|rub|scrub|brush|sponge|wipe|soak|rinse|wash|dip|squirt|splash|spread|treat|clean(?! air)|let (?:it|them)|leave (?:it|them) (?:on|in|over)|carry on|keep going)\\b`;
/** That it does good, or no harm, or is only a little. */
const MADE_LIGHT = "\\b(?:works?|wonders|lifts?|brings?|whitens?|shifts?|cleans|loosens?|gets? (?:it|the)|takes? (?:it|them|the) (?:\\w+ ){0,2}(?:out|off|away|up)|fine|(?<!not )safe|harmless|mild|gentle|(?:can|may|could) (?:\\w+ )?stay|only|just|little|bit|drop|whiff|amounts?|while (?:it|they|you) (?:work|do)|but|though|however|best|strong(?:est|er)?|nothing to|no (?:need|harm|danger|risk|reason|cause)|need not|(?:not|never|nobody|nothing|hardly|scarcely|no|cannot) (?:\\w+ ){0,4}?(?:harm\\w*|hurt\\w*|poison\\w*|gas|fumes|danger\\w*|needs?|kill\\w*|leave|ring|worry))\\b";
const CLAIMS = "\\b(?:PERFECT|FORMER|IDIOM|OATH|SURELY|as new|for good|TROUBLE (?:will|is going to))\\b";
const ADVISES_OR_CLAIMS = expression(`${USE}|${MADE_LIGHT}|${CLAIMS}`);

/** A machine, which is nobody, and what it does to a pile. */
const MACHINE = "(?:(?:(?:steam|vacuum|pressure|jet|carpet) (?:cleaner|washer|cleaning machine)|(?:robot )?(?:hoover|vacuum)|steamer|beater|machine)s?|(?:rotating )?brush(?:es)?(?: (?:of|on) (?:the|an?|your) (?:vacuum cleaner|hoover|machine))?)";
const TEARS = "(?:ruin|tear|damage|spoil|break|destroy|harm|soak|flood|felt|shrink|loosen|pull|rip|wreck|fray|crush|wet|strip|weaken|drag|suck|catch|chew|swallow|wind)(?:e?s)?\\b";

/** Warnings that a workshop has to be able to give, and that no rule holds back. Data, elicited, as those of `stances.ts`. */
export const WARNED: readonly Stance[] = [
  { // A warning of what must not come together
    lifts: ["harm", "sureness"],
    shows: expression("^(?:please )?(?:never|do not|nobody should)(?: \\w+)? (?:mix|combine|add)\\b"), unless: expression("\\b(?:but|except|unless|without|only)\\b|[;]"),
  },
  { // A gas that products give off together, and to leave the room and ring for help
    lifts: ["harm", "sureness"],
    shows: expression(`\\b(?:${GIVES_OFF}\\b.{0,40}\\b${GAS}|${GAS}\\b.*\\b(?:${DANGER}|${LEAVE}|${KEEP_OUT}|${RING})|${DANGER}\\b.{0,30}\\b${GAS}|(?:${LEAVE}|${KEEP_OUT}|${RING})\\b.*\\b${GAS})\\b`), unless: ADVISES_OR_CLAIMS,
  },
  { // What a machine does to a pile
    lifts: ["harm", "blame", "sureness"],
    shows: expression(`\\b${MACHINE}(?:'s(?: \\w+){1,2}?)?(?: (?:with|of|on|from) (?:an?|the|its|your) (?:\\w+ ){1,2}?)?(?: (?:can|could|may|might|would|will|easily|often))* ${TEARS}|\\b(?:vacuum cleaner|hoover)\\b.*\\bits brush (?:can |could |may |would )?${TEARS}`),
    unless: expression(`\\b(?:PARTY|you|your \\w+|MISDEED) (?:\\w+ ){0,3}?(?:used?|hired|blame|fault|pay|did)\\b|\\b(?:not|never|nothing|hardly|cannot) (?:\\w+ ){0,2}?${TEARS}|${USE}(?! (?:none|neither|no)\\b)|${CLAIMS}`),
  },
  { // A machine kept away
    lifts: ["harm", "sureness"],
    shows: expression(`^(?:please )?keep (?:the|your|any|every|all) ${MACHINE} (?:well )?(?:away|off|out)\\b`), unless: expression(`\\b(?:but|except|then|instead)\\b|${USE}|${CLAIMS}`),
  },
  { // To wash one's hands
    lifts: ["harm", "sureness"],
    shows: expression("^(?:please |and |then |so |do )*wash your hands\\b"), unless: expression("\\b(?:it|RUG|TROUBLE) with\\b|\\b(?:rub|scrub|rinse|sponge|soak|dab|pour|apply|spray|put)\\b"),
  },
  { // To leave a room, air it or ring for help
    lifts: ["sureness"],
    shows: expression(`\\b(?:${LEAVE}|${RING}|${AIR})`), unless: ADVISES_OR_CLAIMS,
  },
];
