import { describe, expect, it } from "vitest";
import { ANSWER_HERE } from "../../../lib/reply/open-places";
import { PARAGRAPHS, PLACES } from "../../../lib/reply/paragraphs";
import type { PlaceId } from "../../../lib/reply/paragraphs/row";
import { QUESTION_KINDS } from "../../../lib/reply/question-kinds";
import { TONE_IDS } from "../../../lib/trade/tones";
import { answeredBy, askedQuestion, MOST_QUESTIONS, openQuestions, QUESTION_CHARS, questionsAsked } from "../../../lib/reply/questions-asked";
import { lettersTo, storiesOf } from "./must-say/demo-letters";

describe("questionsAsked", () => {
  it("gives every question as it was written, once, in its order", () => {
    expect(questionsAsked(["Our dog was on it an hour ago. Is it safe? should I put it in the bath?\nThank you!", "Will the shop have to pay? Is it safe?"])).toEqual(["Is it safe?", "should I put it in the bath?", "Will the shop have to pay?"]);
  });
  it("gives nothing of what asks nothing, of marks alone, and of nobody's words", () => {
    expect(questionsAsked(["It is wet.", "???", "", undefined, "Please let me know if you need more photos.", "What a pity."])).toEqual([]);
  });
  it("takes other scripts' marks and a closing quotation mark", () => {
    expect(questionsAsked(["هل يمكن إنقاذها؟", "He said “why not wash it?”"])).toEqual(["هل يمكن إنقاذها؟", "He said “why not wash it?”"]);
  });
  it("knows a question without its mark, and one that a mail program broke over two lines", () => {
    expect(questionsAsked(["Hello, can it be saved. Please let me know whether it is silk.\n\nDo you collect from Nether Hallow,\nand what would that cost?"]))
      .toEqual(["Hello, can it be saved.", "Please let me know whether it is silk.", "Do you collect from Nether Hallow, and what would that cost?"]);
  });
  it("stops after a score, and cuts what is no sentence any more", () => {
    expect(questionsAsked([Array.from({ length: MOST_QUESTIONS + 4 }, (_, n) => `Is it ${n} years old?`).join(" ")])).toHaveLength(MOST_QUESTIONS);
    expect(questionsAsked([`Is it ${"very ".repeat(200)}old?`])[0]).toHaveLength(QUESTION_CHARS);
  });
});

/** A letter of one paragraph at each of some places, which says the place's name. */
const lettered = (...at: [place: PlaceId, id?: string, rug?: number][]) => {
  const said = at.map(([place, id = place, rug]) => ({ place, id, rug: rug ?? (PLACES.find((p) => p.id === place)?.of === "rug" ? 0 : null), said: `Of ${id}${rug ?? ""}.` }));
  return { said, text: said.map((p) => p.said).join("\n\n") };
};
const nameOf = (place: PlaceId) => PLACES.find((p) => p.id === place)?.name ?? place;
const by = (question: string, { said, text }: ReturnType<typeof lettered>, { rug = 0 as number | null, rugs = 1 } = {}) => answeredBy(askedQuestion({ question, rug, hasPlace: false }, { said, rugs }), { begun: text, text });
const USUAL = lettered(["fibre"], ["outlook"], ["care"], ["refuse"], ["worse"], ["life"], ["price"], ["claim"], ["claim", "claim-seller"], ["next-step"], ["visit"]);

