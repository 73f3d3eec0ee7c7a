/**
 * What may be asked of the person who writes in, and the answers offered. Data only: the pages render it,
 * the schemas of lib/enquiry/questionnaire are built from it, triage reads the answer ids.
 *
 * `trouble` is what answering costs the client, in the unit of the loss table (one ordinary clean). Elicited:
 * a question .02, a photo .1. Every choice also offers `unsure`, which is an answer and never a finding.
 */
export interface AnswerRow {
  readonly label: string;
  readonly hint?: string;
}
export interface QuestionRow {
  readonly kind: "one" | "many";
  readonly of: "enquiry" | "rug";
  readonly ask: string;
  readonly hint?: string;
  readonly trouble: number;
  readonly answers: Readonly<Record<string, AnswerRow>>;
}

export const QUESTIONS = {
  wetNow: {
    kind: "one", of: "enquiry", trouble: 0.02,
    ask: "Is any part of the rug wet right now?",
    hint: "If it is, we tell you first what to do. The questions can wait.",
    answers: {
      wet: { label: "Yes, it is wet", hint: "A spill just now, a leak, or it was washed and has not dried" },
      damp: { label: "Damp, or wet underneath", hint: "Cool or clammy when you lay the back of your hand on it" },
      no: { label: "No, it is dry" },
    },
  },
  reason: {
    kind: "one", of: "enquiry", trouble: 0.02,
    ask: "What brings you here?",
    answers: {
      "just-happened": { label: "Something happened to it just now", hint: "In the last two days" },
      "older-trouble": { label: "It has a mark or damage", hint: "From longer ago, or I don’t know since when" },
      "after-cleaning": { label: "It changed after it was cleaned", hint: "Colour, feel or shape, whoever cleaned it" },
      routine: { label: "It could do with a clean", hint: "Nothing in particular has happened" },
      "what-is-it": { label: "I would like to know what it is made of" },
      "mis-sold": { label: "I think it was sold as something it is not" },
      "trade": { label: "I clean rugs myself and need advice", hint: "A customer’s rug, something has gone wrong" },
    },
  },
  sellerSaid: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "What did the seller call it?",
    hint: "In the shop, the listing or on the invoice. Not what you think it is.",
    answers: {
      silk: { label: "Silk", hint: "Also “pure silk”, “real silk”" },
      "wool-and-silk": { label: "Wool and silk" },
      "art-silk": { label: "Art silk, bamboo silk, banana silk, faux or vegan silk" },
      viscose: { label: "Viscose or rayon" },
      "silk-look": { label: "“Silk touch”, “silk look”, “silky”" },
      wool: { label: "Wool" },
      cotton: { label: "Cotton" },
      other: { label: "Something else" },
      nothing: { label: "Nothing was said" },
    },
  },
  boughtWhere: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Where did it come from?",
    answers: {
      specialist: { label: "A rug shop" },
      furniture: { label: "A furniture or department store" },
      online: { label: "Online" },
      bazaar: { label: "A market or bazaar, or bought on a journey" },
      auction: { label: "An auction or an antiques dealer" },
      secondhand: { label: "Second-hand" },
      gift: { label: "A gift, or inherited" },
    },
  },
  shine: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Stand at one end, then at the other. How does the pile shine?",
    hint: "Look in daylight, lamp off. If you can’t tell, say so: that is an answer too.",
    answers: {
      none: { label: "No shine", hint: "Looks the same from both ends, like a woollen jumper" },
      "two-tone": { label: "Light from one end, dark from the other", hint: "The colour changes as you walk round it" },
      satin: { label: "Gleams like glass or satin", hint: "From every side" },
      mixed: { label: "Parts shine and parts do not", hint: "A shiny outline or pattern on a matt ground" },
    },
  },
  footprints: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Draw a line in the pile with your finger. What happens to it?",
    hint: "Only where it is dry and clean.",
    answers: {
      stay: { label: "It stays", hint: "Footprints too: you can see where people walked" },
      brush: { label: "It goes when I stroke it back" },
      none: { label: "There is hardly a line at all" },
    },
  },
  touch: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Lay your palm on the pile. What is it like?",
    hint: "Only if it is dry and clean where you touch it.",
    answers: {
      "cool-slippery": { label: "Cool, soft and slippery", hint: "Heavy, like a wet curtain" },
      "warm-fine": { label: "Fine, and warm after a moment", hint: "A dry rustle when you rub it" },
      springy: { label: "Springy, a little hairy", hint: "Like a woollen coat" },
      cottony: { label: "Firm and cottony", hint: "Like a towel or a bedspread" },
      plastic: { label: "Slick or plasticky", hint: "Or hard and very light" },
      coarse: { label: "Coarse, like rope or straw" },
      "two-textures": { label: "Two different textures" },
    },
  },
  back: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Fold one corner over. What does the back look like?",
    hint: "Don’t lift a wet rug. A dry corner is enough.",
    answers: {
      knots: { label: "The same pattern, knot by knot", hint: "You can count small knots" },
      cloth: { label: "Cloth glued or sewn over it", hint: "Canvas, sometimes with a dusty rubber smell" },
      loomed: { label: "Even rows, no pattern", hint: "A woven ground with straight lines" },
      machine: { label: "Very regular, hard or plasticky", hint: "Often a light jute or plastic grid" },
      flat: { label: "No pile: both sides alike" },
      felt: { label: "Felt, foam or rubber" },
    },
  },
  fringe: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "And the fringe?",
    answers: {
      "part-of-rug": { label: "The fringe grows out of the rug", hint: "It is the end of its own threads" },
      "sewn-on": { label: "It is sewn or glued on" },
      none: { label: "There is no fringe" },
    },
  },
  fringeKind: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "What does the fringe feel like?",
    answers: {
      cottony: { label: "Dull and cottony" },
      shiny: { label: "Shiny and soft" },
      woolly: { label: "Woolly" },
    },
  },
  incidents: {
    kind: "many", of: "rug", trouble: 0.02,
    ask: "What happened to it?",
    hint: "Choose everything that fits.",
    answers: {
      spill: { label: "Food or drink was spilled" },
      "pet-urine": { label: "A pet, or a person, wet on it" },
      vomit: { label: "Somebody was sick on it" },
      water: { label: "Clean water: a vase, a leak, rain, an open window" },
      flood: { label: "Flood or waste water" },
      "washed-professional": { label: "A cleaner cleaned it" },
      "washed-home": { label: "It was washed or machine-cleaned at home" },
      spotted: { label: "A spot was treated at home" },
      wear: { label: "It is walked flat, or furniture stood on it" },
      sun: { label: "It lies in the sun" },
      insects: { label: "Moths or beetles" },
      damp: { label: "It lies in a damp room, under a plant pot, or pets sleep on it" },
      stored: { label: "It was rolled up and stored" },
      unknown: { label: "Nobody knows" },
      nothing: { label: "Nothing happened" },
    },
  },
  liquid: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "What was it that got on it?",
    answers: {
      water: { label: "Water" },
      wine: { label: "Wine, red or white" },
      "coffee-tea": { label: "Coffee or tea" },
      juice: { label: "Juice, cola, beer or another drink" },
      milk: { label: "Milk, cream or a sauce" },
      grease: { label: "Oil, butter or wax" },
      ink: { label: "Ink, paint or make-up" },
      urine: { label: "Urine" },
      vomit: { label: "Vomit" },
      cleaner: { label: "A cleaning product" },
      other: { label: "Something else" },
    },
  },
  since: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "When was that?",
    answers: {
      hour: { label: "Within the last hour" },
      day: { label: "Today" },
      "two-days": { label: "Yesterday or the day before" },
      week: { label: "This week" },
      month: { label: "This month" },
      longer: { label: "Longer ago" },
    },
  },
  treatments: {
    kind: "many", of: "rug", trouble: 0.02,
    ask: "What has been done about it so far?",
    hint: "Choose everything, whoever did it. Nobody here will scold you.",
    answers: {
      nothing: { label: "Nothing yet" },
      blotted: { label: "Blotted with a cloth or paper" },
      rubbed: { label: "Rubbed or scrubbed" },
      "plain-water": { label: "Plain water" },
      "household-cleaner": { label: "A household cleaner, spray or foam" },
      "soap": { label: "Soap, washing-up liquid or shampoo" },
      "vinegar-soda": { label: "Vinegar, salt, soda water or baking soda" },
      bleach: { label: "Bleach or an “oxygen” stain remover" },
      "steam-heat": { label: "Steam, a hairdryer or an iron" },
      machine: { label: "A carpet-cleaning machine" },
      "professional-wet": { label: "A cleaner washed it" },
      "professional-dry": { label: "A cleaner cleaned it nearly dry" },
      solvent: { label: "A solvent or stain-remover fluid" },
    },
  },
  treatedBy: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Who did that?",
    answers: {
      owner: { label: "I did, or someone at home" },
      cleaner: { label: "A cleaner" },
      "rug-cleaner": { label: "A cleaner who does only rugs" },
      "me-trade": { label: "I did, as a cleaner" },
    },
  },
  changes: {
    kind: "many", of: "rug", trouble: 0.02,
    ask: "How has the rug changed?",
    hint: "Choose everything you see.",
    answers: {
      none: { label: "It has not changed" },
      browner: { label: "Browner or yellower than it was" },
      ring: { label: "A ring or an edge around the place" },
      paler: { label: "Paler, as if bleached" },
      faded: { label: "Faded where the sun falls" },
      ran: { label: "A colour ran into another" },
      stiff: { label: "The pile is stiff or matted" },
      rough: { label: "The pile looks rough or burst, and won’t lie right" },
      shaded: { label: "A patch looks lighter or darker only from one side" },
      smell: { label: "It smells" },
      spots: { label: "Furry or black spots" },
      bare: { label: "Eaten or bare patches" },
      flat: { label: "Worn or pressed flat" },
      wavy: { label: "Wavy, shrunk or out of shape" },
      crumbles: { label: "The back is coming off, or sheds dust" },
      dirty: { label: "Just dirty all over" },
    },
  },
  room: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "How much is it walked on?",
    answers: {
      busy: { label: "A lot", hint: "A hall, a family room" },
      ordinary: { label: "An ordinary living room" },
      little: { label: "Hardly", hint: "A bedroom, or it hangs on a wall" },
      furniture: { label: "Mostly under a table or a bed" },
    },
  },
  household: {
    kind: "many", of: "rug", trouble: 0.02,
    ask: "Does any of this apply?",
    answers: {
      pets: { label: "A cat or a dog lives here" },
      children: { label: "Small children play on it" },
      "floor-heating": { label: "The floor under it is heated" },
      humid: { label: "The room is damp or often steamed up" },
      pots: { label: "Plant pots stand on it or beside it" },
      moths: { label: "We have seen moths" },
      none: { label: "None of these" },
    },
  },
  age: {
    kind: "one", of: "rug", trouble: 0.02,
    ask: "Roughly how old is the rug itself?",
    hint: "Not how long you have had it.",
    answers: {
      "under-2": { label: "Under two years" },
      "2-5": { label: "Two to five years" },
      "5-10": { label: "Five to ten years" },
      "10-25": { label: "Ten to twenty-five years" },
      "25-80": { label: "Older than twenty-five years" },
      antique: { label: "Antique, or dated in the weave" },
    },
  },
  matters: {
    kind: "many", of: "rug", trouble: 0.02,
    ask: "What matters most to you?",
    answers: {
      keep: { label: "Keeping it: it means something to me" },
      look: { label: "That it looks right again" },
      safe: { label: "That it is clean and safe" },
      cost: { label: "Not spending more than it is worth" },
      know: { label: "Knowing what it is" },
      claim: { label: "A claim against a seller, cleaner or insurer" },
    },
  },
} as const satisfies Record<string, QuestionRow>;

