import { FIBRES, shortNames } from "../../trade/fibres";
import { list, nouns, words } from "./words";

/** Names of fibres as letters use them, beside those of the table; the longer first, so that "art silk" is not read as silk. */
const OTHER_NAMES = [
  "art silk", "artificial silk", "bamboo silk", "banana silk", "faux silk", "vegan silk", "bamboo viscose", "rayon", "modal", "cupro", "linen", "hemp", "ramie", "jute", "sisal", "coir", "nylon",
  "hand-spun wool", "real silk", "pure silk", "pure wool", "lyocell", "bamboo", "mohair", "cashmere", "goat hair", "camel hair", "synthetic", "man-made", "chenille",
];
const names = [...new Set([...OTHER_NAMES, ...FIBRES.filter((f) => f.id !== "other").flatMap((f) => [f.name.replace(/ \(.*/, ""), ...shortNames(f)])])].sort((a, b) => b.length - a.length);

const RUG_PARTS = "rug, carpet, runner, mat, kilim, hearthrug, piece, item, article, textile, pile, nap, fibre, fiber, wool, silk, viscose, yarn, fringe, tassel, edge, edging, binding, border, back, backing, underside, latex, foundation, warp, weft, knot, weave, ground, field, structure, medallion, pattern, design, colour, color, colouring, dye, red, blue, green, pink, white, ivory, cream, lustre, luster, sheen, shine, gloss, softness, texture, surface, corner, selvedge, selvage, repair, patch, reweave, reweaving, reknotting, replacement, tuft, loop";
const TROUBLES = "mark, stain, staining, spot, spill, spillage, ring, tidemark, tide mark, tide line, waterline, halo, browning, yellowing, greying, discolouration, discoloration, bleed, bleeding, migration, fading, fade, smell, odour, odor, pong, whiff, stink, scent, urine, wee, pee, puddle, accident, mould, mold, mildew, moth, larva*, grub, egg, infestation, beetle, shrinkage, curl, curling, buckle, buckling, wrinkle, ripple, dent, crease, creasing, fold, fold line, fold mark, flattening, flattened bit, crush mark, indentation, hole, tear, rip, burn, scorch, damp, dampness, stiffness, dust, dirt, soil, soiling, grime, mud, soot, smoke, wax, ink, wine, red wine, coffee, tea, curry, turmeric, gravy, beer, juice, milk, oil, grease, polish, paint, emulsion, rust, gum, chewing gum, glue, tar, blood, vomit, sick, toothpaste, nail varnish, lipstick, damage, trouble, problem, contamination, bacteria, germ, allergen, mite, residue, shadow, fuzz, fluff, shedding, wear, rot, dry rot, bald patch, streak, blotch, cloud, bloom, pink, brown, yellow, grey";

/** Whom and what a letter speaks of: fibres, the rug and its parts, what has happened to it, and where it comes from. */
export const THINGS: Readonly<Record<string, string>> = {
  FIBRE: list(names),
  RUGPART: nouns(RUG_PARTS),
  TROUBLE: nouns(TROUBLES),
  DET: words("the, your, its, this, that, these, those, any, every, each, all the, all of the, all your, all, such, their, our, his, her, my, a, an, both, most of the, the rest of the, every last, every single"),
  PRON: words("it, this, that, they, these, those, she, everything, the lot, the thing, the whole thing, the whole lot, all of it, all of them, all of that, most of it, the rest, the rest of it, every bit of it, yours, this one, what (?:you|we) (?:have|see|are looking at)(?: got)?(?: there| here)?"),
  THING: nouns(`${RUG_PARTS}, ${TROUBLES}`),
  /** What stands between a thing and its verb: "the red mark along the border". */
  GAP: "(?:,? (?!(?:we|i|and|or|if|whether|when|not|never|may|might|could|would|should|can|cannot|will|shall|is|are|was|were|has|have)\\b)[\\w'-]+)*",
  SUBJECT: "(?:\\bPRON\\b|\\bTHING\\bGAP)",
  CAUSE: nouns("urine, wee, water, condensation, wine, mould, mildew, moth, carpet beetle, bleach, chlorine, alkali, detergent, shampoo, cleaner's water, browning, dye, dye transfer, sun, sunlight, damp, coffee, tea, vomit, soil, tannin, rust, dry rot, rot, dirt, dust, glue, latex, lint, wax, smoke, over-wetting, overwetting, heat, tea-coloured tannin, cellulose browning, sun fading, wear, cigarette, mothball, dog, puppy, cat, cat wee, dog wee, foot traffic, underfloor heating, radiator, cleaning"),
  ORIGIN: words("[0-9]{2}th[- ]century, nineteenth[- ]century, eighteenth[- ]century, twentieth[- ]century, seventeenth[- ]century, antique, victorian, edwardian, persian, caucasian, tabriz, heriz, kashan, kirman, kerman, isfahan, nain, qum, qom, bokhara, turkoman, turkmen, tekke, anatolian, turkish, chinese, indian, tibetan, nepalese, pakistani, afghan, balouch, baluch, hamadan, mahal, sarouk, bidjar, bijar, senneh, ushak, oushak, milas, moroccan, berber, beni ourain, kazak, shirvan, afshar, qashqai, gabbeh, tribal, hand[- ]?knotted, hand[- ]?woven, hand[- ]?made, hand[- ]?tufted, machine[- ]?made, vegetable[- ]dyed, naturally dyed"),
};
