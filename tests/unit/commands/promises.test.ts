import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { Readable } from "node:stream";
import { afterAll, describe, expect, it } from "vitest";
import { promises } from "../../../lib/commands/promises";
import { assessmentOf } from "../reply/make";

const folder = mkdtempSync(path.join(tmpdir(), "promises-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (name: string, content: string) => { const at = path.join(folder, name); writeFileSync(at, content); return at; };
const run = async (args: string[], stdin = "") => JSON.parse(await promises(args, Readable.from([stdin]))) as { sentence: string; rule: string; why: string; suggestion: string }[];

describe("npm run promises", () => {
  it("prints sentence, rule, why and suggestion", async () => {
    const [first, ...rest] = await run([file("letter.txt", "Thank you for writing.\n\nYour rug is silk. We would test it first.")]);
    expect(first).toMatchObject({ sentence: "Your rug is silk.", rule: "certainty" });
    expect(first?.why.length).toBeGreaterThan(20);
    expect(first?.suggestion).toMatch(/probably/);
    expect(rest).toEqual([]);
  });
  it("reads standard input, and judges each line by itself with --lines", async () => {
    const lines = "We cannot promise that it comes out.\nThe stain will come out.\n\nIf the test goes well,";
    expect((await run(["-", "--lines"], lines)).map((o) => o.sentence)).toEqual(["The stain will come out."]);
  });
  it("knows more with an assessment", async () => {
    const assessment = assessmentOf({ fibres: { viscose: 0.97 }, evidence: [{ what: "test:burn", value: "x", strength: "bench", decibans: 12 }], rest: { improvement: { low: 5, median: 20, high: 45 } } });
    const at = file("assessment.json", JSON.stringify(assessment));
    const letter = file("tested.txt", "It is viscose, by a test. Cleaning may bring back between 60 and 90 per cent of the colour. Please do not clean it at home.");
    expect((await run([letter, "--assessment", at])).map((o) => o.rule)).toEqual(["number"]);
    expect((await run([letter])).map((o) => o.rule)).toEqual(["certainty"]);
  });
  it.each([
    [[], /Say which letter/], [["a", "b"], /Say which letter/], [["--table", "a"], /no option --table/], [["a", "--assessment"], /needs a file/],
    [[path.join(folder, "none.txt")], /cannot be read: there is no such file/], [[folder], /it is a folder/],
  ] as const)("refuses %j in one line", async (args, say) => {
    await expect(promises([...args], Readable.from([""]))).rejects.toThrow(say);
  });
  it("refuses what is no text, instead of passing it as honest", async () => {
    const picture = path.join(folder, "letter.jpg");
    writeFileSync(picture, Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0x41, 0x42]));
    await expect(promises([picture], Readable.from([""]))).rejects.toThrow(/no plain text in UTF-8/);
    await expect(promises([file("nul.txt", "Good day.\0")], Readable.from([""]))).rejects.toThrow(/no plain text/);
    await expect(promises(["-"], Readable.from([Buffer.from([0xc3, 0x28])]))).rejects.toThrow(/standard input is no plain text/);
  });
  it("refuses what is no assessment", async () => {
    const letter = file("l.txt", "Good day.");
    await expect(promises([letter, "--assessment", file("x.json", "{")], Readable.from([""]))).rejects.toThrow(/is not JSON/);
    await expect(promises([letter, "--assessment", file("y.json", "{}")], Readable.from([""]))).rejects.toThrow(/not an assessment of one rug/);
  });
});
