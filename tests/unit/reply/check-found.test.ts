import { describe, expect, it } from "vitest";
import { wrongWithFound } from "../../../lib/reply/check-found";

const REFUSED: readonly (readonly [string, RegExp])[] = [
  ["The cleaner ruined this rug and the insurer must pay.", /cannot be judged from here.*Cover and fault are for others to decide/],
  ["The damage was caused by the carrier.", /Who did what cannot be judged/],
  ["This is the cleaner's fault.", /Who did what cannot be judged/],
  ["The seller lied about the fibre.", /Who did what cannot be judged/],
  ["The previous cleaner used the wrong product and was negligent.", /Who did what cannot be judged/],
  ["The landlord is liable for the leak.", /Who did what cannot be judged/],
  ["The owner is to blame.", /Who did what cannot be judged/],
  ["You are entitled to a full refund.", /for them to decide/],
  ["The insurer has to pay for a new one.", /for them to decide/],
  ["The insurance covers this.", /for them to decide/],
  ["The stain will come out completely.", /“The stain will come out completely\.”/],
  ["We guarantee that it will look like new.", /“We guarantee/],
  ["Put bleach on the stain at home.", /“Put bleach/],
  ["Wash it in the machine at 40 degrees.", /“Wash it in the machine/],
  ["Use hydrogen peroxide on it.", /“Use hydrogen peroxide/],
  ["You can put it in the washing machine.", /“You can put/],
  ["A little bleach would take the brown out.", /“A little bleach/],
  ["It is perfectly safe to wash it.", /“It is perfectly safe/],
  ["It is a total write-off.", /asked below, and stands in the report by this person’s name/],
  ["Beyond economic repair.", /asked below/],
  ["Wear as is usual with dogs; the last cleaner did not rinse it.", /Who did what cannot be judged/],
  ["The retailer mis-described the rug as jute.", /Who did what is not seen on a rug/],
  ["The shop sold them rubbish and knew it; the pile is flat.", /Who did what is not seen on a rug/],
  ["The owner scrubbed it and pulled the fibres out.", /Who did what is not seen on a rug/],
  ["Whoever cleaned it last left soap in it.", /Who did what is not seen on a rug/],
  ["The damage should be covered by the policy.", /Cover and what anybody owes/],
  ["The insurer ought to pay for a new one.", /[Cc]over/],
  ["> The seller lied about the fibre.", /Who did what cannot be judged/],
];
const ALLOWED = [
  "The pile is felted over a hand's breadth.",
  "A burn test shows viscose: grey ash, a smell of burnt paper.",
  "It is 100% viscose.",
  "The fibre is viscose, found by a burn test of three yarns.",
  "The pile is worn out in the middle.",
  "The colour has bled from the red border into the ground, 4 cm.",
  "The foundation is sound.",
  "Moisture 14 per cent at the affected place, 9 at the untouched one.",
  "The latex of the back is crumbling.",
  "Larvae and cast skins were found under the fringe.",
  "Red dye came off on a damp white cloth.",
  "Black mould on the back, over an area of 20 by 30 cm.",
  "The pile was bleached by the sun along one edge.",
  "The brown ring does not go with a damp cloth.",
  "The pH at the stain was 9.5, beside it 6.",
  "The pile has lost its twist and lies flat; it does not stand up again when brushed.",
  "A residue of detergent was found: it foams when wetted.",
  "The warp is broken in 12 places.",
  "The owner says that a cleaner washed it.",
  "It smells of bleach, and the ground is white there.",
  "It was scrubbed with vinegar, by the smell.",
  "Bleach spots along the edge.",
  "Dye ran when a corner was wetted with warm water and soap.",
  "Hand-knotted, wool on cotton, about 120,000 knots to the square metre.",
  "Whose fault it is I cannot say.",
  "According to the owner a shop cleaned it in spring.",
  "The owner was present and showed where the pot stood.",
  "Soap is left in the pile: it foams when wetted.",
  "The shop’s label is sewn to one corner.",
  "Holes from moths along the left edge, twelve in all.",
  "Glue, 5 by 8 cm, hard; it has gone through to the back.",
];

