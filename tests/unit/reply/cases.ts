import { FIRST_AID_SAID, range, WOOL_METHODS, type OneRug } from "./make";

export interface Case extends OneRug { says: (string | RegExp)[]; never: (string | RegExp)[] }

const told = (what: string, value: string) => ({ what, value, strength: "told" as const });
const WET_TALK = /full wash|little water/;
const LABEL_PHOTO = { id: "label", kind: "photo" as const, ask: "The label", why: "" };

/** Each list was written from what a careful workshop would say, before any draft was read. */
export const CASES: Record<string, Case> = {
  "label viscose, sold as silk, dog then spray": {
    sketch: {
      fibres: { viscose: 0.95, silk: 0.01 }, evidence: [{ what: "label", value: "viscose", strength: "label-photo" }, told("seller-said", "silk")],
      mechanisms: { "pile-distortion": 0.85, bleaching: 0.7, "urine-old": 0.4 },
      rest: { improvement: range(2, 9, 22), worse: 0.22, beyondRepair: 0.78, lifeYears: range(0.7, 1.75, 3.5), advice: { action: "advise-cut-down", why: "", referTo: null, losses: [] },
        money: { currency: "GBP", clean: range(120, 150, 190), cutDown: range(210, 260, 340), replace: null, valueToday: null } },
    },
    answers: { labelText: "100 % VISCOSE", sellerSaid: "silk", incidents: ["pet-urine"], treatments: ["household-cleaner", "rubbed"] },
    enquiry: { wetNow: "no", reason: "older-trouble" },
    says: ["Dear Ana Example,", "very likely viscose", "sold to you as silk", "“100 % VISCOSE”", "2–22 %", "hidden corner", "nearly dry", /will not wash/, /at home/, /provisional/, /inspected/, /cut away/, /damage at one side or end/, "£210 to £340", "8 months", "3½ years", "between 15 and 30 in 100", /weak when wet/, /kind regards/],
    never: [WET_TALK, /your fault|should have|foolish of/, /\b0\.\d/, "£120"],
  },
  "art silk without a label, what is it": {
    sketch: { fibres: { viscose: 0.8, lyocell: 0.1 }, words: "likely", evidence: [told("seller-said", "art-silk"), told("shine", "two-tone")],
      rest: { improvement: range(25, 55, 80), lifeYears: range(2, 4, 6.4), worse: 0.15, nextQuestions: [LABEL_PHOTO], advice: { action: "leave-alone", why: "", referTo: null, losses: [] } } },
    answers: { sellerSaid: "art-silk" }, enquiry: { reason: "what-is-it", wetNow: "no" },
    says: ["likely viscose", /Art silk/, /wood or plant pulp/, /careful guess/, "25–80 %", "between 2 and 6 years", "hidden corner", /what you told us/],
    never: ["very likely", WET_TALK, /sold to you as silk/, /is mould/],
  },
  "wool with an old coffee stain": {
    sketch: { fibres: { wool: 0.93 }, methods: WOOL_METHODS, evidence: [{ what: "label", value: "wool", strength: "label-typed" }, told("touch", "springy")], mechanisms: { "food-old": 0.9 },
      rest: { improvement: range(15, 45, 75), worse: 0.04, beyondRepair: 0.1, lifeYears: range(4, 9, 16), advice: { action: "quote-with-limits", why: "", referTo: null, losses: [] },
        money: { currency: "GBP", clean: range(150, 180, 240), cutDown: null, replace: null, valueToday: null } } },
    answers: { labelText: "Wool", liquid: "coffee-tea", since: "longer" }, enquiry: { wetNow: "no", reason: "older-trouble" },
    says: ["very likely wool", "15–75 %", /good news/, /forgiving/, "hidden corner", "£150 to £240", /estimate/, /Labels can be wrong/, "between 4 and 16 years"],
    never: [/viscose/, /provisional/, /better news/, /cut away/],
  },
  "silk by laboratory report, soiled": {
    sketch: { fibres: { silk: 0.985 }, words: "virtually certain", methods: { ...WOOL_METHODS, "immersion-wash": "needs-testing-first", "low-moisture": "needs-testing-first" },
      evidence: [{ what: "laboratory", value: "silk", strength: "laboratory" }], mechanisms: { "soil-only": 0.9 }, rest: { improvement: range(70, 88, 96), lifeYears: range(12, 25, 38), worse: 0.05, advice: { action: "routine-clean", why: "", referTo: null, losses: [] } } },
    answers: { sellerSaid: "silk" }, enquiry: { reason: "routine" },
    says: ["very likely silk", /laboratory report/, /good news/, "70–96 %", "hidden corner", "between 12 and 38 years"],
    never: [/certain/, /although it was sold/, /weak when wet/],
  },
  "silk or viscose, bargain price": {
    sketch: { fibres: { viscose: 0.48, silk: 0.4 }, words: "about as likely as not", evidence: [told("price-per-m2", "60")],
      rest: { improvement: range(10, 45, 85), lifeYears: range(1.5, 5, 28), nextQuestions: [LABEL_PHOTO, { id: "back", kind: "photo", ask: "The back of a folded corner", why: "" }], advice: { action: "ask-for-more", why: "", referTo: null, losses: [] } } },
    answers: { sellerSaid: "silk", price: 200 }, enquiry: { reason: "what-is-it" },
    says: [/cannot tell yet/, "viscose and silk", "10–85 %", /label/, /back of a folded corner/, "hidden corner", /may hold viscose/, /depends on the fibre/],
    never: ["likely viscose", "although it was sold to you", /silk is a strong/, /\d+ years?\b/],
  },
  "urine, an hour ago, viscose": {
    sketch: { fibres: { viscose: 0.93 }, evidence: [{ what: "label", value: "viscose", strength: "label-photo" }], mechanisms: { "urine-fresh": 0.95 },
      rest: { improvement: range(3, 18, 42), worse: 0.2, lifeYears: range(0.5, 2, 4), urgency: { level: "hours", why: "" }, firstAid: FIRST_AID_SAID, advice: { action: "first-aid", why: "", referTo: null, losses: [] } } },
    answers: { incidents: ["pet-urine"], liquid: "urine", since: "hour" }, enquiry: { wetNow: "wet", reason: "just-happened" },
    says: [/^Dear Ana Example,\n\nPlease do this first, if you have not yet/, /do not rub/, "3–42 %", /smell/, /damp weather/, "hidden corner", "between 6 months and 4 years more"],
    never: ["112", /sewage|plug/i, WET_TALK, /enzyme|vinegar solution|peroxide|pH/, "00 ml"],
  },
  "dye ran after a wash, wool": {
    sketch: { fibres: { wool: 0.9 }, methods: WOOL_METHODS, evidence: [told("touch", "springy")], mechanisms: { "dye-bleed": 0.92 }, rest: { improvement: range(5, 22, 50), beyondRepair: 0.45, worse: 0.05, lifeYears: range(3, 8, 15) } },
    answers: { changes: ["ran"] }, enquiry: { reason: "after-cleaning" },
    says: [/dye has run/, /keep it dry/, "5–50 %", "hidden corner"],
    // No price is known, so that no cost can be set against a worth.
    never: [/certainly|guarantee/, /worth the cost/],
  },
  "moths": {
    sketch: { fibres: { wool: 0.9 }, methods: WOOL_METHODS, evidence: [told("touch", "springy")], mechanisms: { insects: 0.9 }, rest: { lifeYears: range(1, 4, 9), advice: { action: "refer", why: "", referTo: "pest control", losses: [] } } },
    answers: { incidents: ["insects"], household: ["moths"] }, enquiry: { reason: "older-trouble" },
    says: [/no insecticide/, /pest control/, /closed bag/, /repair/, /dry and apart/, "between 1 and 9 years more"],
    never: [/naphthalene|permethrin|mothball|spray it/i],
  },
  "black spots, mouldy smell": {
    sketch: { fibres: { cotton: 0.7 }, words: "likely", methods: WOOL_METHODS, evidence: [told("touch", "cottony")], mechanisms: { mould: 0.88 }, rest: { improvement: range(5, 25, 55), urgency: { level: "two-days", why: "" }, lifeYears: range(1, 3, 6) } },
    answers: { changes: ["spots", "smell"], incidents: ["damp"] }, enquiry: {},
    says: [/Mould can harm your health/, /do not touch/, /children/, "5–55 %"],
    never: [/bleach it|vinegar|brush it off/],
  },
  "latex back crumbling on a tufted rug": {
    sketch: { fibres: { wool: 0.85 }, words: "likely", methods: { ...WOOL_METHODS, "immersion-wash": "ruled-out", "wet-hand-clean": "ruled-out" }, evidence: [told("back", "cloth")], mechanisms: { "backing-failure": 0.9 }, rest: { lifeYears: range(0.4, 1.5, 3) } },
    answers: { back: "cloth", changes: ["crumbles"] }, enquiry: {},
    says: [/latex/, /repair/, /will not wash/, "between 4 months and 3 years more"],
    never: [/burst, mat and turn brown/],
  },
  "antique": {
    sketch: { fibres: { wool: 0.92 }, methods: WOOL_METHODS, evidence: [{ what: "photo", value: "back", strength: "photo" }], mechanisms: { "soil-only": 0.7 }, rest: { improvement: range(60, 85, 95), advice: { action: "refer", why: "", referTo: "conservator", losses: [] } } },
    answers: { age: "antique" }, enquiry: { reason: "routine" },
    says: [/conservator/, /valuer/, /hidden corner/, "60–95 %", /your photos/],
    never: [/years and|between \d+ and \d+ years/, /£/, /forgiving/, /worth about/],
  },
  "another cleaner, turning brown": {
    sketch: { fibres: { viscose: 0.94 }, evidence: [{ what: "label", value: "viscose", strength: "label-typed" }], mechanisms: { "browning-cleaning": 0.96 },
      rest: { improvement: range(12, 30, 47), worse: 0.25, beyondRepair: 0.5, lifeYears: range(0.5, 2, 4), urgency: { level: "hours", why: "" }, firstAid: FIRST_AID_SAID, advice: { action: "first-aid", why: "", referTo: null, losses: [] } } },
    answers: { treatedBy: "me-trade", treatments: ["professional-wet"] }, enquiry: { wetNow: "damp", reason: "trade" }, client: { name: "Ivo Sample", isTrade: true },
    says: ["01632 960001", /ring us/, /insurer/, /customer’s rug/, "12–47 %", "hidden corner", /your local law decides/, /before you do anything/],
    never: [/acetic|citric|hydrosulphite|reducing agent|pH|\bml\b|per litre/, /your fault|liable|covered by/, /at home/, /your rug/],
  },
  "mis-sold, a claim": {
    sketch: { fibres: { viscose: 0.95 }, evidence: [{ what: "label", value: "viscose", strength: "label-photo" }, { what: "sellerSaid", value: "silk", strength: "told" }], rest: { improvement: range(25, 55, 80), lifeYears: range(2, 4, 6), advice: { action: "inspect-and-test", why: "", referTo: null, losses: [] } } },
    answers: { sellerSaid: "silk", matters: ["claim"], labelText: "viscose 100%" }, enquiry: { reason: "mis-sold" },
    says: [/not legal advice/, /your local law decides/, /ask the seller in writing/, /weigh our word/, "hidden corner"],
    never: [/fraud|lied|cheat|deceiv|compensation|refund/i],
  },
  "nothing known": {
    sketch: { fibres: { wool: 0.26, viscose: 0.2 }, words: "unlikely", methods: {}, rest: { nextQuestions: [{ id: "whole", kind: "photo", ask: "The whole rug", why: "" }, LABEL_PHOTO, { id: "incidents", kind: "question", ask: "What happened to it?", why: "" }], advice: { action: "ask-for-more", why: "", referTo: null, losses: [] } } },
    title: "",
    says: [/Thank you for writing/, /photo/i, /the label/i, /What happened to it\?/, /too little to tell/],
    never: [/wool|viscose/, /\d %/, /years/],
  },
  "flood water, the red has run": {
    sketch: { fibres: { wool: 0.9 }, words: "likely", methods: WOOL_METHODS, evidence: [told("touch", "springy")], mechanisms: { "dye-bleed": 0.95, mould: 0.5 },
      rest: { improvement: range(6, 36, 75), beyondRepair: 0.67, lifeYears: range(3, 19, 51), urgency: { level: "hours", why: "" }, firstAid: FIRST_AID_SAID, advice: { action: "first-aid", why: "", referTo: null, losses: [] } } },
    answers: { incidents: ["flood"], changes: ["ran", "smell"] }, enquiry: { wetNow: "wet", reason: "just-happened" },
    says: [/Flood and waste water can make you ill/, /not even to blot it/, /flood-damage firm/, /no more water/],
    never: [/good news/, /keep it dry/, /\d %/, /years/, /worth/, /full wash/, /Cleaning would cost/],
  },
  "a vase of clean water, a minute ago": {
    sketch: { fibres: { viscose: 0.5, lyocell: 0.2 }, words: "about as likely as not", evidence: [told("seller-said", "art-silk")], mechanisms: { "soil-only": 0.51, "water-mark": 0.3 },
      rest: { improvement: range(7, 48, 83), lifeYears: range(0.5, 2.4, 6.5), urgency: { level: "hours", why: "" }, firstAid: FIRST_AID_SAID, advice: { action: "first-aid", why: "", referTo: null, losses: [] } } },
    answers: { incidents: ["water"], liquid: "water", since: "hour" }, enquiry: { wetNow: "wet", reason: "just-happened" },
    says: [/may dry and leave no mark/, "7–83 %", /depends on the fibre/],
    never: [/soil and nothing worse/, /of the soil/, /6 months and 6/],
  },
  "art silk worn flat, nobody claims": {
    sketch: { fibres: { viscose: 0.8 }, words: "likely", evidence: [told("seller-said", "art-silk")], mechanisms: { matting: 0.98 },
      rest: { improvement: range(0, 9, 23), beyondRepair: 0.99, worse: 0.21, lifeYears: range(0.1, 0.9, 2), advice: { action: "advise-claim-or-replacement", why: "", referTo: null, losses: [] },
        money: { currency: "EUR", clean: range(150, 180, 240), cutDown: null, replace: range(280, 400, 540), valueToday: null } } },
    answers: { sellerSaid: "art-silk", incidents: ["wear"], changes: ["flat", "dirty"] }, enquiry: { wetNow: "no", reason: "routine" },
    says: [/pressed it flat or worn it/, /use it as it is for as long as it serves, and spend nothing/, "€275 to €550", "0–23 %", /If it is cleaned at all/, "between 1 month and 2 years more", /before you decide/],
    never: [/claim/i, /We would clean it/, /rather not take your money/, /To arrange one/],
  },
  "sick on a polypropylene rug that costs less than its cleaning": {
    sketch: { fibres: { polypropylene: 0.9 }, methods: { ...WOOL_METHODS, "at-home": "needs-testing-first" }, evidence: [{ what: "label", value: "polypropylene", strength: "label-typed" }], mechanisms: { "food-fresh": 0.86 },
      rest: { improvement: range(26, 85, 98), beyondRepair: 0.95, worse: 0.03, lifeYears: range(0.25, 1.2, 3), advice: { action: "advise-claim-or-replacement", why: "", referTo: null, losses: [] },
        money: { currency: "GBP", clean: range(150, 200, 250), cutDown: null, replace: range(93, 130, 180), valueToday: null } } },
    answers: { labelText: "polypropylene", incidents: ["vomit"] }, enquiry: { wetNow: "no", reason: "just-happened" },
    says: [/rather not take your money/, "£90 to £180", /the maker’s own care label/, "between 3 months and 3 years more"],
    never: [/We would clean it/, /Please do not clean it at home/, /£150/],
  },
  "wool and viscose browned by damp, even odds of being worth it": {
    sketch: { fibres: { "wool-viscose": 0.9 }, evidence: [{ what: "label", value: "wool-viscose", strength: "label-typed" }], mechanisms: { "browning-cleaning": 0.7 },
      rest: { improvement: range(27, 75, 91), beyondRepair: 0.52, worse: 0.34, lifeYears: range(1, 2, 5), advice: { action: "advise-claim-or-replacement", why: "", referTo: null, losses: [] },
        money: { currency: "GBP", clean: range(170, 200, 270), cutDown: null, replace: range(500, 2000, 4000), valueToday: range(100, 180, 300) } } },
    answers: { changes: ["browner"] }, enquiry: { wetNow: "no", reason: "older-trouble" },
    says: [/about as likely as not that saving it/, /before someone has seen it/, "27–91 %"],
    never: [/rather not take your money/, /£500/],
  },
  "wine on silk, everything asked already but pets and floor": {
    sketch: { fibres: { silk: 0.8 }, words: "likely", methods: WOOL_METHODS, evidence: [told("touch", "warm")], mechanisms: { "food-fresh": 0.98 },
      rest: { improvement: range(30, 63, 88), lifeYears: range(8, 41, 101), nextQuestions: [{ id: "household", kind: "question", ask: "Does any of this apply?", why: "" }], firstAid: FIRST_AID_SAID, advice: { action: "first-aid", why: "", referTo: null, losses: [] } } },
    answers: { liquid: "wine" }, enquiry: { wetNow: "wet", reason: "just-happened" },
    says: [/good news/, "between 8 years and some decades more; from here we cannot tell it closer"],
    never: [/would tell us more/, /101/],
  },
  "faded by the sun, wool and silk": {
    sketch: { fibres: { "wool-silk": 0.8 }, words: "likely", methods: WOOL_METHODS, evidence: [told("seller-said", "wool-and-silk")], mechanisms: { fading: 0.9 }, rest: { improvement: range(0, 0, 4), lifeYears: range(8, 15, 26), advice: { action: "leave-alone", why: "", referTo: null, losses: [] } } },
    answers: { sellerSaid: "wool-and-silk", incidents: ["sun"] }, enquiry: { reason: "older-trouble" },
    says: [/light has faded/, "0–4 %", /next to nothing/, /sorry/],
    never: [/good news/, /although it was sold/],
  },
};
