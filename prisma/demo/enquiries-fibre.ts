import type { DemoEnquiry } from "./types";

/** Enquiries that turn on what the rug is made of. All persons, places and rugs are invented. */
export const FIBRE: DemoEnquiry[] = [
  {
    minutesAgo: 960,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Rosalind Tey", email: "rosalind.tey@mail.example" },
      rugs: [{
        labelText: "60% wool, 40% viscose", labelFound: "typed", sellerSaid: "wool-and-silk", boughtWhere: "furniture", boughtYear: 2019, price: 890, currency: "GBP", widthCm: 170, lengthCm: 240,
        shine: "mixed", footprints: "brush", touch: "two-textures", back: "loomed", fringe: "none",
        incidents: ["damp"], since: "longer", treatments: ["nothing"], changes: ["browner"], room: "ordinary", household: ["pets"], age: "5-10",
        matters: ["cost", "look"], story: "Brown where the dog lies every evening. Is it worth having it cleaned?",
      }],
    },
    photos: [[
      { kind: "whole", weave: "loomed", colours: ["#2f4a63", "#54708a", "#b9a98c"], damage: { kind: "brown", x: 0.3, y: 0.35, r: 0.2 } },
      { kind: "label", weave: "loomed", colours: ["#54708a"], labelText: "60% WOOL\n40% VISCOSE" },
      { kind: "pile", weave: "loomed", colours: ["#2f4a63", "#54708a"] },
      { kind: "trouble", weave: "loomed", colours: ["#2f4a63", "#54708a", "#b9a98c"], damage: { kind: "brown", x: 0.5, y: 0.5, r: 0.3 } },
    ]],
  },
  {
    minutesAgo: 1700,
    file: {
      channel: "web", wetNow: "no", reason: "what-is-it",
      client: { name: "Ishbel Crane", email: "ishbel@crane.example" },
      rugs: [{
        labelFound: "none", sellerSaid: "art-silk", sellerWords: "bamboo silk", boughtWhere: "online", boughtYear: 2025, price: 900, currency: "GBP", widthCm: 200, lengthCm: 300,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "loomed", fringe: "none",
        incidents: ["nothing"], room: "ordinary", age: "under-2", matters: ["know"], story: "No trouble with it. I only want to know what I own and how to live with it.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "loomed", colours: ["#d9d2c3", "#c4b8a2"] },
      { kind: "pile", weave: "loomed", colours: ["#d9d2c3", "#c4b8a2"] },
    ]],
  },
  {
    minutesAgo: 2050,
    file: {
      channel: "web", wetNow: "no", reason: "routine",
      client: { name: "Bertrand Osei-Vale", email: "bertrand@oseivale.example" },
      rugs: [{
        labelFound: "none", sellerSaid: "silk", sellerWords: "pure silk, end of line", boughtWhere: "online", boughtYear: 2025, price: 150, currency: "GBP", widthCm: 200, lengthCm: 300,
        shine: "satin", footprints: "stay", touch: "cool-slippery", back: "machine", fringe: "none",
        incidents: ["nothing"], changes: ["dirty"], room: "ordinary", age: "under-2", matters: ["know", "cost"],
      }],
    },
    photos: [[
      { kind: "whole", weave: "machine", colours: ["#3d5a58", "#7d9a90", "#d9d8c8"] },
      { kind: "back", weave: "machine", colours: ["#7d9a90"] },
    ]],
  },
  {
    minutesAgo: 2600,
    file: {
      channel: "web", wetNow: "no", reason: "mis-sold",
      client: { name: "Philippa Gaunt", email: "p.gaunt@mail.example", telephone: "01632 960 552" },
      parties: [{ kind: "seller", name: "the shop on the invoice", reference: "Invoice of 14 May 2024" }],
      rugs: [{
        labelText: "100 % VISKOSE / VISCOSE", labelFound: "typed", sellerSaid: "silk", sellerWords: "hand-knotted silk", boughtWhere: "specialist", boughtYear: 2024, price: 3600, currency: "EUR", widthCm: 200, lengthCm: 300,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "knots", fringe: "part-of-rug", fringeKind: "shiny",
        incidents: ["nothing"], changes: ["shaded"], room: "little", age: "under-2", matters: ["claim", "know"], story: "The invoice says silk. Last week I found this label under the corner.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#566b8c", "#c8cfd8", "#e9e4d8", "#8a93a0"] },
      { kind: "label", weave: "knotted", colours: ["#566b8c"], labelText: "100 % VISKOSE\n100 % VISCOSE\n200 x 300 CM" },
      { kind: "back", weave: "knotted", colours: ["#566b8c", "#c8cfd8", "#e9e4d8"] },
    ]],
  },
  {
    minutesAgo: 3100,
    file: {
      channel: "web", wetNow: "no", reason: "routine",
      client: { name: "Leopold Sandiford", email: "leopold@sandiford.example" },
      rugs: [{
        labelText: "SOIE 100 %", labelFound: "typed", sellerSaid: "silk", boughtWhere: "specialist", boughtYear: 2009, price: 7800, currency: "EUR", widthCm: 120, lengthCm: 180,
        shine: "two-tone", footprints: "brush", touch: "warm-fine", back: "knots", fringe: "part-of-rug", fringeKind: "shiny",
        incidents: ["nothing"], changes: ["dirty"], treatments: ["nothing"], room: "little", age: "10-25", matters: ["keep", "look"], story: "It hangs in the bedroom and has gone dull with dust.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#9a6a4f", "#d6b98e", "#33505a", "#7c2f36"] },
      { kind: "label", weave: "knotted", colours: ["#9a6a4f"], labelText: "SOIE 100 %\nFAIT MAIN" },
      { kind: "back", weave: "knotted", colours: ["#9a6a4f", "#33505a", "#7c2f36"] },
      { kind: "pile", weave: "knotted", colours: ["#9a6a4f", "#d6b98e"] },
    ]],
  },
  {
    minutesAgo: 4300,
    file: {
      channel: "web", wetNow: "unsure", reason: "what-is-it",
      client: { name: "Odd Nilsen-Farrow", email: "odd@farrow.example" },
      rugs: [{ labelFound: "unsure", sellerSaid: "unsure", boughtWhere: "gift", shine: "unsure", matters: ["know"] }],
    },
    photos: [[{ kind: "whole", weave: "knotted", colours: ["#5a4638", "#8a765c"], quality: "dark" }, { kind: "pile", weave: "knotted", colours: ["#5a4638"], quality: "blurred" }]],
  },
  {
    minutesAgo: 3900,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Seraphine Wolcott", email: "seraphine@wolcott.example" },
      rugs: [{
        labelText: "100% Lyocell", labelFound: "typed", sellerSaid: "art-silk", sellerWords: "vegan silk", boughtWhere: "online", boughtYear: 2023, price: 720, currency: "GBP", widthCm: 160, lengthCm: 230,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "loomed", fringe: "none",
        incidents: ["damp", "water"], liquid: "water", since: "month", treatments: ["nothing"], changes: ["ring", "browner"], room: "ordinary", household: ["pots"], age: "2-5", matters: ["look"],
        story: "A ring under the plant pot. It never leaked, I think, it only sweated.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "loomed", colours: ["#a9b59a", "#cfd6c3", "#7f8c71"], damage: { kind: "ring", x: 0.7, y: 0.3, r: 0.1 } },
      { kind: "label", weave: "loomed", colours: ["#a9b59a"], labelText: "100% LYOCELL" },
      { kind: "trouble", weave: "loomed", colours: ["#a9b59a", "#cfd6c3"], damage: { kind: "ring", x: 0.5, y: 0.5, r: 0.28 } },
    ]],
  },
  {
    minutesAgo: 2250,
    file: {
      channel: "email", wetNow: "no", reason: "after-cleaning",
      client: { name: "Dorothea Lindqvist-Amari", email: "dorothea@amari.example" },
      parties: [{ kind: "insurer", name: "the insurer of the cleaner", reference: "HF-22071" }],
      rugs: [{
        labelFound: "none", sellerSaid: "silk", boughtWhere: "specialist", boughtYear: 2016, price: 5200, currency: "GBP", widthCm: 140, lengthCm: 200,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "knots", fringe: "part-of-rug", fringeKind: "cottony",
        incidents: ["washed-professional"], since: "month", treatments: ["professional-wet", "machine"], treatedBy: "cleaner", changes: ["stiff", "rough", "browner"], room: "ordinary", age: "5-10",
        matters: ["claim"], story: "The cleaner used a machine with water. It came back stiff and yellow. His insurer asks what it would cost to put right.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#cfc4ae", "#a59372", "#6b5a46", "#e6dfd0"], damage: { kind: "brown", x: 0.55, y: 0.5, r: 0.36 } },
      { kind: "back", weave: "knotted", colours: ["#cfc4ae", "#6b5a46"] },
      { kind: "trouble", weave: "knotted", colours: ["#cfc4ae", "#a59372"], damage: { kind: "brown", x: 0.5, y: 0.5, r: 0.42 } },
    ]],
  },
];
