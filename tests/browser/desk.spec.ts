import { readFile } from "node:fs/promises";
import path from "node:path";
import type { Page } from "@playwright/test";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import { startDesk, type Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { becomeOwner, holdFor, rewrite, takesIn, type Session } from "./people";

const REVIEWER = { name: "Ivo Castellane", email: "ivo@lantern-yard.example", password: "walnut-harbour-kettle-52" };
const TRAINEE = { name: "Pia Wetherby", email: "pia@lantern-yard.example", password: "willow-anchor-teapot-38" };
/** Long enough that no letter leaves while a test looks at it. */
const HELD_MINUTES = "30";

// One desk of this file's own, with three people: the link for its owner is good once.
let desk: Desk;
let owner: Session;
let reviewer: Session;
let trainee: Session;

const colleagues = [{ ...REVIEWER, role: "Reviewer" }, { ...TRAINEE, role: "Trainee" }];
ownDesk((settled) => { ({ desk, owner } = settled); [reviewer, trainee] = settled.others as [Session, Session]; }, { colleagues, first: (page, at) => holdFor(page, HELD_MINUTES, at) });

const calls = (page: Page, { name, email }: { name: string; email?: string }, at: Desk = desk) => takesIn(page, { name, ...(email ? { email } : {}), label: "100 % viscose" }, at);

const letterOf = (page: Page) => page.getByLabel("Text of the reply");
const desktopSection = (page: Page) => page.getByRole("region", { name: "The letter" });
const said = (page: Page) => desktopSection(page).getByRole("status");

/** Adds words to the reply and leaves the field, which keeps them. */
async function adds(page: Page, words: string): Promise<void> {
  await rewrite(letterOf(page), (now) => `${now}\n\n${words}`);
  await letterOf(page).press("Tab");
}

const lettersTo = (email: string) => desk.mails.filter((m) => m.to.includes(email)).map((m) => m.mail.text ?? "");

test("an enquiry taken by telephone has a letter that names the rug's fibre, its limits and a test", async ({ person }) => {
  const page = await person({ storageState: owner });
  await calls(page, { name: "Ottilie Marchbank", email: "ottilie@mail.example" });
  await expect(letterOf(page)).toHaveValue(/^Dear Ottilie Marchbank,/);
  await expect(letterOf(page)).toHaveValue(/viscose[\s\S]*hidden corner/);
  await expect(letterOf(page)).not.toHaveValue(/guarantee|promise|certain/i);
});

test("a trainee's letter waits for a second person", async ({ person }) => {
  const page = await person({ storageState: trainee });
  const at = await calls(page, { name: "Corin Ashdown", email: "corin@mail.example" });
  await adds(page, "The trainee wrote this line.");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(said(page)).toContainText("waits for a second person");
  await expect(page.getByRole("button", { name: "Send it" })).toHaveCount(0);

  const second = await person({ storageState: reviewer });
  await second.goto(at);
  await expect(second.getByText(`${TRAINEE.name} approved this.`)).toBeVisible();
  await expect(second.getByRole("article", { name: "The letter that waits" })).toContainText("The trainee wrote this line.");
  await second.getByRole("button", { name: "Send it" }).click();
  await expect(second.getByRole("group", { name: "Where the letter stands" })).toContainText(REVIEWER.name);
  await expect(second.getByRole("button", { name: "Take it back" })).toBeVisible();
});

test("two people write at once and nothing is lost", async ({ person }) => {
  const [one, other] = [await person({ storageState: owner }), await person({ storageState: reviewer })];
  const at = await calls(one, { name: "Dagny Ferris", email: "dagny@mail.example" });
  await other.goto(at);
  await expect(letterOf(other)).toHaveValue(/Dear Dagny/);

  await adds(one, "Words of the first.");
  await expect(said(one)).toHaveText("Kept.");
  await adds(other, "Words of the second.");
  const choice = other.getByRole("group", { name: "Another version" });
  await expect(choice).toBeVisible();
  await expect(letterOf(other)).toHaveValue(/Words of the second\./);
  await choice.getByText("Read the other version").click();
  await expect(choice.getByRole("article")).toContainText("Words of the first.");
  await expect(other.getByRole("button", { name: "Approve and send" })).toBeDisabled();

  await choice.getByRole("button", { name: "Go on with mine" }).click();
  await adds(other, "And the second goes on.");
  await expect(said(other)).toHaveText("Kept.");
  await one.goto(at);
  await expect(letterOf(one)).toHaveValue(/Words of the second\.[\s\S]*And the second goes on\./);
});

test("what I type is kept while I write, and I go on where I was after the page is read anew", async ({ person }) => {
  const page = await person({ storageState: owner });
  await calls(page, { name: "Sunniva Kell" });
  const state = page.getByText(/words, reading grade/);
  const types = async (line: string) => {
    await letterOf(page).press("ControlOrMeta+End");
    await letterOf(page).pressSequentially(line);
  };

  await types(" First line.");
  await expect(state).toContainText("Not kept yet.");
  await expect(state).toContainText("Version 2, by you.");
  await expect(letterOf(page)).toBeFocused();

  await test.step("at once after a key stroke", async () => {
    await types(" Second line.");
    await page.reload();
    await expect(letterOf(page)).toHaveValue(/First line\. Second line\.$/);
    await types(" Third line.");
    await expect(state).toContainText(/Version \d, by you\./);
    await expect(page.getByRole("group", { name: "Another version" })).toHaveCount(0);
    await page.reload();
    await expect(letterOf(page)).toHaveValue(/First line\. Second line\. Third line\.$/);
  });
});

test("what I write in two windows at once is said to be mine, and neither is lost", async ({ person }) => {
  const one = await person({ storageState: owner });
  const at = await calls(one, { name: "Halla Brandreth" });
  const other = await one.context().newPage();
  await other.goto(at);
  await expect(letterOf(other)).toHaveValue(/Dear Halla/);
  await adds(one, "Words of one window.");
  await expect(said(one)).toHaveText("Kept.");
  await adds(other, "Words of the other.");
  await expect(said(other)).toContainText("You have changed this draft meanwhile, in another window.");
  const choice = other.getByRole("group", { name: "Another version" });
  await expect(choice).toContainText("You kept another version in another window.");
  await expect(letterOf(other)).toHaveValue(/Words of the other\./);
  await choice.getByText("Read the other version").click();
  await expect(choice.getByRole("article")).toContainText("Words of one window.");
});

test.describe("without a line", () => {
  test.use({ expectedErrors: /ERR_FAILED/ });
  test("what I type while the server cannot be reached is still there after the page is read anew", async ({ person }) => {
    const page = await person({ storageState: owner });
    await calls(page, { name: "Torvald Hesk" });
    await page.route("**/api/drafts", (route) => route.abort());
    await letterOf(page).press("ControlOrMeta+End");
    await letterOf(page).pressSequentially(" Written without a line.");
    await expect(said(page)).toContainText("What you wrote is still here");
    await expect(letterOf(page)).toBeFocused();
    await page.reload();
    await expect(letterOf(page)).toHaveValue(/Written without a line\.$/);
    await page.unroute("**/api/drafts");
    await letterOf(page).press("Tab");
    await letterOf(page).focus();
    await letterOf(page).press("Tab");
    await expect(page.getByText(/words, reading grade/)).toContainText("Version 2, by you.");
  });
});

test("a letter that somebody else sends meanwhile leaves what I was writing to be copied", async ({ person }) => {
  const [one, other] = [await person({ storageState: owner }), await person({ storageState: reviewer })];
  const at = await calls(one, { name: "Perpetua Lisle", email: "perpetua@mail.example" });
  await other.goto(at);
  await expect(letterOf(other)).toHaveValue(/Dear Perpetua/);
  await one.getByRole("button", { name: "Approve and send" }).click();
  await expect(one.getByRole("button", { name: "Take it back" })).toBeVisible();
  await adds(other, "A line only I have.");
  await expect(said(other)).toContainText("What you wrote is not lost");
  const mine = other.getByRole("group", { name: "What you wrote" });
  await expect(mine.getByRole("article")).toContainText("A line only I have.");
  await mine.getByRole("button", { name: "I do not need it" }).click();
  await expect(mine).toHaveCount(0);
});

test("a letter can be taken back while it is held, and what leaves later is what was written last", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await calls(page, { name: "Tamsin Orrell", email: "tamsin@mail.example" });
  await adds(page, "A line that was wrong.");
  await page.getByRole("button", { name: "Approve and send" }).click();
  const held = /our letter is held until (?:tomorrow )?\d\d:\d\d/;
  await expect(page.getByText(held)).toBeVisible();
  const list = await page.context().newPage();
  await list.goto(`${desk.url}/desk/everything?text=Tamsin`);
  await expect(list.getByRole("listitem")).toContainText(held);
  await list.close();
  await page.getByRole("button", { name: "Take it back" }).click();
  await expect(page.getByText(held)).toHaveCount(0);
  await expect(said(page)).toContainText("It has not left");
  await expect(letterOf(page)).toHaveValue(/A line that was wrong\./);

  await holdFor(page, "0", desk);
  await page.goto(at);
  await rewrite(letterOf(page), (now) => now.replace("A line that was wrong.", "A line that is right."));
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => lettersTo("tamsin@mail.example").filter((text) => text.includes("A line that is right.")).length).toBe(1);
  expect(lettersTo("tamsin@mail.example").join("\n")).not.toContain("A line that was wrong.");
  await holdFor(page, HELD_MINUTES, desk);
});

