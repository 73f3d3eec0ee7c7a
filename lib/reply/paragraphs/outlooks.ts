import { DAMAGE_IDS } from "../../trade/damage";
import type { ParagraphRow } from "./row";
import { OURS, TRADE } from "./sources";
import { HARDLY_WORTH, TELLS_NOTHING } from "./troubles";

/** No mark, but a pile that lies flat, hard or matted. */
const PILE_TROUBLE = ["matting", "pile-distortion"];
const COLOUR_LOST = ["fading", "bleaching"];
const REPAIRS = ["insects", "backing-failure", "shrinkage"];

/** How far it may come back: the second half of the answer. Always the range of the assessment. */
export const OUTLOOKS: readonly ParagraphRow[] = [
  { ...TRADE, id: "outlook-flood", version: 1, place: "outlook", when: { is: { incidents: ["flood"] } },
    text: "What can be done for it we cannot say before a flood-damage firm has seen to it." },
  { ...TRADE, id: "outlook-antique-wide", version: 1, place: "outlook", when: { is: { age: ["antique"] }, atLeast: TELLS_NOTHING },
    text: "An old piece is not cleaned on our word alone, and what cleaning would bring back we cannot tell from here." },
  { ...TRADE, id: "outlook-antique", version: 1, place: "outlook", when: { is: { age: ["antique"], has: ["improvement"] } },
    text: "An old piece is not cleaned on our word alone; were it cleaned, we would expect {improvement} of the marks to go." },
  { ...OURS, id: "outlook-wet-wide", version: 1, place: "outlook", when: { is: { top: ["soil-only"], wet: ["wet", "damp"] }, atLeast: TELLS_NOTHING },
    text: "It may dry and leave no mark. If one is left, we cannot tell from here how much of it would come out." },
  { ...OURS, id: "outlook-wide-unsure", version: 1, place: "outlook", when: { is: { certainty: ["unknown", "open"] }, atLeast: TELLS_NOTHING },
    text: "Until we know more, we cannot tell how much cleaning would bring back: it could be very little or most of it." },
  { ...OURS, id: "outlook-wide", version: 1, place: "outlook", when: { atLeast: TELLS_NOTHING },
    text: "From here we cannot tell how much cleaning would bring back: it could be very little or most of it." },
  { ...OURS, id: "outlook-unknown", version: 2, place: "outlook", when: { is: { has: ["improvement"], certainty: ["unknown"] } },
    text: "Until we know more, cleaning might take out {improvement} of the trouble." },
  { ...TRADE, id: "outlook-repair-first", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: REPAIRS }, not: { certainty: ["open"] } },
    text: "The main trouble is a matter for repair, not for cleaning; of the rest, careful cleaning may take out {improvement}." },
  { ...OURS, id: "outlook-little-pile", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: PILE_TROUBLE }, not: { certainty: ["open"] }, below: { improvementHigh: 25 } },
    text: "We are sorry, but we expect little to change: with the best method left, {improvement} of what the pile has lost may come back." },
  { ...TRADE, id: "outlook-little-colour", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: COLOUR_LOST }, not: { certainty: ["open"] }, below: { improvementHigh: 25 } },
    text: "We are sorry, but we expect little to change: with the best method left, {improvement} of the lost colour may come back." },
  { ...OURS, id: "outlook-little", version: 1, place: "outlook", when: { is: { has: ["improvement"] }, not: { top: ["soil-only"] }, below: { improvementHigh: 25 } },
    text: "We are sorry, but we expect little to change: with the best method left, {improvement} of the mark may go.",
    tones: { warm: "We are sorry to say that we expect little to change: with the best method left, {improvement} of the mark may go.", brief: "We expect little to change: {improvement} of the mark may go." } },
  { ...OURS, id: "outlook-wet", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: ["soil-only"], wet: ["wet", "damp"] } },
    text: "It may dry and leave no mark. If one is left, cleaning might take out {improvement} of it." },
  { ...OURS, id: "outlook-unjudged", version: 1, place: "outlook", when: { is: { has: ["trouble-unjudged"] }, not: { top: DAMAGE_IDS } },
    text: "Until we know more of what happened, cleaning might take out {improvement} of the trouble." },
  { ...OURS, id: "outlook-soil-doubtful", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: ["soil-only"] }, not: { reason: ["what-is-it", "mis-sold"] }, atLeast: HARDLY_WORTH },
    text: "Were it cleaned, {improvement} of the soil might come out." },
  { ...OURS, id: "outlook-soil", version: 2, place: "outlook", when: { is: { has: ["improvement"], top: ["soil-only"] }, not: { reason: ["what-is-it", "mis-sold"] } },
    text: "With cleaning we would expect {improvement} of the soil to come out." },
  { ...OURS, id: "outlook-later", version: 2, place: "outlook", when: { is: { has: ["improvement"], advice: ["leave-alone"], reason: ["what-is-it", "mis-sold"], urgency: ["can-wait"] } },
    text: "Nothing you have told us calls for cleaning now; when it does, we would expect {improvement} of the soil to come out." },
  { ...OURS, id: "outlook-no-trouble", version: 2, place: "outlook", when: { is: { has: ["improvement"], reason: ["what-is-it", "routine", "mis-sold"] }, not: { top: DAMAGE_IDS, mechanisms: ["bleaching", "dye-bleed", "pile-distortion", "mould"] } },
    text: "If it needs a clean, we would expect {improvement} of the soil to come out." },
  { ...OURS, id: "outlook-open", version: 2, place: "outlook", when: { is: { has: ["improvement"], certainty: ["open"] } },
    text: "Until we know which, cleaning might take out {improvement} of the trouble." },
  { ...OURS, id: "outlook-pile-doubtful", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: PILE_TROUBLE }, atLeast: HARDLY_WORTH },
    text: "Were it cleaned, the pile might regain {improvement} of what it has lost." },
  { ...OURS, id: "outlook-pile", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: PILE_TROUBLE } },
    text: "With careful cleaning the pile may regain {improvement} of what it has lost." },
  { ...OURS, id: "outlook-doubtful", version: 1, place: "outlook", when: { is: { has: ["improvement"] }, atLeast: HARDLY_WORTH },
    text: "Were it cleaned, {improvement} of the mark might go." },
  { ...OURS, id: "outlook", version: 2, place: "outlook", when: { is: { has: ["improvement"] } },
    text: "With careful cleaning we would expect {improvement} of the mark to go." },
  { ...TRADE, id: "outlook-repair", version: 1, place: "outlook", when: { is: { top: REPAIRS } },
    text: "What has happened is a matter for repair, not for cleaning, and we would need to see it before we say how much can be mended." },
  { ...OURS, id: "outlook-sound", version: 2, place: "outlook", when: { is: { top: ["soil-only"], reason: ["what-is-it", "mis-sold"], urgency: ["can-wait"] }, not: { has: ["trouble-unjudged"] } },
    text: "Nothing you have told us calls for cleaning now." },
  { ...OURS, id: "outlook-leave-alone", version: 2, place: "outlook", when: { is: { advice: ["leave-alone"], urgency: ["can-wait"] }, not: { has: ["trouble-unjudged"] } },
    text: "Nothing you have told us calls for cleaning now, so we would leave it alone." },
  { ...OURS, id: "outlook-none", version: 1, place: "outlook", when: { not: { certainty: ["unknown"] } },
    text: "How much can be done for it we cannot say before we have seen it." },
];
