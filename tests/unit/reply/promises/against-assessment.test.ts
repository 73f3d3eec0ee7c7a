import { describe, expect, it } from "vitest";
import { CAUTION_WORDS } from "../../../../lib/reply/paragraphs/causes";
import type { Assessment } from "../../../../lib/triage/assessment";
import { checkLetter, checkSentence, knownOf, WORDS_AND_PHOTOS, type Known } from "../../../../lib/reply/promises/check";
import { FIRST_AID_SAID, WOOL_METHODS, assessmentOf, range } from "../make";
import { AGAINST_CLASSES } from "./against-classes";
import { NO_UNTESTED_PLANS, UNTESTED_PLANS } from "./plans";

const known = (rest: Parameters<typeof assessmentOf>[0]["rest"], fibres: Parameters<typeof assessmentOf>[0]["fibres"] = { viscose: 0.72 }, strength: "told" | "bench" = "told", more: Parameters<typeof assessmentOf>[0]["evidence"] = []): Known =>
  ({ assessment: assessmentOf({ fibres, words: "likely", evidence: [{ what: "touch", value: "cool-slippery", strength }, ...more], rest: { improvement: range(10, 30, 55), lifeYears: range(1, 2.5, 5), money: { currency: "EUR", clean: range(100, 115, 160), cutDown: null, replace: null, valueToday: null }, ...rest } }) });
const rules = (sentence: string, k: Known = known({})) => checkSentence(sentence, k).map((o) => o.rule);

