import { readdirSync } from "node:fs";
import path from "node:path";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { triage } from "../../../lib/commands/triage";
import type { Assessment } from "../../../lib/triage/assessment";

const CASES = path.join(import.meta.dirname, "../../cases");
const run = (args: string[]) => triage(args, { stdin: Readable.from([""]), now: new Date("2026-03-01T09:00:00Z") });
const files = readdirSync(CASES).map((name) => path.join(CASES, name));

describe("npm run triage -- FILE --explain", () => {
  it.each(files)("explains %s with the numbers of its assessment", async (file) => {
    const text = await run([file, "--explain"]);
    const a = JSON.parse(await run([file])) as Assessment;
    for (const head of ["Findings, and what each weighs", "How the weights add up", "Fibre of the pile", "What happened", "Which row of the improvement table rules", "Prospects", "Methods", "What each action would be regretted", "Urgency"])
      expect(text.includes(head) || (head === "Findings, and what each weighs" && a.findings.length === 0), head).toBe(true);
    expect(text).toContain(`${(a.fibres[0]!.probability * 100).toFixed(1)} %`);
    expect(text).toContain(`${Math.abs(a.balance.total).toFixed(1)} dB  altogether`);
    expect(text).toContain(`${a.advice.losses[0]!.loss.toFixed(2)}  `);
    if (a.lifeYears) expect(text).toContain(`years left: ${a.lifeYears.low.toFixed(1)} – ${a.lifeYears.median.toFixed(1)} – ${a.lifeYears.high.toFixed(1)} years`);
    for (const m of a.methods) expect(text.replace(/\s+/gu, " ")).toContain(m.why.replace(/\s+/gu, " "));
    expect(text).not.toMatch(/NaN|undefined/);
    expect(Math.max(...text.split("\n").map((l) => l.length))).toBeLessThanOrEqual(100);
  });
  it("shows each risk of an action no larger than the action's own loss", async () => {
    const text = await run([files.find((f) => f.includes("viscose-label-pet")) as string, "--explain"]);
    const section = text.slice(text.indexOf("What each action")).split("\n\n")[0]!.split("\n").slice(1);
    let loss = 0;
    for (const line of section) {
      const [, indent = "", figure = ""] = /^(\s*)(\d+\.\d\d) /u.exec(line) ?? [];
      if (indent.length >= 8) expect(Number(figure)).toBeLessThanOrEqual(loss + 0.005);
      else loss = Number(figure);
    }
    expect(section.length).toBeGreaterThan(8);
  });
});
