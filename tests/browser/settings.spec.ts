import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { holdFor, linkSentTo, PHONE, takesIn, type Session } from "./people";

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