describe("a sentence against its assessment", () => {
  it.each<[string, string[]]>([
    ["It is likely viscose.", []],
    ["It is very likely viscose.", ["certainty"]],
    ["It is probably silk.", ["certainty"]],
    ["It is more likely viscose than silk.", []],
    ["Between 10 and 55 per cent of the mark may go.", []],
    ["Between 12 and 60 % of the mark may go.", []],
    ["Up to 60 % of the mark may go.", []],
    ["Up to 70 % of the mark may go.", ["number"]],
    ["Up to two thirds of the mark may go.", ["number"]],
    ["Between 40 and 55 % of the mark may go.", ["number"]],
    ["Between 10 and 80 % of the mark may go.", ["number"]],
    ["Half of the mark will probably go.", []],
    ["Most of the mark may go.", []],
    ["We expect nearly all of the mark to go.", ["number"]],
    ["Nine tenths of the stain may come out.", ["number"]],
    ["The mark will probably go.", ["number"]],
    ["We expect it to serve another ten years.", ["number"]],
    ["We expect it to serve three years more.", []],
    ["In ordinary use it has between 1 and 5 years left.", []],
    ["In ordinary use it has between 4 and 9 years left.", ["number"]],
    ["It may last between one and five years.", []],
    ["It should serve 1 to 5 years more.", []],
    ["It should serve between 1 year and 5 years.", []],
    ["It should serve four to nine years more.", ["number"]],
    ["It may last between four and nine years.", ["number"]],
    ["It should serve another 5 years.", ["number"]],
    ["We doubt that it has more than 5 years left.", []],
    ["You bought it 12 years ago, and it shows no moth.", []],
    ["Cleaning would cost between €100 and €160.", []],
    ["Cleaning would cost about €60.", ["number"]],
  ])("%s", (sentence, expected) => expect(rules(sentence)).toEqual(expected));

  // Viscose as it is drawn here: bath and water ruled out, nearly dry and solvent only after a test.
  it.each<[string, string[]]>([
    ["We would wash it in a bath after a test in a hidden corner.", ["harm"]],
    ["We will wash it.", ["harm"]],
    ["We would clean it by hand with water, after a test.", ["harm"]],
    ["We can steam it once it has been tested.", ["harm"]],
    ["It could be washed once the dyes were tested.", ["harm"]],
    ["We would clean it nearly dry, and only after a test in a hidden corner.", []],
    ["We will not wash it, and please do not clean it at home.", []],
    ["We can tell you more once we have seen where the water stood.", []],
    ["We would not clean it with water.", []],
    ["We would clean it with a dry solvent, never in a bath, and only after a test.", []],
    ["Dry-cleaning with a solvent may help, after a test.", []],
    ["Cleaning with very little moisture may help, after a test.", []],
    ["A wash may help, after a test.", ["harm"]],
  ])("holds what is offered against what is ruled out: %s", (sentence, expected) => expect(rules(sentence)).toEqual(expected));
  it("offers a way that the assessment leaves", () =>
    expect(checkSentence("We will wash it.", known({}))[0]?.suggestion).toBe("What the assessment leaves, tested first: dusting, cleaning with very little moisture, dry cleaning with a solvent."));
  it("holds a way that is only said to help against what is ruled out", () => {
    const noSolvent = known({ methods: assessmentOf({ fibres: { viscose: 0.9 } }).methods.map((m) => (m.method === "solvent-dry" ? { ...m, verdict: "ruled-out" as const } : m)) });
    expect(rules("Dry-cleaning with a solvent may help, after a test.", noSolvent)).toEqual(["harm"]);
  });
  it("lets a way be offered that is not ruled out", () =>
    expect(rules("We would wash it in a bath after a test in a hidden corner.", { assessment: assessmentOf({ fibres: { wool: 0.9 }, methods: WOOL_METHODS }) })).toEqual([]));

  it.each<[string, string[]]>([
    ["There is a chance of about 2 in 100 that cleaning makes it worse.", ["number"]],
    ["There is a chance of about 14 in 100 that cleaning makes it worse.", ["number"]],
    ["There is a chance of about 15 in 100 that cleaning makes it worse.", []],
    ["There is a real chance, about 22 in 100, that cleaning makes it worse.", []],
    ["There is a risk of 30 % that cleaning makes it worse.", []],
  ])("holds a chance of harm against one of 22 in 100: %s", (sentence, expected) => expect(rules(sentence, known({ worse: 0.22 }))).toEqual(expected));

  it.each<[string, string[]]>([
    ["A new one costs about £2,000 to £3,000.", ["number"]], ["A new rug like it costs around £100 to £200.", ["number"]],
    ["A new one costs about £550 to £1,030.", []], ["A new one costs about £500 to £1,100.", []],
  ])("holds the price of a new one against £546 to £1,036: %s", (sentence, expected) =>
    expect(rules(sentence, known({ money: { currency: "GBP", clean: null, cutDown: null, replace: range(546, 750, 1036), valueToday: null } }))).toEqual(expected));

  it.each<[string, string[]]>([
    ["It may last up to four years.", []], ["It has perhaps half a year to four years left.", []], ["It may have between a few months and 3 years left.", []], ["It has perhaps 6 months to 4 years left.", []], ["We expect it to serve between 4 and 20 months more.", []],
    ["We expect it to serve between 4 and 90 months more.", ["number"]],
    ["It has perhaps three to four years left.", ["number"]], ["It may last up to nine years.", ["number"]],
  ])("holds years against four months to four years: %s", (sentence, expected) => expect(rules(sentence, known({ lifeYears: range(0.3, 1.8, 4.02) }))).toEqual(expected));
  it("tells a life cut short at its lower end from one that is too long", () => {
    const whys = (say: string) => checkSentence(say, known({ lifeYears: range(0.3, 1.8, 4.02) })).map((o) => o.why);
    expect(whys("It has perhaps three to four years left.")).toEqual(["This leaves out the lower end of what the assessment gives."]);
    expect(whys("It has perhaps three to nine years left.")).toEqual(["This promises a longer life than the assessment."]);
  });

  it("tells the range as the letter does, to the same step", () => {
    expect(checkSentence("It should serve between 20 and 30 years more.", known({ lifeYears: range(0.7, 3.7, 9.1) })).map((n) => n.suggestion)).toContain("It is between 8\u00a0months and 9\u00a0years in ordinary use.");
    const money = { currency: "GBP", clean: range(152, 178, 247), cutDown: null, replace: null, valueToday: null };
    expect(checkSentence("Cleaning would cost about £40 to £60.", known({ money })).map((n) => n.suggestion)).toContain("The range is £150 to £250.");
  });
  it("suggests the range in the figures of the letter", () =>
    expect(checkSentence("Between 5 and 95 % of the mark may go.", known({ improvement: range(0.13, 8, 22.6) }))[0]?.suggestion).toBe("The range is 0–23\u00a0%."));
  it("lets no number stand where the assessment gives none", () => {
    expect(rules("Between 10 and 55 % of the mark may go.", known({ improvement: null }))).toEqual(["number"]);
    expect(rules("A third of the mark may lift.", known({ improvement: null }))).toEqual(["number"]);
    expect(rules("It should serve between 20 and 40 years.", known({ lifeYears: null }))).toEqual(["number"]);
  });
  it("lets a tested fibre be named, and no other", () => {
    const tested = known({}, { viscose: 0.97 }, "bench");
    expect(rules("The pile is viscose.", tested)).toEqual([]);
    expect(rules("The pile is silk.", tested)).toEqual(["certainty"]);
    expect(rules("The pile is viscose.", known({}, { viscose: 0.97 }))).toEqual(["certainty"]);
  });
  it("lets a rug be given up once somebody who had it in hand found it beyond repair", () => {
    expect(rules("Your rug is beyond economic repair.")).toEqual(["verdict"]);
    expect(rules("Your rug is beyond economic repair.", { ...known({}), inspection: { isBeyondRepair: false } })).toEqual(["verdict"]);
    expect(rules("Your rug is beyond economic repair.", { ...known({}), inspection: { isBeyondRepair: true } })).toEqual([]);
  });
  it("lets nothing by for an inspection that flood water was told of after", () => {
    const flooded = (isOvertaken: boolean) => knownOf([{ ...known({}), inspection: { isBeyondRepair: true, isOvertaken } }]);
    expect(rules("Your rug is beyond economic repair.", flooded(false))).toEqual([]);
    expect(rules("Your rug is beyond economic repair.", flooded(true))).toEqual(["verdict"]);
  });
  it("lets work be priced once somebody has inspected the rug, and nothing else be one figure", () => {
    const inspected: Known = { ...known({}), inspection: { isBeyondRepair: false } };
    expect(rules("Cleaning costs £150.")).toEqual(["number"]);
    expect(rules("Cleaning costs £150.", inspected)).toEqual([]);
    expect(rules("Cleaning costs £60.", inspected)).toEqual(["number"]);
    expect(rules("Cleaning would cost about £100.")).toEqual(["number"]);
    expect(rules("Cleaning would cost about £100.", inspected)).toEqual([]);
    for (const [k, expected] of [[{ ...known({ money: null }), inspection: null }, ["number"]], [{ ...known({ money: null }), inspection: { isBeyondRepair: false } }, []]] as const) expect(rules("Cleaning costs about £150.", k)).toEqual(expected);
    for (const figure of ["It is worth £900.", "It has another ten years in it.", "Cleaning costs £150 and it will last 9 years."]) expect(rules(figure, inspected)).toContain("number");
  });
});

