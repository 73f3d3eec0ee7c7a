import type { Locator, Page, TestInfo } from "@playwright/test";
import { drawRug } from "../../prisma/demo/draw-rug";
import { letter } from "../unit/enquiry/mail-files";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Caught, Desk } from "./harness";
import { begin, giveContact, send } from "./homeowner";
import { ownDesk } from "./own-desk";
import { holdFor, linkSentTo, OWNER, PHONE, takesIn, type Session } from "./people";
import { makePhotoFiles } from "./photo-files";

// The frame of a letter lets no script run; the test runner tries to put one of its own into every frame.
test.use({ expectedErrors: /^Blocked script execution in '(about:blank|http:\/\/[\w.:]+\/preview\/[\w-]+)'/ });

let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, at) => holdFor(page, "0", at) });

const documents = (page: Page) => page.getByRole("region", { name: "Documents" });
const said = (page: Page) => page.getByRole("region", { name: "The letter" }).getByRole("status");
const arrivedAt = (address: string): Caught[] => desk.mails.filter((m) => m.to.includes(address) && m.mail.headers.get("auto-submitted") === undefined);
const email = (name: string) => `${name.toLowerCase().replaceAll(" ", ".")}@example.org`;
const takesAnEnquiryIn = (page: Page, name: string, sold?: string) => takesIn(page, { name, email: email(name), label: "100 % viscose", ...(sold ? { sold } : {}) }, desk);
/** Both widths of the house, in light and in dark: nothing sticks out and axe is content. */
async function looksRight(page: Page): Promise<void> {
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      await fitsAndIsAccessible(page);
    }
  }
}

/** The whole page at both widths, in light, to be looked at. */
async function picturesOf(page: Page, info: TestInfo, name: string): Promise<void> {
  await page.emulateMedia({ colorScheme: "light" });
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    await page.screenshot({ path: info.outputPath(`${name}-${width}.png`), fullPage: true });
  }
}

/** Opens the form of a document from the enquiry's page. */
async function opensForm(page: Page, name: string): Promise<void> {
  await documents(page).getByText("Make a document").click();
  await documents(page).getByRole("link", { name, exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
}

test("Staff make a condition report, read it in the page and send it with the letter", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  await takesAnEnquiryIn(page, "Ottilie Marchbank");
  await expect(documents(page)).toContainText("None made yet.");
  await expect(documents(page)).toContainText("Not inspected, so a report on it is provisional.");
  await documents(page).getByRole("link", { name: "Record an inspection" }).click();
  const [by, on] = await Promise.all(["Inspected by", "On"].map((label) => page.getByLabel(label, { exact: true }).boundingBox()));
  expect([on?.y, on?.height]).toEqual([by?.y, by?.height]);
  await picturesOf(page, info, "inspection-form");
  await page.getByRole("button", { name: "Record this inspection" }).click();
  const wrong = page.getByRole("alert", { name: "Please look at this once more" });
  await expect(wrong).toContainText("Write what was seen.");
  await expect(wrong).toContainText("Say whether it is beyond economic repair.");
  await expect(page).toHaveTitle(/^Error: Inspection/);
  await page.getByLabel("What was seen").fill("The pile is distorted over a hand’s breadth.");
  await page.getByRole("radio", { name: "No", exact: true }).check();
  await page.getByRole("button", { name: "Record this inspection" }).click();
  await expect(documents(page)).toContainText(/Inspected by Nell Harrow on .*The pile is distorted/);

  await picturesOf(page, info, "inspected-desk");

  await opensForm(page, "Condition report");
  await expect(page.getByRole("main")).toContainText("It goes by the inspection of Nell Harrow.");
  await picturesOf(page, info, "report-form");
  await page.getByLabel("The insurer’s reference").fill("CL/118");
  await page.getByRole("button", { name: "Make it" }).click();
  const report = page.getByRole("article", { name: /^Condition report/ });
  await expect(report).toContainText("Your reference: CL/118.");
  await expect(report).toContainText("Not beyond economic repair, in the judgement of Nell Harrow");
  await expect(report).toContainText("earns its living from cleaning and repairing rugs");
  await fitsAndIsAccessible(page);
  await page.getByRole("checkbox", { name: /Goes with the letter/ }).check();
  await expect(page.getByText("It goes with the letter.")).toBeVisible();
  const [, documentId = ""] = /made\/([\w-]+)/.exec(page.url()) ?? [];

  await page.getByRole("link", { name: "Back to the enquiry" }).click();
  const letter = page.getByRole("region", { name: "The letter" });
  await expect(letter.getByRole("link", { name: /^Condition report/ })).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => arrivedAt(email("Ottilie Marchbank")).length).toBe(1);
  const [arrived] = arrivedAt(email("Ottilie Marchbank"));
  const made = await page.request.get(`${desk.url}/documents/${documentId}`);
  expect(made.headers()).toMatchObject({ "content-type": "application/pdf", "cache-control": "private, no-store" });
  expect(arrived?.mail.attachments.map((a) => [a.contentType, a.content.equals(Buffer.from([]))])).toEqual([["application/pdf", false]]);
  expect(arrived?.mail.attachments[0]?.content.equals(await made.body())).toBe(true);
  await page.reload();
  await expect(page.getByRole("article", { name: "Reply" }).getByRole("link", { name: /^Condition report/ })).toBeVisible();
  await expect(documents(page)).toContainText("went with a letter");
  const link = linkSentTo(desk, email("Ottilie Marchbank"));
  const client = await person(PHONE);
  expect((await client.request.get(`${desk.url}/documents/${documentId}`)).status()).toBe(401);
  await client.goto(link);
  const enclosed = client.getByRole("article", { name: /^Our letter/ }).getByRole("link", { name: /^Condition report/ });
  await expect(enclosed).toHaveAttribute("href", `/documents/${documentId}`);
  expect((await client.request.get(`${desk.url}/documents/${documentId}`)).status()).toBe(200);
  await fitsAndIsAccessible(client);
});

