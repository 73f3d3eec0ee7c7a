import { describe, expect, it } from "vitest";
import { COLUMNS } from "../../../lib/trade/columns";
import { IMPROVEMENT } from "../../../lib/trade/improvement";
import type { RugAnswers } from "../../../lib/trade/questions";
import { asksOf } from "../../../lib/reply/asks";
import { isOnlySmellTold } from "../../../lib/reply/damage-told";
import { composeDraft } from "../../../lib/reply/draft";
import { reasonOf } from "../../../lib/reply/headline-why";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import { wordsIn } from "../../../lib/words/words";
import type { Assessment, MechanismId } from "../../../lib/triage/assessment";
import { action, inputOf, range, type Sketch } from "./make";
import { letterOf } from "./must-say/letter-of";

interface Told { changes: NonNullable<RugAnswers["changes"]>; top: MechanismId | null; answers?: RugAnswers; sketch?: Partial<Sketch>; rest?: Partial<Assessment> }
const inputFor = ({ changes, top, answers = {}, sketch = {}, rest = {} }: Told) => inputOf({
  answers: { changes, ...answers },
  sketch: {
    fibres: { wool: 0.92 }, mechanisms: top === null ? {} : { [top]: 0.9 },
    evidence: [{ what: "touch", value: "springy", strength: "told" }, { what: "changes", value: changes, strength: "told", decibans: 0 }],
    rest: { improvement: range(20, 45, 70), beyondRepair: 0.4, advice: action("inspect-and-test"), ...rest }, ...sketch,
  },
});
const says = (told: Told) => composeDraft(inputFor(told)).text;

describe("composeDraft, of what a share comes back", () => {
  it.each([
    ["soil-only", ["dirty"], "take out between a fifth and seven tenths (20–70 %) of the soil"],
    ["matting", ["flat"], "bring back between a fifth and seven tenths (20–70 %) of what its surface has lost"],
    ["fading", ["faded"], "take away between a fifth and seven tenths (20–70 %) of the change that you see"],
    ["water-mark", ["ring"], "take out between a fifth and seven tenths (20–70 %) of the mark"],
  ] as const)("calls it by what happened, of an old piece and while the fibre is open (%s)", (top, changes, said) => {
    const words = said.replace(" %", "\u00a0%");
    expect(says({ top, changes: [...changes], answers: { age: "antique" } })).toContain(`were it cleaned, that might ${words}.`);
    if (top !== "soil-only") expect(says({ top, changes: [...changes], sketch: { fibres: { wool: 0.5, viscose: 0.4 }, words: "about as likely as not" } })).toContain(`Until we know which, cleaning might ${words}.`);
  });
  it("calls it soil where nothing stands out and soil is all that was told, and trouble where it is not", () => {
    expect(says({ top: null, changes: ["dirty", "shaded"] })).toMatch(/of the soil\./);
    expect(says({ top: null, changes: ["dirty", "ring"] })).toMatch(/of the trouble\./);
  });

  const clean = (answers: RugAnswers, wetNow: "wet" | "damp" | "no") => letterOf({ answers: { labelText: "100% wool", since: "day", ...answers }, enquiry: { wetNow, reason: "just-happened" } });
  const WATER: RugAnswers = { incidents: ["water"], liquid: "water" };
  /** What it is a share of, by the letter and by the desk. */
  const bothSay = (...told: Parameters<typeof clean>) => {
    const { draft, rugs } = clean(...told);
    const { assessment } = rugs[0]!;
    const letter = toldByLetter({ title: "A rug", answers: told[0], assessment }, { enquiry: { wetNow: told[1] }, isTrade: false });
    const why = reasonOf({ ...assessment, advice: action("quote-with-limits") }, { letter, words: wordsIn("en-GB") }, { isHardlyWorth: false, isOpen: false });
    return { letter: draft.text.match(/\bof (?:the soil|whatever is to be seen(?: once it is dry)?|the mark|the trouble)/iu)?.[0].toLowerCase(), desk: why.match(/\bof (?:the soil|whatever is to be seen(?: once it is dry)?|the mark|the trouble)/iu)?.[0] };
  };
  it.each<[string, RugAnswers, "wet" | "damp" | "no", string]>([
    ["damp, and nothing else was told", { labelText: "100% viscose" }, "damp", "of whatever is to be seen once it is dry"],
    ["wet with clean water", WATER, "wet", "of whatever is to be seen once it is dry"],
    ["dry after clean water", WATER, "no", "of whatever is to be seen"],
    ["dry after clean water, and dirty", { ...WATER, changes: ["dirty"] }, "no", "of the soil"],
    ["wet with clean water, and dirty", { ...WATER, changes: ["dirty"] }, "wet", "of the soil"],
    ["dry and dirty", { changes: ["dirty"] }, "no", "of the soil"],
  ])("names soil only where it was told or nothing else was, in the letter and at the desk alike: %s", (_, answers, wetNow, share) => expect(bothSay(answers, wetNow)).toEqual({ letter: share, desk: share }));
  it("begins a paragraph of its own with how soon, where nothing of what happened stands before it", () => {
    const soon = (answers: RugAnswers) => clean(answers, "no").draft.text.split("\n\n").find((block) => block.includes("Please have your rug seen to")) ?? "";
    expect(soon(WATER)).toMatch(/^Please have your rug seen to within a day or two/u);
    expect(soon({ incidents: ["water"], liquid: "water", changes: ["ring"] })).toMatch(/^It is [^]*\. Please have your rug seen to within/u);
  });

  it("tells of soil beside a flat pile, and not where no soil was told or a mark leads", () => {
    const SOIL = /of what it has lost\. Of the soil in it more may come out/;
    expect(says({ top: "matting", changes: ["flat", "dirty"] })).toMatch(SOIL);
    expect(says({ top: "matting", changes: ["flat"] })).not.toMatch(/Of the soil/);
    expect(says({ top: "water-mark", changes: ["ring", "dirty"] })).not.toMatch(/Of the soil/);
  });
  it.each(["matting", "pile-distortion", "fading", "bleaching"] as const)("is right to: of soil more comes out than comes back of it, on every pile (%s)", (row) => {
    for (const column of COLUMNS) for (const end of ["low", "median", "high"] as const) expect(IMPROVEMENT.soil.cells[column][end]).toBeGreaterThanOrEqual(IMPROVEMENT[row].cells[column][end]);
  });
});