describe("a price for cleaning that is nought", () => {
  const priced = (low: number, high: number) => known({ money: { currency: "GBP", clean: range(low, high, high), cutDown: null, replace: null, valueToday: null } });
  it("is below every price of the workshop but nought", () => {
    expect(rules("Cleaning would cost about £0.", priced(5, 8))).toEqual(["number"]);
    expect(rules("Cleaning would cost about £4.", priced(5, 8))).toEqual([]);
    expect(rules("Cleaning would cost about £0.", priced(0, 0))).toEqual([]);
  });
});

describe.each(AGAINST_CLASSES)("a sentence against its assessment: $meaning", ({ rule, assessment, over, honest }) => {
  const found = (say: string) => checkSentence(say, { assessment });
  it("is held to twelve and more of each", () => expect(Math.min(over.length, honest.length)).toBeGreaterThanOrEqual(12));
  it("catches all but one of those that the assessment does not carry, for the right reason", () => {
    const missed = over.filter((say) => !found(say).some((o) => o.rule === rule));
    expect(missed.length, missed.join("\n")).toBeLessThanOrEqual(1);
  });
  it("leaves all but one of the honest ones alone", () => {
    const alarmed = honest.filter((say) => found(say).length > 0);
    expect(alarmed.length, alarmed.map((say) => `${found(say).map((o) => o.why).join()}: ${say}`).join("\n")).toBeLessThanOrEqual(1);
  });
});

