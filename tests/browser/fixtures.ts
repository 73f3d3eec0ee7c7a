import { expect, test as base, type BrowserContext, type BrowserContextOptions, type Page } from "@playwright/test";
import type { Kind } from "../scratch";
import { startDesk, type Desk } from "./harness";

export interface Options {
  database: Kind["name"];
  /** What a page may say on its console without failing the test: a refusal that the test provokes, say. */
  expectedErrors: RegExp | null;
}

interface Fixtures {
  /** A page of a person of their own: no cookies of anybody else, and watched like every page. */
  person(options?: BrowserContextOptions): Promise<Page>;
  watched: string[];
}

function watch(context: BrowserContext, errors: string[]): void {
  context.on("console", (message) => {
    if (message.type() === "error") errors.push(`${message.text()} (${message.location().url})`);
  });
  context.on("weberror", (error) => errors.push(String(error.error())));
}

/** `frontDoor` is a built server that tests share which only come to its door: they ask nothing of what stands on the desk, nor of its people. */
interface Shared { frontDoor: Desk }

/** `desk` is a built server of its own, begun from nothing for each test. A console error in any page fails the test. */
export const test = base.extend<Fixtures & { desk: Desk } & Pick<Options, "expectedErrors">, Shared & Pick<Options, "database">>({
  database: ["sqlite", { option: true, scope: "worker" }],
  expectedErrors: [null, { option: true }],
  frontDoor: [async ({ database }, provide) => {
    const desk = await startDesk(database);
    await provide(desk);
    await desk.stop();
  }, { scope: "worker", timeout: 120_000 }],
  desk: [async ({ database, context }, provide) => {
    const desk = await startDesk(database);
    await provide(desk);
    // A page that is still open would go on asking a server that is gone.
    for (const page of context.pages()) await page.close();
    await desk.stop();
  }, { timeout: 120_000 }],
  watched: [async ({ context, expectedErrors }, provide) => {
    const errors: string[] = [];
    watch(context, errors);
    await provide(errors);
    expect(errors.filter((e) => !expectedErrors?.test(e)), "errors on the console").toEqual([]);
  }, { auto: true }],
  person: async ({ browser, watched }, provide) => {
    const contexts: BrowserContext[] = [];
    await provide(async (options) => {
      const context = await browser.newContext(options);
      contexts.push(context);
      watch(context, watched);
      return context.newPage();
    });
    for (const context of contexts) await context.close();
  },
});
export { expect };
