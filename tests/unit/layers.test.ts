import path from "node:path";
import { ESLint } from "eslint";
import { beforeAll, describe, expect, it } from "vitest";

/** The house's own lint rules, on a made-up file as if it lay in a room. */
let eslint: ESLint;
// The first file pays for reading the whole configuration.
beforeAll(async () => {
  eslint = new ESLint();
  await eslint.lintText("export const x = 1;\n", { filePath: path.resolve("lib/trade/made-up.ts") });
});

async function complaints(file: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(`${code}\n`, { filePath: path.resolve(file) });
  return (result?.messages ?? []).filter((m) => m.severity === 2).map((m) => m.ruleId ?? m.message);
}

const LAYER = "boundaries/dependencies";
const imports = (from: string) => `import { thing } from "${from}";\nexport const x = thing;`;
const importsType = (from: string) => `import type { Thing } from "${from}";\nexport type X = Thing;`;

describe("the one direction of imports", () => {
  it.each([
    ["lib/trade/made-up.ts", "../triage/assessment"],
    ["lib/triage/made-up.ts", "../reply/draft"],
    ["lib/triage/made-up.ts", "../store/database"],
    ["lib/reply/made-up.ts", "../enquiry/caller"],
    ["lib/config/made-up.ts", "../trade/fibres"],
    ["lib/photo/made-up.ts", "../trade/fibres"],
    ["lib/photo/made-up.ts", "./server/receive"],
    ["lib/photo/server/made-up.ts", "../../trade/fibres"],
    ["lib/store/made-up.ts", "../enquiry/caller"],
    ["lib/workshop/made-up.ts", "../staff/caller"],
    ["lib/ui/made-up.ts", "../store/database"],
    ["lib/ui/made-up.ts", "../photo/server/receive"],
    ["lib/enquiry/made-up.ts", "../ui/figures"],
    ["app/made-up.ts", "@/lib/store/database"],
    ["app/made-up.ts", "@/lib/commands/generate"],
    ["app/made-up.ts", "../lib/store/database"],
  ])("%s may not import %s", async (file, from) => {
    expect(await complaints(file, imports(from))).toContain(LAYER);
    expect(await complaints(file, importsType(from))).toContain(LAYER);
  });

  it.each([
    ["lib/triage/made-up.ts", "../trade/fibres"],
    ["lib/reply/made-up.ts", "../triage/assessment"],
    ["app/made-up.ts", "@/lib/enquiry/caller"],
    ["app/made-up.ts", "@/lib/trade/fibres"],
    ["lib/ui/made-up.ts", "../trade/fibres"],
    ["lib/commands/made-up.ts", "../triage/assessment"],
  ])("%s may import %s", async (file, from) => {
    expect(await complaints(file, importsType(from))).toEqual([]);
  });

  it("keeps the generated clients inside the store, their types too", async () => {
    expect(await complaints("lib/enquiry/made-up.ts", importsType("../store/generated/sqlite/client"))).toContain(LAYER);
    expect(await complaints("lib/commands/made-up.ts", importsType("../store/generated/sqlite/client"))).toContain(LAYER);
    expect(await complaints("lib/store/made-up.ts", importsType("./generated/sqlite/client"))).toEqual([]);
  });

  it("refuses a ring of imports", async () => {
    expect(await complaints("lib/store/open-store.ts", `import "server-only";\n${imports("./database")}`)).toContain("import-x/no-cycle");
  });
});

describe("pure rooms", () => {
  it.each(["trade", "photo", "triage", "reply"])("%s reads no clock, draws no chance, touches no file and no environment", async (room) => {
    const file = `lib/${room}/made-up.ts`;
    expect(await complaints(file, "export const x = new Date();")).toEqual(["no-restricted-globals"]);
    expect(await complaints(file, "export const x = Math.random();")).toEqual(["no-restricted-syntax"]);
    expect(await complaints(file, imports("node:fs"))).toContain("no-restricted-imports");
    expect(await complaints(file, "export const x = process.env.HOME;")).toContain("no-restricted-properties");
    expect(await complaints(file, "export const x = Math.sqrt(2);")).toEqual([]);
  });
});

describe("server modules", () => {
  it.each(["store", "mail", "staff", "workshop", "enquiry"])("of %s begin with server-only where they import something of the server", async (room) => {
    const file = `lib/${room}/made-up.ts`;
    const rule = "house/server-only-first";
    expect(await complaints(file, imports("node:crypto"))).toContain(rule);
    expect(await complaints(file, imports("../config/config"))).toContain(rule);
    expect(await complaints(file, `${imports("node:crypto")}\nimport "server-only";`)).toContain(rule);
    expect(await complaints(file, `import "server-only";\n${imports("node:crypto")}`)).toEqual([]);
    expect(await complaints(file, `import * as z from "zod/mini";\nexport const x = z.string();`)).toEqual([]);
  });
});

describe("the house's habits", () => {
  it("allow no barrel", async () => {
    expect(await complaints("lib/triage/made-up.ts", `export * from "./assessment";`)).toContain("no-restricted-syntax");
  });

  it("let only config read the environment", async () => {
    const code = "export const x = process.env.HOME;";
    expect(await complaints("lib/mail/made-up.ts", code)).toEqual(["no-restricted-properties"]);
    expect(await complaints("app/made-up.tsx", code)).toEqual(["no-restricted-properties"]);
    expect(await complaints("lib/config/made-up.ts", code)).toEqual([]);
    expect(await complaints("lib/commands/made-up.ts", code)).toEqual(["no-restricted-properties"]);
  });
});
