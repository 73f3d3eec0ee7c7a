import type { Page } from "@playwright/test";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { PHONE, takesIn, type Session } from "./people";

const REVIEWER = { name: "Ivo Castellane", email: "ivo@lantern-yard.example", password: "walnut-harbour-kettle-52", role: "Reviewer" };

// One desk of this file's own, with an owner and a reviewer.
let desk: Desk;
let owner: Session;
let reviewer: Session;

ownDesk((settled) => { ({ desk, owner } = settled); [reviewer] = settled.others as [Session]; }, { colleagues: [REVIEWER] });

/** What a form says when it was not taken. */
const wrong = (page: Page) => page.getByRole("alert", { name: "Please look at this once more" });
const benchOf = (page: Page) => page.getByRole("region", { name: "Bench tests" });
const letterOf = (page: Page) => page.getByLabel("Text of the reply");
const takesAViscoseRugIn = (page: Page, name: string) => takesIn(page, { name, label: "100 % viscose" }, desk);

async function opens(page: Page, test: string): Promise<void> {
  await benchOf(page).getByText("Record a test or a report").click();
  await benchOf(page).getByRole("link", { name: test, exact: true }).click();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
}

/** The owner's page with what a flame needs, and the flame switched on. */
async function switchesFlameOn(page: Page): Promise<void> {
  await page.goto(`${desk.url}/desk/settings/reagents`);
  const flame = page.getByRole("region", { name: "Open flame" });
  if ((await flame.getByRole("checkbox").count()) > 0) {
    await flame.getByRole("checkbox").check();
    await flame.getByRole("button", { name: "Switch on" }).click();
  }
  await expect(flame).toContainText(/On since today .* switched on by Nell Harrow/);
}

test("the owner switches a flame on only after saying that it was assessed here", async ({ person }) => {
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk/settings`);
  await page.getByRole("link", { name: "Bench tests and reagents" }).click();
  const flame = page.getByRole("region", { name: "Open flame" });
  await flame.getByRole("button", { name: "Switch on" }).click();
  await expect(flame.getByRole("status")).toContainText("Tick that the assessment");
  await expect(flame).not.toContainText("On since");
  await switchesFlameOn(page);
  const other = await person({ storageState: reviewer });
  await other.goto(`${desk.url}/desk/settings/reagents`);
  await expect(other.getByRole("main")).toContainText("Not for you");
});

test("a reviewer records a burn test, and the letter goes by the test", async ({ person }) => {
  await switchesFlameOn(await person({ storageState: owner }));
  const page = await person({ storageState: reviewer });
  const at = await takesAViscoseRugIn(page, "Ottilie Marchbank");
  await expect(letterOf(page)).toHaveValue(/Going by the label as you read it to us/);
  await opens(page, "Burn test");
  await expect(page.getByRole("region", { name: "Before you begin" })).toContainText("Fire");
  await page.getByRole("button", { name: "Record this test" }).click();
  await expect(wrong(page)).toContainText("Say what the sample was taken from.");
  await expect(wrong(page)).toContainText("Record at least one reading.");
  await page.getByRole("radio", { name: "The pile, its field" }).check();
  await page.getByRole("radio", { name: "Burning paper, leaves or wood" }).check();
  await page.getByRole("radio", { name: "It burns on, and an ember glows after the flame" }).check();
  await page.getByRole("button", { name: "Record this test" }).click();
  await expect(page).toHaveURL(new RegExp(`^${at}#tests-`));
  await expect(benchOf(page)).toContainText(/Burn test of the pile, its field/);
  await expect(benchOf(page)).toContainText("Burning paper, leaves or wood");
  await expect(page.getByText("Ivo Castellane recorded a bench test: Burn test")).toBeVisible();
  await expect(letterOf(page)).toHaveValue(/Going by the test in our workshop/);
  await expect(letterOf(page)).toHaveValue(/A test speaks only for the yarn it was made on\./);
});

test("a test recorded in error stays to be seen, struck through, and no longer counts", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await takesAViscoseRugIn(page, "Wilmot Penhale");
  await opens(page, "Thread pulled wet");
  await page.getByRole("radio", { name: "The pile as a whole" }).check();
  await page.getByRole("radio", { name: "Much weaker" }).check();
  await page.getByRole("button", { name: "Record this test" }).click();
  await expect(letterOf(page)).toHaveValue(/the test in our workshop/);
  await benchOf(page).getByText("Recorded in error").click();
  await benchOf(page).getByRole("button", { name: "Withdraw it" }).click();
  await expect(benchOf(page).getByRole("status")).toHaveText("Say why.");
  await benchOf(page).getByLabel("Why it does not count").fill("The thread came from another rug.");
  await benchOf(page).getByRole("button", { name: "Withdraw it" }).click();
  await expect(benchOf(page)).toContainText(/Withdrawn by Ivo Castellane, today .*: The thread came from another rug\./);
  await expect(benchOf(page).getByRole("heading", { name: /Thread pulled wet/ }).locator("s")).toBeVisible();
  await expect(letterOf(page)).not.toHaveValue(/the test in our workshop/);
});

