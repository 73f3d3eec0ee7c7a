import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LIMITS } from "../../../lib/enquiry/limits";
import type { IntakeAnswers } from "../../../lib/enquiry/questionnaire";
import { emptyValues, parseStep, valuesFromForm, valuesOf } from "../../../lib/enquiry/step-forms";
import { isFormStep, type FormStepId, type FormValues } from "../../../lib/enquiry/step-schemas";
import { STEPS, stepRow } from "../../../lib/enquiry/steps";
import { QUESTIONS } from "../../../lib/trade/questions";

const FORM_STEPS = STEPS.map((s) => s.id).filter(isFormStep);
const patchOf = (step: FormStepId, values: FormValues): IntakeAnswers => {
  const parsed = parseStep(step, values);
  if (!parsed.ok) throw new Error(`Expected ${step} to be taken but received ${JSON.stringify(parsed.errors)}`);
  return parsed.patch;
};
const errorsOf = (step: FormStepId, values: FormValues) => {
  const parsed = parseStep(step, values);
  return parsed.ok ? {} : parsed.errors;
};

describe("parseStep of a choice", () => {
  it("keeps an answer where it belongs: the enquiry or the rug", () => {
    expect(patchOf("wet-now", { answer: "damp" })).toEqual({ wetNow: "damp" });
    expect(patchOf("shine", { answer: "satin" })).toEqual({ rug: { shine: "satin" } });
  });
  it("takes “I’m not sure” on every page with a list", () => {
    for (const step of FORM_STEPS) {
      const { question } = stepRow(step);
      if (!question) continue;
      const answer = QUESTIONS[question].kind === "many" ? ["unsure"] : "unsure";
      expect(parseStep(step, { answer }).ok, step).toBe(true);
    }
  });
  it.each([[undefined], ["glitter"], [["satin"]]])("asks for one of the answers after %j", (answer) => {
    expect(errorsOf("shine", answer === undefined ? {} : { answer })).toEqual({ answer: "Choose one. “I’m not sure” is an answer too." });
  });
  it("takes several and drops a contradiction", () => {
    expect(patchOf("happened", { answer: ["nothing", "spill", "sun"] })).toEqual({ rug: { incidents: ["spill", "sun"] } });
  });
  it("wants at least one of several", () => expect(errorsOf("happened", { answer: [] })).toHaveProperty("answer"));
  it("never throws, whatever is sent", () => {
    fc.assert(fc.property(fc.constantFrom(...FORM_STEPS), fc.dictionary(fc.string(), fc.oneof(fc.string(), fc.array(fc.string()))), (step, values) => {
      expect(typeof parseStep(step, values).ok).toBe("boolean");
    }));
  });
});

describe("parseStep of the label", () => {
  it("keeps what was typed", () => {
    expect(patchOf("label", { answer: "typed", labelText: " 100 % Viscose " })).toEqual({ rug: { labelFound: "typed", labelText: "100 % Viscose" } });
  });
  it("wants words where there is a label", () => expect(errorsOf("label", { answer: "typed", labelText: "  " })).toHaveProperty("labelText"));
  it("forgets words where there is none after all", () => {
    expect(patchOf("label", { answer: "none", labelText: "100 % Viscose" })).toEqual({ rug: { labelFound: "none", labelText: "" } });
  });
  it("takes as many characters as a label may have, and not one more", () => {
    expect(errorsOf("label", { answer: "typed", labelText: "x".repeat(LIMITS.labelChars) })).toEqual({});
    expect(errorsOf("label", { answer: "typed", labelText: "x".repeat(LIMITS.labelChars + 1) })).toHaveProperty("labelText");
  });
});

describe("parseStep of the price", () => {
  it("reads year, price and currency", () => {
    expect(patchOf("price", { boughtYear: "2019", price: "4,200", currency: "GBP" })).toEqual({ rug: { boughtYear: 2019, price: 4200, currency: "GBP" } });
  });
  it("takes an empty page, and says which earlier answers were emptied", () => {
    expect(parseStep("price", { boughtYear: "", price: "", currency: "EUR" })).toMatchObject({ ok: true, cleared: ["rug.boughtYear", "rug.price", "rug.currency"] });
  });
  it("says which field is no number", () => expect(Object.keys(errorsOf("price", { boughtYear: "then", price: "much" }))).toEqual(["boughtYear", "price"]));
  it.each([[LIMITS.firstYear - 1, false], [LIMITS.firstYear, true]])("about the year %d: %j", (year, isTaken) => {
    expect(parseStep("price", { boughtYear: String(year) }).ok).toBe(isTaken);
  });
});

