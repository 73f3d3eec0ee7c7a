import type { Page } from "@playwright/test";
import { letter } from "../unit/enquiry/mail-files";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { linkSentTo, PHONE, rewrite, takesIn, type Session } from "./people";

// Letters are held for some minutes here, as on a new desk.
let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); });

const OF_PEOPLE = (email: string) => desk.mails.filter((m) => m.to.includes(email) && m.mail.headers.get("auto-submitted") === undefined);
const note = (page: Page) => page.getByRole("region", { name: "Written before our letter left" });
const letterOf = (page: Page) => page.getByLabel("Text of the reply");
/** Takes an enquiry in, and waits until its client has a link. */
async function takenIn(page: Page, name: string, email: string): Promise<string> {
  const at = await takesIn(page, { name, email, label: "100 % viscose" }, desk);
  await expect.poll(() => linkSentTo(desk, email)).not.toBe("");
  return at;
}
/** The enquiry on the desk's page and on a phone: nothing sticks out, and both are pictured. */
async function isSeenWell(page: Page, phone: Page, name: string): Promise<void> {
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath(`${name}-1280.png`) });
  await phone.goto(page.url());
  await fitsAndIsAccessible(phone);
  await phone.getByRole("region", { name: "The letter" }).screenshot({ path: test.info().outputPath(`${name}-390.png`) });
}
async function writesOnTheirPage(phone: Page, email: string, words: string): Promise<void> {
  await phone.goto(linkSentTo(desk, email));
  await phone.getByLabel("Your message").fill(words);
  await phone.getByRole("button", { name: "Send the message" }).click();
  await expect(phone.getByText(words)).toBeVisible();
}

test("My client writes while my letter is held: it comes back to me with what they wrote, and I send it after reading that", async ({ person }) => {
  const email = "hedda@mail.example";
  const page = await person({ storageState: owner });
  const at = await takenIn(page, "Hedda Marling", email);
  await rewrite(letterOf(page), () => "Dear Hedda Marling,\n\nPlease bring it rolled.\n\nKind regards");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
  const phone = await person(PHONE);
  await writesOnTheirPage(phone, email, "Please wait: the label says wool after all.");

  await test.step("the queue says that it waits, and why", async () => {
    await page.goto(`${desk.url}/desk`);
    await page.getByRole("listitem").filter({ hasText: "the client wrote before our letter left" }).getByRole("link").first().click();
    await expect(page).toHaveURL(at);
  });
  await expect(note(page)).toContainText(/Our letter was held back: Hedda Marling wrote before it left\. It was approved today \d\d:\d\d and has not gone\./);
  await expect(note(page)).toContainText("Please wait: the label says wool after all.");
  await expect(letterOf(page)).toHaveValue(/Please bring it rolled/);
  await expect(page.getByText("held our letter back, since the client had written before it left")).toBeVisible();
  await isSeenWell(page, await person({ ...PHONE, storageState: owner }), "held-back");

  await rewrite(letterOf(page), () => "Dear Hedda Marling,\n\nThank you for telling us. Please bring it with its label.\n\nKind regards");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByText("Say that you have read it.", { exact: true })).toBeVisible();
  await page.screenshot({ path: test.info().outputPath("read-it-1280.png"), fullPage: true });
  await page.getByRole("checkbox", { name: /^I have read it/ }).check();
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
  await expect(note(page)).toHaveCount(0);
  expect(OF_PEOPLE(email)).toEqual([]);
});

