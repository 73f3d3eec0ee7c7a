import type { DemoEnquiry } from "./types";

/** The everyday rest: wool, moths, backs, sun, mould, jute. All persons, places and rugs are invented. */
export const EVERYDAY: DemoEnquiry[] = [
  {
    minutesAgo: 1350,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Gwendolen Mar", email: "gwen@mar.example" },
      rugs: [{
        labelText: "100% Pure New Wool", labelFound: "typed", sellerSaid: "wool", boughtWhere: "specialist", boughtYear: 2018, price: 1250, currency: "GBP", widthCm: 170, lengthCm: 240,
        shine: "none", footprints: "brush", touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "cottony",
        incidents: ["spill"], liquid: "coffee-tea", since: "month", treatments: ["blotted", "plain-water"], treatedBy: "owner", changes: ["ring"], room: "ordinary", age: "5-10", matters: ["look"],
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#b8472f", "#e8d9b8", "#2c3e50", "#c99b4d"], damage: { kind: "coffee", x: 0.62, y: 0.58, r: 0.1 } },
      { kind: "label", weave: "knotted", colours: ["#e8d9b8"], labelText: "100% PURE NEW WOOL" },
      { kind: "trouble", weave: "knotted", colours: ["#e8d9b8", "#b8472f"], damage: { kind: "coffee", x: 0.5, y: 0.5, r: 0.26 } },
    ]],
    marks: [
      { photo: 2, by: "staff", spots: { untouched: { x: 0.7, y: 0.14 }, affected: { x: 0.4, y: 0.42 } } },
    ],
  },
  {
    minutesAgo: 2900,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Ottoline Speke", email: "ottoline@speke.example" },
      rugs: [{
        labelFound: "none", sellerSaid: "wool", boughtWhere: "gift", widthCm: 140, lengthCm: 210,
        shine: "none", touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "cottony",
        incidents: ["insects"], since: "week", treatments: ["nothing"], changes: ["bare"], room: "furniture", household: ["moths"], age: "25-80", matters: ["keep"],
        story: "Under the sofa there are bare patches and little white tubes. It was my grandmother's.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#6e2b2a", "#c7a27a", "#2b3347", "#4d5a3c"], damage: { kind: "moth", x: 0.25, y: 0.3, r: 0.14 } },
      { kind: "trouble", weave: "knotted", colours: ["#6e2b2a", "#c7a27a"], damage: { kind: "moth", x: 0.5, y: 0.5, r: 0.3 } },
    ]],
    marks: [
      { photo: 0, by: "staff", plan: { chosen: "equal-ends", isSymmetric: true } },
    ],
  },
  {
    minutesAgo: 5200,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Ambrose Thackley", email: "ambrose@thackley.example" },
      rugs: [{
        labelText: "Cotton 100%", labelFound: "typed", sellerSaid: "cotton", boughtWhere: "furniture", boughtYear: 2021, price: 140, currency: "GBP", widthCm: 140, lengthCm: 200,
        shine: "none", touch: "cottony", back: "flat", fringe: "part-of-rug", fringeKind: "cottony",
        incidents: ["stored", "damp"], since: "longer", treatments: ["nothing"], changes: ["spots", "smell"], household: ["humid"], room: "little", age: "2-5", matters: ["safe", "cost"],
      }],
    },
    photos: [[{ kind: "whole", weave: "flatweave", colours: ["#e9e2d2", "#5c7f9c", "#c46a4a"], damage: { kind: "mould", x: 0.3, y: 0.6, r: 0.2 } }]],
  },
  {
    minutesAgo: 4000,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Cordelia Ash", email: "cordelia.ash@mail.example" },
      rugs: [{
        labelText: "Pile: 100% wool. Backing: cotton, latex", labelFound: "typed", sellerSaid: "wool", boughtWhere: "furniture", boughtYear: 2013, price: 620, currency: "GBP", widthCm: 200, lengthCm: 300,
        shine: "none", touch: "springy", back: "cloth", fringe: "none",
        incidents: ["wear"], since: "longer", treatments: ["nothing"], changes: ["crumbles", "flat"], room: "busy", household: ["pets"], age: "10-25", matters: ["cost"],
        story: "There is a yellow sand under it every week and one corner is coming away.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "tufted", colours: ["#7a8f6a", "#d6d0b4", "#a8b48c"], damage: { kind: "flat", x: 0.5, y: 0.5, r: 0.25 } },
      { kind: "back", weave: "tufted", colours: ["#d6d0b4"] },
    ]],
  },
  {
    minutesAgo: 6100,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Evander Pryce", email: "evander@pryce.example" },
      rugs: [{
        labelFound: "none", sellerSaid: "wool", boughtWhere: "bazaar", boughtYear: 2006, price: 1100, currency: "EUR", widthCm: 200, lengthCm: 300,
        shine: "none", footprints: "none", touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "cottony",
        incidents: ["sun"], since: "longer", treatments: ["nothing"], changes: ["faded"], room: "ordinary", age: "10-25", matters: ["know", "look"],
      }],
    },
    photos: [[{ kind: "whole", weave: "knotted", colours: ["#a5423a", "#d9b8a0", "#3c4b6a", "#cfa25a"], damage: { kind: "faded", x: 0.8, y: 0.5, r: 0.35 } }]],
  },
  {
    minutesAgo: 1250,
    file: {
      channel: "web", wetNow: "no", reason: "after-cleaning",
      client: { name: "Isolde Merriweather", email: "isolde@merriweather.example" },
      rugs: [{
        labelFound: "none", sellerSaid: "wool", boughtWhere: "bazaar", boughtYear: 2015, price: 700, currency: "USD", widthCm: 120, lengthCm: 180,
        shine: "none", touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "woolly",
        incidents: ["washed-home"], since: "week", treatments: ["machine", "soap"], treatedBy: "owner", changes: ["ran"], room: "ordinary", age: "5-10", matters: ["look", "keep"],
        story: "I hired a machine. The red has gone into the cream all along one side.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#9e1f2a", "#efe3c6", "#1f2f46"], damage: { kind: "bleed", x: 0.35, y: 0.5, r: 0.3 } },
      { kind: "trouble", weave: "knotted", colours: ["#9e1f2a", "#efe3c6"], damage: { kind: "bleed", x: 0.5, y: 0.5, r: 0.4 } },
    ]],
  },
  {
    minutesAgo: 7300,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Barnaby Fenwick-Osman", email: "barnaby@fenwick.example" },
      rugs: [{
        labelText: "100% Polyamide", labelFound: "typed", sellerSaid: "other", boughtWhere: "furniture", boughtYear: 2022, price: 260, currency: "GBP", widthCm: 160, lengthCm: 230,
        shine: "satin", touch: "plastic", back: "felt", fringe: "none",
        incidents: ["spotted"], liquid: "cleaner", since: "month", treatments: ["bleach"], treatedBy: "owner", changes: ["paler"], room: "busy", age: "2-5", matters: ["cost"],
      }],
    },
    photos: [[{ kind: "whole", weave: "tufted", colours: ["#4b4f57", "#70757e"], damage: { kind: "pale", x: 0.55, y: 0.4, r: 0.12 } }]],
  },
  {
    minutesAgo: 8200,
    file: {
      channel: "web", wetNow: "no", reason: "routine",
      client: { name: "Lavinia Trescott", email: "lavinia@trescott.example" },
      rugs: [{
        labelFound: "none", sellerSaid: "nothing", boughtWhere: "gift", widthCm: 130, lengthCm: 195,
        shine: "none", touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "cottony",
        incidents: ["nothing"], changes: ["dirty", "flat"], room: "little", age: "antique", matters: ["keep", "know"], story: "There is a date woven into one end, 1291, in eastern numerals.",
      }],
    },
    photos: [[
      { kind: "whole", weave: "knotted", colours: ["#5c1f22", "#b08b5c", "#20304a", "#74623f"] },
      { kind: "back", weave: "knotted", colours: ["#5c1f22", "#b08b5c", "#20304a"] },
    ]],
  },
  {
    minutesAgo: 4700,
    file: {
      channel: "web", wetNow: "no", reason: "older-trouble",
      client: { name: "Hollis Grane", email: "hollis@grane.example" },
      rugs: [{
        labelText: "Viscose 100%", labelFound: "typed", sellerSaid: "viscose", boughtWhere: "online", boughtYear: 2022, price: 340, currency: "GBP", widthCm: 160, lengthCm: 230,
        shine: "two-tone", footprints: "stay", touch: "cool-slippery", back: "machine", fringe: "none",
        incidents: ["pet-urine"], liquid: "urine", since: "longer", treatments: ["vinegar-soda", "household-cleaner"], treatedBy: "owner", changes: ["smell", "browner", "stiff"], room: "ordinary", household: ["pets"], age: "2-5", matters: ["safe", "cost"],
      }],
    },
    photos: [[
      { kind: "whole", weave: "machine", colours: ["#c2b3a6", "#a3938a", "#ded4c9"], damage: { kind: "brown", x: 0.7, y: 0.65, r: 0.15 } },
      { kind: "label", weave: "machine", colours: ["#c2b3a6"], labelText: "VISCOSE 100%" },
    ]],
    marks: [
      { photo: 0, by: "staff", spots: { untouched: { x: 0.318, y: 0.618 }, affected: { x: 0.678, y: 0.618 } } },
      { photo: 0, by: "staff", plan: { chosen: "edge-off" } },
    ],
  },
  {
    minutesAgo: 5600,
    file: {
      channel: "web", wetNow: "no", reason: "routine",
      client: { name: "Thea and Magnus Bellwether", email: "bellwether@mail.example" },
      rugs: [
        { labelText: "jute", labelFound: "typed", sellerSaid: "other", boughtWhere: "furniture", boughtYear: 2023, price: 90, currency: "GBP", widthCm: 70, lengthCm: 250, shine: "none", touch: "coarse", back: "flat", fringe: "none", incidents: ["wear"], changes: ["dirty"], room: "busy", age: "2-5", matters: ["cost"] },
        { labelText: "100% wool", labelFound: "typed", sellerSaid: "wool", boughtWhere: "specialist", boughtYear: 2017, price: 980, currency: "GBP", widthCm: 200, lengthCm: 300, shine: "none", touch: "springy", back: "knots", fringe: "part-of-rug", fringeKind: "cottony", incidents: ["nothing"], changes: ["dirty"], room: "ordinary", age: "5-10", matters: ["look"] },
      ],
    },
    photos: [
      [{ kind: "whole", weave: "flatweave", colours: ["#b4935f", "#c9ad7d"] }],
      [{ kind: "whole", weave: "knotted", colours: ["#3a4f6b", "#c5b08a", "#8f3b33", "#e6dcc6"] }],
    ],
  },
];