describe("parseStep of the size", () => {
  it("keeps centimetres", () => expect(patchOf("size", { unit: "cm", widthCm: "170", lengthCm: "240,5" })).toEqual({ rug: { widthCm: 170, lengthCm: 240.5 } }));
  it("turns feet and inches into whole centimetres", () => {
    expect(patchOf("size", { unit: "ft", widthFt: "5", widthIn: "7", lengthFt: "8", lengthIn: "" })).toEqual({ rug: { widthCm: 170, lengthCm: 244 } });
  });
  it("reads a unit that was typed, in the fields of either", () => {
    expect(patchOf("size", { unit: "cm", widthCm: "80 in", lengthCm: "8’2\"" })).toEqual({ rug: { widthCm: 203, lengthCm: 249 } });
    expect(patchOf("size", { unit: "ft", widthFt: "170 cm", widthIn: "", lengthFt: "", lengthIn: "80" })).toEqual({ rug: { widthCm: 170, lengthCm: 203 } });
    expect(patchOf("size", { unit: "ft", widthFt: "5 ft", widthIn: "7 in" })).toEqual({ rug: { widthCm: 170 } });
  });
  it("refuses a unit that it does not know, or two that do not go together", () => {
    const says = "Write the width as a number, alone or with one of these units: mm, cm, m, ft, in.";
    expect(errorsOf("size", { unit: "cm", widthCm: "2 yards" })).toEqual({ widthCm: says });
    expect(errorsOf("size", { unit: "ft", widthFt: "170 cm", widthIn: "7" })).toEqual({ widthFt: says });
  });
  it("does not read the fields of the other unit", () => expect(patchOf("size", { unit: "cm", widthCm: "170", widthFt: "9" })).toEqual({ rug: { widthCm: 170 } }));
  it.each([[LIMITS.minCm - 1, false], [LIMITS.minCm, true], [LIMITS.maxCm, true], [LIMITS.maxCm + 1, false]])("about a width of %d cm: %j", (cm, isTaken) => {
    expect(parseStep("size", { unit: "cm", widthCm: String(cm) }).ok).toBe(isTaken);
  });
  it("reports feet beside the field they were typed in", () => expect(Object.keys(errorsOf("size", { unit: "ft", widthFt: "wide" }))).toEqual(["widthFt"]));
});

describe("parseStep of the contact", () => {
  it("takes a name with either way back", () => {
    expect(parseStep("contact", { name: "Ada Invented", email: "ada@example.org" }).ok).toBe(true);
    expect(parseStep("contact", { name: "Ada Invented", telephone: "01 234" }).ok).toBe(true);
  });
  it("wants a name and a way back", () => expect(Object.keys(errorsOf("contact", { name: " " }))).toEqual(["name", "email"]));
  it("refuses what is no address, even beside a telephone number", () => {
    expect(errorsOf("contact", { name: "Ada Invented", email: "ada at example", telephone: "01 234" })).toHaveProperty("email");
  });
  it.each([["call me", false], ["0123", false], ["0 12 34", true], ["+00 1632 960 111", true]])("about the telephone number %j: %j", (telephone, isTaken) => {
    expect(errorsOf("contact", { name: "Ada Invented", email: "ada@example.org", telephone })).toEqual(isTaken ? {} : { telephone: "Write the telephone number in figures, or leave it empty." });
  });
  it("says when an earlier address was emptied", () => {
    expect(parseStep("contact", { name: "Ada Invented", email: "", telephone: "01 234" })).toMatchObject({ cleared: ["contact.email"] });
  });
});

describe("emptyValues", () => {
  it("takes back what was said before on a page without a list of answers", () => {
    expect(parseStep("price", emptyValues("price"))).toMatchObject({ ok: true, cleared: ["rug.boughtYear", "rug.price", "rug.currency"] });
    expect(parseStep("size", emptyValues("size"))).toMatchObject({ ok: true, cleared: ["rug.widthCm", "rug.lengthCm"] });
    expect(parseStep("story", emptyValues("story"))).toMatchObject({ ok: true, patch: { rug: { story: "" } } });
  });
  it("is not taken on a page with a list", () => expect(parseStep("shine", emptyValues("shine")).ok).toBe(false));
});