test("My question is held back when the client writes, and its words are still there to be asked", async ({ person }) => {
  const email = "isla@mail.example";
  const page = await person({ storageState: owner });
  const at = await takenIn(page, "Isla Thorne", email);
  await page.getByRole("button", { name: "Ask for more" }).click();
  await page.getByLabel("Text of the question").fill("Dear Isla Thorne,\n\nWhich side of the house does it lie on?");
  await page.getByRole("button", { name: "Send the question" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
  const phone = await person(PHONE);
  await writesOnTheirPage(phone, email, "I forgot: it lies by a south window.");

  await page.goto(at);
  await expect(note(page)).toContainText("Our question was held back: Isla Thorne wrote before it left.");
  await page.getByRole("button", { name: "Ask for more" }).click();
  await expect(page.getByLabel("Text of the question")).toHaveValue("Dear Isla Thorne,\n\nWhich side of the house does it lie on?");
  await fitsAndIsAccessible(page);
});

test("I correct a label after I approved a letter for tomorrow: it comes back to me and does not leave until I have looked at it again", async ({ person }) => {
  const email = "runa@mail.example";
  const page = await person({ storageState: owner });
  const at = await takenIn(page, "Runa Fallow", email);
  await page.getByText("Send it at a chosen time").click();
  await page.getByRole("button", { name: "Approve for then" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
  await page.getByRole("link", { name: "Correct or add an answer" }).click();
  await page.getByRole("link", { name: "Is there a label, and what does it say?" }).click();
  await page.getByLabel("What the label says").fill("100 % pure new wool");
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page).toHaveURL(new RegExp(`^${at}#told-`));

  await test.step("the queue says that it waits, and why", async () => {
    await page.goto(`${desk.url}/desk`);
    await page.getByRole("listitem").filter({ hasText: "the rug was judged anew before our letter left" }).getByRole("link").first().click();
    await expect(page).toHaveURL(at);
  });
  const judged = page.getByRole("region", { name: "Judged anew before our letter left" });
  await expect(judged).toContainText("The rug was judged anew after our letter was approved, so it did not leave: look at it again.");
  await expect(letterOf(page)).toHaveValue(/wool/);
  await expect(page.getByText("held our letter back, since the rug was judged anew before it left")).toBeVisible();
  await isSeenWell(page, await person({ ...PHONE, storageState: owner }), "judged-anew");
  await page.getByText("Held back before it went out: the rug was judged anew meanwhile.").click();
  await expect(page.getByRole("group").filter({ hasText: "Held back before it went out" }).getByText(/viscose/).first()).toBeVisible();

  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
  await expect(judged).toHaveCount(0);
  expect(OF_PEOPLE(email)).toEqual([]);
});

test("I press “Take it back” on a letter that was held back a moment before, and am told why it is back already", async ({ person }) => {
  const email = "jorun@mail.example";
  const page = await person({ storageState: owner });
  await takenIn(page, "Jorun Vale", email);
  await page.getByRole("button", { name: "Approve and send" }).click();
  const back = page.getByRole("button", { name: "Take it back" });
  await expect(back).toBeVisible();
  await writesOnTheirPage(await person(PHONE), email, "One thing more.");
  await back.click();
  await expect(page.getByRole("region", { name: "The letter" }).getByRole("status")).toHaveText("Held back before it went out: the client had written meanwhile.");
  await expect(note(page)).toBeVisible();
});

test("I approve a letter while its client has just written: nothing is sent until I have what they wrote before me", async ({ person }) => {
  const email = "kell@mail.example";
  const page = await person({ storageState: owner });
  await takenIn(page, "Kell Sandring", email);
  await writesOnTheirPage(await person(PHONE), email, "My brother has the label.");
  await expect(page.getByText("My brother has the label.")).toHaveCount(0);
  // Last of all: what is typed is kept after a pause, and that would show what came meanwhile.
  await rewrite(letterOf(page), () => "Dear Kell Sandring,\n\nPlease bring it rolled.\n\nKind regards");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("region", { name: "The letter" }).getByRole("status")).toHaveText("Something came or was recorded meanwhile, and the program has written this draft anew. Nothing was sent: look at what came first; what you wrote is still here.");
  await expect(page.getByRole("region", { name: "Since they asked" })).toContainText("My brother has the label.");
  await expect(letterOf(page)).toHaveValue(/Please bring it rolled/);
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("unheard-1280.png") });
  await page.getByRole("button", { name: "Go on with mine" }).click();
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
});

test("A caller left no address: my letter stays with me until I have rung and read it out", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Odd Farrow", label: "100 % wool" }, desk);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("group", { name: "Where the letter stands" })).toBeFocused();
  await page.goto(`${desk.url}/desk`);
  await expect(page.getByRole("listitem").filter({ hasText: "ring them: our letter is to be read out" })).toHaveCount(1);
  await page.goto(at);
  const small = await person({ ...PHONE, storageState: owner });
  await isSeenWell(page, small, "read-out");
  await page.getByRole("button", { name: "I rang and read it out" }).click();
  const stands = page.getByRole("group", { name: "Where the letter stands" });
  await expect(stands).toContainText(/Read out on the telephone\. If it was not, that can be taken back until today \d\d:\d\d\./);
  // Whoever pressed it is left where it can be taken back.
  await expect(stands).toBeFocused();
  await expect(page.getByRole("button", { name: "It was not read out" })).toBeInViewport();
  await expect(page.getByText("an approved letter waits here")).toHaveCount(0);
  await page.goto(`${desk.url}/desk`);
  await expect(page.getByText("ring them: our letter is to be read out")).toHaveCount(0);

  await test.step("I pressed it by mistake, and take it back", async () => {
    await page.goto(at);
    await fitsAndIsAccessible(page);
    await page.screenshot({ path: test.info().outputPath("was-read-out-1280.png") });
    await small.goto(at);
    await fitsAndIsAccessible(small);
    await small.getByRole("region", { name: "The letter" }).screenshot({ path: test.info().outputPath("was-read-out-390.png") });
    await page.getByRole("button", { name: "It was not read out" }).click();
    await expect(page.getByRole("button", { name: "I rang and read it out" })).toBeVisible();
    await expect(stands).toContainText("Ring them, and read it out.");
    await expect(page.getByText("took back that the letter was read out")).toBeVisible();
    await page.goto(`${desk.url}/desk`);
    await expect(page.getByRole("listitem").filter({ hasText: "ring them: our letter is to be read out" })).toHaveCount(1);
  });
});

