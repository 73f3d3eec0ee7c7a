import type { Source } from "./fibres";

/**
 * What a wrong answer costs, in the unit of one ordinary clean. Promising too much costs far more than promising too
 * little. Elicited throughout; a workshop may set its own figure for each id.
 */
export interface LossRow extends Source { readonly loss: number; readonly what: string }
const row = (loss: number, what: string): LossRow => ({ loss, what, how: "elicited", source: "Elicited for this project" });

export const LOSSES = {
  "promised-and-failed": row(8, "promised too much, and it failed"),
  "made-worse": row(15, "made worse by a method we advised"),
  "home-advice-harms": row(20, "home advice that harms"),
  "declined-cleanable": row(2, "declined what would have cleaned well"),
  "asked-needlessly": row(0.3, "asked for a photo or an inspection that was not needed"),
  "failed-within-limits": row(1, "quoted with limits, and it failed within them"),
  "trouble-question": row(0.02, "the trouble of a question"),
  "trouble-photo": row(0.1, "the trouble of a photo"),
  "trouble-bench": row(1, "the trouble of a bench test"),
  "urgent-left-a-day": row(4, "left an urgent case a day"),
  "called-viscose-was-silk": row(3, "called viscose what was silk"),
  "called-silk-was-viscose": row(10, "called silk what was viscose"),
  "misnamed-otherwise": row(1, "called it another wrong name"),
  "left-without-a-way": row(1, "left the owner with trouble and no way forward"),
  "specialist-passed-over": row(6, "worked on what belongs to a specialist"),
  "acted-needlessly": row(1, "worked on a rug that had no trouble"),
  "cut-needlessly": row(3, "cut a rug that would have come back"),
  "mark-taken-for-soil": row(1, "took a mark for ordinary soil, with no limits agreed"),
  "costs-more-than-worth": row(1, "work that costs more than the rug is worth"),
  "claimed-without-grounds": row(3, "advised a claim that had no grounds"),
} as const satisfies Record<string, LossRow>;
export type LossId = keyof typeof LOSSES;

export type ActionId =
  | "leave-alone" | "routine-clean" | "first-aid" | "ask-for-more" | "inspect-and-test" | "quote-with-limits"
  | "advise-cut-down" | "advise-claim-or-replacement" | "refer" | "not-our-work";

/**
 * What each action risks. The expected loss of an action is the sum over its rows of `loss` times the chances named in
 * `when`, each of them or its opposite (`not:`):
 * `fails` the best method brings back too little · `marked` more than soil is to be brought back · `worse` it makes the rug worse, after a passed test · `sound` there is no trouble ·
 * `wet` it is wet or fresh now · `specialist` antique, insects, mould, waste water · `local` the trouble is in one place ·
 * `cheap` cleaning costs more than the rug is worth · `grounds` a claim or a replacement is what is asked or fits ·
 * `as-sold` it is what it was sold as, where that is in doubt · `misdone` first aid is done so badly that it harms.
 * Where the owner asks for the name, every action but first aid also bears the chance-weighted cost of naming it now.
 * The two actions that ask for more (`ask-for-more`, `inspect-and-test`) are valued by what they would let us decide: see lib/triage/advice.
 */
export type ChanceId = "fails" | "marked" | "worse" | "sound" | "wet" | "specialist" | "local" | "cheap" | "grounds" | "as-sold" | "misdone";
export type Factor = ChanceId | `not:${ChanceId}`;
export type TerminalId = Exclude<ActionId, "ask-for-more" | "inspect-and-test">;
export interface RiskRow { readonly action: TerminalId; readonly loss: LossId; readonly when: readonly Factor[] }
const risk = (action: TerminalId, loss: LossId, ...when: Factor[]): RiskRow => ({ action, loss, when });

