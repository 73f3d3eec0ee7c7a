import { BENCH_TESTS, type BenchTestRow } from "../../lib/trade/bench-tests";
import { FIBRE_IDS, type FibreId } from "../../lib/trade/fibres";
import { LABEL_SAYS } from "../../lib/trade/likelihoods-label";
import { CURRENCIES, QUESTIONS, type QuestionId } from "../../lib/trade/questions";
import { SINGLE_FIBRES } from "../../lib/trade/single-fibres";
import type { TriageSettings } from "../../lib/triage/assessment";
import type { Finding, Sample, Strength } from "../../lib/triage/finding";

/** One rug to judge, and its words, whole and in parts, so that a row can find the cases that speak of it. */
export interface Case { readonly findings: readonly Finding[]; readonly settings: Partial<TriageSettings>; readonly labelText?: string; readonly tokens: ReadonlySet<string> }

const told = (what: string, value: Finding["value"], strength: Strength = "told"): Finding => ({ what, value, strength, from: "client" });
const tokensOf = (findings: readonly Finding[], { priors, ...settings }: Partial<TriageSettings>): ReadonlySet<string> => {
  const seen = Object.entries(priors ?? {}).filter(([, share]) => share > 0).map(([fibre]) => fibre);
  const whole = JSON.stringify([findings, settings, seen]).match(/[a-z0-9][\w-]+/giu) ?? [];
  return new Set(whole.flatMap((w) => [w, ...w.split("-")]));
};
const caseOf = (findings: readonly Finding[], settings: Partial<TriageSettings> = {}): Case => ({ findings, settings: { benchTests: [], ...settings }, tokens: tokensOf(findings, settings) });
/** Cases made for certain rows, by table or by row. */
const madeFor = (rows: readonly string[], cases: readonly Case[]): Case[] => cases.map((c) => ({ ...c, tokens: new Set([...c.tokens, ...rows]) }));
const SIZE = told("size", { widthCm: 170, lengthCm: 240, m2: 4.08 });

/** Enough answered that little is left to ask. */
const BASE: readonly Finding[] = [
  SIZE, told("sellerSaid", "other"), told("shine", "mixed"), told("touch", "two-textures"), told("footprints", "stay"), told("back", "cloth"), told("fringe", "none"),
  told("boughtWhere", "online"), told("labelFound", "none"), told("incidents", ["spill", "spotted"]), told("liquid", "wine"), told("since", "week"),
  told("treatments", ["plain-water", "rubbed"]), told("treatedBy", "owner"), told("changes", ["ring", "stiff"]), told("age", "5-10"), told("room", "ordinary"), told("household", ["none"]), told("wetNow", "no"),
];
/** The base with some findings put in place of those of their kind. */
const but = (...findings: readonly Finding[]): readonly Finding[] => [...BASE.filter((b) => findings.every((f) => f.what !== b.what)), ...findings];
const without = (...whats: readonly string[]): readonly Finding[] => BASE.filter((b) => !whats.includes(b.what));
/** A workshop that sees hardly anything but this fibre. */
const seeing = (fibre: FibreId): Partial<TriageSettings> => ({ priors: Object.fromEntries(FIBRE_IDS.map((f) => [f, f === fibre ? 1 : 0])) });

const one = (q: QuestionId, answer: string): Finding => told(q, QUESTIONS[q].kind === "many" ? [answer] : answer);
const ANSWERS = (Object.keys(QUESTIONS) as QuestionId[]).flatMap((q) => Object.keys(QUESTIONS[q].answers).map((a) => one(q, a)));
const label = (says: string, strength: Strength = "label-typed", ground: string | null = null): Finding =>
  told("label", { says, text: says, pile: says, ground, fringe: null, doubts: null, suggests: null }, strength);

