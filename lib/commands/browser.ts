import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { inherited } from "../config/environment";
import { CommandError, step } from "./command";

/** Debian's package of Chromium without a window: it draws the same pages, with a fifth less work than the whole browser. */
const DEBIANS_PACKAGE = "chromium-headless-shell";
/** Where Debian puts its Chromiums, the one to prefer first. */
const DEBIANS = [`/usr/bin/${DEBIANS_PACKAGE}`, "/usr/bin/chromium"];

/** The Chromium to run: CHROMIUM_PATH, or one of Debian's; undefined where neither is there, and Playwright looks for its own. */
export const browserPath = (): string | undefined => inherited().CHROMIUM_PATH || DEBIANS.find((p) => existsSync(p));

/** How Playwright starts it. Root may start no sandbox. */
export function browserLaunch(): { executablePath?: string; args: string[] } {
  const executablePath = browserPath();
  return {
    ...(executablePath === undefined ? {} : { executablePath }),
    args: [...(process.getuid?.() === 0 ? ["--no-sandbox"] : []), "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  };
}

async function hasBrowser(): Promise<boolean> {
  const found = browserPath();
  if (found !== undefined) return existsSync(found);
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
      ? run("apt-get", ["update", "-q"]) && run("apt-get", ["install", "-y", "-q", DEBIANS_PACKAGE])
      : run(process.execPath, [path.join(root, "node_modules/playwright/cli.js"), "install", "chromium"]);
    if (!brought || !(await hasBrowser())) throw new CommandError("No browser could be brought. Install Chromium and set CHROMIUM_PATH to it.");
  });
}
