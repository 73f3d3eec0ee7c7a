import { describe, expect, it } from "vitest";
import { unexplainedChanges } from "../../../lib/reply/damage-told";
import { composeDraft } from "../../../lib/reply/draft";
import { headlineOf } from "../../../lib/reply/headline";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import { CHANGE_IDS, CHANGES, type ChangeId } from "../../../lib/trade/damage";
import type { RugAnswers } from "../../../lib/trade/questions";
import type { MechanismId } from "../../../lib/triage/assessment";
import { wordsIn } from "../../../lib/words/words";
import { action, FIRST_AID_SAID, inputOf, range, worthless, type Sketch } from "./make";
import { letterOf } from "./must-say/letter-of";

const SOIL_ONLY = /what you see is soil and nothing worse|of the soil/u;
const SOIL_ONLY_CAUSE = /what you see is soil and nothing worse/u;
const letter = (changes: ("none" | ChangeId)[], mechanisms: Partial<Record<MechanismId, number>> = { "soil-only": 0.5 }, sketch: Partial<Sketch> = {}) => composeDraft(inputOf({
  answers: { changes }, sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "touch", value: "dry", strength: "told" }, { what: "changes", value: changes, strength: "told", decibans: 0 }], mechanisms, rest: { improvement: range(20, 30, 60) }, ...sketch },
})).text;