describe("a question that the letter plainly answers", () => {
  it.each([
    ["Can it be saved?", "How far it may come back"],
    ["Will the stain come out?", "How far it may come back"],
    ["Is there anything to be done, or do we live with it?", "How far it may come back"],
    ["What would it cost?", "Price"],
    ["How much do you charge for a rug?", "Price"],
    ["How long will it last?", "Life left"],
    ["What is it made of?", "What it is, and how sure"],
    ["Is it really silk?", "What it is, and how sure"],
    ["Can I bring it?", "Bringing it, or having it collected"],
    ["Will my insurance pay?", "Insurance and claims"],
    ["Can I get my money back?", "Insurance and claims"],
    ["Should I put it in the bath?", "What we will not do"],
    ["What should I do?", "The next step"],
  ])("%s: by “%s”", (question, place) => {
    expect(by(question, USUAL)).toEqual([place]);
    expect(by(question, lettered(["greeting"])), "not in a letter without it").toBeNull();
  });
  it("is answered in each of its parts, and of each rug it is asked of", () => {
    expect(by("Can it be saved, and what would that cost?", USUAL)).toEqual(["How far it may come back", "Price"]);
    expect(by("Can it be saved, and what would that cost?", lettered(["outlook"]))).toBeNull();
    const ofOne = lettered(["outlook", "outlook", 0]);
    expect(by("Can they be saved?", ofOne, { rugs: 2 })).toEqual(["How far it may come back"]);
    expect(by("Can they be saved?", ofOne, { rug: 1, rugs: 2 })).toBeNull();
    expect(by("Can they be saved?", ofOne, { rug: null, rugs: 2 })).toBeNull();
  });
  it("is so only as long as those words stand in the letter", () => {
    const { said, text } = lettered(["outlook"], ["price"]);
    const questions = [askedQuestion({ question: "What does it cost?", rug: 0, hasPlace: false }, { said, rugs: 1 })];
    expect(openQuestions({ questions, begun: text }, text)).toEqual([]);
    expect(openQuestions({ questions, begun: text }, "Of outlook.\n\nAsk us.")).toEqual(["What does it cost?"]);
  });
});

describe("a question that is put through them", () => {
  it.each([
    ["His insurer asks what it would cost.", ["Price"]],
    ["My insurance asked me how much it will cost", ["Price"]],
    ["my landlord wants to know whether it can be saved.", ["How far it may come back"]],
    ["My wife wonders if it is worth it.", ["What it costs against its worth"]],
    ["And the seller would like to know what it is made of.", ["What it is, and how sure"]],
    ["My son keeps asking when it comes back and how long it will last", null],
    ["Our insurers want a rough estimate.", ["Price"]],
    ["I would like a quote for cleaning it.", ["Price"]],
    ["She asks whether it is safe for the baby.", null],
    ["He wonders who wove it.", null],
  ] as const)("%s", (question, places) => {
    expect(questionsAsked([`Good morning. ${question} Thank you.`.replace(/([a-z]) Thank/, "$1.\nThank")])).toEqual([expect.stringContaining(question.replace(/\.$/, ""))]);
    expect(by(question, lettered(["fibre"], ["outlook"], ["beyond"], ["life"], ["price"], ["claim"]))).toEqual(places);
  });
  it.each(["I told my insurer what it cost.", "The label wants reading.", "She likes the price tag.", "We asked a cleaner, who washed it.", "I know what it is made of.", "My husband wants it gone.", "The shop asked for photos."])(
    "is none in: %s", (sentence) => expect(questionsAsked([sentence])).toEqual([]));
});

describe("whether there is anything to be done", () => {
  const QUESTIONS = ["Is there anything to be done, or do we live with it?", "Can anything be done?", "What can you do for it?", "Is there something we can do?"];
  it.each(["outlook-wide-unsure", "outlook-wide", "outlook-wet-wide", "outlook-antique-wide", "outlook-none"])("is not answered by %s, which cannot tell how far", (id) => {
    for (const question of QUESTIONS) expect(by(question, lettered(["outlook", id])), question).toBeNull();
  });
  it("is not answered by the paragraph that knows nothing yet, and is by an outlook that tells something", () => {
    for (const question of QUESTIONS) {
      expect(by(question, lettered(["fibre", "fibre-unknown-nothing"], ["fibre", "fibre-said-wet"])), question).toBeNull();
      expect(by(question, lettered(["outlook", "outlook-little"])), question).toEqual(["How far it may come back"]);
    }
  });
  it("is another question than whether it comes out, to which “we cannot tell how much” is an answer", () => {
    expect(by("Will the stain come out?", lettered(["outlook", "outlook-wide"]))).toEqual(["How far it may come back"]);
  });
});

describe("the usual morning letter", () => {
  it.each([
    ["Tobias Ferrant", ["What do I do now, and what do I tell her?"], [["First aid", "What another cleaner can tell their customer"]]],
    ["Rosalind Tey", ["Is it worth having it cleaned?"], [["What it costs against its worth"]]],
    ["Ishbel Crane", ["I only want to know what I own and how to live with it."], [["What it is, and how sure", "Living with it"]]],
  ])("answers what %s asks, in every tone", (name, questions, places) => {
    const letters = lettersTo(name);
    expect(letters.map((l) => l.tone)).toEqual(TONE_IDS);
    expect(questionsAsked(storiesOf(name))).toEqual(questions);
    for (const { letter: { draft: { text, paragraphs: said } } } of letters) {
      expect(questions.map((question) => answeredBy(askedQuestion({ question, rug: 0, hasPlace: false }, { said, rugs: 1 }), { begun: text, text }))).toEqual(places);
    }
  });
});