describe("a sentence against another assessment", () => {
  const spoken = (say: string, rest: Parameters<typeof assessmentOf>[0]) => checkSentence(say, { assessment: assessmentOf(rest) }).map((o) => o.rule);
  it.each<[string, number, string[]]>([
    ["It is likely that urine did this.", 0.63, ["certainty"]], ["It is likely that urine did this.", 0.64, []], ["It is unlikely that urine did this.", 0.35, []], ["It is unlikely that urine did this.", 0.36, ["certainty"]],
    ["It is about as likely as not that urine did this.", 0.5, []], ["It is very unlikely that urine did this.", 0.13, ["certainty"]], ["We doubt that urine did this.", 0.5, []],
    ["In all likelihood urine did this.", 0.63, ["certainty"]], ["In all likelihood urine did this.", 0.64, []], ["In all likelihood this is not urine.", 0.35, []], ["In all likelihood this is not urine.", 0.36, ["certainty"]],
  ])("%s, of %d", (say, chance, expected) => expect(spoken(say, { fibres: { wool: 0.9 }, mechanisms: { "urine-old": chance } })).toEqual(expected));
  it("takes what is fresh and what is old of a cause together", () => expect(spoken("It is likely that urine did this.", { fibres: { wool: 0.9 }, mechanisms: { "urine-old": 0.4, "urine-fresh": 0.4 } })).toEqual([]));
  it("knows no wrong size where none was told, and takes the one that was told or the one that was measured", () => {
    const size = (widthCm: number, lengthCm: number) => ({ what: "size", value: { widthCm, lengthCm, m2: (widthCm * lengthCm) / 10_000 }, strength: "told" as const });
    expect(spoken("Your rug measures 2 × 3 m.", { fibres: { wool: 0.9 } })).toEqual([]);
    for (const say of ["Your rug measures 2 × 3 m.", "Your rug measures 195 × 290 cm.", "Your rug measures 6 ft 7 in × 9 ft 10 in."]) expect(spoken(say, { fibres: { wool: 0.9 }, evidence: [size(170, 240), size(200, 300)] })).toEqual([]);
    expect(spoken("Your rug measures 3 × 4 m.", { fibres: { wool: 0.9 }, evidence: [size(170, 240), size(200, 300)] })).toEqual(["number"]);
  });
  it("lets work be called worth its cost where it may be, and where somebody who had the rug in hand found so", () => {
    const worth = (beyondRepair: number) => assessmentOf({ fibres: { wool: 0.9 }, rest: { beyondRepair } });
    expect(checkSentence("It is worth cleaning.", { assessment: worth(0.65) })).toEqual([]);
    expect(checkSentence("It is worth cleaning.", { assessment: worth(0.66) })).toMatchObject([{ rule: "verdict" }]);
    expect(checkSentence("It is worth cleaning.", { assessment: worth(0.66), inspection: { isBeyondRepair: false } })).toEqual([]);
  });
});

const missing = (letter: string, k: Known) => checkLetter(letter, k).filter((o) => o.rule === "left-out").map((o) => o.suggestion);

describe("what a letter leaves out", () => {
  it("takes no test that is waved away for the word of a test", () => {
    expect(missing("We would clean it nearly dry. A test is not needed in this case.", known({})).join(" ")).toMatch(/test in a hidden corner/);
    expect(missing("We would clean it nearly dry, and nothing goes on it before a test.", known({})).join(" ")).not.toMatch(/test in a hidden corner/);
  });
  it("asks for the test, the limits and the warning of water", () => {
    expect(missing("We would clean it nearly dry.", known({})).join(" ")).toMatch(/test in a hidden corner.*Please do not clean it at home/);
    for (const offer of ["We will clean it for about £100 to £160.", "We’ll wash it next week.", "We are going to clean it on Friday."]) expect(missing(offer, known({})).join(" ")).toMatch(/test in a hidden corner/);
    expect(missing("We will not wash it.", known({}))).toEqual([]);
    expect(missing("It is likely viscose.", known({})).join(" ")).toMatch(/Words and photos can mislead/);
    expect(missing("It is pure silk. It will come out, as good as new.", known({})).join(" "), "of a letter that is sure of everything too").toMatch(/Words and photos can mislead/);
    expect(missing("It is likely viscose, going by words and photos, which can mislead. We would clean it after a test. Please do not clean it at home.", known({}))).toEqual([]);
  });
  it("asks for the test of a plan to wash, however it is told, and of all but one of those that plan none asks nothing", () => {
    const asked = (say: string) => missing(say, WORDS_AND_PHOTOS).some((m) => m.includes("test in a hidden corner"));
    expect(Math.min(UNTESTED_PLANS.length, NO_UNTESTED_PLANS.length)).toBeGreaterThanOrEqual(12);
    const [missed, alarmed] = [UNTESTED_PLANS.filter((say) => !asked(say)), NO_UNTESTED_PLANS.filter(asked)];
    expect(missed.length, missed.join("\n")).toBeLessThanOrEqual(1);
    expect(alarmed.length, alarmed.join("\n")).toBeLessThanOrEqual(1);
  });
  it("asks for the first aid where something is wet", () => {
    const wet = known({ firstAid: FIRST_AID_SAID });
    expect(missing("Good day.", wet).join(" ")).toMatch(/first aid at the head/);
    expect(missing(`Good day.\n${FIRST_AID_SAID.join("\n")}`, wet)).toEqual([]);
    for (const some of ["We love children.", "Please keep children and pets off it.", "Put nothing on it, and no more water."]) expect(missing(`Good day. ${some}`, wet).join(" ")).toMatch(/first aid at the head/);
    expect(missing("Keep people, children and pets off it, put nothing on it, and leave it lying.", wet)).toEqual([]);
  });
  it("asks for no limits where a name of the trade is explained, and for them where the rug is judged too", () => {
    for (const say of ["Banana silk is mostly a trade name for viscose.", "Art silk is likely just another word for viscose.", "Bamboo silk is very likely a trade name for viscose."]) expect(missing(say, known({}))).toEqual([]);
    expect(missing("Bamboo silk is very likely a trade name for viscose. It is likely viscose.", known({})).join(" ")).toMatch(/Words and photos can mislead/);
  });
  it("asks nothing of a letter that judges nothing", () => expect(missing("Thank you. We shall write tomorrow.", known({}))).toEqual([]));
});