/** What somebody who has had a rug in hand writes down. */
const SEEN = [
  "Steam cleaning has felted the pile.",
  "A weaving fault runs across the lower third.",
  "The pile is matted where hot water was used.",
  "Alkaline residue, pH 9.5 measured on a damp swab.",
  "The foundation is brittle and cracks when folded.",
  "Brown staining along the fringe, from cotton that dried slowly.",
  "The red has bled into the ivory border over about 4 cm.",
  "Moth grazing on the back, no live larvae found.",
  "A repair in a different wool, well done and sound.",
  "The latex backing is crumbling and sheds powder.",
  "Detergent left in the pile makes it sticky.",
  "The label says viscose; a burn test agrees.",
  "Sun has faded the front, the back keeps its colour.",
  "The warps are broken over 12 cm beside the left edge.",
  "The seam was glued and has let go.",
  "Mildew on the back, musty smell, damp at 18 per cent.",
  "Overwetting has lifted the secondary backing.",
  "Faulty knots in two rows, from the loom.",
  "Rubbing has untwisted the yarn at the stain.",
  "Bleach has taken the colour out of a hand-sized patch.",
  "Earlier cleaning has faded the red.",
  "A previous cleaning shrank the foundation.",
  "Carpet cleaning with steam has felted the pile.",
  "A loom fault.",
  "The fault lies in the weave.",
  "A dye fault: two reds in one row.",
  "Water ruined the border with brown lines.",
  "Bleach used too strong has left white spots.",
  "The steam mop has felted it.",
];
/** What says who is to blame. */
const BLAMES = [
  "Ferrant used far too much water.",
  "Ferrant & Sons ruined it with bleach.",
  "The last cleaner was careless.",
  "Brightmoor should have tested the dyes first.",
  "Their steam cleaning felted the pile.",
  "Whoever cleaned it did not know what they were doing.",
  "The shop lied about the silk.",
  "Halloway Carpets left it wet for a week.",
  "It was badly cleaned by somebody who used hot water.",
  "The seller knew that it was viscose.",
  "The owner scrubbed it too hard and is to blame.",
  "This is Ferrant's fault.",
  "Negligent drying by Brightmoor.",
  "The removal men tore it.",
  "The weaver made a poor job of the edge.",
  "The housekeeper did the damage with her steam mop.",
  "A competent cleaner would never have used steam.",
  "Halloway must pay for this.",
  "Mr Ferrant soaked it through and walked away.",
  "The previous repairer botched the fringe.",
  "It is the weaver's fault.",
  "Brightmoor did not rinse it.",
  "The fault lies with the cleaner.",
  "Clearly Ferrant soaked it with hot water.",
];

describe("wrongWithFound", () => {
  it.each(SEEN)("takes a finding: %s", (note) => expect(wrongWithFound(note)).toBeNull());
  it.each(BLAMES)("refuses blame: %s", (note) => expect(wrongWithFound(note)).toContain(note));
  it.each(REFUSED)("does not take for what was seen: %s", (note, says) => {
    expect(wrongWithFound(`The pile lies flat.\n${note}`)).toMatch(says);
    expect(wrongWithFound(note)).toContain(note.replace(/^> /, ""));
  });
  it.each(ALLOWED)("takes for what was seen, as surely as it is said: %s", (note) => expect(wrongWithFound(note)).toBeNull());
  it("takes them all together", () => expect(wrongWithFound(ALLOWED.join(" "))).toBeNull());
  it("tells of the first such sentence, and how many more there are", () => {
    expect(wrongWithFound("The seller lied. The insurer must pay.")).toMatch(/^“The seller lied\.” .* There is one more such sentence\.$/);
    expect(wrongWithFound("The seller lied. The insurer must pay. You are entitled to a full refund.")).toMatch(/There are 2 more such sentences\.$/);
  });
});