test("a letter that promises too much is shown so while it is written, and goes out only with a reason", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await calls(page, { name: "Merrin Tolliver", email: "merrin@mail.example" });
  const notes = page.getByRole("region", { name: "Says more than we know" });
  await expect(letterOf(page)).toHaveValue(/Dear Merrin/);
  await expect(notes).toHaveCount(0);
  await adds(page, "Rest assured, the stain will come out.");
  await expect(notes).toContainText("Rest assured, the stain will come out.");
  await expect(notes).toContainText("What comes back is known after a test");

  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(said(page)).toContainText("says more than we know");
  await expect(notes.getByText("in a few words")).toBeVisible();
  await expect(page.getByRole("button", { name: "Approve and send" })).toBeVisible();

  await notes.getByLabel("To send it as it is, say why").fill("The client saw the test with us on Friday.");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("article", { name: "Reply" })).toContainText("the stain will come out");
  const deed = page.getByRole("listitem").filter({ hasText: "though it says more than we know: “The client saw the test with us on Friday.”" });
  await expect(deed.getByRole("listitem").filter({ hasText: "Rest assured, the stain will come out." })).toContainText("What comes back is known after a test");
});

test("what a letter promises too much can be mended in place, and then it goes out without a reason", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await calls(page, { name: "Sidra Lamorna", email: "sidra@mail.example" });
  const notes = page.getByRole("region", { name: "Says more than we know" });
  await adds(page, "Rest assured, the stain will come out.");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(said(page)).toContainText("says more than we know");
  await expect(notes.getByText("in a few words")).toBeVisible();

  await rewrite(letterOf(page), (now) => now.replace("Rest assured, the stain will come out.", "How much of it comes out we can say after a test."));
  await expect(notes).toHaveCount(0);
  await expect(said(page)).toHaveText("");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("article", { name: "Reply" })).toContainText("we can say after a test");
  await expect(page.getByText("though it says more than we know")).toHaveCount(0);
});