describe("composeDraft, where a smell is all that was told", () => {
  it.each(["soil-only", "urine-old"] as const)("gives no share of a mark or of soil, and speaks of the smell once (%s)", (top) => {
    const text = says({ top, changes: ["smell"] });
    expect(text).toContain("How far cleaning would take the smell we cannot tell: it may still come back in damp weather.");
    expect(text).toContain("that hangs on how far the smell goes");
    expect(text).not.toMatch(/70\u00a0%|of the mark|soil|another matter/);
  });
  it("gives the share again where something was seen beside it", () => {
    const text = says({ top: "urine-old", changes: ["smell", "ring"] });
    expect(text).toMatch(/of the mark\./);
    expect(text).toContain("The smell is another matter");
  });
  const smelling = (what: "incidents" | "liquid", value: string) => inputFor({ changes: ["smell"], top: "soil-only", sketch: { evidence: [{ what: "changes", value: ["smell"], strength: "told" }, { what, value: what === "liquid" ? value : [value], strength: "told" }] } });
  it.each([
    ["incidents", "stored", true], ["incidents", "damp", true], ["incidents", "sun", true], ["incidents", "wear", true], ["incidents", "insects", true], ["incidents", "nothing", true],
    ["incidents", "spill", false], ["incidents", "pet-urine", false], ["incidents", "vomit", false], ["incidents", "spotted", false], ["incidents", "water", false], ["incidents", "flood", false],
    ["incidents", "washed-home", false], ["incidents", "washed-professional", false], ["liquid", "milk", false],
  ] as const)("holds that something is to be seen only beside what leaves a mark (%s: %s)", (what, value, isAll) => {
    const input = smelling(what, value);
    expect(isOnlySmellTold(input.assessments[0]!.assessment)).toBe(isAll);
    if (isAll) expect(composeDraft(input).text).toMatch(/^(?![^]*soil)[^]*How far cleaning would take the smell we cannot tell/u);
  });
  it.each([[["smell"], false], [["none"], false], [["smell", "ring"], true]] as const)("asks for a photo of the trouble only where there is something to see (%s)", (changes, asked) => {
    const photo = { id: "trouble", kind: "photo" as const, ask: "A photo of the trouble", why: "" };
    const { assessments: [rug] } = inputFor({ top: "urine-old", changes: [...changes], rest: { nextQuestions: [photo] } });
    expect(asksOf(rug!, ["urine-old"]).photos.length > 0).toBe(asked);
  });
});

