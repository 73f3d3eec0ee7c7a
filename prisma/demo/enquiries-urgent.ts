import type { DemoEnquiry } from "./types";

/** Enquiries in which waiting costs something. All persons, places and rugs are invented. */
export const URGENT: DemoEnquiry[] = [
  {
    minutesAgo: 40,
    file: {
      channel: "web", wetNow: "damp", reason: "trade",
      client: { name: "Tobias Ferrant", email: "tobias@ferrant-cleaning.example", telephone: "01632 960 114" },
      parties: [{ kind: "trade-customer", name: "Mrs Odile Marchbank" }],
      rugs: [{
        labelText: "100% VISCOSE", labelFound: "typed", sellerSaid: "silk", boughtWhere: "furniture", boughtYear: 2023, price: 1150, currency: "GBP", widthCm: 200, lengthCm: 300,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "cloth", fringe: "none",
        incidents: ["washed-professional"], since: "day", treatments: ["professional-wet"], treatedBy: "me-trade", changes: ["browner", "stiff"], room: "ordinary",
        matters: ["look"], story: "I wet-cleaned this for a customer this morning. It is still damp and going brown along the edges in front of me. What do I do now, and what do I tell her?",
      }],
    },
    photos: [[
      { kind: "whole", weave: "tufted", colours: ["#c9b79a", "#b59b74", "#8d6b45"], damage: { kind: "brown", x: 0.5, y: 0.6, r: 0.34 } },
      { kind: "label", weave: "tufted", colours: ["#c9b79a"], labelText: "100% VISCOSE\nDRY CLEAN ONLY\n200 x 300" },
      { kind: "trouble", weave: "tufted", colours: ["#c9b79a", "#b59b74"], damage: { kind: "brown", x: 0.55, y: 0.5, r: 0.4 } },
    ]],
    marks: [
      { photo: 1, by: "staff", label: "open" },
      { photo: 2, by: "client", spots: { untouched: { x: 0.27, y: 0.33 }, affected: { x: 0.48, y: 0.5 } } },
    ],
  },
  {
    minutesAgo: 130,
    file: {
      channel: "web", wetNow: "wet", reason: "just-happened",
      client: { name: "Henrike Aldous", email: "h.aldous@mail.example" },
      rugs: [{
        labelFound: "none", sellerSaid: "silk", boughtWhere: "bazaar", boughtYear: 1998, price: 900, currency: "USD", widthCm: 80, lengthCm: 300,
        shine: "two-tone", footprints: "brush", touch: "warm-fine", back: "knots", fringe: "part-of-rug", fringeKind: "shiny",
        incidents: ["spill"], liquid: "wine", since: "hour", treatments: ["blotted"], treatedBy: "owner", changes: ["ring"], room: "little", age: "25-80",
        matters: ["keep"], story: "A whole glass of red wine, ten minutes ago. I have only pressed a towel on it. We carried this home from our first journey together.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#7d2e38", "#a4505a", "#d8c7b0", "#2f3a4a"], damage: { kind: "wine", x: 0.6, y: 0.45, r: 0.16 } },
      { kind: "back", weave: "knotted", colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"] },
      { kind: "trouble", weave: "knotted", colours: ["#7d2e38", "#a4505a", "#d8c7b0"], damage: { kind: "wine", x: 0.5, y: 0.5, r: 0.3 } },
    ]],
  },
  {
    minutesAgo: 185,
    file: {
      channel: "telephone", wetNow: "wet", reason: "just-happened",
      client: { name: "Marguerite Okonjo-Lindqvist of Upper Hallowmere Old Schoolhouse", telephone: "01632 960 387" },
      rugs: [{
        labelFound: "none", sellerSaid: "art-silk", sellerWords: "bamboo silk", boughtWhere: "online", boughtYear: 2022, price: 640, currency: "GBP", widthCm: 160, lengthCm: 230,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "loomed", fringe: "none",
        incidents: ["water"], liquid: "water", since: "hour", treatments: ["nothing"], changes: ["none"], room: "ordinary",
        matters: ["look"], story: "Knocked over a vase of lilies. About a litre. She had her phone in one hand and a towel in the other.",
      }],
    },
    photos: [[]],
  },
  {
    minutesAgo: 310,
    file: {
      channel: "web", wetNow: "wet", reason: "just-happened",
      client: { name: "Joost Pemberley", email: "joost@pemberley.example", telephone: "01632 960 921" },
      rugs: [{
        labelFound: "none", sellerSaid: "wool", boughtWhere: "auction", boughtYear: 2011, price: 1800, currency: "GBP", widthCm: 210, lengthCm: 310,
        shine: "none", touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "cottony",
        incidents: ["flood"], since: "day", treatments: ["nothing"], changes: ["ran", "smell"], room: "ordinary", household: ["children"], age: "25-80",
        matters: ["keep", "safe", "claim"], story: "The drain came up through the cellar steps and stood on the rug overnight. The red is moving into the ivory.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#8a2f2b", "#e3d6bd", "#27364d", "#b98a4a"], damage: { kind: "bleed", x: 0.4, y: 0.65, r: 0.3 } },
      { kind: "trouble", weave: "knotted", colours: ["#8a2f2b", "#e3d6bd", "#27364d"], damage: { kind: "bleed", x: 0.5, y: 0.5, r: 0.38 } },
    ]],
  },
  {
    minutesAgo: 840,
    file: {
      channel: "web", wetNow: "no", reason: "just-happened",
      client: { name: "Amaryllis Brookes", email: "amaryllis.brookes@mail.example" },
      rugs: [{
        labelText: "100% Viscose. Made in India", labelFound: "typed", sellerSaid: "silk", boughtWhere: "specialist", boughtYear: 2024, price: 4200, currency: "GBP", widthCm: 170, lengthCm: 240,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "loomed", fringe: "sewn-on", fringeKind: "shiny",
        incidents: ["pet-urine", "spotted"], liquid: "urine", since: "two-days", treatments: ["household-cleaner", "rubbed"], treatedBy: "owner", changes: ["paler", "stiff", "rough"], room: "ordinary", household: ["pets"], age: "under-2",
        matters: ["look", "claim"], story: "The dog had an accident and I panicked and used the kitchen spray. Now there is a pale stiff patch as long as my arm. They told me it was silk.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "loomed", colours: ["#8b95a3", "#a7b0ba", "#c9cdd0", "#6f7783"], damage: { kind: "pale", x: 0.35, y: 0.6, r: 0.22 } },
      { kind: "label", weave: "loomed", colours: ["#8b95a3"], labelText: "100% VISCOSE\nMADE IN INDIA" },
      { kind: "pile", weave: "loomed", colours: ["#8b95a3", "#a7b0ba"] },
      { kind: "trouble", weave: "loomed", colours: ["#8b95a3", "#a7b0ba"], damage: { kind: "pale", x: 0.45, y: 0.5, r: 0.33 } },
    ]],
    marks: [
      { photo: 1, by: "client", label: "right" },
      { photo: 3, by: "client", spots: { untouched: { x: 0.16, y: 0.3 }, affected: { x: 0.43, y: 0.48 } } },
      { photo: 3, by: "staff", spots: { untouched: { x: 0.2, y: 0.56 }, affected: { x: 0.46, y: 0.52 } } },
      { photo: 0, by: "staff", plan: { chosen: null } },
    ],
  },
  {
    minutesAgo: 65,
    file: {
      channel: "web", wetNow: "damp", reason: "just-happened",
      client: { name: "Casimir Holloway", email: "casimir.h@mail.example" },
      rugs: [{
        labelText: "pile 100% wool, backing cotton and latex", labelFound: "typed", sellerSaid: "wool", boughtWhere: "furniture", boughtYear: 2020, price: 480, currency: "GBP", widthCm: 160, lengthCm: 230,
        shine: "none", touch: "springy", back: "cloth", fringe: "none",
        incidents: ["pet-urine"], liquid: "urine", since: "hour", treatments: ["blotted"], treatedBy: "owner", changes: ["smell"], room: "busy", household: ["pets", "children"],
        matters: ["safe"], story: "New puppy. We blotted and then stopped because we were afraid to make it worse.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "tufted", colours: ["#d8cdb8", "#9fae9a", "#5e7263"] },
      { kind: "back", weave: "tufted", colours: ["#d8cdb8"] },
    ]],
  },
  {
    minutesAgo: 1130,
    file: {
      channel: "email", wetNow: "no", reason: "just-happened",
      client: { name: "ليلى الحداد", email: "layla@alhaddad.example" },
      rugs: [{
        labelText: "100% polypropylene heat-set", labelFound: "typed", sellerSaid: "silk-look", boughtWhere: "online", boughtYear: 2023, price: 120, currency: "GBP", widthCm: 160, lengthCm: 230,
        shine: "satin", footprints: "none", touch: "plastic", back: "machine", fringe: "none",
        incidents: ["vomit"], liquid: "vomit", since: "two-days", treatments: ["plain-water", "soap"], treatedBy: "owner", changes: ["smell", "ring"], room: "busy", household: ["children"],
        matters: ["safe", "cost"], story: "Our little boy was sick on it. It is dry now but it smells when the heating is on.",
      }],
    },
    photos: [[{ kind: "whole", weave: "machine", colours: ["#b9b2c4", "#e4e0e8", "#7f7791"], damage: { kind: "ring", x: 0.6, y: 0.5, r: 0.15 } }]],
  },
  {
    minutesAgo: 1500,
    file: {
      channel: "web", wetNow: "no", reason: "just-happened",
      client: { name: "Wren Abernathy-Quill", email: "wren@quill.example" },
      rugs: [{
        labelText: "70% wool 30% viscose", labelFound: "typed", sellerSaid: "wool-and-silk", boughtWhere: "specialist", boughtYear: 2021, price: 1450, currency: "GBP", widthCm: 200, lengthCm: 290,
        shine: "mixed", footprints: "brush", touch: "two-textures", back: "cloth", fringe: "none",
        incidents: ["spill"], liquid: "milk", since: "two-days", treatments: ["plain-water", "blotted"], treatedBy: "owner", changes: ["ring", "smell"], room: "ordinary", household: ["children"],
        matters: ["look", "safe"],
      }],
    },
    photos: [[
      { kind: "whole", weave: "tufted", colours: ["#ece4d4", "#c7b8a0", "#8f9aa6"], damage: { kind: "ring", x: 0.45, y: 0.55, r: 0.14 } },
      { kind: "label", weave: "tufted", colours: ["#ece4d4"], labelText: "70% WOOL\n30% VISCOSE" },
      { kind: "trouble", weave: "tufted", colours: ["#ece4d4", "#c7b8a0"], damage: { kind: "ring", x: 0.5, y: 0.5, r: 0.3 } },
    ]],
  },
];
