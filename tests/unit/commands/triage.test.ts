import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { Readable } from "node:stream";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CommandError } from "../../../lib/commands/command";
import { triage } from "../../../lib/commands/triage";
import type { Assessment } from "../../../lib/triage/assessment";

const CASES = "tests/cases";
const NOW = new Date("2026-03-01T09:00:00Z");
const io = (stdin = "") => ({ stdin: Readable.from([stdin]), now: NOW });
type Output = Assessment & { draft: string; subject: string; title: string; photos: { path: string; colours: unknown[]; quality: { remark: string | null } }[] };
const one = async (name: string): Promise<Output> => JSON.parse(await triage([`${CASES}/${name}.json`], io())) as Output;
const verdict = (a: Output, method: string) => a.methods.find((m) => m.method === method)?.verdict;
const chance = (a: Output, mechanism: string) => a.mechanisms.find((m) => m.mechanism === mechanism)?.probability ?? 0;
const fibre = (a: Output, id: string) => a.fibres.find((f) => f.fibre === id)?.probability ?? 0;

let folder = "";
beforeAll(() => { folder = mkdtempSync(path.join(tmpdir(), "triage-test-")); });
afterAll(() => rmSync(folder, { recursive: true }));
const written = (name: string, content: string) => { const file = path.join(folder, name); writeFileSync(file, content); return file; };

