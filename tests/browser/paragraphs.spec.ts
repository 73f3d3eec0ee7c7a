import type { Page } from "@playwright/test";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { PHONE, takesIn, type Session } from "./people";

const REVIEWER = { name: "Ivo Castellane", email: "ivo@lantern-yard.example", password: "walnut-harbour-kettle-52", role: "Reviewer" };

// One desk of this file's own, with an owner, a reviewer and one past enquiry.
let desk: Desk;
let owner: Session;
let reviewer: Session;
const first = (page: Page, at: Desk) => takesIn(page, { name: "Ottilie Marchbank", label: "100 % viscose" }, at);
ownDesk((settled) => { ({ desk, owner } = settled); [reviewer] = settled.others as [Session]; }, { colleagues: [REVIEWER], first });

const list = () => `${desk.url}/desk/settings/paragraphs`;
const preview = (page: Page) => page.getByRole("region", { name: "On past enquiries" });
const wrong = (page: Page) => page.getByRole("alert", { name: "Please look at this once more" });
const keep = (page: Page) => page.getByRole("button", { name: "Keep this paragraph" }).click();

async function opens(page: Page, words: RegExp): Promise<void> {
  await page.goto(list());
  await page.getByRole("link", { name: words }).click();
  await expect(page.getByRole("button", { name: "Keep this paragraph" })).toBeVisible();
}

test("the owner changes the words a letter ends with, sees a past letter with them, and the next draft says them", async ({ person }) => {
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk/settings`);
  await page.getByRole("link", { name: "Paragraphs of the letters" }).click();
  await page.getByRole("link", { name: /^With kind regards/ }).click();
  await page.getByLabel("What it says").fill("Yours sincerely,\n{signature}");
  const at = await page.evaluate(() => window.scrollY);
  await expect(preview(page).getByRole("status")).toContainText(/Used in \d+ of/);
  await expect(preview(page).locator("mark")).toContainText("Yours sincerely");
  // The closing stands at the foot of a long letter: its box shows it, and the page has not moved.
  await expect(preview(page).locator("mark")).toBeInViewport({ ratio: 1 });
  await expect(preview(page).getByText("Dear Ottilie")).not.toBeInViewport();
  expect(await page.evaluate(() => window.scrollY)).toBe(at);
  await expect(preview(page)).toContainText("With it the letter reads otherwise than it would today.");
  await keep(page);
  await expect(page.getByText(/Kept as version 1/)).toBeVisible();
  await expect(preview(page)).toContainText("Nothing in this letter changes.");
  await takesIn(page, { name: "Barnaby Quill", label: "100 % wool" }, desk);
  await expect(page.getByLabel("Text of the reply")).toHaveValue(/Yours sincerely,\n/);
  await page.getByText("The paragraphs of the draft").click();
  await expect(page.getByText("Signature: your words, version 1")).toBeVisible();
  await opens(page, /^Yours sincerely/);
  await page.getByRole("button", { name: "Back to the shipped text" }).click();
  await expect(page.getByLabel("What it says")).toHaveValue("With kind regards,\n{signature}");
  const before = page.getByRole("region", { name: "What it said before" });
  await expect(before).toContainText("Yours sincerely");
  await expect(before.getByRole("status")).toHaveText(/^Back to the shipped text, as version 2\. Letters from now on use it\. Waiting drafts that nobody has changed were written anew/);
});

test("the owner finds a place of the letters by its name, without scrolling through them all", async ({ person }) => {
  const page = await person({ storageState: owner });
  await page.goto(list());
  const place = page.getByRole("heading", { name: "Signature", exact: true });
  await expect(place).not.toBeInViewport();
  await page.getByRole("navigation", { name: "Places in a letter" }).getByRole("link", { name: "Signature", exact: true }).click();
  await expect(place).toBeInViewport();
});

test("a paragraph that is wrong is not kept, says why beside the field, and nothing that was typed is lost", async ({ person }) => {
  const page = await person({ storageState: owner });
  await opens(page, /^Going by \{evidence\}, \{rug\} is \{likely\} \{fibre\}\.$/);
  await page.getByLabel("What it says").fill("Your rug is {fibr}, that is all.");
  await expect(preview(page)).toContainText("There is no {fibr}");
  await keep(page);
  await expect(wrong(page)).toContainText("There is no {fibr}");
  await expect(page.getByLabel("What it says")).toHaveValue("Your rug is {fibr}, that is all.");
  await expect(page.getByText("cannot be switched off")).toBeVisible();
  // Put right, it is no longer said to be wrong.
  await page.getByLabel("What it says").fill("Your rug is {fibre}, as far as we can tell.");
  await expect(wrong(page)).toHaveCount(0);
  await expect(page.getByLabel("What it says")).not.toHaveAttribute("aria-invalid", "true");
});

test("a new paragraph that says more than we know takes a reason, and is used only where its condition holds", async ({ person }) => {
  const page = await person({ storageState: owner });
  await page.goto(list());
  await page.getByRole("link", { name: "Write one of your own" }).click();
  await page.getByLabel("What it says").fill("The stain will come out.");
  await page.getByLabel("Add a line about").selectOption({ label: "The most probable fibre" });
  await page.getByRole("group", { name: "The most probable fibre" }).getByRole("checkbox", { name: "polypropylene", exact: true }).check();
  await expect(preview(page).getByRole("status")).toContainText(/No letter to .* would use it/);
  await expect(preview(page)).toContainText("The stain will come out.");
  await keep(page);
  await expect(wrong(page)).toContainText("To keep it as it is, say why");
  await page.getByLabel("What it says").fill("Chalk may come out of this fibre.");
  await page.getByRole("group", { name: "The most probable fibre" }).getByRole("checkbox", { name: "viscose", exact: true }).check();
  await expect(preview(page).getByRole("status")).toContainText(/Used in \d+ of/);
  await keep(page);
  await expect(page).toHaveURL(/\/paragraphs\/own-/);
  await page.goto(list());
  await expect(page.getByRole("region", { name: "Notes of your own" })).toContainText("The most probable fibre: polypropylene or viscose");
});

test("a reviewer is told plainly that paragraphs are the owner's", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await page.goto(list());
  await expect(page.getByRole("main")).toContainText("Not for you");
});

for (const [size, options] of [["a desk", { viewport: { width: 1280, height: 900 } }], ["a phone", PHONE]] as const) {
  for (const colorScheme of ["light", "dark"] as const) {
    test(`paragraphs on ${size} in ${colorScheme}: nothing sticks out, and no rule of WCAG 2.2 A and AA that a program can check is broken`, async ({ person }) => {
      const page = await person({ ...options, colorScheme, storageState: owner });
      await page.goto(list());
      await expectAccessible(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
      await page.getByRole("link", { name: /^We would clean it/ }).click();
      await expect(preview(page).getByRole("status")).not.toContainText("One moment");
      await expectAccessible(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
    });
  }
}