describe("a question that a person has to look at", () => {
  it.each([
    "Do you collect?", "Do you collect from Nether Hallow, and what would that cost?", "May I bring it on Monday?", "Is it safe for the baby?", "Can it be saved, and is the bleach poisonous?",
    "How long will the cleaning take?", "What would a new fringe cost?", "What is it worth?", "Are you insured?", "Can it be saved if I pour ammonia on it?", "Was kostet die Reinigung?", "Who wove it?",
    "Can it be saved although my sister and her whole family have walked over it with muddy boots since last year?",
  ])("%s", (question) => expect(by(question, USUAL)).toBeNull());
});

describe("a question in a message that the draft has a place for", () => {
  const begun = `Thank you.\n\n${ANSWER_HERE}\n\nWith kind regards`;
  const isAnswered = (text: string) => answeredBy({ question: "Do you collect?", needs: [], hasPlace: true }, { begun, text });
  it("is answered by what somebody wrote there, and not by taking the place out", () => {
    expect(isAnswered(begun.replace(ANSWER_HERE, "Yes, on Thursdays."))).toEqual([]);
    for (const text of [begun, begun.replace(`${ANSWER_HERE}\n\n`, ""), begun.replace(`${ANSWER_HERE}\n\n`, "").replace("Thank you", "Many thanks"), begun.replace(ANSWER_HERE, "–")]) expect(isAnswered(text)).toBeNull();
  });
  it("is answered there too where something else of the letter went, and where the words were joined to what stands beside them", () => {
    const whole = `Thank you.\n\n${ANSWER_HERE}\n\nOur answer has changed.\n\nIt is viscose.\n\nWith kind regards`;
    const isIn = (text: string) => answeredBy({ question: "Do you collect?", needs: [], hasPlace: true }, { begun: whole, text });
    const filled = whole.replace(ANSWER_HERE, "Yes, on Thursdays.");
    for (const text of [filled.replace("\n\nIt is viscose.", ""), filled.replace("\n\nIt is viscose.", "").replace("Thursdays.\n\n", "Thursdays. "), filled.replace("It is viscose.\n\n", "").replace("you.\n\n", "you. ")]) expect(isIn(text), text).toEqual([]);
    const without = whole.replace(`${ANSWER_HERE}\n\n`, "");
    for (const text of [without, without.replace("It is viscose.", "It is silk."), without.replace("\n\nIt is viscose.", ""), without.replace("Thank you.", "Many thanks."), without.replace("Our answer has changed.", "We think otherwise.")]) expect(isIn(text), text).toBeNull();
  });
  it("wants no look as long as the place is open, since the letter does not leave then", () => {
    const questions = [{ question: "Do you collect?", needs: [], hasPlace: true }];
    expect(openQuestions({ questions, begun }, begun)).toEqual([]);
    expect(openQuestions({ questions, begun }, begun.replace(`${ANSWER_HERE}\n\n`, ""))).toEqual(["Do you collect?"]);
  });
});