export type QuestionId = keyof typeof QUESTIONS;

/** What a trained eye can see in a photo, where a client only tells of it. Common practice, no published source. */
export const SEEN_IN_A_PHOTO: readonly QuestionId[] = ["shine", "back", "fringe", "changes"];

/** An answer to one question, `unsure` included. */
export type AnswerOf<Q extends QuestionId> = (keyof (typeof QUESTIONS)[Q]["answers"] & string) | "unsure";

/** The photos asked for, in order. `trouble` as above. */
export const PHOTO_KINDS = {
  whole: { ask: "The whole rug", hint: "From above, all four corners in the picture", trouble: 0.1, fills: true },
  label: { ask: "The label", hint: "Usually sewn under a corner. So close that you can read it", trouble: 0.1, fills: false },
  back: { ask: "The back of a folded corner", hint: "Close, in daylight", trouble: 0.1, fills: false },
  pile: { ask: "The pile, parted with two fingers", hint: "As close as your phone stays sharp", trouble: 0.1, fills: false },
  trouble: { ask: "The trouble", hint: "With some untouched rug around it, in the same picture", trouble: 0.1, fills: false },
} as const satisfies Record<string, { ask: string; hint: string; trouble: number; fills: boolean }>;
export type PhotoKind = keyof typeof PHOTO_KINDS;