export const RISKS: readonly RiskRow[] = [
  risk("routine-clean", "promised-and-failed", "fails", "not:sound"),
  risk("routine-clean", "mark-taken-for-soil", "marked", "not:sound"),
  risk("routine-clean", "made-worse", "worse"),
  risk("routine-clean", "acted-needlessly", "sound"),
  risk("routine-clean", "specialist-passed-over", "specialist"),
  risk("routine-clean", "costs-more-than-worth", "cheap"),
  risk("routine-clean", "urgent-left-a-day", "wet"),
  risk("quote-with-limits", "failed-within-limits", "fails"),
  risk("quote-with-limits", "asked-needlessly", "not:fails"),
  risk("quote-with-limits", "made-worse", "worse"),
  risk("quote-with-limits", "acted-needlessly", "sound"),
  risk("quote-with-limits", "specialist-passed-over", "specialist"),
  risk("quote-with-limits", "costs-more-than-worth", "cheap"),
  risk("quote-with-limits", "urgent-left-a-day", "wet"),
  risk("leave-alone", "declined-cleanable", "not:fails", "not:sound"),
  risk("leave-alone", "left-without-a-way", "not:sound"),
  risk("leave-alone", "specialist-passed-over", "specialist"),
  risk("leave-alone", "urgent-left-a-day", "wet"),
  risk("not-our-work", "declined-cleanable", "not:fails", "not:cheap"),
  risk("not-our-work", "left-without-a-way", "not:cheap"),
  risk("not-our-work", "asked-needlessly"),
  risk("not-our-work", "urgent-left-a-day", "wet"),
  risk("advise-cut-down", "cut-needlessly", "not:fails"),
  risk("advise-cut-down", "left-without-a-way", "not:local", "not:sound"),
  risk("advise-cut-down", "costs-more-than-worth", "cheap"),
  risk("advise-cut-down", "specialist-passed-over", "specialist"),
  risk("advise-cut-down", "urgent-left-a-day", "wet"),
  risk("advise-claim-or-replacement", "declined-cleanable", "not:fails", "not:sound", "not:cheap"),
  risk("advise-claim-or-replacement", "left-without-a-way", "not:grounds", "not:sound", "not:cheap"),
  risk("advise-claim-or-replacement", "claimed-without-grounds", "as-sold"),
  risk("advise-claim-or-replacement", "acted-needlessly", "sound", "not:grounds"),
  risk("advise-claim-or-replacement", "specialist-passed-over", "specialist"),
  risk("advise-claim-or-replacement", "urgent-left-a-day", "wet"),
  risk("first-aid", "left-without-a-way", "not:wet"),
  risk("first-aid", "declined-cleanable", "not:wet"),
  risk("first-aid", "home-advice-harms", "misdone"),
  risk("refer", "declined-cleanable", "not:specialist", "not:fails"),
  risk("refer", "left-without-a-way", "not:specialist"),
  risk("refer", "acted-needlessly", "sound", "not:specialist"),
  risk("refer", "urgent-left-a-day", "wet"),
];

/**
 * What has to hold before an action may be advised at all, whatever the losses say. `placed`: the size of the rug and the
 * place of the damage are known. Asking can settle it; that it is no antique, nothing can.
 * Common practice, no published source.
 */
export const NEEDS: Readonly<Partial<Record<TerminalId, readonly ("placed" | "no-antique")[]>>> = { "advise-cut-down": ["placed", "no-antique"] };

/** The one set of first aid, misread or overdone: chance that it harms. */
export const FIRST_AID_MISDONE = { chance: 0.005, how: "elicited", source: "Elicited for this project" } as const satisfies Source & { chance: number };

/** How much asking and inspecting settle, 0–1, of what is open about fibre and damage. Elicited. */
export const SETTLES = {
  asking: 0.6, placing: 0.9, inspecting: 0.9, inspectingOutcome: 0.6, benchUnasked: 0.3,
  how: "elicited", source: "Elicited for this project: answers settle at most six tenths of what is open, and nine tenths of where the damage is and how large the rug; an inspection with tests nine tenths, and six tenths of whether a mark will come back; three tenths of uncertain piles need a bench test even where nobody asked for the name",
} as const satisfies Source & Record<"asking" | "placing" | "inspecting" | "inspectingOutcome" | "benchUnasked", number>;

/** The words for each action: in a sentence, and why. */
export const ACTIONS: Readonly<Record<ActionId, { readonly name: string; readonly why: string }>> = {
  "leave-alone": { name: "leave it alone", why: "Nothing is wrong that work would mend, and every cleaning costs a pile something." },
  "routine-clean": { name: "a routine clean", why: "It is very likely ordinary soil on a pile that stands cleaning." },
  "first-aid": { name: "first aid now", why: "Something is wet or fresh; what is done in the next hours matters more than anything we can say from here." },
  "ask-for-more": { name: "ask for more", why: "Too little is known to advise; a few answers or photos would change what we say." },
  "inspect-and-test": { name: "an inspection with tests", why: "What decides it cannot be seen in photos: the fibre, the dyes or how far a hidden corner comes back." },
  "quote-with-limits": { name: "a quote with limits", why: "Cleaning should help, but not surely or not wholly; the limits are agreed before work begins." },
  "advise-cut-down": { name: "cutting it down", why: "The damaged part will probably not come back; the sound part can still serve, where an inspection finds its ground sound." },
  "advise-claim-or-replacement": { name: "no cleaning: keep it as it is, replace it, or claim", why: "Cleaning will probably not bring it back, or would cost more than it is worth." },
  refer: { name: "referring it", why: "It belongs first with somebody who does nothing else." },
  "not-our-work": { name: "not our work", why: "What we do would cost more than it is worth." },
};

export type ReferralId = "antique" | "flood" | "mould" | "insects";
/** Who a rug is referred to, the first row that holds; chances from `from`. Common practice, no published source. */
export const REFERRALS: readonly { readonly when: ReferralId; readonly from: number; readonly to: string }[] = [
  { when: "antique", from: 0.5, to: "a textile conservator, and a valuer" },
  { when: "flood", from: 0.5, to: "a flood-damage firm, before anybody touches it" },
  { when: "mould", from: 0.5, to: "a firm equipped to treat mould in textiles" },
  { when: "insects", from: 0.5, to: "a pest-control firm, before anything is cleaned" },
];
