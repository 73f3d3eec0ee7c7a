import { spawnSync } from "node:child_process";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { CommandError } from "../../../lib/commands/command";
import { label, USAGE } from "../../../lib/commands/label";
import { CLASS_OF_FINE } from "../../../lib/trade/label-fibres";
import type { LabelReading } from "../../../lib/triage/read-label";

const stdin = (words = "") => Readable.from([words]);
const read = async (args: string[], words?: string) => (await label(args, stdin(words))).split("\n").map((line) => JSON.parse(line) as LabelReading);

describe("npm run label", () => {
  it("prints the reading of one label as a line of JSON", async () => {
    const [reading, ...more] = await read(["80% WOOL 20% VISCOSE"]);
    expect(more).toEqual([]);
    expect(reading).toMatchObject({ components: [{ part: "whole", fibres: [{ fibre: "wool", percent: 80 }, { fibre: "viscose", percent: 20 }] }], doubts: [], suggests: [] });
  });

  it("reads each text as a label of its own", async () => {
    expect(await read(["100% wool", "Pile: 100% viscose"])).toEqual([...(await read(["100% wool"])), ...(await read(["Pile: 100% viscose"]))]);
  });

  it("gives one line of JSON for each line of standard input, empty ones too", async () => {
    const readings = await read([], "100% silk\r\n\nPile: 100% viscose\n");
    expect(readings.map((r) => r.components.map((c) => [c.part, ...c.fibres.map((f) => f.fibre)].join(" ")))).toEqual([["whole silk"], [], ["pile viscose"]]);
    expect(readings[1]).toEqual({ components: [], doubts: [], suggests: [], rules: [] });
  });

  it("names every fibre it may print in its help", () => {
    const named = new Set((USAGE.split("Fibres:")[1] as string).match(/[\w-]+/gu));
    expect([...named].sort()).toEqual(Object.keys(CLASS_OF_FINE).sort());
  });

  it.each(["label.png", "my photos/label.JPG", "x.heic"])("says of a picture that it takes words, and which command reads one: %s", async (file) => {
    await expect(label([file], stdin())).rejects.toThrow(CommandError);
    await expect(label([file], stdin())).rejects.toThrow(`npm run photo -- ${file.includes(" ") ? `"${file}"` : file} --label`);
  });
  it("takes words about a picture for words", async () => expect(await read(["100% wool png"])).toHaveLength(1));

  it("refuses an option it does not know, in words", async () => {
    await expect(label(["--tabel"], stdin())).rejects.toThrow(CommandError);
    await expect(label(["--tabel"], stdin())).rejects.toThrow("There is no option --tabel.");
  });

  it("tells a person at a terminal who gives no text how to use it, and waits for nobody", async () => {
    await expect(label([], Object.assign(stdin(), { isTTY: true }))).rejects.toThrow("npm run label");
  });

  it("runs as a program, and ends with 2 for what the person can put right", () => {
    const run = (...args: string[]) => spawnSync(process.execPath, ["--conditions=react-server", "--import", "tsx", "lib/commands/label.ts", ...args], { encoding: "utf8", input: "" });
    const good = run("100% სელი");
    expect(good.status).toBe(0);
    expect((JSON.parse(good.stdout) as LabelReading).doubts.join(" ")).toContain("Georgian");
    expect(run("--x").status).toBe(2);
  });
});
