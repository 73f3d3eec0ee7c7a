import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { fingerprint, isMadeFrom, markMadeFrom } from "../../../lib/commands/made-from";

let root: string;
const write = (name: string, text: string) => {
  mkdirSync(path.dirname(path.join(root, name)), { recursive: true });
  writeFileSync(path.join(root, name), text);
};
beforeEach(() => {
  root = mkdtempSync(path.join(os.tmpdir(), "plainpile-made-"));
  write("app/page.tsx", "page");
  write("lib/a.ts", "a");
  write("lib/generated/client.ts", "client");
});
afterEach(() => { rmSync(root, { recursive: true, force: true }); });

const SOURCES = { of: ["app", "lib", "package.json"], except: ["lib/generated"] };

describe("fingerprint", () => {
  it("changes with a file's content, its name, and a file more or less", () => {
    const before = fingerprint(root, SOURCES);
    expect(fingerprint(root, SOURCES)).toBe(before);
    write("lib/a.ts", "b");
    const changed = fingerprint(root, SOURCES);
    write("lib/b.ts", "");
    const more = fingerprint(root, SOURCES);
    write("package.json", "{}");
    expect(new Set([before, changed, more, fingerprint(root, SOURCES)]).size).toBe(4);
  });

  it("does not change with what is excepted, nor with the time", () => {
    const before = fingerprint(root, SOURCES);
    write("lib/generated/client.ts", "another client");
    write("app/page.tsx", "page");
    expect(fingerprint(root, SOURCES)).toBe(before);
  });

  it("tells one file's end from the next one's beginning", () => {
    write("app/x", "12");
    write("app/y", "3");
    const one = fingerprint(root, { of: ["app"] });
    write("app/x", "1");
    write("app/y", "23");
    expect(fingerprint(root, { of: ["app"] })).not.toBe(one);
  });
});

describe("isMadeFrom", () => {
  it("holds only for the print that was marked", () => {
    const mark = path.join(root, ".next/mark.json");
    expect(isMadeFrom(mark, "p")).toBe(false);
    markMadeFrom(mark, "p");
    expect(isMadeFrom(mark, "p")).toBe(true);
    expect(isMadeFrom(mark, "q")).toBe(false);
    writeFileSync(mark, "{");
    expect(isMadeFrom(mark, "p")).toBe(false);
  });
});
