import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import manifest from "../../../package.json";

const run = promisify(execFile);
/** The commands that a person gives a file, a text or an address. */
const ASKED = ["backup", "label", "password", "photo", "promises", "restore", "triage"] as const;

describe.each(ASKED)("npm run %s", (name) => {
  it("says how it is called when it is asked for help, and does nothing else", async () => {
    const [, ...args] = manifest.scripts[name].split(" ");
    const { stdout, stderr } = await run(process.execPath, [...args, "--help"]);
    expect(stdout).toContain(`npm run ${name} -- `);
    expect(stderr).toBe("");
  });
});
