import { describe, expect, it } from "vitest";
import { foldQuoted } from "../../../../lib/mail/incoming/quoted";

describe("foldQuoted", () => {
  it.each([
    ["On Fri, 27 Nov 2026 at 10:12, Lantern Yard wrote:"], ["Am 27.11.2026 um 10:12 schrieb Lantern Yard:"], ["Le 27 nov. 2026 à 10:12, Lantern Yard a écrit :"], ["-----Original Message-----"],
  ])("folds what follows “%s”", (mark) => {
    expect(foldQuoted(`Thank you.\n\n${mark}\n> Dear Ana,\n> goodbye`)).toEqual({ own: "Thank you.", quoted: expect.stringContaining("Dear Ana") as string });
  });
  it("folds a mark that was wrapped over two lines", () => {
    expect(foldQuoted("Yes.\n\nOn Fri, 27 Nov 2026 at 10:12, Lantern Yard <desk@lantern-yard.example>\nwrote:\n\n> Dear Ana,").own).toBe("Yes.");
  });
  it("folds the head that other programs put over a repetition", () => {
    expect(foldQuoted("Yes.\n\nFrom: Lantern Yard\nSent: Friday\nTo: Ana\nSubject: Your rug\n\nDear Ana, goodbye")).toEqual({ own: "Yes.", quoted: expect.stringMatching(/^From: Lantern Yard[\s\S]*goodbye$/u) as string });
  });
  it("keeps answers that stand between quoted lines", () => {
    const { own, quoted } = foldQuoted("On Fri, Lantern Yard wrote:\n> What happened?\nA vase fell.\n> When?\nYesterday.");
    expect(own).toBe("A vase fell.\nYesterday.");
    expect(quoted).toContain("What happened?");
  });
  it("leaves a letter without repetition as it is, also one that speaks of who wrote", () => {
    const letter = "Dear all,\n\nOn Monday my sister wrote me a letter.\nFrom: the garden, it smells.\n\nAna";
    expect(foldQuoted(letter)).toEqual({ own: letter, quoted: "" });
  });
  it("keeps an empty letter empty", () => expect(foldQuoted("")).toEqual({ own: "", quoted: "" }));
});
