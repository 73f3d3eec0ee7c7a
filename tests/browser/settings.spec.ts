import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { run } from "./language";
import { holdFor, linkSentTo, PHONE, takesIn, type Session } from "./people";

const DAY_MS = 86_400_000;
let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, at) => holdFor(page, "0", at) });

test("An owner who mistypes what a mistake costs, or which rugs write in, is told which row is meant, led to it, and keeps what was typed", async ({ person }) => {
  const page = await person({ storageState: owner });
  const summary = page.getByRole("alert", { name: "Please look at this once more" });
  await page.goto(`${desk.url}/desk/settings/losses`);
  await page.getByLabel("Made worse by a method we advised").fill("-3");
  await page.getByLabel("The trouble of a photo").fill("much");
  await page.getByLabel("Home advice that harms").fill("21");
  await page.getByRole("button", { name: "Keep these figures" }).click();
  await expect(summary).toBeFocused();
  await expect(summary.getByRole("listitem")).toHaveText(["Made worse by a method we advised: not below zero.", "The trouble of a photo: write a number from 0 to 1,000."]);
  await summary.getByRole("link", { name: /trouble of a photo/ }).click();
  const field = page.getByLabel("The trouble of a photo");
  await expect(field).toBeFocused();
  await expect(field).toHaveAccessibleDescription(/The trouble of a photo: write a number from 0 to 1,000\./);
  await expect(field).toHaveValue("much");
  await expect(page.getByLabel("Home advice that harms")).toHaveValue("21");
  await fitsAndIsAccessible(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await fitsAndIsAccessible(page);
  await page.goto(`${desk.url}/desk/settings/fibres`);
  await page.getByLabel("Wool", { exact: true }).fill("90");
  await page.getByRole("button", { name: "Keep these shares" }).click();
  await expect(summary.getByRole("listitem")).toContainText(["Wool: at most 80 per cent."]);
  await expect(page.getByLabel("Wool", { exact: true })).toHaveValue("90");
});

test("An owner who goes over to dollars and America sees what came along, and has open enquiries judged anew at one press", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Marigold Tansy", email: "marigold@example.org", label: "100 % wool" }, desk);
  await page.goto(`${desk.url}/desk/settings`);
  await expect(page.getByText("Usual where you are: 112 (Directive (EU) 2018/1972")).toBeVisible();
  await page.getByLabel("Currency").selectOption("USD");
  await page.getByLabel("Whose general rules the law texts describe").selectOption("US");
  await page.getByRole("button", { name: "Keep the settings" }).click();
  const said = page.getByRole("status").filter({ hasText: "Kept." });
  await expect(said).toContainText("brought from EUR to USD at the mean rate of 2025");
  await expect(said).toContainText("call 911");
  await expect(page.getByLabel("Emergency number")).toHaveValue("911");
  await expect(page.getByLabel("Cleaning, at least")).toHaveValue("101.66");
  await expect(page.getByText("One open enquiry, judged with earlier settings.")).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await fitsAndIsAccessible(page);

  const button = page.getByRole("button", { name: "Judge them anew" });
  await button.focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("status").filter({ hasText: "judged anew" })).toContainText("One open enquiry judged anew.");
  await expect(button).toHaveCount(0);
  await page.goto(at);
  await expect(page.getByText("assessed a rug").first()).toBeAttached();

  const client = await person(PHONE);
  await expect.poll(() => linkSentTo(desk, "marigold@example.org")).not.toBe("");
  await client.goto(`${desk.url}/first-aid`);
  await expect(client.getByText("call 911 now")).toBeVisible();
});

