import { describe, expect, it } from "vitest";
import { REFERRALS } from "../../../lib/trade/losses";
import { publicTables, TABLES } from "../../../lib/trade/tables";
import { PRINTED_EN, printedIn } from "../../../lib/words/printed-tables";
import { referralIn } from "../../../lib/words/referral";
import { wordsIn } from "../../../lib/words/words";

const marked = wordsIn("en-XA");

describe("printedIn", () => {
  it("has every name, explanation, heading, row and word of the tables that are printed for everybody", () => {
    const print = printedIn(marked);
    const tables = publicTables(...TABLES.map((t) => t.part));
    expect(tables.length).toBeGreaterThan(80);
    for (const { name, about, columns, rows } of tables) {
      const cells = rows.flatMap((r) => r.cells).filter((c) => typeof c === "string");
      for (const text of [name, about, ...columns.map((c) => c.name), ...rows.map((r) => r.name), ...cells]) expect(print(text), name).toBe(/\p{L}/u.test(text) ? `⟦${text}⟧` : text);
    }
  });
  it("says nothing of the tables that are for the workshop only", () => {
    const hidden = TABLES.filter((t) => t.for === "workshop");
    expect(hidden.length).toBeGreaterThan(0);
    for (const { about } of hidden) expect(PRINTED_EN.has(about), about).toBe(false);
  });
  it("leaves figures as they are, and makes a text that nobody translates an error", () => {
    expect(printedIn(marked)("2024")).toBe("2024");
    expect(printedIn(wordsIn("en-GB"))("silk")).toBe("silk");
    expect(() => printedIn(marked)("a heading of no table")).toThrow(/a heading of no table/);
  });
});

describe("referralIn", () => {
  it("says every referral in a client's words, and what is none of them as it is", () => {
    for (const { to } of REFERRALS) expect(referralIn(marked, to)).toBe(`⟦${to}⟧`);
    expect(referralIn(marked, "Aunt Polly")).toBe("Aunt Polly");
  });
});
