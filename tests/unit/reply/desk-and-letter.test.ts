import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { headlineOf } from "../../../lib/reply/headline";
import type { Assessment } from "../../../lib/triage/assessment";
import { anyInput, anyWorth } from "./any-input";
import { DEMO_CLIENTS, lettersTo } from "./must-say/demo-letters";

type Judged = Pick<Assessment, "urgency" | "advice" | "beyondRepair" | "findings">;
interface Told { readonly desk: string; readonly slip: string; readonly letter: string; readonly isUrgent: boolean }
const HURRIES = /sooner is better|longer it stays/;
const CALM = /calls for cleaning now|soil and nothing worse/;
/** The letter's own verdict, and its own doubt. */
const NOT_WORTH = /that (?:(?:saving|cleaning) it is not worth|cleaning would bring back too little to be worth)[^£]*an inspection could change it/;
const OPEN = /may not be worth the money|as likely as not that saving it is not worth the cost/;
const GOES_AHEAD = /^(?:Clean it as usual|Quote, with limits|Invite it for inspection and testing|Ask for more|Answer with first aid)$/;
const IS_AGAINST = /^Advise against cleaning: |likely not worth its cost/;

/** What two people who read the desk and the letter would hold against each other: written from the sentences, not from the tables. */
const contradictions = ({ desk, slip, letter, isUrgent }: Told): string[] => [
  ...(!isUrgent && HURRIES.test(letter) ? [`the slip can wait (“${slip}”), the letter hurries`] : []),
  ...(isUrgent && CALM.test(letter) ? [`the slip cannot wait (“${slip}”), the letter sees nothing to do`] : []),
  ...(NOT_WORTH.test(letter) && GOES_AHEAD.test(desk) ? [`the desk says “${desk}”, the letter that it is not worth it`] : []),
  ...(!NOT_WORTH.test(letter) && IS_AGAINST.test(desk) ? [`the desk says “${desk}”, the letter does not`] : []),
  ...(OPEN.test(letter) && /^Clean it as usual$/.test(desk) ? [`the desk says “${desk}”, the letter that it may not be worth it`] : []),
];

const told = ({ assessment, letter }: { assessment: Judged; letter: string }): Told => ({
  desk: headlineOf(assessment).says, slip: assessment.urgency.why, letter: letter.replaceAll("\u00a0", " "), isUrgent: assessment.urgency.level !== "can-wait",
});

describe("the desk and the letter of one assessment", () => {
  it.each([["any", anyInput, 0], ["evenly drawn", anyWorth, 20]] as const)("say the same of haste and of worth, over %s made-up assessments of one rug", (_, any, least) => {
    const seen = { hurried: 0, notWorth: 0, open: 0 };
    fc.assert(fc.property(any, (input) => {
      const [rug] = input.assessments;
      // Of an old piece the letter leaves the worth to a valuer, after a flood everything to the firm that comes first.
      if (!rug || rug.answers.age === "antique" || rug.answers.incidents?.includes("flood")) return;
      const { text } = composeDraft({ ...input, assessments: [rug] });
      seen.hurried += Number(HURRIES.test(text));
      seen.notWorth += Number(NOT_WORTH.test(text));
      seen.open += Number(OPEN.test(text));
      expect(contradictions(told({ assessment: rug.assessment, letter: text }))).toEqual([]);
    }), { numRuns: 3000 });
    for (const count of Object.values(seen)) expect(count).toBeGreaterThanOrEqual(least);
  }, 120_000);

  it.each(DEMO_CLIENTS)("say the same to %s", (client) => {
    for (const { letter: { draft, rugs } } of lettersTo(client))
      if (rugs.length === 1) expect(contradictions(told({ assessment: rugs[0]!.assessment, letter: draft.text }))).toEqual([]);
  });
});

describe("headlineOf", () => {
  const of = (action: Assessment["advice"]["action"], beyondRepair: number | null, age?: string) => headlineOf({
    advice: { action, why: "As weighed.", referTo: null, losses: [] }, beyondRepair,
    findings: age ? [{ what: "age", value: age, strength: "told", from: "client", decibans: 0, staff: "", client: "" }] : [],
  });
  it("advises outright against cleaning only from likely on (.66), as the letter does", () => {
    expect(of("advise-claim-or-replacement", 0.66).says).toMatch(/^Advise against cleaning: keep/);
    for (const beyond of [0.65, 0.33, 0, null]) expect(of("advise-claim-or-replacement", beyond).says).toMatch(/^Advise against cleaning until it has been seen$/);
  });
  it("asks nobody in before saying that it is likely not worth its cost", () => {
    for (const action of ["inspect-and-test", "quote-with-limits", "routine-clean"] as const) {
      expect(of(action, 0.66).says).toMatch(/likely not worth its cost; inspect it if they wish/);
      expect(of(action, 0.32)).toMatchObject({ why: "As weighed." });
    }
  });
  it("says nothing of the worth of an antique", () => expect(of("inspect-and-test", 0.9, "antique").says).not.toMatch(/worth/));
});