/** Currencies (ISO 4217) that the price tables can bring together. */
export const CURRENCIES = ["EUR", "GBP", "USD"] as const;
export type Currency = (typeof CURRENCIES)[number];

/**
 * What one person told about one rug. Absent: not asked or not answered. Lengths in centimetres, price as paid
 * in whole or part units of `currency` (ISO 4217), `boughtYear` a calendar year.
 */
export interface RugAnswers {
  labelText?: string | undefined;
  labelFound?: "typed" | "none" | "unsure" | undefined;
  sellerSaid?: AnswerOf<"sellerSaid"> | undefined;
  sellerWords?: string | undefined;
  boughtWhere?: AnswerOf<"boughtWhere"> | undefined;
  boughtPlace?: string | undefined;
  boughtYear?: number | undefined;
  price?: number | undefined;
  currency?: Currency | undefined;
  widthCm?: number | undefined;
  lengthCm?: number | undefined;
  shine?: AnswerOf<"shine"> | undefined;
  footprints?: AnswerOf<"footprints"> | undefined;
  touch?: AnswerOf<"touch"> | undefined;
  back?: AnswerOf<"back"> | undefined;
  fringe?: AnswerOf<"fringe"> | undefined;
  fringeKind?: AnswerOf<"fringeKind"> | undefined;
  incidents?: AnswerOf<"incidents">[] | undefined;
  liquid?: AnswerOf<"liquid"> | undefined;
  since?: AnswerOf<"since"> | undefined;
  treatments?: AnswerOf<"treatments">[] | undefined;
  treatedBy?: AnswerOf<"treatedBy"> | undefined;
  changes?: AnswerOf<"changes">[] | undefined;
  room?: AnswerOf<"room"> | undefined;
  household?: AnswerOf<"household">[] | undefined;
  age?: AnswerOf<"age"> | undefined;
  matters?: AnswerOf<"matters">[] | undefined;
  /** In the client's own words; never interpreted as evidence, always shown to staff. */
  story?: string | undefined;
}
/** What was told about the enquiry as a whole. */
export interface EnquiryAnswers {
  wetNow?: AnswerOf<"wetNow"> | undefined;
  reason?: AnswerOf<"reason"> | undefined;
}