describe("a sentence of somebody's own in a first letter", () => {
  const { said, text } = lettered(["greeting"], ["fibre"], ["outlook"], ["closing"]);
  const own = (question: string, block: string, begun = text, known = "") => answeredBy(askedQuestion({ question, rug: 0, hasPlace: false }, { said, rugs: 1 }), { begun, known, text: block === "" ? begun : begun.replace("\n\nOf closing.", `\n\n${block}\n\nOf closing.`) });
  it.each([
    ["Can I put vinegar on it?", "Please put no vinegar on it."],
    ["What would it cost?", "Cleaning it would cost about £250 to £400."],
    ["How much do you charge?", "Cleaning it would cost about £250 to £400."],
    ["What is it worth?", "What it is worth now is for a valuer to say."],
    ["Is it valuable?", "What it is worth now is for a valuer to say."],
    ["Is it worth £3,000?", "That is for a valuer to say; we do no valuations."],
    ["Do you collect?", "Yes, we collect on Thursdays."],
    ["May I bring it on Monday?", "Monday suits us well."],
    ["Is it safe for the baby?", "Keep the baby off it until it is dry."],
    ["Who wove it?", "It was woven by machine; who wove it nobody can tell."],
    ["Can it be saved, and is the bleach poisonous?", "The bleach has gone by now and harms nobody."],
  ])("%s: “%s”", (question, block) => {
    expect(own(question, ""), "not before it was written").toBeNull();
    expect(own(question, block)).not.toBeNull();
  });
  it.each([
    ["Can I put vinegar on it?", "Please bring it rolled."],
    ["What would it cost?", "Please put no vinegar on it."],
    ["Is it valuable?", "Cleaning it would take a week."],
    ["Do you collect?", "The parquet is dry."],
    ["Is it safe for the baby?", "Please write to us."],
    ["What would it cost, and is the bleach poisonous?", "The bleach has gone by now."],
    ["Can I put vinegar on it?", "–"],
  ])("%s: not “%s”", (question, block) => expect(own(question, block)).toBeNull());
  it("is not a paragraph of ours that the letter began with or could have, nor one that only goes on from it", () => {
    const begun = text.replace("Of fibre.", "Bleach does not wash out. Of fibre.");
    expect(own("Is the bleach poisonous?", "", begun)).toBeNull();
    expect(own("Is the bleach poisonous?", "Bleach and acid never meet.", text, "Bleach and acid never meet.")).toBeNull();
    expect(answeredBy(askedQuestion({ question: "Is the bleach poisonous?", rug: 0, hasPlace: false }, { said, rugs: 1 }), { begun, text: begun.replace("Of fibre.", "Of fibre, bleach or not.") })).toBeNull();
  });
  it("stands beside what paragraphs of ours answer", () => expect(own("Can it be saved, and is the bleach poisonous?", "The bleach has gone by now.")).toEqual(["How far it may come back"]));
  it("is none where nobody knows what the letter began with", () => expect(answeredBy(askedQuestion({ question: "What would it cost?", rug: 0, hasPlace: false }, { said: [], rugs: 1 }), { begun: "", text: "It would cost £90." })).toBeNull());
});

describe("what a letter seems to answer, and does not", () => {
  it.each([
    ["Which of the two is worth doing first?", lettered(["worth"])],
    ["Is it worth £3,000?", lettered(["beyond", "keep"], ["worth"])],
    ["Is it worth anything?", lettered(["beyond", "keep"], ["worth"])],
    ["Can I dry it with the heater?", lettered(["first-aid"])],
    ["What time are you open on Saturday?", USUAL],
  ])("%s", (question, letter) => expect(by(question, letter)).toBeNull());
});

describe("what a letter answers in other words", () => {
  const saying = (place: PlaceId, id: string, said: string) => ({ said: [{ place, id, rug: null, said }], text: said });
  it.each([
    ["Can I dry it with the heater?", saying("first-aid", "first-aid", "Now: no heat, and no more water."), ["First aid"]],
    ["Is it valuable?", saying("special", "special-antique", "What it is worth is a question for a valuer."), [nameOf("special")]],
    ["What is it worth?", saying("special", "special-antique", "What it is worth is a question for a valuer."), [nameOf("special")]],
    ["Will it be as good as new?", lettered(["outlook"]), ["How far it may come back"]],
    ["How long does it take, do you collect, and what does it cost?", lettered(["takes"], ["visit", "visit-told"], ["price"]), ["How long the work takes", nameOf("visit"), "Price"]],
    ["She asks what it would cost to put right.", lettered(["price"]), ["Price"]],
    ["Insurer wants to know if it is a write off", lettered(["worth"]), [nameOf("worth")]],
    ["I need something for my insurance.", lettered(["claim"]), ["Insurance and claims"]],
    ["Is it worth cleaning?", lettered(["worth"]), [nameOf("worth")]],
    ["Is it worth paying £300 for the cleaning?", lettered(["worth"]), [nameOf("worth")]],
  ] as const)("%s", (question, letter, places) => {
    expect(by(question, letter)).toEqual(places);
    expect(by(question, lettered(["greeting"])), "not in a letter without it").toBeNull();
  });
  it("leaves a list open where one thing in it is not said", () => {
    expect(by("How long does it take, do you collect, and what does it cost?", lettered(["takes"], ["visit", "visit-told"]))).toBeNull();
    expect(by("How long does it take, do you collect, and what does it cost?", lettered(["visit", "visit-told"], ["price"]))).toBeNull();
    expect(by("Do you collect, and what does it cost?", lettered(["visit", "visit-told"], ["price"])), "it may be the collecting").toBeNull();
  });
});