describe("npm run triage on the case files", () => {
  it("viscose label, pet accident, kitchen cleaner: probably beyond repair, nothing wet, no promise", async () => {
    const a = await one("viscose-label-pet");
    expect(a.fibres[0]?.fibre).toBe("viscose");
    expect(fibre(a, "viscose")).toBeLessThanOrEqual(0.95);
    expect(a.beyondRepair).toBeGreaterThanOrEqual(0.7);
    expect(a.improvement?.median).toBeLessThan(25);
    expect(chance(a, "urine-old") + chance(a, "urine-fresh")).toBeGreaterThan(0.9);
    expect(["advise-cut-down", "advise-claim-or-replacement"]).toContain(a.advice.action);
    for (const m of ["immersion-wash", "wet-hand-clean", "at-home"]) expect(verdict(a, m), m).toBe("ruled-out");
    expect(a.lifeYears?.median).toBeLessThan(6);
  });

  it("points nobody who only left a telephone number to a page of their own", async () => {
    const letter = async (client: object) => (JSON.parse(await triage(["-"], io(JSON.stringify({ wetNow: "wet", reason: "just-happened", client, rugs: [{ labelText: "wool", incidents: ["spill"], liquid: "wine", since: "hour" }] })))) as Output).draft;
    expect(await letter({ name: "Ana Example", email: "ana@mail.example" })).toContain("your own page");
    expect(await letter({ name: "Ana Example", telephone: "01632 960001" })).not.toMatch(/own page|first letter/);
  });

  it("art silk without a label: viscose likely but not certain, few years left, nothing wet suitable", async () => {
    const a = await one("art-silk-no-label");
    expect(a.fibres[0]?.fibre).toBe("viscose");
    expect(a.fibres[0]?.low).toBeLessThan(0.75);
    expect(chance(a, "matting")).toBeGreaterThan(0.8);
    expect(a.lifeYears?.median).toBeLessThan(5);
    expect(fibre(a, "silk")).toBeLessThan(0.05);
    for (const m of ["immersion-wash", "wet-hand-clean", "low-moisture", "at-home"]) expect(verdict(a, m), m).not.toBe("suitable");
    expect(a.nextQuestions.map((q) => q.id)).not.toContain("label");
  });

  it("wool with coffee two days ago: comes back well, soon, with limits and after a test", async () => {
    const a = await one("wool-coffee");
    expect(a.fibres[0]?.fibre).toBe("wool");
    expect(chance(a, "food-fresh")).toBeGreaterThan(0.9);
    expect(a.improvement?.median).toBeGreaterThan(65);
    expect(a.improvement?.high).toBeLessThan(100);
    expect(a.beyondRepair).toBeLessThan(0.2);
    expect(["two-days", "a-week"]).toContain(a.urgency.level);
    expect(["quote-with-limits", "inspect-and-test"]).toContain(a.advice.action);
    expect(a.lifeYears?.median).toBeGreaterThan(10);
  });

  it("silk claimed at a bargain price: silk unlikely, the name not settled, no improvement invented", async () => {
    const a = await one("silk-claim-bargain");
    expect(fibre(a, "silk")).toBeLessThan(0.2);
    expect(fibre(a, "viscose")).toBeGreaterThan(fibre(a, "silk"));
    expect(a.improvement).toBeNull();
    expect(a.why.improvement).toBeTruthy();
    expect(["inspect-and-test", "ask-for-more"]).toContain(a.advice.action);
    expect(a.nextQuestions.some((q) => q.kind === "bench-test")).toBe(true);
    expect(a.urgency.level).toBe("can-wait");
  });

  it("a trade enquiry, still damp and browning: hours, first aid, no method suitable wet", async () => {
    const a = await one("trade-browning");
    expect(a.urgency).toMatchObject({ level: "hours", why: expect.stringMatching(/damp/) });
    expect(chance(a, "browning-cleaning")).toBeGreaterThan(0.85);
    expect(a.firstAid).not.toBeNull();
    expect(a.advice.action).toBe("first-aid");
    expect(verdict(a, "immersion-wash")).toBe("ruled-out");
    expect((a.improvement?.high ?? 0) - (a.improvement?.low ?? 0)).toBeGreaterThan(40);
    expect(a.draft).not.toMatch(/\bpH\b|peroxide|dithionite|citric|acetic|bisulphite/i);
  });

  it("an empty enquiry: everything wide, nothing certain, more is asked", async () => {
    const a = await one("empty");
    expect(a.fibres[0]?.probability).toBeLessThan(0.5);
    expect((a.improvement?.high ?? 0) - (a.improvement?.low ?? 0)).toBeGreaterThan(60);
    expect((a.lifeYears?.high ?? 0) / (a.lifeYears?.low ?? 1)).toBeGreaterThan(8);
    for (const m of a.mechanisms) expect(m.probability, m.mechanism).toBeLessThan(0.6);
    expect(a.advice.action).toBe("ask-for-more");
    expect(a.nextQuestions[0]?.id).toBe("wetNow");
    for (const m of ["immersion-wash", "wet-hand-clean", "low-moisture", "solvent-dry", "at-home"]) expect(verdict(a, m), m).not.toBe("suitable");
    expect(a.money).toBeNull();
  });

  it("every case: what the command must give, a draft, and no fibre over .90 without a label", async () => {
    const names = readdirSync(CASES).map((f) => path.basename(f, ".json"));
    expect(names).toHaveLength(6);
    for (const name of names) {
      const a = await one(name);
      for (const key of ["fibres", "mechanisms", "improvement", "lifeYears", "beyondRepair", "methods", "advice", "urgency", "firstAid", "nextQuestions", "findings", "draft", "modelVersion"]) expect(a, name).toHaveProperty(key);
      expect(a.draft.length, name).toBeGreaterThan(200);
      for (let i = 1; i < a.fibres.length; i += 1) expect(a.fibres[i]?.probability).toBeLessThanOrEqual(a.fibres[i - 1]?.probability ?? 0);
      const hasLabel = JSON.stringify(JSON.parse(readFileSync(`${CASES}/${name}.json`, "utf8"))).includes("labelText");
      if (!hasLabel) for (const f of a.fibres) expect(f.probability, `${name} ${f.fibre}`).toBeLessThanOrEqual(0.9);
    }
  });
});