/** What each cause usually looks like. */
const TROUBLES: Readonly<Record<string, readonly Finding[]>> = {
  "browning-cleaning": [one("incidents", "washed-professional"), one("treatments", "professional-wet"), one("changes", "browner")], "browning-use": [one("incidents", "damp"), one("household", "pots"), one("changes", "browner")],
  "water-mark": [one("incidents", "water"), one("liquid", "water"), one("changes", "ring")], "pile-distortion": [one("incidents", "washed-home"), one("treatments", "machine"), told("changes", ["rough", "shaded"])],
  bleaching: [one("incidents", "spotted"), one("treatments", "bleach"), one("changes", "paler")], "dye-bleed": [one("incidents", "flood"), one("changes", "ran")],
  "urine-fresh": [one("incidents", "pet-urine"), one("liquid", "urine"), one("since", "day"), one("changes", "smell")], "urine-old": [one("incidents", "pet-urine"), one("liquid", "urine"), one("since", "month"), one("changes", "smell")],
  "food-fresh": [one("incidents", "spill"), one("liquid", "milk"), one("since", "hour"), one("changes", "dirty")], "food-old": [one("incidents", "spill"), one("liquid", "grease"), one("since", "longer"), one("changes", "dirty")],
  matting: [one("incidents", "wear"), one("room", "busy"), one("changes", "flat")], fading: [one("incidents", "sun"), one("changes", "faded")], insects: [one("incidents", "insects"), one("household", "moths"), one("changes", "bare")],
  mould: [one("incidents", "damp"), one("household", "humid"), told("changes", ["spots", "smell"])], "backing-failure": [one("back", "cloth"), one("age", "10-25"), one("changes", "crumbles")],
  shrinkage: [one("incidents", "flood"), one("changes", "wavy")], soil: [one("incidents", "nothing"), one("treatments", "nothing"), one("changes", "dirty"), one("reason", "routine")],
};

const WHOLE_PILE: Sample = { part: "pile", yarn: "whole" };
const SAMPLES: readonly Sample[] = [WHOLE_PILE, { part: "pile", yarn: "field" }, { part: "pile", yarn: "accent" }, { part: "ground", yarn: "whole" }, { part: "fringe", yarn: "whole" }];
const test = (id: string, value: Readonly<Record<string, string | number>>, of?: Sample): Finding => ({ what: `test:${id}`, value, strength: "bench", from: "bench:1", ...(of ? { of } : {}) });
const report = (fibre: string, of: Sample): Finding => ({ what: "laboratory", value: { [fibre]: 100 }, strength: "laboratory", from: "laboratory:x", of });

/** Every answer of every test that tells of a fibre, on every sample; readings of places where something is found and not. */
function tests(): Case[] {
  return Object.entries(BENCH_TESTS as Readonly<Record<string, BenchTestRow>>).flatMap(([id, row]) => Object.entries(row.readings).flatMap(([reading, r]): Case[] => {
    const made = (findings: readonly Finding[]) => madeFor([`response-${id}-${reading}`, `bench-tests/${id}`, "yarns"], findings.map((t) => caseOf([...without("fringe"), t])));
    if (r.kind === "choice" && row.speaksFor === "yarn") return made(Object.keys(r.answers).flatMap((a) => SAMPLES.map((of) => test(id, { [reading]: a }, of))));
    const place = "place" in row.readings ? { place: "affected" } : {};
    if (r.kind === "number") return made([r.least, (r.least + r.most) * 0.3, r.most * 0.62, r.most * 0.9].map((x) => test(id, { ...place, [reading]: x })));
    return r.kind === "choice" ? made(Object.keys(r.answers).map((a) => test(id, { ...place, [reading]: a }))) : [];
  }));
}
/** Readings close to the limits at which they become signs, and beside an untouched place. */
const LIMITS: readonly (readonly Finding[])[] = [
  ...[8.4, 7.5, 4.3, 4.8].map((ph) => [test("spot-ph", { place: "affected", ph })]), [test("spot-ph", { place: "affected", ph: 8.5 }), test("spot-ph", { place: "untouched", ph: 7.2 })],
  ...[21, 15].map((percent) => [test("moisture", { place: "affected", percent })]), [test("moisture", { place: "affected", percent: 16 }), test("moisture", { place: "untouched", percent: 10 })],
];

const BURN = { approach: "scorches", flame: "quick", removal: "glows", smell: "paper", ash: "feathery" };
const READINGS = Object.entries(BURN).map((_, n) => test("burn", Object.fromEntries(Object.entries(BURN).slice(0, n + 1)), SAMPLES[1]));
const price = (amount: number, year: number | null, currency: string, place = "specialist"): Finding => told("price-per-m2", { amount, currency, year, place, priceTotal: amount * 4 });
const YEARS = Array.from({ length: 26 }, (_, i) => 2000 + i);