test("a test whose reagent is off is named but not offered, and its page has no form", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  const at = await takesAViscoseRugIn(page, "Dagny Ferris");
  await benchOf(page).getByText("Record a test or a report").click();
  await expect(benchOf(page)).toContainText(/Switched off by the owner.*acetone/);
  await expect(benchOf(page).getByRole("link", { name: "Acetone", exact: true })).toHaveCount(0);
  const rug = /tests\/([0-9a-f-]{36})\//.exec((await benchOf(page).getByRole("link", { name: "Microscope" }).getAttribute("href")) ?? "")?.[1];
  await page.goto(`${at}/tests/${rug}/acetone`);
  await expect(page.getByRole("main")).toContainText("Switched off here.");
  await expect(page.getByRole("button", { name: "Record this test" })).toHaveCount(0);
});

test("a laboratory’s report is entered in per cent, or from its weighings", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await takesAViscoseRugIn(page, "Tamsin Orrell");
  const head = async () => {
    await page.getByLabel("Laboratory", { exact: true }).fill("Fenwick Fibre Laboratory");
    await page.getByLabel("Date of the report").fill("2026-01-20");
    await page.getByRole("radio", { name: "The pile as a whole" }).check();
  };
  await opens(page, "Laboratory report");
  await head();
  await page.getByLabel("Viscose", { exact: true }).fill("70");
  await page.getByRole("button", { name: "Enter this report" }).click();
  await expect(wrong(page)).toContainText("The per cents must add up to 100, give or take one.");
  await page.getByLabel("Wool", { exact: true }).fill("30");
  await page.getByRole("button", { name: "Enter this report" }).click();
  await expect(benchOf(page)).toContainText("70 % viscose, 30 % wool");
  await expect(letterOf(page)).toHaveValue(/a laboratory report/);

  await opens(page, "its weighings");
  await head();
  await page.getByRole("radio", { name: /^Two fibres/ }).check();
  await page.getByLabel("First fibre").selectOption({ label: "Wool, carded or not known" });
  await page.getByLabel("Second fibre").selectOption({ label: "Viscose" });
  const first = page.getByRole("group", { name: "First weighing" });
  await first.getByLabel("Method of the Regulation").selectOption({ label: "2: alkaline hypochlorite" });
  await first.getByLabel("Dry mass of the specimen, g").fill("1.0000");
  await first.getByLabel("Dry mass of the residue, g").fill("1.2");
  await page.getByRole("button", { name: "Enter these weighings" }).click();
  await expect(wrong(page)).toContainText("The residue cannot weigh more than the specimen.");
  await first.getByLabel("Dry mass of the residue, g").fill("0.7");
  await page.getByRole("button", { name: "Enter these weighings" }).click();
  await expect(benchOf(page)).toContainText(/From its weighings, with agreed allowances\s*\d[\d.]*\s% viscose, \d[\d.]*\s% wool/);
});

test("the owner writes down what mistakes cost and which rugs write in, and is told what does not fit", async ({ person }) => {
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk/settings/losses`);
  const loss = page.getByLabel("Promised too much, and it failed");
  await loss.fill("-2");
  await page.getByRole("button", { name: "Keep these figures" }).click();
  await expect(wrong(page)).toContainText("Promised too much, and it failed: not below zero.");
  await loss.fill("12");
  await page.getByRole("button", { name: "Keep these figures" }).click();
  await expect(page.getByRole("status").filter({ hasText: "Kept." })).toBeVisible();
  await page.reload();
  await expect(loss).toHaveValue("12");

  await page.goto(`${desk.url}/desk/settings/fibres`);
  await expect(page.getByText("All empty: ours are used.")).toBeVisible();
  const shares = page.getByRole("textbox");
  for (const field of await shares.all()) await field.fill("5");
  await expect(page.getByText("Together 90 per cent, to be 100.")).toBeVisible();
  await page.getByRole("button", { name: "Keep these shares" }).click();
  await expect(wrong(page)).toContainText("Together they make 90 per cent. They must make 100.");
  await page.getByLabel("Wool", { exact: true }).fill("15");
  await expect(page.getByText("Together 100 per cent.", { exact: true })).toBeVisible();
  await page.getByRole("button", { name: "Keep these shares" }).click();
  await expect(page.getByRole("status").filter({ hasText: "Kept." })).toBeVisible();
});

test("tests, reports and reagents break no rule of WCAG 2.2 that a program can check, on a phone and at a desk, in light and dark", async ({ person }) => {
  test.setTimeout(240_000);
  for (const options of [{ colorScheme: "light" }, { colorScheme: "dark", ...PHONE }] as const) {
    const page = await person({ ...options, storageState: owner });
    await switchesFlameOn(page);
    const at = await takesAViscoseRugIn(page, "Isaura Quennell");
    await benchOf(page).getByText("Record a test or a report").click();
    await expectAccessible(page);
    const links = await Promise.all((await benchOf(page).getByRole("link").all()).map((link) => link.getAttribute("href")));
    const pages = ["burn", "dye-bleed", "spot-ph", "laboratory", "weighings"].map((test) => links.find((l) => l?.endsWith(`/${test}`)) ?? "");
    for (const to of [...pages, "/desk/settings/reagents", "/desk/settings/losses", "/desk/settings/fibres"]) {
      expect(to, at).not.toBe("");
      await page.goto(`${desk.url}${to}`);
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await expectAccessible(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth), to).toBeLessThanOrEqual(0);
    }
  }
});