describe("composeDraft, asked whether it is worth saving", () => {
  const OPEN = "You ask whether it is worth it: from here we cannot tell, and only an inspection could.";
  const eaten = (story: string, rest: Partial<Assessment> = {}) => says({ top: "insects", changes: ["bare"], answers: { story }, rest: { improvement: null, beyondRepair: null, ...rest } });
  it("answers that it cannot be told yet where nothing else answers it, and only who asked", () => {
    expect(eaten("Moths have been at it. Is it worth saving?")).toContain(OPEN);
    expect(eaten("Moths have been at it.")).not.toContain(OPEN);
    expect(eaten("Is it worth saving?", { beyondRepair: 0.7, improvement: range(20, 45, 70) })).not.toContain(OPEN);
  });
  it("answers of each of several rugs, of none of which it is known that they ask it of that one", () => {
    const { assessments: [rug], ...input } = inputFor({ top: "insects", changes: ["bare"], answers: { story: "Moths have been at the long one. Is it worth saving?" }, rest: { improvement: null, beyondRepair: null } });
    const { text } = composeDraft({ ...input, assessments: [rug!, { ...rug!, title: "Blue, 60 × 300" }] });
    expect(text).toContain("Whether it is worth it we cannot tell from here, and only an inspection could.");
    expect(text).not.toContain("You ask whether");
  });
  it("says who is to see to it while insects or mould may spread", () => {
    const urgency = { level: "a-week" as const, why: "" };
    expect(eaten("", { urgency })).toContain("seen to within a week, if you can: what is in it can spread. This is for a pest control firm or a workshop that treats rugs for insects.");
    expect(says({ top: "mould", changes: ["spots"], rest: { urgency } })).toContain("what is in it can spread. This is for a firm equipped to treat mould in textiles.");
  });
});

describe("composeDraft, of two fibres that both may be", () => {
  const open = (wool: number, polyamide: number, sellerSaid?: RugAnswers["sellerSaid"]) => says({ top: "water-mark", changes: ["ring"], answers: { sellerSaid }, sketch: { fibres: { wool, polyamide }, words: "about as likely as not" } });
  it("says that both fit below twice the chance, and from there on which fits best", () => {
    expect(open(0.59, 0.3)).toContain("made of: wool and nylon both fit.");
    expect(open(0.6, 0.3)).toContain("made of: wool fits best, though nylon is not excluded.");
    expect(open(0.5, 0.3, "silk")).toContain("but wool and nylon both fit better.");
    expect(open(0.6, 0.2, "silk")).toContain("but wool fits best, though nylon is not excluded.");
  });
  it.each([["silk", true], ["wool-and-silk", false]] as const)("lets the price speak against silk only where all silk was sold (%s)", (sellerSaid, spoken) => {
    const price = { amount: 10, currency: "GBP", year: 2024, place: null, priceTotal: 40 };
    const text = says({ top: "water-mark", changes: ["ring"], answers: { sellerSaid }, sketch: { fibres: { viscose: 0.92 }, evidence: [{ what: "price-per-m2", value: price, strength: "told" }] } });
    expect(text.includes("speaks against silk")).toBe(spoken);
  });
});

describe("composeDraft, of what was told and asked", () => {
  it.each([["80 % wool, latex backing", "By its label latex holds its back."], ["100 % wool", "Latex seems to hold its back."]])("says of latex whether a label names it or it only seems so (%s)", (text, said) => {
    const evidence: Sketch["evidence"] = [{ what: "label", value: { text, says: "wool", pile: null }, strength: "label-typed" }, { what: "back", value: "cloth", strength: "told" }];
    expect(says({ top: "soil-only", changes: ["dirty"], sketch: { evidence, methods: { "immersion-wash": "needs-testing-first" } } })).toContain(said);
  });
  it("names a way for a photo to a client without an e-mail address, and none to another", () => {
    const input = inputFor({ top: "water-mark", changes: ["ring"], sketch: { words: "likely" }, rest: { nextQuestions: [{ id: "whole", kind: "photo", ask: "A photo of the whole rug", why: "" }] } });
    const text = (email?: null) => composeDraft({ ...input, client: { ...input.client, ...(email === null ? { email } : {}) } }).text;
    expect(text(null)).toContain("A photo of the whole rug, by post or brought to us.");
    expect(text()).toContain("A photo of the whole rug. From above");
  });
});
