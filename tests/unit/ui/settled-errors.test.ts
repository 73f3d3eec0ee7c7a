import { describe, expect, it } from "vitest";
import { settledBy, standing } from "../../../lib/ui/settled-errors";

const form = { errors: { text: "Too long.", reason: "Say why.", when: "Choose one.", form: "Somebody changed it." }, settles: { text: ["reason"] }, isToChange: (name: string) => name !== "when" };

describe("settledBy", () => {
  it("settles a field's own error, those it puts right, and those that nobody can change by themselves", () => {
    expect(settledBy("text", form)).toEqual(["text", "reason", "when"]);
    expect(settledBy("reason", form)).toEqual(["reason", "when"]);
    expect(settledBy("place", form)).toEqual(["when"]);
  });
  it("settles nothing where nothing is wrong, and never what is wrong with the whole form", () => {
    expect(settledBy("text", { ...form, errors: {} })).toEqual([]);
    expect(settledBy("form", { ...form, errors: { form: "Somebody changed it." } })).toEqual([]);
  });
});

describe("standing", () => {
  it("leaves what is not settled", () => expect(standing(form.errors, ["text", "when"])).toEqual({ reason: "Say why.", form: "Somebody changed it." }));
});
