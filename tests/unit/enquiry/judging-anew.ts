import { describe, expect, it, onTestFinished } from "vitest";
import { countJudgedOtherwise, judgeOpenAnew, MOST_AT_ONCE } from "../../../lib/enquiry/judge-open-anew";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import type { RugAnswers } from "../../../lib/trade/questions";
import { readSettings } from "../../../lib/workshop/settings";
import { good, later, NOW, staff, submitted, SYSTEM } from "./workshop";

const owner = () => staff("owner", "Nell Harrow");
const WOOL: RugAnswers = { labelFound: "typed", labelText: "100% wool", widthCm: 200, lengthCm: 300, incidents: ["nothing"], changes: ["dirty"], touch: "springy", back: "knots", age: "2-5" };
const dirtyWool = () => submitted({ wetNow: "no", reason: "routine", rug: WOOL });
const rugOf = async (enquiryId: string) => {
  const view = good(await readEnquiry(await owner(), enquiryId, AFTERWARDS));
  return { money: view.rugs[0]?.assessment?.money, currencyNow: view.rugs[0]?.currencyNow, text: view.draft?.text ?? "", number: view.draft?.number ?? 0, history: view.history.map((h) => h.what) };
};
/** Later than anything that other tests have judged. */
const AFTERWARDS = later(1_000_000);
/** Presses the button until nothing is left. How many each press judged. */
async function judgeAll(): Promise<number[]> {
  for (const presses: number[] = []; ;) {
    const turn = good(await judgeOpenAnew(await owner(), AFTERWARDS));
    presses.push(turn.judged);
    if (turn.left === 0) return presses;
  }
}

/** A workshop that changes its currency, its prices or its place. */
export function judgingAnew(): void {
  describe("a change of currency", () => {
    it("calls no amount by another name: what was judged keeps its currency until it is judged anew, and then comes in the new one with its draft", async () => {
      const before = await readSettings();
      onTestFinished(async () => void good(await saveSettings(SYSTEM, before)));
      good(await saveSettings(SYSTEM, { ...before, currency: "GBP", prices: { cleanPerM2: 40, cleanMinimum: 100, bindingPerM: 30 } }));
      const [untouched, edited, over] = [await dirtyWool(), await dirtyWool(), await dirtyWool()];
      for (let n = 0; n < MOST_AT_ONCE; n += 1) await dirtyWool();
      const { number, text } = await rugOf(edited.enquiryId);
      good(await saveDraft(await owner(), { enquiryId: edited.enquiryId, from: number, subject: "Your rug", text: `${text}\nWe close in August.` }, later(1)));
      good(await moveEnquiry(await owner(), { enquiryId: over.enquiryId, from: "new", to: "declined" }, later(1)));
      expect((await rugOf(untouched.enquiryId)).text).toContain("£");

      const saved = good(await saveSettings(await owner(), { ...(await readSettings()), currency: "USD" }, later(2)));
      expect(saved.settings.prices).toEqual({ cleanPerM2: 52.74, cleanMinimum: 131.85, bindingPerM: 39.56 });
      expect(await rugOf(untouched.enquiryId)).toMatchObject({ money: { currency: "GBP" }, currencyNow: "USD", text: expect.stringContaining("£") });
      expect(good(await countJudgedOtherwise(await owner()))).toBeGreaterThanOrEqual(2);

      // More than one press can take: each takes as many as it may, and the last what is left.
      const presses = await judgeAll();
      expect(presses.length).toBeGreaterThan(1);
      expect(presses.slice(0, -1).every((judged) => judged === MOST_AT_ONCE)).toBe(true);
      const anew = await rugOf(untouched.enquiryId);
      // 200 × 300 cm at 52.74 dollars a square metre, the low end being the plain rate.
      expect(anew.money?.currency).toBe("USD");
      expect(anew.money?.clean?.low).toBeCloseTo(6 * 52.74, 2);
      expect(anew.currencyNow).toBeNull();
      expect(anew.text).not.toContain("£");
      expect(anew.text).toContain("US$");
      expect(anew.history.join()).toMatch(/assessed a rug/);
      expect((await rugOf(edited.enquiryId)).text).toMatch(/£[^]*We close in August/);
      expect(await rugOf(over.enquiryId)).toMatchObject({ money: { currency: "GBP" }, currencyNow: "USD" });
      expect(good(await countJudgedOtherwise(await owner()))).toBe(0);
      expect(good(await judgeOpenAnew(await owner(), AFTERWARDS))).toEqual({ judged: 0, left: 0 });
    });
    it("is the owner's to judge anew", async () => {
      for (const role of ["reviewer", "trainee"] as const) {
        const caller = await staff(role, "X");
        expect(await judgeOpenAnew(caller, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
        expect(await countJudgedOtherwise(caller)).toMatchObject({ ok: false, code: "not-allowed" });
      }
    });
  });
}