describe("a change that was told", () => {
  const NAMES: Partial<Record<ChangeId, RegExp>> = {
    browner: /the brown in it/u, ring: /the ring/u, paler: /the paler place/u, faded: /the faded colour/u, ran: /the colour that ran/u, stiff: /the stiff pile/u, rough: /the rough pile/u,
    bare: /bare patches may be eaten by moths or beetles, or worn through/u, flat: /the pile that lies flat/u, wavy: /its shape/u, crumbles: /the back that crumbles/u, spots: /Furry or black spots/u, smell: /smell/u, shaded: /lighter from one side/u, dirty: /of the soil/u,
  };
  it.each(CHANGE_IDS)("is taken up where nothing likely explains it: %s", (change) => expect(letter([change])).toMatch(NAMES[change] ?? /^$/u));
  it.each(CHANGE_IDS.filter((id) => !["dirty", "shaded", "smell"].includes(id)))("is not called soil: %s", (change) => expect(letter([change])).not.toMatch(SOIL_ONLY));
  it("is called soil where that is what was told, and not where nothing was", () => {
    expect(letter(["dirty"])).toMatch(/what you see is soil and nothing worse/u);
    expect(letter(["none"])).not.toMatch(/what you see is soil/u);
  });
  it("is not passed over where a likely cause explains another change, and is said once where one explains it", () => {
    expect(letter(["rough", "faded"], { fading: 0.7 })).toMatch(/told us of the rough pile: what that comes from/u);
    expect(letter(["faded"], { fading: 0.33 })).not.toMatch(/told us of/u);
    expect(letter(["faded"], { fading: 0.32 })).toMatch(/told us of the faded colour/u);
  });
  it.each<[string, number]>([["sooner is better", 0.1], ["haste gains nothing", 0.9]])("of the brown is spoken of as “the brown” only where it was told: %s", (_, beyondRepair) => {
    const says = (changes: ChangeId[]) => letter(changes, { "browning-cleaning": 0.5 }, { rest: { improvement: range(20, 30, 60), beyondRepair, urgency: { level: "two-days", why: "" } } });
    expect(says(["browner"])).toMatch(/as likely as not that the brown comes with drying/u);
    expect(says(["rough", "wavy"])).toMatch(/as likely as not that water has drawn brown matter up the pile/u);
    expect(says(["rough", "wavy"])).not.toMatch(/the brown/iu);
    for (const text of [says(["browner"]), says(["rough", "wavy"])]) {
      expect(text.match(/brown matter/gu)).toHaveLength(1);
      expect(/longer it stays/u.test(text)).toBe(beyondRepair < 0.5);
    }
  });
  it("is explained by what the table of what people see gives for it, and by soil never", () => {
    const findings = (changes: ChangeId[]) => inputOf({ sketch: { fibres: {}, evidence: [{ what: "changes", value: changes, strength: "told" }] } }).assessments[0]!.assessment;
    for (const id of ["browner", "paler", "rough"] as const) {
      expect(unexplainedChanges(findings([id]), ["soil-only"])).toEqual([id]);
      for (const by of Object.keys(CHANGES[id].by) as MechanismId[]) expect(unexplainedChanges(findings([id]), [by])).toEqual([]);
    }
  });
  it.each<[ChangeId, MechanismId, RegExp]>([["ran", "dye-bleed", /a dye may not hold, and water could let it run further/u], ["wavy", "shrinkage", /the rug may have drawn in, and water could draw it in further/u]])("that is handled as one cause is said to come of that, however unlikely it is: %s", (change, by, says) => {
    const at = (chance: number) => letter([change], { [by]: chance });
    expect(at(0.32)).toMatch(says);
    expect(at(0.33)).not.toMatch(says);
    expect(at(0.33)).toMatch(new RegExp(`about as likely as not that ${by === "shrinkage" ? "the rug has drawn in" : "a dye has run"}`, "u"));
    for (const text of [at(0.32), at(0.33)]) expect(text).not.toMatch(/what that comes from|soil and nothing worse/u);
    expect(letter([change, "faded"])).toMatch(/You told us of the faded colour: what that comes from/u);
  });
  it("is said to come of what we cannot tell where every colour has held in a dye test, so that none of them ran", () => {
    const held: Partial<Sketch> = { evidence: [
      { what: "touch", value: "dry", strength: "told" }, { what: "changes", value: ["ran"], strength: "told", decibans: 0 },
      { what: "test:dye-bleed", value: { place: "affected", colour: "red", water: "none", acid: "none", alkali: "none" }, strength: "bench", decibans: 0 },
    ] };
    expect(letter(["ran"], {}, held)).toMatch(/You told us of the colour that ran: what that comes from we cannot tell from here/u);
    expect(letter(["ran"], {}, held)).not.toMatch(/a dye may not hold/u);
  });
  it("of a colour that ran is taken up beside first aid, for a wet rug where it is unlikely as where it is likely", () => {
    const of = (wetNow: "damp" | "no", changes: RugAnswers["changes"]) => letterOf({ answers: { labelText: "30% cotton 70% viscose", back: "loomed", age: "2-5", since: "hour", incidents: ["spotted"], changes }, enquiry: { wetNow } });
    const wet = of("damp", ["ran"]);
    expect(wet.rugs[0]!.assessment.mechanisms.find(({ mechanism }) => mechanism === "dye-bleed")!.probability).toBeLessThan(0.33);
    expect(wet.draft.text).toMatch(/told us of the colour that ran: while the rug is wet a dye may run on, so please let no more water get to it/u);
    expect(wet.draft.text).not.toMatch(/may dry and leave no mark|Please keep it dry/u);
    expect(of("damp", ["dirty"]).draft.text).not.toMatch(/dye may run on/u);
    const aided = (chance: number) => letter(["ran"], { "dye-bleed": chance }, { rest: { firstAid: FIRST_AID_SAID } });
    expect(aided(0.32).match(/dye may run on/gu)).toHaveLength(1);
    expect(aided(0.33)).not.toMatch(/You told us of/u);
  });
  it.each<[ChangeId, boolean]>([["ran", false], ["browner", false], ["stiff", false], ["smell", true], ["shaded", true]])("leaves open that a wet rug may dry without a mark only where what they saw is none: %s", (change, isOpen) => {
    for (const improvement of [range(40, 60, 80), range(0, 50, 100)]) {
      const input = inputOf({ answers: { changes: [change] }, enquiry: { wetNow: "wet" }, sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "changes", value: [change], strength: "told" }, { what: "wetNow", value: "wet", strength: "told" }, { what: "incidents", value: ["water"], strength: "told" }], mechanisms: { "soil-only": 0.5 }, rest: { improvement } } });
      expect(/may dry and leave no mark/u.test(composeDraft(input).text)).toBe(isOpen);
    }
  });
  it("of its shape leaves nothing at home to a care label, which may allow water", () => {
    const of = (changes: RugAnswers["changes"]) => letterOf({ answers: { labelText: "100% polypropylene", incidents: ["wear"], changes }, enquiry: { wetNow: "no" } }).draft.text;
    expect(of(["wavy"])).toMatch(/water could draw it in further/u);
    expect(of(["wavy"])).not.toContain("care label allows");
    expect(of(["flat"])).toContain("care label allows");
  });
  it.each(["wavy", "crumbles", "bare"] as const)("is said to be a matter for repair where the share that comes back leaves it out: %s", (change) => {
    const text = letter([change]);
    expect(text).toMatch(/of what is no matter for repair/u);
    expect(text).toMatch(/\ba matter for repair/u);
    expect(letter(["dirty"])).not.toMatch(/matter for repair/u);
  });
  it("of its shape leaves how it is cleaned open until a test, by desk and letter", () => {
    const of = (changes: RugAnswers["changes"]) => {
      const answers: RugAnswers = { labelText: "100% wool", incidents: ["nothing"], changes, widthCm: 170, lengthCm: 240 };
      const enquiry = { wetNow: "no", reason: "older-trouble" } as const;
      const { draft, rugs: [rug] } = letterOf({ answers, enquiry });
      return { letter: draft.text, desk: headlineOf(rug!.assessment, { letter: toldByLetter({ ...rug!, answers }, { enquiry, isTrade: false }), words: wordsIn("en-GB") }).says };
    };
    expect(of(["wavy"]).letter).toContain("How it could be cleaned stays open until a test");
    expect(of(["wavy"]).desk).toBe("Test it before any cleaning is offered");
    expect(of(["dirty"]).letter).not.toContain("stays open until a test");
    expect(of(["dirty"]).desk).toBe("Clean it as usual");
  });
  it("of a shape that a failing back explains is not said to be drawn in", () => {
    expect(letter(["wavy"], { "backing-failure": 0.33 })).not.toMatch(/drawn in|draw it in/u);
    expect(letter(["wavy"], { "backing-failure": 0.32 })).toMatch(/may have drawn in/u);
  });
  it("of bare patches alone, without a likely cause, says by a whole judgement that they may be eaten, and not that they are soil", () => {
    const { text } = letterOf({ answers: { changes: ["bare"], since: "month", treatments: ["nothing"], labelText: "60% bamboo viscose 40% wool", footprints: "stay", room: "busy", age: "5-10", price: 200, household: ["pets"] }, enquiry: { wetNow: "no" }, photos: [] }).draft;
    expect(text).toMatch(/may be eaten by moths or beetles/u);
    expect(text).not.toMatch(SOIL_ONLY);
  });
});