describe("valuesOf", () => {
  it("gives fields that parse to the same answers again", () => {
    const answers: IntakeAnswers = {
      wetNow: "no", reason: "routine", contact: { name: "Ada Invented", email: "ada@example.org", telephone: "01 234" },
      rug: {
        labelFound: "typed", labelText: "wool", sellerSaid: "wool", sellerWords: "fine wool", boughtWhere: "online", boughtPlace: "Hallowmere", boughtYear: 2015,
        price: 1234.5, currency: "USD", widthCm: 120, lengthCm: 180, shine: "none", incidents: ["sun", "wear"], story: "It was my aunt’s.",
      },
    };
    for (const step of ["wet-now", "reason", "label", "seller", "bought", "price", "size", "shine", "happened", "story", "contact"] as const) {
      const { rug, ...rest } = patchOf(step, valuesOf(step, answers));
      expect(answers, step).toMatchObject({ ...rest, ...(rug ? { rug } : {}) });
    }
  });
});

describe("a price in the workshop's currency", () => {
  it("is asked for in it, unless it was told in another, and is kept with it", () => {
    expect(valuesOf("price", {}, { currency: "NZD" })).toMatchObject({ currency: "NZD" });
    expect(valuesOf("price", { rug: { price: 900, currency: "CAD" } }, { currency: "NZD" })).toMatchObject({ price: "900", currency: "CAD" });
    expect(parseStep("price", { boughtYear: "2019", price: "A$1,200", currency: "AUD" })).toMatchObject({ ok: true, patch: { rug: { price: 1200, currency: "AUD" } } });
  });
  it.each(["CHF", "$", "aud", "A$"])("takes no currency that the tables cannot exchange: %s", (currency) => {
    expect(parseStep("price", { boughtYear: "", price: "900", currency })).toMatchObject({ ok: false });
  });
});

describe("valuesFromForm", () => {
  const form = (...pairs: [string, string][]) => {
    const data = new FormData();
    for (const [name, value] of pairs) data.append(name, value);
    return data;
  };
  it("gathers several of one name where the page takes several, even when only one came", () => {
    expect(valuesFromForm("happened", form(["answer", "spill"], ["answer", "sun"])).answer).toEqual(["spill", "sun"]);
    expect(valuesFromForm("happened", form(["answer", "spill"])).answer).toEqual(["spill"]);
  });
  it("takes one where the page takes one", () => expect(valuesFromForm("shine", form(["answer", "none"])).answer).toBe("none"));
  it("leaves files out", () => {
    const data = form(["answer", "none"]);
    data.append("photo", new Blob(["x"]), "x.jpg");
    expect(valuesFromForm("shine", data)).toEqual({ answer: "none" });
  });
});

describe("a size in the workshop's unit", () => {
  it("opens in feet and inches where the workshop counts so, and comes back as the same centimetres", () => {
    const values = valuesOf("size", { rug: { widthCm: 170, lengthCm: 244 } }, { areaUnit: "sqft" });
    expect(values).toEqual({ unit: "ft", widthFt: "5", widthIn: "7", lengthFt: "8", lengthIn: "0" });
    expect(parseStep("size", values)).toMatchObject({ ok: true, patch: { rug: { widthCm: 170, lengthCm: 244 } } });
    expect(valuesOf("size", {}, { areaUnit: "sqft" })).toEqual({ unit: "ft", widthFt: "", widthIn: "", lengthFt: "", lengthIn: "" });
  });
  it("takes either unit, and both in one field", () => {
    for (const values of [{ unit: "cm", widthCm: "1.7 m", lengthCm: "240" }, { unit: "cm", widthCm: "1 m 70", lengthCm: "2,4 m" }, { unit: "ft", widthFt: "5 ft 7 in", lengthFt: "7", lengthIn: "10.5" }] as const)
      expect(parseStep("size", values)).toMatchObject({ ok: true, patch: { rug: { widthCm: 170, lengthCm: 240 } } });
  });
});
