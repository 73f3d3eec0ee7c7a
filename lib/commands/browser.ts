import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { inherited } from "../config/environment";
import { CommandError, step } from "./command";

const DEBIANS = "/usr/bin/chromium";

async function hasBrowser(): Promise<boolean> {
  const { CHROMIUM_PATH } = inherited();
  if (CHROMIUM_PATH) return existsSync(CHROMIUM_PATH);
  if (existsSync(DEBIANS)) return true;
  const { chromium } = await import("@playwright/test");
  return existsSync(chromium.executablePath());
}

function run(command: string, words: string[]): boolean {
  return spawnSync(command, words, { stdio: ["ignore", "inherit", "inherit"], env: { ...inherited(), DEBIAN_FRONTEND: "noninteractive" } }).status === 0;
}

/** Brings a Chromium where none is found: Debian's own where we may install it, else Playwright's. */
export async function ensureBrowser(root: string): Promise<void> {
  if (await hasBrowser()) return;
  await step("Bringing a browser for the browser tests", async () => {
    const isDebianRoot = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
    const brought = isDebianRoot
      ? run("apt-get", ["update", "-q"]) && run("apt-get", ["install", "-y", "-q", "chromium"])
      : run(process.execPath, [path.join(root, "node_modules/playwright/cli.js"), "install", "chromium"]);
    if (!brought || !(await hasBrowser())) throw new CommandError("No browser could be brought. Install Chromium and set CHROMIUM_PATH to it.");
  });
}
