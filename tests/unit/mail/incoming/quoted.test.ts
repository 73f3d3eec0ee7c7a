import { describe, expect, it } from "vitest";
import { foldQuoted } from "../../../../lib/mail/incoming/quoted";

describe("foldQuoted", () => {
  it.each([
    ["On Fri, 27 Nov 2026 at 10:12, Lantern Yard wrote:"], ["Am 27.11.2026 um 10:12 schrieb Lantern Yard:"], ["Le 27 nov. 2026 à 10:12, Lantern Yard a écrit :"], ["-----Original Message-----"],
  ])("folds what follows “%s”", (mark) => {
    expect(foldQuoted(`Thank you.\n\n${mark}\n> Dear Ana,\n> goodbye`, null)).toEqual({ own: "Thank you.", quoted: expect.stringContaining("Dear Ana") as string });
  });
  it("folds a mark that was wrapped over two lines", () => {
    expect(foldQuoted("Yes.\n\nOn Fri, 27 Nov 2026 at 10:12, Lantern Yard <desk@lantern-yard.example>\nwrote:\n\n> Dear Ana,", null).own).toBe("Yes.");
  });
  it("folds the head that other programs put over a repetition", () => {
    expect(foldQuoted("Yes.\n\nFrom: Lantern Yard\nSent: Friday\nTo: Ana\nSubject: Your rug\n\nDear Ana, goodbye", null)).toEqual({ own: "Yes.", quoted: expect.stringMatching(/^From: Lantern Yard[\s\S]*goodbye$/u) as string });
  });
  it.each<[string, string, string]>([
    ["the question that each answer stands below",
      "On Fri, Lantern Yard wrote:\n> What happened?\nA vase fell.\n> When?\nYesterday.",
      "> What happened?\n\nA vase fell.\n\n> When?\n\nYesterday."],
    ["answers parted from the questions by blank lines, with words above and a name below",
      "Dear Mira,\nmy answers stand below.\n\nOn Fri, 27 Nov 2026 at 10:12, Lantern Yard <desk@lantern-yard.example>\nwrote:\n\n> Dear Ana,\n>\n> thank you for the photos.\n>\n> Is it still wet?\n\nNo, since Monday.\n\n> Did anybody treat it?\n\nMy husband, with soap.\n\nAna",
      "Dear Mira,\nmy answers stand below.\n\n> Is it still wet?\n\nNo, since Monday.\n\n> Did anybody treat it?\n\nMy husband, with soap.\n\nAna"],
    ["a question of several lines, whole",
      "> Is there a label on the back, and can you\n> read what it says of the pile?\n\nIt says viscose.",
      "> Is there a label on the back, and can you\n> read what it says of the pile?\n\nIt says viscose."],
    ["of a long passage the lines just before the answer",
      `${Array.from({ length: 9 }, (_, i) => `> line ${i + 1}`).join("\n")}\nYes.`,
      "> line 6\n> line 7\n> line 8\n> line 9\n\nYes."],
    ["of lines that were repeated twice what stands nearest, and no mark of who wrote",
      "> Yes, it is.\n>> Is it wool?\n>\n> On Thu, Ana wrote:\n>> Is it silk?\nI do not know.",
      ">> Is it silk?\n\nI do not know."],
    ["nothing of what follows their last word",
      "> When?\nYesterday.\n> Kind regards\n> Mira Quill",
      "> When?\n\nYesterday."],
    ["nothing of a letter that stands whole below theirs",
      "Yes, please come.\n\nAm 27.11.2026 um 10:12 schrieb Lantern Yard:\n> Dear Ana,\n>\n> may we come on Monday?\n> Mira",
      "Yes, please come."],
    ["answers in German",
      "Am 27.11.2026 um 10:12 schrieb Lantern Yard <desk@lantern-yard.example>:\n> Ist er noch nass?\nNein.\n> Wann war es?\nGestern.",
      "> Ist er noch nass?\n\nNein.\n\n> Wann war es?\n\nGestern."],
    ["answers in French",
      "Le 27 nov. 2026 à 10:12, Lantern Yard a écrit :\n> Est-il encore mouillé ?\n\nNon.",
      "> Est-il encore mouillé ?\n\nNon."],
    ["answers among marked lines that a program put a head over",
      "From: Lantern Yard\nSent: Friday\nTo: Ana\nSubject: Your rug\n\n> Is it wet?\nNo.",
      "> Is it wet?\n\nNo."],
    ["answers above a second repetition, which goes",
      "> Is it wet?\nNo.\n\nOn Thu, Ana wrote:\n> Can you clean it?",
      "> Is it wet?\n\nNo."],
    ["the signature of a telephone as it stands, and nothing before it",
      "Yes.\n\nOn Fri, Lantern Yard wrote:\n> Is it wool?\n\nSent from my telephone",
      "Yes.\n\nSent from my telephone"],
    ["an answer below our name without it, where a signature was marked",
      "> May we come on Monday?\n> -- \n> Mira Quill\n> Lantern Yard\n\nYes, please.",
      "> May we come on Monday?\n\nYes, please."],
    ["marks that stand after a blank", " > Is it wet?\n No.", "> Is it wet?\n\n No."],
  ])("keeps of what is repeated between answers %s", (_, came, own) => expect(foldQuoted(came, null).own).toBe(own));
  it("folds the whole repetition all the same, with what was kept of it, so that it can be read from end to end", () => {
    expect(foldQuoted("On Fri, Lantern Yard wrote:\n> What happened?\nA vase fell.\n> When?\nYesterday.", null).quoted).toBe("On Fri, Lantern Yard wrote:\n> What happened?\n> When?");
  });
  it("keeps nothing of a repetition alone", () => {
    expect(foldQuoted("On Fri, Lantern Yard wrote:\n> What happened?\n> When?", null)).toEqual({ own: "", quoted: "On Fri, Lantern Yard wrote:\n> What happened?\n> When?" });
  });
  it("leaves a letter without repetition as it is, also one that speaks of who wrote", () => {
    const letter = "Dear all,\n\nOn Monday my sister wrote me a letter.\nFrom: the garden, it smells.\n\nAna";
    expect(foldQuoted(letter, null)).toEqual({ own: letter, quoted: "" });
  });
  it("keeps an empty letter empty", () => expect(foldQuoted("", null)).toEqual({ own: "", quoted: "" }));
});