/** A homeowner sends two photos of a marked rug; its page at the desk, by way of the queue's slip. */
async function opensFromQueue(page: Page, phone: Page, name: string): Promise<void> {
  const files = await makePhotoFiles();
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/photos`);
  for (const kind of ["whole", "trouble"] as const) {
    await phone.locator(`#gallery-${kind}`).setInputFiles(files.whole);
    await expect(phone.getByText("Kept")).toHaveCount(kind === "whole" ? 1 : 2);
  }
  await giveContact(phone, desk, { name, email: email(name) });
  await phone.goto(`${desk.url}/ask/send`);
  await send(phone);
  const reference = await phone.locator("main strong").first().innerText();
  await page.goto(`${desk.url}/desk`);
  const slip = page.getByRole("main").getByRole("listitem").filter({ hasText: reference });
  await slip.getByRole("link").first().click();
  await expect(page.getByRole("region", { name: "The letter" })).toBeVisible();
}

test("Staff read the same improvement in the queue, beside the evidence and in the letter", async ({ person }) => {
  const page = await person({ storageState: owner });
  // Told enough for a range that tells something: of one that tells nothing the letter gives no figures.
  const enquiry = await takesIn(page, { name: "Jessamy Tolk", email: email("Jessamy Tolk"), label: "100 % wool" }, desk);
  const [reference = ""] = /\b[A-Z]\d-\d{3}\b/.exec(await page.getByRole("main").innerText()) ?? [];
  expect(reference).not.toBe("");
  await page.goto(`${desk.url}/desk`);
  const slip = await page.getByRole("main").getByRole("listitem").filter({ hasText: reference }).innerText();
  const [, figures = ""] = /comes back (\d+(?:–\d+)?\s%)/.exec(slip) ?? [];
  await page.goto(enquiry);
  expect(figures).not.toBe("");
  await expect(page.getByText("Comes back by").locator("xpath=..")).toContainText(figures);
  expect((await page.locator("textarea").first().inputValue()).replaceAll("\u00a0", " ")).toContain(`(${figures.replaceAll("\u00a0", " ")})`);
});

test("Staff read a report’s photos two beside each other on a wide screen, and below each other on a phone", async ({ person }) => {
  const page = await person({ storageState: owner });
  await opensFromQueue(page, await person(PHONE), "Perran Dool");
  await opensForm(page, "Condition report");
  await page.getByRole("button", { name: "Make it" }).click();
  const photos = page.getByRole("article", { name: /^Condition report/ }).getByRole("figure");
  await expect(photos).toHaveCount(2);
  const places = async () => Promise.all([0, 1].map(async (i) => (await photos.nth(i).boundingBox())!));
  await page.setViewportSize({ width: 1280, height: 900 });
  const [left, right] = await places();
  expect(right!.y).toBe(left!.y);
  expect(right!.x).toBeGreaterThanOrEqual(left!.x + left!.width);
  await page.setViewportSize({ width: 390, height: 900 });
  const [upper, lower] = await places();
  expect(lower!.x).toBe(upper!.x);
  expect(lower!.y).toBeGreaterThanOrEqual(upper!.y + upper!.height);
  await looksRight(page);
});