test("I say once how rugs come to us and how long we usually take; a client who asks just that is answered by the letter, and I send it with one press", async ({ person }) => {
  const page = await person({ storageState: owner });
  const keep = page.getByRole("button", { name: "Keep the settings" });
  await page.goto(`${desk.url}/desk/settings`);
  await page.getByLabel("How a rug comes to you").fill("We collect within 15 miles of Hallowmere; from further away you bring it, or a carrier does");
  await page.getByLabel("Weeks your work usually takes, from").fill("6");
  await page.getByLabel("Weeks your work usually takes, to").fill("3");
  await page.getByLabel("Telephone").fill("call me");
  await page.getByLabel("Signature").fill("");
  await page.getByLabel("Cleaning, per square metre").fill("42,000");
  await keep.click();
  const summary = page.getByRole("alert", { name: "Please look at this once more" });
  await expect(summary).toBeFocused();
  await expect(summary.getByRole("listitem")).toHaveText([
    /^Write the telephone number in figures, at least 6,/, "Write the signature: it stands under every letter.", "Cleaning, per square metre: at most 2,000. Has a nought slipped in?",
    "The second number of weeks must not be smaller than the first.",
  ]);
  await expect(page.getByLabel("Telephone")).toHaveValue("call me");
  await expect(page.getByLabel("Weeks your work usually takes, from")).toHaveValue("6");
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("settings-1280.png"), fullPage: true });
  await page.setViewportSize({ width: 390, height: 844 });
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("settings-390.png"), fullPage: true });
  await page.setViewportSize({ width: 1280, height: 900 });

  await page.getByLabel("Telephone").fill("+44 (0)1632 960-200 ext. 4");
  await page.getByLabel("Signature").fill("Nell Harrow");
  await page.getByLabel("Cleaning, per square metre").fill("42");
  await keep.click();
  await expect(summary.getByRole("listitem")).toHaveText(["The second number of weeks must not be smaller than the first."]);
  await page.getByLabel("Weeks your work usually takes, from").fill("3");
  await page.getByLabel("Weeks your work usually takes, to").fill("6");
  await keep.click();
  await expect(page.getByRole("status").filter({ hasText: "Kept." })).toBeVisible();
  await expect(page.getByLabel("Weeks your work usually takes, to")).toHaveValue("6");

  await takesIn(page, { name: "Delphine Orr", email: "delphine@mail.example", label: "100 % wool", story: "It was my aunt's. Do you collect? How long does it take?" }, desk);
  await expect(page.getByRole("region", { name: "What they ask" }).getByRole("listitem")).toHaveText([
    /^Do you collect\?\s*Answered by: Bringing it, or having it collected$/, /^How long does it take\?\s*Answered by: How long the work takes$/,
  ]);
  await expect(page.getByLabel("Text of the reply")).toHaveValue(/Our work usually takes 3 to 6\sweeks from the day a rug reaches us; we confirm it after the inspection\./);
  await expect(page.getByLabel("Text of the reply")).toHaveValue(/We collect within 15 miles of Hallowmere; from further away you bring it, or a carrier does\./);
  await page.screenshot({ path: test.info().outputPath("letter-1280.png"), fullPage: true });
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByText("approved the reply", { exact: false }).first()).toBeAttached();
});

test("An owner who tells areas in feet reads and types prices by the foot, and what they leave stays as it was", async ({ person }) => {
  const page = await person({ storageState: owner });
  const keep = page.getByRole("button", { name: "Keep the settings" });
  const kept = page.getByRole("status").filter({ hasText: "Kept." });
  await page.goto(`${desk.url}/desk/settings`);
  await page.getByLabel("Cleaning, per square metre").fill("45");
  await page.getByLabel("Sizes and areas").selectOption("sqft");
  await keep.click();
  await expect(kept).toBeVisible();
  await expect(page.getByLabel("Cleaning, per square foot")).toHaveValue("4.18");
  await expect(page.getByLabel("Cleaning, per square metre")).toHaveCount(0);
  await fitsAndIsAccessible(page);
  await page.getByLabel("Binding, per foot").fill("400");
  await keep.click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" }).getByRole("listitem")).toHaveText(["Binding, per foot: at most 304. Has a nought slipped in?"]);
  await page.getByLabel("Binding, per foot").fill("12");
  await page.getByLabel("Sizes and areas").selectOption("m2");
  await keep.click();
  await expect(page.getByLabel("Cleaning, per square metre")).toHaveValue("45");
  await expect(page.getByLabel("Binding, per metre")).toHaveValue("39.37");
});

test("An owner who would keep enquiries for fewer months is told first how many would be erased within the hour, and nothing is kept before they agree", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Sorrel Vane", email: "sorrel@example.org", label: "100 % wool" }, desk);
  const id = new URL(at).pathname.split("/").at(-1) ?? "";
  run(desk, `UPDATE "Enquiry" SET "state" = 'finished', "stateSince" = ? WHERE "id" = ?`, Date.now() - 200 * DAY_MS, id);
  const [months, keep] = [page.getByLabel("Months an enquiry is kept after it ends"), page.getByRole("button", { name: "Keep the settings" })];
  const tick = (of: string) => page.getByRole("checkbox", { name: `What has rested for ${of} or longer may be erased` });
  await page.goto(`${desk.url}/desk/settings`);
  await expect(page.getByRole("checkbox")).toHaveCount(0);
  await months.fill("6");
  await page.getByLabel("Town").fill("Saltwick");
  await keep.click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toContainText("In one enquiry nothing has waited for you for 6 months or longer: it would be erased within the hour");
  await expect(tick("6 months")).toHaveAccessibleDescription(/erased within the hour/);
  await expect(page.getByLabel("Town")).toHaveValue("Saltwick");
  await fitsAndIsAccessible(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await fitsAndIsAccessible(page);
  // Agreed to six months, it is asked again for three.
  await tick("6 months").check();
  await months.fill("3");
  await keep.click();
  await expect(tick("3 months")).not.toBeChecked();
  await expect(tick("6 months")).toHaveCount(0);
  await page.reload();
  await expect(months).toHaveValue("24");
  await months.fill("6");
  await keep.click();
  await tick("6 months").check();
  await keep.click();
  await expect(page.getByRole("status").filter({ hasText: "Kept." })).toBeVisible();
  await expect(months).toHaveValue("6");
  await expect(page.getByRole("checkbox")).toHaveCount(0);
});
