import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import { PHONE } from "./people";

test("a homeowner whose browser runs no script reads how rugs are judged, and finds each number with how it is known", async ({ desk, person }) => {
  const phone = await person({ ...PHONE, javaScriptEnabled: false });
  await phone.goto(desk.url);
  await phone.getByRole("link", { name: "How we judge" }).click();
  await expect(phone.getByRole("heading", { level: 1 })).toHaveText("How we judge");
  const levels = await phone.getByRole("heading").evaluateAll((all) => all.map((h) => Number(h.tagName.slice(1))));
  for (const [i, level] of levels.entries()) expect(level - (levels[i - 1] ?? level)).toBeLessThanOrEqual(1);
  const [folded] = await phone.locator("details").all();
  await folded!.locator("summary").click();
  await expect(folded!.getByRole("table").first()).toBeVisible();
  await expect(folded!.getByText(/elicited|read|from memory|common practice|worked out/).first()).toBeVisible();
});

test("how rugs are judged breaks no rule of WCAG 2.2 that a program can check, with every table open, and stays on a small screen", async ({ desk, person }) => {
  const phone = await person({ ...PHONE, viewport: { width: 320, height: 640 } });
  await phone.emulateMedia({ colorScheme: "dark", reducedMotion: "reduce" });
  await phone.goto(`${desk.url}/how-we-judge`);
  await expectAccessible(phone);
  await phone.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" });
  await phone.locator("details").evaluateAll((all) => all.forEach((d) => d.setAttribute("open", "")));
  expect(await phone.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await expectAccessible(phone);
});