describe("of what a share comes back beside a repair", () => {
  const OPEN = { fibres: { viscose: 0.5, "wool-viscose": 0.4 }, words: "about as likely as not" } as const;
  it.each([["insects", "bare"], ["shrinkage", "wavy"], ["backing-failure", "crumbles"]] as const)("takes out none of what %s did, where the fibre is open", (mechanism, change) => {
    const text = letter([change], { [mechanism]: 0.7 }, OPEN);
    expect(text).toMatch(/cleaning might take out [^.]* of what is no matter for repair\./u);
    expect(text).not.toMatch(/of the trouble|of the mark/u);
  });
});

describe("a rug that somebody was sick on", () => {
  it("is not said to have lost its looks alone", () => {
    const after = (incidents: ("vomit" | "spill")[]) => {
      const input = worthless({ improvement: range(5, 10, 20), advice: action("advise-claim-or-replacement"), lifeYears: range(10, 12, 15) }, "food-old");
      return composeDraft({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { ...rug.answers, incidents } })) }).text;
    };
    expect(after(["spill"])).toMatch(/looks and not use/u);
    expect(after(["vomit"])).not.toMatch(/looks and not use|keep it as it is/u);
  });
});

describe("moths or beetles that were told of a pile they hardly eat", () => {
  const of = (answers: RugAnswers) => letterOf({ answers: { labelText: "100% polypropylene", ...answers }, enquiry: { wetNow: "no" } }).draft.text;
  it("are taken up, and what is seen is not called soil alone", () => {
    for (const answers of [{ incidents: ["insects"] }, { incidents: ["insects"], changes: ["dirty"] }] as const satisfies readonly RugAnswers[]) {
      expect(of(answers)).toMatch(/You told us of moths or beetles: please use no insecticide/u);
      expect(of(answers)).not.toMatch(SOIL_ONLY_CAUSE);
    }
    expect(of({ incidents: ["unknown"], changes: ["dirty"] })).toMatch(SOIL_ONLY_CAUSE);
  });
  it("are named once, beside bare patches and where they have likely fed on it too", () => {
    const bare = of({ incidents: ["insects"], changes: ["bare"] });
    expect(bare).toMatch(/moths or beetles|insects have fed on it/u);
    const wool = of({ labelText: "100% wool", incidents: ["insects"] });
    expect(wool).toMatch(/insects have fed on it/u);
    for (const text of [bare, wool]) expect(text).not.toMatch(/You told us of moths or beetles/u);
  });
});