/** Rugs that call for a caution, each just where the letter of the program speaks of it (a chance of 33 in 100), and just below. */
const flooded = (incident: string) => known({}, { wool: 0.9 }, "told", [{ what: "incidents", value: [incident], strength: "told" }]);
const harmed = (mechanism: "mould" | "insects", chance: number): Known => ({ assessment: assessmentOf({ fibres: { wool: 0.9 }, mechanisms: { [mechanism]: chance } }) });
const CALLED_FOR = [
  { caution: "of flood water", due: flooded("flood"), not: flooded("spill"), words: CAUTION_WORDS.flood, enough: ["This water carries germs, so please do not touch the rug."], tooLittle: ["Please ring your insurer.", "Flood water can make you ill.", "Please let nobody touch it.", "Keep children off it, put nothing on it and press a plain white cloth straight down."] },
  { caution: "of mould", due: harmed("mould", 0.33), not: harmed("mould", 0.32), words: CAUTION_WORDS.mould, enough: ["Mould is bad for your lungs: keep everybody out of the room.", "It can be bad for your health, so please do not handle it."], tooLittle: ["It smells of mould.", "Mould can harm your health.", "Please do not touch it."] },
  { caution: "of insects", due: harmed("insects", 0.33), not: harmed("insects", 0.32), words: CAUTION_WORDS.insects, enough: ["Use no moth spray, and keep it away from other wool."], tooLittle: ["Moths have eaten it.", "Use no insecticide.", "Keep it apart from other wool."] },
] as const;

describe.each(CALLED_FOR)("the caution $caution", ({ due, not, words, enough, tooLittle }) => {
  it("is asked for in the words of our own letters, which pass, wherever our letters speak of it and nowhere else", () => {
    expect(missing("Good day.", due)).toEqual([words]);
    expect(missing("Good day.", not)).toEqual([]);
    expect(checkLetter(words, due)).toEqual([]);
  });
  it.each(enough)("is met by “%s”", (say) => expect(missing(say, due)).toEqual([]));
  it.each(tooLittle)("is not met by “%s”", (say) => expect(missing(say, due)).toEqual([words]));
  it("is not asked for again where a letter before said it, and is where none did", () => {
    const after = (before: string) => checkLetter("Good day.", due, [before]).map((o) => o.suggestion);
    expect(after(`Dear Ana,\n\n${words}`)).toEqual([]);
    expect(after(tooLittle[0])).toEqual([words]);
    expect(after(`> ${words}`)).toEqual([words]);
  });
});

