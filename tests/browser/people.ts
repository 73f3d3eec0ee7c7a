import { devices, expect, type Page } from "@playwright/test";
import type { Desk } from "./harness";

/** A phone held upright. */
export const PHONE = { ...devices["Pixel 7"], viewport: { width: 390, height: 844 } };
export const OWNER = { name: "Nell Harrow", email: "nell@lantern-yard.example", password: "copper-thimble-osprey-71" };

/** The first person of a fresh desk sets name and password with the link the server printed, and comes in. */
export async function becomeOwner(page: Page, desk: Desk): Promise<void> {
  await page.goto(desk.ownerLink);
  await page.getByLabel("Your name").fill(OWNER.name);
  await page.getByLabel("E-mail address").fill(OWNER.email);
  await page.getByLabel("Password").fill(OWNER.password);
  await page.getByRole("button", { name: "Set name and password" }).click();
  await expect(page).toHaveURL(/\/desk$/);
}

/** Chooses an answer by its label and goes on to the next page. */
export async function answer(page: Page, ...labels: string[]): Promise<void> {
  for (const label of labels) await page.getByText(label, { exact: true }).click();
  const before = page.url();
  await page.getByRole("button", { name: "Go on" }).click();
  await expect(page).not.toHaveURL(before);
}