const ALL_TESTS = { benchTests: Object.keys(BENCH_TESTS) };
const mixed = (percents: Readonly<Record<string, number>>): Case => caseOf([{ what: "laboratory", value: percents, strength: "laboratory", from: "laboratory:x", of: SAMPLES[0] as Sample }]);
/** Mixtures about the limits of what is a blend, and a report that does not quite add up. */
const MIXED: readonly Case[] = [
  { wool: 92, viscose: 8 }, { wool: 60, polyamide: 40 }, { viscose: 20, polyester: 80 }, { wool: 50, silk: 50 }, { wool: 50, viscose: 50 }, { silk: 50, viscose: 50 }, { cotton: 50, viscose: 50 },
  { silk: 30, viscose: 30, wool: 40 }, { wool: 100.8 }, { wool: 80, polyamide: 20 }, { viscose: 40, polyester: 60 },
].map((m) => madeFor(["laboratory", "blend-limits", "blends"], [mixed(m)])[0] as Case);
/** Labels as they are written, read before they are judged. */
const WRITTEN: readonly Case[] = [
  "50 % art silk 50 % viscose", "100 % pure wool", "100 % pure wool 5 % silk", "Pile: 80 % virgin wool, 20 % polyamide", "20 % virgin wool 80 % viscose", "20 % silk 80 % wool", "wool, silk", "60 % wool 40 % other fibres", "90 % wool 10 % other fibres",
  "mixed fibres", "cotton linen union", "silky touch polyester", "art silk", "100 % bamboo", "100 % rayon", "80 % WO 20 % CV", "pile: 100 % wool", "100 % wool", "face: 100 % wool", "96 % wool 4 % silk", "97 % wool 3 % silk", "unknown fibers",
  "92 % wool 8 % viscose", "60 % wool 40 % polyamide", "20 % viscose 80 % polyester", "50 % wool 50 % silk", "30 % silk 30 % viscose 40 % wool", "88 % wool 12 % other fibres", "Pile: 20 % virgin wool 80 % cotton",
].map((labelText): Case => ({ ...caseOf([SIZE]), labelText, tokens: new Set(["label", "written", ...(labelText.toLowerCase().match(/[a-z]+/gu) ?? [])]) }));
/** A pile that is as sure as it can be, and what asks for care with it. */
const SURE: readonly Case[] = madeFor(["cautions", "left-as-it-is", "verdict-limits", "care-columns"], ["wool", "polypropylene", "polyamide"].flatMap((f) => [
  ...Object.values(TROUBLES), [one("wetNow", "wet")], [one("age", "antique")],
  ...["strong", "slight"].map((bleeds) => [test("dye-bleed", { colour: "red", water: bleeds })]), [test("dye-bleed", { colour: "red", water: "none", acid: "none", alkali: "none" })],
].map((more) => caseOf(but(one("back", "knots"), ...more, label(f, "label-photo")), seeing(f as FibreId)))));
/** What is left to ask, alone and beside all the rest. */
const OPEN: readonly Case[] = [
  ...["incidents", "changes", "since", "treatments", "liquid", "treatedBy", "household", "room"].flatMap((q) => madeFor([`damage-questions/${q}`, `asked-after/${q}`, "worth-asking"],
    [caseOf(without(q)), caseOf(without(q), ALL_TESTS), caseOf(without(q, "shine", "touch", "back", "sellerSaid")), caseOf(without(q), seeing("viscose"))])),
  ...madeFor(["damage-questions", "asked-after", "picture", "fibre-questions"], [caseOf([SIZE, one("incidents", "spill")]), caseOf([SIZE, one("incidents", "spill"), one("liquid", "wine")]), caseOf([SIZE, one("treatments", "soap")]), caseOf([one("fringe", "sewn-on")])]),
  ...Object.keys(BENCH_TESTS).flatMap((id) => madeFor([`bench-tests/${id}`, `leading-readings/${id}`], [caseOf([SIZE], { benchTests: [id] })])),
  ...madeFor(["worth-asking"], FIBRE_IDS.flatMap((f) => [caseOf([label(f)], ALL_TESTS), caseOf([label(f)], { ...ALL_TESTS, ...seeing(f) }), caseOf([label(f, "label-photo")], ALL_TESTS), caseOf([label(f, "label-photo")], { ...ALL_TESTS, ...seeing(f) })])),
];
/** Two claims or looks that may not go together. */
const BESIDE: readonly Case[] = ["silk", "wool", "viscose", "cotton", "wool-and-silk"].flatMap((said) => (["touch", "shine", "back", "fringeKind", "age"] as const).flatMap((q) => Object.keys(QUESTIONS[q].answers).map((a) => caseOf([one("sellerSaid", said), one(q, a)]))));

