import type { Page, TestInfo } from "@playwright/test";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { holdFor, OWNER, takesIn, type Session } from "./people";

let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, at) => holdFor(page, "0", at) });

const documents = (page: Page) => page.getByRole("region", { name: "Documents" });
const letter = (page: Page) => page.getByRole("region", { name: "The letter" });
const said = (page: Page) => letter(page).getByRole("status");
const overtaken = (page: Page) => letter(page).getByRole("group", { name: /^Condition report .* was made before its rug was judged anew/ });
const arrivedAt = (address: string) => desk.mails.filter((m) => m.to.includes(address) && m.mail.headers.get("auto-submitted") === undefined);

/** An enquiry with a report beside its letter, and an answer that came after it; leaves its page open. */
async function withAnOldReport(page: Page, { name, email }: { name: string; email: string }): Promise<void> {
  const at = await takesIn(page, { name, email, label: "100 % viscose" }, desk);
  await documents(page).getByText("Make a document").click();
  await documents(page).getByRole("link", { name: "Condition report", exact: true }).click();
  await page.getByLabel("The insurer’s reference").fill("CL/118");
  await page.getByRole("button", { name: "Make it" }).click();
  await page.getByRole("checkbox", { name: /Goes with the letter/ }).check();
  await expect(page.getByText("It goes with the letter.")).toBeVisible();
  await page.goto(at);
  await expect(overtaken(page)).toHaveCount(0);
  await page.getByRole("link", { name: "Correct or add an answer" }).click();
  await page.getByRole("link", { name: "Stand at one end, then at the other. How does the pile shine?" }).click();
  await page.getByText("Gleams like glass or satin").click();
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page).toHaveURL(new RegExp(`^${at}#told-`));
  await page.goto(at);
  await expect(documents(page)).toContainText("Its rug was judged anew since, and it would say otherwise now.");
}

/** Both widths in light and dark: nothing sticks out, axe is content, and there are pictures to look at. */
async function looksRight(page: Page, info: TestInfo, name: string): Promise<void> {
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    for (const colorScheme of ["dark", "light"] as const) {
      await page.emulateMedia({ colorScheme });
      await fitsAndIsAccessible(page);
      await overtaken(page).scrollIntoViewIfNeeded();
      await page.screenshot({ path: info.outputPath(`${name}-${width}-${colorScheme}.png`) });
    }
    await page.screenshot({ path: info.outputPath(`${name}-${width}.png`), fullPage: true });
  }
}

test("Staff are stopped from sending a report that was made before the rug was judged anew, and make it anew without losing a word", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  await withAnOldReport(page, { name: "Ottoline Brayshaw", email: "ottoline@example.org" });
  const field = page.getByLabel("Text of the reply");
  const text = `${await field.inputValue()}\n\nRing us on Monday if that is easier.`;
  await field.fill(text);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(said(page)).toContainText("would say otherwise now. Nothing was sent, and your words are kept");
  await expect(overtaken(page)).toContainText("Make it anew, leave it out, or say that it goes as it is.");
  await expect(overtaken(page).getByRole("checkbox", { name: /^Send it as it is/ })).toBeFocused();
  await expect(field).toHaveValue(text);
  expect(arrivedAt("ottoline@example.org")).toEqual([]);
  await looksRight(page, info, "stopped");
  await overtaken(page).getByRole("button", { name: /^Make it anew/ }).click();
  await expect(said(page)).toHaveText("Made anew: version 2 goes with the letter.");
  await expect(overtaken(page)).toHaveCount(0);
  await expect(field).toHaveValue(text);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => arrivedAt("ottoline@example.org").length).toBe(1);
  const [newest] = await documents(page).getByRole("link", { name: /^PDF/ }).all();
  const made = await page.request.get(new URL((await newest?.getAttribute("href")) ?? "", desk.url).href);
  expect(arrivedAt("ottoline@example.org")[0]?.mail.attachments.map((a) => a.content.equals(Buffer.from([])))).toEqual([false]);
  expect(arrivedAt("ottoline@example.org")[0]?.mail.attachments[0]?.content.equals(await made.body())).toBe(true);
});

test("Staff send a report as it is though the rug was judged anew, by keyboard, and the history says so", async ({ person }) => {
  const page = await person({ storageState: owner });
  await withAnOldReport(page, { name: "Piers Langholm", email: "piers@example.org" });
  await page.getByRole("button", { name: "Approve and send" }).press("Enter");
  await expect(overtaken(page).getByRole("checkbox")).toBeFocused();
  await page.keyboard.press("Space");
  await expect(overtaken(page)).not.toContainText("Make it anew, leave it out, or say");
  await page.getByRole("button", { name: "Approve and send" }).press("Enter");
  await expect.poll(() => arrivedAt("piers@example.org").length).toBe(1);
  await page.reload();
  await expect(page.getByText(`${OWNER.name} approved the reply, with what was made before the rug was judged anew: condition report, version 1`)).toBeVisible();
});

test("Staff leave an old report out, and the letter goes without it", async ({ person }) => {
  const page = await person({ storageState: owner });
  await withAnOldReport(page, { name: "Rosalind Thew", email: "rosalind@example.org" });
  await overtaken(page).getByRole("button", { name: /^Leave it out/ }).click();
  await expect(said(page)).toHaveText("Taken from the letter.");
  await expect(overtaken(page)).toHaveCount(0);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => arrivedAt("rosalind@example.org").length).toBe(1);
  expect(arrivedAt("rosalind@example.org")[0]?.mail.attachments).toEqual([]);
});
