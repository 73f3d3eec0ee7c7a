import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import { PHONE } from "./people";

test("a homeowner whose browser runs no script reads how rugs are judged, and finds each number with how it is known", async ({ frontDoor: desk, person }) => {
  const phone = await person({ ...PHONE, javaScriptEnabled: false });
  await phone.goto(desk.url);
  await phone.getByRole("link", { name: "How we judge" }).click();
  await expect(phone.getByRole("heading", { level: 1 })).toHaveText("How we judge");
  const levels = await phone.getByRole("heading").evaluateAll((all) => all.map((h) => Number(h.tagName.slice(1))));
  for (const [i, level] of levels.entries()) expect(level - (levels[i - 1] ?? level)).toBeLessThanOrEqual(1);
  await phone.getByText(/^The \d+ tables it goes by/).first().click();
  await phone.locator("details li a").first().click();
  await expect(phone.getByRole("heading", { level: 1 })).toHaveText("What it is made of");
  const opened = phone.locator("details[open]");
  await expect(opened.getByRole("table").first()).toBeVisible();
  await expect(opened.getByText(/elicited|read|from memory|common practice|worked out/i).first()).toBeVisible();
});

const CHAPTERS = ["fibre", "labels", "tests", "happened", "cleaning", "life", "money", "advice"];
/** A page for a telephone on a slow line. */
const MOST_KIB = 500;

test("a homeowner on a slow line reads chapter by chapter, and misses no table", async ({ frontDoor: desk, page }) => {
  await page.goto(`${desk.url}/how-we-judge`);
  const named = await page.locator("details li a").evaluateAll((all) => all.map((a) => new URL((a as HTMLAnchorElement).href).hash));
  const found: string[] = [];
  for (const chapter of ["", ...CHAPTERS.map((c) => `/${c}`)]) {
    const answer = await page.request.get(`${desk.url}/how-we-judge${chapter}`);
    const html = await answer.text();
    expect(Math.round(Buffer.byteLength(html) / 1024), chapter).toBeLessThanOrEqual(MOST_KIB);
    found.push(...[...html.matchAll(/<p [^>]*id="(table-[^"]+)"/g)].map((m) => `#${m[1]}`));
  }
  expect(named.length).toBeGreaterThan(100);
  expect([...found].sort()).toEqual([...named].sort());
});

test("how rugs are judged breaks no rule of WCAG 2.2 that a program can check, with every table open, and stays on a small screen", async ({ frontDoor: desk, person }) => {
  const phone = await person({ ...PHONE, viewport: { width: 320, height: 640 } });
  await phone.emulateMedia({ colorScheme: "dark", reducedMotion: "reduce" });
  for (const chapter of ["", ...CHAPTERS.map((c) => `/${c}`)]) {
    await phone.emulateMedia({ colorScheme: "dark", reducedMotion: "reduce" });
    await phone.goto(`${desk.url}/how-we-judge${chapter}`);
    await expectAccessible(phone);
    await phone.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" });
    await phone.locator("details").evaluateAll((all) => all.forEach((d) => d.setAttribute("open", "")));
    expect(await phone.evaluate(() => document.documentElement.scrollWidth), chapter).toBeLessThanOrEqual(320);
    await expectAccessible(phone);
  }
});
