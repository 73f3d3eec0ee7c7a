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
const silent = () => {};
const run = async (args: string[], stdin = "", tell: (note: string) => void = silent) => JSON.parse(await promises(args, Readable.from([stdin]), tell)) as { sentence: string; rule: string; why: string; suggestion: string }[];

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
    await expect(promises([...args], Readable.from([""]), silent)).rejects.toThrow(say);
  });
  it("refuses what is no text, instead of passing it as honest", async () => {
    const picture = path.join(folder, "letter.jpg");
    writeFileSync(picture, Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0x41, 0x42]));
    await expect(promises([picture], Readable.from([""]), silent)).rejects.toThrow(/no plain text in UTF-8/);
    await expect(promises([file("nul.txt", "Good day.\0")], Readable.from([""]), silent)).rejects.toThrow(/no plain text/);
    await expect(promises(["-"], Readable.from([Buffer.from([0xc3, 0x28])]), silent)).rejects.toThrow(/standard input is no plain text/);
  });
  it.each([
    ["", /could be judged: it holds no words/], ["\n \n", /holds no words/], ["> Your rug is silk.\n", /holds only quoted lines/],
    ["Ihr Teppich ist aus reiner Seide, und der Fleck geht ganz sicher heraus, das verspreche ich.", /is not in English/], ["Ваш ковер из чистого шелка.", /is not in English/],
  ])("says that it could judge nothing of %j, instead of passing it", async (letter, say) => {
    await expect(promises([file("nothing.txt", letter)], Readable.from([""]), silent)).rejects.toThrow(say);
    await expect(promises(["-", "--lines"], Readable.from([letter]), silent)).rejects.toThrow(say);
  });
  it("leaves what the client wrote out of it, and what is in another language, and says so", async () => {
    const told: string[] = [];
    const letter = "> Your rug is silk.\n> The stain will come out.\nWe cannot promise that.\nDer Fleck geht ganz sicher heraus, das verspreche ich Ihnen gerne.\nYour rug is wool.";
    expect((await run([file("answer.txt", letter)], "", (...notes) => told.push(...notes))).map((o) => o.sentence)).toContain("Your rug is wool.");
    expect((await run([file("answer.txt", letter)])).map((o) => o.sentence).join()).not.toMatch(/silk|stain/);
    expect((await run(["-", "--lines"], letter)).map((o) => o.sentence).join()).not.toMatch(/silk|stain/);
    expect(told).toEqual(["2 quoted lines (“>”) are somebody else’s and were not judged.", "One line is not in English, and what it says cannot be judged."]);
  });
  it("refuses what is no assessment", async () => {
    const letter = file("l.txt", "Good day.");
    await expect(promises([letter, "--assessment", file("x.json", "{")], Readable.from([""]), silent)).rejects.toThrow(/is not JSON/);
    await expect(promises([letter, "--assessment", file("y.json", "{}")], Readable.from([""]), silent)).rejects.toThrow(/not an assessment of one rug/);
  });
});
