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
    "shampoo", "stain remover", "(?:household|carpet|upholstery)(?: carpet)? cleaner", "solvent", "hair ?dryer", "iron", "washing machine", "steam(?:er| cleaner)?", "insecticide", "(?:moth|fly|insect|bug) spray", "nail varnish remover", "(?:laundry|washing|soap|scouring) powder", "carpet (?:spray|powder|foam)", "oven cleaner", "(?:stiff|wire|scrubbing|hard) brush", "fabric softener", "talc", "cornflour", "petrol", "turpentine", "meths", "methylated spirit", "lemon juice", "sponge", "foam"]),
  HEAT: list(["hair ?dr[iy]ers?", "radiators?", "heaters?", "fan heater", "(?:hot )?iron", "boiling water", "hot water", "kettle", "oven", "tumble ?dr[iy]er", "heat gun", "hottest setting", "(?:full |strong |direct |bright |hot )?sun(?:shine|light)?", "open fire", "stove", "blow ?dry\\w*"]),
  HARM: list(["fold marks?", "creases?", "moths?", "shrinkage", "fading", "halos?", "specks?", "crush marks?", "dents?", "bleeding", "dye bleed", "holes?", "repairs?", "dust", "dirt", "pet hair", "wax", "rust", "mould", "mildew"]),
  OUTCOME: list(["come (?:right )?(?:out|off|up|back)", "drop out", "fall out", "wash (?:right |straight |clean )?out", "bleach out", "brush out", "disappear", "vanish", "melt away", "fade away", "go away", "be gone", "100 ?% gone", "gone", "be nowhere", "immaculate", "flawless",
    "spotless", "pristine", "invisible", "unnoticeable", "undetectable", "unable to (?:find|see|tell)", "never know", "ever know", "look(?:ing)? brand[- ]new", "brand[- ]new", "good as new", "(?:mark|stain|fade|shrink) (?:it )?(?:ever )?again"]),
  COMES: list(["comes? (?:right )?(?:out|off|up|back)", "goes", "go", "wash(?:es)? out", "lifts?", "disappears?", "vanish(?:es)?", "clears? up", "be reversed"]),
  THING: list(["(?:your|the|this|that|its|every|each|all) (?:\\w+ )?(?:rug|carpet|pile|fringe|colours?|mark|stain|spot|ring|smell|odou?r|patch|halo|fading|nap|red|blue|pink|white|brown|yellow|edge|sheen|shine|dye|fibres?|moths?|hole|repair|wrinkles?|creases?|ripples?|dents?)s?", "(?:moths?|stains?|colours?|the damage|browning)"]),
  PERFECT: list(["flawless", "immaculate", "pristine", "perfect", "spotless", "faultless", "brand[- ]new", "showroom"]),
  ORIGIN: list(["(?:(?:[0-9]{2}th|nineteenth|eighteenth|twentieth|seventeenth)[- ]century|antique|victorian|persian|caucasian|tabriz|heriz|kashan|isfahan|nain|qum|bokhara|turkoman|anatolian|turkish|chinese|moroccan|berber|kazak|afshar|hand[- ]?knotted)"]),
  PARTY: list(["cleaners?", "contractors?", "company", "firm", "shop", "dealer", "seller", "mr\\.? \\w+", "mrs\\.? \\w+", "ms\\.? \\w+", "restorer", "decorators?", "plumbers?", "neighbours?", "landlord", "previous people", "last people", "people before us", "they"]),
  LEADIN: "(?:please |feel free to |by all means |you are welcome to |all you (?:have|need) to do is |the best thing is to |what you want to do is |just |simply |then |now |first |also |and |or |so |gently |carefully |you (?:can|could|may|should|might) (?:just |safely |simply |also )?|we (?:recommend|suggest|advise) (?:that )?(?:you |to )?|try to |make sure (?:to|you) )*",
};

/** A rule's pattern with its capitals filled in. */
export function compiled(pattern: string): RegExp {
  return new RegExp(pattern.replace(/FIBRE|RUG|FRINGE|MARK|CAUSE|SURELY|NUMBER|CURRENCY|AGENT|HEAT|HARM|OUTCOME|COMES|PERFECT|ORIGIN|PARTY|THING|LEADIN/g, (word) => VOCABULARY[word] as string), "u");
}