describe("a question as some people type it", () => {
  it.each(["what time r u open sat", "Insurer wants to know if it is a write off", "I need something for my insurance", "can u clean it", "r u open today", "Seller asks what it is made of", "which days are you open"])("%s", (question) => expect(questionsAsked([`hi.\n\n${question}`])).toEqual([question]));
  it.each(["I need something to eat.", "Insurance paid for it.", "I need it for my wedding.", "We have insurance.", "Last time you cleaned it well.", "He needs time for my insurance forms."])("is none in: %s", (sentence) => expect(questionsAsked([sentence])).toEqual([]));
});

/** Of each question the kinds that it is of, none of which may be without an answer, or null: a person has to look. */
const AS_CLIENTS_ASK: readonly (readonly [string, readonly string[] | null])[] = [
  ["Until you come, should I put vinegar on?", ["remedy"]],
  ["Would vinegar help before you come?", ["remedy"]],
  ["Would bicarbonate take the smell out while we wait?", ["saving", "remedy", "smell"]],
  ["Could I clean it myself with soap?", ["remedy"]],
  ["May I hoover it before it comes to you?", null],
  ["Shall I dab it with cold water till I hear from you?", null],
  ["Can we walk on it in the meantime?", null],
  ["Can it be saved before you move house?", null],
  ["Would a hairdryer be all right to get it dry sooner?", null],
  ["Can you wash it again to get the soap out?", null],
  ["Will the shampoo come out again?", null],
  ["Will the vinegar stain come out?", ["saving"]],
  ["Will the white wine come out?", ["saving"]],
  ["Will the pile ever feel soft again?", ["saving"]],
  ["Is it worth having it cleaned at all?", ["worth-it"]],
  ["How many years would it last after that?", ["life-left"]],
  ["What would a clean set me back?", ["cost"]],
  ["What would the collecting set us back?", null],
  ["Do you collect from a second-floor flat?", null],
  ["How do I claim my money back?", ["seller"]],
  ["Can I claim it back from the shop?", ["seller"]],
  ["The shop said wool, can I make them refund me?", ["seller"]],
  ["What do I say to the seller?", ["seller"]],
  ["Did the seller know that it was viscose?", null],
  ["Should I tell the shop that I washed it?", null],
  ["Does my home insurance pay for this?", ["insurance"]],
  ["How do I make a claim?", ["insurance"]],
  ["Who pays for the damage?", ["fault"]],
  ["Who pays for the postage?", null],
  ["What made the edge go brown?", ["cause"]],
  ["What made you think of viscose?", null],
  ["Is it really silk or have I been had?", ["fibre"]],
  ["Can the smell be got out?", ["smell"]],
  ["Should I send a bit of it to a laboratory?", null],
  ["How big would it be if you cut it down?", null],
  ["Are you open on Saturdays?", null],
  ["Is it safe for the children to play on?", null],
  ["How soon could you look at it?", null],
  ["Do you have a certificate from a trade body?", null],
];
/** A letter that says every paragraph there is. */
const SAYS_ALL = PARAGRAPHS.map(({ id, place }) => ({ id, place, rug: PLACES.find((p) => p.id === place)?.of === "rug" ? 0 : null, said: `Of ${id}.` }));

describe("what clients ask, held against a letter that says every paragraph", () => {
  it.each(AS_CLIENTS_ASK)("%s", (question, kinds) => {
    expect(questionsAsked([question])).toEqual([question]);
    const { needs } = askedQuestion({ question, rug: 0, hasPlace: false }, { said: SAYS_ALL, rugs: 1 });
    expect(needs.some((need) => need.by.length === 0) ? null : needs.map((need) => need.kind)).toEqual(kinds);
  });
  it("is answered of money back by what is said of a seller alone", () => {
    for (const id of ["claim-seller", "claim-gift"]) expect(by("How do I claim my money back?", lettered(["claim", id]))).toEqual(["Insurance and claims"]);
    expect(by("How do I make a claim?", lettered(["claim", "claim-seller"]))).toBeNull();
  });
});

