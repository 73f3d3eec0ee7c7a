import { DAMAGE_IDS, type ChangeId } from "../../trade/damage";
import type { Condition } from "../condition";
import { TREATED } from "../treated-first";
import type { ParagraphRow } from "./row";
import { OURS, TRADE } from "./sources";
import { COLOUR_LOST, HARDLY_WORTH, INSPECTED, LITTLE, PILE_TROUBLE, REPAIRS, TELLS_NOTHING } from "./troubles";

/** Of what nobody sees, no share comes back. */
const SMELL = "How far cleaning would take the smell we cannot tell: it may still come back in damp weather.";

/** Whether it is cleaned is open: it may not be worth it, or others have to say first whether it can be. */
const WERE_IT_CLEANED = "Were it cleaned, that might {mends}.";

/** Changes that leave a mark of their own, whether or not the wet leaves one. */
const MARK_TOLD: Condition["not"] = { changes: ["browner", "ring", "paler", "faded", "ran", "stiff", "rough", "spots", "flat"] satisfies ChangeId[] };

/** How far it may come back: the second half of the answer. Always the range of the assessment. */
export const OUTLOOKS: readonly ParagraphRow[] = [
  { ...TRADE, id: "outlook-flood", version: 1, place: "outlook", when: { is: { incidents: ["flood"] } },
    text: "What can be done for it we cannot say before a flood-damage firm has seen to it." },
  { ...TRADE, id: "outlook-smell-antique", version: 1, place: "outlook", when: { is: { age: ["antique"], has: ["only-smell"] }, not: { top: REPAIRS } },
    text: `An old piece is not cleaned on our word alone. ${SMELL}` },
  { ...TRADE, id: "outlook-smell", version: 1, place: "outlook", when: { is: { has: ["only-smell"] }, not: { top: REPAIRS } },
    text: SMELL },
  { ...TRADE, id: "outlook-antique-wide", version: 2, place: "outlook", when: { is: { age: ["antique"] }, atLeast: TELLS_NOTHING },
    text: "An old piece is not cleaned on our word alone, and what cleaning would bring back we cannot tell." },
  { ...TRADE, id: "outlook-antique", version: 2, place: "outlook", when: { is: { age: ["antique"], has: ["improvement"] } },
    text: "An old piece is not cleaned on our word alone; were it cleaned, that might {mends}." },
  { ...OURS, id: "outlook-wet-wide", version: 2, place: "outlook", when: { is: { top: ["soil-only"], wet: ["wet", "damp"] }, not: MARK_TOLD, atLeast: TELLS_NOTHING },
    text: "It may dry and leave no mark. If one is left, we cannot tell how much of it would come out." },
  { ...OURS, id: "outlook-wide-unsure", version: 1, place: "outlook", when: { is: { certainty: ["unknown", "open"] }, atLeast: TELLS_NOTHING },
    text: "Until we know more, we cannot tell how much cleaning would bring back: it could be very little or most of it." },
  { ...OURS, id: "outlook-wide-seen", version: 1, place: "outlook", when: { is: { inspection: INSPECTED }, atLeast: TELLS_NOTHING },
    text: "Before a test we cannot tell how much cleaning would bring back: it could be very little or most of it." },
  { ...OURS, id: "outlook-wide", version: 1, place: "outlook", when: { atLeast: TELLS_NOTHING },
    text: "From here we cannot tell how much cleaning would bring back: it could be very little or most of it." },
  { ...OURS, id: "outlook-unknown", version: 3, place: "outlook", when: { is: { has: ["improvement"], certainty: ["unknown"] } },
    text: "Until we know more, cleaning might {mends}." },
  { ...TRADE, id: "outlook-repair-first", version: 2, place: "outlook", when: { is: { has: ["improvement"], top: REPAIRS }, not: { certainty: ["open"] } },
    text: "The main trouble is a matter for {repair}, not for cleaning; of the rest, careful cleaning may take out {improvement}." },
  { ...OURS, id: "outlook-little-pile", version: 3, place: "outlook", when: { is: { has: ["improvement"], top: PILE_TROUBLE }, not: { certainty: ["open"] }, below: LITTLE },
    text: "We are sorry, but we expect little to change by cleaning: {improvement} of what its surface has lost may come back." },
  { ...TRADE, id: "outlook-little-colour", version: 4, place: "outlook", when: { is: { has: ["improvement"], top: COLOUR_LOST }, not: { certainty: ["open"] }, below: LITTLE },
    text: "We are sorry, but we expect little to change by cleaning: {improvement} of the change that you see may go." },
  { ...OURS, id: "outlook-little", version: 3, place: "outlook", when: { is: { has: ["improvement"] }, not: { top: ["soil-only"] }, below: LITTLE },
    text: "We are sorry, but we expect little to change by cleaning: it might {mends}.",
    tones: { warm: "We are sorry to say that we expect little to change by cleaning: it might {mends}.", brief: "We expect little to change by cleaning: it might {mends}." } },
  { ...OURS, id: "outlook-wet-soil", version: 1, place: "outlook", when: { is: { has: ["improvement"], top: ["soil-only"], wet: ["wet", "damp"], changes: ["dirty"] } },
    text: "Of the soil in it, cleaning might take out {improvement}; whether the wet leaves a mark shows only when it is dry." },
  { ...OURS, id: "outlook-wet", version: 2, place: "outlook", when: { is: { has: ["improvement"], top: ["soil-only"], wet: ["wet", "damp"] }, not: MARK_TOLD },
    text: "It may dry and leave no mark. Of whatever is to be seen once it is dry, cleaning might take out {improvement}." },
  { ...OURS, id: "outlook-unjudged", version: 1, place: "outlook", when: { is: { has: ["trouble-unjudged"] }, not: { top: DAMAGE_IDS } },
    text: "Until we know more of what happened, cleaning might take out {improvement} of the trouble." },
  { ...OURS, id: "outlook-soil-doubtful", version: 2, place: "outlook", when: { is: { has: ["improvement"], top: ["soil-only"] }, not: { reason: ["what-is-it", "mis-sold"] }, atLeast: HARDLY_WORTH },
    text: "Were it cleaned, {improvement} {ofWhat} might come out." },
  { ...OURS, id: "outlook-soil", version: 3, place: "outlook", when: { is: { has: ["improvement"], top: ["soil-only"] }, not: { reason: ["what-is-it", "mis-sold"], treated: TREATED } },
    text: "With cleaning we would expect {improvement} {ofWhat} to come out." },
  { ...OURS, id: "outlook-later", version: 3, place: "outlook", when: { is: { has: ["improvement"], advice: ["leave-alone"], reason: ["what-is-it", "mis-sold"], urgency: ["can-wait"] } },
    text: "Nothing you have told us calls for cleaning now; when it does, we would expect {improvement} {ofWhat} to come out." },
  { ...OURS, id: "outlook-no-trouble", version: 3, place: "outlook", when: { is: { has: ["improvement"], reason: ["what-is-it", "routine", "mis-sold"] }, not: { top: DAMAGE_IDS, mechanisms: ["bleaching", "dye-bleed", "pile-distortion"], treated: ["mould"] } },
    text: "If it needs a clean, we would expect {improvement} {ofWhat} to come out." },
  { ...OURS, id: "outlook-open", version: 3, place: "outlook", when: { is: { has: ["improvement"], certainty: ["open"] } },
    text: "Until we know which, cleaning might {mends}." },
  { ...OURS, id: "outlook-pile-doubtful", version: 2, place: "outlook", when: { is: { has: ["improvement"], top: PILE_TROUBLE }, atLeast: HARDLY_WORTH },
    text: "Were it cleaned, its surface might regain {improvement} of what it has lost." },
  { ...OURS, id: "outlook-pile", version: 2, place: "outlook", when: { is: { has: ["improvement"], top: PILE_TROUBLE } },
    text: "With careful cleaning its surface may regain {improvement} of what it has lost." },
  { ...OURS, id: "outlook-doubtful", version: 2, place: "outlook", when: { is: { has: ["improvement"] }, atLeast: HARDLY_WORTH },
    text: WERE_IT_CLEANED },
  { ...TRADE, id: "outlook-treated-first", version: 1, place: "outlook", when: { is: { has: ["improvement"], treated: TREATED } },
    text: WERE_IT_CLEANED },
  { ...OURS, id: "outlook", version: 3, place: "outlook", when: { is: { has: ["improvement"] } },
    text: "We would expect careful cleaning to {mends}." },
  { ...TRADE, id: "outlook-repair-seen", version: 1, place: "outlook", when: { is: { top: REPAIRS, inspection: INSPECTED } },
    text: "What has happened is a matter for {repair}, not for cleaning." },
  { ...TRADE, id: "outlook-repair", version: 2, place: "outlook", when: { is: { top: REPAIRS } },
    text: "What has happened is a matter for {repair}, not for cleaning, and we would need to see it before we say how much can be mended." },
  { ...OURS, id: "outlook-sound", version: 2, place: "outlook", when: { is: { top: ["soil-only"], reason: ["what-is-it", "mis-sold"], urgency: ["can-wait"] }, not: { has: ["trouble-unjudged"] } },
    text: "Nothing you have told us calls for cleaning now." },
  { ...OURS, id: "outlook-leave-alone", version: 2, place: "outlook", when: { is: { advice: ["leave-alone"], urgency: ["can-wait"] }, not: { has: ["trouble-unjudged"] } },
    text: "Nothing you have told us calls for cleaning now, so we would leave it alone." },
  { ...OURS, id: "outlook-none", version: 2, place: "outlook", when: { not: { certainty: ["unknown"], inspection: INSPECTED } },
    text: "How much can be done for it we cannot say before we have seen it." },

  { ...OURS, id: "soil-beside", version: 1, place: "soil", when: { is: { has: ["improvement"], changes: ["dirty"], top: [...PILE_TROUBLE, ...COLOUR_LOST] }, below: TELLS_NOTHING },
    text: "Of the soil in it more may come out, but how much we cannot tell." },
];