test("Staff send the letter tomorrow at eight", async ({ person }) => {
  const page = await person({ storageState: owner });
  await takesAnEnquiryIn(page, "Balthazar Quill");
  await page.getByText("Send it at a chosen time").click();
  await expect(page.getByLabel("Hour, at the workshop")).toHaveValue("08:00");
  const tomorrow = await page.getByLabel("Day").inputValue();
  await page.getByLabel("Day").fill("2020-01-01");
  await page.getByRole("button", { name: "Approve for then" }).click();
  await expect(page.getByText("That is past: at the workshop it is")).toHaveCount(1);
  await expect(page.getByLabel("Day")).toHaveAttribute("aria-invalid", "true");
  await expect(page.getByLabel("Day")).toHaveValue("2020-01-01");
  await fitsAndIsAccessible(page);
  await page.getByLabel("Day").fill("");
  await page.getByRole("button", { name: "Approve for then" }).click();
  await expect(page.getByText("Choose the day.")).toHaveCount(1);
  await page.getByLabel("Day").fill(tomorrow);
  await page.getByRole("button", { name: "Approve for then" }).click();
  await expect(said(page)).toContainText("Approved.");
  await expect(page.getByRole("group", { name: "Where the letter stands" })).toContainText("Leaves tomorrow 08:00.");
  expect(arrivedAt(email("Balthazar Quill"))).toEqual([]);
  await page.getByRole("button", { name: "Take it back" }).click();
  await expect(page.getByRole("button", { name: "Approve and send" })).toBeVisible();
});

test("Staff see the letter as it will arrive and send themselves a test letter", async ({ person }) => {
  for (const [name, options] of [["Perpetua Vane", {}], ["Perpetua Fell", PHONE]] as const) {
    const page = await person({ ...options, storageState: owner });
    await takesAnEnquiryIn(page, name);
    await page.getByLabel("Text of the reply").fill("Dear Perpetua,\n\nPlease leave it flat.\n\nNell");
    await page.getByRole("button", { name: "See it as it will arrive" }).click();
    const window = page.getByRole("dialog", { name: "As it will arrive" });
    const line = (term: string) => window.locator("dl > div").filter({ has: page.getByText(term, { exact: true }) }).getByRole("definition");
    await expect(line("From")).toHaveText("Lantern Yard Rug Workshop <desk@lantern-yard.example>");
    await expect(line("Answers to")).toHaveText("desk@lantern-yard.example");
    await expect(line("To")).toHaveText(`${name} <${email(name)}>`);
    await expect(line("Subject")).toHaveText(await page.getByLabel("Subject of the reply").inputValue());
    await window.screenshot({ path: test.info().outputPath(`head-${options === PHONE ? 390 : 1280}.png`) });
    const frame = window.frameLocator("iframe");
    await expect(frame.getByRole("main")).toContainText("Please leave it flat.");
    const widthOf = async (part: Locator) => (await part.boundingBox())?.width ?? 0;
    const shown = window.getByRole("group", { name: "The letter, as wide as chosen" });
    // It opens as it is where it is looked at; at a desk's width it is as wide as there, and a narrow window is pulled along it.
    await expect(window.getByRole("radio", { name: options === PHONE ? "On a phone" : "At a desk" })).toBeChecked();
    await window.getByRole("radio", { name: "At a desk" }).check();
    await expect.poll(async () => widthOf(window.locator("iframe"))).toBeGreaterThanOrEqual(640);
    expect(await shown.evaluate((box) => box.scrollWidth > box.clientWidth)).toBe(options === PHONE);
    await expect(window.getByText("Wider than this window")).toBeVisible({ visible: options === PHONE });
    await fitsAndIsAccessible(page);
    await window.getByRole("radio", { name: "On a phone" }).check();
    await expect.poll(async () => widthOf(window.locator("iframe"))).toBeLessThanOrEqual(376);
    await window.getByRole("radio", { name: "As plain text" }).check();
    await expect(frame.locator("body")).toContainText("Dear Perpetua,");
    await expect(frame.getByRole("main")).toHaveCount(0);
    await fitsAndIsAccessible(page);
    await page.keyboard.press("Escape");
    await expect(window).toBeHidden();
    const before = arrivedAt(OWNER.email).length;
    await page.getByRole("button", { name: "Send myself a test" }).click();
    await expect(said(page)).toContainText(`A test went to ${OWNER.email}. The client got nothing.`);
    expect(arrivedAt(OWNER.email).length).toBe(before + 1);
    const mine = arrivedAt(OWNER.email).at(-1)?.mail;
    expect(mine?.subject).toMatch(/^\[Test\] /);
    expect(mine?.text).toContain("Please leave it flat.");
    expect(arrivedAt(email(name))).toEqual([]);
  }
});

