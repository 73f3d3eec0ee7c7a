import { FIBRES } from "../../trade/fibres";

/** Names of fibres as letters use them, beside those of the table; the longer first, so that "art silk" is not read as silk. */
const OTHER_NAMES = [
  "art silk", "artificial silk", "bamboo silk", "banana silk", "faux silk", "vegan silk", "bamboo viscose", "rayon", "modal", "cupro", "linen", "hemp", "ramie", "jute", "sisal", "coir", "nylon",
  "hand-spun wool", "real silk", "pure silk", "pure wool", "lyocell", "bamboo",
];
const names = [...new Set([...OTHER_NAMES, ...FIBRES.filter((f) => f.id !== "other").flatMap((f) => [f.name.replace(/ \(.*/, ""), f.short])])].sort((a, b) => b.length - a.length);

const list = (words: readonly string[]) => `(?:${words.join("|")})`;

/** What the words in capitals of a rule stand for. */
export const VOCABULARY: Readonly<Record<string, string>> = {
  FIBRE: list(names),
  RUG: list(["(?:your|the|this|that) (?:rug|carpet|pile|runner)(?:'s pile)?", "(?:your|the|this) (?:rug's |whole )?(?:pile|fibre|yarn|outline|field)"]),
  FRINGE: list(["(?:your|the|its) (?:fringe|ground|foundation|back)"]),
  MARK: list(["(?:the|this|that|such|your|every|any)? ?(?:brown(?:ed)? |old |fresh |dark |wine |red |yellow )?(?:mark|stain|spot|ring|edge|smell|odour|browning|colour|spill|urine|patch|red|wine|tide line|ink)s?(?: marks?)?"]),
  CAUSE: list(["urine", "water", "wine", "mould", "moths?", "bleach", "cleaner's water", "browning", "dye", "sun", "damp", "coffee", "vomit", "soil"]),
  SURELY: list(["surely", "definitely", "certainly", "undoubtedly", "absolutely", "without question", "with certainty", "for certain", "for sure", "beyond doubt"]),
  NUMBER: list(["[0-9][0-9.,]*", "a hundred", "(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?",
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "fifteen"]),
  CURRENCY: list(["€", "£", "\\$", "eur", "gbp", "usd", "chf"]),
  AGENT: list(["water", "soap", "soapy water", "vinegar", "bleach", "peroxide", "salt", "soda(?: water)?", "baking soda", "bicarbonate", "ammonia", "acetone", "white spirit", "alcohol", "washing-up liquid", "detergent",
    "shampoo", "stain remover", "(?:household|carpet|upholstery)(?: carpet)? cleaner", "solvent", "hair ?dryer", "iron", "washing machine", "steam(?:er| cleaner)?", "insecticide", "moth spray", "lemon juice", "sponge", "foam"]),
  LEADIN: "(?:please |just |simply |then |now |first |also |and |or |so |gently |carefully |you (?:can|could|may|should|might) (?:just |safely |simply |also )?|we (?:recommend|suggest|advise) (?:that )?(?:you |to )?|try to |make sure (?:to|you) )*",
};

/** A rule's pattern with its capitals filled in. */
export function compiled(pattern: string): RegExp {
  return new RegExp(pattern.replace(/FIBRE|RUG|FRINGE|MARK|CAUSE|SURELY|NUMBER|CURRENCY|AGENT|LEADIN/g, (word) => VOCABULARY[word] as string), "u");
}