test("My client's letter answers none of ours and waits in the Post: my own letter is held back, and I am led to theirs before I send it", async ({ person }) => {
  const email = "wilmot@mail.example";
  const page = await person({ storageState: owner });
  const at = await takenIn(page, "Wilmot Dace", email);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
  await page.goto(`${desk.url}/desk/post`);
  const bytes = letter({ from: `Wilmot Dace <${email}>`, subject: "The rug again", text: "Please wait with your answer. May I bring it on Monday?", date: new Date() });
  await page.locator("input[type=file]").setInputFiles({ name: "again.eml", mimeType: "message/rfc822", buffer: bytes });
  await expect(page.getByRole("listitem").filter({ hasText: "again.eml" })).toContainText("It waits for you.");
  await page.goto(at);
  await expect(note(page)).toContainText("Our letter was held back: Wilmot Dace wrote before it left.");
  const waits = page.getByRole("region", { name: "In the Post from this address" });
  await expect(waits).toContainText("A letter from Wilmot Dace’s address waits in the Post. Say first where it belongs.");
  await isSeenWell(page, await person({ ...PHONE, storageState: owner }), "in-post");
  await waits.getByRole("link", { name: "The rug again" }).click();
  await page.getByRole("button", { name: "Put it there" }).first().click();
  await expect(page).toHaveURL(at);
  await expect(note(page)).toContainText("May I bring it on Monday?");
  await expect(waits).toBeHidden();
});

test("A letter of my client's waits in the Post before I approve mine: it leaves neither at once nor for a time, nor as a question, until I have said where theirs belongs", async ({ person }) => {
  const email = "sunniva@mail.example";
  const page = await person({ storageState: owner });
  const at = await takenIn(page, "Sunniva Locke", email);
  const second = await person({ storageState: owner });
  await second.goto(`${desk.url}/desk/post`);
  const bytes = letter({ from: `Sunniva Locke <${email}>`, subject: "Before you answer", text: "The label says wool after all.", date: new Date() });
  await second.locator("input[type=file]").setInputFiles({ name: "before.eml", mimeType: "message/rfc822", buffer: bytes });
  await expect(second.getByRole("listitem").filter({ hasText: "before.eml" })).toContainText("It waits for you.");

  const waits = page.getByRole("region", { name: "In the Post from this address" });
  const said = page.getByRole("region", { name: "The letter" }).getByRole("status");
  const REFUSED = "A letter from Sunniva Locke’s address waits in the Post. Say first where it belongs. Nothing was sent, and your words are kept.";
  await expect(waits, "the page was opened before it came").toBeHidden();
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(said).toHaveText(REFUSED);
  await expect(waits.getByRole("link", { name: "Before you answer" })).toBeVisible();
  await isSeenWell(page, await person({ ...PHONE, storageState: owner }), "refused-for-post");
  await page.getByText("Send it at a chosen time").click();
  await page.getByRole("button", { name: "Approve for then" }).click();
  await expect(said).toHaveText(REFUSED);
  await page.getByRole("button", { name: "Ask for more" }).click();
  await page.getByLabel("Text of the question").fill("Dear Sunniva Locke,\n\nHow old is it?");
  await page.getByRole("button", { name: "Send the question" }).click();
  await expect(said).toHaveText(REFUSED);

  await page.goto(at);
  await waits.getByRole("link", { name: "Before you answer" }).click();
  await page.getByRole("button", { name: "Put it aside" }).click();
  await expect(page).toHaveURL(`${desk.url}/desk/post`);
  await page.goto(at);
  await expect(waits).toBeHidden();
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();
});