describe("the table of kinds", () => {
  it("names places and paragraphs that there are, and no paragraph of a place that it names whole", () => {
    for (const { id, places, ids, except = [] } of QUESTION_KINDS) {
      expect(except.filter((name) => !places.includes(PARAGRAPHS.find((p) => p.id === name)?.place as PlaceId)), id).toEqual([]);
      expect(places.filter((p) => !PLACES.some((place) => place.id === p)), id).toEqual([]);
      const rows = ids.map((name) => PARAGRAPHS.find((p) => p.id === name));
      expect(ids.filter((_, i) => rows[i] === undefined), id).toEqual([]);
      expect(rows.filter((r) => r && places.includes(r.place)).map((r) => r?.id), id).toEqual([]);
    }
    expect(new Set(QUESTION_KINDS.map((k) => k.id)).size).toBe(QUESTION_KINDS.length);
  });
});

describe("whether we collect, and how long the work takes", () => {
  const SAYS = lettered(["fibre"], ["outlook"], ["care"], ["price"], ["next-step"], ["takes"], ["visit", "visit-told"]);
  const COMES = "Bringing it, or having it collected";
  it.each([
    ["Do you collect?", [COMES]], ["Could you pick it up?", [COMES]], ["Can it be collected from my house?", [COMES]], ["Please let me know whether you collect.", [COMES]],
    ["Is there a collection service?", [COMES]], ["Would you come to fetch it?", [COMES]], ["Can I have it collected?", [COMES]], ["Can it be cleaned, and do you collect?", ["What can be done", COMES]],
    ["How long does it take?", ["How long the work takes"]], ["How long would the cleaning take?", ["How long the work takes"]], ["How many weeks do you need?", ["How long the work takes"]],
    ["How long will the rug be away?", ["How long the work takes"]], ["Roughly how long will it take and what would it cost?", ["How long the work takes", "Price"]],
  ] as const)("%s: answered where the settings say it, and not where they do not", (question, places) => {
    expect(by(question, SAYS)).toEqual(places);
    expect(by(question, USUAL)).toBeNull();
  });
  it.each([
    "Do you come to Oxford?", "Do you collect from Oxford?", "Could you pick it up in Nether Hallow?", "We live in Oxford, do you collect?", "Do you collect as far as the coast?", "Do you collect in my area?", "Is it possible to have it collected 40 miles away?",
    "What would collecting cost?", "Do you collect for free?", "Is collection included?", "How much do you charge to pick it up?", "Do you collect, and what would that cost?",
    "Do you collect on Thursdays?", "Can you collect it on Friday?", "Can you collect next month?", "When can you collect it?", "Do you collect in the evening?", "Do you collect and deliver?",
    "How long does it take to dry?", "How long will the drying take?", "How long does an inspection take?", "How long does it take to collect it?", "How long would a repair take?", "How long do I need to press it?", "How long did it take to make?",
    "How soon can you start?", "How long do we wait for an answer?", "Will it take three weeks?", "Can I post it to you?", "Can you come and look at it?", "When can I collect it?", "Can my husband collect it?", "Is it a collector’s piece?",
  ])("%s: a person has to look", (question) => expect(by(question, SAYS)).toBeNull());
  it("takes a price right after it for that of collecting, unless the work is named", () => {
    const after = (question: string, before: string) => answeredBy(askedQuestion({ question, rug: 0, hasPlace: false, before }, { said: SAYS.said, rugs: 1 }), { begun: SAYS.text, text: SAYS.text });
    expect(after("What would that cost?", "Do you collect?")).toBeNull();
    expect(after("And how long would that take?", "Can you pick it up?")).toBeNull();
    expect(after("How long does it take?", "Can you pick it up?")).toEqual(["How long the work takes"]);
    expect(after("What would cleaning cost?", "Do you collect?")).toEqual(["Price"]);
    expect(after("What would that cost?", "Can it be cleaned?")).toEqual(["Price"]);
  });
  it("is no answer to whether they may bring it, where only how it comes is said", () => {
    const asked = lettered(["visit", "visit-asked"]);
    expect(by("Do you collect?", asked)).toEqual([COMES]);
    expect(by("May I bring it?", asked)).toBeNull();
  });
});