/** Enough rugs that every row of every table bears on one of them: each answer, fibre, cause, make, age, label, price, test and report. */
export const CASES: readonly Case[] = [
  ...madeFor(["priors", "prior-bounds", "worth-asking", "always-asked"], [caseOf([])]), caseOf(BASE), ...madeFor(["losses/called-viscose-was-silk", "losses/called-silk-was-viscose", "losses/misnamed-otherwise"], [caseOf([one("matters", "know")])]),
  ...madeFor(["losses/acted-needlessly"], [caseOf([one("incidents", "nothing")])]), ...madeFor(["settles"], [caseOf([one("liquid", "urine")])]), ...ANSWERS.flatMap((a) => [caseOf([a]), caseOf(but(a))]),
  ...madeFor(["heavy-wear", "tables-end", "paid-spread", "depreciation-class", "useful-lives"], ["10-25", "25-80", "5-10"].flatMap((age) => ["knots", "machine"].flatMap((b) => ["flat", "dirty"].map((c) => caseOf(but(one("age", age), one("back", b), one("changes", c), price(300, 2015, "GBP")), seeing("wool")))))),
  ...MIXED, ...WRITTEN, ...SURE, ...OPEN, ...BESIDE, ...madeFor(["wetting"], [one("wetNow", "wet"), one("treatments", "soap"), one("incidents", "spill")].map((wet) => caseOf([wet, told("changes", ["stiff"])]))),
  ...madeFor(["grounds"], [...["cotton", "jute"].map((g) => caseOf([label("wool", "label-typed", g)])), caseOf([one("sellerSaid", "silk"), one("back", "knots")]), caseOf([one("fringeKind", "cottony")])]),
  ...madeFor(["caps", "misleading"], [caseOf([one("sellerSaid", "wool"), one("age", "antique")]), caseOf([one("sellerSaid", "viscose"), one("age", "25-80")], seeing("viscose")), caseOf([label("other")])]),
  ...madeFor(["worth-asking"], [caseOf([one("reason", "mis-sold")], ALL_TESTS), caseOf([one("sellerSaid", "silk-look")], ALL_TESTS), caseOf(but(one("shine", "two-tone")), ALL_TESTS)]),
  ...madeFor(["referrals/2", "inspection/8", "cautions/6", "urgency/18"], [caseOf([one("changes", "spots")]), caseOf([one("incidents", "flood")])]), ...madeFor(["urgency/25"], [caseOf([one("liquid", "wine")])]),
  ...madeFor(["urgency/19"], [caseOf([told("incidents", ["damp"]), told("changes", ["smell"]), one("wetNow", "no")])]), ...madeFor(["urgency/20"], [caseOf([told("incidents", ["spotted"]), told("changes", ["spots"])])]), ...madeFor(["urgency/26"], [caseOf([one("incidents", "washed-home")])]),
  ...madeFor(["who-bears-on/events"], [caseOf([one("incidents", "washed-home"), one("treatedBy", "owner"), one("changes", "browner")]), caseOf([one("treatments", "household-cleaner"), one("treatedBy", "cleaner"), one("changes", "ring")])]), ...madeFor(["triggers/22"], [caseOf(but(one("treatments", "rubbed"), one("changes", "rough")))]),
  ...madeFor(["urgency/7"], [caseOf([test("moisture", { place: "affected", percent: 40 })])]), ...madeFor(["urgency/22"], [caseOf([one("incidents", "spill"), one("reason", "just-happened")])]),
  ...madeFor(["urgency/24"], [caseOf([one("incidents", "washed-professional"), one("since", "week")]), caseOf([one("incidents", "washed-professional"), one("since", "two-days")])]),
  ...madeFor(["cautions/0"], [caseOf([...(TROUBLES["backing-failure"] ?? []), SIZE], seeing("wool"))]), ...madeFor(["cautions"], [test("dye-bleed", { colour: "red", water: "strong", acid: "none", alkali: "none" }), test("dye-bleed", { colour: "red", water: "slight", acid: "none", alkali: "none" }), one("wetNow", "wet"), one("age", "antique"), one("changes", "ran")].map((found) => caseOf([label("wool", "label-photo"), report("wool", WHOLE_PILE), one("back", "knots"), found], seeing("wool")))),
  caseOf([told("incidents", ["spill"]), told("changes", ["stiff"])]), caseOf([told("incidents", ["spill"]), told("changes", ["none"])]), caseOf([told("incidents", ["spill"]), told("changes", ["browner"])]),
  ...FIBRE_IDS.flatMap((f) => [caseOf(BASE, seeing(f)), ...Object.values(TROUBLES).map((t) => caseOf(but(...t), seeing(f)))]),
  ...FIBRE_IDS.flatMap((f) => ["under-2", "10-25", "25-80", "antique"].flatMap((age) => ["knots", "machine"].map((back) => caseOf(but(one("age", age), one("back", back), told("changes", ["none"])), seeing(f))))),
  ...["bare", "flat", "crumbles"].flatMap((c) => ["silk", "wool", "viscose"].map((f) => caseOf(but(one("age", "under-2"), one("back", "knots"), one("changes", c)), seeing(f as FibreId)))),
  ...Object.values(TROUBLES).flatMap((t) => ["hour", "day", "two-days", "week", "month", "longer"].map((s) => caseOf(but(...t, one("since", s))))), ...Object.values(TROUBLES).map((t) => caseOf([...without("since", "back"), ...t].filter((f, i, all) => all.findLastIndex((g) => g.what === f.what) === i))),
  ...LABEL_SAYS.flatMap((s) => (["label-typed", "label-photo"] as const).flatMap((by) => [caseOf([label(s, by)]), caseOf(but(label(s, by)))])),
  ...madeFor(["wicking"], ["jute", "cotton", "polyester"].map((g) => caseOf(but(label("wool", "label-typed", g), one("changes", "browner"), one("treatments", "professional-wet"))))),
  ...SINGLE_FIBRES.flatMap((f) => SAMPLES.map((of) => caseOf([...BASE, report(f, of)]))), ...SINGLE_FIBRES.map((f) => caseOf([label(f, "label-photo"), report(f, SAMPLES[0] as Sample)], seeing(f))),
  ...tests(), ...READINGS.flatMap((t) => madeFor(["reading-powers"], [caseOf([t])])), ...LIMITS.flatMap((t) => madeFor(["sign-limits"], [caseOf([...BASE, ...t])])),
  ...madeFor(["row-strength", "caps"], SINGLE_FIBRES.map((f) => caseOf([test("hypochlorite", { outcome: "stays" }, SAMPLES[0]), test("sulphuric-acid-75", { outcome: "dissolves" }, SAMPLES[0])], seeing(f)))),
  ...YEARS.flatMap((y) => CURRENCIES.map((c) => caseOf([SIZE, label("wool"), price(120, y, c)], { currency: c }))),
  ...Object.keys(QUESTIONS.back.answers).flatMap((b) => [25, 150, 2600].map((amount) => caseOf([SIZE, one("back", b), price(amount, 2024, "GBP")]))), ...[25, 150, 2600].map((amount) => caseOf([SIZE, price(amount, null, "GBP")])),
  ...Object.keys(QUESTIONS.boughtWhere.answers).map((w) => caseOf([SIZE, one("boughtWhere", w), price(90, 2024, "GBP", w)])),
  ...["routine", "what-is-it", "mis-sold", "trade"].flatMap((reason) => madeFor([`reasons/${reason}`], [caseOf([SIZE], { reason })])), ...madeFor(["reasons/telephone"], [caseOf([], { channel: "telephone" })]),
  ...madeFor(["caps", "temper", "misleading"], ["silk", "viscose"].flatMap((f) => (["told", "photo"] as const).map((by) => caseOf([told("shine", "two-tone", by), told("touch", "cool-slippery", by), told("footprints", "stay", by), told("fringeKind", "shiny", by)], seeing(f as FibreId))))),
  caseOf([told("sellerSaid", "art-silk"), told("shine", "two-tone"), told("touch", "cool-slippery"), told("age", "25-80")]),
  ...[4, 8].flatMap((deltaE) => ["yellower-darker", "yellower", "lighter-paler"].map((direction) => caseOf(but(told("colour-change", { deltaE, direction, uncertainty: 1 }), told("changes", ["stiff"]))))),
  ...["silk", "wool", "viscose"].flatMap((f) => [caseOf([...but(one("incidents", "pet-urine"), one("changes", "browner")), told("cut-down", { bindingM: 3 })], seeing(f as FibreId)), ...madeFor(["losses/claimed-without-grounds"], [caseOf(but(one("reason", "mis-sold"), one("matters", "claim"), one("sellerSaid", "silk")), seeing(f as FibreId))])]),
  ...["whole", "label", "back", "pile", "trouble"].map((kind) => caseOf([told("photo", [kind])], {})), caseOf(without("incidents", "changes"), {}), caseOf([SIZE, one("age", "25-80"), one("back", "knots")], seeing("wool")), caseOf([SIZE], { benchTests: Object.keys(BENCH_TESTS) }),
  ...["routine", "mis-sold"].map((reason) => caseOf([told("reason", reason), told("incidents", ["unknown"])], { benchTests: Object.keys(BENCH_TESTS) })),
];