describe("triage", () => {
  it("gives the same answer twice, and from standard input", async () => {
    const file = `${CASES}/wool-coffee.json`;
    const first = await triage([file], io());
    expect(await triage([file], io())).toBe(first);
    expect(await triage(["-"], io(readFileSync(file, "utf8")))).toBe(first);
  });
  it("gives rugs: [] for several, each with everything", async () => {
    const out = JSON.parse(await triage(["-"], io('{"rugs":[{"sellerSaid":"silk"},{"incidents":["spill"]}]}'))) as { rugs: Output[] };
    expect(out.rugs).toHaveLength(2);
    for (const rug of out.rugs) expect(rug.fibres[0]?.probability).toBeGreaterThan(0);
  });
  it("prints a table for people", async () => {
    const table = await triage([`${CASES}/viscose-label-pet.json`, "--table"], io());
    expect(table).toContain("Fibre of the pile");
    expect(table).toMatch(/viscose +█+·* +9\d %/);
    expect(table).toContain("provisional, not inspected");
    expect(table).toMatch(/\+\d+\.\d {2}The label says 100 % viscose\./);
    expect(table.match(/^Dear Rosalind Tern,$/gm)).toHaveLength(1);
  });
  it("prints the JSON Schema of its input", async () => {
    const schema = JSON.parse(await triage(["--schema"], io())) as { type: string; properties: Record<string, unknown>; additionalProperties: boolean; required: string[] };
    expect(schema).toMatchObject({ type: "object", additionalProperties: false, required: ["rugs"] });
    expect(Object.keys(schema.properties)).toEqual(expect.arrayContaining(["rugs", "wetNow", "reason", "client"]));
  });

  it.each([
    ["an unknown key", '{"rugs":[{"colour":"red"}]}', /rugs\[0\] has no key “colour”/],
    ["a wrong type", '{"rugs":[{"price":"dear"}]}', /rugs\[0\]\.price/],
    ["an answer that does not exist", '{"rugs":[{"shine":"glitter"}]}', /rugs\[0\]\.shine must be one of: none, two-tone/],
    ["no rug", '{"rugs":[]}', /at least one rug/],
    ["not an enquiry", "[]", /must be an? object/],
    ["not JSON", "{rugs", /is not JSON/],
    ["a photo that is not there", '{"rugs":[{"photos":[{"path":"nowhere.jpg"}]}]}', /nowhere\.jpg: there is no such photo/],
  ])("%s: one clear line", async (_, json, says) => {
    const error = await triage([written("bad.json", json)], io()).then(() => null, (e: unknown) => e);
    expect(error).toBeInstanceOf(CommandError);
    expect((error as Error).message).toMatch(says);
    expect((error as Error).message).not.toContain("\n");
  });
  it("a missing file, an unknown option and no file at all are said too", async () => {
    await expect(triage(["nowhere.json"], io())).rejects.toThrow(/nowhere\.json cannot be read: there is no such file/);
    await expect(triage(["tests"], io())).rejects.toThrow(/tests cannot be read: it is a folder\.$/);
    await expect(triage(["--loud"], io())).rejects.toThrow(/no option --loud/);
    await expect(triage([], io())).rejects.toThrow(/Say which enquiry/);
  });

  it("takes photos in by path, measures them and does not ask for them again", async () => {
    await sharp({ create: { width: 640, height: 480, channels: 3, background: { r: 150, g: 40, b: 30 } } }).jpeg().toFile(path.join(folder, "whole.jpg"));
    const a = JSON.parse(await triage([written("photo.json", '{"rugs":[{"photos":[{"path":"whole.jpg","kind":"whole"}]}]}')], io())) as Output;
    expect(a.photos).toMatchObject([{ path: "whole.jpg", kind: "whole", width: 640, height: 480 }]);
    expect(a.photos[0]?.colours.length).toBeGreaterThan(0);
    expect(a.nextQuestions.map((q) => q.id)).not.toContain("whole");
  });
  it("refuses a photo that cannot be read, in one line", async () => {
    written("broken.jpg", "this is no picture");
    const file = written("broken.json", '{"rugs":[{"photos":[{"path":"broken.jpg"}]}]}');
    await expect(triage([file], io())).rejects.toThrow(/^broken\.jpg: [^\n]+$/);
  });

  it("run as a program: exit 2 and one line on standard error, nothing on standard output", () => {
    const file = written("wrong.json", '{"rugs":[{"colour":1}]}');
    const run = spawnSync(process.execPath, ["--conditions=react-server", "--import", "tsx", "lib/commands/triage.ts", file], { encoding: "utf8" });
    expect(run.status).toBe(2);
    expect(run.stdout).toBe("");
    expect(run.stderr.trim().split("\n")).toHaveLength(1);
    expect(run.stderr).toContain("has no key “colour”");
  });
});
