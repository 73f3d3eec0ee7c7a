import { defineConfig, devices } from "@playwright/test";
import { browserLaunch } from "./lib/commands/browser";
import type { Options } from "./tests/browser/fixtures";

/** The main way through the program, run on both databases by changing only DATABASE_URL. */
const MAIN_WAY = /a homeowner asks, the workshop answers/;

export default defineConfig<Options, Options>({
  testDir: "tests/browser",
  outputDir: "test-results/browser",
  globalSetup: "./tests/browser/global-setup.ts",
  // One waits for its server or its pages while the others go on; a test's server, database, mail and files are its own.
  workers: 3,
  forbidOnly: Boolean(process.env.CI),
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [["list"], ["json", { outputFile: "test-results/reports/browser.json" }]],
  use: {
    ...devices["Desktop Chrome"],
    screenshot: "only-on-failure",
    // Recording every page takes an eighth of the time; `npx playwright test --trace on` does where one fails.
    trace: "off",
    launchOptions: browserLaunch(),
  },
  projects: [
    { name: "sqlite", use: { database: "sqlite" } },
    ...(process.env.PLAINPILE_TEST_POSTGRES ? [{ name: "postgresql", grep: MAIN_WAY, use: { database: "postgresql" as const } }] : []),
  ],
});
