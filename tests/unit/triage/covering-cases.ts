import { BENCH_TESTS, type BenchTestRow } from "../../../lib/trade/bench-tests";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { LABEL_SAYS } from "../../../lib/trade/likelihoods-label";
import { QUESTIONS, type QuestionId } from "../../../lib/trade/questions";
import { SINGLE_FIBRES } from "../../../lib/trade/single-fibres";
import type { TriageSettings } from "../../../lib/triage/assessment";
import type { Finding, Sample, Strength } from "../../../lib/triage/finding";

/** One rug to judge, and all its words as text, so that a row can find the cases that speak of it. */
export interface Case { readonly findings: readonly Finding[]; readonly settings: Partial<TriageSettings>; readonly words: string }

const told = (what: string, value: Finding["value"], strength: Strength = "told"): Finding => ({ what, value, strength, from: "client" });
const caseOf = (findings: readonly Finding[], settings: Partial<TriageSettings> = {}): Case => ({ findings, settings: { benchTests: [], ...settings }, words: JSON.stringify([findings, settings]) });
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
const only = (fibre: FibreId): Partial<TriageSettings> => ({ priors: Object.fromEntries(FIBRE_IDS.map((f) => [f, f === fibre ? 1 : 0])) });

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

const SAMPLES: readonly Sample[] = [{ part: "pile", yarn: "whole" }, { part: "pile", yarn: "field" }, { part: "pile", yarn: "accent" }, { part: "ground", yarn: "whole" }, { part: "fringe", yarn: "whole" }];
const test = (id: string, value: Readonly<Record<string, string | number>>, of?: Sample): Finding => ({ what: `test:${id}`, value, strength: "bench", from: "bench:1", ...(of ? { of } : {}) });
const report = (fibre: string, of: Sample): Finding => ({ what: "laboratory", value: { [fibre]: 100 }, strength: "laboratory", from: "laboratory:x", of });

/** Every answer of every test that tells of a fibre, on every sample; readings of places where something is found and not. */
function tests(): Finding[] {
  return Object.entries(BENCH_TESTS as Readonly<Record<string, BenchTestRow>>).flatMap(([id, row]) => Object.entries(row.readings).flatMap(([reading, r]): Finding[] => {
    if (r.kind === "choice" && row.speaksFor === "yarn") return Object.keys(r.answers).flatMap((a) => SAMPLES.map((of) => test(id, { [reading]: a }, of)));
    const place = "place" in row.readings ? { place: "affected" } : {};
    if (r.kind === "number") return [r.least, (r.least + r.most) * 0.3, r.most * 0.62, r.most * 0.9].map((x) => test(id, { ...place, [reading]: x }));
    return r.kind === "choice" ? Object.keys(r.answers).map((a) => test(id, { ...place, [reading]: a })) : [];
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

/** Enough rugs that every row of every table bears on one of them: each answer, fibre, cause, make, age, label, price, test and report. */
export const CASES: readonly Case[] = [
  caseOf([]), caseOf(BASE), ...ANSWERS.flatMap((a) => [caseOf([a]), caseOf(but(a))]),
  caseOf([told("incidents", ["spill"]), told("changes", ["stiff"])]), caseOf([told("incidents", ["spill"]), told("changes", ["none"])]), caseOf([told("incidents", ["spill"]), told("changes", ["browner"])]),
  ...FIBRE_IDS.flatMap((f) => [caseOf(BASE, only(f)), ...Object.values(TROUBLES).map((t) => caseOf(but(...t), only(f)))]),
  ...FIBRE_IDS.flatMap((f) => ["under-2", "10-25", "25-80", "antique"].flatMap((age) => ["knots", "machine"].map((back) => caseOf(but(one("age", age), one("back", back), told("changes", ["none"])), only(f))))),
  ...["bare", "flat", "crumbles"].flatMap((c) => ["silk", "wool", "viscose"].map((f) => caseOf(but(one("age", "under-2"), one("back", "knots"), one("changes", c)), only(f as FibreId)))),
  ...Object.values(TROUBLES).flatMap((t) => ["hour", "day", "two-days", "week", "month", "longer"].map((s) => caseOf(but(...t, one("since", s))))), ...Object.values(TROUBLES).map((t) => caseOf([...without("since", "back"), ...t].filter((f, i, all) => all.findLastIndex((g) => g.what === f.what) === i))),
  ...LABEL_SAYS.flatMap((s) => (["label-typed", "label-photo"] as const).flatMap((by) => [caseOf([label(s, by)]), caseOf(but(label(s, by)))])),
  ...["jute", "cotton", "polyester"].map((g) => caseOf(but(label("wool", "label-typed", g), one("changes", "browner"), one("treatments", "professional-wet")))),
  ...SINGLE_FIBRES.flatMap((f) => SAMPLES.map((of) => caseOf([...BASE, report(f, of)]))), ...SINGLE_FIBRES.map((f) => caseOf([label(f, "label-photo"), report(f, SAMPLES[0] as Sample)], only(f))),
  ...tests().map((t) => caseOf([...without("fringe"), t])), ...READINGS.map((t) => caseOf([t])), ...LIMITS.map((t) => caseOf([...BASE, ...t])),
  ...SINGLE_FIBRES.flatMap((f) => [caseOf([test("hypochlorite", { outcome: "stays" }, SAMPLES[0]), test("sulphuric-acid-75", { outcome: "dissolves" }, SAMPLES[0])], only(f))]),
  ...YEARS.flatMap((y) => ["EUR", "GBP", "USD"].map((c) => caseOf([SIZE, label("wool"), price(120, y, c)], { currency: c }))),
  ...Object.keys(QUESTIONS.back.answers).flatMap((b) => [25, 150, 2600].map((amount) => caseOf([SIZE, one("back", b), price(amount, 2024, "GBP")]))), ...[25, 150, 2600].map((amount) => caseOf([SIZE, price(amount, null, "GBP")])),
  ...Object.keys(QUESTIONS.boughtWhere.answers).map((w) => caseOf([SIZE, one("boughtWhere", w), price(90, 2024, "GBP", w)])),
  ...["routine", "what-is-it", "mis-sold", "trade"].map((reason) => caseOf([SIZE], { reason })), caseOf([], { channel: "telephone" }),
  ...["silk", "viscose"].flatMap((f) => (["told", "photo"] as const).map((by) => caseOf([told("shine", "two-tone", by), told("touch", "cool-slippery", by), told("footprints", "stay", by), told("fringeKind", "shiny", by)], only(f as FibreId)))),
  ...[4, 8].flatMap((deltaE) => ["yellower-darker", "yellower", "lighter-paler"].map((direction) => caseOf(but(told("colour-change", { deltaE, direction, uncertainty: 1 }), told("changes", ["stiff"]))))),
  ...["silk", "wool", "viscose"].flatMap((f) => [caseOf([...but(one("incidents", "pet-urine"), one("changes", "browner")), told("cut-down", { bindingM: 3 })], only(f as FibreId)), caseOf(but(one("reason", "mis-sold"), one("matters", "claim"), one("sellerSaid", "silk")), only(f as FibreId))]),
  ...["whole", "label", "back", "pile", "trouble"].map((kind) => caseOf([told("photo", [kind])], {})), caseOf(without("incidents", "changes"), {}), caseOf([SIZE, one("age", "25-80"), one("back", "knots")], only("wool")), caseOf([SIZE], { benchTests: Object.keys(BENCH_TESTS) }),
  ...["routine", "mis-sold"].map((reason) => caseOf([told("reason", reason), told("incidents", ["unknown"])], { benchTests: Object.keys(BENCH_TESTS) })),
];
