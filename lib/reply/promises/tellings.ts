import type { Telling } from "./rule";

/** That people, children or animals may use it, or that it may stay wet. */
export const IN_USE: Telling = {
  why: "Feet and furniture crush a pile that is wet or may be viscose, and damp that stays can turn to mould; neither is judged from photos.",
  advise: "Ask them to wait:", instead: "Please keep people, children and pets off it until it has been looked at.",
};
/** That nobody need worry. */
export const COMFORT: Telling = {
  why: "Comfort that all is well says more than is known.", advise: "Say that you know of their worry, and what comes next:", instead: "We know that this is a worry, and we will tell you what we find.",
};
/** That a label or a warning may be ignored. */
export const LABELLED: Telling = {
  why: "A label may know of a fibre or a dye that photos do not show, and a warning is there for those whom it has hurt.", advise: "Let the warning stand:", instead: "Please heed the warning, and do nothing to it until it has been looked at.",
};
/** That a vacuum cleaner may draw up water. */
export const ELECTRICS: Telling = {
  why: "Mains electricity and water can kill, and a household vacuum cleaner is not made for wet.", advise: "Keep everything electric away from it:", instead: "Please keep everything that is plugged in away from it while it is wet.",
};
/** That it will be ready or back by a day. */
export const ON_TIME: Telling = {
  why: "How long the work takes hangs on what an inspection finds, so a day or a number of weeks is no promise to make before it.", advise: "Give the usual time as a range, or only:", instead: "We will tell you how long it takes once it has been inspected.",
};
/** That a price was too high, or a seller's profit unfair. */
export const PRICE_PAID: Telling = {
  why: "Whether a price was fair is a valuer's to say, and such a sentence can be held against you.", advise: "Leave the price to a valuer, or say only:", instead: "What it was worth is for a valuer to say.",
};
/** That it is free of germs. */
export const GERMS: Telling = {
  why: "Cleaning takes out dirt and leaves germs behind; only a laboratory could tell how many.", advise: "Leave germs to those who can count them, or say only:", instead: "A wash makes a rug cleaner, and nobody can promise that it is free of germs.",
};
/** That a rug be frozen at home. */
export const FROZEN: Telling = {
  why: "Ice breaks weak fibres where a pile is damp, and insects survive a freezer that is not cold enough for long enough; neither is judged from photos.", advise: "Leave freezing to the workshop, once the rug has been looked at:", instead: "Please do not freeze it at home.",
};
