import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { chromium, type Browser, type BrowserContextOptions, type Page } from "@playwright/test";
import { simpleParser } from "mailparser";
import { browserLaunch } from "../../lib/commands/browser";
import { CommandError, runCommand, step } from "../../lib/commands/command";
import type { DemoPerson } from "../../prisma/demo/seed";

const OUT = path.resolve("tests/browser/screenshots");
const PORT = process.env.PORT ?? "3000";
const BASE = `http://127.0.0.1:${PORT}`;
const POLL_MS = 250;
const GIVE_UP_MS = 10 * 60_000;
const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };
const DESK: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };
/** Whose letter, whose rug: an answered question about bamboo silk, and the pale patch. */
const ANSWERED = "ishbel@crane.example";
const PALE_PATCH = /Grey 170 × 240/;

async function until<T>(what: string, look: () => Promise<T | null>): Promise<T> {
  for (const giveUp = Date.now() + GIVE_UP_MS; Date.now() < giveUp;) {
    const found = await look().catch(() => null);
    if (found !== null) return found;
    await new Promise((resume) => setTimeout(resume, POLL_MS));
  }
  throw new CommandError(`${what} did not come within ${GIVE_UP_MS / 60_000} minutes.`);
}

/** The link to their own page, out of the letter the demo sent them. */
const linkSentTo = (address: string) => until(`A letter to ${address}`, async () => {
  const folder = path.resolve("demo-data/mail");
  for (const name of (await readdir(folder)).sort()) {
    const mail = await simpleParser(await readFile(path.join(folder, name)));
    const link = /https?:\/\/\S+\/e\/[\w-]+/.exec(mail.text ?? "")?.[0];
    if (link && [mail.to].flat().some((to) => to?.value.some((v) => v.address === address))) return link;
  }
  return null;
});

async function shoot(browser: Browser, name: string, options: BrowserContextOptions, walk: (page: Page) => Promise<void>, fullPage = false): Promise<void> {
  const context = await browser.newContext({ ...options, baseURL: BASE });
  const page = await context.newPage();
  await walk(page);
  await page.evaluate(() => document.fonts.ready);
  await page.mouse.move(0, 0);
  await page.screenshot({ path: path.join(OUT, `${name}.png`), fullPage });
  await context.close();
}

async function signIn(page: Page, person: DemoPerson): Promise<void> {
  await page.goto("/sign-in");
  await page.getByLabel(/e-mail/i).fill(person.email);
  await page.getByLabel("Password").fill(person.password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL(/\/desk$/);
}

async function shootAll(browser: Browser, owner: DemoPerson): Promise<void> {
  await shoot(browser, "front-390", PHONE, async (page) => void await page.goto("/"));
  await shoot(browser, "question-390", PHONE, async (page) => {
    await page.goto("/ask");
    await page.getByText("No, it is dry").click();
    await page.getByRole("button", { name: "Go on" }).click();
    await page.waitForURL(/\/ask\/reason/);
    await page.goto("/ask/shine");
    await page.getByText("Light from one end, dark from the other").click();
  });
  const link = await linkSentTo(ANSWERED);
  await shoot(browser, "your-enquiry-390", PHONE, async (page) => void await page.goto(link));
  await shoot(browser, "queue-1280", DESK, async (page) => {
    await signIn(page, owner);
    await page.waitForLoadState("networkidle");
  });
  await shoot(browser, "enquiry-1280", { viewport: { width: 1280, height: 1180 } }, async (page) => {
    await signIn(page, owner);
    await page.getByRole("link", { name: PALE_PATCH }).first().click();
    await page.waitForURL(/\/desk\/[\w-]{20,}/);
    await page.waitForLoadState("networkidle");
  });
}

/** The pictures of README.md, taken from the demo, so that they show what is there now. */
async function main(): Promise<void> {
  await mkdir(OUT, { recursive: true });
  const demo = spawn(process.execPath, ["--conditions=react-server", "--import", "tsx", "lib/commands/demo.ts"], { stdio: ["ignore", "inherit", "inherit"], env: { ...process.env, PORT } });
  const ended = once(demo, "exit");
  try {
    await until("The demo", async () => {
      if (demo.exitCode !== null) throw new CommandError("The demo ended before it could be looked at.");
      return (await fetch(BASE)).ok ? true : null;
    });
    const people = JSON.parse(await readFile("demo-data/access.json", "utf8")) as DemoPerson[];
    const owner = people.find((p) => p.role === "owner");
    if (!owner) throw new Error("Expected an owner among the people of the demo but found none");
    const browser = await chromium.launch(browserLaunch());
    await step("Taking pictures", () => shootAll(browser, owner));
    await browser.close();
  } finally {
    demo.kill("SIGTERM");
    await ended;
  }
}

await runCommand(main);