describe("the caution of insects for a rug that goes into no bag yet", () => {
  const eaten = (rest: Partial<Assessment>, mould = 0): Known => ({ assessment: assessmentOf({ fibres: { wool: 0.9 }, mechanisms: { insects: 0.9, mould }, rest }) });
  const told = (what: string, value: string | string[]): Partial<Assessment> => ({ findings: [{ what, value, strength: "told", from: "client", decibans: 0, staff: "", client: "" }] });
  it.each([
    ["flooded", eaten(told("incidents", ["flood"]))], ["with spots", eaten(told("changes", ["spots"]))], ["damp", eaten(told("wetNow", "damp"))], ["with mould likely", eaten({}, 0.33)],
    ["of which nobody knows whether it is wet", eaten({ nextQuestions: [{ id: "wetNow", kind: "question", ask: "", why: "" }] })], ["that first aid is due for", eaten({ firstAid: FIRST_AID_SAID })],
  ])("has it kept in one only once it is dry and may be handled: one %s", (_, due) => {
    expect(missing("Good day.", due)).toContain(CAUTION_WORDS.insectsLater);
    expect(missing("Good day.", due)).not.toContain(CAUTION_WORDS.insects);
  });
  it.each([["dry", eaten(told("wetNow", "no"))], ["with mould unlikely", eaten({}, 0.32)]])("has it kept in one at once elsewhere: one %s", (_, due) => expect(missing("Good day.", due)).toEqual([CAUTION_WORDS.insects]));
});

describe("first aid and water at home", () => {
  it("are told in every letter, whatever one before said", () => {
    const said = `${FIRST_AID_SAID.join("\n")} Please do not clean it at home.`;
    expect(checkLetter("Good day. We would clean it nearly dry, after a test.", known({ firstAid: FIRST_AID_SAID }), [said]).map((o) => o.suggestion).join(" ")).toMatch(/at home.*first aid at the head/);
  });
});

describe("advice against a caution", () => {
  const STIRRED = ["Vacuum it weekly.", "Please vacuum it gently without a beater.", "Just brush it off.", "You can vacuum it once a week.", "It is best to air it outside.", "Hang it outdoors to air.", "We recommend vacuuming it.", "It can be vacuumed lightly.", "A weekly vacuuming helps.", "Let it air in the sun and brush the spots away.", "Wipe it with a dry white cloth."];
  const LEFT_ALONE = ["Please do not touch, brush or vacuum it.", "Nobody should vacuum it or brush it.", "Do you vacuum it weekly?", "You wrote that you vacuum it weekly.", "Once the mould is treated, vacuum it weekly.", "We vacuum it here in a closed room.", "Give it air but no heat.", "Keep children out of the room."];
  const PRESSED = ["Press a plain white cloth straight down, and do not rub.", "Please blot it.", "Lay a plain white cloth on the wet place.", "Press with a cloth until it comes up dry.", "Roll it up and bring it.", "You can lift it off the floor."];
  const broken = (say: string, k: Known) => checkSentence(say, k).map((o) => o.rule);
  it.each(STIRRED)("is caught where mould is likely or flood water was in it, and not for this elsewhere: %s", (say) => {
    for (const due of [harmed("mould", 0.33), flooded("flood")]) expect(broken(say, due)).toContain("harm");
    expect(checkSentence(say, harmed("mould", 0.32)).filter((o) => o.why.includes("Mould"))).toEqual([]);
  });
  it.each(LEFT_ALONE)("is none: %s", (say) => { for (const due of [harmed("mould", 0.9), flooded("flood")]) expect(broken(say, due)).not.toContain("harm"); });
  it.each(PRESSED)("is first aid elsewhere, and not for flood water or mould: %s", (say) => {
    for (const due of [harmed("mould", 0.33), flooded("flood")]) expect(broken(say, due)).toContain("harm");
    for (const due of [harmed("mould", 0.32), flooded("spill")]) expect(checkSentence(say, due).filter((o) => /flood|Mould/u.test(o.why))).toEqual([]);
  });
});

describe("words in another language", () => {
  const GERMAN = "Liebe Ana, Ihr Teppich ist ganz sicher aus Seide und wird wie neu. Das garantieren wir.";
  it("do not pass because nobody could judge them, alone or among English ones", () => {
    expect(checkLetter(GERMAN, known({}))).toMatchObject([{ rule: "left-out", sentence: GERMAN, why: expect.stringContaining("not in English") as string }]);
    expect(checkLetter(`Dear Ana,\n\nthank you for your letter.\n\n${GERMAN}`, known({}))).toMatchObject([{ rule: "left-out", sentence: GERMAN }]);
  });
  it("are none where a name is in other letters, or the client is repeated", () => expect(checkLetter("Dear ליילה אל־חדד,\n\nthank you for your letter.\n\n> Mein Teppich ist nass und ich weiß nicht, was ich tun soll.", known({}))).toEqual([]));
});
