import type { QuestionRow } from "./question-row";

/** What the rug was sold as, where, and how it looks and feels. */
export const ABOUT_THE_RUG = {
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
} as const satisfies Record<string, QuestionRow>;