test("Staff make the client's letter to the seller from what was said, and it proposes nothing while nothing was tested", async ({ person }) => {
  const page = await person({ storageState: owner });
  await takesAnEnquiryIn(page, "Clemency Thorne", "Silk");
  await opensForm(page, "Letter to the seller");
  await page.getByLabel("The client’s address").fill("4 Quay Street\nHarrowmere");
  await page.getByLabel("What was said or written of the fibre, word for word").fill("pure silk");
  await page.getByRole("button", { name: "Make it" }).click();
  // Whom it is to is missing: nothing typed is lost.
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toContainText("Write whom the letter is to.");
  await expect(page.getByLabel("The client’s address")).toHaveValue("4 Quay Street\nHarrowmere");
  await looksRight(page);
  await page.getByLabel("The seller’s name").fill("Kestrel Floors");
  await page.getByRole("button", { name: "Make it" }).click();
  const letter = page.getByRole("article", { name: /^The fibre of/ });
  await expect(letter).toContainText("described to me as “pure silk”");
  await expect(letter).toContainText("The label on it reads “100 % viscose”.");
  await expect(letter).toContainText("I make no accusation");
  await expect(letter).toContainText("this is not legal advice");
  await expect(letter).not.toContainText("what you propose");
  await expect(letter.getByRole("heading", { name: "For your own information, not part of the letter" })).toBeVisible();
  await looksRight(page);
});

test("Staff make a care card that says how sure we are, and take it out of the letter again by keyboard", async ({ person }) => {
  const page = await person({ storageState: owner });
  const enquiry = await takesAnEnquiryIn(page, "Isolde Farrant");
  await opensForm(page, "Care card");
  await page.getByRole("button", { name: "Make it" }).press("Enter");
  const card = page.getByRole("article", { name: /^Living with/ });
  await expect(card).toContainText(/it is (?:very )?likely that there is viscose in its pile/);
  await expect(card).toContainText("Never mix cleaning products");
  await looksRight(page);
  const goes = page.getByRole("checkbox", { name: /Goes with the letter/ });
  await goes.press("Space");
  await expect(page.getByText("It goes with the letter.")).toBeVisible();
  await goes.press("Space");
  await expect(page.getByText("Taken from the letter.")).toBeVisible();
  await expect(goes).not.toBeChecked();
  await page.goto(enquiry);
  await expect(page.getByRole("region", { name: "The letter" }).getByRole("link", { name: /^Living with/ })).toHaveCount(0);
});

test("Staff who write nonsense into the letter to the seller are told what is wrong with it, lose nothing, and find it all when they make it anew", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  await takesAnEnquiryIn(page, "Corin Vasey", "Silk");
  await opensForm(page, "Letter to the seller");
  const fields = { "The client’s address": "4 Quay Street", "The seller’s name": "   ", "Bought on": "3 May 2199", "Price paid": "-5", "Number of the invoice": "K-77" };
  for (const [label, value] of Object.entries(fields)) await page.getByLabel(label, { exact: true }).fill(value);
  await page.getByRole("button", { name: "Make it" }).click();
  const wrong = page.getByRole("alert", { name: "Please look at this once more" });
  for (const sentence of ["Write whom the letter is to.", "That day has not come yet: please look at it once more.", "Write what was paid as a sum above nothing, such as “€1,200”, or leave it empty."]) await expect(wrong).toContainText(sentence);
  for (const [label, value] of Object.entries(fields)) await expect(page.getByLabel(label, { exact: true })).toHaveValue(value);
  await looksRight(page);
  await picturesOf(page, info, "seller-form");
  const right = { "The seller’s name": "Kestrel Floors", "Bought on": "3 May 2024", "Price paid": "€1,200" };
  for (const [label, value] of Object.entries(right)) await page.getByLabel(label, { exact: true }).fill(value);
  await page.getByRole("button", { name: "Make it" }).click();
  await expect(page.getByRole("article", { name: /^The fibre of/ })).toContainText("from you on 3 May 2024 for €1,200 (invoice K-77).");
  await page.getByRole("link", { name: "Make it anew" }).click();
  for (const [label, value] of Object.entries({ ...fields, ...right })) await expect(page.getByLabel(label, { exact: true })).toHaveValue(value);
});

