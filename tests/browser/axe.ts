import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { expect, type Page } from "@playwright/test";

const SOURCE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const RULES = ["wcag2a", "wcag2aa", "wcag22aa"];

interface Found { violations: { id: string; help: string; nodes: { html: string }[] }[] }

/** Checks a page as it stands now against WCAG 2.2, levels A and AA, as far as a program can. */
export async function expectAccessible(page: Page): Promise<void> {
  // A page that was come to by a link gets its title a moment after its heading.
  await expect(page).toHaveTitle(/\S/);
  await page.evaluate(await readFile(SOURCE, "utf8"));
  const { violations } = (await page.evaluate(`axe.run({ runOnly: ${JSON.stringify(RULES)} })`)) as Found;
  expect(violations.map((v) => `${v.id}: ${v.help} ${v.nodes.map((n) => n.html).join(" ")}`), page.url()).toEqual([]);
}

/** As above, and nothing sticks out to the right. */
export async function fitsAndIsAccessible(page: Page): Promise<void> {
  await expectAccessible(page);
  const [content, window] = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
  expect(content).toBeLessThanOrEqual(window as number);
}