test("a sentence that promises too much gives way to the one suggested, by a click", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await calls(page, { name: "Petroc Annear", email: "petroc@mail.example" });
  const notes = page.getByRole("region", { name: "Says more than we know" });
  await adds(page, "You may keep walking on it.");
  await expect(notes).toContainText("Feet and furniture crush a pile");
  await notes.getByRole("button", { name: /^Write this instead/ }).click();
  await expect(letterOf(page)).toHaveValue(/Please keep people, children and pets off it until it has been looked at\./);
  await expect(letterOf(page)).not.toHaveValue(/keep walking/);
  await expect(letterOf(page)).toBeFocused();
  await expect(notes).toHaveCount(0);
});

test("a sentence that promises too much in two ways has one note with both reasons, and gives way to one answer by one click", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await calls(page, { name: "Jenifer Rowse", email: "jenifer@mail.example" });
  const notes = page.getByRole("region", { name: "Says more than we know" });
  await adds(page, "The dyes are safe, they will hold.");
  await expect(notes.getByRole("listitem")).toHaveCount(1);
  await expect(notes.getByRole("heading")).toHaveText("One thing says more than we know");
  await expect(notes).toContainText("mould and dyes are not judged from photos");
  await expect(notes.getByRole("button", { name: /^Write this instead/ })).toHaveCount(1);
  await expectAccessible(page);
  for (const width of [1280, 390]) {
    await page.setViewportSize({ width, height: 800 });
    await notes.screenshot({ path: test.info().outputPath(`two-reasons-${width}.png`) });
  }
  await notes.getByRole("button", { name: /^Write this instead/ }).click();
  await expect(letterOf(page)).toHaveValue(/we cannot promise it\. Cleaning always carries some risk, so every colour is tested first\./);
  await expect(letterOf(page)).not.toHaveValue(/they will hold/);
  await expect(notes).toHaveCount(0);
});