test("Staff read what a client wrote before a report quotes it, and leave it out", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  const story = "I knocked the glass over after the party. Please do not tell my sister.";
  await takesIn(page, { name: "Corwin Ashdown", email: "corwin@example.org", label: "100 % viscose", story }, desk);
  await opensForm(page, "Condition report");
  await expect(page.getByRole("blockquote")).toHaveText(story);
  await page.getByRole("checkbox", { name: /^Leave these words out/ }).check();
  await picturesOf(page, info, "own-words");
  await page.getByRole("button", { name: "Make it" }).click();
  const report = page.getByRole("article", { name: /^Condition report/ });
  await expect(report).toContainText("The client’s own words are kept at the workshop.");
  await expect(report).not.toContainText("sister");
  await expect(report.getByRole("row", { name: "What happened to it? Food or drink was spilled" })).toBeVisible();
  await looksRight(page);
});

test("Staff quote what a cleaner wrote only where they say so, and a cleaner’s report calls nobody the owner", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  const story = "Please help, my customer rings every hour and I washed it myself.";
  await takesIn(page, { name: "Merrick Vane", email: "merrick@example.org", label: "100 % viscose", sold: "Silk", reason: "I clean rugs myself and need advice", story }, desk);
  const at = page.url();
  await documents(page).getByText("Make a document").click();
  await expect(documents(page).getByRole("link", { name: "Care card", exact: true })).toBeVisible();
  await expect(documents(page).getByRole("link", { name: "Letter to the seller", exact: true })).toHaveCount(0);
  await documents(page).getByRole("link", { name: "Condition report", exact: true }).click();
  await expect(page.getByRole("blockquote")).toHaveText(story);
  await expect(page.getByRole("checkbox", { name: "Quote these words in the report" })).not.toBeChecked();
  await looksRight(page);
  await picturesOf(page, info, "cleaners-words");
  await page.getByRole("button", { name: "Make it" }).click();
  const report = page.getByRole("article", { name: /^Condition report/ });
  await expect(report).toContainText("The client, Merrick Vane, cleans rugs and asked about a customer’s rug; its owner was not named.");
  await expect(report).toContainText("The client’s own words are kept at the workshop.");
  await expect(report).not.toContainText("Please help");
  await looksRight(page);
  await picturesOf(page, info, "cleaners-report");
  await page.goto(at);
  await opensForm(page, "Condition report");
  await page.getByRole("checkbox", { name: "Quote these words in the report" }).check();
  await page.getByRole("button", { name: "Make it" }).click();
  await expect(report).toContainText(`In the client’s own words: “${story}”`);
});

test("Staff read which letters of a client’s name can only print as boxes before they make a document of it, and afterwards", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  await takesIn(page, { name: "王小明", email: "xiaoming@example.org", label: "100 % viscose" }, desk);
  await opensForm(page, "Condition report");
  await expect(page.getByRole("main")).toContainText("王, 小 and 明 are in none of our typefaces and will print as empty boxes (◻).");
  await page.getByRole("button", { name: "Make it" }).click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toContainText("Write them in other letters, or say that they may.");
  await looksRight(page);
  await page.screenshot({ path: info.outputPath("boxes-form-1280.png"), fullPage: true });
  await page.getByRole("checkbox", { name: "They may print as empty boxes" }).check();
  await page.getByRole("button", { name: "Make it" }).click();
  await expect(page.getByRole("article", { name: /^Condition report/ })).toContainText("The client, 王小明, asked about it");
  await expect(page.getByRole("main")).toContainText("王, 小 and 明 are in none of our typefaces and printed as empty boxes (◻).");
  await looksRight(page);
  await page.screenshot({ path: info.outputPath("boxes-made-1280.png"), fullPage: true });
});

