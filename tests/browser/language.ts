import Database from "better-sqlite3";
import type { Page } from "@playwright/test";
import { expect } from "./fixtures";
import type { Desk } from "./harness";
import { expectMarked } from "./marked";

export const CLIENT = { name: "Tamsin Wren", email: "tamsin@example.org" };
export const WORKSHOP = { name: "Lantern Yard", town: "Saltwick", telephone: "+44 20 7946 0000", email: "desk@lantern-yard.example", hours: "9 to 17" };

/** Writes past the pages: what no page offers. */
export function run(desk: Desk, sql: string, ...values: (string | number)[]): void {
  const db = new Database(desk.databaseUrl.replace(/^file:/, ""));
  db.prepare(sql).run(...values);
  db.close();
}
/** Settings as a row of the database: the marked locale is for tests and stands on no page. */
export const setSettings = (desk: Desk, values: Record<string, unknown>): void =>
  run(desk, `INSERT INTO "Workshop" ("id", "values", "updatedAt") VALUES ('workshop', ?, ?) ON CONFLICT ("id") DO UPDATE SET "values" = excluded."values"`, JSON.stringify({ ...WORKSHOP, ...values }), Date.now());
/** The page's button that leads on, whatever it is called. */
const onward = (page: Page) => page.locator('main a.button[href^="/ask/"], main form .button:not(.quiet)').first();
export const step = (page: Page) => new URL(page.url()).pathname.replace("/ask/", "");

/** Leads on, after the page was looked at, and waits for the next. */
export async function goOn(page: Page, data: readonly string[]): Promise<void> {
  await expectMarked(page, data);
  const before = page.url();
  await onward(page).click({ timeout: 15_000 });
  await expect(page).not.toHaveURL(before);
}