test("lines that repeat the client are said to be left unjudged, alone and beside what promises too much", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await calls(page, { name: "Hesper Vyvyan", email: "hesper@mail.example" });
  const notes = page.getByRole("region", { name: "Says more than we know" });
  const unjudged = "One quoted line (“>”) is somebody else’s and was not judged.";
  await expect(page.getByText(unjudged)).toHaveCount(0);
  await adds(page, "> Will it look like new?");
  await expect(page.getByText(unjudged)).toBeVisible();
  await expect(notes).toHaveCount(0);
  await expectAccessible(page);

  await adds(page, "It will look like new.");
  await expect(notes).toContainText(unjudged);
  await expect(notes.getByText("It will look like new.")).toBeVisible();
});

test("a letter longer than people read is shown so while it is written, and goes out with or without a reason", async ({ person }) => {
  const page = await person({ storageState: reviewer });
  await calls(page, { name: "Odette Marlowe", email: "odette@mail.example" });
  const note = page.getByRole("region", { name: "A long letter" });
  await expect(letterOf(page)).toHaveValue(/Dear Odette/);
  await expect(note).toHaveCount(0);
  await adds(page, "We wrote this down for you. ".repeat(60).trim());
  await expect(note).toContainText(/\d{3} words: longer than most people read/);
  const reason = note.getByLabel("Why it has to be this long, if you like");
  await reason.fill("Three kinds of damage.");
  await expectAccessible(page);
  await page.keyboard.press("Tab");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByText(/approved the reply, \d{3} words long: “Three kinds of damage\.”/)).toBeAttached();
});

test("a question goes to the client, and the reply stays where it was", async ({ person }) => {
  const page = await person({ storageState: owner });
  await calls(page, { name: "Wilmot Penhale", email: "wilmot@mail.example" });
  await adds(page, "Half a thought.");
  await expect(said(page)).toHaveText("Kept.");
  await page.getByRole("button", { name: "Ask for more" }).click();
  const question = page.getByLabel("Text of the question");
  await expect(question).toHaveValue(/Dear Wilmot Penhale/);
  await expect(question).not.toHaveValue(/likely|per cent|Half a thought/);
  await page.getByRole("button", { name: "Back to the reply" }).click();
  await expect(letterOf(page)).toHaveValue(/Half a thought\./);
});

test("a name from right to left and a very long one stay inside the page", async ({ person }) => {
  const page = await person({ storageState: owner });
  for (const name of ["ليلى عبد الرحمن الحداد", `Maximiliana ${"Featherstonehaugh-".repeat(9)}Ashby`]) {
    await calls(page, { name });
    await expect(letterOf(page)).toHaveValue(new RegExp(`^Dear ${name},`));
    await expect(desktopSection(page).getByText("who left no e-mail address")).toBeVisible();
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1280, height: 900 });
  }
});

test("on a phone, how it stands with the letter is always in sight, and the letter and what sends it are one press away", async ({ person }, info) => {
  const page = await person({ storageState: owner, viewport: { width: 390, height: 844 } });
  await calls(page, { name: "Emeric Holloway" });
  const link = page.getByRole("link", { name: "To the letter" });
  await expect(link).toHaveCount(1);
  for (const heading of ["As told", "Documents", "Who wrote"]) {
    await page.getByRole("heading", { name: heading, exact: true }).scrollIntoViewIfNeeded();
    await expect(link).toBeInViewport({ ratio: 1 });
    await expect(page.getByText("Drafted, not sent.")).toBeInViewport({ ratio: 1 });
  }
  // Read aloud and reached by key before the evidence.
  expect(await link.evaluate((a) => a.compareDocumentPosition(document.querySelector("article")!) & Node.DOCUMENT_POSITION_FOLLOWING)).toBeTruthy();
  await page.screenshot({ path: info.outputPath("evidence-390.png") });
  await link.click();
  await expect(page.getByText("Dear Emeric Holloway,")).toBeInViewport();
  await expect(page.getByRole("button", { name: "Approve and send" })).toBeInViewport({ ratio: 1 });
  await expect(link).not.toBeInViewport();
  await page.screenshot({ path: info.outputPath("letter-390.png") });
  await expectAccessible(page);
  await page.setViewportSize({ width: 1280, height: 900 });
  await expect(link).toBeHidden();
  await page.screenshot({ path: info.outputPath("beside-1280.png") });
});

