import type { Page } from "@playwright/test";
import { expect } from "./fixtures";
import type { Desk } from "./harness";
import { answer } from "./people";

/** The box above a form that was not taken. */
export const alert = (page: Page) => page.getByRole("alert").filter({ has: page.getByRole("heading") });

/** As far as the photos: an old mark on a dry rug. */
export async function begin(page: Page, desk: Desk): Promise<void> {
  await page.goto(`${desk.url}/ask/wet-now`);
  await answer(page, "No, it is dry");
  await answer(page, "It has a mark or damage");
}

export async function giveContact(page: Page, desk: Desk, contact: { name: string; email: string }): Promise<void> {
  await page.goto(`${desk.url}/ask/contact`);
  await page.getByLabel("Your name").fill(contact.name);
  await page.getByLabel("E-mail").fill(contact.email);
  await answer(page);
}

/** Gives consent and sends. */
export async function send(page: Page): Promise<void> {
  await page.getByRole("checkbox").check();
  await page.getByRole("button", { name: "Send to the workshop" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("It is with us");
}