test("Staff plan where a rug that came by e-mail is cut, and make the plan a document with its cost", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  const photo = await drawRug({ seed: 5, weave: "knotted", colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"], kind: "whole" }, 900, 675);
  await page.goto(`${desk.url}/desk/post`);
  await page.getByLabel("Choose letters").setInputFiles({ name: "rug.eml", mimeType: "message/rfc822", buffer: letter({ from: "Rowan Pell <rowan@example.org>", text: "One end is spoilt.", photos: [photo], date: new Date() }) });
  await page.getByRole("listitem").filter({ hasText: "rug.eml" }).getByRole("link", { name: /Enquiry/ }).click();
  await page.getByRole("link", { name: /^Measure/ }).first().click();
  await page.getByRole("link", { name: "Plan and cut-down" }).click();
  for (const n of [1, 2, 3, 4]) {
    await page.getByRole("button", { name: new RegExp(`^Corner ${n},`) }).focus();
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowRight");
  }
  await page.getByLabel("Width, cm").fill("200");
  await page.getByLabel("Length, cm").fill("300");
  await page.getByRole("radio", { name: "Damaged places" }).check();
  for (let n = 0; n < 3; n++) await page.getByRole("button", { name: "Add a point" }).click();
  const third = page.getByRole("button", { name: /^Damaged place 1, point 3/ });
  await third.focus();
  for (let n = 0; n < 6; n++) await page.keyboard.press("Shift+ArrowDown");
  await page.getByRole("radio", { name: /^One edge comes off/ }).check();
  await page.getByRole("button", { name: "Keep this plan" }).click();
  await expect(page.getByText("The plan is kept, and the rug judged anew with it.")).toBeVisible();
  await page.goto(page.url().replace(/\/photos\/.*$/, ""));
  await opensForm(page, "Cut-down plan");
  await page.getByRole("button", { name: "Make it" }).click();
  const plan = page.getByRole("article", { name: /^Cutting down/ });
  await expect(plan.getByRole("img", { name: /^Plan of the rug from above, to scale\. One edge comes off: \d+ × \d+ cm/ })).toBeVisible();
  await expect(plan).toContainText(/New edges: about \d\.\d m of binding\./);
  await expect(plan).toContainText(/Cost: \S+[\d,]+ to \S+[\d,]+, from these edges as drawn to new ones all round what remains; confirmed when we have seen it\./);
  await expect(plan).toContainText("Cutting cannot be undone.");
  await looksRight(page);
  await page.getByRole("link", { name: "Back to the enquiry" }).click();
  await opensForm(page, "Condition report");
  await page.getByRole("button", { name: "Make it" }).click();
  const report = page.getByRole("article", { name: /^Condition report/ });
  await expect(report.getByRole("img", { name: /^Photo 1: .* Marked in it: the edges of the rug \(1\) and a damaged place \(2\)\.$/ })).toBeVisible();
  await expect(report).toContainText(/In photo 1, as the workshop marked it, the damage \(2\) takes about/);
  await looksRight(page);
  await page.screenshot({ path: info.outputPath("marked-report-1280.png"), fullPage: true });
});

test("A client whose rug is wet finds first aid on their page before our answer, and after it", async ({ person }) => {
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk/post`);
  const photo = await drawRug({ seed: 9, weave: "knotted", colours: ["#2f3a4a", "#d8c7b0", "#7d2e38"], kind: "whole" }, 900, 675);
  await page.getByLabel("Choose letters").setInputFiles({ name: "wet.eml", mimeType: "message/rfc822", buffer: letter({ from: "Juniper Vale <juniper@example.org>", text: "The washing machine leaked and our rug is soaked.", photos: [photo], date: new Date() }) });
  await page.getByRole("listitem").filter({ hasText: "wet.eml" }).getByRole("link", { name: /Enquiry/ }).click();
  await expect.poll(() => linkSentTo(desk, "juniper@example.org")).not.toBe("");
  const client = await person(PHONE);
  await client.goto(linkSentTo(desk, "juniper@example.org"));
  await expect(client.getByRole("region", { name: "First aid for a wet rug" })).toContainText("press straight down");
  await fitsAndIsAccessible(client);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => arrivedAt("juniper@example.org").length).toBe(1);
  await client.reload();
  await expect(client.getByRole("article", { name: /^Our letter/ })).toContainText("Dear Juniper Vale");
  await expect(client.getByText("press straight down")).toBeHidden();
  await client.getByRole("main").getByText("First aid for a wet rug", { exact: true }).press("Enter");
  await expect(client.getByText("press straight down")).toBeVisible();
  await fitsAndIsAccessible(client);
});