test("a trainee is told plainly that settings and people are not theirs", async ({ person }) => {
  const page = await person({ storageState: trainee });
  for (const room of ["settings", "people"]) {
    await page.goto(`${desk.url}/desk/${room}`);
    await expect(page.getByRole("main")).toContainText("Not for you");
    await expect(page.getByRole("main").getByRole("textbox")).toHaveCount(0);
  }
});

test("I open the queue on a slow line, and no other page is fetched before I press its link", async ({ person }) => {
  const page = await person({ storageState: owner });
  const fetched: string[] = [];
  page.on("request", (asked) => { if (new URL(asked.url()).searchParams.has("_rsc")) fetched.push(new URL(asked.url()).pathname); });
  await page.goto(`${desk.url}/desk`, { waitUntil: "networkidle" });
  expect(fetched).toEqual([]);
  await page.getByRole("link", { name: "Everything" }).click();
  await expect(page).toHaveURL(/\/everything$/);
  expect(fetched).toEqual(["/desk/everything"]);
});

test("a wrong password says so, and not which half was wrong", async ({ person }) => {
  const page = await person();
  await page.goto(`${desk.url}/sign-in`);
  for (const email of [REVIEWER.email, "nobody@lantern-yard.example"]) {
    await page.getByLabel("E-mail address").fill(email);
    await page.getByLabel("Password").fill("not-the-password-at-all");
    await page.getByRole("button", { name: "Sign in" }).click();
    await expect(page.getByRole("main")).toContainText("That e-mail address and password do not go together.");
    await page.reload();
  }
});

test("without a mail server an approved letter waits, visibly not sent, and can be read as .eml", async ({ database, person }) => {
  test.setTimeout(180_000);
  const [silent, page] = [await startDesk(database, { SMTP_URL: "" }), await person()];
  try {
    await becomeOwner(page, silent);
    await holdFor(page, "0", silent);
    await calls(page, { name: "Bettine Rourke", email: "bettine@mail.example" }, silent);
    await expect(desktopSection(page)).toContainText("No mail server is set up");
    await adds(page, "This waits at the desk.");
    await page.getByRole("button", { name: "Approve and send" }).click();
    await expect(async () => {
      await page.reload();
      await expect(page.getByRole("group", { name: "Where the letter stands" })).toContainText("Not sent: no mail server is set up.", { timeout: 2_000 });
    }).toPass();

    await page.goto(`${silent.url}/desk/letters`);
    await expect(page.getByRole("main")).toContainText("No mail server is set up");
    await expect(page.getByRole("main")).toContainText("Not sent yet.");
    await expect(page.getByRole("heading", { name: /^Sent/ })).toHaveCount(0);
    const waiting = page.getByRole("listitem").filter({ hasText: "Reply to Bettine Rourke" });
    const href = await waiting.getByRole("link", { name: /\.eml/ }).getAttribute("href");
    const eml = await page.request.get(new URL(href ?? "", silent.url).href);
    expect(eml.status()).toBe(200);
    const raw = await eml.text();
    expect(raw).toMatch(/^To: .*bettine@mail\.example/m);
    expect(raw).toMatch(/^Subject: /m);
    expect(raw).toContain("This waits at the desk.");
    expect(silent.mails).toHaveLength(0);
  } finally {
    await page.context().close(); // a page, or a line that its browser keeps open, would hold up the end of the server
    await silent.stop();
  }
});

interface Violation { id: string; nodes: { target: string[] }[] }
declare global {
  interface Window { axe: { run(root: Document, options: object): Promise<{ violations: Violation[]; passes: unknown[] }> } }
}

test("the queue, an enquiry, the letters and the settings break no rule of WCAG 2.2 A and AA that a program can check", async ({ person }) => {
  test.setTimeout(120_000);
  const axe = await readFile(path.resolve("node_modules/axe-core/axe.min.js"), "utf8");
  for (const colorScheme of ["light", "dark"] as const) {
    const page = await person({ storageState: owner, colorScheme });
    const enquiry = await calls(page, { name: "Isaura Quennell", email: "isaura@mail.example" });
    for (const at of [`${desk.url}/desk`, enquiry, `${desk.url}/desk/letters`, `${desk.url}/desk/settings`]) {
      await page.goto(at);
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await page.evaluate(axe);
      const { violations, passes } = await page.evaluate(() => window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag22aa"] }));
      expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(" ")).join(", ")}`), `${colorScheme} ${at}`).toEqual([]);
      expect(passes.length).toBeGreaterThan(10);
    }
  }
});
